/** The fixed axes of a pad: end of time [s], and lowest and highest value in the unit shown. */
export interface PadAxis {
  readonly end: number;
  readonly low: number;
  readonly high: number;
}

const rounds = [1, 2, 3, 4, 5, 6, 8];

/** A round value at least a third above `greatest`, so that the axis does not give the answer away. */
export function roundAbove(greatest: number): number {
  const wanted = greatest * 1.35;
  for (let decade = 0.1; ; decade *= 10) {
    const found = rounds.map((round) => round * decade).find((value) => value >= wanted);
    if (found !== undefined) return Number(found.toPrecision(2));
  }
}
