import { within } from '../errors.ts';
import { resistanceRatio } from '../material/resistivity.ts';
import type { Reading } from './instruments/meter.ts';
import type { Measured } from './measured.ts';
import { lastingPart, sameInstrument } from './readings-together.ts';
import { type Input, type Model, pairCorrelated } from './uncertainty/model.ts';
import { propagate, type Uncertainty } from './uncertainty/propagate.ts';

/**
 * How the voltage was taken. By four terminals the test leads are outside the reading. By two they are in it: `left in`, or
 * `taken off` afterwards, or `zeroed` by the meter before, which leaves how well that repeats, `leads.u`.
 */
export type Connection =
  | { readonly kind: 'four-terminal' }
  | {
      readonly kind: 'two-terminal';
      /** Resistance of the test leads and their contacts [Ω]. */
      readonly leads: Measured;
      readonly treated: 'left in' | 'taken off' | 'zeroed';
    };

/** A measurement of a conductor's resistance per metre by volts and amps. */
export interface LoopMeasurement {
  /** Voltage [V] at the current `I` [A], as read: the meter's sign counts. */
  readonly U: Measured & Partial<Reading>;
  /**
   * The voltage with the same current turned round, below 0, where it was read: the mean of both sizes is free of thermal EMF
   * and of the meter's zero, though the latter is left in the uncertainty.
   */
  readonly reversed?: Measured & Partial<Reading>;
  readonly I: Measured;
  /** Length of the lead [m]. */
  readonly length: Measured;
  /** Conductors in series round the loop: 2 for line and neutral joined at the far end. */
  readonly inSeries: number;
  /** Temperature of the conductor [K]. */
  readonly T: Measured;
  /** Temperature coefficient of its resistance at 20 °C [1/K], and its curvature [1/K²]. */
  readonly alpha20: Measured;
  readonly beta20?: number;
  readonly connection: Connection;
}

/** What such a measurement says. */
export interface PerMetre {
  /** Resistance of one conductor at 20 °C [Ω/m], with its budget. */
  readonly R20: Uncertainty;
  /** The same at the temperature it was measured at [Ω/m]. */
  readonly asFound: Uncertainty;
  /** What test leads left in the reading add to `asFound`, by what is known of them [Ω/m]; null where they are not in it. */
  readonly leadsInIt: number | null;
  /** Thermal EMF in the circuit [V], not told from the meter's zero, by turning the current round; null where that was not done. */
  readonly emf: Measured | null;
  /** Where the figures do not mean what they seem to, in sentences. */
  readonly limits: readonly string[];
}

/** A measured value as an input of the model; a reading brings the shape of its doubt. */
const input = (name: string, unit: string, of: Measured): Input => ({ ...of, name, unit });

/** Resistance of the leads that the computation takes off [Ω]: what is known of them, or nothing, with what zeroing leaves. */
function takenOff(of: Connection): Measured | null {
  if (of.kind === 'four-terminal' || of.treated === 'left in') return null;
  return of.treated === 'zeroed' ? { ...of.leads, value: 0 } : of.leads;
}

function check({ I, length, inSeries, T }: LoopMeasurement): void {
  within('size of the current', Math.abs(I.value), [1e-6, 1e4], 'A');
  within('length of the lead', length.value, [0.01, 1e5], 'm');
  within('conductors in series', inSeries, [1, 100], '');
  within('temperature of the conductor', T.value, [200, 500], 'K');
}

/**
 * The measurement as a model: R'20 = (U/I − R_leads)/(n·L·(1 + α20 (θ − 20) + β20 (θ − 20)²)) [Ω/m], U being half the
 * difference of both directions where the current was turned round. Without `to20` it is R' as found.
 */
export function loopModel(of: LoopMeasurement, to20 = true): Model {
  check(of);
  const { U, reversed, I, length, inSeries, T, alpha20, beta20 = 0, connection } = of;
  const off = takenOff(connection);
  const inputs = [
    input('current', 'A', I),
    input('length', 'm', length),
    ...(to20 ? [input('temperature', 'K', T), input('temperature coefficient', '1/K', alpha20)] : []),
    ...(off ? [input('test leads', 'Ω', off)] : []),
    input('voltage', 'V', U),
    ...(reversed ? [input('voltage, reversed', 'V', reversed)] : []),
  ];
  const [first, last] = [inputs.length - 2, inputs.length - 1];
  const f = (x: readonly number[]) => {
    const at = (name: string) => x[inputs.findIndex((one) => one.name === name)] as number;
    const volts = reversed ? (at('voltage') - at('voltage, reversed')) / 2 : at('voltage');
    const ratio = to20 ? resistanceRatio(at('temperature coefficient'), beta20, at('temperature')) : 1;
    return (volts / at('current') - (off ? at('test leads') : 0)) / (inSeries * at('length') * ratio);
  };
  // one scale error raises the size of both readings, so of signed ones it is correlated the other way
  return reversed
    ? { inputs, f, correlation: pairCorrelated(inputs.length, first, last, -sameInstrument(U, reversed)) }
    : { inputs, f };
}

/** Half the sum of both directions' readings: the scale error falls out of it, but for what the two differ; the meter's zero does not. */
function emfOf(U: LoopMeasurement['U'], reversed: LoopMeasurement['U']): Measured {
  const lasting = lastingPart(U) - lastingPart(reversed);
  const [a, b] = [U, reversed].map((one) => one.u ** 2 - lastingPart(one) ** 2) as [number, number];
  return { value: (U.value + reversed.value) / 2, u: Math.hypot(Math.sqrt(lasting ** 2 + a + b) / 2, U.zero ?? 0) };
}

function limitsOf({ connection, reversed }: LoopMeasurement): string[] {
  const told: string[] = [];
  if (connection.kind === 'two-terminal' && connection.treated === 'left in')
    told.push('The test leads are in the reading, so the conductor’s own resistance is less than the figure says.');
  if (connection.kind === 'two-terminal' && connection.treated === 'zeroed')
    told.push('Zeroing takes the test leads off as they were then; a contact made anew is not the same contact.');
  if (!reversed) told.push('The current was not turned round, so a thermal EMF would be in the voltage unseen.');
  return told;
}

/**
 * Resistance per metre of one conductor of a lead, at 20 °C and as found, by volts and amps on conductors in series, with
 * the uncertainty of every part. Current 1 µA to 10 kA, length 10 mm to 100 km, temperature 200 to 500 K. The
 * temperature is taken as that of the whole length: a current that warms the lead belongs to another measurement.
 */
export function resistancePerMetre(of: LoopMeasurement): PerMetre {
  const { U, reversed, length, inSeries, connection } = of;
  const leftIn = connection.kind === 'two-terminal' && connection.treated === 'left in';
  return {
    R20: propagate(loopModel(of)),
    asFound: propagate(loopModel(of, false)),
    leadsInIt: leftIn ? connection.leads.value / (inSeries * length.value) : null,
    emf: reversed ? emfOf(U, reversed) : null,
    limits: limitsOf(of),
  };
}
