import { ratingOf } from '../heating/limits-of.ts';
import { ratingAt } from '../heating/rating.ts';
import { steadyState } from '../heating/steady.ts';
import { supplyOf } from '../heating/supply.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import type { Statement } from '../heating/validity.ts';
import { celsius } from '../quantity.ts';
import type { Guard } from './guard.ts';

/** What a rule's current for a cable is about, for the words beside it. */
export type RuleBasis = 'cord' | 'fixed' | 'raceway' | 'none';

/** What heat says of a cable behind its device, in its own surroundings. */
export interface ByTemperature {
  /** The insulation's continuous limit [K]; null for a bare conductor. */
  readonly limit: number | null;
  /** Steady current that holds the conductor there, by the engine [A]; null where there is no limit or the metal melts first. */
  readonly rating: number | null;
  /** Conductor temperature in steady state at the load, at the device's rating and at its acting current [K]; null where none settles. */
  readonly atLoad: number | null;
  readonly atRating: number | null;
  readonly atActing: number | null;
  /**
   * `within`: the limit is kept at the device's rating. `over at the rating`: not there, but at the load. `over at the load`:
   * the load itself is too much. `no limit`: bare metal.
   */
  readonly outcome: 'within' | 'over at the rating' | 'over at the load' | 'no limit';
}

/** The rule's current and the engine's side by side. */
export interface TwoAnswers {
  /** By the rule, Iz or the cord's tabled current [A]; null where no table covers it. */
  readonly byRule: number | null;
  readonly byTemperature: ByTemperature;
  /** The engine's current over the rule's [1]; null where one is missing. */
  readonly ratio: number | null;
  /** Why the two differ, each a reason of its own. */
  readonly reasons: readonly Statement[];
}

const settled = (of: ThermalCase, I_A: number): number | null => {
  const steady = steadyState(of, supplyOf(of, { kind: 'current', I_A }), of.Ta);
  return steady.kind === 'steady' ? steady.chain.conductor : null;
};

/** The verdict by temperature: steady conductor temperature at the load `Ib` [A], at In and at I2, against the insulation's limit. */
export function byTemperature(of: ThermalCase, Ib: number, { In, I2 }: Pick<Guard, 'In' | 'I2'>): ByTemperature {
  const limit = ratingOf(of.cable);
  const atLoad = settled(of, Ib);
  const atRating = settled(of, In);
  const over = (T: number | null) => limit !== null && (T === null || T > limit);
  return {
    limit,
    rating: limit === null ? null : ratingAt(of, limit),
    atLoad,
    atRating,
    atActing: I2 === null ? null : settled(of, I2),
    outcome:
      limit === null
        ? 'no limit'
        : over(atLoad)
          ? 'over at the load'
          : over(atRating)
            ? 'over at the rating'
            : 'within',
  };
}

const never: Statement = {
  id: 'no permission',
  text: 'The larger of the two is never permission. Where they differ, the smaller holds.',
};
const why: Readonly<Record<RuleBasis, readonly Statement[]>> = {
  cord: [
    {
      id: 'cords are used badly',
      text: 'A cord’s table allows for being coiled, covered, gripped and touched. The engine’s case is only the place you gave it.',
    },
    { id: 'plug and socket', text: 'The table also spares the plug. Its contacts make heat of their own.' },
  ],
  fixed: [
    {
      id: 'rounded and grouped',
      text: 'A table covers every make of cable in one row and rounds it. The engine takes this cable’s own walls.',
    },
    {
      id: 'place',
      text: 'A table knows a handful of places to lie. If the engine’s surroundings are another place, the two answer different questions.',
    },
  ],
  raceway: [
    {
      id: 'raceway',
      text: 'The ampacity table is for cables in raceway or bundled in walls. The engine has the cable alone in its surroundings.',
    },
    {
      id: 'caps',
      text: 'Terminals and the small-conductor rule cap the table further. Neither is about the heat of the cable.',
    },
  ],
  none: [
    {
      id: 'no table',
      text: 'No table covers this conductor. Only the engine’s answer is left, and no rule stands behind it.',
    },
  ],
};

/**
 * A rule's current `byRule` [A] beside the engine's for the same cable in its surroundings, with why they differ. `Ib` [A] and
 * the device give the verdict by temperature. A table is never overruled by the engine.
 */
export function twoAnswers(
  of: ThermalCase,
  basis: RuleBasis,
  byRule: number | null,
  Ib: number,
  device: Pick<Guard, 'In' | 'I2'>,
): TwoAnswers {
  const heat = byTemperature(of, Ib, device);
  const ratio = byRule === null || heat.rating === null || byRule === 0 ? null : heat.rating / byRule;
  const reasons = [...why[byRule === null ? 'none' : basis], ...conditions(of, basis), never];
  return { byRule, byTemperature: heat, ratio, reasons };
}

/** What of the case itself sets it apart from the table. */
function conditions(of: ThermalCase, basis: RuleBasis): Statement[] {
  const list: Statement[] = [];
  const ambient = Math.round(celsius(of.Ta));
  if (basis !== 'none' && ambient !== 30)
    list.push({
      id: 'ambient',
      text: `The table starts from 30 °C, and factors adjust it. The engine has ${ambient} °C.`,
    });
  const limit = ratingOf(of.cable);
  if (basis === 'cord' && limit !== null && celsius(limit) > 60.5)
    list.push({
      id: 'limit',
      text: `The cord table is for 60 °C. The engine rates this insulation at ${Math.round(celsius(limit))} °C.`,
    });
  return list;
}
