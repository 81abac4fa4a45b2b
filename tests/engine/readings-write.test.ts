// Writing a log and reading it again is the identity; the live bench's own file is read without a correction.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchLog, ProbePlace } from '#engine/bench/log.ts';
import { guessMapping } from '#engine/bench/readings/guess.ts';
import { probeHeader } from '#engine/bench/readings/own-log.ts';
import { readLog } from '#engine/bench/readings/reader.ts';
import { linesToCsv, writeLog } from '#engine/bench/readings/write.ts';
import { kelvin } from '#engine/quantity.ts';

const again = (log: BenchLog): BenchLog => {
  const text = writeLog(log);
  return readLog(text, guessMapping(text)).log;
};

const places: readonly ProbePlace[] = ['surface', 'outside', 'plug', 'other'];
const figure = fc.oneof(
  fc.double({ min: -100, max: 1000, noNaN: true }).map((x) => x + 0),
  fc.integer({ min: 0, max: 4000 }).map((x) => x / 100),
  fc.constant(Number.NaN),
);
const temperature = fc.oneof(
  fc.double({ min: 150, max: 900, noNaN: true }),
  fc.integer({ min: -400, max: 2000 }).map((x) => kelvin(x / 10)),
  fc.constant(Number.NaN),
);
const words = fc
  .oneof(
    fc.string({ maxLength: 30, unit: 'grapheme' }),
    fc.constantFrom('=1+1', "'=x", '"a", b', 'one\ntwo', '-3', 'x;y,z\t"'),
  )
  .filter((text) => text.trim() !== '' && !/[\r\n\u2028]/.test(text.replace('one\ntwo', '')));
const column = (n: number, of: fc.Arbitrary<number>) =>
  fc.array(of, { minLength: n, maxLength: n }).map((values) => Float64Array.from(values));

const benchLog: fc.Arbitrary<BenchLog> = fc.integer({ min: 1, max: 12 }).chain((n) => {
  const steps = fc.array(fc.oneof(fc.constantFrom(0, 0.1, 1, 60), fc.double({ min: 0, max: 1e4, noNaN: true })), {
    minLength: n,
    maxLength: n,
  });
  const probe = fc.record({
    name: words.map((text) => text.trim()),
    place: fc.constantFrom(...places),
    T: column(n, temperature),
  });
  const measured = column(n, figure);
  return fc
    .record({
      steps,
      I: measured,
      U: measured,
      probes: fc.array(probe, { maxLength: 4 }),
      ambient: fc.option(column(n, temperature)),
      more: fc.record({ set: measured, step: measured, R: measured, P: measured }, { requiredKeys: ['set', 'step'] }),
      remarks: fc.array(
        fc.record({
          t: fc.oneof(fc.constantFrom(0, 0.1, 1), fc.double({ min: 0, max: 2e4, noNaN: true })),
          text: words,
        }),
        { maxLength: 4 },
      ),
      startedAt: fc.constantFrom(null, '2026-03-02T09:30:00.000Z', '2026-02-28T23:59:59.5+05:30', '2026-03-02T09:30'),
      simulated: fc.boolean(),
    })
    .map(({ steps, more, remarks, ...log }) => {
      const gaps = steps.with(0, 0);
      const at = Float64Array.from(gaps, (_, i) => gaps.slice(0, i + 1).reduce((sum, dt) => sum + dt, 0));
      return { ...log, ...more, t: at, remarks: remarks.sort((a, b) => a.t - b.t) };
    });
});

describe('writing and reading', () => {
  it('gives the very same log', () => {
    fc.assert(
      fc.property(benchLog, (log) => {
        expect(again(log)).toEqual(log);
      }),
      { numRuns: 400 },
    );
  });

  it('keeps times in the first column in the zone of the start', () => {
    const text = writeLog({ ...again(short), startedAt: '2026-03-02T23:59:59.500+01:00' });
    expect(
      text
        .split('\r\n')
        .slice(1, 3)
        .map((row) => row.split(',')[0]),
    ).toEqual(['2026-03-02T23:59:59.500+01:00', '2026-03-03T00:00:01+01:00']);
  });
});

const short: BenchLog = {
  t: Float64Array.of(0, 1.5),
  I: Float64Array.of(10, 10),
  U: Float64Array.of(3, 3.1),
  set: Float64Array.of(10, 10),
  step: Float64Array.of(1, 1),
  probes: [],
  ambient: null,
  remarks: [],
  startedAt: null,
  simulated: false,
};

describe('a log of the live bench', () => {
  const line = (elapsed_s: number, remark: string) => ({
    at: `2026-03-02T09:30:0${elapsed_s / 10}.000Z`,
    elapsed_s,
    step: 1,
    set_A: 18,
    I_A: 17.99,
    U_V: 9.125,
    R_ohm: 0.507226,
    byR_degC: 31.25,
    probes_degC: [24.5],
    ambients_degC: [20],
    predicted_degC: 31.2,
    difference_K: 0.05,
    remark,
    origin: 'simulated' as const,
  });
  const text = linesToCsv([line(30, ''), line(60, '=1+1')], {
    probes: [probeHeader(1, 'probe 1', 'surface')],
    ambients: 1,
  });

  it('is known by its header, says that it was simulated, and needs no correction', () => {
    const mapping = guessMapping(text);
    expect(mapping).toMatchObject({ own: true, notes: [], dialect: { delimiter: ',', decimal: '.' } });
    expect(mapping.columns.every(({ confidence }) => confidence === 1)).toBe(true);
    const { log, faults } = readLog(text, mapping);
    expect(faults).toEqual([]);
    expect([...log.t]).toEqual([0, 30]);
    expect(log).toMatchObject({
      simulated: true,
      startedAt: '2026-03-02T09:30:03.000Z',
      remarks: [{ t: 30, text: '=1+1' }],
    });
    expect(log.probes).toMatchObject([{ name: 'probe 1', place: 'surface' }]);
    expect(log.probes[0]?.T[0]).toBe(kelvin(24.5));
    expect([log.set?.[0], log.I[1], log.U[1], log.ambient?.[0]]).toEqual([18, 17.99, 9.125, kelvin(20)]);
  });

  it('is known again after a spreadsheet saved it with semicolons and decimal commas', () => {
    const saved = text.replaceAll(',', ';').replace(/(\d)\.(\d+)(?=;)/g, '$1,$2');
    const { log } = readLog(saved, guessMapping(saved));
    expect(guessMapping(saved).own).toBe(true);
    expect([log.simulated, log.I[0], log.U[0]]).toEqual([true, 17.99, 9.125]);
  });
});
