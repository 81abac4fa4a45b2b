import type { Device, DeviceFamily } from '../../protection/device.ts';
import { device as deviceFrom } from '../../protection/devices.ts';
import { amount, given, timeText } from '../figures.ts';
import type { Practice } from '../types.ts';

/** A device with its article: 'a 13 A plug fuse', 'an 80 A gG fuse'. */
export const withArticle = (name: string): string => `${/^(?:8|11|18|80)\b/.test(name) ? 'an' : 'a'} ${name}`;

/** The same to begin a sentence. */
export const beginning = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The device of a family at a standard rating [A]; an error where there is none, since questions list their own. */
export function askedDevice(family: DeviceFamily, In: number): Device {
  const found = deviceFrom(family, In);
  if (!found) throw new Error(`no ${family} is made for ${In} A`);
  return found;
}

/** A time as it is told: '400 ms' below a second, two figures up to ten, else in words. `t` in s. */
export function spanText(t: number): string {
  if (t < 0.995) return amount(t * 1e3, 2, 'ms');
  return t < 10 ? given(Number(t.toPrecision(2)), 's') : timeText(t);
}

/** What the standard of a device leaves open, each number bound to its unit. */
export const silentOf = ({ silent }: Device): string => silent.replace(/(\d) (?=(?:A|%|s|°C)(?![a-z]))/g, '$1\u00A0');

/** A multiple of the rating as it is told: 1.6. */
export const timesRating = (I: number, { In }: Device): number => Number((I / In).toPrecision(3));

/** Words that differ between the practices. */
export const localWords: Readonly<Record<Practice, { line: string; earth: string; rcd: string }>> = {
  iec: { line: 'line', earth: 'earth', rcd: 'RCD' },
  na: { line: 'hot', earth: 'ground', rcd: 'GFCI' },
};

/** Hazard, what it does, what to do, where a fuse is what is asked about. */
export const fuseCaution =
  'A larger fuse, wire or foil lets the lead burn first. Fit only the rating marked, and prove it dead first.';

/** The same, where a breaker opens. */
export const breakerCaution =
  'Closing a breaker onto a fault can arc and injure. Find the cause first, then close it once.';

/** The same, where a lead is hotter than its insulation stands while the device holds. */
export const gapCaution =
  'A lead in the gap overheats while its device holds. Hot PVC gives off acid fume. Unplug it; never test it so.';

/** The same, where currents of a short circuit are told. */
export const shortCaution =
  'A short circuit can arc, burn and blind. Only licensed persons measure fault currents; here they are computed.';

/** The same, where the loop of a fault to earth or ground is asked about. */
export const loopCaution =
  'A loop that is too long may leave metal parts live. They can kill. Have it tested by a licensed person before use.';
