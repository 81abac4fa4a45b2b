import type { Measured } from '../../bench/measured.ts';
import { copperOfSameResistance } from '../../bench/verdict-words.ts';
import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { celsius } from '../../quantity.ts';
import type { CableSpec, Scenario } from '../../scenario/schema.ts';
import { carrying, settledAt, withResistance } from '../carrying.ts';
import { cordOf } from '../cords.ts';
import { given, temperatureText } from '../figures.ts';
import { toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import type { Practice } from '../types.ts';
import { unitSpace } from '../words.ts';
import { finders } from './bench-words.ts';

// What a bench log says of one lead: its ohms, and its hottest plateau. The verdicts of lesson 5.4 are about such logs.

/** The log of one lead. */
export interface BenchLog {
  readonly lead: string;
  readonly cord: CastKey;
  /** R' of one conductor at 20 °C as a share of the most its marked size may have, in thousandths. */
  readonly share: number;
  /** Standard uncertainty of R' in tenths of a per cent. */
  readonly doubt: number;
  readonly ambient_degC: number;
  /** Current of the hottest step [A]. */
  readonly I_A: number;
}

const keys: Readonly<Record<Practice, readonly CastKey[]>> = {
  iec: ['C075', 'C100', 'C150'],
  na: ['A18', 'A16', 'A14'],
};

/** A log drawn; `share` of the limit in thousandths. Null where its hottest step is not one of a bench. */
export function drawnLog(random: Random, practice: Practice, share: number): BenchLog | null {
  const cord = random.pick(keys[practice]);
  const ambient_degC = random.whole(16, 26);
  const { rating } = cordOf(cord);
  const I_A = random.whole(Math.ceil(0.6 * rating), rating); // no bench loads a lead above its marking
  const log = { lead: random.pick(finders), cord, share, doubt: random.whole(4, 12), ambient_degC, I_A };
  return settledAt(logScenario(log, practice)) <= rated_degC(log) - 5 ? log : null;
}

const cableIn = ({ cord, share }: BenchLog): CableSpec =>
  withResistance(cast[cord], (cableOf(cast[cord]).conductor.R20 * share) / 1000);

/** The lead at a held current on the bench, in still air. */
export const logScenario = (log: BenchLog, practice: Practice, I_A = log.I_A): Scenario =>
  carrying(cableIn(log), log.ambient_degC, I_A, practice, 3600);

/** What the log tells: R' with its uncertainty, the most its marked size may have, the copper it equals, where it settles. */
export function logFacts(log: BenchLog, practice: Practice) {
  const { conductor } = cableOf(cast[log.cord]);
  const limit = toldResistance(conductor.R20, practice);
  const told = toldResistance((conductor.R20 * log.share) / 1000, practice);
  const R: Measured = { value: told.R, u: (told.R * log.doubt) / 1000 };
  return {
    limit,
    told,
    R,
    marked: conductor.marked.replace(' ', unitSpace),
    equal: copperOfSameResistance(R),
    settled_degC: Math.round(settledAt(logScenario(log, practice))),
    doubtText: given(log.doubt / 10, '%'),
  };
}

/** Where the cord would settle at another current or in other surroundings, told. */
export const settlesText = (scenario: Scenario, practice: Practice): string =>
  temperatureText(settledAt(scenario), practice);

/** How a measured R' stands to its limit, with two standard uncertainties. */
export function standing({ value, u }: Measured, limit: number): 'above' | 'open' | 'below' {
  if (value - 2 * u > limit) return 'above';
  return value + 2 * u <= limit ? 'below' : 'open';
}

/** The copper that it equals, with two standard uncertainties, both to one place: '0.49 mm² ± 0.01 mm²'. */
export function equalText({ value, u }: Measured): string {
  const wide = Number((2e6 * u).toPrecision(1));
  const places = Math.max(0, -Math.floor(Math.log10(wide)));
  return `${(value * 1e6).toFixed(places)}${unitSpace}mm² ± ${given(wide, 'mm²')}`;
}

/** What the plastic of the lead is rated [°C]. */
export const rated_degC = (log: BenchLog): number => celsius(ratingOf(cableOf(cast[log.cord])) as number);
