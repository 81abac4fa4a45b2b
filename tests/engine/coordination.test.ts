// Coordination of cable and device, the North American chain of caps, and the rules of cords: what they accept, what never.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adjustmentFactor,
  ambientFactor,
  ampacityChain,
  ampacitySizes,
  type BranchCircuit,
  branchCordRule,
  type Circuit,
  coordination,
  cordRatings,
  flatTwinRatings,
  type Guard,
  groupingFactor,
  inMetal,
  methodRatings,
  plugFuseRule,
  type RuleVerdict,
  type TableRating,
  thermalInsulationFactor,
  tradeSize,
} from '#engine';
import { device, deviceFamilies } from '#engine/protection/devices.ts';
import { caseOf, ratingAt_degC } from '../published/cases.ts';

const guards: Guard[] = deviceFamilies.flatMap(({ make, ratings }) => ratings.map(make));
const guard = fc.constantFrom(...guards);
const tables: TableRating[] = [...flatTwinRatings(), ...methodRatings('A2'), ...methodRatings('C', 'aluminium')];
const factors = fc.tuple(
  fc.integer({ min: 10, max: 60 }).map((T) => ambientFactor('iec', 70, T)),
  fc.integer({ min: 1, max: 20 }).map(groupingFactor),
  fc.integer({ min: 0, max: 800 }).map(thermalInsulationFactor),
);
const amps = fc.double({ min: 0, max: 100, noNaN: true });

const numberOf = ({ steps }: RuleVerdict, id: string): number => {
  const step = steps.find((one) => one.id === id);
  return step?.kind === 'value' ? step.value : Number.NaN;
};
const openIds = ({ open }: RuleVerdict) => open.map(({ id }) => id);
const of = (family: Parameters<typeof device>[0], In: number): Guard => {
  const found = device(family, In);
  if (!found) throw new Error(`no ${family} of ${In} A`);
  return found;
};
const size = (system: 'mm2' | 'AWG', marked: number) => {
  const found = tradeSize(system, marked);
  if (!found) throw new Error(`no size ${marked}`);
  return found;
};
const twin = (mm2: number) => flatTwinRatings().find((one) => one.size.size === mm2) as TableRating;

describe('coordination', () => {
  it('works the welfare cabin: 2.5 mm² fails by its rating, 4 mm² passes', () => {
    const at = [ambientFactor('iec', 70, 35), groupingFactor(3)];
    const cabin = (mm2: number) => coordination({ Ib: 19.1, device: of('B', 20), table: twin(mm2), factors: at });
    expect(numberOf(cabin(4), 'needed')).toBeCloseTo(30.4, 1);
    expect(cabin(4).outcome).toBe('met');
    expect(cabin(2.5).outcome).toBe('not met');
    expect(openIds(cabin(2.5))).toEqual(['rating', 'acting']);
    expect(numberOf(cabin(2.5), 'in place')).toBeCloseTo(17.8, 1);
  });

  it('never accepts a device rated above Iz or below Ib, nor an acting current above 1.45 Iz', () => {
    fc.assert(
      fc.property(amps, guard, fc.constantFrom(...tables), factors, (Ib, device, table, factors) => {
        const verdict = coordination({ Ib, device, table, factors });
        const Iz = numberOf(verdict, 'in place');
        if (verdict.outcome !== 'met') return;
        expect(device.In).toBeLessThanOrEqual(Iz * (1 + 1e-9));
        expect(Ib).toBeLessThanOrEqual(device.In * (1 + 1e-9));
        expect(device.I2).toBeLessThanOrEqual(1.45 * Iz * (1 + 1e-9));
      }),
      { numRuns: 500 },
    );
  });

  it('is never lost by a table that allows more', () => {
    fc.assert(
      fc.property(amps, guard, fc.constantFrom(...tables), factors, amps, (Ib, device, table, factors, more) => {
        const circuit: Circuit = { Ib, device, table, factors };
        if (coordination(circuit).outcome !== 'met') return;
        expect(coordination({ ...circuit, table: { ...table, I: table.I + more } }).outcome).toBe('met');
      }),
    );
  });

  it('holds a rewirable fuse to 0.725 Iz and asks more of the table', () => {
    const fuse = of('bs3036', 20);
    const bare = coordination({ Ib: 15, device: fuse, table: { ...twin(4), I: 27.5 }, factors: [] });
    expect(numberOf(bare, 'needed')).toBeCloseTo(20 / 0.725, 6);
    expect(openIds(bare)).toEqual(['rewirable', 'acting']);
    expect(coordination({ Ib: 15, device: fuse, table: { ...twin(4), I: 27.6 }, factors: [] }).outcome).toBe('met');
  });

  it('says of a gG fuse that British rules deem it met, and works the test all the same', () => {
    const verdict = coordination({ Ib: 20, device: of('gG', 32), table: { ...twin(6), I: 33 }, factors: [] });
    expect(openIds(verdict)).toEqual(['acting']);
    expect(verdict.statements.map(({ id }) => id)).toContain('deemed');
  });

  it('shows nothing either way where no acting current is stated', () => {
    const silent = { ...of('B', 16), I2: null };
    const verdict = coordination({ Ib: 10, device: silent, table: twin(2.5), factors: [] });
    expect(verdict.outcome).toBe('not shown');
    expect(verdict.open[0]).toMatchObject({ id: 'acting', holds: null });
  });
});

