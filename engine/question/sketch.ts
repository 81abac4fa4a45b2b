/** What a sketch may be of: the conductor's temperature [K] or its current [A], over time [s]. */
export type SketchQuantity = 'temperature' | 'current';

/** A point that a sketch goes through: time [s], and the value there in SI. */
export interface SketchKnot {
  readonly t: number;
  readonly value: number;
}

/** Four facts of a curve, in its own unit; `share` is the time to 63 % of its change [s], null where it does not change. */
export interface CurveFacts {
  readonly start: number;
  readonly minute: number;
  readonly end: number;
  readonly share: number | null;
}

const share = 0.63; // our choice: 1 − 1/e, as lessons say it
const samples = 512; // of a sketch, evenly over its time

/**
 * The value of a sketch at time `t` [s]: a cubic through its knots that never overshoots them, held at both ends. `knots` in
 * order of time, at least one. Slopes after Steffen 1990, Astron. Astrophys. 239, 443 (from memory):
 * y'ᵢ = (sgn sᵢ₋₁ + sgn sᵢ)·min(|sᵢ₋₁|, |sᵢ|, |pᵢ|/2), with s the slopes of the chords and p the parabola's at the knot.
 */
export function sketchAt(knots: readonly SketchKnot[], t: number): number {
  const last = knots.length - 1;
  const [first, final] = [knots[0], knots[last]] as [SketchKnot, SketchKnot];
  if (last === 0 || t <= first.t) return first.value;
  if (t >= final.t) return final.value;
  let i = 0;
  while (i < last - 1 && (knots[i + 1] as SketchKnot).t <= t) i++;
  const [a, b] = [knots[i], knots[i + 1]] as [SketchKnot, SketchKnot];
  const h = b.t - a.t;
  const u = (t - a.t) / h;
  const [da, db] = [slopeAt(knots, i) * h, slopeAt(knots, i + 1) * h];
  const rise = b.value - a.value;
  return a.value + u * (da + u * (3 * rise - 2 * da - db + u * (da + db - 2 * rise)));
}

function chord(knots: readonly SketchKnot[], i: number): number {
  const [a, b] = [knots[i], knots[i + 1]] as [SketchKnot, SketchKnot];
  return (b.value - a.value) / (b.t - a.t);
}

function slopeAt(knots: readonly SketchKnot[], i: number): number {
  const last = knots.length - 1;
  if (last === 1) return chord(knots, 0);
  if (i === 0) return (3 * chord(knots, 0) - slopeAt(knots, 1)) / 2;
  if (i === last) return (3 * chord(knots, last - 1) - slopeAt(knots, last - 1)) / 2;
  const [before, here, after] = [knots[i - 1], knots[i], knots[i + 1]] as [SketchKnot, SketchKnot, SketchKnot];
  const [s0, s1] = [chord(knots, i - 1), chord(knots, i)];
  const [h0, h1] = [here.t - before.t, after.t - here.t];
  const p = (s0 * h1 + s1 * h0) / (h0 + h1);
  return (Math.sign(s0) + Math.sign(s1)) * Math.min(Math.abs(s0), Math.abs(s1), Math.abs(p) / 2);
}

/**
 * The four facts of a curve given by its samples, over the time from its start to `until` [s]. Where the supply changes at
 * `until`, the value before the change.
 */
export function curveFacts(t: ArrayLike<number>, values: ArrayLike<number>, until: number): CurveFacts {
  const start = values[0] as number;
  const end = before(t, values, until);
  return { start, end, minute: before(t, values, Math.min(60, until)), share: timeTo(t, values, until, start, end) };
}

/** The four facts of a sketch over the time from its start to `until` [s]. */
export function sketchFacts(knots: readonly SketchKnot[], until: number): CurveFacts {
  const t = Array.from({ length: samples + 1 }, (_, i) => (until * i) / samples);
  const facts = curveFacts(
    t,
    t.map((at) => sketchAt(knots, at)),
    until,
  );
  return { ...facts, minute: sketchAt(knots, Math.min(60, until)) };
}

/** The value at `at` [s], straight between samples; of two at the same time the first. */
function before(t: ArrayLike<number>, values: ArrayLike<number>, at: number): number {
  let i = 0;
  while (i < t.length - 1 && (t[i] as number) < at - 1e-9) i++;
  const [t0, t1] = [t[Math.max(0, i - 1)], t[i]] as [number, number];
  const [v0, v1] = [values[Math.max(0, i - 1)], values[i]] as [number, number];
  return t1 > t0 && at < t1 ? v0 + ((v1 - v0) * (at - t0)) / (t1 - t0) : v1;
}

/** When the curve first has made its share of the way from `start` to `end` [s]; null where there is no way to go. */
function timeTo(t: ArrayLike<number>, values: ArrayLike<number>, until: number, start: number, end: number) {
  const way = end - start;
  if (Math.abs(way) <= 1e-6 * Math.max(1, Math.abs(start))) return null;
  const part = (i: number) => ((values[i] as number) - start) / way;
  for (let i = 1; i < t.length && (t[i - 1] as number) <= until; i++) {
    const [p0, p1] = [part(i - 1), part(i)];
    if (p0 < share && p1 >= share)
      return (t[i - 1] as number) + ((share - p0) / (p1 - p0)) * ((t[i] as number) - (t[i - 1] as number));
  }
  return null;
}
