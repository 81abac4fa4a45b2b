import { type DeviceFamily, type PlaceKind, placeKindOf, type Scenario, usualSurroundings } from '#engine';

/** The device that a scenario names by family and rating; undefined where it has its maker's curve, or none. */
export function namedDevice({ device }: Scenario): { family: DeviceFamily; rating: number } | undefined {
  return device && 'family' in device ? { family: device.family, rating: device.rating_A } : undefined;
}

/** The scenario behind another device. */
export const withDevice = (scenario: Scenario, family: DeviceFamily, rating_A: number): Scenario => ({
  ...scenario,
  device: { family, rating_A },
});

const reelMetres = 25; // own choice, the lead of lesson 2.4

/** The scenario in the usual surroundings of a kind, at its own ambient. */
export function withPlace(scenario: Scenario, kind: PlaceKind): Scenario {
  const { surroundings, lead } = scenario;
  if (placeKindOf(surroundings) === kind) return scenario;
  const length = lead?.length_m ?? reelMetres;
  return { ...scenario, surroundings: usualSurroundings(kind, surroundings.ambient_degC, length) };
}

/** The scenario without what it is fed by, which a plane does not depend on, as a key. */
export function unfed(scenario: Scenario): string {
  const { supply: _supply, run: _run, cycles: _cycles, title: _title, ...rest } = scenario;
  return JSON.stringify(rest);
}
