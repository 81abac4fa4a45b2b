import type { Conductor } from '../conductor/conductor.ts';
import { within } from '../errors.ts';
import { resistanceRatio } from '../material/resistivity.ts';
import { type LoopMeasurement, type PerMetre, resistancePerMetre } from './four-wire.ts';
import type { Reading } from './instruments/meter.ts';
import type { TestSet } from './instruments/sets.ts';
import type { Measured } from './measured.ts';

/** A known lead that is to be measured with volts and amps, its far end joined. */
export interface KnownLead {
  /** True resistance of one conductor at 20 °C [Ω/m], and what is known of how it changes. */
  readonly R20: number;
  readonly metal: Pick<Conductor, 'alpha20' | 'beta20'>;
  readonly alpha20: Measured;
  /** Length of the lead [m], and conductors in series round the loop. */
  readonly length: number;
  readonly inSeries: number;
  /** Temperature of the conductor [K]. */
  readonly T: number;
}

/** One of the two ways to connect: the volts that it shows [V], and what they say. */
export interface ShownBy {
  readonly U: Reading;
  readonly measured: PerMetre;
}

/** The same lead by two wires and by four. */
export interface TwoAndFour {
  /** Resistance of the loop as warm as it is [Ω]. */
  readonly loop: number;
  readonly two: ShownBy;
  readonly four: ShownBy;
}

/**
 * What volts and amps say of a known lead when the volts are taken at the meter's own end of its test leads, with `leads` [Ω,
 * 0 to 100] of lead and contact left in the reading, and when they are taken at the conductor itself. `I` is the test current
 * [A]; the conductor is taken to stay at its temperature.
 */
export function twoAndFour(lead: KnownLead, I: number, leads: number, by: TestSet): TwoAndFour {
  within('resistance of the test leads', leads, [0, 100], 'Ω');
  const { R20, metal, length, inSeries, T } = lead;
  const loop = R20 * resistanceRatio(metal.alpha20, metal.beta20, T) * inSeries * length;
  const shown = (R: number, connection: LoopMeasurement['connection']): ShownBy => {
    const U = by.volts(I * R);
    const told = { I: by.amps(I), length: by.length(length), T: by.temperature(T) };
    const measured = resistancePerMetre({
      ...{ U, ...told, inSeries, connection },
      ...{ alpha20: lead.alpha20, beta20: metal.beta20 },
    });
    return { U, measured };
  };
  return {
    loop,
    two: shown(loop + leads, { kind: 'two-terminal', leads: { value: leads, u: 0 }, treated: 'left in' }),
    four: shown(loop, { kind: 'four-terminal' }),
  };
}
