import { expect, it } from 'vitest';
import { clock, fixed, quantity, significant, temperature, three, timeInWords } from '#site/lib/format.ts';

const plain = (text: string) => text.replaceAll('\u00A0', ' ');

it('writes a number with its unit, decimals by the quantity', () => {
  expect(['A', 'V', 'W', '°C'].map((unit) => plain(quantity(17.384, unit)))).toEqual([
    '17.4 A',
    '17.38 V',
    '17.4 W',
    '17 °C',
  ]);
  expect(plain(three(13.3, 'mΩ/m'))).toBe('13.3 mΩ/m');
});

it('writes three figures without an exponent, also where rounding adds a digit', () => {
  expect([0.00123456, 0.9996, 9.996, 123456, 0].map((value) => plain(significant(value, 3)))).toEqual([
    '0.00123',
    '1.00',
    '10.0',
    '123 000',
    '0',
  ]);
});

it('writes a true minus, but none before nothing', () => {
  expect([fixed(-3.2, 1), fixed(-0.01, 1)]).toEqual(['−3.2', '0.0']);
});

it('adds °F in brackets for the practice that uses it', () => {
  expect(plain(temperature(62))).toBe('62 °C');
  expect(plain(temperature(62, 'na'))).toBe('62 °C (144 °F)');
});

it('writes times as a clock and as words', () => {
  expect([0, 42, 235, 3599.6, 3900, 86400].map((t) => plain(clock(t)))).toEqual([
    '0:00',
    '0:42',
    '3:55',
    '1 h 00 min',
    '1 h 05 min',
    '24 h 00 min',
  ]);
  expect([0.5, 42, 60, 235, 3900].map((t) => plain(timeInWords(t)))).toEqual([
    '0.50 s',
    '42 s',
    '1 min',
    '3 min 55 s',
    '1 h 5 min',
  ]);
  expect(clock(Number.POSITIVE_INFINITY)).toBe('never');
});
