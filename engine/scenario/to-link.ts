import lz from 'lz-string';
import type { Scenario } from './schema.ts';

/** A scenario as compact text for a link's fragment: letters, digits, + - and $ only. */
export function scenarioToLink(scenario: Scenario): string {
  return lz.compressToEncodedURIComponent(JSON.stringify(scenario));
}
