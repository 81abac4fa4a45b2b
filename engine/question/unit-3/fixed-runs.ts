import { fixedCable } from '../../cable/fixed-cable.ts';
import type { TradeSize } from '../../conductor/area-scale.ts';
import { ambientFactor } from '../../protection/ambient-factor.ts';
import type { Factor } from '../../protection/factors.ts';
import { adjustmentFactor, groupingFactor } from '../../protection/grouping-factor.ts';
import { thermalInsulationFactor } from '../../protection/insulation-factor.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { plainNumber } from '../figures.ts';
import type { Practice } from '../types.ts';
import { unitSpace } from '../words.ts';

// Cables of fixed wiring and what acts on their table currents.

/** Where a cable runs, warm enough that a factor acts. */
export const runPlaces = [
  'along a bakery wall',
  'over a laundry ceiling',
  'in a farm loft',
  'behind a stage',
  'in a cabin roof',
  'through a polytunnel',
] as const;

/** What acts on a table's current. */
export interface Place {
  readonly ambient_degC: number;
  /** Circuits alike in one bunch, or cables of two loaded conductors tied together; this one counted. */
  readonly circuits: number;
  /** Length in thermal insulation [mm]; 0 for none, and in practices whose table has no such factor. */
  readonly insulated_mm: number;
}

/** Conductor limit of the fixed cables that these questions are about [°C]. */
export const fixedLimit = { iec: 70, na: 90 } as const satisfies Record<Practice, number>;

/** The factors of a place in the order they are told: ambient, grouping, thermal insulation. */
export function factorsAt({ ambient_degC, circuits, insulated_mm }: Place, practice: Practice): Factor[] {
  const ambient = ambientFactor(practice, fixedLimit[practice], ambient_degC);
  if (practice === 'na') return [ambient, adjustmentFactor(2 * circuits)];
  const bunch = groupingFactor(circuits);
  return insulated_mm > 0 ? [ambient, bunch, thermalInsulationFactor(insulated_mm)] : [ambient, bunch];
}

/** The factors in words: 'Ca = 0.94 and Cg = 0.7'. */
export function factorList(factors: readonly Factor[]): string {
  const told = factors.map(({ symbol, value }) => `${symbol}${unitSpace}=${unitSpace}${plainNumber(value, 2)}`);
  return told.length < 2 ? told.join('') : `${told.slice(0, -1).join(', ')} and ${told.at(-1)}`;
}

/** The sum of what each factor takes off, as parts of the whole [1]: what a learner who adds reductions would take off. */
export const addedReductions = (factors: readonly Factor[]): number =>
  factors.reduce((sum, { value }) => sum + 1 - value, 0);

/** A fixed cable of a size alone, clipped, in air of so many degrees. `OutOfRange` for a size whose walls are not held. */
export function clippedRun(size: TradeSize, ambient_degC: number, I: number, practice: Practice): Scenario {
  const cable = fixedCable(size);
  if (!cable) throw new Error(`no walls of a fixed cable of ${size.name} are held`);
  return carrying(cable, { kind: 'clipped', ambient_degC }, I, practice, 3600);
}

/** A size with its unit bound to it: '2.5 mm²'. */
export const sizeName = ({ name }: TradeSize): string => name.replace(' ', unitSpace);

/** What the cable shares its way with, in the practice's own count. */
export function companyOf({ circuits }: Place, practice: Practice): string {
  const many = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'][circuits] ?? `${circuits}`;
  if (practice === 'iec') return `It is one of ${many} loaded circuits alike in one bunch.`;
  return `It is one of ${many} loaded cables tied together, so ${2 * circuits} conductors carry current.`;
}
