import { expect, it } from 'vitest';
import { type AnswerKind, readAnswer } from '#engine/question/answer.ts';
import { randomOf } from '#engine/question/random.ts';

// text, what is asked for, value [SI], figures typed, read-back without 'read as'
type Row = [text: string, kind: AnswerKind, value: number, figures: number, told: string];

const read: Row[] = [
  ['23.7 W', 'power', 23.7, 3, '23.7 W'],
  ['0,024 kW', 'power', 24, 2, '0.024 kW'],
  ['1.5e3 mΩ', 'resistance', 1.5, 2, '1500 mΩ'],
  ['2·3 Ω', 'resistance', 2.3, 2, '2.3 Ω'],
  ['2·10^3 Ω', 'resistance', 2000, 1, '2000 Ω'],
  ['1.5×10⁻³ ohms', 'resistance', 0.0015, 2, '0.0015 Ω'],
  ['1.5 x 10^3 mohm', 'resistance', 1.5, 2, '1500 mΩ'],
  ['0.5 MΩ', 'resistance', 5e5, 1, '0.5 MΩ'],
  ['62°C', 'temperature', 335.15, 2, '62 °C'],
  ['62 degC', 'temperature', 335.15, 2, '62 °C'],
  ['62 deg. c', 'temperature', 335.15, 2, '62 °C'],
  ['62º C', 'temperature', 335.15, 2, '62 °C'],
  ['62 degrees Celsius', 'temperature', 335.15, 2, '62 °C'],
  ['62 ℃', 'temperature', 335.15, 2, '62 °C'],
  ['144 F', 'temperature', 335.372, 3, '144 °F'],
  ['−5 °C', 'temperature', 268.15, 1, '−5 °C'],
  ['–5 °C', 'temperature', 268.15, 1, '−5 °C'],
  ['335 K', 'temperature', 335, 3, '335 K'],
  ['35 K', 'temperature rise', 35, 2, '35 K'],
  ['12 AWG', 'gauge', 12, 2, '12 AWG'],
  ['AWG 12', 'gauge', 12, 2, '12 AWG'],
  ['#12', 'gauge', 12, 2, '12 AWG'],
  ['12 gauge', 'gauge', 12, 2, '12 AWG'],
  ['1 min 35 s', 'time', 95, 2, '1 min 35 s'],
  ['1 minute and 35 seconds', 'time', 95, 2, '1 min 35 s'],
  ['1m35s', 'time', 95, 2, '1 min 35 s'],
  ['1 min, 35 sec.', 'time', 95, 2, '1 min 35 s'],
  ['3:55', 'time', 235, 3, '3 min 55 s'],
  ['3:55 min', 'time', 235, 3, '3 min 55 s'],
  ['1:05 h', 'time', 3900, 2, '1 h 5 min'],
  ['1:05:30', 'time', 3930, 3, '1 h 5 min 30 s'],
  ['1 h 5 min', 'time', 3900, 2, '1 h 5 min'],
  ['1h05', 'time', 3900, 2, '1 h 5 min'],
  ['3½ min', 'time', 210, 2, '3.5 min'],
  ['0 s', 'time', 0, 1, '0 s'],
  ['0:00', 'time', 0, 1, '0 s'],
  ['20,8A', 'current', 20.8, 3, '20.8 A'],
  ['20.8 amps', 'current', 20.8, 3, '20.8 A'],
  ['20 800 mA', 'current', 20.8, 3, '20 800 mA'],
  ['I = 20.8 A', 'current', 20.8, 3, '20.8 A'],
  ['about 20.8 A.', 'current', 20.8, 3, '20.8 A'],
  ['.5 A', 'current', 0.5, 1, '0.5 A'],
  ['+0.50 A', 'current', 0.5, 2, '0.50 A'],
  ['12 V', 'voltage', 12, 2, '12 V'],
  ['230 mv', 'voltage', 0.23, 2, '230 mV'],
  ['1\u2009234.5\u00A0W', 'power', 1234.5, 5, '1234.5 W'],
  ['12\u202F345 W', 'power', 12345, 5, '12 345 W'],
  ["12'345 W", 'power', 12345, 5, '12 345 W'],
  ['1,234,567 W', 'power', 1234567, 7, '1 234 567 W'],
  ['1.234,5 W', 'power', 1234.5, 5, '1234.5 W'],
  ['1,234.5 W', 'power', 1234.5, 5, '1234.5 W'],
  ['1.234.567 W', 'power', 1234567, 7, '1 234 567 W'],
  ['1.234 W', 'power', 1.234, 4, '1.234 W'],
  ['0,234 W', 'power', 0.234, 3, '0.234 W'],
  ['13.3 mΩ/m', 'resistance per metre', 0.0133, 3, '13.3 mΩ/m'],
  ['13.3 ohm/km', 'resistance per metre', 0.0133, 3, '13.3 Ω/km'],
  ['13.3 milliohms per metre', 'resistance per metre', 0.0133, 3, '13.3 mΩ/m'],
  ['3.14 ohms per kft', 'resistance per metre', 0.010301837, 3, '3.14 Ω/kft'],
  ['10.6 W/m', 'heat per metre', 10.6, 3, '10.6 W/m'],
  ['10.6 watts per metre', 'heat per metre', 10.6, 3, '10.6 W/m'],
  ['60 m', 'length', 60, 1, '60 m'],
  ['100 ft', 'length', 30.48, 1, '100 ft'],
  ['5 ft 6 in', 'length', 1.6764, 2, '5 ft 6 in'],
  ['2.5 mm2', 'area', 2.5e-6, 2, '2.5 mm²'],
  ['2.5 mm²', 'area', 2.5e-6, 2, '2.5 mm²'],
  ['2,5 sq mm', 'area', 2.5e-6, 2, '2.5 mm²'],
  ['25 %', 'ratio', 0.25, 2, '25 %'],
  ['25 per cent', 'ratio', 0.25, 2, '25 %'],
  ['0.25', 'ratio', 0.25, 2, '0.25'],
  ['×1.56', 'ratio', 1.56, 3, '1.56'],
  ['4', 'ratio', 4, 1, '4'],
  ['×4', 'ratio', 4, 1, '4'],
  ['x 4.0', 'ratio', 4, 2, '4.0'],
  ['4.00 times', 'ratio', 4, 3, '4.00'],
  ['4-fold', 'ratio', 4, 1, '4'],
  ['4 times as much', 'ratio', 4, 1, '4'],
  ['2,56x', 'ratio', 2.56, 3, '2.56'],
  ['734 mΩ', 'resistance', 0.734, 3, '734 mΩ'],
  ['734 mohms', 'resistance', 0.734, 3, '734 mΩ'],
  ['734 milliohm', 'resistance', 0.734, 3, '734 mΩ'],
  ['0,734 Ohm', 'resistance', 0.734, 3, '0.734 Ω'],
  ['0.734 \u2126', 'resistance', 0.734, 3, '0.734 Ω'],
  ['734 000 \u00B5Ω', 'resistance', 0.734, 3, '734 000 μΩ'],
  ['734000 uohm', 'resistance', 0.734, 3, '734 000 μΩ'],
  ['0.734 R', 'resistance', 0.734, 3, '0.734 Ω'],
  ['24.9 nΩ·m', 'resistivity', 24.9e-9, 3, '24.9 nΩ·m'],
  ['24.9 nohm m', 'resistivity', 24.9e-9, 3, '24.9 nΩ·m'],
  ['0.0249 Ω·mm²/m', 'resistivity', 24.9e-9, 3, '0.0249 Ω·mm²/m'],
  ['0.0249 µΩ·m', 'resistivity', 24.9e-9, 3, '0.0249 μΩ·m'],
  ['90.0 mΩ·g/m²', 'resistance times mass', 90e-6, 3, '90.0 mΩ·g/m²'],
  ['88.2 mohm g per m2', 'resistance times mass', 88.2e-6, 3, '88.2 mΩ·g/m²'],
  ['0.09 Ω g/m^2', 'resistance times mass', 90e-6, 1, '0.09 Ω·g/m²'],
  ['0.000088 Ω·kg/m²', 'resistance times mass', 88e-6, 2, '0.000088 Ω·kg/m²'],
  ['8.36 milliohm*grams/ft2', 'resistance times mass', 89.98629e-6, 3, '8.36 mΩ·g/ft²'],
  ['13.3 milliohm/m', 'resistance per metre', 0.0133, 3, '13.3 mΩ/m'],
  ['0.0133 Ω per metre', 'resistance per metre', 0.0133, 3, '0.0133 Ω/m'],
  ['13 300 µΩ/m', 'resistance per metre', 0.0133, 3, '13 300 μΩ/m'],
  ['2.525 Ω/1000 ft', 'resistance per metre', 0.0082841207, 4, '2.525 Ω/kft'],
  ["2.525 ohms per 1000'", 'resistance per metre', 0.0082841207, 4, '2.525 Ω/kft'],
  ['2.58 mohm/ft', 'resistance per metre', 0.0084645669, 3, '2.58 mΩ/ft'],
  ['2.58 milliohms per foot', 'resistance per metre', 0.0084645669, 3, '2.58 mΩ/ft'],
  ['10 640 mW/m', 'heat per metre', 10.64, 4, '10 640 mW/m'],
  ['10.6 kW/km', 'heat per metre', 10.6, 3, '10.6 kW/km'],
  ['10600 W per km', 'heat per metre', 10.6, 3, '10 600 W/km'],
  ['324 mW/ft', 'heat per metre', 1.0629921, 3, '324 mW/ft'],
  ['0.324 watts per foot', 'heat per metre', 1.0629921, 3, '0.324 W/ft'],
  ['324 W/1000 ft', 'heat per metre', 1.0629921, 3, '324 W/kft'],
  ['0.015 cm²', 'area', 1.5e-6, 2, '0.015 cm²'],
  ['4.107 kcmil', 'area', 2.0810476e-6, 4, '4.107 kcmil'],
  ['4107 circular mils', 'area', 2.0810476e-6, 4, '4107 cmil'],
  ['2 kWh', 'energy', 7.2e6, 1, '2 kWh'],
  ['54.0 kJ', 'energy', 54e3, 3, '54.0 kJ'],
];

