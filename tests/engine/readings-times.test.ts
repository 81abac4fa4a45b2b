// How logs tell time; every fixture is invented.
import { describe, expect, it } from 'vitest';
import { guessMapping } from '#engine/bench/readings/guess.ts';
import { readLog } from '#engine/bench/readings/reader.ts';

const file = (...lines: string[]): string => `${lines.join('\n')}\n`;

/** A log of a current beside these cells of time. */
function timed(header: string, cells: readonly string[], options = {}) {
  const text = file(`${header};I [A];U [V]`, ...cells.map((cell, i) => `${cell};${i + 1};2`));
  const mapping = guessMapping(text, options);
  return { mapping, ...readLog(text, mapping) };
}

it.each([
  ['Time', ['2026-03-02T09:30:00Z', '2026-03-02T09:30:01.5Z'], '2026-03-02T09:30:00Z', 1.5],
  ['Time', ['2026-03-02T09:30:00+01:00', '2026-03-02T08:30:02Z'], '2026-03-02T09:30:00+01:00', 2],
  ['Time', ['2026-03-02 09:30:00,1', '2026-03-02 09:30:00,2'], '2026-03-02T09:30:00.100', 0.1],
  ['Date/Time', ['28/02/2026 23:59:59', '01/03/2026 00:00:01'], '2026-02-28T23:59:59', 2],
  ['Timestamp', ['02/28/2026 11:59:59 PM', '03/01/2026 12:00:01 AM'], '2026-02-28T23:59:59', 2],
  ['Datum;Uhrzeit', ['02.03.26;09:30:00', '02.03.26;09:31:00'], '2026-03-02T09:30:00', 60],
  ['Date;Time', ['02-Mar-2026;09:30', '02-Mar-2026;09:32'], '2026-03-02T09:30:00', 120],
  ['Clock', ['23:59:59', '00:00:04'], null, 5],
  ['Time', ['9:30:00 am', '1:30:00 pm'], null, 14_400],
  ['Elapsed', ['0:00:00.0', '27:00:00.5'], null, 97_200.5],
  ['Elapsed', ['00:00', '01:30'], null, 90],
  ['min', ['0', '0,5'], null, 30],
  ['Time (ms)', ['0', '250'], null, 0.25],
  ['Epoch', ['1772443800', '1772443801'], '2026-03-02T09:30:00Z', 1],
  ['Timestamp', ['1772443800000', '1772443800125'], '2026-03-02T09:30:00Z', 0.125],
] as const)('%s %j', (header, cells, startedAt, t) => {
  const { log, faults } = timed(header, cells);
  expect(faults).toEqual([]);
  expect([...log.t]).toEqual([0, t]);
  expect(log.startedAt).toBe(startedAt);
});

describe('day and month', () => {
  const noon = (...dates: string[]) => dates.map((date) => `${date} 12:00:00`);

  it('are told apart by a row late in the file', () => {
    const dates = [
      ...Array.from({ length: 2000 }, (_, i) => `05/03/2026 12:00:${String(i % 60).padStart(2, '0')}`),
      '13/03/2026 12:00:00',
    ];
    expect(timed('Time', dates).mapping).toMatchObject({ dialect: { dateOrder: 'dmy' }, notes: [] });
  });

  it('are told apart by days that follow each other', () => {
    const { mapping } = timed('Time', noon('03/05/2026', '03/06/2026', '03/07/2026'));
    expect(mapping.dialect.dateOrder).toBe('mdy');
    expect(mapping.notes.join()).toMatch(/month first, since the days then follow/);
  });

  it('are ambiguous where nothing tells, which is said, and a person decides', () => {
    const { mapping, log } = timed('Time', noon('05/03/2026'));
    expect(mapping.notes.join()).toMatch(/'05\/03\/2026' is ambiguous/);
    expect(log.startedAt).toBe('2026-03-05T12:00:00');
    expect(timed('Time', noon('05/03/2026'), { dateOrder: 'mdy' }).log.startedAt).toBe('2026-05-03T12:00:00');
  });
});

it('puts rows in order of time, keeps repeated ones as they stood, and says both', () => {
  const { log, counts, notes } = timed('t [s]', ['0', '2', '1', '2', '3']);
  expect([...log.t]).toEqual([0, 1, 2, 2, 3]);
  expect([...log.I]).toEqual([1, 3, 2, 4, 5]);
  expect(counts).toMatchObject({ outOfOrder: 1, repeatedTimes: 1 });
  expect(notes.join(' ')).toMatch(/1 row stands after a later one.*1 row has the very time/);
});

it('a stray clock moves no other row to another day', () => {
  const { log } = timed('Clock', ['10:00:00', '10:00:01', '23:59:59', '10:00:03', '10:00:04']);
  expect(log.t.at(-1)! - log.t.at(-2)!).toBe(1);
  expect(log.t.at(-1)! - log.t[1]!).toBe(4);
});

it('sample numbers count by the interval that is given, and say where none is', () => {
  expect([...timed('Sample', ['1', '2', '4'], { interval: 0.5 }).log.t]).toEqual([0, 0.5, 1.5]);
  expect(timed('Sample', ['1', '2', '4']).notes.join()).toMatch(/No interval is given/);
});

it('two runs in one file are told of', () => {
  const run = Array.from({ length: 20 }, (_, i) => String(i));
  expect(timed('Elapsed [s]', [...run, ...run]).notes.join()).toMatch(/two runs/);
});
