import type { Cable } from '../cable/cable.ts';
import { type AdiabaticK, kOf } from './adiabatic-k.ts';
import type { Device } from './device.ts';
import { type DeviceEnergy, deviceEnergy, outlasts } from './device-energy.ts';
import type { FaultLoop } from './fault-loop.ts';
import { type Adiabatic, allowedTime, withstand } from './withstand.ts';

/** One fault current against what the conductor stands. */
export interface WithstandAt {
  readonly at: 'near end' | 'far end';
  /** [A] */
  readonly I: number;
  /** How long the conductor stands it, and by what it must be judged. */
  readonly lasts: Adiabatic;
  /** What the device's standard tells of its I²t; null without a device. */
  readonly energy: DeviceEnergy | null;
  /** Whether the conductor outlasts the device; null where that is not told. */
  readonly survives: boolean | null;
}

/** What becomes of the lead's conductor while a fault lasts. */
export interface FaultWithstand {
  readonly k: AdiabaticK;
  /** k²S² [A²s]. */
  readonly stands: number;
  /** The greatest current at the near end, then the least at the far end. */
  readonly each: readonly [WithstandAt, WithstandAt];
  /** At both ends: false if either is false, true if both are true. */
  readonly survives: boolean | null;
}

/**
 * The adiabatic question of IEC 60364-4-43 434.5.2 for the lead's own conductor at both ends of the loop's current: a
 * large one is cleared by the device's let-through, a small one lasts longest. Null where the insulation has no limit
 * for a short circuit.
 */
export function faultWithstand(cable: Cable, of: FaultLoop, device: Device | null): FaultWithstand | null {
  const { conductor, insulation } = cable;
  const k = insulation && kOf(conductor.metal, insulation, conductor.area, of.T);
  if (!k) return null;
  const test = (at: WithstandAt['at'], I: number): WithstandAt => {
    const energy = device && deviceEnergy(device, I);
    const survives = energy && outlasts(k.k, conductor.area, I, energy);
    return { at, I, lasts: allowedTime(k.k, conductor.area, I), energy, survives };
  };
  const each = [test('near end', of.nearEnd), test('far end', of.loop.least)] as const;
  const all = each.map(({ survives }) => survives);
  const survives = all.includes(false) ? false : all.includes(null) ? null : true;
  return { k, stands: withstand(k.k, conductor.area), each, survives };
}
