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
  ['62 °C', 'temperature rise', 'wrong kind', 'read as 62\u00A0°C', 'asks for a temperature rise, in K.'],
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
  const began = performance.now();
  let count = 0;
  for (const text of texts) {
    const reading = readAnswer(text, kinds[count++ % kinds.length] as AnswerKind);
    if (reading.status === 'read' && !(Number.isFinite(reading.value) && reading.place > 0 && reading.figures >= 1))
      throw new Error(`${JSON.stringify(text)} was read as ${JSON.stringify(reading)}`);
  }
  const each_us = ((performance.now() - began) * 1e3) / texts.length;
  console.log(`answer reader: ${each_us.toFixed(1)} µs a text over ${texts.length} texts`);
  expect(each_us).toBeLessThan(200);
});

it('long texts of one kind of character take no longer', () => {
  const began = performance.now();
  for (const piece of pieces) for (const n of [60, 110, 100_000]) readAnswer(piece.repeat(n), 'time');
  for (const piece of pieces) readAnswer(`1${piece.repeat(50)}x`, 'resistance');
  expect(performance.now() - began).toBeLessThan(1000);
});
