import { describe, expect, it } from 'vitest';
import {
  besideLog,
  compareWithLog,
  differenceAtLastPlateau,
  handHeld,
  plateauMeans,
  thinned,
  uncertaintyBy,
} from '#engine';
import { bench, emptyLog, engineLog, ladder, lead } from './fit-logs.ts';

const log = engineLog(lead, emptyLog(ladder([3, 6, 9], 600, 8)), {}, 'beside');
const question = { scenario: lead, log, u: bench };
const mean = (values: ArrayLike<number>) => Array.from(values).reduce((sum, x) => sum + x, 0) / values.length;

describe('a log beside its prediction', () => {
  const beside = besideLog(question);

  it('has readings about the curves where nothing differs, at the very times of its marks', () => {
    expect(beside?.thermometers.map(({ thermometer }) => thermometer)).toEqual(['conductor by resistance', 'sheath 1']);
    for (const { t, measured, predicted } of beside?.thermometers ?? []) {
      expect(t.length).toBeGreaterThan(100);
      expect(Math.abs(mean(measured) - mean(predicted))).toBeLessThan(0.3);
    }
  });

  it('shows a probe that reads 3 K too much as 3 K, and with that in the values as nothing', () => {
    const off = engineLog(lead, emptyLog(ladder([3, 6, 9], 600, 8)), { probeOffset: 3 }, 'off');
    const difference = (values: { probeOffset?: number }) => {
      const probe = besideLog({ ...question, log: off, values })?.thermometers[1];
      return mean(probe?.measured ?? []) - mean(probe?.predicted ?? []);
    };
    expect(difference({})).toBeCloseTo(3, 1);
    expect(difference({ probeOffset: 3 })).toBeCloseTo(0, 1);
  });

  it('draws a long log by means, and tells of how many rows', () => {
    const long = engineLog(lead, emptyLog(ladder([3, 6, 9], 600, 0.5)), {}, 'long');
    const few = besideLog({ ...question, log: long }, 200);
    expect(few?.rows).toBe(3601);
    expect(few?.groups).toBeLessThan(300);
  });

  it('is none for a log without current', () => {
    expect(besideLog({ ...question, log: { ...log, I: log.I.map(() => Number.NaN) } })).toBeNull();
  });
});

describe('the plateaus of a log', () => {
  it('stand where the comparison has them, with volts, watts and ohms of their rows', () => {
    const plateaus = plateauMeans(question);
    const compared = compareWithLog(question)?.[0]?.plateaus ?? [];
    expect(plateaus.map(({ span }) => span)).toEqual(compared.map(({ span }) => span));
    for (const { I, U, P, R } of plateaus) {
      expect(P / (U * I)).toBeCloseTo(1, 3);
      expect(R / (U / I)).toBeCloseTo(1, 3);
    }
  });

  it('explain at the last one why resistance and probe differ, and say so where there is no probe on the sheath', () => {
    expect(differenceAtLastPlateau(question)?.cause).toBe('explained');
    const probes = log.probes.map((probe) => ({ ...probe, place: 'plug' as const }));
    expect(differenceAtLastPlateau({ ...question, log: { ...log, probes } })).toBeNull();
  });

  it('explain a probe that sits 12 K too low as loose, or as contact resistance', () => {
    const loose = engineLog(lead, emptyLog(ladder([3, 6, 9], 600, 8)), { probeOffset: -12 }, 'loose');
    expect(differenceAtLastPlateau({ ...question, log: loose })?.cause).toBe('loose probe or contact resistance');
  });
});

describe('a log that is thinned', () => {
  it('keeps every so many rows as they were read, the last row, and every remark', () => {
    const remarks = [{ t: 8, text: 'a draught' }];
    const { log: thin, every } = thinned({ ...log, remarks }, 50);
    expect(every).toBe(5);
    expect(thin.t.length).toBe(46);
    expect([thin.t[1], thin.I[1], thin.probes[0]?.T[1]]).toEqual([log.t[5], log.I[5], log.probes[0]?.T[5]]);
    expect(thin.t.at(-1)).toBe(log.t.at(-1));
    expect(thin.remarks).toEqual(remarks);
  });

  it('is the same log where it is short enough', () => {
    expect(thinned(log, 1000)).toEqual({ log, every: 1 });
  });
});

describe('uncertainty of hand-held instruments', () => {
  it('is the greatest error over √3 at the root mean square of what was read', () => {
    const I = Float64Array.of(8, 6, Number.NaN); // root mean square √50
    const u = uncertaintyBy(handHeld, { I, U: Float64Array.of(2, 2, 2) });
    expect(u.I).toBeCloseTo((0.01 * Math.sqrt(50) + 0.02) / Math.sqrt(3), 9);
    expect(u.U).toBeCloseTo((0.005 * 2 + 0.002) / Math.sqrt(3), 9);
    expect(u.probe).toBeCloseTo(1 / Math.sqrt(3), 9);
  });

  it('is never nought for volts and probes, which a fit divides by', () => {
    const exact = { ...handHeld, volts_percent: 0, volts_digits: 0, probe_K: 0 };
    const u = uncertaintyBy(exact, log);
    expect(u.U).toBeGreaterThan(0);
    expect(u.probe).toBeGreaterThan(0);
  });

  it('refuses an error below nought', () => {
    expect(() => uncertaintyBy({ ...handHeld, probe_K: -1 }, log)).toThrow(/probe_K/);
  });
});
