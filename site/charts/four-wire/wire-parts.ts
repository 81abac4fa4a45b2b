/** One of the two circuits as it is drawn. */
export interface DrawnCircuit {
  readonly id: 'two' | 'four';
  readonly title: string;
  /** Volts shown, in words. */
  readonly volts: string;
  /** True where the voltmeter sits on the lead itself. */
  readonly atLead: boolean;
}

/** A reading on the scale of ohms: its value and two standard uncertainties [mΩ/m], and its words. */
export interface DrawnReading {
  readonly id: string;
  readonly name: string;
  readonly value: number;
  readonly bar: number;
}

/** Height of one circuit [px], and of a scale of so many readings. */
export const circuitHeight = 180;
export const scaleHeight = (readings: number): number => 58 + 34 * readings + 34;
