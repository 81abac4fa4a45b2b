// Densities over the natural logarithm of a quantity.

/** A density on an even grid; `p` sums to 1 (or to the weight that was put into it). */
export interface Line {
  readonly from: number;
  readonly step: number;
  readonly p: Float64Array;
}

/** An empty line from `from` to `to`, both inside, in steps of `step` at most; at least three points. */
export function emptyLine(from: number, to: number, step: number): Line {
  const count = Math.max(3, Math.ceil((to - from) / step) + 3);
  return { from: from - step, step, p: new Float64Array(count) };
}

/** Puts a weight at `x`, shared by its two neighbours; off the line nothing is put. */
export function put({ from, step, p }: Line, x: number, weight: number): void {
  const at = (x - from) / step;
  const i = Math.floor(at);
  if (i < 0 || i + 1 >= p.length) return;
  const share = at - i;
  p[i] = (p[i] as number) + weight * (1 - share);
  p[i + 1] = (p[i + 1] as number) + weight * share;
}

/** Its value at `x` between the grid's points; 0 off the line. */
export function valueAt({ from, step, p }: Line, x: number): number {
  const at = (x - from) / step;
  const i = Math.floor(at);
  if (i < 0 || i + 1 >= p.length) return 0;
  return (p[i] as number) + (at - i) * ((p[i + 1] as number) - (p[i] as number));
}

/** Sum of its weights. */
export function total({ p }: Line): number {
  let sum = 0;
  for (const one of p) sum += one;
  return sum;
}

/** The same with its weights summing to 1; unchanged where they sum to nothing. */
export function normalised(line: Line): Line {
  const sum = total(line);
  return sum > 0 ? { ...line, p: line.p.map((one) => one / sum) } : line;
}

/** Mean and standard deviation of what it is a density of. */
export function moments({ from, step, p }: Line): { mean: number; sd: number } {
  let [sum, first] = [0, 0];
  for (let i = 0; i < p.length; i++) {
    sum += p[i] as number;
    first += i * (p[i] as number);
  }
  const middle = first / sum;
  let second = 0;
  for (let i = 0; i < p.length; i++) second += (i - middle) ** 2 * (p[i] as number);
  return { mean: from + step * middle, sd: step * Math.sqrt(second / sum) };
}

/** Where the weights below reach the share `q`, each point's weight spread evenly over its own step. */
export function quantile(line: Line, q: number): number {
  const { from, step, p } = line;
  const wanted = q * total(line);
  let below = 0;
  for (let i = 0; i < p.length; i++) {
    const here = p[i] as number;
    if (here > 0 && below + here >= wanted) return from + step * (i - 0.5 + (wanted - below) / here);
    below += here;
  }
  return from + step * (p.length - 0.5);
}

/** Normal weights of one standard deviation `sd` [steps], to five of them, summing to 1. */
function normalKernel(sd: number): Float64Array {
  const reach = Math.max(1, Math.ceil(5 * sd));
  const kernel = Float64Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-(((i - reach) / sd) ** 2) / 2));
  const sum = kernel.reduce((all, one) => all + one, 0);
  return kernel.map((one) => one / sum);
}

/** The density of the quantity times an error of relative standard uncertainty `u`: a normal spread of the logarithm. */
export function spread(line: Line, u: number): Line {
  if (u < line.step / 3) return line; // finer than the grid can show
  const kernel = normalKernel(u / line.step);
  const reach = (kernel.length - 1) / 2;
  const p = new Float64Array(line.p.length + 2 * reach);
  for (let i = 0; i < line.p.length; i++) {
    const weight = line.p[i] as number;
    if (weight < 1e-14) continue;
    for (let k = 0; k < kernel.length; k++) p[i + k] = (p[i + k] as number) + weight * (kernel[k] as number);
  }
  return { from: line.from - reach * line.step, step: line.step, p };
}

/** Adds a line's weights to another's, times `share`. */
export function add(to: Line, line: Line, share = 1): void {
  const { from, step, p } = finer(line, to.step);
  for (let i = 0; i < p.length; i++) if (p[i]) put(to, from + i * step, share * (p[i] as number));
}

/** A coarse line's weights spread evenly over finer points, so that a finer grid is not left with holes. */
function finer(line: Line, step: number): Line {
  const times = Math.ceil(line.step / step);
  if (times <= 1) return line;
  const p = new Float64Array(line.p.length * times);
  for (let i = 0; i < p.length; i++) p[i] = (line.p[Math.floor(i / times)] as number) / times;
  const fine = line.step / times;
  return { from: line.from - (line.step - fine) / 2, step: fine, p };
}

/** One density of several by their weights, on a grid as fine as the finest of them. */
export function mixture(lines: readonly Line[], weights: readonly number[], finest: number): Line {
  const used = lines.flatMap((line, i) =>
    (weights[i] as number) > 1e-4 ? [{ line, weight: weights[i] as number }] : [],
  );
  const ends = used.map(({ line }) => extent(line));
  const step = Math.max(finest, Math.min(...used.map(({ line }) => line.step)));
  const out = emptyLine(Math.min(...ends.map(([from]) => from)), Math.max(...ends.map(([, to]) => to)), step);
  for (const { line, weight } of used) add(out, line, weight);
  return normalised(out);
}

/** Its own width from the first to the last point that holds anything. */
export function extent({ from, step, p }: Line, least = 1e-9): readonly [number, number] {
  let [i, k] = [0, p.length - 1];
  while (i < k && (p[i] as number) < least) i++;
  while (k > i && (p[k] as number) < least) k--;
  return [from + i * step, from + k * step];
}
