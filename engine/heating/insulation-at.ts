import { type Limit, touchLimit } from '../material/limits.ts';
import type { Plastic } from '../material/plastics.ts';
import { ageingMeasuredTo, ageingRate, lifeAt, lifeShare } from './ageing.ts';

/** How long a short circuit may hold its limit [s]; IEC 60364-4-43, 434.5.2. */
export const shortTime = 5;

/** Where a temperature stands against one limit: below it, within its range, or past it. */
export interface LimitStanding {
  readonly limit: Limit;
  readonly standing: 'below' | 'within' | 'past';
  /** How far above the lower end [K]; negative below it. */
  readonly over: number;
}

/** What a held temperature does to an insulation. */
export interface HeldAt {
  readonly T: number;
  /** How long it is held [s]. */
  readonly t: number;
  readonly limits: readonly LimitStanding[];
  /** Past its rating for longer than a short circuit is allowed. */
  readonly tooLong: boolean;
  /** Ageing by the measured law; null where no life is known for this insulation. */
  readonly ageing: {
    /** How many times as fast as at the rating. */
    readonly rate: number;
    /** Life at this temperature [s]. */
    readonly life: number;
    /** Part of that life that `t` uses. */
    readonly share: number;
    /** Above the temperatures the law was measured at: told as an indication. */
    readonly beyondData: boolean;
  } | null;
}

/** An insulation, a temperature that is held [K] and for how long [s]: which limits that passes, and how fast it ages. */
export function heldAt(plastic: Plastic, T: number, t: number): HeldAt {
  const limits = [touchLimit, ...plastic.limits]
    .map((limit): LimitStanding => {
      const standing = T < limit.low ? 'below' : T < limit.high ? 'within' : 'past';
      return { limit, standing, over: T - limit.low };
    })
    .sort((a, b) => a.limit.low - b.limit.low);
  const rating = plastic.limits.find(({ kind }) => kind === 'rating');
  const { ageing } = plastic;
  return {
    T,
    t,
    limits,
    tooLong: rating !== undefined && T > rating.low && t > shortTime,
    ageing: ageing
      ? {
          rate: ageingRate(ageing, T),
          life: lifeAt(ageing, T),
          share: lifeShare(ageing, T, t),
          beyondData: T > ageingMeasuredTo,
        }
      : null,
  };
}

/** Temperature columns of North American tables that conductors are rated by [°C]; NFPA 70, Table 310.16. */
export const ratingColumns = [60, 75, 90] as const;
