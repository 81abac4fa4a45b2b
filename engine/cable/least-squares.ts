/**
 * Minimises |A x − b| by Householder reflections, columns scaled to length one first.
 * @param matrix A by rows, `rows` × `columns`, rows ≥ columns; left as it was
 * @param rhs b, `rows` long; left as it was
 * @returns the solution x and the root mean square of what is left of A x − b
 */
export function leastSquares(
  matrix: Float64Array,
  rhs: Float64Array,
  rows: number,
  columns: number,
): { solution: Float64Array; residual: number } {
  const A = new Float64Array(rows * columns); // by columns, so that the inner loops run along memory
  for (let j = 0; j < columns; j++) for (let i = 0; i < rows; i++) A[j * rows + i] = matrix[i * columns + j];
  const b = rhs.slice();
  const scale = new Float64Array(columns);
  for (let j = 0; j < columns; j++) {
    const column = A.subarray(j * rows, (j + 1) * rows);
    const size = Math.sqrt(dot(column, column, 0)) || 1;
    scale[j] = size;
    for (let i = 0; i < rows; i++) column[i] /= size;
  }
  const diagonal = new Float64Array(columns);
  for (let j = 0; j < columns; j++) {
    const v = A.subarray(j * rows, (j + 1) * rows);
    const first = v[j];
    const alpha = first > 0 ? -Math.sqrt(dot(v, v, j)) : Math.sqrt(dot(v, v, j));
    diagonal[j] = alpha;
    if (alpha === 0) continue;
    v[j] = first - alpha;
    const beta = 1 / (alpha * (first - alpha)); // −2/|v|²
    for (let c = j + 1; c < columns; c++) reflect(A.subarray(c * rows, (c + 1) * rows), v, j, beta);
    reflect(b, v, j, beta);
  }
  const solution = new Float64Array(columns);
  for (let j = columns - 1; j >= 0; j--) {
    let s = b[j];
    for (let i = j + 1; i < columns; i++) s -= A[i * rows + j] * solution[i];
    const d = diagonal[j];
    solution[j] = d === 0 ? 0 : s / d;
  }
  for (let j = 0; j < columns; j++) solution[j] /= scale[j];
  return { solution, residual: Math.sqrt(dot(b, b, columns) / rows) };
}

function dot(a: Float64Array, b: Float64Array, from: number): number {
  let s = 0;
  for (let i = from; i < a.length; i++) s += a[i] * b[i];
  return s;
}

/** other ← other + β (v · other) v, from row `from` on. */
function reflect(other: Float64Array, v: Float64Array, from: number, beta: number): void {
  const s = beta * dot(v, other, from);
  for (let i = from; i < other.length; i++) other[i] += s * v[i];
}
