import { type CandidateId, colours, magnetOutcomes } from './evidence.ts';
import { add, emptyLine, extent, type Line, spread } from './line.ts';
import type { Priors } from './priors.ts';
import { colourProbability, magnetProbability } from './seen.ts';
import type { Weighed } from './weigh.ts';

/** A quantity that a measurement reads: R'20 [Ω/m], metal area [m²], bundle diameter [m], mass a metre of core [kg/m], and R'20·area [Ω·m]. */
export type ReadQuantity = 'resistance' | 'strands' | 'bundle' | 'mass' | 'resistivity';

/** One of the metals, with its probability. */
export interface Leaning {
  readonly metal: CandidateId;
  readonly probability: number;
}

/** What one outcome of a measurement would mean. */
export interface OutcomeMeaning {
  /** What is seen, or the span of readings of the quantity that is read. */
  readonly reading: string | readonly [from: number, to: number];
  /** How likely it is, as things stand. */
  readonly probability: number;
  /** The metals after it, likeliest first, down to one in fifty. */
  readonly leaders: readonly Leaning[];
}

/** The posterior of one metal as a density of the reading's logarithm, without the instrument. */
function predicted(id: ReadQuantity, { posterior }: Weighed, priors: Priors): Line {
  if (id === 'resistance') return posterior.R20;
  if (id === 'mass') return posterior.massPerMetre;
  if (id === 'strands') return posterior.area;
  if (id === 'resistivity') return posterior.resistivity;
  const [fill, u] = priors.fill.value;
  const { from, step, p } = spread(posterior.area, u / fill); // D² = 4A/(π·fill)
  return { from: (from + Math.log(4 / (Math.PI * fill))) / 2, step: step / 2, p };
}

/** Probabilities of every outcome by every metal: a row a metal, a column an outcome. */
export interface Table {
  readonly rows: readonly (readonly number[] | Float64Array)[];
  /** What a run of columns from `i` to before `k` is called. */
  reading(i: number, k: number): OutcomeMeaning['reading'];
}

/** What may be seen, and how likely by each metal. */
export function seenTable(id: 'magnet' | 'skin' | 'under', weighed: readonly Weighed[], priors: Priors): Table {
  const names: readonly string[] = id === 'magnet' ? magnetOutcomes : colours;
  const rows = weighed.map(({ of }) =>
    id === 'magnet'
      ? magnetOutcomes.map((seen) => magnetProbability(seen, of, priors))
      : colours.map((colour) => colourProbability(id, colour, of.id, priors)),
  );
  return { rows, reading: (i) => names[i] as string };
}

/** What may be read by an instrument of relative standard uncertainty `u`, and how likely by each metal. */
export function measuredTable(id: ReadQuantity, u: number, weighed: readonly Weighed[], priors: Priors): Table {
  const lines = weighed.map((one) => predicted(id, one, priors));
  const used = lines.filter((_, i) => (weighed[i] as Weighed).probability > 1e-4).map((line) => extent(line));
  const from = Math.min(...used.map(([low]) => low));
  const to = Math.max(...used.map(([, high]) => high));
  const step = Math.max(u / 2, (to - from) / 3000);
  const read = lines.map((line) => {
    const row = emptyLine(from, to, step);
    add(row, line);
    return spread(row, u);
  });
  const at = (i: number) => Math.exp((read[0] as Line).from + (i - 0.5) * step);
  return { rows: read.map(({ p }) => p), reading: (i, k) => [at(i), at(k)] };
}

/** Mutual information of metal and outcome: Σ P(metal) Σ p(outcome|metal) ln(p(outcome|metal)/p(outcome)) [nats]. */
export function information(shares: readonly number[], rows: Table['rows']): number {
  const columns = rows[0]?.length ?? 0;
  let sum = 0;
  for (let c = 0; c < columns; c++) {
    const all = shares.reduce((total, share, h) => total + share * (rows[h]?.[c] ?? 0), 0);
    if (all <= 0) continue;
    for (let h = 0; h < rows.length; h++) {
      const joint = (shares[h] as number) * (rows[h]?.[c] ?? 0);
      if (joint > 0) sum += joint * Math.log((rows[h]?.[c] as number) / all);
    }
  }
  return Math.max(0, sum);
}

/** Outcomes as runs of columns that leave the same metal in the lead; those rarer than one in a hundred are not told. */
export function meanings({ rows, reading }: Table, weighed: readonly Weighed[], apart: boolean): OutcomeMeaning[] {
  const columns = rows[0]?.length ?? 0;
  const joint = (h: number, c: number) => (weighed[h] as Weighed).probability * (rows[h]?.[c] ?? 0);
  const leads = Array.from({ length: columns }, (_, c) => {
    let best = 0;
    for (let h = 1; h < rows.length; h++) if (joint(h, c) > joint(best, c)) best = h;
    return joint(best, c) > 1e-9 ? best : -1;
  });
  const told: OutcomeMeaning[] = [];
  for (let i = 0; i < columns; ) {
    let k = i + 1;
    while (!apart && k < columns && leads[k] === leads[i]) k++;
    const weights = rows.map((_, h) => {
      let sum = 0;
      for (let c = i; c < k; c++) sum += joint(h, c);
      return sum;
    });
    const probability = weights.reduce((sum, one) => sum + one, 0);
    if (leads[i] !== -1 && probability > 0.01)
      told.push({ reading: reading(i, k), probability, leaders: leadersOf(weights, probability, weighed) });
    i = k;
  }
  return told;
}

const leadersOf = (weights: readonly number[], sum: number, weighed: readonly Weighed[]): Leaning[] =>
  weighed
    .map(({ of }, h) => ({ metal: of.id, probability: (weights[h] as number) / sum }))
    .filter(({ probability }) => probability > 0.02)
    .sort((a, b) => b.probability - a.probability);
