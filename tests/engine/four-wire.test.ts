// The lead of lesson 5.1: 8.00 m of 1.5 mm², line and neutral joined at the far end, 1.000 A and 0.215 V at 23 °C.
import { describe, expect, it } from 'vitest';
import {
  againstGreatest,
  checkByTrials,
  energyOf,
  kelvin,
  type LoopMeasurement,
  loopModel,
  metals,
  milliohmMeter,
  multimeterAmps,
  multimeterVolts,
  powerOf,
  readMeter,
  readTape,
  readThermocouple,
  resistanceOf,
  resistancePerMetre,
  tapeMeasure,
  temperatureByRise,
  thermocoupleClass,
  thermometerReader,
} from '#engine';

const { alpha20 } = metals.copper;
const relative = (value: number, share: number) => ({ value, u: share * value });

const lead: LoopMeasurement = {
  U: relative(0.215, 0.002),
  I: relative(1, 0.005),
  length: relative(8, 0.005),
  inSeries: 2,
  T: { value: kelvin(23), u: 1 },
  alpha20,
  connection: { kind: 'four-terminal' },
};
const tableGreatest = 13.3e-3;
const twoWires = (treated: 'left in' | 'taken off' | 'zeroed', u = 0.02, U = 0.335): LoopMeasurement => ({
  ...lead,
  U: relative(U, 0.002),
  connection: { kind: 'two-terminal', leads: { value: 0.12, u }, treated },
});

describe('four terminals', () => {
  const { R20, asFound, leadsInIt, emf } = resistancePerMetre(lead);

  it('give 13.4 mΩ/m as found and 13.28 at 20 °C, to 0.8 %', () => {
    expect(asFound.value * 1e3).toBeCloseTo(13.4375, 6);
    expect(R20.value * 1e3).toBeCloseTo(13.4375 / (1 + 3.93e-3 * 3), 6);
    expect(R20.relative).toBeCloseTo(Math.hypot(0.002, 0.005, 0.005, 3.93e-3 / 1.01179), 5);
    expect([leadsInIt, emf]).toEqual([null, null]);
  });

  it('cannot tell this lead from the table’s greatest, and say so', () => {
    const { verdict, above, guard } = againstGreatest(R20, tableGreatest);
    expect(verdict).toBe('not shown to fail');
    expect(above).toBeGreaterThan(0.3);
    expect(above).toBeLessThan(0.5);
    expect(guard).toBeCloseTo(1.645 * R20.u, 6);
  });

  it('owe most of their doubt to ammeter and tape, which the budget shows', () => {
    const [first, second] = [...R20.budget].sort((a, b) => b.share - a.share).map(({ name }) => name);
    expect([first, second].sort()).toEqual(['current', 'length']);
    expect(R20.limits).toEqual([]);
  });

  it('need no more than the straight-line law', () =>
    expect(checkByTrials(loopModel(lead), { seed: 'lead', most: 4e5 }).agree).toBe(true));

  it('with instruments from the records stay within 1 %', () => {
    const byInstruments = resistancePerMetre({
      ...lead,
      U: readMeter(multimeterVolts, 0.215),
      I: readMeter(multimeterAmps, 1),
      length: readTape(tapeMeasure, 8),
      T: readThermocouple(thermocoupleClass('K', 1), thermometerReader, kelvin(23)),
    });
    expect(byInstruments.R20.relative).toBeLessThan(0.01);
    expect(byInstruments.R20.relative).toBeGreaterThan(0.008);
  });

  it('say that a thermal EMF would be unseen unless the current was turned round', () => {
    expect(resistancePerMetre(lead).limits.join(' ')).toMatch(/not turned round/);
    expect(resistancePerMetre({ ...lead, reversed: relative(-0.215, -0.002) }).limits).toEqual([]);
  });
});

describe('turning the current round', () => {
  const emf = 0.4e-3;
  const U = readMeter(multimeterVolts, 0.215 + emf);
  const reversed = readMeter(multimeterVolts, -0.215 + emf);
  const both = resistancePerMetre({ ...lead, U, reversed });

  it('frees the resistance of the EMF, and tells it', () => {
    expect(both.R20.value).toBeCloseTo(resistancePerMetre(lead).R20.value, 12);
    expect(both.emf?.value).toBeCloseTo(emf, 12);
  });

  it('knows the EMF far better than either voltage: the scale error falls out, the zero of the meter does not', () => {
    expect(both.emf?.u).toBeLessThan(U.u / 5);
    expect(both.emf?.u).toBeGreaterThan(2e-4 / Math.sqrt(3));
  });

  it('leaves the scale error in the resistance, which no repeating removes', () => {
    const share = (of: typeof both) =>
      of.R20.budget.filter(({ name }) => name.startsWith('voltage')).reduce((sum, { share }) => sum + share, 0) *
      of.R20.u ** 2;
    const once = resistancePerMetre({ ...lead, U: readMeter(multimeterVolts, 0.215) });
    expect(share(both) / share(once)).toBeCloseTo(1, 1);
  });
});

