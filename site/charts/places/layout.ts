/** Heights of a picture of places [px]: the head with the limits' names, each row, and the foot with the scale. */
export const placeHeights = {
  wide: { head: 34, row: 80, foot: 38 },
  narrow: { head: 34, row: 108, foot: 38 },
} as const;

/** Height of the picture for `rows` rows [px]. */
export function placesHeight(rows: number, compact: boolean): number {
  const { head, row, foot } = placeHeights[compact ? 'narrow' : 'wide'];
  return head + rows * row + foot;
}

const ends = [160, 200, 250, 300, 350, 400];

/** Upper end of the scale [°C]: a little past where the model ends, and where the ramp ends at the most. */
export function scaleEnd(end: number): number {
  return ends.find((T) => T >= end * 1.15) ?? 400;
}
