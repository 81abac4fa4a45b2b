// A matrix of harm sets: each cell is what one harm set says, it moves the right way along its axes, and may stop at any row.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cordCurrent } from '#engine/cable/cord-ratings.ts';
import { markedSize } from '#engine/cable/in-size.ts';
import { placeKinds } from '#engine/heating/surroundings-compared.ts';
import { buildCase } from '#engine/heating/thermal-case.ts';
import { deviceOf } from '#engine/protection/devices.ts';
import { harmMatrix, type MatrixCell, type MatrixRow } from '#engine/protection/harm-matrix.ts';
import { harmSet } from '#engine/protection/harm-set.ts';
import { harmWords, type ToldSpan, toldSpans } from '#engine/protection/harm-words.ts';
import { type MatrixAsk, matrixCases, matrixScenario, usualMatrix } from '#engine/protection/matrix-ask.ts';
import { ruleOfCase } from '#engine/protection/rule-of-case.ts';
import { parseScenario } from '#engine/scenario/parse.ts';

const practices = ['iec', 'na'] as const;
const limits = ['rating', 'shortTime'] as const;
const rowsOf = (ask: MatrixAsk): MatrixRow[] => [...harmMatrix(ask)];
const matrices = practices.flatMap((practice) =>
  limits.map((limit) => {
    const ask = usualMatrix(practice, limit, 30);
    return { practice, limit, ask, rows: rowsOf(ask) };
  }),
);
/** Tables of times are within three parts in a thousand of the runs; then both are rounded outward to a step. */
const byTable = 3e-3;
const step = (I: number) => (I < 1 ? 0.01 : I < 10 ? 0.1 : I < 100 ? 0.5 : I < 1000 ? 1 : 10);
const slack = (I: number) => byTable * I + step(I);

/** Told currents of `inner` that lie outside `outer` by more than rounding and the table leave. */
const outside = (inner: readonly ToldSpan[], outer: readonly ToldSpan[]) =>
  inner.flatMap(({ from, to }) => {
    const [a, b] = [from + slack(from), (to ?? 1000) - slack(to ?? 1000)];
    if (a >= b) return [];
    const held = outer.some((span) => span.from <= a && (span.to ?? 1000) >= b);
    return held ? [] : [{ from, to, outer }];
  });