describe('two terminals', () => {
  it('with 0.12 Ω of test leads left in look like 20.9 mΩ/m, and say so', () => {
    const { asFound, R20, leadsInIt, limits } = resistancePerMetre(twoWires('left in'));
    expect(asFound.value * 1e3).toBeCloseTo(20.94, 2);
    expect(leadsInIt).toBeCloseTo(7.5e-3, 9);
    expect(limits.join(' ')).toMatch(/test leads are in the reading/);
    expect(againstGreatest(R20, tableGreatest).verdict).toBe('above the limit');
  });

  it('with the leads taken off come back to the truth, but know it far less well', () => {
    const off = resistancePerMetre(twoWires('taken off')).R20;
    expect(off.value).toBeCloseTo(resistancePerMetre(lead).R20.value, 12);
    expect(off.relative).toBeGreaterThan(0.09);
    expect(againstGreatest(off, tableGreatest).verdict).toBe('not shown to fail');
  });

  it('zeroed read the lead alone, and are as good as the contact repeats', () => {
    const zeroed = (u: number) => resistancePerMetre(twoWires('zeroed', u, 0.215)).R20;
    expect(zeroed(0.002).value).toBeCloseTo(resistancePerMetre(lead).R20.value, 12);
    expect(zeroed(0.02).u).toBeGreaterThan(5 * zeroed(0.002).u);
  });
});

describe('what cannot be meant', () => {
  it.each([
    ['current', { I: { value: 0, u: 0.1 } }],
    ['length of the lead', { length: { value: 0, u: 0.1 } }],
    ['conductors in series', { inSeries: 0 }],
    ['temperature of the conductor', { T: { value: 23, u: 1 } }],
  ])('is refused by name: %s', (what, wrong) =>
    expect(() => resistancePerMetre({ ...lead, ...wrong })).toThrow(new RegExp(what)),
  );
});

describe('a decision', () => {
  it('turns from below to above as the value crosses the limit with its guard band', () => {
    const at = (value: number) => againstGreatest({ value, u: 0.1 }, 10).verdict;
    expect([9.8, 9.84, 10.16, 10.17].map(at)).toEqual([
      'below the limit',
      'not shown to fail',
      'not shown to fail',
      'above the limit',
    ]);
  });

  it('asks for more room where few readings stand behind the value', () =>
    expect(againstGreatest({ value: 10.2, u: 0.1, dof: 3 }, 10).verdict).toBe('not shown to fail'));

  it('needs no room without doubt', () => {
    expect(againstGreatest({ value: 10.0001, u: 0 }, 10).verdict).toBe('above the limit');
    expect(againstGreatest({ value: 10, u: 0 }, 10).verdict).toBe('below the limit');
  });
});

describe('temperature by rise of resistance', () => {
  const R = (ratio: number) => readMeter(milliohmMeter, 0.1 * ratio);
  const rise = { cold: R(1), T: { value: kelvin(20), u: 0.5 }, alpha20 };
  const hot = temperatureByRise({ ...rise, hot: R(1.1572) });

  it('names 60 °C where copper’s resistance has risen by 15.72 %', () => expect(hot?.value).toBeCloseTo(kelvin(60), 6));

  it('is better than the meter: what both readings share falls out of their ratio', () => {
    const wholly = temperatureByRise({ ...rise, hot: { value: R(1.1572).value, u: R(1.1572).u, systematic: 0 } });
    expect(wholly?.u).toBeGreaterThan(1.3 * (hot?.u ?? Number.NaN));
    expect(hot?.u).toBeLessThan(1);
  });

  it('is null where the resistance names no temperature', () => {
    expect(temperatureByRise({ ...rise, hot: { value: -1, u: 0.01 } })).toBeNull();
    expect(temperatureByRise({ ...rise, hot: R(1.1), alpha20: { value: 0, u: 0 } })).toBeNull();
  });

  it('follows the handbook’s rule (R2/R1)(234.5 + t1) − 234.5 to a tenth of a kelvin', () =>
    expect(hot?.value).toBeCloseTo(kelvin(1.1572 * (234.5 + 20) - 234.5), 1));
});

describe('power and energy', () => {
  const U = readMeter(multimeterVolts, 5);
  const I = readMeter(multimeterAmps, 8);

  it('join what two meters share of nothing as squares', () => {
    expect(powerOf(U, I).value).toBe(40);
    expect(powerOf(U, I).u / 40).toBeCloseTo(Math.hypot(U.u / 5, I.u / 8), 12);
    expect(resistanceOf(U, I).u / 0.625).toBeCloseTo(Math.hypot(U.u / 5, I.u / 8), 12);
  });

  it('never know the energy of many readings better than the meters’ scale, however many', () => {
    const t = Array.from({ length: 901 }, (_, k) => k);
    const E = energyOf(
      t,
      t.map(() => U),
      t.map(() => I),
    );
    expect(E.value).toBeCloseTo(36000, 6);
    expect(E.systematic / E.value).toBeCloseTo(Math.hypot(U.systematic / 5, I.systematic / 8), 9);
    expect(E.random / E.value).toBeLessThan(powerOf(U, I).random / 40 / 25);
  });

  it('weigh uneven steps by their length', () => {
    const E = energyOf([0, 1, 11], [U, U, U], [I, I, readMeter(multimeterAmps, 0)]);
    expect(E.value).toBeCloseTo(40 + 200, 9);
  });

  it('refuse rows that do not belong together', () => {
    expect(() => energyOf([0, 1], [U], [I, I])).toThrow(/voltage/);
    expect(() => energyOf([1, 0], [U, U], [I, I])).toThrow(/time of row 2/);
    expect(() => powerOf(U, readMeter(multimeterAmps, 0))).toThrow(/current/);
  });
});
