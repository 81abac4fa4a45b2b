import { onLine } from './band.ts';
import type { Device, Gate } from './device.ts';
import type { TimeToLimit } from './time-to-limit.ts';

/**
 * What an edge of the harm set rests on. `thermal`: the cable alone, its rating or its time to the limit. `rule`: the
 * conventional operating current. `gate`: a point of the standard. `assumed`: a line drawn between two of them. `prospective`:
 * no greater current flows. `not found`: the same, but above the last point of the standard, where only a maker's curve can
 * say where the set ends.
 */
export type EdgeEvidence = 'thermal' | 'rule' | 'gate' | 'assumed' | 'prospective' | 'not found';

/** One end of an interval of currents: where, on what evidence, and how long the cable takes to its limit there [s]. */
export interface HarmEdge {
  readonly I: number;
  readonly evidence: EdgeEvidence;
  readonly t: number;
}

/** An interval of currents that take the cable past its limit while the device may still hold. */
export interface HarmSpan {
  readonly from: HarmEdge;
  readonly to: HarmEdge;
}

/** Ratio of currents, less one, to which a crossing is found. */
const sharpness = 2e-4;

/**
 * The current at which `g` changes sign between `a` and `b` [A], both above `Iz`, where its values `ga` and `gb` differ in
 * sign: halves while a value is infinite, then regula falsi of the Illinois kind, on a scale of ln(I − Iz), on which times
 * to a limit are nearly straight at both ends.
 */
function crossingCurrent(g: (I: number) => number, Iz: number, a: number, ga: number, b: number, gb: number): number {
  const current = (x: number) => Iz + Math.exp(x);
  const width = () => Math.abs(x1 - x0) * (1 - Iz / current(Math.max(x0, x1)));
  let [x0, f0, x1, f1] = [Math.log(a - Iz), ga, Math.log(b - Iz), gb];
  for (let i = 0; i < 60 && width() > sharpness; i++) {
    const finite = Number.isFinite(f0) && Number.isFinite(f1);
    const x2 = finite ? (x0 * f1 - x1 * f0) / (f1 - f0) : (x0 + x1) / 2;
    const f2 = g(current(x2));
    const moved = Math.abs(x2 - x1) * (1 - Iz / current(x2));
    if (f2 > 0 !== f1 > 0) {
      x0 = x1;
      f0 = f1;
    } else if (finite) {
      f0 /= 2;
    }
    x1 = x2;
    f1 = f2;
    if (finite && (moved < sharpness || Math.abs(f2) < sharpness)) break;
  }
  return current(x1);
}

/** A stretch of currents over which the slow edge is one law. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly slow: (I: number) => number;
  /** 'level' where the edge keeps one time, so that the harm lies to the right of one crossing. */
  readonly form: 'for ever' | 'level' | 'sloped';
}

/** The staircase, cut at its gates. */
function treads({ by }: Device): Stretch[] {
  const ends = [...by.slice(1).map(({ I }) => I), Number.POSITIVE_INFINITY];
  const hold: Stretch = {
    from: 0,
    to: by[0]?.I ?? Number.POSITIVE_INFINITY,
    slow: () => Number.POSITIVE_INFINITY,
    form: 'for ever',
  };
  return [
    hold,
    ...by.map(({ I, t }, i): Stretch => ({ from: I, to: ends[i] as number, slow: () => t, form: 'level' })),
  ];
}

/** The lines between the gates; beyond a fuse's last one its I²t stays, beyond a breaker's its time. */
function slopes(device: Device): Stretch[] {
  const { by, kind } = device;
  const level = treads(device);
  return level.map((stretch, i) => {
    const gate = by[i - 1];
    if (!gate) return stretch;
    const next = by[i];
    if (next) return { ...stretch, slow: (I) => onLine(gate, next, I), form: 'sloped' };
    return kind === 'breaker' ? stretch : { ...stretch, slow: (I) => gate.t * (gate.I / I) ** 2, form: 'sloped' };
  });
}

