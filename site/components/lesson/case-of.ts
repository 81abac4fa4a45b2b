import {
  type CastKey,
  cast,
  castScenario,
  inMetal,
  inSize,
  type MetalId,
  predict,
  type Scenario,
  tradeSize,
} from '#engine';
import { type Practice, thin } from '../../lib/format.ts';

/** A case as a lesson writes it: a member of the cast, its load and its air. Times in seconds. */
export interface LessonCase {
  cast: CastKey;
  /** Current held; else `volts` are. */
  amps?: number | undefined;
  /** Volts held at the start of the lead, its far end bridged. */
  volts?: number | undefined;
  ambient: number;
  /** How long the current is on; half an hour unless given. */
  on?: number | undefined;
  /** How long it is off afterwards; not at all unless given. */
  off?: number | undefined;
  /** How often on and off go round; once unless given. */
  rounds?: number | undefined;
  /** Another metal in the same cord. */
  metal?: MetalId | undefined;
  /** Another size of the same cord, in its own unit: mm², or AWG for a cord of that kind. */
  size?: number | undefined;
  /** Length of the run [m]. */
  length?: number | undefined;
  /** Surroundings other than still air, as a scenario has them, without the ambient. */
  surroundings?: Readonly<Record<string, string | number | boolean>> | undefined;
}

const halfAnHour = 1800; // s

/** The scenario of a lesson's case. */
export function caseOf(of: LessonCase): Scenario {
  const { on = halfAnHour, off, rounds = 1 } = of;
  const base = withSurroundings(
    withLead(castScenario(of.cast, of.amps ?? 0, of.ambient, rounds * (on + (off ?? 0))), of),
    of,
  );
  const load: Scenario['supply'][number] =
    of.volts === undefined ? { kind: 'current', I_A: of.amps ?? 0 } : { kind: 'voltage', U_V: of.volts };
  if (off === undefined) return { ...base, supply: [load] };
  const supply: Scenario['supply'] = [
    { ...load, duration_s: on },
    { kind: 'off', duration_s: off },
  ];
  return rounds > 1 ? { ...base, supply, cycles: rounds } : { ...base, supply };
}

function withLead(scenario: Scenario, of: LessonCase): Scenario {
  const length = of.length === undefined ? {} : { lead: { length_m: of.length } };
  return { ...scenario, cable: cableOfCase(of), ...length };
}

/** The cast's cable in the case's size, its strands drawn from the case's metal. */
function cableOfCase({ cast: key, metal, size }: LessonCase): Scenario['cable'] {
  const cable = size === undefined ? cast[key] : sized(key, size);
  return metal === undefined ? cable : inMetal(cable, metal);
}

/** Throws where the cord is not made in that size, so that a lesson never shows one that is not there. */
function sized(key: CastKey, size: number): Scenario['cable'] {
  const to = tradeSize(key.startsWith('A') ? 'AWG' : 'mm2', size);
  const cable = to && inSize(cast[key], to);
  if (!cable) throw new Error(`the cord ${key} is not made in the size ${size}`);
  return cable;
}

function withSurroundings(scenario: Scenario, { surroundings, ambient }: LessonCase): Scenario {
  if (!surroundings) return scenario;
  return { ...scenario, surroundings: { ...surroundings, ambient_degC: ambient } as Scenario['surroundings'] };
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
