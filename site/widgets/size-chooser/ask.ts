import { type AmpacityColumn, type DeviceFamily, type MethodLetter, standardRatings } from '#engine';
import type { Practice } from '../../lib/format.ts';
import type { Accepts } from '../figure/ask-text.ts';
import { circuitDevices } from '../figure/devices.ts';

/** How a fixed cable is laid: by a letter of IEC 60364-5-52, or flat twin and earth clipped as British tables have it. */
export type Laid = MethodLetter | 'flat twin';

/** What a size is to be chosen for. A type, not an interface, so that it is an ask as every figure's is. */
export type ChooserAsk = {
  told: 'watts' | 'amps';
  /** Load, in what it is told in [W or A]. */
  load: number;
  /** Volts that the load is made for [V]. */
  volts: number;
  /** Whether it lasts three hours or more; North American practice counts that. */
  continuous: boolean;
  family: DeviceFamily;
  /** Rated current of the device [A]. */
  rating: number;
  laid: Laid;
  metal: 'copper' | 'aluminium';
  /** [°C] */
  ambient: number;
  /** Circuits in one bunch; in North American practice conductors that carry current together. */
  together: number;
  /** Length that lies in thermal insulation [mm]. */
  lagged: number;
  /** Column of the conductor's insulation, and what the terminals are marked for [°C]. */
  column: AmpacityColumn;
  terminals: 60 | 75;
  /** Whether the leave to take the next standard device is used. */
  leave: boolean;
};

/** Greatest rating that is offered [A]. */
export const greatestRating = 63;

/** Warmest ambient that the tables print a factor for, by practice and column [°C]. */
export const warmest = (practice: Practice, column: AmpacityColumn): number => (practice === 'iec' ? 60 : column - 5);

const accepted = (practice: Practice): Accepts<ChooserAsk> => ({
  told: ['watts', 'amps'],
  load: { least: 0.1, most: 20_000 },
  volts: { least: 50, most: 480 },
  continuous: [false, true],
  family: circuitDevices[practice],
  rating: [...new Set(circuitDevices[practice].flatMap((one) => standardRatings(one)))].filter(
    (In) => In <= greatestRating,
  ),
  laid: ['flat twin', 'A2', 'B2', 'C', 'E'],
  metal: ['copper', 'aluminium'],
  ambient: practice === 'iec' ? { least: 10, most: 60 } : { least: 0, most: 85 },
  together: { least: 1, most: 20 },
  lagged: { least: 0, most: 1000 },
  column: [60, 75, 90],
  terminals: [60, 75],
  leave: [false, true],
});

/** What each part of the ask may be, by practice. */
export const acceptedAsk: Readonly<Record<Practice, Accepts<ChooserAsk>>> = {
  iec: accepted('iec'),
  na: accepted('na'),
};

/** Parts that go along to the other practice where they were changed. */
export const keptParts = ['told', 'load', 'ambient', 'continuous'] as const;
