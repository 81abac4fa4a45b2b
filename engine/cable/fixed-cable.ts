import type { TradeSize } from '../conductor/area-scale.ts';
import type { CableSpec } from '../scenario/schema.ts';

/** Walls of one size [mm]: about each core, and the sheath about both. */
type Walls = readonly [size: number, insulation: number, sheath: number];

// flat PVC cable for fixed wiring after BS 6004, in mm²; all from memory
const flatTwin: readonly Walls[] = [
  [1, 0.6, 0.9],
  [1.5, 0.7, 0.9],
  [2.5, 0.8, 1],
  [4, 0.8, 1.1],
  [6, 0.8, 1.1],
  [10, 1, 1.2],
  [16, 1, 1.3],
];

// sheathed cable with 90 °C conductors after UL 719 and UL 83, in AWG, the nylon skin counted as insulation; all from memory
const american: readonly Walls[] = [
  [14, 0.48, 0.76],
  [12, 0.48, 0.76],
  [10, 0.61, 0.76],
  [8, 0.89, 0.76],
  [6, 0.89, 0.76],
  [4, 1.17, 0.76],
];

/**
 * A flat cable of fixed wiring with two loaded cores, as a scenario has it; its bare protective conductor is left out. Sizes in
 * mm² have 70 °C PVC, gauges 90 °C PVC. Null for a size whose walls we do not hold. Walls from memory, after BS 6004 and
 * UL 719; they move the engine's current by a few per cent at most.
 */
export function fixedCable({ system, size }: TradeSize, metal: 'copper' | 'aluminium' = 'copper'): CableSpec | null {
  const walls = (system === 'AWG' ? american : flatTwin).find(([one]) => one === size);
  if (!walls) return null;
  const [, insulation_mm, sheath_mm] = walls;
  const inner = system === 'AWG' ? 'pvc90' : 'pvc70';
  return {
    layout: 'flat',
    cores: 2,
    loaded: 2,
    conductor: { class: 2, metal, ...(system === 'AWG' ? { size_AWG: size } : { size_mm2: size }) },
    insulation: { material: inner, thickness_mm: insulation_mm },
    sheath: { material: 'pvc70', thickness_mm: sheath_mm },
  };
}
