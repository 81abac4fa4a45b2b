import type { Statement } from '../heating/validity.ts';
import { fastest, slowest } from './band.ts';
import { type Cited, cite } from './cited.ts';
import { type Device, lastGate } from './device.ts';
import { classThreeEnergy, meltingEnergy } from './let-through.ts';
import { adiabaticFrom, adiabaticTo, allowedTime, energyTest } from './withstand.ts';

/** An I²t [A²s] with where it comes from. */
export interface Energy extends Cited {
  readonly I2t: number;
}

/** What a device's standard, or its maker, tells of its I²t at a fault current. */
export interface DeviceEnergy {
  /** The device has not opened below this: what melts a fuse, or the fast edge's I²t; null where nothing is told. */
  readonly atLeast: Energy | null;
  /** It has opened before this much has passed; null where nothing is told, or only for a time above 5 s. */
  readonly atMost: Energy | null;
  /** The longest it may take at this current [s]; infinite where it need not act. */
  readonly t: number;
  /** How far the two hold, a sentence each. */
  readonly statements: readonly Statement[];
}

/** Figures from a maker's sheet [A²s], which go before a standard's. */
export interface MakerEnergy {
  readonly preArcing?: number | undefined;
  readonly letThrough?: number | undefined;
}

/** I²t [A²s] of a current `I` [A] that lasts `t` [s]. */
export const energyOver = (I: number, t: number): number => I ** 2 * t;

/** Short-circuit capacity that a household breaker's class is read at [A]. */
export const usualCapacity = 6000;

/**
 * I²t of `device` at a prospective current `I` [A], from its maker's figures where given. Else at least: the least that
 * melts a gG fuse in 10 ms, or I²t of the guaranteed fast edge. At most: class 3 of a B or C breaker at 6 kA, or I²t of
 * the slow edge; beyond a fuse's last gate that heat is taken not to grow with current (`slowest`, assumed).
 */
export function deviceEnergy(device: Device, I: number, maker: MakerEnergy = {}): DeviceEnergy {
  const t = slowest(device, I, 'guaranteed');
  const most = greatestOf(device, I, t);
  const byMaker = (I2t: number | undefined) =>
    I2t ? { I2t, ...cite('user', 'the maker’s figure', 'our choice') } : null;
  const [least, greatest] = [byMaker(maker.preArcing), byMaker(maker.letThrough)];
  return {
    atLeast: least ?? leastOf(device, I),
    atMost: greatest ?? most.energy,
    t,
    statements: greatest ? [] : most.statements,
  };
}

/**
 * Whether a conductor of `k` [A·s^½/m²] and area `S` [m²] outlasts a device at `I` [A]: true where the most it lets
 * through, or the longest it takes, is within k²S²; false where it has surely not opened in the time the conductor
 * stands, up to 5 s. Else null: beyond 5 s heat leaves and k²S² alone cannot say no.
 */
export function outlasts(k: number, S: number, I: number, { atLeast, atMost, t }: DeviceEnergy): boolean | null {
  const stands = allowedTime(k, S, I).value;
  if (atMost && energyTest(k, S, atMost.I2t).holds) return true;
  if (t >= adiabaticFrom && t <= stands) return true;
  return atLeast && stands <= adiabaticTo && !energyTest(k, S, atLeast.I2t).holds ? false : null;
}

function leastOf(device: Device, I: number): Energy | null {
  const { family, In, notBefore, source, where, hold } = device;
  const melting = family === 'gG' ? meltingEnergy(In) : null;
  const last = notBefore.at(-1);
  if (melting && last && I >= last.I) return { ...melting.least, I2t: melting.least.value };
  const t = fastest(device, I, 'guaranteed');
  if (t === 0 || t === Number.POSITIVE_INFINITY) return null;
  const confidence = notBefore.find((gate) => gate.I >= I)?.confidence ?? hold.confidence;
  return { I2t: energyOver(I, t), ...cite(source, where, confidence) };
}

type Greatest = { readonly energy: Energy | null; readonly statements: readonly Statement[] };

function greatestOf(device: Device, I: number, t: number): Greatest {
  const { family, In, kind, source, where } = device;
  const gate = lastGate(device);
  if (!gate || t > adiabaticTo) return { energy: null, statements: [t > adiabaticTo ? slow : silent(device)] };
  const confidence = gate.confidence;
  if (kind === 'fuse' && I > gate.I) {
    const energy = { I2t: energyOver(gate.I, gate.t), ...cite(source, where, confidence) };
    return { energy, statements: [notGrowing(gate.I)] };
  }
  const byTime: Energy = { I2t: energyOver(I, t), ...cite(source, where, confidence) };
  const tabled = family === 'B' || family === 'C' ? classThreeEnergy(family, In, usualCapacity) : null;
  if (!tabled || tabled.value >= byTime.I2t || t > 0.1 || I > usualCapacity) return { energy: byTime, statements: [] };
  return { energy: { ...tabled, I2t: tabled.value }, statements: [atCapacity] };
}

const slow: Statement = {
  id: 'above 5 s',
  text: 'The standard lets this device take more than 5 s here. No let-through can be told; that is the maker’s to say.',
};
const silent = ({ silent: text }: Device): Statement => ({ id: 'silent', text });
const notGrowing = (I: number): Statement => ({
  id: 'not growing',
  text: `The standard’s last point is at ${I} A. Beyond it we take the fuse’s I²t not to grow with current.`,
});
const atCapacity: Statement = {
  id: 'at capacity',
  text: 'This is the most that a class 3 breaker lets through at 6 kA. At less current it lets through less; only the maker says how much.',
};
