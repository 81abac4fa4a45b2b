import { type CastKey, castScenario, predict, type Scenario } from '#engine';
import { type Practice, thin } from '../../lib/format.ts';

/** A case as a lesson writes it: a member of the cast, its load and its air. Times in seconds. */
export interface LessonCase {
  cast: CastKey;
  amps: number;
  ambient: number;
  /** How long the current is on; half an hour unless given. */
  on?: number | undefined;
  /** How long it is off afterwards; not at all unless given. */
  off?: number | undefined;
  /** How often on and off go round; once unless given. */
  rounds?: number | undefined;
}

const halfAnHour = 1800; // s

/** The scenario of a lesson's case. */
export function caseOf({ cast, amps, ambient, on = halfAnHour, off, rounds = 1 }: LessonCase): Scenario {
  if (off === undefined) return castScenario(cast, amps, ambient, on);
  const supply: Scenario['supply'] = [
    { kind: 'current', I_A: amps, duration_s: on },
    { kind: 'off', duration_s: off },
  ];
  const once = { ...castScenario(cast, amps, ambient, rounds * (on + off)), supply };
  return rounds > 1 ? { ...once, cycles: rounds } : once;
}

/** The same case for both practices, each with its own member of the cast. */
export function casesOf(
  cast: Readonly<Record<Practice, CastKey>>,
  load: Omit<LessonCase, 'cast'>,
): Record<Practice, Scenario> {
  return { iec: caseOf({ ...load, cast: cast.iec }), na: caseOf({ ...load, cast: cast.na }) };
}

/** A case in words, for those who are to predict it. */
export function caseWords(scenario: Scenario): string {
  const { thermal } = predict(scenario);
  const { cable, n } = thermal;
  const metal = cable.row ? `, ${cable.conductor.metal.name}` : '';
  const first = scenario.supply[0];
  const load = first?.kind === 'current' ? `${first.I_A}${thin}A in ${n} of its cores` : `${n} of its cores loaded`;
  return `A cord, ${cable.name}${metal}. It carries ${load}, in ${thermal.outside.words}. It starts cold.`;
}