it('aluminium of equal size carries about 0.78 of copper’s current, by the table and by heat', () => {
  const copper = methodRatings('C');
  for (const { size, I } of methodRatings('C', 'aluminium')) {
    const same = copper.find((one) => one.size.size === size.size);
    expect(I / (same?.I ?? Number.NaN)).toBeCloseTo(0.78, 2);
  }
  const wall = { material: 'pvc70', thickness_mm: 1 } as const;
  const cable = { layout: 'round', cores: 2, conductor: { size_mm2: 4 }, insulation: wall, sheath: wall } as const;
  const heat = (spec: object) => ratingAt_degC(caseOf(spec, 30), 70);
  expect(heat(inMetal(cable, 'aluminium')) / heat(cable)).toBeCloseTo(0.78, 2);
});

describe('the North American chain', () => {
  const attic: Omit<BranchCircuit, 'size'> = {
    Ib: 18.3,
    continuous: true,
    device: of('ul489', 25),
    metal: 'copper',
    insulation_degC: 90,
    terminal_degC: 60,
    factors: [ambientFactor('na', 90, 45), adjustmentFactor(8)],
  };
  const chain = (gauge: number, more: Partial<BranchCircuit> = {}) =>
    ampacityChain({ ...attic, size: size('AWG', gauge), ...more });

  it('works the attic: 12 AWG falls short; 10 AWG stands only by the leave of 240.4(B); 8 AWG stands', () => {
    expect(chain(12).Iz).toBeCloseTo(18.3, 1);
    expect(openIds(chain(12))).toContain('load carried');
    expect(chain(10).Iz).toBeCloseTo(24.36, 2);
    expect(openIds(chain(10))).toEqual(['rating']);
    expect(chain(10).steps.find(({ id }) => id === 'next size up')).toMatchObject({ holds: true, aside: true });
    expect(chain(10, { nextSizeUp: true })).toMatchObject({ outcome: 'met', mostDevice: 25, bound: 'next size up' });
    expect(chain(8).outcome).toBe('met');
  });

  it('names the cap that binds', () => {
    const free = { factors: [], Ib: 10, continuous: false, device: { In: 15 } };
    expect(chain(12, free)).toMatchObject({ mostDevice: 20, bound: 'small conductor' });
    expect(chain(6, free)).toMatchObject({ mostDevice: 55, bound: 'terminals' });
    expect(chain(6, { ...free, terminal_degC: 75 })).toMatchObject({ mostDevice: 65 });
    expect(chain(6)).toMatchObject({ bound: 'derated' });
  });

  it('has no rule for steel, for mm², or for a size that was not seen', () => {
    expect(chain(12, { metal: 'steel' })).toMatchObject({ outcome: 'no rule', Iz: 0 });
    expect(chain(18).outcome).toBe('no rule');
    expect(ampacityChain({ ...attic, size: size('mm2', 4) }).outcome).toBe('no rule');
  });

  it('accepts no device above the ampacity, unless asked, and then the next standard one at most', () => {
    const metal = fc.constantFrom('copper', 'aluminium', 'cca10');
    const terminal = fc.constantFrom<60 | 75>(60, 75);
    const In = fc.constantFrom(15, 20, 25, 30, 40, 50, 60);
    const place = fc.tuple(
      fc.integer({ min: -10, max: 85 }).map((T) => ambientFactor('na', 90, T)),
      fc.integer({ min: 1, max: 45 }).map(adjustmentFactor),
    );
    fc.assert(
      fc.property(
        amps,
        fc.boolean(),
        metal,
        terminal,
        In,
        place,
        (Ib, continuous, metal, terminal_degC, In, factors) => {
          for (const size of ampacitySizes(metal === 'copper' ? 'copper' : 'aluminium', terminal_degC)) {
            const circuit = { ...attic, Ib, continuous, metal, terminal_degC, device: { In }, factors, size };
            const strict = ampacityChain(circuit);
            const lenient = ampacityChain({ ...circuit, nextSizeUp: true });
            if (strict.outcome === 'met') expect(In).toBeLessThanOrEqual(strict.Iz * (1 + 1e-9));
            if (strict.outcome === 'met') expect(lenient.outcome).toBe('met');
            if (lenient.outcome === 'met') expect(In).toBeLessThanOrEqual(lenient.mostDevice * (1 + 1e-9));
          }
        },
      ),
    );
  });
});

