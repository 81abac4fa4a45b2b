import { OutOfRange, within } from '../../errors.ts';
import type { Measured } from '../measured.ts';
import type { Distribution } from './distributions.ts';

/** One input of a measurement: what was taken for it, how sure that is, and of what shape its doubt is. */
export interface Input extends Measured {
  readonly name: string;
  /** Its unit, for the budget's table; '1' where it has none. */
  readonly unit: string;
  /** Normal unless given. Student's t asks for degrees of freedom. */
  readonly distribution?: Distribution;
  /** ∂f/∂x where it is known by formula; taken by differences where it is not given. */
  readonly sensitivity?: number;
}

/** A measurement: a result computed from inputs. */
export interface Model {
  readonly inputs: readonly Input[];
  /** The result from values of the inputs, in their order. It must not keep the row, which is filled anew for each trial. */
  readonly f: (x: readonly number[]) => number;
  /** Correlation coefficients of the inputs, as a square table with ones in its diagonal; independent where not given. */
  readonly correlation?: readonly (readonly number[])[];
}

const rounding = 1e-9;

/** Correlation coefficient of inputs `i` and `j`. */
export function correlationAt({ correlation }: Model, i: number, j: number): number {
  return correlation ? (correlation[i]?.[j] ?? Number.NaN) : i === j ? 1 : 0;
}

/** Whether input `i` is correlated with any other. */
export const isCorrelated = (of: Model, i: number): boolean =>
  of.inputs.some((_, j) => j !== i && correlationAt(of, i, j) !== 0);

/** A table of correlation coefficients with one pair set: of inputs `i` and `j` among `n`, to `r`. */
export function pairCorrelated(n: number, i: number, j: number, r: number): number[][] {
  const at = (row: number, column: number) =>
    row === column ? 1 : (row === i && column === j) || (row === j && column === i) ? r : 0;
  return Array.from({ length: n }, (_, row) => Array.from({ length: n }, (_, column) => at(row, column)));
}

/** Lower triangle L with L·Lᵀ the table of correlation (Cholesky); refuses a table that no quantities could have. */
export function rootOfCorrelation(of: Model): number[][] {
  const n = of.inputs.length;
  const L = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      const [a, b] = [L[i] as number[], L[j] as number[]];
      let rest = correlationAt(of, i, j);
      for (let k = 0; k < j; k++) rest -= (a[k] as number) * (b[k] as number);
      if (i === j) {
        within(`what correlation leaves free of ${of.inputs[i]?.name}`, rest, [-rounding, 1], '');
        a[i] = Math.sqrt(Math.max(0, rest));
      } else if ((b[j] as number) > Math.sqrt(rounding)) a[j] = rest / (b[j] as number);
      else within(`correlation of ${of.inputs[i]?.name} beyond its bound`, rest, [-1e-4, 1e-4], '');
    }
  return L;
}

/** Throws where a model's numbers cannot be meant: what, where, and what would be right. */
export function checkModel(of: Model): void {
  for (const { name, unit, value, u, dof, distribution } of of.inputs) {
    within(name, value, [-1e300, 1e300], unit);
    within(`standard uncertainty of ${name}`, u, [0, 1e300], unit);
    if (dof !== undefined) within(`degrees of freedom of ${name}`, dof, [1, Number.POSITIVE_INFINITY], '');
    if (distribution === 'Student t' && dof === undefined)
      throw new OutOfRange(`degrees of freedom of ${name}, drawn from Student's t,`, Number.NaN, [1, 1e4], '');
  }
  of.inputs.forEach((_, i) => {
    for (let j = 0; j < of.inputs.length; j++) {
      const words = `correlation of ${of.inputs[i]?.name} and ${of.inputs[j]?.name}`;
      within(words, correlationAt(of, i, j), i === j ? [1, 1] : [-1, 1], '');
      within(`${words}, less that the other way round`, correlationAt(of, i, j) - correlationAt(of, j, i), [0, 0], '');
    }
  });
  if (of.correlation) rootOfCorrelation(of);
  within('result of the model', resultAt(of), [-1e300, 1e300], '');
}

/** The inputs' values, with those of `moved` (place and value) put in their stead. */
export function valuesOf({ inputs }: Model, ...moved: readonly (readonly [number, number])[]): number[] {
  const x = inputs.map(({ value }) => value);
  for (const [i, by] of moved) x[i] = (x[i] as number) + by;
  return x;
}

/** The result with some inputs moved by the amounts given (place, amount). */
export const resultAt = (of: Model, ...moved: readonly (readonly [number, number])[]): number =>
  of.f(valuesOf(of, ...moved));
