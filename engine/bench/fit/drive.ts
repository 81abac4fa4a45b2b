import { within } from '../../errors.ts';
import type { BenchLog, Probe } from '../log.ts';

/** Standard uncertainties of one reading of each column, SI. */
export interface ColumnUncertainty {
  /** Current [A] and volts [V]. */
  readonly I: number;
  readonly U: number;
  /** Sheath probes [K]: one figure for all, or one for each probe of the log. */
  readonly probe: number | readonly number[];
  /** Air beside the lead [K]. */
  readonly ambient: number;
  /** What stays the same all through a run, and so does not average away; nothing unless given. */
  readonly lasting?: LastingUncertainty;
}

/** Standard uncertainties of an instrument's own error. */
export interface LastingUncertainty {
  /** Gain of volts over amperes, as a share [1]. */
  readonly gain?: number;
  /** Each sheath probe, and the thermometer in the air [K]. */
  readonly probe?: number;
  readonly ambient?: number;
}

/** Readings of one thermometer of the sheath, as a fit compares them. */
export interface DrivenProbe {
  readonly name: string;
  readonly place: 'surface' | 'outside';
  /** Means of groups of rows [K], NaN where nothing was read, and their standard uncertainties [K]. */
  readonly T: Float64Array;
  readonly u: Float64Array;
}

/**
 * A log made ready to drive the model: its current and air between `nodes`, and its readings at some of the nodes, each the
 * mean of a group of neighbouring rows.
 */
export interface Drive {
  /** Rising times [s] between which current and air are held; the first is the log's first row. */
  readonly nodes: Float64Array;
  /** Mean of I² [A²] and of the air [K] from each node to the next, by straight lines between rows; one shorter than `nodes`. */
  readonly squares: Float64Array;
  readonly ambient: Float64Array;
  /** Node at which each group of rows lies, and how many rows it holds. */
  readonly at: Int32Array;
  readonly count: Int32Array;
  /** Mean time of each group [s], mean current [A] and volts [V] over its rows with both; NaN where there are none. */
  readonly t: Float64Array;
  readonly I: Float64Array;
  readonly U: Float64Array;
  /** Standard uncertainty of U − I·R [V], the current's included. */
  readonly uU: Float64Array;
  readonly probes: readonly DrivenProbe[];
  /** Rows of the log that hold a time. */
  readonly rows: number;
  /** Greatest current [A], and least and greatest air [K]. */
  readonly greatest: number;
  readonly air: readonly [number, number];
}

/** Share of the greatest current that a reading must have to tell a resistance. */
const leastShare = 0.02;
/** Share of the greatest current by which it must change from row to row to count as switched. */
const switchShare = 0.05;

/** The standard uncertainty of a log's probe `i` [K]. */
export function probeUncertainty({ probe }: ColumnUncertainty, i: number): number {
  return typeof probe === 'number' ? probe : (probe[i] ?? Number.NaN);
}

/** A column with its gaps bridged by straight lines in time, and held at its ends; null where it holds nothing. */
export function bridged(t: Float64Array, column: Float64Array): Float64Array | null {
  const out = Float64Array.from(column);
  let before = -1;
  for (let k = 0; k < out.length; k++) {
    if (!Number.isFinite(out[k])) continue;
    for (let j = before + 1; j < k; j++) {
      const part = before < 0 ? 1 : (t[j] - t[before]) / (t[k] - t[before]);
      out[j] = before < 0 ? out[k] : out[before] + part * (out[k] - out[before]);
    }
    before = k;
  }
  if (before < 0) return null;
  return out.fill(out[before], before + 1);
}

/** ∫y² dt and ∫y dt from the first row to any time, y straight between rows; for times asked in rising order. */
function integrals(t: Float64Array, y: Float64Array) {
  let k = 0;
  let square = 0;
  let plain = 0;
  const square3 = (a: number, b: number) => (a * a + a * b + b * b) / 3;
  return (time: number): { square: number; plain: number } => {
    while (k < t.length - 2 && t[k + 1] <= time) {
      const dt = t[k + 1] - t[k];
      square += dt * square3(y[k], y[k + 1]);
      plain += (dt * (y[k] + y[k + 1])) / 2;
      k++;
    }
    const dt = time - t[k];
    const end = y[k] + (dt / (t[k + 1] - t[k])) * (y[k + 1] - y[k]);
    return { square: square + dt * square3(y[k], end), plain: plain + (dt * (y[k] + end)) / 2 };
  };
}

/** Rows after which the current is switched. */
export function switches(I: Float64Array, u: number): boolean[] {
  const greatest = I.reduce((a, b) => Math.max(a, b), 0);
  const least = Math.max(switchShare * greatest, 8 * u);
  return Array.from(I, (value, k) => k < I.length - 1 && Math.abs(I[k + 1] - value) > least);
}

/**
 * First rows of the groups: about `most` of them, of one row just after the current is switched and ever more rows later,
 * never across a switch.
 */
function groupStarts(switched: readonly boolean[], most: number): number[] {
  const full = Math.ceil(switched.length / most);
  const starts: number[] = [];
  let size = 1;
  let sameSize = 0;
  for (let k = 0; k < switched.length; ) {
    starts.push(k);
    let held = 1;
    while (held < size && k + held < switched.length && !switched[k + held - 1]) held++;
    k += held;
    sameSize++;
    if (switched[k - 1]) size = 1;
    else if (sameSize >= 4) size = Math.min(full, size * 2);
    else continue;
    sameSize = 0;
  }
  return starts;
}

/** How much later the second of two rows of one time counts [s]. */
const justAfter = 1e-3;

