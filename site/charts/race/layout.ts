import { linearScale } from '../linear-scale.ts';
import { spread } from '../spread.ts';
import type { DrawnRace, RaceLimit } from './types.ts';

// Two lanes on one axis of time. The axis is even, not logarithmic: the now-line then moves as steadily as the time it stands
// for, a share of operation used is a straight line, and who is twice as far along has had twice the time. What is lost are
// first edges of a second beside hours; they stand at the start of their lane in words.

const heading = 30; // px above a lane, for its name
const foot = 48; // px below the lanes, for the axis
const lanes = { wide: { conductor: 168, device: 84 }, narrow: { conductor: 152, device: 84 } } as const;
const labelGap = 17; // px between two labels

/** How tall the picture is [px]. */
export function raceHeight(compact: boolean): number {
  const { conductor, device } = lanes[compact ? 'narrow' : 'wide'];
  return heading + conductor + heading + device + foot;
}

/** Lowest and highest temperature [°C] of the conductor's lane: the curve and the limit of the race, with room for its label. */
export function temperatureEnds({ curve, limits }: DrawnRace): [low: number, high: number] {
  const all = [...Array.from(curve.T), ...limits.filter(({ goal }) => goal).map(({ T }) => T)];
  const low = Math.floor(Math.min(...all) / 10) * 10; // drawing: round ends of an axis
  const top = Math.max(...all);
  return [low, low + 1.2 * Math.max(20, top - low)];
}

/** A limit with the height of its line and of its label [px]. */
export interface PlacedLimit extends RaceLimit {
  readonly y: number;
  readonly label: number;
}

/** Where everything stands [px] in a picture `width` wide. */
export function placedRace(race: DrawnRace, width: number, compact: boolean) {
  const { conductor, device } = lanes[compact ? 'narrow' : 'wide'];
  const [left, right] = [compact ? 34 : 40, width - 10];
  const first = { top: heading, bottom: heading + conductor };
  const second = { top: first.bottom + heading, bottom: first.bottom + heading + device };
  const ends = temperatureEnds(race);
  const y = linearScale(ends, [first.bottom, first.top]);
  const shown = race.limits.filter(({ T }) => T > ends[0] && T < ends[1]);
  const labels = spread(
    shown.map(({ T }) => y(T) - 5),
    labelGap,
    first.top + 13,
    first.bottom - 4,
  );
  return {
    left,
    right,
    first,
    second,
    ends,
    x: linearScale([0, race.end], [left, right]),
    y,
    share: linearScale([0, 1], [second.bottom, second.top]),
    limits: shown.map((limit, i): PlacedLimit => ({ ...limit, y: y(limit.T), label: labels[i] as number })),
  };
}
