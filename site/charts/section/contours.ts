/** Values at the points of an even grid, row by row. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly values: ArrayLike<number>;
}

/** A line in grid coordinates, x and y in turn; closed where its end is its beginning. */
export type Line = number[];

/**
 * The lines on which a grid's values, straight between its points, are each of the `levels`; the higher side lies to their
 * left as the rows run down. A saddle is parted by the mean of its corners. The grid is gone through once for all of them.
 * @param levels in rising order
 */
export function contours(grid: Grid, levels: readonly number[]): Line[][] {
  const { columns, rows, values } = grid;
  const pieces = levels.map(() => new Map<number, number>()); // from the edge where a piece begins to that where it ends
  const above = Int16Array.from(values, (value) => levelsUpTo(levels, value));
  for (let row = 0; row < rows - 1; row++) {
    for (let i = row * columns; i < row * columns + columns - 1; i++) {
      const [a, b, c, d] = [
        above[i] as number,
        above[i + 1] as number,
        above[i + columns + 1] as number,
        above[i + columns] as number,
      ];
      if (a === b && b === c && c === d) continue;
      const most = Math.max(a, b, c, d);
      for (let level = Math.min(a, b, c, d); level < most; level++) {
        const code = (a > level ? 8 : 0) + (b > level ? 4 : 0) + (c > level ? 2 : 0) + (d > level ? 1 : 0);
        addPieces(pieces[level] as Map<number, number>, grid, i, code, levels[level] as number);
      }
    }
  }
  return pieces.map((next, i) => linesOf(next, grid, levels[i] as number));
}

/** How many of the levels are at or below a value. */
function levelsUpTo(levels: readonly number[], value: number): number {
  let n = 0;
  while (n < levels.length && (levels[n] as number) <= value) n++;
  return n;
}

/** The pieces of a level's line in the cell that begins at point `i`. An edge is named by its first point, doubled; upright edges are odd. */
function addPieces(next: Map<number, number>, { columns, values }: Grid, i: number, code: number, level: number): void {
  const [top, right, bottom, left] = [2 * i, 2 * (i + 1) + 1, 2 * (i + columns), 2 * i + 1];
  const corner = (at: number) => values[at] as number;
  const mean = () => (corner(i) + corner(i + 1) + corner(i + columns) + corner(i + columns + 1)) / 4;
  switch (code) {
    case 1:
      return void next.set(left, bottom);
    case 2:
      return void next.set(bottom, right);
    case 3:
      return void next.set(left, right);
    case 4:
      return void next.set(right, top);
    case 5:
      if (mean() >= level) return void next.set(left, top).set(right, bottom);
      return void next.set(right, top).set(left, bottom);
    case 6:
      return void next.set(bottom, top);
    case 7:
      return void next.set(left, top);
    case 8:
      return void next.set(top, left);
    case 9:
      return void next.set(top, bottom);
    case 10:
      if (mean() >= level) return void next.set(top, right).set(bottom, left);
      return void next.set(top, left).set(bottom, right);
    case 11:
      return void next.set(top, right);
    case 12:
      return void next.set(right, left);
    case 13:
      return void next.set(right, bottom);
    case 14:
      return void next.set(bottom, left);
  }
}

/** A level's pieces put together, in grid coordinates. */
function linesOf(next: Map<number, number>, { columns, values }: Grid, level: number): Line[] {
  const value = (i: number) => values[i] as number;
  return walked(next, (edge) => {
    const i = edge >> 1;
    const other = edge & 1 ? i + columns : i + 1;
    const part = (level - value(i)) / (value(other) - value(i));
    const column = i % columns;
    const row = (i - column) / columns;
    return edge & 1 ? [column, row + part] : [column + part, row];
  });
}

/** Pieces put end to end: first those that begin at the grid's border, then the closed ones. */
function walked(next: Map<number, number>, place: (edge: number) => [number, number]): Line[] {
  const ends = new Set(next.values());
  const starts = [...next.keys()].filter((edge) => !ends.has(edge));
  const lines: Line[] = [];
  for (const start of [...starts, ...next.keys()]) {
    if (!next.has(start)) continue;
    const line: Line = [...place(start)];
    let edge = next.get(start);
    next.delete(start);
    while (edge !== undefined) {
      line.push(...place(edge));
      const after = next.get(edge);
      next.delete(edge);
      edge = after;
    }
    lines.push(line);
  }
  return lines;
}

/** A grid with one more row and column on each side, at `outside`, so that every region of it is closed. */
export function framed({ columns, rows, values }: Grid, outside: number): Grid {
  const wide = columns + 2;
  const all = new Float64Array(wide * (rows + 2)).fill(outside);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      all[(row + 1) * wide + column + 1] = values[row * columns + column] as number;
  return { columns: wide, rows: rows + 2, values: all };
}

/** A line without the points that lie within `off` of the chord of their neighbours. */
export function thinned(line: Line, off: number): Line {
  const out = line.slice(0, 2);
  for (let i = 2; i < line.length - 2; i += 2) {
    const [x0, y0] = [out.at(-2) as number, out.at(-1) as number];
    const [x, y, x1, y1] = line.slice(i, i + 4) as [number, number, number, number];
    const length = Math.hypot(x1 - x0, y1 - y0);
    const away = Math.abs((x1 - x0) * (y - y0) - (y1 - y0) * (x - x0)) / (length || 1);
    if (away > off || length > 12) out.push(x, y);
  }
  out.push(...line.slice(-2));
  return out;
}
