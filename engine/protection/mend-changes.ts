import { cordCurrent } from '../cable/cord-ratings.ts';
import { inSize, markedSize } from '../cable/in-size.ts';
import { tradeSizes } from '../conductor/area-scale.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import type { CableSpec, Scenario, SurroundingsSpec } from '../scenario/schema.ts';
import type { Device } from './device.ts';
import { device as deviceFrom, standardRatings } from './devices.ts';
import { isCord, ruledMetal, soundCable } from './rule-of-case.ts';

/** What may be changed, one at a time. */
export type ChangeKind = 'device' | 'size' | 'surroundings' | 'load';

/** One change of a case, ready to be tried. */
export interface Change {
  readonly kind: ChangeKind;
  /** What to do, as a sentence. */
  readonly words: string;
  readonly scenario: Scenario;
  readonly device: Device;
  readonly Ib: number;
}

/** The case as it stands. */
export interface Standing {
  readonly of: ThermalCase;
  readonly device: Device;
  readonly Ib: number;
}

/** Breakers by how much their magnet lets pass. */
const letters = ['D', 'C', 'B'] as const;
const indefinite = (name: string) => `${/^(8|11|18|80)/.test(name) ? 'an' : 'a'} ${name}`;

/** Other devices of the family at standard ratings that carry the load, the nearest first; of a breaker, lighter letters first. */
export function otherDevices({ of, device, Ib }: Standing): Change[] {
  const { family, In } = device;
  if (family === 'own') return [];
  const able = standardRatings(family).filter((rating) => rating >= Ib);
  // one that carries the load is rated up if this one does not, and down otherwise
  const ratings = In < Ib ? able : able.filter((rating) => rating < In).reverse();
  const letter = letters.indexOf(family as 'B');
  const lighter = letter >= 0 && In >= Ib ? letters.slice(letter + 1).map((one) => deviceFrom(one, In)) : [];
  return [...lighter, ...ratings.map((rating) => deviceFrom(family, rating))].flatMap((other): Change[] =>
    other
      ? [{ kind: 'device', words: `Fit ${indefinite(other.name)} instead.`, scenario: of.scenario, device: other, Ib }]
      : [],
  );
}

/**
 * The cable as marked, where it is not, and then in every thicker size of its table; flexible cords in sound copper, and in
 * no size whose table current is less than the device's rating.
 */
export function otherSizes({ of, device, Ib }: Standing): Change[] {
  const { scenario } = of;
  const now = markedSize(scenario.cable);
  if (!now) return [];
  const cord = isCord(of);
  const base: CableSpec = cord ? soundCable(scenario.cable) : scenario.cable;
  const sound = cord && ruledMetal(of) !== 'copper';
  const noun = cord ? 'copper cord' : 'cable';
  const sizes = tradeSizes.filter(
    ({ system, area }) => system === now.system && (sound ? area >= now.area : area > now.area),
  );
  return sizes.flatMap((size): Change[] => {
    const cable = inSize(base, size);
    const rated = cordCurrent(size)?.I ?? 0;
    if (!cable || (cord && rated < device.In)) return [];
    const words = `Use a ${sound ? 'sound ' : ''}${noun} of ${size.name.replace(' ', '\u00A0')}.`;
    return [{ kind: 'size', words, scenario: { ...scenario, cable }, device, Ib }];
  });
}

/** Coldest place that is looked for [°C] (own choice: colder than that no workplace stays). */
const coldest_degC = 5;

/** The same cable unwound or uncovered; undefined where it lies free already. */
export function laidFree({ of, device, Ib }: Standing): Change | undefined {
  const { scenario } = of;
  const { kind, ambient_degC } = scenario.surroundings;
  if (kind !== 'coiled' && kind !== 'lagged') return undefined;
  const words = kind === 'coiled' ? 'Unwind the cable fully.' : 'Take the cover off the cable.';
  const surroundings: SurroundingsSpec = { kind: 'stillAir', ambient_degC };
  return { kind: 'surroundings', words, scenario: { ...scenario, surroundings }, device, Ib };
}

/** The same place at every colder whole degree, the warmest first. */
export function colderPlaces({ of, device, Ib }: Standing): Change[] {
  const { scenario } = of;
  const { ambient_degC } = scenario.surroundings;
  const first = Math.ceil(ambient_degC) - 1;
  return Array.from({ length: Math.max(0, first - coldest_degC + 1) }, (_, i): Change => {
    const T = first - i;
    const surroundings = { ...scenario.surroundings, ambient_degC: T } as SurroundingsSpec;
    const words = `Keep the place at ${T}\u00A0°C or colder.`;
    return { kind: 'surroundings', words, scenario: { ...scenario, surroundings }, device, Ib };
  });
}

/** Smaller loads by half amperes, down to half of one; the largest first. */
export function smallerLoads({ of, device, Ib }: Standing): Change[] {
  const first = Math.ceil(2 * Ib) - 1;
  return Array.from({ length: Math.max(0, first) }, (_, i): Change => {
    const less = (first - i) / 2;
    const words = `Keep the load at ${less}\u00A0A or less.`;
    return { kind: 'load', words, scenario: of.scenario, device, Ib: less };
  });
}
