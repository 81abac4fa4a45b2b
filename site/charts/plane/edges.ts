/** A point of the plane: current [A] and time [s], which may be infinite or 0. */
export type PlanePoint = readonly [I: number, t: number];

interface GatePoint {
  readonly I: number;
  readonly t: number;
}

const never = Number.POSITIVE_INFINITY;

/** The slow edge as a staircase: for ever below the first point, then each point's time up to the next one's current. */
export function slowStair(by: readonly GatePoint[], high: number): PlanePoint[] {
  return by.flatMap(({ I, t }, i): PlanePoint[] => [
    [I, by[i - 1]?.t ?? never],
    [I, t],
    ...(i === by.length - 1 && I < high ? [[high, t] as const] : []),
  ]);
}

/** The fast edge as a staircase: for ever up to what it holds, then each point's time from the current before; 0 beyond the last. */
export function fastStair(hold: number, notBefore: readonly GatePoint[]): PlanePoint[] {
  const starts = [hold, ...notBefore.map(({ I }) => I)];
  const times = [never, ...notBefore.map(({ t }) => t), 0];
  return starts.flatMap((I, i): PlanePoint[] => [
    [I, times[i] ?? never],
    [I, times[i + 1] ?? 0],
  ]);
}

/** The part of a staircase between two currents, its ends read off. */
export function stairBetween(stair: readonly PlanePoint[], from: number, to: number): PlanePoint[] {
  const first = stair[0]?.[0] ?? never;
  const levelAt = (I: number): number => (I < first ? never : (stair.findLast(([I0]) => I0 <= I)?.[1] ?? never));
  const justBelow = (I: number): number => (I <= first ? never : (stair.findLast(([I0]) => I0 < I)?.[1] ?? never));
  return [[from, levelAt(from)], ...stair.filter(([I]) => I > from && I < to), [to, justBelow(to)]];
}