it.each(read)('reads ‘%s’ as %s', (text, kind, value, figures, told) => {
  const reading = readAnswer(text, kind);
  expect(reading).toMatchObject({
    status: 'read',
    figures,
    readAs: `read as ${told.replaceAll(' ', '\u00A0')}`
      .replace(/(min|h|ft)\u00A0/g, '$1 ')
      .replace('read as\u00A0', 'read as '),
  });
  if (reading.status === 'read') expect(Math.abs(reading.value - value)).toBeLessThan(2e-6 * Math.abs(value) + 1e-12);
});

it.each([
  [
    '235',
    'time',
    'unit missing',
    '235 of what?',
    'The number needs its unit: the question asks for a time, in s or min.',
  ],
  ['20,8', 'current', 'unit missing', '20.8 of what?', 'in A.'],
  ['12', 'gauge', 'unit missing', '12 of what?', 'in AWG.'],
  ['62 degrees', 'temperature', 'unit missing', '62 of what?', 'Degrees on which scale: °C or °F?'],
  ['35 K', 'temperature', 'wrong kind', 'read as 35\u00A0K', 'K is for a temperature rise.'],
  ['62 W', 'temperature rise', 'wrong kind', 'read as 62\u00A0W', 'asks for a temperature rise, in K.'],
  ['40 degrees', 'temperature rise', 'unit missing', '40 of what?', 'Degrees on which scale'],
  ['10.6 W', 'heat per metre', 'wrong kind', 'read as 10.6\u00A0W', 'in W/m or W/ft.'],
  ['0.8 Ω', 'resistance per metre', 'wrong kind', 'read as 0.8\u00A0Ω', 'in mΩ/m or mΩ/ft.'],
  ['13.3 mΩ/m', 'resistance', 'wrong kind', 'read as 13.3\u00A0mΩ/m', 'asks for a resistance, in Ω.'],
  ['17.2 nΩ', 'resistivity', 'wrong kind', 'read as 17.2\u00A0nΩ', 'in nΩ·m.'],
  ['1.5 mm', 'area', 'wrong kind', 'read as 1.5\u00A0mm', 'asks for an area, in mm².'],
  ['4 A', 'ratio', 'wrong kind', 'read as 4\u00A0A', 'asks for a ratio, as a plain number or in %.'],
  ['0.734', 'resistance', 'unit missing', '0.734 of what?', 'a resistance, in Ω.'],
  ['1.67', 'heat per metre', 'unit missing', '1.67 of what?', 'in W/m or W/ft.'],
  ['4 m', 'time', 'wrong kind', 'read as 4\u00A0m', 'Minutes are written min.'],
  ['230 V', 'current', 'wrong kind', 'read as 230\u00A0V', 'V is for a voltage.'],
  ['12 AWG', 'area', 'wrong kind', 'read as 12\u00A0AWG', 'AWG is for a gauge.'],
  ['3:55', 'current', 'wrong kind', 'read as 3\u00A0min 55\u00A0s', 'for a time'],
  ['abc', 'power', 'unreadable', 'not read', 'No number was found in ‘abc’.'],
  ['23.7 flibs', 'power', 'unreadable', 'not read', 'We read 23.7, but not the unit ‘flibs’.'],
  ['60-70 °C', 'temperature', 'unreadable', 'not read', 'more than one number'],
  ['1 35', 'time', 'unreadable', 'not read', 'more than one number'],
  ['1 23 456 W', 'power', 'unreadable', 'not read', 'more than one number'],
  ['12345 678 W', 'power', 'unreadable', 'not read', 'two numbers'],
  ['1,23,4 W', 'power', 'unreadable', 'not read', 'The points and commas do not make a number.'],
  ['3:75', 'time', 'unreadable', 'not read', 'go up to 59'],
  ['35 s 1 min', 'time', 'unreadable', 'not read', 'from large to small'],
  ['1/2 A', 'current', 'unreadable', 'not read', 'more than one number'],
  ['5e400 A', 'current', 'unreadable', 'not read', 'exponent'],
] as const)('hands back ‘%s’ where %s is asked for: %s', (text, kind, status, readAs, says) => {
  const reading = readAnswer(text, kind);
  expect(reading).toMatchObject({ status, readAs });
  expect('says' in reading && reading.says).toContain(says);
});

