// The choice of size: the smallest that meets everything, each rejection with its reason, and nothing that a thicker one loses.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adjustmentFactor,
  againstGuides,
  ambientFactor,
  branchSizes,
  castScenario,
  chooseSize,
  dropBothWays,
  dropFrom,
  dropOf,
  fixedSizes,
  flatTwinRatings,
  foot,
  groupingFactor,
  kelvin,
  longestForDrop,
  methodRatings,
  plugCordSizes,
  printedDrop,
  type SizeAsk,
  type SizeChoice,
} from '#engine';
import { device } from '#engine/protection/devices.ts';

const breaker = (In: number) => {
  const found = device('B', In);
  if (!found) throw new Error(`no breaker of ${In} A`);
  return found;
};
const k = 115e6;
const rejected = ({ trials }: SizeChoice) =>
  Object.fromEntries(trials.map(({ size, rejections }) => [size.name, rejections.map(({ id }) => id)]));

describe('a fixed cable', () => {
  const factors = [ambientFactor('iec', 70, 35), groupingFactor(3)];
  const cabin = fixedSizes(flatTwinRatings(), { Ib: 19.1, device: breaker(20), factors });
  const drop = { I: 19.1, U0: 230, share: 0.03, perAmpereMetre: dropFrom('fixed') };

  it('is 4 mm² in the welfare cabin, and says why the thinner ones are not', () => {
    const choice = chooseSize(cabin);
    expect(choice.chosen?.name).toBe('4 mm²');
    expect(rejected(choice)).toMatchObject({
      '1 mm²': ['rating', 'acting'],
      '2.5 mm²': ['rating', 'acting'],
      '6 mm²': [],
    });
    expect(choice.trials.find(({ size }) => size.size === 2.5)?.rejections[0]?.text).toBe(
      'In is 20 A, more than Iz, 17.8 A.',
    );
  });

  it('grows with the run and with the short circuit', () => {
    expect(chooseSize({ ...cabin, drop: { ...drop, length: 20 } }).chosen?.size).toBe(4);
    const far = chooseSize({ ...cabin, drop: { ...drop, length: 40 } });
    expect(far.chosen?.size).toBe(6);
    expect(rejected(far)['4 mm²']).toEqual(['drop']);
    const hit = chooseSize({ ...cabin, short: { k, stress: { kind: 'time', I: 1500, t: 0.2 } } });
    expect(hit.chosen?.size).toBe(6);
    expect(rejected(hit)['4 mm²']).toEqual(['short circuit']);
    expect(chooseSize({ ...cabin, drop: { ...drop, length: 400 } }).chosen).toBeNull();
  });

  it('takes no verdict from the formula outside its range', () => {
    const { trials } = chooseSize({ ...cabin, short: { k, stress: { kind: 'time', I: 100, t: 60 } } });
    expect(trials.map(({ short }) => short?.holds)).toEqual(trials.map(() => null));
    const energy = chooseSize({ ...cabin, short: { k, stress: { kind: 'energy', I2t: 35_000 } } });
    expect(energy.trials.map(({ short }) => short?.holds)).toEqual(trials.map(({ size }) => size.size > 1.5));
  });

  it('never loses by more metal', () => {
    const amps = fc.double({ min: 0.5, max: 60, noNaN: true });
    const stress = fc.oneof(
      fc.record({
        kind: fc.constant('time' as const),
        I: fc.double({ min: 1, max: 3000, noNaN: true }),
        t: fc.double({ min: 0.01, max: 10, noNaN: true }),
      }),
      fc.record({ kind: fc.constant('energy' as const), I2t: fc.double({ min: 1, max: 1e6, noNaN: true }) }),
    );
    const In = fc.constantFrom(6, 10, 16, 20, 25, 32, 40);
    const method = fc.constantFrom('A2', 'B2', 'C', 'E' as const);
    const length = fc.double({ min: 1, max: 200, noNaN: true });
    fc.assert(
      fc.property(amps, In, method, length, stress, (Ib, In, method, length, stress) => {
        const ratings = methodRatings(method).filter(({ size }) => size.size <= 10);
        const ask: SizeAsk = {
          ...fixedSizes(ratings, { Ib, device: breaker(In), factors: [] }),
          drop: { I: Ib, length, U0: 230, share: 0.05, perAmpereMetre: dropFrom('fixed') },
          short: { k, stress },
        };
        const passes = chooseSize(ask).trials.map(({ rejections }) => rejections.length === 0);
        expect(passes).toEqual([...passes].sort((a, b) => Number(a) - Number(b)));
      }),
      { numRuns: 300 },
    );
  });
});

