import { leadResistance, type ThermalCase } from '../../heating/thermal-case.ts';
import { T20 } from '../../material/resistivity.ts';

/**
 * What a fit may free.
 * - `R20`: resistance of one conductor at 20 °C [Ω/m]; what the conductor holds of heat stays.
 * - `area`: metal area of one conductor [m²], its metal as in the case; resistance and what it holds follow, outer sizes stay.
 *   Beside a given or freed `R20` it sets what the conductor holds alone.
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
  /** Half-width of an interval beyond which a value is of no use at a bench, where another could stand for it (our choice). */
  readonly useful: number;
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
  const mostContact = Math.max(0.1, 2 * lead, 2 * of.lead.contact);
  const share = (id: FitParameterId, name: string, unit: string, start: number, useful: number): FitParameter => {
    return { id, name, unit, start, bounds: [start / 5, start * 5], step: 1e-4 * start, useful: useful * start };
  };
  const offset = (id: FitParameterId, name: string, most: number, step: number): FitParameter => {
    return { id, name, unit: 'K', start: 0, bounds: [-most, most], step, useful: 1 };
  };
  return {
    R20: share('R20', 'the resistance at 20 °C', 'Ω/m', R20, 0.1),
    area: share('area', 'the metal area', 'm²', area, 0.1),
    contact: {
      id: 'contact',
      name: 'the contact resistance',
      unit: 'Ω',
      start: of.lead.contact,
      bounds: [0, mostContact],
      step: 1e-4 * lead,
      useful: 0.1 * lead,
    },
    surface: share('surface', 'the surface factor', '', 1, 0.25),
    ambientOffset: offset('ambientOffset', 'the ambient offset', 10, 1e-3),
    probeOffset: offset('probeOffset', 'the probe offset', 15, 1e-2),
    probeLag: { id: 'probeLag', name: 'the probe lag', unit: 's', start: 0, bounds: [0, 600], step: 1e-2, useful: 30 },
  };
}

/** A case's own values, with some put in; a metal area takes the resistance with it unless that is given too. */
export function valuesOf(of: ThermalCase, some: Partial<FitValues> = {}): FitValues {
  const all = fitParametersOf(of);
  const own = Object.fromEntries(fitParameterIds.map((id) => [id, all[id].start])) as Record<FitParameterId, number>;
  return withValues(own, some);
}

/** Values with some put in; a metal area takes the resistance with it unless that is put in too. */
export function withValues(values: FitValues, some: Partial<FitValues>): FitValues {
  const { area = values.area, R20 = (values.R20 * values.area) / area } = some;
  return { ...values, ...some, area, R20 };
}
