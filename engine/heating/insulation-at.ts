import { type Limit, touchLimit } from '../material/limits.ts';
import type { Plastic, PlasticId } from '../material/plastics.ts';
import { type SlowHarm, slowHarms } from '../material/slow-harm.ts';
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
  /** What was reported of such temperatures held long, and whether this one is as hot and as long. */
  readonly slow: readonly { readonly harm: SlowHarm; readonly reached: boolean }[];
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
    /** Past the top of its softening range, where other things than slow ageing end it. */
    readonly overtaken: boolean;
  } | null;
  /**
   * How many times as fast as at its rating it ages by the trade's round rule, life halved per 10 K (common practice, no
   * source); null further than 30 K from the rating, where the rule says nothing (our choice).
   */
  readonly roundRate: number | null;
}

const halving = 10; // K
const roundReach = 30; // K

/** An insulation, a temperature that is held [K] and for how long [s]: which limits that passes, and how fast it ages. */
export function heldAt(plastic: Plastic, T: number, t: number): HeldAt {
  const limits = [touchLimit, ...plastic.limits]
    .map((limit): LimitStanding => {
      const standing = T < limit.low ? 'below' : T < limit.high ? 'within' : 'past';
      return { limit, standing, over: T - limit.low };
    })
    .sort((a, b) => a.limit.low - b.limit.low);
  const rating = plastic.limits.find(({ kind }) => kind === 'rating');
  const softening = plastic.limits.find(({ kind }) => kind === 'softening');
  const { ageing } = plastic;
  const over = rating === undefined ? Number.POSITIVE_INFINITY : T - rating.low;
  return {
    T,
    t,
    limits,
    slow: (slowHarms[plastic.id as PlasticId] ?? []).map((harm) => ({ harm, reached: T >= harm.T && t >= harm.t })),
    tooLong: rating !== undefined && T > rating.low && t > shortTime,
    ageing: ageing
      ? {
          rate: ageingRate(ageing, T),
          life: lifeAt(ageing, T),
          share: lifeShare(ageing, T, t),
          beyondData: T > ageingMeasuredTo,
          overtaken: softening !== undefined && T > softening.high,
        }
      : null,
    roundRate: Math.abs(over) <= roundReach ? 2 ** (over / halving) : null,
  };
}

/** Temperature columns of North American tables that conductors are rated by [°C]; NFPA 70, Table 310.16. */
export const ratingColumns = [60, 75, 90] as const;