/** Currents at which a sloped stretch is looked at: its ends and their middle, by ratio. */
const looks = [0, 0.5, 1];

/** Pieces of one stretch, between `from` and `b` [A], in which the limit comes before the slow edge; g = ln t_limit − ln t_slow. */
function piecesIn(stretch: Stretch, { f, Iz }: SpanQuestion, from: number, b: number): [number, number][] {
  if (stretch.form === 'for ever') return [[from, b]];
  const a = Math.max(from, Iz * (1 + sharpness));
  if (a >= b) return [];
  const g = (I: number) => Math.log(f(I)) - Math.log(stretch.slow(I));
  if (stretch.form === 'level') {
    const gb = g(b);
    if (gb >= 0) return [];
    const ga = g(a);
    return ga < 0 ? [[from, b]] : [[crossingCurrent(g, Iz, a, ga, b, gb), b]];
  }
  const at = looks.map((part) => a * (b / a) ** part);
  const values = at.map(g);
  const found: [number, number][] = [];
  let open: number | null = (values[0] as number) < 0 ? from : null;
  for (let i = 1; i < at.length; i++) {
    const [I0, I1, g0, g1] = [at[i - 1], at[i], values[i - 1], values[i]] as [number, number, number, number];
    if (g1 < 0 === g0 < 0) continue;
    const I = crossingCurrent(g, Iz, I0, g0, I1, g1);
    if (open === null) open = I;
    else {
      found.push([open, I]);
      open = null;
    }
  }
  if (open !== null) found.push([open, b]);
  return found;
}

/** What the harm set of one start and one form of the slow edge is worked out from. */
export interface SpanQuestion {
  readonly device: Device;
  /** Time to the limit. */
  readonly f: TimeToLimit;
  /** Steady current at the limit [A]: below it the limit is never reached. */
  readonly Iz: number;
  /** Greatest current that can flow [A]. */
  readonly prospective: number;
}

/** All intervals up to the prospective current in which f(I) < slowest(I), by the staircase or by the lines. */
export function harmSpans(of: SpanQuestion, form: 'guaranteed' | 'assumed'): HarmSpan[] {
  const { device, Iz, prospective } = of;
  const stretches = form === 'guaranteed' ? treads(device) : slopes(device);
  const pieces: [number, number][] = [];
  for (const stretch of stretches) {
    const a = Math.max(stretch.from, Iz);
    const b = Math.min(stretch.to, prospective);
    if (!(a < b)) continue;
    for (const [from, to] of piecesIn(stretch, of, a, b)) {
      const last = pieces.at(-1);
      if (last && last[1] === from) last[1] = to;
      else pieces.push([from, to]);
    }
  }
  return pieces.map(([from, to]) => ({ from: lower(of, from, form), to: upper(of, to, form) }));
}

const isGate = (by: readonly Gate[], I: number) => by.findIndex((gate) => gate.I === I);

function lower({ f, Iz, device }: SpanQuestion, I: number, form: 'guaranteed' | 'assumed'): HarmEdge {
  if (I === Iz) return { I, evidence: 'thermal', t: Number.POSITIVE_INFINITY };
  const line = form === 'assumed' && isGate(device.by, I) < 0 && I < (device.by.at(-1)?.I ?? 0);
  return { I, evidence: line ? 'assumed' : 'thermal', t: f(I) };
}

function upper({ device, f, Iz, prospective }: SpanQuestion, I: number, form: 'guaranteed' | 'assumed'): HarmEdge {
  const { by, agreed } = device;
  const t = I > Iz ? f(I) : Number.POSITIVE_INFINITY;
  const gate = isGate(by, I);
  if (gate >= 0) return { I, evidence: gate === 0 && agreed ? 'rule' : 'gate', t };
  if (I < prospective) return { I, evidence: form === 'assumed' ? 'assumed' : 'thermal', t };
  return { I, evidence: I > (by.at(-1)?.I ?? 0) ? 'not found' : 'prospective', t };
}
