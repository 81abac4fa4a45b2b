import { buildCase, faultLine, kelvin, parseScenario, ratingAt, type Scenario, type ThermalCase } from '#engine';

/** A scenario from plain data, read as any user's file is; throws the first fault. */
export function scenarioOf(data: unknown): Scenario {
  const { scenario, faults } = parseScenario(data);
  if (!scenario) throw new Error(faults.map(faultLine).join('; '));
  return scenario;
}

/** A cable in still air (unless told) with its supply off, as ratings need it. */
export function caseOf(cable: unknown, ambient_degC: number, surroundings: object = { kind: 'stillAir' }): ThermalCase {
  return buildCase(scenarioOf({ cable, surroundings: { ambient_degC, ...surroundings }, supply: [{ kind: 'off' }] }));
}

/** Steady current that holds the conductor at `T_degC` [A]. */
export function ratingAt_degC(of: ThermalCase, T_degC: number): number {
  const I = ratingAt(of, kelvin(T_degC));
  if (I === null) throw new Error(`no rating at ${T_degC} °C`);
  return I;
}

/** The same case with a constant film: q = `perKelvin` · (T − Ta) [W/m], as textbooks take it. */
export function withFilm(of: ThermalCase, perKelvin: number): ThermalCase {
  const law = (T: number) => perKelvin * (T - of.Ta);
  return { ...of, outside: { ...of.outside, law, flow: law, outsideOf: (T) => T } };
}
