import { OutOfRange, within } from '../errors.ts';

/**
 * The section of a cable as plain numbers, as the section-*.ts files take it. Heat of one core q [W/m], thermal
 * resistivity of the body ρT = 1/k; temperatures are given as potentials φ = (θ − θ_R)·2π/(q ρT), θ_R being the mean
 * temperature of the body's outline (under the sheath).
 */

/** Conductors in a body whose outline is a circle of radius `R` about the origin. */
export interface Section {
  /** Conductor centres, abscissae [m]. */
  readonly x: ArrayLike<number>;
  /** Conductor centres, ordinates [m]. */
  readonly y: ArrayLike<number>;
  /** Radius of every conductor's strand bundle [m]. */
  readonly rc: number;
  /** Radius of the body, under the sheath [m]. */
  readonly R: number;
  /** Indices of the cores that carry current, each once; the others are idle. */
  readonly loaded: readonly number[];
}

/** A ring round the body: conductivity `k` [W/(m·K)] out to radius `r1` [m]; it begins where the one before it ends. */
export interface Layer {
  readonly k: number;
  readonly r1: number;
}

/** A section with what lies round its body: sheath and lagging as layers, and the surface that sheds the heat. */
export interface RoundSection extends Section {
  /** Conductivity of the body, 1/ρT [W/(m·K)]. */
  readonly k: number;
  /** Layers from R outward: the sheath, then any lagging; none for a cable without them. */
  readonly layers: readonly Layer[];
  /** Heat transfer coefficient of the outermost surface [W/(m²·K)], taken as constant; Infinity: an isothermal surface. */
  readonly h: number;
}

/** Shape factors: θ of core i − θ_R = q ρT G[i]/2π. */
export interface ShapeFactor {
  /** Of every core, idle ones too [1]. */
  readonly G: Float64Array;
  /** The largest of the loaded cores' G [1]; 0 where none is loaded. */
  readonly hottest: number;
  /** Index of that core; −1 where none is loaded. */
  readonly core: number;
}

/**
 * Refuses a section that cannot be: conductors that overlap or leave the body, a core loaded twice or unknown.
 * @param margin how far inside the body's outline a centre must lie [m]: rc, or 0 where R only stands for a flat outline
 */
export function checkSection({ x, y, rc, R, loaded }: Section, margin: number): void {
  within('conductor radius', rc, [Number.MIN_VALUE, R], 'm');
  const slack = 1e-9 * R;
  for (let i = 0; i < x.length; i++) {
    const xi = x[i];
    const yi = y[i];
    const off = Math.sqrt(xi * xi + yi * yi);
    if (!(off <= R - margin + slack))
      throw new OutOfRange(`distance of core ${i} from the axis`, off, [0, R - margin], 'm');
    for (let j = 0; j < i; j++) {
      const dx = xi - x[j];
      const dy = yi - y[j];
      const apart = Math.sqrt(dx * dx + dy * dy);
      if (!(apart >= 2 * rc - slack))
        throw new OutOfRange(`distance of cores ${j} and ${i}`, apart, [2 * rc, 2 * R], 'm');
    }
  }
  checkLoaded(loaded, x.length);
}

/** Refuses a loaded core that is not there or is named twice. */
export function checkLoaded(loaded: readonly number[], cores: number): void {
  for (let n = 0; n < loaded.length; n++) {
    const i = loaded[n];
    const known = Number.isInteger(i) && i >= 0 && i < cores;
    if (!known) throw new OutOfRange('index of a loaded core', i, [0, cores - 1], '');
    if (loaded.indexOf(i) !== n) throw new OutOfRange(`mentions of core ${i} among the loaded`, 2, [0, 1], '');
  }
}

/** The answer's record from the G of every core: the hottest loaded core is picked, the cautious choice. */
export function shapeFactor(G: Float64Array, loaded: readonly number[]): ShapeFactor {
  let core = -1;
  for (let n = 0; n < loaded.length; n++) {
    const i = loaded[n];
    if (core < 0 || G[i] > G[core]) core = i;
  }
  return { G, hottest: core < 0 ? 0 : G[core], core };
}
