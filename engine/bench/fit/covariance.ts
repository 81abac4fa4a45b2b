import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import type { Slopes } from './search.ts';

/** How well parameters are known from the slopes of a model over its readings' standard uncertainties. */
export interface Covariance {
  /** Covariance, before any scaling, and correlation; rows in the order of the slopes. */
  readonly matrix: readonly (readonly number[])[];
  readonly correlation: readonly (readonly number[])[];
  /** Least singular value over the greatest, with each parameter measured by what it moves; 0 where a blend moves nothing. */
  readonly conditioning: number;
  /** Share (0 to 1) of each parameter in the blend that the readings tell least. */
  readonly weakest: readonly number[];
}

/** Covariance (JᵀJ)⁻¹ by singular values of J, its columns scaled to one first. */
export function covarianceOf(slopes: Slopes): Covariance {
  const size = slopes.map((column) => Math.sqrt(column.reduce((sum, x) => sum + x * x, 0)) || 1);
  const columns = slopes.map((column, j) => Array.from(column, (x) => x / size[j]));
  const { diagonal, rightSingularVectors: V } = new SingularValueDecomposition(new Matrix(columns).transpose());
  const least = 1e-8 * diagonal[0];
  const many = slopes.length;
  const cell = (i: number, j: number) => {
    let sum = 0;
    for (let k = 0; k < many; k++) sum += (V.get(i, k) * V.get(j, k)) / Math.max(diagonal[k], least) ** 2;
    return sum / (size[i] * size[j]);
  };
  const square = (f: (i: number, j: number) => number) => slopes.map((_, i) => slopes.map((_, j) => f(i, j)));
  const matrix = square(cell);
  return {
    matrix,
    correlation: square((i, j) => matrix[i][j] / Math.sqrt(matrix[i][i] * matrix[j][j])),
    conditioning: diagonal[many - 1] / diagonal[0],
    weakest: slopes.map((_, j) => V.get(j, many - 1) ** 2),
  };
}

/** How far each parameter goes astray [its unit], one standard uncertainty, when the model errs by `errors`: C Jᵀδ, in squares. */
export function astray(slopes: Slopes, { matrix }: Covariance, errors: readonly Float64Array[]): number[] {
  const moves = errors.map((error) => {
    const pull = slopes.map((column) => column.reduce((sum, x, i) => sum + x * error[i], 0));
    return matrix.map((row) => row.reduce((sum, x, j) => sum + x * pull[j], 0));
  });
  return slopes.map((_, j) => Math.hypot(...moves.map((move) => move[j])));
}
