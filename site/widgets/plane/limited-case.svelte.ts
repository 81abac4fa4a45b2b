import { celsius, type Scenario, type ThermalCase } from '#engine';
import { type Practice, temperature } from '../../lib/format.ts';
import { type FragmentWord, fragmentWord } from '../../lib/fragment-word.svelte.ts';
import { carrier, withOwnCable } from '../figure/carrier.ts';
import { type SizesByPractice, sameKind } from '../figure/carry.ts';
import { type FigureCase, figureCase } from '../figure/figure-case.svelte.ts';
import type { PlaneLimit } from './view.ts';

/** A figure's case of a cord behind its device, and the limit it is asked about. */
export interface LimitedCase {
  readonly held: FigureCase;
  readonly limit: FragmentWord<PlaneLimit>;
  /** Both together, as a sheet takes them. */
  readonly whole: Pick<FigureCase, 'asBuilt' | 'reset' | 'address'>;
}

/** The case and the limit of the figure `id`, both kept in the address. To be called while a component is set up. */
export function limitedCase(
  id: string,
  scenarios: Readonly<Record<Practice, Scenario>>,
  sizes: SizesByPractice,
  opening: PlaneLimit,
): LimitedCase {
  const held = figureCase(id, scenarios, withOwnCable(scenarios, carrier(scenarios, sizes)), sameKind);
  const limit = fragmentWord<PlaneLimit>(`${id}-limit`, opening, ['rating', 'shortTime']);
  const whole = {
    get asBuilt() {
      return held.asBuilt && limit.value === opening;
    },
    reset() {
      limit.value = opening;
      held.reset();
    },
    address: () => held.address(),
  };
  return { held, limit, whole };
}

/** The limits that a case may be asked about, to choose from: '70 °C, rating'. */
export function limitOptions({ limits }: ThermalCase): { value: PlaneLimit; label: string }[] {
  return (['rating', 'shortTime'] as const).flatMap((value) => {
    const limit = limits.find((one) => one.id === value);
    const name = value === 'rating' ? 'rating' : 'short circuit';
    return limit ? [{ value, label: `${temperature(celsius(limit.low), 'iec')}, ${name}` }] : [];
  });
}
