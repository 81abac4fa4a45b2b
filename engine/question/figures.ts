import { fahrenheit, kelvin } from '../quantity.ts';
import type { Practice } from './types.ts';
import { unitSpace } from './words.ts';

/** Digits of a whole number with its thousands apart from 10 000 on; leading zeros are dropped. */
export function spaced(whole: string): string {
  const digits = whole.replace(/^0+(?=\d)/, '');
  return digits.length > 4 ? digits.replace(/\B(?=(?:\d{3})+$)/g, unitSpace) : digits;
}

/** `value` to `figures` significant figures in plain digits with a true minus; very large and small ones as 1.5 × 10^9. */
export function plainNumber(value: number, figures: number): string {
  const size = Number(Math.abs(value).toPrecision(figures));
  const minus = value < 0 && size !== 0 ? '−' : '';
  if (size === 0) return '0';
  if (size >= 1e7 || size < 1e-4) {
    const [mantissa, power] = size.toExponential(figures - 1).split('e') as [string, string];
    return `${minus}${mantissa} × 10^${Number(power)}`.replace('^-', '^−');
  }
  const places = Math.min(12, Math.max(0, figures - 1 - Math.floor(Math.log10(size))));
  const [whole, part] = size.toFixed(places).split('.') as [string, string?];
  return minus + spaced(whole) + (part === undefined ? '' : `.${part}`);
}

/** A number with its unit to `figures` significant figures: '17.4 A'. */
export const amount = (value: number, figures: number, unit: string): string =>
  `${plainNumber(value, figures)}${unitSpace}${unit}`;

/** A number as it is, with its unit: '0.75 mm²', '16 A'. */
export const given = (value: number, unit: string): string => amount(value, significantIn(value), unit);

const significantIn = (value: number) =>
  Math.max(1, String(Math.abs(value)).replace('.', '').replace(/^0+/, '').length);

const whole = (value: number) => String(Math.round(value)).replace('-', '−');

/** A temperature to whole degrees in words of the practice: '62 °C', or '62 °C (144 °F)'. `T_degC` in °C. */
export function temperatureText(T_degC: number, practice: Practice): string {
  const celsius = `${whole(T_degC)}${unitSpace}°C`;
  return practice === 'na' ? `${celsius} (${whole(fahrenheit(kelvin(T_degC)))}${unitSpace}°F)` : celsius;
}

/** A rise to whole kelvin: '44 K'. */
export const riseText = (rise: number): string => `${whole(rise)}${unitSpace}K`;

/** A part of one to whole per cent: '63 %'. */
export const percentText = (part: number): string => `${whole(100 * part)}${unitSpace}%`;

/** A time in words: '42 s', '3 min 55 s', '1 h 5 min'. Seconds are left out from an hour on. `t` in s. */
export function timeText(t: number): string {
  const s = Math.round(t);
  const parts: [number, string][] =
    s < 3600
      ? [
          [Math.floor(s / 60), 'min'],
          [s % 60, 's'],
        ]
      : [
          [Math.floor(s / 3600), 'h'],
          [Math.round((s % 3600) / 60), 'min'],
        ];
  const told = parts.filter(([count]) => count > 0);
  return told.length === 0 ? `0${unitSpace}s` : told.map(([count, unit]) => `${count}${unitSpace}${unit}`).join(' ');
}

/** `value` rounded to `figures` significant figures. */
export const rounded = (value: number, figures: number): number => Number(value.toPrecision(figures));