it.each([
  ['40 °C', 40, '40\u00A0°C'],
  ['72 °F', 40, '72\u00A0°F'],
  ['72 degF', 40, '72\u00A0°F'],
  ['−5 deg C', -5, '−5\u00A0°C'],
] as const)('‘%s’ is a difference of %d K where a rise is asked for', (text, rise, told) => {
  const reading = readAnswer(text, 'temperature rise');
  expect(reading).toMatchObject({ status: 'read', told, readAs: `read as a difference of ${told}` });
  expect(reading.status === 'read' && reading.value).toBeCloseTo(rise, 9);
  expect(readAnswer('40 K', 'temperature rise')).toMatchObject({ value: 40, readAs: 'read as 40\u00A0K' });
});

it('an empty field is only empty', () => {
  expect(readAnswer(' \u00A0 ', 'time')).toEqual({ status: 'empty' });
});

it('a single comma before three digits is a decimal comma, is said to be, and keeps its other reading', () => {
  expect(readAnswer('1,234 W', 'power')).toMatchObject({
    status: 'read',
    value: 1.234,
    readAs: 'read as 1.234\u00A0W, the comma as a decimal point',
    otherwise: { value: 1234, readAs: 'read as 1234\u00A0W' },
  });
  expect(readAnswer('1,23 W', 'power')).not.toHaveProperty('otherwise');
});