describe('a matrix of harm sets', () => {
  it('is as large as it says, in the order that it was asked in', () => {
    for (const { ask, rows, practice } of matrices) {
      expect(rows.flatMap(({ cells }) => cells)).toHaveLength(matrixCases(ask));
      expect(rows.map(({ metal, place, size }) => `${metal} ${place} ${size}`)).toEqual(
        ask.metals.flatMap((metal) =>
          ask.places.flatMap((place) => ask.sizes.map((size) => `${metal} ${place} ${size}`)),
        ),
      );
      expect(matrixCases(ask)).toBe(practice === 'iec' ? 2880 : 2640);
    }
  });

  it('says in each cell what one harm set of the same case says', () => {
    const anyCell = fc.record({ matrix: fc.nat(matrices.length - 1), row: fc.nat(239), device: fc.nat(11) });
    fc.assert(
      fc.property(anyCell, ({ matrix, row: at, device: d }) => {
        const { ask, rows } = matrices[matrix] as (typeof matrices)[number];
        const row = rows[at % rows.length] as MatrixRow;
        const spec = ask.devices[d] as MatrixAsk['devices'][number];
        const cell = row.cells[d] as MatrixCell;
        const scenario = matrixScenario(ask, row, spec);
        expect(parseScenario(scenario).faults).toBeUndefined();
        const of = buildCase(scenario);
        const limit = of.limits.find(({ id }) => id === ask.limit);
        if (!limit) throw new Error('the insulation has the limit');
        const one = harmSet(of, deviceOf(spec), limit, { prospective: ask.prospective });
        const told = toldSpans(one.spans);
        expect(outside(told, cell.gaps)).toEqual([]);
        expect(outside(cell.gaps, told)).toEqual([]);
        expect(Math.abs(row.Iz - one.Iz)).toBeLessThanOrEqual(step(one.Iz) + 1e-9);
        expect(row.Iz).toBeLessThanOrEqual(one.Iz * (1 + 1e-6));
        expect(cell.gaps.every(({ from }) => from >= row.Iz)).toBe(true);
        if (told.length === cell.gaps.length) {
          const none = harmWords(one).some(({ id }) => id === 'none');
          const endless = harmWords(one).some(({ id }) => id === 'not found');
          expect(cell.outcome).toBe(none ? 'none' : endless ? 'no upper end found' : 'gap');
        }
      }),
      { seed: 61, numRuns: 400 },
    );
  }, 120_000);

  it('never calls a lead allowed that no table has, or that is not of copper', () => {
    for (const { ask, rows } of matrices) {
      for (const row of rows) {
        for (const [i, cell] of row.cells.entries()) {
          const spec = ask.devices[i] as MatrixAsk['devices'][number];
          if (row.metal !== 'copper') expect(cell.standing, JSON.stringify(row)).toBe('not met');
          expect(cell.why === '').toBe(cell.standing === 'met');
          const marked = markedSize(matrixScenario(ask, row).cable);
          const tabled = row.metal === 'copper' && marked ? (cordCurrent(marked)?.I ?? null) : null;
          expect(row.tabled).toBe(tabled);
          expect(cell.aboveTable).toBe(tabled === null ? null : spec.rating_A > tabled);
          if (cell.standing !== 'met') continue;
          expect(ruleOfCase(buildCase(matrixScenario(ask, row)), deviceOf(spec), { Ib: 0 }).outcome).toBe('met');
          expect(tabled, 'a rule is met by a table alone').not.toBeNull();
        }
      }
    }
  });

  it('says where a rule is met and the place is too hot for the device’s rating all the same', () => {
    let [met, hot] = [0, 0];
    for (const { ask, rows } of matrices.filter(({ limit }) => limit === 'rating')) {
      for (const row of rows) {
        for (const [i, { carries, standing, gaps }] of row.cells.entries()) {
          const { rating_A } = ask.devices[i] as MatrixAsk['devices'][number];
          if (rating_A <= row.Iz) expect(carries).toBe(true);
          if (rating_A > row.Iz + step(row.Iz)) expect(carries).toBe(false);
          // a device holds its rating for ever, so a lead that does not carry it has a gap there
          if (!carries) expect(gaps[0]?.from).toBeLessThanOrEqual(rating_A);
          if (standing === 'met') met++;
          if (standing === 'met' && !carries) hot++;
        }
      }
    }
    expect(hot).toBeGreaterThan(0);
    expect(hot).toBeLessThan(met);
  });

  it('keeps apart an empty gap and a rule that is met', () => {
    const cells = matrices.flatMap(({ rows }) => rows.flatMap((row) => row.cells));
    const count = (standing: MatrixCell['standing'], none: boolean) =>
      cells.filter((cell) => cell.standing === standing && (cell.outcome === 'none') === none).length;
    for (const standing of ['met', 'no table', 'not met'] as const) {
      expect(count(standing, true), `${standing}, no gap`).toBeGreaterThan(0);
      expect(count(standing, false), `${standing}, a gap`).toBeGreaterThan(0);
    }
  });

  it.each(practices)('has no larger gap with a bigger conductor (%s)', (practice) => {
    for (const { rows, ask } of matrices.filter((one) => one.practice === practice)) {
      for (let i = 1; i < rows.length; i++) {
        const [thin, thick] = [rows[i - 1], rows[i]] as [MatrixRow, MatrixRow];
        if (thin.metal !== thick.metal || thin.place !== thick.place) continue;
        const at = `${thin.metal}, ${thin.place}, ${thin.size} and ${thick.size}`;
        expect(thick.Iz, at).toBeGreaterThan(thin.Iz);
        for (const d of ask.devices.keys())
          expect(outside(thick.cells[d]?.gaps ?? [], thin.cells[d]?.gaps ?? []), at).toEqual([]);
      }
    }
  });

  it('has no larger gap in colder surroundings', () => {
    for (const { ask, rows } of matrices.filter(({ limit }) => limit === 'rating')) {
      const colder = rowsOf({ ...ask, ambient_degC: 20 });
      for (const [i, cold] of colder.entries()) {
        const warm = rows[i] as MatrixRow;
        const at = `${cold.metal}, ${cold.place}, ${cold.size}`;
        expect(cold.Iz, at).toBeGreaterThanOrEqual(warm.Iz);
        for (const d of ask.devices.keys())
          expect(outside(cold.cells[d]?.gaps ?? [], warm.cells[d]?.gaps ?? []), at).toEqual([]);
      }
    }
  });

  it('stopped midway has given rows that the whole matrix has, and a new one begins afresh', () => {
    const { ask, rows } = matrices[0] as (typeof matrices)[number];
    const stepper = harmMatrix(ask);
    const first = Array.from({ length: 30 }, () => stepper.next().value);
    stepper.return();
    expect(stepper.next()).toEqual({ done: true, value: undefined });
    expect(first).toEqual(rows.slice(0, 30));
    expect(harmMatrix(ask).next().value).toEqual(rows[0]);
  });

  it('does not depend on the order it is asked in, so that any table can come first', () => {
    const { ask, rows } = matrices[0] as (typeof matrices)[number];
    const turned = harmMatrix({ ...ask, metals: ['steel', 'copper'], places: ['coiled'] });
    const of = (metal: string) => rows.filter((row) => row.metal === metal && row.place === 'coiled');
    expect([...turned]).toEqual([...of('steel'), ...of('copper')]);
  });

  it('hands over plain data, each row small', () => {
    for (const { rows } of matrices) {
      expect(structuredClone(rows)).toEqual(rows);
      for (const row of rows) expect(JSON.stringify(row).length).toBeLessThan(4000);
    }
  });

  it('knows the five places of the lessons, and refuses a size or rating that it has not', () => {
    const ask = usualMatrix('iec', 'rating', 30);
    for (const place of ask.places) expect(placeKinds).toContain(place);
    expect(() => rowsOf({ ...ask, sizes: [3] })).toThrow(/size of a lead is 3 mm²/);
    expect(() => rowsOf({ ...ask, devices: [{ family: 'bs1362', rating_A: 4 }] })).toThrow(/made for: 1, 2, 3/);
  });
});
