import type { SectionPart } from '#engine';
import type { Scene } from './scene.ts';
import type { SectionState } from './state.ts';

/** Half the length of the cut inside the cable [m]. */
export function halfChord({ shape }: SectionState): number {
  const { halfRun, outerRadius, cut } = shape;
  return halfRun + Math.sqrt(Math.max(0, outerRadius ** 2 - cut ** 2));
}

/** A stretch of the cut that lies in one part [m], left to right. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly part: SectionPart;
  readonly core?: number;
}

const fine = 800; // places looked at along the cut

/** The parts that the cut passes through, from the left surface to the right one; the walls between are found to a micrometre. */
export function stretches(state: SectionState): Stretch[] {
  const { shape } = state;
  const half = halfChord(state) * (1 - 1e-9);
  const same = (x: number, of: Stretch) => {
    const { part, core } = shape.partAt(x, shape.cut);
    return part === of.part && core === of.core;
  };
  const found: Stretch[] = [];
  let now: Stretch = { from: -half, to: half, ...shape.partAt(-half, shape.cut) };
  for (let i = 1; i <= fine; i++) {
    const x = -half + (2 * half * i) / fine;
    if (same(x, now)) continue;
    let [a, b] = [x - (2 * half) / fine, x];
    while (b - a > 1e-7) {
      const middle = (a + b) / 2;
      if (same(middle, now)) a = middle;
      else b = middle;
    }
    found.push({ ...now, to: b });
    now = { from: b, to: half, ...shape.partAt(x, shape.cut) };
  }
  return [...found, now];
}

/** Temperature [°C] on the line of the cut at `x` [m], in the layer outside too. */
export function cutTemperature(state: SectionState, scene: Scene, x: number): number {
  const { shape } = state;
  const away = shape.distance(x, shape.cut) * scene.scale;
  const here = state.atPoint(x, shape.cut);
  return away <= 0 ? here : state.film(Math.min(1, away / scene.film), here).T;
}