describe('cords', () => {
  const plug = of('bs1362', 13);
  const cord = (mm2: number, Ib: number, feeds: 'appliance' | 'block' = 'appliance', metal = 'copper') => ({
    ...{ size: size('mm2', mm2), metal, Ib, feeds },
  });
  const aside = ({ steps }: RuleVerdict) => steps.find(({ id }) => id === 'overload aside');

  it('behind a plug fuse: the table decides, and the 1.45 test stands beside it and fails', () => {
    const verdict = plugFuseRule(cord(1.25, 13), plug);
    expect(verdict.outcome).toBe('met');
    expect(aside(verdict)).toMatchObject({ aside: true, holds: false });
    expect(verdict.statements.map(({ id }) => id)).toContain('why they differ');
    expect(openIds(plugFuseRule(cord(0.5, 2), plug))).toEqual(['fuse']);
    expect(openIds(plugFuseRule(cord(0.75, 10), plug))).toEqual(['load fits']);
    expect(plugFuseRule(cord(0.75, 6), plug).outcome).toBe('met');
  });

  it('a lead with outlets wants 1.25 mm² behind 13 A; two heaters are too much for any', () => {
    expect(openIds(plugFuseRule(cord(1, 10, 'block'), plug))).toEqual(['block size']);
    expect(plugFuseRule(cord(1.25, 10, 'block'), plug).outcome).toBe('met');
    expect(openIds(plugFuseRule(cord(1.5, 17.4, 'block'), plug))).toEqual(['carries', 'load fits']);
  });

  it('no table rates a lead that is not copper, whatever its marking', () => {
    const verdict = plugFuseRule(cord(1.5, 10, 'block', 'cca10'), plug);
    expect(verdict.outcome).toBe('no rule');
    expect(verdict.statements.map(({ id }) => id)).toEqual(['copper only', 'by marking']);
    const american = { size: size('AWG', 16), metal: 'cca10', Ib: 10, feeds: 'block' } as const;
    expect(branchCordRule(american, of('ul489', 20), 'listed set').outcome).toBe('no rule');
  });

  it('on a branch circuit: listing stands for appliance cords, gauge decides for sets put together on site', () => {
    const breaker = of('ul489', 20);
    const gauge = (AWG: number, Ib: number) =>
      ({ size: size('AWG', AWG), metal: 'copper', Ib, feeds: 'block' }) as const;
    const listed = branchCordRule(gauge(18, 8), breaker, 'listed set');
    expect(listed.outcome).toBe('met');
    expect(aside(listed)).toMatchObject({ aside: true, holds: false });
    expect(openIds(branchCordRule(gauge(18, 8), breaker, 'assembled on site'))).toEqual(['device fits']);
    expect(branchCordRule(gauge(16, 8), breaker, 'assembled on site').outcome).toBe('met');
    expect(openIds(branchCordRule(gauge(16, 8), of('ul489', 30), 'assembled on site'))).toEqual(['device fits']);
    expect(openIds(branchCordRule(gauge(16, 25), breaker, 'listed set'))).toEqual(['carries', 'load fits']);
  });

  it('a thicker cord is never refused where a thinner one is taken', () => {
    const makes = fc.constantFrom('listed appliance', 'listed set', 'assembled on site' as const);
    const feeds = fc.constantFrom<'appliance' | 'block'>('appliance', 'block');
    fc.assert(
      fc.property(amps, guard, feeds, makes, (Ib, device, feeds, make) => {
        const metric = cordRatings('mm2').map(({ size }) => plugFuseRule({ size, metal: 'copper', Ib, feeds }, device));
        const gauges = cordRatings('AWG').map(({ size }) =>
          branchCordRule({ size, metal: 'copper', Ib, feeds }, device, make),
        );
        for (const verdicts of [metric, gauges]) {
          const met = verdicts.map(({ outcome }) => outcome === 'met');
          expect(met).toEqual([...met].sort((a, b) => Number(a) - Number(b)));
        }
      }),
    );
  });
});
