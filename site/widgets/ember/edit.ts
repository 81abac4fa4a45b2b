import type { Scenario } from '#engine';
import { currentOf, withAmbient, withCurrent } from '../figure/edit.ts';
import { onTime } from './facts.ts';

/** Length of one round of the supply steps [s]; undefined where a step has no end. */
export function periodOf({ supply }: Scenario): number | undefined {
  let sum = 0;
  for (const { duration_s } of supply) {
    if (duration_s === undefined) return undefined;
    sum += duration_s;
  }
  return sum;
}

/** True where the supply goes round more than once. */
export const isCycled = ({ cycles = 1 }: Scenario): boolean => cycles > 1;

/**
 * The scenario with another first on-time [s]. Cycles keep their period, so the rest gets shorter; a single run keeps its
 * rest, so it gets longer.
 */
export function withOnTime(scenario: Scenario, on: number): Scenario {
  const [first, second, ...others] = scenario.supply;
  if (!first || !second) return scenario;
  const period = periodOf(scenario);
  if (isCycled(scenario) && period !== undefined) {
    const rest = { ...second, duration_s: period - on };
    return { ...scenario, supply: [{ ...first, duration_s: on }, rest, ...others] };
  }
  const before = onTime(scenario);
  const duration = scenario.run?.duration_s;
  return {
    ...scenario,
    supply: [{ ...first, duration_s: on }, second, ...others],
    ...(duration === undefined ? {} : { run: { ...scenario.run, duration_s: duration - before + on } }),
  };
}

/** The other practice's case with this one's amperes, ambient and on-time. */
export function carriedOver(from: Scenario, to: Scenario): Scenario {
  const I = currentOf(from);
  const on = onTime(from);
  const ambient = withAmbient(to, from.surroundings.ambient_degC);
  const loaded = I === undefined ? ambient : withCurrent(ambient, I);
  return Number.isFinite(on) && isCycled(from) === isCycled(to) ? withOnTime(loaded, on) : loaded;
}
