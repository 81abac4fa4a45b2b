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

/** How one input is drawn from a normal deviate of its own (correlated, or itself normal) or, where none is needed, straight. */
function drawOf({ value, u, dof, distribution = 'normal' }: Input, chance: Chance) {
  if (distribution === 'normal') return (z: number) => value + u * z;
  if (distribution === 'Student t')
    return (z: number) => value + (u * z) / Math.sqrt(meanSquare(dof ?? Number.POSITIVE_INFINITY, chance));
  const shape: Limited = distribution;
  return (z: number | null) => value + u * deviateAt(shape, z === null ? chance.uniform() : belowNormal(z));
}

/**
 * Draws of a model's inputs, one row a call, from the text `seed`. Student's t is scaled by u, so it spreads wider than u
 * (JCGM 101, 6.4.9). Correlated inputs are drawn through correlated normal deviates: exact for normal inputs and for r = ±1;
 * for others r comes out up to 0.02 off.
 */
export function drawsOf(of: Model, seed: string): () => number[] {
  const chance = chanceOf(seed);
  const n = of.inputs.length;
  const draws = of.inputs.map((input) => drawOf(input, chance));
  const straight = of.inputs.map(
    ({ distribution = 'normal' }, i) =>
      distribution !== 'normal' && distribution !== 'Student t' && !isCorrelated(of, i),
  );
  const L = of.correlation ? rootOfCorrelation(of) : null;
  const z = new Array<number>(n).fill(0);
  return () => {
    for (let i = 0; i < n; i++) z[i] = straight[i] ? 0 : chance.normal();
    return draws.map((draw, i) => {
      if (straight[i]) return (draw as (z: number | null) => number)(null);
      const row = L?.[i];
      let mixed = row ? 0 : (z[i] as number);
      if (row) for (let j = 0; j <= i; j++) mixed += (row[j] as number) * (z[j] as number);
      return draw(mixed);
    });
  };
}
