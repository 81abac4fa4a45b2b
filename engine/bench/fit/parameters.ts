import { leadResistance, type ThermalCase } from '../../heating/thermal-case.ts';
import { T20 } from '../../material/resistivity.ts';

/**
 * What a fit may free.
 * - `R20`: resistance of one conductor at 20 °C [Ω/m]; what the conductor holds of heat stays.
 * - `area`: metal area of one conductor [m²], its metal as in the case; resistance and what it holds follow, outer sizes stay.
 *   Beside a free `R20` it sets what the conductor holds alone.
 * - `contact`: resistance in series with the lead inside the volts measured [Ω].
 * - `surface`: factor on the heat that the surface law sheds; dimensionless.
 * - `ambientOffset`: air that the lead feels, less what its thermometers say [K].
 * - `probeOffset`: what the sheath probes say, less what the sheath has [K]; one for all.
 * - `probeLag`: first-order time constant of the sheath probes [s]; one for all.
 */
export type FitParameterId = 'R20' | 'area' | 'contact' | 'surface' | 'ambientOffset' | 'probeOffset' | 'probeLag';

/** A value for each parameter, SI. */
export type FitValues = Readonly<Record<FitParameterId, number>>;

/** One parameter of a fit: where it begins, how far it may go, and what it is called. */
export interface FitParameter {
  readonly id: FitParameterId;
  /** In words, as the subject of a sentence. */
  readonly name: string;
  readonly unit: string;
  readonly start: number;
  readonly bounds: readonly [least: number, most: number];
  /** Step of a difference quotient. */
  readonly step: number;
}

/** All of them, in the order of being told. */
export const fitParameterIds = [
  'R20',
  'area',
  'contact',
  'surface',
  'ambientOffset',
  'probeOffset',
  'probeLag',
] as const satisfies readonly FitParameterId[];

/** Each parameter's start (the case's own value) and its bounds (our choice: what a bench may plausibly meet). */
export function fitParametersOf(of: ThermalCase): Readonly<Record<FitParameterId, FitParameter>> {
  const { R20, area } = of.cable.conductor;
  const lead = leadResistance(of, T20);
  const about = (id: FitParameterId, name: string, unit: string, start: number): FitParameter => {
    return { id, name, unit, start, bounds: [start / 5, start * 5], step: 1e-4 * start };
  };
  const between = (
    id: FitParameterId,
    name: string,
    unit: string,
    start: number,
    bounds: readonly [number, number],
    step: number,
  ): FitParameter => ({ id, name, unit, start, bounds, step });
  const mostContact = Math.max(0.1, 2 * lead, 2 * of.lead.contact);
  return {
    R20: about('R20', 'the resistance at 20 °C', 'Ω/m', R20),
    area: about('area', 'the metal area', 'm²', area),
    contact: between('contact', 'the contact resistance', 'Ω', of.lead.contact, [0, mostContact], 1e-4 * lead),
    surface: about('surface', 'the surface factor', '', 1),
    ambientOffset: between('ambientOffset', 'the ambient offset', 'K', 0, [-10, 10], 1e-3),
    probeOffset: between('probeOffset', 'the probe offset', 'K', 0, [-15, 15], 1e-2),
    probeLag: between('probeLag', 'the probe lag', 's', 0, [0, 600], 1e-2),
  };
}

/** The values that all parameters begin at. */
export function startValues(of: ThermalCase): FitValues {
  const all = fitParametersOf(of);
  return Object.fromEntries(fitParameterIds.map((id) => [id, all[id].start])) as Record<FitParameterId, number>;
}
