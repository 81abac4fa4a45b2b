import { OutOfRange, within } from '../errors.ts';

/** Where the cores of a round cable lie. */
export interface RoundLayout {
  /** Core centres [m]. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Radius of the circle the centres lie on [m]; 0 for one core. */
  readonly a: number;
  /** Radius of the body, under the sheath: a + ri [m]. */
  readonly R: number;
}

/**
 * Round cores that touch, on a circle: a = ri / sin(π/N), that is ri (two), 2ri/√3 (three), √2 ri (four); one core is
 * centred. R = a + ri. The first core lies to the left of two, above of three or more.
 * @param cores number of cores N, 1 or more
 * @param ri outer radius of a core: conductor and its insulation [m]
 */
export function roundLayout(cores: number, ri: number): RoundLayout {
  checkCores(cores, ri);
  const a = cores === 1 ? 0 : ri / Math.sin(Math.PI / cores);
  const first = cores === 2 ? Math.PI : cores === 4 ? (3 * Math.PI) / 4 : Math.PI / 2;
  const angle = (_: unknown, i: number) => first - (2 * Math.PI * i) / cores;
  const angles = Array.from({ length: cores }, angle);
  return {
    x: Float64Array.from(angles, (t) => a * Math.cos(t)),
    y: Float64Array.from(angles, (t) => (cores === 2 ? 0 : a * Math.sin(t))),
    a,
    R: a + ri,
  };
}

/** Where the cores of a flat cable lie, and its outline: a stadium, two half circles joined by straight runs. */
export interface FlatLayout {
  /** Core centres on the x axis, about the origin [m]. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Half the length of a straight run [m]. */
  readonly halfRun: number;
  /** Half the height, radius of the rounded edges [m]. */
  readonly halfHeight: number;
  /** Perimeter P [m], the area a metre that sheds heat. */
  readonly P: number;
  /** P/π [m], the diameter for the surface law. */
  readonly De: number;
  /** P/2π [m], the body's radius in the image formula. */
  readonly R: number;
  /** Area of the stadium [m²]. */
  readonly area: number;
}

/**
 * Cores in a row: P = 4·halfRun + 2π·halfHeight, halfRun = (N − 1)·spacing/2.
 * Call it once with the outline under the sheath and, for the surface, once with a halfHeight greater by the sheath.
 * @param cores number of cores N, 1 or more
 * @param spacing distance from centre to centre [m]; 2ri for cores that touch
 * @param halfHeight half the height of the outline [m]
 */
export function flatLayout(cores: number, spacing: number, halfHeight: number): FlatLayout {
  checkCores(cores, halfHeight);
  within('spacing of the cores', spacing, [Number.MIN_VALUE, 1], 'm');
  const halfRun = cores === 1 ? 0 : ((cores - 1) * spacing) / 2;
  const P = 4 * halfRun + 2 * Math.PI * halfHeight;
  return {
    x: Float64Array.from({ length: cores }, (_, i) => (cores === 1 ? 0 : i * spacing - halfRun)),
    y: new Float64Array(cores),
    halfRun,
    halfHeight,
    P,
    De: P / Math.PI,
    R: P / (2 * Math.PI),
    area: 4 * halfRun * halfHeight + Math.PI * halfHeight * halfHeight,
  };
}

function checkCores(cores: number, radius: number): void {
  within('number of cores', cores, [1, 100], '');
  if (!Number.isInteger(cores)) throw new OutOfRange('number of cores', cores, [1, 100], '');
  within('radius of a core', radius, [Number.MIN_VALUE, 1], 'm');
}