it('a gauge: the attic needs 8 AWG, or 10 with the code’s leave', () => {
  const circuit = {
    Ib: 18.3,
    continuous: true,
    device: { In: 25 },
    metal: 'copper',
    insulation_degC: 90,
    terminal_degC: 60,
    factors: [ambientFactor('na', 90, 45), adjustmentFactor(8)],
  } as const;
  expect(chooseSize(branchSizes(circuit)).chosen?.name).toBe('8 AWG');
  expect(chooseSize(branchSizes({ ...circuit, nextSizeUp: true })).chosen?.name).toBe('10 AWG');
  expect(branchSizes({ ...circuit, metal: 'steel' }).sizes).toEqual([]);
});

it('a cord behind a plug: 2.4 kW and 25 m want 1.25 mm²', () => {
  const fuse = device('bs1362', 13);
  if (!fuse) throw new Error('no plug fuse');
  const sizes = plugCordSizes({ metal: 'copper', Ib: 10.4, feeds: 'appliance' }, fuse);
  const choice = chooseSize({
    ...sizes,
    drop: { I: 10.4, length: 25, U0: 230, share: 0.05, perAmpereMetre: dropFrom('cord') },
  });
  expect(choice.chosen?.name).toBe('1.25 mm²');
  expect(rejected(choice)).toMatchObject({ '0.5 mm²': ['fuse', 'load fits', 'drop'], '1 mm²': ['load fits', 'drop'] });
});

describe('voltage drop', () => {
  const printed = (table: 'cord' | 'conductor', system: 'mm2' | 'AWG', size: number) =>
    printedDrop(table, { system, size })?.value ?? Number.NaN;

  it('is that of the farm pump, by the printed figures', () => {
    const pump = dropOf(printed('cord', 'mm2', 1.5), 12, 60, 230);
    expect(pump.U).toBeCloseTo(23, 1);
    expect(pump.share).toBeCloseTo(0.1, 2);
    expect(againstGuides(pump.share, 'iec').map(({ holds }) => holds)).toEqual([false, false]);
    const thicker = dropOf(printed('cord', 'mm2', 4), 12, 60, 230);
    expect(thicker.U).toBeCloseTo(8.6, 1);
    expect(againstGuides(thicker.share, 'iec').map(({ holds }) => holds)).toEqual([false, true]);
    const american = dropOf(printed('conductor', 'AWG', 14), 12, 100 * foot, 120);
    expect(american.U).toBeCloseTo(7.5, 1);
    expect(dropOf(printed('conductor', 'AWG', 10), 12, 100 * foot, 120).U).toBeCloseTo(3, 1);
  });

  it('turns about: the longest run loses exactly its share', () => {
    const z = printed('cord', 'mm2', 2.5);
    const length = longestForDrop(z, 10, 0.05, 230);
    expect(dropOf(z, 10, length, 230).share).toBeCloseTo(0.05, 12);
  });

  it('by the table is more than the exact one while the cord stays cooler than the table takes it', () => {
    const cool = dropBothWays({ ...castScenario('C150', 8, 20), lead: { length_m: 20 } }, 'cord', kelvin(60));
    if (cool?.exact.kind !== 'settled') throw new Error('it should settle');
    expect(cool.byTable.perAmpereMetre).toMatchObject({ value: 0.032, source: 'bs7671' });
    expect(cool.byTable.U).toBeGreaterThan(cool.exact.lost);
    expect(cool.byTable.U / cool.exact.lost).toBeLessThan(1.25);
    expect(cool.statements[0]?.text).toMatch(/60 °C\. In this run it settles at/);
  });

  it('of a lead that is not copper is worked from its own resistance', () => {
    const suspect = dropBothWays({ ...castScenario('SUS', 8, 20), lead: { length_m: 20 } }, 'cord', kelvin(60));
    expect(suspect?.byTable.perAmpereMetre.source).toBe('own');
    expect(suspect?.byTable.perAmpereMetre.value).toBeGreaterThan(2 * 0.036);
  });
});
