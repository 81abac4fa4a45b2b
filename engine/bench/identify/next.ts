import { type CandidateId, colours, type Evidence, magnetOutcomes } from './evidence.ts';
import { add, emptyLine, extent, type Line, spread } from './line.ts';
import type { Prior, Priors } from './priors.ts';
import { colourProbability, magnetProbability } from './seen.ts';
import type { Weighed } from './weigh.ts';

/** A measurement that may be made next. */
export type MeasurementId = 'magnet' | 'skin' | 'under' | 'resistance' | 'strands' | 'bundle' | 'mass';

/** One of the metals, with its probability. */
export interface Leaning {
  readonly metal: CandidateId;
  readonly probability: number;
}

/** What one outcome of a measurement would mean. */
export interface OutcomeMeaning {
  /** What is seen, or the span of readings: R'20 [Ω/m], area of the strands [m²], diameter [m], mass a metre of core [kg/m]. */
  readonly reading: string | readonly [from: number, to: number];
  /** How likely it is, as things stand. */
  readonly probability: number;
  /** The metals after it, likeliest first, down to one in fifty. */
  readonly leaders: readonly Leaning[];
}

/** A measurement with what is to be expected of it. */
export interface NextMeasurement {
  readonly measurement: MeasurementId;
  /** Expected gain of information about which metal it is [nats]. */
  readonly gain: number;
  /** That gain over all the doubt that is left. */
  readonly share: number;
  /** Ends the sample as it was found: photograph first. */
  readonly destructive: boolean;
  readonly outcomes: readonly OutcomeMeaning[];
}

/** How each measurement is usually made. */
interface Instrument {
  readonly destructive: boolean;
  /** Relative standard uncertainty of the quantity; null for what is seen. */
  readonly u: number | null;
}

/** Measurements with typical instruments: our choices. */
export const instruments: Prior<Readonly<Record<MeasurementId, Instrument>>> = {
  value: {
    magnet: { destructive: false, u: null },
    skin: { destructive: false, u: null },
    resistance: { destructive: false, u: 0.008 },
    strands: { destructive: false, u: 0.05 },
    bundle: { destructive: false, u: 0.03 },
    under: { destructive: true, u: null },
    mass: { destructive: true, u: 0.02 },
  },
  unit: '1',
  source: 'own',
  confidence: 'our choice',
  why: 'four terminals with volts 0.2 %, amperes 0.5 %, tape 0.5 % and 1 K; strands of 0.2 to 0.4 mm counted and gauged to 0.006 mm; a soft bundle gauged to 3 %; some metres of core on a kitchen scale. Strands and bundle are gauged at an end that is bare already; scraping and stripping are not undone',
};

/** A measurement is worth while that is expected to take away this share of the doubt: our choice. */
export const worthWhile = 0.1;
/** Doubt that needs no further measurement [nats]: about one metal at 99 in 100. */
export const settled = 0.056;

const entropyOf = (shares: readonly number[]) => -shares.reduce((sum, p) => (p > 0 ? sum + p * Math.log(p) : sum), 0);

/** The posterior of one metal as a density of the reading's logarithm, without the instrument. */
function predicted(id: MeasurementId, { posterior }: Weighed, priors: Priors): Line {
  if (id === 'resistance') return posterior.R20;
  if (id === 'mass') return posterior.massPerMetre;
  if (id === 'strands') return posterior.area;
  const [fill, u] = priors.fill.value;
  const { from, step, p } = spread(posterior.area, u / fill); // D² = 4A/(π·fill)
  return { from: (from + Math.log(4 / (Math.PI * fill))) / 2, step: step / 2, p };
}

/** Probabilities of every outcome by every metal: a row a metal, a column an outcome. */
interface Table {
  readonly rows: readonly (readonly number[] | Float64Array)[];
  /** What a run of columns from `i` to before `k` is called. */
  reading(i: number, k: number): OutcomeMeaning['reading'];
}

function seenTable(id: 'magnet' | 'skin' | 'under', weighed: readonly Weighed[], priors: Priors): Table {
  const names: readonly string[] = id === 'magnet' ? magnetOutcomes : colours;
  const rows = weighed.map(({ of }) =>
    id === 'magnet'
      ? magnetOutcomes.map((seen) => magnetProbability(seen, of, priors))
      : colours.map((colour) => colourProbability(id, colour, of.id, priors)),
  );
  return { rows, reading: (i) => names[i] as string };
}

function measuredTable(id: MeasurementId, u: number, weighed: readonly Weighed[], priors: Priors): Table {
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
function meanings({ rows, reading }: Table, weighed: readonly Weighed[], apart: boolean): OutcomeMeaning[] {
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

/** Whether a measurement is still to be made; a two-terminal resistance leaves the better one open. */
function isOpen(id: MeasurementId, evidence: Evidence): boolean {
  if (id === 'resistance') return evidence.resistance?.method !== 'four-terminal';
  if (id === 'strands') return !(evidence.strands?.count && evidence.strands.diameter);
  return evidence[id] === undefined;
}

/** Every measurement not yet made, with its expected gain, greatest first. */
export function openMeasurements(weighed: readonly Weighed[], evidence: Evidence, priors: Priors): NextMeasurement[] {
  const shares = weighed.map(({ probability }) => probability);
  const doubt = entropyOf(shares);
  const ids = Object.keys(instruments.value) as MeasurementId[];
  return ids
    .filter((id) => isOpen(id, evidence))
    .map((id) => {
      const { destructive, u } = instruments.value[id];
      const seen = id === 'magnet' || id === 'skin' || id === 'under';
      const table = seen ? seenTable(id, weighed, priors) : measuredTable(id, u ?? 1, weighed, priors);
      const gain = information(shares, table.rows);
      const outcomes = meanings(table, weighed, seen);
      return { measurement: id, gain, share: doubt > 0 ? gain / doubt : 0, destructive, outcomes };
    })
    .sort((a, b) => b.gain - a.gain);
}

/**
 * The measurement that is expected to tell most: one that leaves the sample as it is if any is worth while, else one that
 * does not. Null where the metal is settled, or where nothing that is left is worth while.
 */
export function nextMeasurement(
  weighed: readonly Weighed[],
  evidence: Evidence,
  priors: Priors,
): NextMeasurement | null {
  if (entropyOf(weighed.map(({ probability }) => probability)) < settled) return null;
  const open = openMeasurements(weighed, evidence, priors).filter(({ share }) => share >= worthWhile);
  return open.find(({ destructive }) => !destructive) ?? open[0] ?? null;
}
