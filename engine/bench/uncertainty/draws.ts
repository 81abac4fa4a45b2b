import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';
import { hashText } from '../../question/random.ts';
import { belowNormal, deviateAt, type Limited } from './distributions.ts';
import { type Input, isCorrelated, type Model, rootOfCorrelation } from './model.ts';

/** A source of deviates; the same seed gives the same ones. */
interface Chance {
  /** Uniform from 0 to 1. */
  readonly uniform: () => number;
  /** Normal, of mean 0 and standard deviation 1. */
  readonly normal: () => number;
}

function chanceOf(seed: string): Chance {
  const generator = xoroshiro128plusFromState([1, 2, 3, 4].map((salt) => hashText(seed, salt)));
  const uniform = () => uniformFloat64(generator);
  let kept: number | null = null;
  const normal = () => {
    if (kept !== null) {
      const spare = kept;
      kept = null;
      return spare;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform())); // Box and Muller
    const angle = 2 * Math.PI * uniform();
    kept = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { uniform, normal };
}

const mostSquares = 200; // above, χ²/ν is drawn as the cube of a normal deviate (Wilson and Hilferty, from memory)

/** χ² of `dof` degrees of freedom over them. */
function meanSquare(dof: number, { normal }: Chance): number {
  if (dof > mostSquares) {
    const v = 2 / (9 * dof);
    return (1 - v + normal() * Math.sqrt(v)) ** 3;
  }
  const nu = Math.floor(dof);
  let sum = 0;
  for (let i = 0; i < nu; i++) sum += normal() ** 2;
  return sum / nu;
}

const isLimited = (of: Input['distribution']): of is Limited =>
  of !== undefined && of !== 'normal' && of !== 'Student t';

/** How one input is drawn, from a normal deviate `z`; null where it needs none. */
function drawOf({ value, u, dof, distribution }: Input, chance: Chance): (z: number | null) => number {
  if (isLimited(distribution))
    return (z) => value + u * deviateAt(distribution, z === null ? chance.uniform() : belowNormal(z));
  if (distribution === 'Student t')
    return (z) => value + (u * (z ?? 0)) / Math.sqrt(meanSquare(dof ?? Number.POSITIVE_INFINITY, chance));
  return (z) => value + u * (z ?? 0);
}

/**
 * Draws of a model's inputs from the text `seed`: each call fills and returns one and the same row. Student's t is scaled by u,
 * so it spreads wider than u (JCGM 101, 6.4.9). Correlated inputs are drawn through correlated normal deviates: exact for
 * normal inputs and for r = ±1; for others r comes out up to 0.02 off.
 */
export function drawsOf(of: Model, seed: string): () => readonly number[] {
  const chance = chanceOf(seed);
  const draws = of.inputs.map((input) => drawOf(input, chance));
  const straight = of.inputs.map(({ distribution }, i) => isLimited(distribution) && !isCorrelated(of, i));
  const L = of.correlation ? rootOfCorrelation(of) : null;
  const z = new Array<number>(draws.length).fill(0);
  const row = new Array<number>(draws.length).fill(0);
  const mixed = (i: number) => {
    if (!L) return z[i] as number;
    let sum = 0;
    for (let j = 0; j <= i; j++) sum += (L[i]?.[j] as number) * (z[j] as number);
    return sum;
  };
  return () => {
    for (let i = 0; i < z.length; i++) if (!straight[i]) z[i] = chance.normal();
    draws.forEach((draw, i) => {
      row[i] = draw(straight[i] ? null : mixed(i));
    });
    return row;
  };
}
