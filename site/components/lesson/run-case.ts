import { type CastKey, type LoadKind, loadAs, nominalVolts, type Scenario, stepOfLoad } from '#engine';
import type { Practice } from '../../lib/format.ts';
import { withHeld } from '../../widgets/metal-quartet/edit.ts';
import type { Held } from '../../widgets/metal-quartet/words.ts';
import { tidyLoad } from '../../widgets/volts-along/tidy-load.ts';
import { type ByPractice, forPractice } from './by-practice.ts';
import { caseOf } from './case-of.ts';

type Maybe<T> = ByPractice<T> | undefined;

/** A lead of a given length under a load, as a lesson writes it; any of it may differ by practice. */
export interface RunCase {
  cast: Readonly<Record<Practice, CastKey>>;
  ambient: ByPractice<number>;
  amps?: Maybe<number>;
  /** Volts held along the lead in place of amperes. */
  volts?: Maybe<number>;
  /** Length of the run, one way [m]. */
  length_m?: Maybe<number>;
}

/** The same as one practice has it. */
interface OneRun {
  cast: CastKey;
  ambient: number;
  amps?: number;
  volts?: number;
  length_m?: number;
}

const usualLength = 10; // m

function forBoth(of: RunCase, make: (run: OneRun, practice: Practice) => Scenario): Record<Practice, Scenario> {
  const one = (practice: Practice) => {
    const { cast, ambient, amps, volts, length_m } = of;
    return make(forPractice({ cast, ambient, amps, volts, length_m }, practice) as unknown as OneRun, practice);
  };
  return { iec: one('iec'), na: one('na') };
}

const runCase = ({ length_m = usualLength, ...run }: OneRun): Scenario => caseOf({ ...run, length: length_m });

/** The lead of each practice, its current held. */
export function runCases(of: RunCase): Record<Practice, Scenario> {
  return forBoth(of, runCase);
}

/** The lead with a load at its far end that takes these amperes at its nominal volts, told as amps, ohms or watts. */
export function loadedCases(of: RunCase, load: LoadKind = 'amps'): Record<Practice, Scenario> {
  return forBoth(of, (run, practice) => {
    const U = nominalVolts[practice].value;
    const told = loadAs(load, { kind: 'amps', value: run.amps ?? 0 }, U);
    return { ...runCase(run), supply: [stepOfLoad(tidyLoad(told), U)] };
  });
}

/** The lead with amps held, or with volts: those given, or what its copper cord takes at these amperes. */
export function heldCases(of: RunCase, held?: Held): Record<Practice, Scenario> {
  return forBoth(of, (run) => withHeld(runCase(run), held ?? (run.volts === undefined ? 'amps' : 'volts')));
}
