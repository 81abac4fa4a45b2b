// Logs as loggers and meters write them; every fixture is invented.
import { describe, expect, it } from 'vitest';
import { correctColumn, guessMapping } from '#engine/bench/readings/guess.ts';
import { readLog } from '#engine/bench/readings/reader.ts';
import type { ReadLog } from '#engine/bench/readings/types.ts';

/** Reads a file by its uncorrected guess. */
const read = (source: string | Uint8Array): ReadLog => readLog(source, guessMapping(source));
const file = (...lines: string[]): string => `${lines.join('\n')}\n`;
const rounded = (values: ArrayLike<number> | null | undefined, places = 6): number[] =>
  Array.from(values ?? [], (x) => Number(x.toFixed(places)));

/** Every row of the file is in one place. */
function expectAllRows({ counts }: ReadLog): void {
  expect(counts.head + counts.blank + counts.read + counts.remarks + counts.setAside).toBe(counts.rows);
}

const commaPoint = file(
  'Time (s),Current (A),Voltage (V),Sheath [°C]',
  '0,10.5,3.25,21.5',
  '1,10.25,3.5,22.0',
  '2,10.0,3.75,22.5',
);
const semicolonComma = file(
  'Zeit in s;Strom [A];Spannung [V];Temp_degC',
  '0;10,5;3,25;21,5',
  '1;10,25;3,5;22,0',
  '2;10,0;3,75;22,5',
);
const tabsUnitsRow = file(
  't\tI\tU\tT1',
  '[s]\t[A]\t[V]\t[°C]',
  '0\t10.5\t3.25\t21.5',
  '1\t10.25\t3.5\t22.0',
  '2\t10.0\t3.75\t22.5',
);
const milliUnits = file(
  'min;I (mA);U/mV;T/K',
  '0;10500;3250;294.65',
  '0.01666666667;10250;3500;295.15',
  '0.03333333333;10000;3750;295.65',
);
const fahrenheitHeader = file(
  'Elapsed,Amps DC,Volts,T °F',
  '0:00:00,10.5,3.25,70.7',
  '0:00:01,10.25,3.5,71.6',
  '0:00:02,10,3.75,72.5',
);

describe('dialects', () => {
  it.each([
    ['commas and points', commaPoint],
    ['semicolons and decimal commas', semicolonComma],
    ['tabs and a row of units', tabsUnitsRow],
    ['minutes, milliamperes, millivolts, kelvin', milliUnits],
    ['degrees Fahrenheit and h:mm:ss', fahrenheitHeader],
    ['CR alone', commaPoint.replaceAll('\n', '\r')],
    ['CR LF', commaPoint.replaceAll('\n', '\r\n')],
    ['every cell in quotes', commaPoint.replace(/[^,\n]+/g, '"$&"')],
    ['trailing commas', commaPoint.replaceAll('\n', ',,\n')],
    [
      'a unit in every cell',
      file('t [s];I;U;T probe', '0;10.5 A;3250 mV;21.5 °C', '1;10250 mA;3.5 V;22.0 °C', '2;10 A;3.75 V;22.5 °C'),
    ],
  ])('reads %s', (_, text) => {
    const result = read(text);
    expect(rounded(result.log.t)).toEqual([0, 1, 2]);
    expect(rounded(result.log.I)).toEqual([10.5, 10.25, 10]);
    expect(rounded(result.log.U)).toEqual([3.25, 3.5, 3.75]);
    expect(rounded(result.log.probes[0]?.T)).toEqual([294.65, 295.15, 295.65]);
    expect(result.faults).toEqual([]);
    expectAllRows(result);
  });

  const bytes16 = (text: string, little: boolean): number[] =>
    Array.from(text, (letter) => letter.charCodeAt(0)).flatMap((c) => (little ? [c & 255, c >> 8] : [c >> 8, c & 255]));
  it.each([
    ['UTF-8', [...new TextEncoder().encode(commaPoint)], 'utf-8'],
    ['UTF-8 with a byte order mark', [0xef, 0xbb, 0xbf, ...new TextEncoder().encode(commaPoint)], 'utf-8'],
    ['UTF-16 LE', [0xff, 0xfe, ...bytes16(commaPoint, true)], 'utf-16le'],
    ['UTF-16 BE', [0xfe, 0xff, ...bytes16(commaPoint, false)], 'utf-16be'],
    ['UTF-16 LE without a mark', bytes16(commaPoint, true), 'utf-16le'],
    ['Windows-1252', Array.from(commaPoint, (letter) => letter.charCodeAt(0)), 'windows-1252'],
  ])('decodes %s', (_, bytes, encoding) => {
    const mapping = guessMapping(Uint8Array.from(bytes));
    expect(mapping.dialect.encoding).toBe(encoding);
    expect(mapping.columns[3]).toMatchObject({
      header: 'Sheath [°C]',
      unit: '°C',
      quantity: 'probe',
      place: 'surface',
    });
    expect(rounded(readLog(Uint8Array.from(bytes), mapping).log.I)).toEqual([10.5, 10.25, 10]);
  });

  it('reads groups of three with spaces, thin spaces, commas and points', () => {
    const grouped = file(
      't [s];U [mV];I [A]',
      '0;1 234,5;1',
      '1;1\u2009234,5;1',
      '2;1\u202f234,5;1',
      '3;1.234,5;1',
      "4;1'234,5;1",
    );
    expect(rounded(read(grouped).log.U)).toEqual([1.2345, 1.2345, 1.2345, 1.2345, 1.2345]);
    const quoted = file('t [s],U [mV],I [A]', '0,"1,234.5",1', '1,"12,234.5",2');
    expect(rounded(read(quoted).log.U)).toEqual([1.2345, 12.2345]);
  });

  it('decides the decimal mark by the whole file, and says where nothing does', () => {
    const many = Array.from({ length: 3000 }, (_, i) => `${i};1,234;12`);
    const late = file('t [s];U [mV];I [A]', ...many, '3000;1,5;12');
    expect(guessMapping(late)).toMatchObject({ dialect: { decimal: ',' }, notes: [] });
    const never = guessMapping(file('t [s];U [mV];I [A]', ...many));
    expect(never.notes.join()).toMatch(/'1,234' is ambiguous/);
    const other = file('t [s];U [mV];I [A]', ...many, '3000;1,234.5;12');
    expect(guessMapping(other).dialect.decimal).toBe('.');
    expect(readLog(other, guessMapping(other)).log.U[0]).toBe(1.234);
  });
});

