import { emptyLine, type Line, valueAt } from './line.ts';
import type { LnPiece } from './pieces.ts';

/** A piece at the points where it says anything: logarithms of the quantity, and its likelihood times the step. */
export interface Nodes {
  readonly x: Float64Array;
  readonly weight: Float64Array;
  readonly step: number;
}

const least = 1e-13; // of the greatest likelihood
const farthest = 60; // widths, for tails that fall off slowly
const widest = 5; // of the logarithm: a two-terminal reading never says how small the lead's own share is, and below 1/150 nobody asks

/** Points of a piece, close enough for a kernel of standard deviation `u` as well. The likelihood is over its greatest value; `log` keeps that. */
function nodesOf(piece: LnPiece, u: number): { nodes: Nodes; log: number } {
  const step = Math.min(piece.width / 3, u);
  const reach = Math.min(widest, farthest * piece.width);
  const top = piece.log(piece.centre);
  const side = (sign: 1 | -1) => {
    const found: [number, number][] = [];
    for (let i = sign > 0 ? 0 : 1; i * step <= reach; i++) {
      const x = piece.centre + sign * i * step;
      const value = Math.exp(piece.log(x) - top);
      if (!(value > least)) break;
      found.push([x, value * step]);
    }
    return found;
  };
  const all = [...side(-1).reverse(), ...side(1)];
  return {
    nodes: { x: Float64Array.from(all, ([x]) => x), weight: Float64Array.from(all, ([, w]) => w), step },
    log: top,
  };
}

/** A piece as seen through a tolerance: its likelihood of a nominal value, where the true one lies `u` about it. */
export interface Smeared {
  readonly nodes: Nodes;
  /** Over the greatest likelihood of the piece, whose logarithm is `log`. */
  readonly table: Line;
  readonly log: number;
  /** Standard deviation of the logarithm, tolerance and all. */
  readonly width: number;
}

const perU = 10; // points of the table in one standard deviation: linear between them to 0.1 %
const reachU = 7;

/** The piece smeared by a normal tolerance `u` of the logarithm. */
export function smeared(piece: LnPiece, u: number): Smeared {
  const { nodes, log } = nodesOf(piece, u);
  const { x, weight } = nodes;
  const low = (x[0] as number) - reachU * u;
  const high = (x[x.length - 1] as number) + reachU * u;
  const table = emptyLine(low, high, u / perU);
  const scale = 1 / (u * Math.sqrt(2 * Math.PI));
  for (let i = 0; i < table.p.length; i++) {
    const at = table.from + i * table.step;
    const first = Math.max(0, Math.ceil((at - reachU * u - (x[0] as number)) / nodes.step));
    const last = Math.min(x.length - 1, Math.floor((at + reachU * u - (x[0] as number)) / nodes.step));
    let sum = 0;
    for (let k = first; k <= last; k++) {
      const z = (at - (x[k] as number)) / u;
      sum += (weight[k] as number) * Math.exp((-z * z) / 2);
    }
    table.p[i] = sum * scale;
  }
  return { nodes, table, log, width: Math.hypot(piece.width, u) };
}

/** First and last nominal value at which a smeared piece says anything. */
export const reachOf = ({ table: { from, step, p } }: Smeared): readonly [number, number] => [
  from,
  from + step * (p.length - 1),
];

/** Posterior of the quantity itself, from the weights of nominal values that everything else leaves: on the piece's own points. */
export function sharpened({ nodes }: Smeared, nominal: Line, u: number): Line {
  const { x, weight, step } = nodes;
  const p = new Float64Array(x.length);
  const near = { from: nominal.from, step: nominal.step, p: nominal.p };
  for (let k = 0; k < x.length; k++) p[k] = (weight[k] as number) * aboutNormal(near, x[k] as number, u);
  return { from: x[0] as number, step, p };
}

/** Weights of a line about `x`, each by the normal density of its distance. */
function aboutNormal({ from, step, p }: Line, x: number, u: number): number {
  const first = Math.max(0, Math.ceil((x - reachU * u - from) / step));
  const last = Math.min(p.length - 1, Math.floor((x + reachU * u - from) / step));
  let sum = 0;
  for (let i = first; i <= last; i++) {
    const weight = p[i] as number;
    if (weight === 0) continue;
    const z = (from + i * step - x) / u;
    sum += weight * Math.exp((-z * z) / 2);
  }
  return sum / u;
}

/** The smeared likelihood of a nominal value, over the greatest of the piece. */
export const likelihoodAt = ({ table }: Smeared, x: number): number => valueAt(table, x);