/**
 * Rows with a time that rises, and their times [s]. Of rows with the very same time the first counts, and another beside it where the
 * current was switched between them: that one just after.
 */
function soundRows({ t, I }: BenchLog, u: number): { rows: number[]; t: Float64Array } {
  const rows: number[] = [];
  const times: number[] = [];
  const greatest = I.filter(Number.isFinite).reduce((most, value) => Math.max(most, value), 0);
  const switched = (k: number, before: number) => Math.abs(I[k] - I[before]) > Math.max(switchShare * greatest, 8 * u);
  for (let k = 0; k < t.length; k++) {
    const before = rows.at(-1);
    const last = times.at(-1) ?? Number.NEGATIVE_INFINITY;
    if (!Number.isFinite(t[k])) continue;
    const again = before !== undefined && t[k] === t[before] && switched(k, before);
    if (!(t[k] > last) && !again) continue;
    rows.push(k);
    times.push(again ? last + justAfter : t[k]);
  }
  return { rows, t: Float64Array.from(times) };
}

const mean = (values: Float64Array, rows: readonly number[]): number =>
  rows.reduce((sum, k) => sum + values[k], 0) / rows.length;

function probeMeans(probe: Probe, u: number, groups: readonly (readonly number[])[]): DrivenProbe {
  const read = groups.map((rows) => rows.filter((k) => Number.isFinite(probe.T[k])));
  return {
    name: probe.name,
    place: probe.place === 'outside' ? 'outside' : 'surface',
    T: Float64Array.from(read, (rows) => mean(probe.T, rows)),
    u: Float64Array.from(read, (rows) => u / Math.sqrt(rows.length)),
  };
}

/**
 * Makes a log ready to drive the model. Null where it holds fewer than three rows, or no current.
 * @param air the air where the log has no thermometer for it [K]
 * @param R about the lead's resistance [Ω]; it carries the current's uncertainty to the volts
 * @param most about how many groups of rows; each row is its own unless given
 */
export function driveOf(
  log: BenchLog,
  u: ColumnUncertainty,
  air: number,
  R: number,
  most = Number.POSITIVE_INFINITY,
): Drive | null {
  const finite = Number.MAX_VALUE;
  within('standard uncertainty of current', u.I, [0, finite], 'A');
  within('standard uncertainty of volts', u.U, [1e-12, finite], 'V');
  const sheath = log.probes.flatMap((probe, i) => (probe.place === 'surface' || probe.place === 'outside' ? [i] : []));
  for (const i of sheath) within('standard uncertainty of a probe', probeUncertainty(u, i), [1e-9, finite], 'K');
  const { rows, t } = soundRows(log, u.I);
  const pick = (column: Float64Array) => Float64Array.from(rows, (k) => column[k]);
  const I = bridged(t, pick(log.I));
  if (t.length < 3 || I === null) return null;
  const Ta = (log.ambient && bridged(t, pick(log.ambient))) ?? new Float64Array(t.length).fill(air);
  const switched = switches(I, u.I);
  const starts = groupStarts(switched, most);
  const groups = starts.map((from, g) => range(from, starts[g + 1] ?? t.length));
  const middle = Float64Array.from(groups, (group) => mean(t, group));
  const edges = switched.flatMap((is, k) => (is ? [t[k], t[k + 1]] : []));
  // where the log tells that the run had gone on before its first row, that row's current is taken to have flowed
  const begun = t[0] - (I[0] > 0 ? (log.before ?? 0) : 0);
  const nodes = Float64Array.from([...new Set([begun, t[0], ...middle, ...edges])].sort((a, b) => a - b));
  const place = new Map(Array.from(nodes, (time, k) => [time, k]));
  const greatest = I.reduce((a, b) => Math.max(a, b), 0);
  const volts = pick(log.U);
  const amps = pick(log.I);
  const told = groups.map((group) => group.filter((k) => Number.isFinite(volts[k]) && amps[k] > leastShare * greatest));
  const since = (first: number, column: Float64Array) => (begun < t[0] ? Float64Array.of(first, ...column) : column);
  const [squares, airs] = between(nodes, since(begun, t), since(I[0], I), since(Ta[0], Ta));
  return {
    nodes,
    squares,
    ambient: airs,
    at: Int32Array.from(middle, (time) => place.get(time) as number),
    count: Int32Array.from(groups, (group) => group.length),
    t: middle,
    I: Float64Array.from(told, (group) => mean(amps, group)),
    U: Float64Array.from(told, (group) => mean(volts, group)),
    uU: Float64Array.from(told, (group) => Math.hypot(u.U, R * u.I) / Math.sqrt(group.length)),
    probes: sheath.map((i) => {
      const probe = log.probes[i] as Probe;
      return probeMeans({ ...probe, T: pick(probe.T) }, probeUncertainty(u, i), groups);
    }),
    rows: rows.length,
    greatest,
    air: [airs.reduce((a, b) => Math.min(a, b)), airs.reduce((a, b) => Math.max(a, b))],
  };
}

const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i);

/** Means of I² and of the air from node to node. */
function between(
  nodes: Float64Array,
  t: Float64Array,
  I: Float64Array,
  Ta: Float64Array,
): readonly [Float64Array, Float64Array] {
  const current = Array.from(nodes, integrals(t, I));
  const air = Array.from(nodes, integrals(t, Ta));
  const mean = (k: number, at: (k: number) => number) => (at(k + 1) - at(k)) / (nodes[k + 1] - nodes[k]);
  const many = nodes.length - 1;
  return [
    Float64Array.from({ length: many }, (_, k) => mean(k, (j) => current[j].square)),
    Float64Array.from({ length: many }, (_, k) => mean(k, (j) => air[j].plain)),
  ];
}
