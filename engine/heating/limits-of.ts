import type { Cable } from '../cable/cable.ts';
import { type Limit, touchLimit } from '../material/limits.ts';
import { kelvin } from '../quantity.ts';
import type { Scenario } from '../scenario/schema.ts';

/** The limits a case is judged by: those of its insulation, the touch limit, the metal's melting, and any the user adds. */
export function limitsOf(scenario: Scenario, cable: Cable): Limit[] {
  const { metal } = cable.conductor;
  const melting: Limit = {
    id: 'metal melting',
    kind: 'melting',
    name: `${metal.name} begins to melt`,
    place: 'conductor',
    low: metal.melting.value,
    high: metal.melting.value,
    test: 'solidus',
    duration: 'at once',
    source: metal.melting.source,
    confidence: metal.melting.confidence,
  };
  const own = (scenario.limits ?? []).map((extra, i): Limit => {
    const [low, high] = typeof extra.T_degC === 'number' ? [extra.T_degC, extra.T_degC] : extra.T_degC;
    return {
      id: `own ${i + 1}`,
      kind: extra.kind ?? 'other',
      name: extra.name,
      place: extra.place ?? 'conductor',
      low: kelvin(low),
      high: kelvin(high),
      test: extra.test ?? 'as entered',
      duration: extra.duration ?? 'as entered',
      source: 'user',
      confidence: 'our choice',
    };
  });
  return [touchLimit, ...(cable.insulation?.limits ?? []), melting, ...own];
}

/** The continuous rating of the cable's insulation [K], its lower end where the sources give a range; null without insulation. */
export function ratingOf(cable: Cable): number | null {
  return cable.insulation?.limits.find((limit) => limit.kind === 'rating')?.low ?? null;
}
