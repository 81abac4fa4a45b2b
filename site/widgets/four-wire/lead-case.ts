import {
  againstGreatest,
  type Conformity,
  handHeldSet,
  kelvin,
  type MarkedReference,
  metals,
  panelSet,
  referenceOf,
  setByLimits,
  type TestSet,
  type TwoAndFour,
  twoAndFour,
} from '#engine';
import type { Practice } from '../../lib/format.ts';
import type { Accepts } from '../figure/ask-text.ts';

/** What a low resistance is measured with: instruments of the lesson's own limits, hand-held ones, or the supply's ammeter. */
export const instrumentKinds = ['limits', 'hand-held', 'panel'] as const;
export type InstrumentKind = (typeof instrumentKinds)[number];

/** What the two circuits are asked for. A type, not an interface, so that it is an ask as every figure's is. */
export type WireAsk = {
  /** Test current [A]. */
  amps: number;
  /** The meter's own two leads and their contacts, together [Ω]. */
  leads: number;
  /** Length of the lead [m]. */
  length: number;
  /** Temperature of the conductor [°C]. */
  T: number;
  instruments: InstrumentKind;
};

/** Ends of what can be set. */
export const wireEnds = {
  amps: { least: 0.1, most: 2 },
  leads: { least: 0, most: 0.5 },
  length: { least: 1, most: 50 },
  T: { least: 0, most: 40 },
} as const;

const accepted: Accepts<WireAsk> = { ...wireEnds, instruments: instrumentKinds };

/** What each part of an ask may be, by practice. */
export const acceptedWires: Readonly<Record<Practice, Accepts<WireAsk>>> = { iec: accepted, na: accepted };

/** A lead of copper that is known, and the instruments that it is measured with. */
export interface KnownCopper {
  /** Its true resistance of one conductor at 20 °C [Ω/m]. */
  readonly R20: number;
  /** Its marked size: mm², or AWG in North American practice. */
  readonly size: number;
}

/** Limits of the lesson's own instruments: shares of volts, amps and length in per cent, temperature in kelvin. */
export interface InstrumentLimits {
  readonly volts: number;
  readonly amps: number;
  readonly length: number;
  readonly kelvin: number;
}

/** Both circuits worked out by the engine. */
export interface WireCase extends TwoAndFour {
  readonly ask: WireAsk;
  readonly usage: Practice;
  readonly lead: KnownCopper;
  /** What the marked size asks of copper. */
  readonly reference: MarkedReference;
  /** Each reading held against it. */
  readonly byTwo: Conformity;
  readonly byFour: Conformity;
}

const inSeries = 2; // out on one conductor, back on the other

function setOf(kind: InstrumentKind, { volts, amps, length, kelvin: K }: InstrumentLimits): TestSet {
  if (kind === 'hand-held') return handHeldSet;
  if (kind === 'panel') return panelSet;
  return setByLimits({ U: volts / 100, I: amps / 100, L: length / 100, T: K });
}

/** Both circuits of an ask. */
export function wireCase(ask: WireAsk, usage: Practice, lead: KnownCopper, limits: InstrumentLimits): WireCase {
  const { alpha20, beta20 } = metals.copper;
  const known = {
    ...{ R20: lead.R20, metal: { alpha20: alpha20.value, beta20: beta20.value }, alpha20 },
    ...{ length: ask.length, inSeries, T: kelvin(ask.T) },
  };
  const both = twoAndFour(known, ask.amps, ask.leads, setOf(ask.instruments, limits));
  const reference = referenceOf(usage === 'na' ? { size_AWG: lead.size } : { size_mm2: lead.size });
  if (!reference) throw new Error(`nothing is asked of the size ${lead.size}`);
  const against = ({ measured }: typeof both.two) => againstGreatest(measured.R20, reference.R20);
  return { ...both, ask, usage, lead, reference, byTwo: against(both.two), byFour: against(both.four) };
}