describe('what stands around the readings', () => {
  const export1 = file(
    'Bench meter, two channels',
    'Operator;Ada',
    'Interval: 2 s',
    '',
    ';Channel 1;Channel 2;Channel 3',
    'Scan;Current;Voltage;Temperature',
    ';A;V;degC',
    '1;10;3;21',
    '2;10;3;22',
    'Scan;Current;Voltage;Temperature',
    '3;10;3;23',
    '',
    'End of log;3 scans',
  );

  it('keeps the preamble, several header rows, a header in the middle and a footer', () => {
    const mapping = guessMapping(export1);
    expect(mapping.preamble).toEqual(['Bench meter, two channels', 'Operator;Ada', 'Interval: 2 s']);
    expect(mapping.columns.map(({ quantity }) => quantity)).toEqual(['time', 'I', 'U', 'probe']);
    expect(mapping.columns[3]?.header).toBe('Channel 3 Temperature degC');
    expect(mapping.dialect.interval).toBe(2);
    const result = readLog(export1, mapping);
    expect([...result.log.t]).toEqual([0, 2, 4]);
    expect(result.faults.map(({ row, kind, text }) => [row, kind, text])).toEqual([
      [10, 'header again', 'Scan;Current;Voltage;Temperature'],
      [13, 'not readings', 'End of log;3 scans'],
    ]);
    expectAllRows(result);
  });

  it('counts gaps by kind and keeps them as no reading', () => {
    const result = read(
      file('t [s],I [A],T [°C]', '0,1,20', '1,OL,----', '2,NaN,#N/A', '3,,overload', '4,9.9E37,0L', '5,2,open', '6,2'),
    );
    expect(result.counts.gaps).toEqual({ empty: 1, missing: 1, dashes: 1, overload: 4, 'not a number': 2, error: 1 });
    expect(rounded(result.log.I)).toEqual([1, Number.NaN, Number.NaN, Number.NaN, Number.NaN, 2, 2]);
    expect(result.faults).toMatchObject([{ row: 8, kind: 'too few cells', kept: true }]);
    expectAllRows(result);
  });

  it('sets aside what it cannot read, with row, reason and text, and counts beyond the first', () => {
    const text = `${file('t [s],I [A],U [V]', '0,1,2', '1,2,3,4', 'x?,1,2', '3,1,abc', '4,"stray,1', '5,1,2')}6,1`;
    const result = readLog(text, guessMapping(text), { mostFaults: 3 });
    expect(result.faults).toEqual([
      { row: 3, kind: 'too many cells', what: '4 cells stand where the header has 3', text: '1,2,3,4', kept: false },
      { row: 4, kind: 'no time', what: 'no time can be read in it', text: 'x?,1,2', kept: false },
      { row: 5, kind: 'cell not understood', what: "'abc' in 'U [V]' is no figure", text: '3,1,abc', kept: true },
    ]);
    expect(result.counts.faults).toMatchObject({ 'cell not understood': 2, 'cut short': 1, 'no time': 1 });
    expect([...result.log.t]).toEqual([0, 3, 4, 5]);
    expectAllRows(result);
  });

  it('lets an open quote swallow nothing, and a closed one hold several lines', () => {
    const result = read(
      file('t [s],I [A],U [V],Remark', '0,1,2,"stray', '1,1,2,', '2,1,2,"two', 'lines, and ""quotes"""', '3,1,2,ok'),
    );
    expect([...result.log.t]).toEqual([0, 1, 2, 3]);
    expect(result.log.remarks).toEqual([
      { t: 0, text: '"stray' },
      { t: 2, text: 'two\nlines, and "quotes"' },
      { t: 3, text: 'ok' },
    ]);
    expectAllRows(result);
  });

  it('lets two stray quotes far apart swallow no row between them', () => {
    const result = read(
      file('t [s],I [A],U [V],Remark', '0,1,2,ok', '1,1,2,"stray', '2,1,2,', '3,1,2,ok', '4,1,2,so"', '5,1,2,ok'),
    );
    expect([...result.log.t]).toEqual([0, 1, 2, 3, 4, 5]);
    expectAllRows(result);
  });

  it('finds nothing in what is no log, and says so', () => {
    for (const text of ['', '\n\n', 'Dear bench,\nnothing was read today.\n', '\u0000\u0001', '"'])
      expect(readLog(text, guessMapping(text)).log.t.length, text).toBe(0);
    expect(guessMapping('Dear bench').notes).toEqual(['No row of readings was found.']);
  });
});

