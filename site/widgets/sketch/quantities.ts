import { celsius, kelvin, type SketchQuantity } from '#engine';
import { fixed, type Practice, quantity, temperature } from '../../lib/format.ts';
import type { FieldUnit } from '../prediction/read-amount.ts';

/** How a quantity stands on a pad: shown in its own unit, kept in SI. */
export interface PadQuantity {
  /** 'temperature', as the axis has it. */
  readonly name: string;
  readonly symbol: string;
  readonly unit: FieldUnit;
  /** One step by keyboard, in the unit; page keys make ten. */
  readonly step: number;
  readonly places: number;
  /** From SI to the unit, and back. */
  readonly shown: (value: number) => number;
  readonly inSi: (shown: number) => number;
  /** Which of a run's curves it is. */
  readonly curve: 'conductor' | 'I';
  /** The name of the computed curve. */
  readonly computed: string;
  /** A value of the unit in words: '48 °C', '4.6 A'. */
  readonly told: (shown: number, practice: Practice) => string;
  /** A difference of two values in words: '7 K', '0.4 A'. */
  readonly apart: (shown: number) => string;
}

const same = (value: number): number => value;

/** The quantities that can be sketched. */
export const padQuantities: Readonly<Record<SketchQuantity, PadQuantity>> = {
  temperature: {
    name: 'temperature',
    symbol: 'θ',
    unit: '°C',
    step: 1,
    places: 0,
    shown: celsius,
    inSi: kelvin,
    curve: 'conductor',
    computed: 'conductor, computed',
    told: (shown, practice) => temperature(shown, practice),
    apart: (shown) => quantity(shown, 'K', 0),
  },
  current: {
    name: 'current',
    symbol: 'I',
    unit: 'A',
    step: 0.1,
    places: 1,
    shown: same,
    inSi: same,
    curve: 'I',
    computed: 'current, computed',
    told: (shown) => `${fixed(shown, 1)}\u00A0A`,
    apart: (shown) => quantity(shown, 'A', 1),
  },
};
