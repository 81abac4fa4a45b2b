import type { Scenario } from '../scenario/schema.ts';
import { cast, castScenario } from './cast.ts';

/** A case that the bench offers to start from. */
export interface BenchCase {
  readonly words: string;
  readonly scenario: Scenario;
}

const still: Scenario['surroundings'] = { kind: 'stillAir', ambient_degC: 20 };

/**
 * Cases to start from, all invented: two leads whose device cannot see their trouble, and one with a poor contact on a
 * long run.
 */
export const benchCases: readonly BenchCase[] = [
  {
    words: 'A suspect lead, marked 1.5 mm², behind a 13 A plug fuse',
    scenario: { ...castScenario('SUS', 10, 20), lead: { length_m: 8 }, device: { family: 'bs1362', rating_A: 13 } },
  },
  {
    words: 'An AWG 18 cord behind a 20 A breaker',
    scenario: { ...castScenario('A18', 10, 20), lead: { length_m: 7.62 }, device: { family: 'ul489', rating_A: 20 } },
  },
  {
    words: 'A 30 m lead with one poor pin, and the path of a fault at its end',
    scenario: {
      practice: 'iec',
      cable: cast.C150,
      lead: {
        length_m: 30,
        contacts: [
          { kind: 'pin', name: 'line pin, browned', R_ohm: 0.02 },
          { kind: 'pin', name: 'neutral pin', R_ohm: 0.0005 },
          { kind: 'fuse', R_ohm: 0.004 },
        ],
      },
      surroundings: still,
      supply: [{ kind: 'mains', U_V: 230, load_W: 2500 }],
      run: { duration_s: 1800 },
      device: { family: 'bs1362', rating_A: 13 },
      fault: { Ze_ohm: 0.35, line_ohm: 0.15, earth_ohm: 0.25 },
    },
  },
];