it.each([
  ['20.8 A', 0.1],
  ['20 A', 1],
  ['240 A', 10], // the zero may only fill up
  ['200 A', 10], // two figures at least
  ['1.5e3 mA', 0.1],
  ['20.80 A', 0.01],
] as const)('the last place of ‘%s’ is worth %d A', (text, place) => {
  const reading = readAnswer(text, 'current');
  expect(reading.status === 'read' && reading.place).toBeCloseTo(place, 12);
});

it('a clock time in whole tens of seconds may have been rounded to them', () => {
  expect(readAnswer('3:40', 'time')).toMatchObject({ value: 220, place: 10 });
  expect(readAnswer('3 min 45 s', 'time')).toMatchObject({ value: 225, place: 1 });
  expect(readAnswer('1:10', 'time')).toMatchObject({ value: 70, place: 1 });
});

const kinds: AnswerKind[] = [
  'current',
  'voltage',
  'power',
  'resistance',
  'temperature',
  'temperature rise',
  'heat per metre',
  'resistance per metre',
  'resistivity',
  'time',
  'length',
  'area',
  'gauge',
  'ratio',
  'energy',
];
const pieces = [
  '1',
  '23',
  '456',
  '0',
  '9999',
  '.',
  ',',
  '·',
  ' ',
  '\u00A0',
  '\u2009',
  "'",
  '"',
  ':',
  '-',
  '−',
  '+',
  'e',
  'E',
  '×10',
  '^',
  '⁻³',
  '½',
  'W',
  'kW',
  'mΩ',
  'Ω/m',
  '°C',
  '°',
  'F',
  'K',
  'min',
  's',
  'h',
  'm',
  'AWG',
  '#',
  '%',
  'per',
  ' and ',
  '=',
  '≈',
  'ft',
  'A',
  'x',
  '/',
  '(',
  '\\',
  '\u0000',
  '\uD83D',
  '٣',
  '١',
  'NaN',
  'Infinity',
  '1e309',
  'aaaaaaaa',
  '   ',
  '__proto__',
];

it('no text makes it throw, and a number that is read is finite', () => {
  const random = randomOf('texts of any kind');
  const texts = Array.from({ length: 100_000 }, () =>
    Array.from({ length: random.whole(0, 14) }, () => random.pick(pieces)).join(''),
  );
  let count = 0;
  for (const text of texts) {
    const reading = readAnswer(text, kinds[count++ % kinds.length] as AnswerKind);
    if (reading.status === 'read' && !(Number.isFinite(reading.value) && reading.place > 0 && reading.figures >= 1))
      throw new Error(`${JSON.stringify(text)} was read as ${JSON.stringify(reading)}`);
  }
});
