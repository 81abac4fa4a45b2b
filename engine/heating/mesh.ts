import type { Ring } from '../surroundings/outside.ts';

/**
 * The rings cut into cells of equal steps in s = ln r, where the heat equation reads w ∂θ/∂t = ∂/∂s (κ ∂θ/∂s) with
 * w = 2π ρc r² and κ = 2π k. Nodes lie on the cells' ends; node 0 is the conductor, the last the outermost solid surface.
 *
 * Flow between neighbours is exact for steady states: K = κ/Δs. Storage uses the compact weights (1/12, 10/12, 1/12) inside a
 * run of equal cells and (1/3, 1/6) at its two ends, so that heat is conserved and the method is of third order in Δs.
 */
export interface Mesh {
  /** Radii of the nodes [m]. */
  readonly r: Float64Array;
  /** Conductance from node i to i + 1 [W/(m·K)]. */
  readonly K: Float64Array;
  /** Storage matrix, three diagonals [J/(m·K)]: row i holds lower[i], diagonal[i], upper[i]. */
  readonly lower: Float64Array;
  readonly diagonal: Float64Array;
  readonly upper: Float64Array;
  /** Heat stored per kelvin at each node, the column sums of the storage matrix [J/(m·K)]. */
  readonly capacity: Float64Array;
  /** Node at the cable's own surface. */
  readonly surface: number;
}

interface Run {
  readonly ring: Ring;
  readonly s0: number;
  readonly s1: number;
  readonly cells: number;
}

const fewest = 5;
const fewestInside = 10; // in the ring on the conductor, where what happens fast happens
const finerBy = 8; // cells of each halving towards an end
const mostHalvings = 20;

/** Cells for each ring in proportion to ln(r1/r0), at least five, ten in the innermost; `cells` in all where that is possible. */
function shares(rings: readonly Ring[], cells: number): number[] {
  const widths = rings.map(({ r0, r1 }) => Math.log(r1 / r0));
  const total = widths.reduce((a, b) => a + b, 0);
  const least = (i: number) => (i === 0 ? Math.min(fewestInside, cells) : fewest);
  const counts = widths.map((width, i) => Math.max(least(i), Math.round((cells * width) / total)));
  const widest = widths.indexOf(Math.max(...widths));
  const over = counts.reduce((a, b) => a + b, 0) - cells;
  counts[widest] = Math.max(least(widest), (counts[widest] as number) - over);
  return counts;
}

/** Halvings that bring a step of `width` [m] down to `wanted` [m]. */
function halvingsFor(width: number, wanted: number): number {
  return width > wanted ? Math.min(mostHalvings, Math.ceil(Math.log2(width / wanted))) : 0;
}

/** Ends of the runs of ever finer cells towards s = 0, for equal steps of `step` elsewhere; nothing beyond `room`. */
function finerRuns(step: number, halvings: number, room: number): number[] {
  const ends: number[] = [];
  let s = 0;
  for (let level = halvings; level > 0 && s + finerBy * step * 2 ** -level <= room; level--) {
    s += finerBy * step * 2 ** -level;
    ends.push(s);
  }
  return ends;
}

/** A ring cut into `cells` equal steps of ln r, finer by halvings towards an end whose first cell must be `inner` or `outer` [m] or less. */
function cut(ring: Ring, cells: number, inner: number, outer: number): Run[] {
  const s0 = Math.log(ring.r0);
  const s1 = Math.log(ring.r1);
  const step = (s1 - s0) / cells;
  const room = 0.4 * (s1 - s0);
  const starts = [0, ...finerRuns(step, halvingsFor(ring.r0 * step, inner), room)].map((s) => s0 + s);
  const ends = [0, ...finerRuns(step, halvingsFor(ring.r1 * step, outer), room)].map((s) => s1 - s).reverse();
  const finer = (marks: number[]) =>
    marks.slice(1).map((mark, i): Run => ({ ring, s0: marks[i] as number, s1: mark, cells: finerBy }));
  const [from, to] = [starts.at(-1) as number, ends[0] as number];
  const middle = { ring, s0: from, s1: to, cells: Math.max(fewest, Math.ceil((to - from) / step - 1e-9)) };
  return [...finer(starts), middle, ...finer(ends)];
}

/**
 * Cuts `rings` into about `cells` cells.
 * @param conductorCapacity heat capacity lumped on node 0 [J/(m·K)]
 * @param cableRings how many of the rings belong to the cable; the surface lies at the end of the last of them
 * @param first greatest first cell at the conductor [m]; Infinity for equal steps
 * @param bareRadius radius of a conductor without rings [m]
 * @param last greatest last cell at the outermost surface [m]; Infinity for equal steps
 */
export function meshOf(
  rings: readonly Ring[],
  conductorCapacity: number,
  cableRings: number,
  cells: number,
  first: number,
  bareRadius: number,
  last = Number.POSITIVE_INFINITY,
): Mesh {
  const counts = rings.length > 0 ? shares(rings, cells) : [];
  const never = Number.POSITIVE_INFINITY;
  const runs = rings.flatMap((ring, i) =>
    cut(ring, counts[i] as number, i === 0 ? first : never, i === rings.length - 1 ? last : never),
  );
  const n = runs.reduce((sum, run) => sum + run.cells, 0) + 1;
  const mesh = {
    r: new Float64Array(n).fill(bareRadius),
    K: new Float64Array(Math.max(0, n - 1)),
    lower: new Float64Array(n),
    diagonal: new Float64Array(n),
    upper: new Float64Array(n),
    capacity: new Float64Array(n),
  };
  mesh.diagonal[0] = conductorCapacity;
  let node = 0;
  let surface = 0;
  for (const run of runs) {
    layRun(mesh, run, node);
    node += run.cells;
    if (rings.indexOf(run.ring) < cableRings) surface = node;
  }
  for (let i = 0; i < n; i++) {
    mesh.capacity[i] =
      (mesh.diagonal[i] as number) +
      (i > 0 ? (mesh.upper[i - 1] as number) : 0) +
      (i < n - 1 ? (mesh.lower[i + 1] as number) : 0);
  }
  return { ...mesh, surface };
}

type Open = Omit<Mesh, 'surface'>;

/** Lays one run of equal cells from `node` on. */
function layRun({ r, K, lower, diagonal, upper }: Open, { ring, s0, s1, cells }: Run, node: number): void {
  const step = (s1 - s0) / cells;
  const w = (i: number) => 2 * Math.PI * ring.rhoC * Math.exp(2 * (s0 + i * step)) * step;
  for (let i = 0; i <= cells; i++) r[node + i] = Math.exp(s0 + i * step);
  for (let i = 0; i < cells; i++) {
    const left = node + i;
    const right = left + 1;
    const [ownLeft, acrossLeft] = i === 0 ? [1 / 3, 1 / 6] : [5 / 12, 1 / 12];
    const [ownRight, acrossRight] = i === cells - 1 ? [1 / 3, 1 / 6] : [5 / 12, 1 / 12];
    K[left] = (2 * Math.PI * ring.k) / step;
    diagonal[left] = (diagonal[left] as number) + ownLeft * w(i);
    upper[left] = acrossLeft * w(i + 1);
    diagonal[right] = (diagonal[right] as number) + ownRight * w(i + 1);
    lower[right] = acrossRight * w(i);
  }
}