describe('columns', () => {
  it.each([
    ['U [V]', 'U', 'V'],
    ['Current (mA)', 'I', 'mA'],
    ['Temp_degC', 'probe', '°C'],
    ['T °F', 'probe', '°F'],
    ['T/K', 'probe', 'K'],
    ['mV', 'U', 'mV'],
    ['I set [A]', 'set current', 'A'],
    ['Setpoint current (A)', 'set current', 'A'],
    ['Room temperature [°C]', 'ambient', '°C'],
    ['Lead resistance (mOhm)', 'R', 'mΩ'],
    ['Power W', 'P', 'W'],
    ['Plug end (℃)', 'probe', '°C'],
    ['Supply VDC', 'U', 'V'],
    ['Channel A', 'ignored', ''],
    ['Battery (V)', 'ignored', 'V'],
    ['Step', 'step', ''],
    ['µV', 'U', 'µV'],
    ['Strom in mA', 'I', 'mA'],
    ['current_A', 'I', 'A'],
    ['Amps', 'I', 'A'],
  ])('takes %s for %s in %s', (header, quantity, unit) => {
    const columns = guessMapping(file(`Time [s];${header};T9 [°C]`, '0;1;20', '1;2;20', '2;3;20')).columns;
    expect(columns[1]).toMatchObject({ header, quantity, unit });
    expect(columns[1]?.why).not.toBe('');
  });

  it('a person may correct a column: a shunt in millivolts gives amperes', () => {
    const text = file('t [s];Shunt [mV];Lead [V]', '0;10;1', '1;20;2');
    const mapping = correctColumn(guessMapping(text), 1, { quantity: 'I', scale: 0.5 });
    expect(mapping.columns[1]).toMatchObject({ quantity: 'I', scale: 0.5, confidence: 1 });
    expect([...readLog(text, mapping).log.I]).toEqual([5, 10]);
    expect([...readLog(text, correctColumn(mapping, 2, { unit: 'mV' })).log.U]).toEqual([0.001, 0.002]);
    expect(() => correctColumn(mapping, 2, { unit: 'furlong' })).toThrow(/'furlong' is no unit/);
  });
});
