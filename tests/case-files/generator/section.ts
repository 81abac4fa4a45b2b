// The cross-section of a round three-core cord on a square grid: plastic cells, three conductors each at one temperature, air outside.
// Explicit steps in time. Written for generated logs alone: it shares nothing with the model that is fitted to them.

/** What a section is made of; lengths in m, SI throughout. */
export interface SectionSpec {
  readonly bundleRadius: number;
  readonly insulation: number;
  readonly sheath: number;
  /** Conductivity [W/(m·K)] and heat capacity [J/(m³·K)] of the plastic. */
  readonly k: number;
  readonly rhoC: number;
  /** Cells across the cord. */
  readonly across: number;
}

export interface Section {
  readonly radius: number;
  /** Width of a cell [m], and the longest stable step [s]. */
  readonly dx: number;
  readonly longestStep: number;
  readonly cells: number;
  /** Perimeter [m] that each cell shows to the air; the shares add to π·D. */
  readonly open: Float64Array;
  /** Neighbours of each cell, four a cell: a cell's index, −1 none, −2 − core a conductor. */
  readonly beside: Int32Array;
  readonly k: number;
  /** Heat capacity of one cell [J/(m·K)]. */
  readonly capacity: number;
}

const cores = 3;
const conductor = (core: number) => -2 - core;

export function sectionOf(spec: SectionSpec): Section {
  const core = spec.bundleRadius + spec.insulation;
  const circle = (2 * core) / Math.sqrt(3);
  const radius = circle + core + spec.sheath;
  const dx = (2 * radius) / spec.across;
  const centres = Array.from({ length: cores }, (_, i) => {
    const angle = Math.PI / 2 + (2 * Math.PI * i) / cores;
    return [circle * Math.cos(angle), circle * Math.sin(angle)] as const;
  });
  const kinds = new Int32Array(spec.across ** 2).fill(-1);
  let cells = 0;
  for (let j = 0; j < spec.across; j++)
    for (let i = 0; i < spec.across; i++) {
      const [x, y] = [(i + 0.5) * dx - radius, (j + 0.5) * dx - radius];
      if (x * x + y * y > radius * radius) continue;
      const inside = centres.findIndex(([cx, cy]) => (x - cx) ** 2 + (y - cy) ** 2 < spec.bundleRadius ** 2);
      kinds[j * spec.across + i] = inside >= 0 ? conductor(inside) : cells++;
    }
  const beside = new Int32Array(4 * cells);
  const open = new Float64Array(cells);
  const at = (i: number, j: number) =>
    i < 0 || j < 0 || i >= spec.across || j >= spec.across ? -1 : (kinds[j * spec.across + i] as number);
  for (let j = 0; j < spec.across; j++)
    for (let i = 0; i < spec.across; i++) {
      const cell = at(i, j);
      if (cell < 0) continue;
      const neighbours = [at(i - 1, j), at(i + 1, j), at(i, j - 1), at(i, j + 1)];
      beside.set(neighbours, 4 * cell);
      open[cell] = neighbours.filter((one) => one === -1).length;
    }
  const faces = open.reduce((sum, share) => sum + share, 0);
  const perimeter = 2 * Math.PI * radius;
  for (let i = 0; i < cells; i++) open[i] = ((open[i] as number) * perimeter) / faces;
  const capacity = spec.rhoC * dx * dx;
  return { radius, dx, longestStep: (0.8 * capacity) / (8 * spec.k), cells, open, beside, k: spec.k, capacity };
}

/**
 * One step `dt` [s] of a section's cells `T` [K] beside conductors at `cores` [K], with `h` [W/(m²·K)] to air at `Ta` [K]. Writes the new
 * cells into `next`, the heat that left each conductor [W/m] into `left`; returns the mean temperature of the surface [K].
 */
export function stepSection(
  { beside, open, k, capacity, cells, radius }: Section,
  T: Float64Array,
  next: Float64Array,
  conductors: Float64Array,
  left: Float64Array,
  h: (Ts: number) => number,
  Ta: number,
  dt: number,
): number {
  left.fill(0);
  let surface = 0;
  for (let i = 0; i < cells; i++) {
    const here = T[i] as number;
    let flow = 0;
    for (let f = 4 * i; f < 4 * i + 4; f++) {
      const other = beside[f] as number;
      if (other >= 0) flow += k * ((T[other] as number) - here);
      else if (other < -1) {
        const given = 2 * k * ((conductors[-2 - other] as number) - here);
        flow += given;
        left[-2 - other] = (left[-2 - other] as number) + given;
      }
    }
    const wall = open[i] as number;
    if (wall > 0) {
      flow -= h(here) * wall * (here - Ta);
      surface += wall * here;
    }
    next[i] = here + (dt * flow) / capacity;
  }
  return surface / (2 * Math.PI * radius);
}
