import { cableOf } from '../../cable/cable.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { kelvin } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, settledAt } from '../carrying.ts';
import { cordsOf } from '../cords.ts';
import { given, plainNumber, rounded, temperatureText } from '../figures.ts';
import { markedAs, toldLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import type { Practice } from '../types.ts';
import { type AskedMetal, leadOf, metalNames, sizesOf } from '../unit-1/metal-leads.ts';
import { voltsOf } from '../unit-3/watts.ts';
import { quantity, type Words, words } from '../words.ts';
import { warmer } from './suspects.ts';

// A known lead on the bench at a held current, settled: what Q68 and Q68b ask about.

/** A lead, its length and what it carries. */
export interface BenchLoad {
  readonly metal: Extract<AskedMetal, 'copper' | 'cca10' | 'aluminium'>;
  readonly size: number;
  /** In metres, or feet in `na`. */
  readonly count: number;
  readonly I_A: number;
  readonly ambient_degC: number;
}

/** Volts of the bench's isolated supply. */
export const bench_V = 12;
/** What the lead itself may take of them [V] (our choice: the supply holds its current). */
const most_V = 11;

/** A draw, without the guards of what is asked; null where the bench could not do it. */
export function drawnLoad(random: Random, practice: Practice): BenchLoad | null {
  const metal = random.pick(['copper', 'cca10', 'cca10', 'aluminium'] as const);
  const sizes = sizesOf(practice).slice(0, practice === 'iec' ? 4 : 3);
  const size = random.pick(sizes);
  const count = practice === 'iec' ? random.whole(2, 12) : random.whole(6, 40);
  const ambient_degC = random.whole(16, 28);
  const target = kelvin(random.whole(37, practice === 'iec' ? 66 : 58));
  const cold = buildCase(carrying(leadOf(size, metal, practice), ambient_degC, 1, practice));
  const I_A = Math.round(2 * (ratingAt(cold, target) ?? 0)) / 2;
  const drawn = { metal, size, count, I_A, ambient_degC };
  if (I_A < 2 || I_A > 25 || (metal === 'copper' && I_A > tableOf(size, practice))) return null;
  return factsOf(drawn, practice).U <= most_V ? drawn : null;
}

/** Current that the table allows a copper cord of the size [A]; none where it is no cord of the cast. */
function tableOf(size: number, practice: Practice): number {
  const key = practice === 'iec' ? `C${String(100 * size).padStart(3, '0')}` : `A${size}`;
  return cordsOf(practice).find((one) => one.key === key)?.rating ?? 0;
}

/** The case on the bench: an hour, which settles it. */
export const benchScenario = ({ metal, size, count, I_A, ambient_degC }: BenchLoad, practice: Practice): Scenario => ({
  ...carrying(leadOf(size, metal, practice), ambient_degC, I_A, practice, 3600),
  lead: { length_m: toldLength(count, practice).L },
});

/** What the stem tells, and what follows from it: resistance of one conductor, where it settles, volts and watts of the lead. */
export function factsOf(drawn: BenchLoad, practice: Practice) {
  const { conductor } = cableOf(leadOf(drawn.size, drawn.metal, practice));
  const R20 = toldResistance(conductor.R20, practice);
  const alpha = rounded(conductor.alpha20, 3);
  const T_degC = Math.round(settledAt(benchScenario(drawn, practice)));
  const loop = (T: number, times = 2) => times * toldLength(drawn.count, practice).L * R20.R * warmer(alpha, T);
  const U = drawn.I_A * loop(T_degC);
  return { R20, alpha, T_degC, loop, U, W: drawn.I_A * U };
}

/** The lead in words: 'A copper-clad aluminium lead, marked 3 × 1.5 mm²,'. */
const leadWords = ({ metal, size }: BenchLoad, practice: Practice) =>
  `A three-core lead marked ${markedAs(size, practice)} has conductors of ${metalNames[metal]}`;

/** The stem up to its question. */
export function stemOf(drawn: BenchLoad, practice: Practice): Words[] {
  const { R20, alpha, T_degC } = factsOf(drawn, practice);
  const { count, I_A, ambient_degC } = drawn;
  return [
    words`${leadWords(drawn, practice)}. Each has ${quantity(R20.text)} at ${quantity(temperatureText(20, practice))}, and ${quantity(plainNumber(alpha, 3))} more of that for each kelvin above.`,
    words`The lead is ${quantity(toldLength(count, practice).text)} long, with two conductors joined at the far end. In use it hangs on ${quantity(given(voltsOf(practice), 'V'))}.`,
    words`On the bench an isolated supply of ${quantity(given(bench_V, 'V'))} holds ${quantity(given(I_A, 'A'))}. The room is at ${quantity(temperatureText(ambient_degC, practice))}. The engine lets the conductors settle at ${quantity(temperatureText(T_degC, practice))}.`,
  ];
}

/** The supply's own volts are not the lead's. */
export const boundToCurrent = words`The supply gives what the current needs, and no more. So its own volts say nothing of the heat.`;
