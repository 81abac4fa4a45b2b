import { describe, expect, it } from 'vitest';
import { predict } from '#engine/heating/predict.ts';
import { heatRatio, ratingAt, straightLineThreshold, threshold } from '#engine/heating/rating.ts';
import { runCase } from '#engine/heating/run.ts';
import { heatMade, steadyChain, steadyFlow, steadyState } from '#engine/heating/steady.ts';
import { supplyOf } from '#engine/heating/supply.ts';
import { buildCase, conductorResistance, leadResistance, type ThermalCase } from '#engine/heating/thermal-case.ts';
import type { Scenario, SupplyStep } from '#engine/scenario/schema.ts';
import { cases } from './cases.ts';

const held = (I_A: number) => ({ kind: 'current', I_A }) as const;
const cord: Scenario = {
  cable: { table: 'H05VV-F', cores: 3, size_mm2: 1.5 },
  lead: { length_m: 20, contact_ohm: 0.02 },
  surroundings: { kind: 'stillAir', ambient_degC: 20 },
  supply: [held(10)],
};
const grounds: [string, Scenario['surroundings']][] = [
  ['still air', { kind: 'stillAir', ambient_degC: 20 }],
  ['a draught', { kind: 'draught', ambient_degC: 20, speed_mPerS: 2 }],
  ['lagging', { kind: 'lagged', ambient_degC: 20, thickness_mm: 40, conductivity_WPerMK: 0.04 }],
  ['a wall', { kind: 'clipped', ambient_degC: 20 }],
  ['a coil', { kind: 'coiled', ambient_degC: 20, drum_mm: 150, turns: 12 }],
];

/** A single wire of a metal by values, shedding H (T − Ta) from its surface, with Ta at 20 °C. */
function linear(alpha20_perK: number, beta20_perK2: number, H: number, melting_degC = 1500): ThermalCase {
  const of = buildCase({
    ...cord,
    cable: {
      layout: 'single',
      conductor: {
        metal: { rho20_nOhmM: 17.241, alpha20_perK, beta20_perK2, heatCapacity_MJPerM3K: 3.45, melting_degC },
        area_mm2: 1.5,
        class: 1,
      },
      insulation: { material: 'pvc70', thickness_mm: 0.7 },
    },
  });
  const law = (T: number) => H * (T - of.Ta);
  return { ...of, outside: { ...of.outside, law, flow: law } };
}

const steadyAt = (of: ThermalCase, step: SupplyStep, T0 = of.T0) => steadyState(of, supplyOf(of, step), T0);

/** The steady conductor temperature [K]; fails the test where there is none. */
function conductorAt(of: ThermalCase, step: SupplyStep, T0 = of.T0): number {
  const steady = steadyAt(of, step, T0);
  if (steady.kind !== 'steady') throw new Error(`no steady state: ${steady.reason}`);
  return steady.chain.conductor;
}

describe.each(grounds)('in steady state, in %s', (_, surroundings) => {
  const of = buildCase({ ...cord, surroundings });

  it.each([330, 343.15, 400, 600])(
    'the rating at a temperature is the current that brings the conductor there: %f K',
    (T) => {
      const I = ratingAt(of, T) as number;
      expect(conductorAt(of, held(I))).toBeCloseTo(T, 6);
      expect(heatRatio(of, I, T)).toBeCloseTo(1, 9);
    },
  );

  it.each(['surface', 'outside'] as const)('so is the rating at the %s', (place) => {
    const I = ratingAt(of, 310, place) as number;
    const steady = steadyAt(of, held(I));
    expect(steady.kind === 'steady' && steady.chain[place]).toBeCloseTo(310, 6);
  });

  it('the chain falls from the conductor out, and each part carries the same flow', () => {
    const chain = steadyChain(of, 360);
    expect(chain.conductor).toBeGreaterThan(chain.surface);
    expect(chain.surface).toBeGreaterThanOrEqual(chain.outside);
    expect(chain.outside).toBeGreaterThan(of.Ta);
    expect(of.outside.law(chain.outside)).toBeCloseTo(chain.flow, 8);
    expect(of.outside.flow(chain.conductor - chain.flow * of.resistance)).toBeCloseTo(chain.flow, 8);
    expect((chain.conductor - chain.outside) / (of.resistance + of.outside.series)).toBeCloseTo(chain.flow, 8);
  });

  it('a long run ends there', () => {
    const scenario: Scenario = { ...cord, surroundings, supply: [held(12)], run: { duration_s: 1e6 } };
    const { run, steady } = predict(scenario);
    const chain = steady.kind === 'steady' ? steady.chain : undefined;
    expect(run.curves.conductor.at(-1)).toBeCloseTo(chain?.conductor as number, 4);
    expect(run.curves.surface.at(-1)).toBeCloseTo(chain?.surface as number, 4);
    expect(run.curves.outside.at(-1)).toBeCloseTo(chain?.outside as number, 4);
  });

  it('there is one below the threshold, none above, and the metal melts', () => {
    const { I, kind, T } = threshold(of);
    expect([kind, T]).toEqual(['melts first', of.cable.conductor.metal.melting.value]);
    expect(steadyAt(of, held(0.9999 * I)).kind).toBe('steady');
    expect(steadyAt(of, held(1.0001 * I))).toEqual({ kind: 'no steady state', reason: 'melts first' });
    expect(runCase(buildCase({ ...of.scenario, supply: [held(1.05 * I)], run: { duration_s: 1e6 } })).outcome).toBe(
      'melted',
    );
    expect(runCase(buildCase({ ...of.scenario, supply: [held(0.98 * I)], run: { duration_s: 1e6 } })).outcome).toBe(
      'completed',
    );
  });

  it.each<[string, SupplyStep]>([
    ['voltage held', { kind: 'voltage', U_V: 5, source_ohm: 0.01 }],
    ['mains', { kind: 'mains', U_V: 230, load_W: 3000, source_ohm: 0.2 }],
    ['a constant-power load', { kind: 'power', U_V: 230, load_W: 2500 }],
    ['a current within its compliance', { kind: 'current', I_A: 10, compliance_V: 50 }],
    ['a current limited by its compliance', { kind: 'current', I_A: 30, compliance_V: 6 }],
    ['off', { kind: 'off' }],
  ])('every supply balances heat made and heat shed, from the cold and from the hot: %s', (__, step) => {
    const supply = supplyOf(of, step);
    for (const T0 of [250, of.Ta, 310, 500, 900]) {
      const T = conductorAt(of, step, T0);
      expect(heatMade(of, supply.current(T), T)).toBeCloseTo(steadyFlow(of, T), 6);
      expect(T).toBeCloseTo(conductorAt(of, step), 5);
    }
    const run = runCase(buildCase({ ...of.scenario, supply: [step], run: { duration_s: 1e6 } }));
    expect(run.curves.conductor.at(-1)).toBeCloseTo(conductorAt(of, step), 3);
  });
});

describe('Ohm’s law round the loop', () => {
  const of = buildCase(cord);
  const R = leadResistance(of, 330) + 0.02;

  it.each<[string, SupplyStep, number]>([
    ['voltage held', { kind: 'voltage', U_V: 5, source_ohm: 0.3 }, 5 / (R + 0.3)],
    ['mains at the rated voltage', { kind: 'mains', U_V: 230, load_W: 2300 }, 230 / (23 + R)],
    ['mains off the rated voltage', { kind: 'mains', U_V: 207, load_W: 2300, rated_V: 230 }, 207 / (23 + R)],
    ['compliance', { kind: 'current', I_A: 100, compliance_V: 8 }, 8 / R],
    ['no compliance', { kind: 'current', I_A: 100 }, 100],
    ['off', { kind: 'off' }, 0],
  ])('%s', (_, step, I) => {
    expect(supplyOf(of, step).current(330)).toBeCloseTo(I, 10);
  });

  it('gives a constant-power load its power, at the greater of two voltages, as long as U² ≥ 4PR', () => {
    const fits = supplyOf(of, { kind: 'power', U_V: 24, load_W: 100 });
    const I = fits.current(330);
    expect((24 - I * R) * I).toBeCloseTo(100, 9);
    expect(24 - I * R).toBeGreaterThan(12);
    const most = 24 ** 2 / (4 * R);
    expect(supplyOf(of, { kind: 'power', U_V: 24, load_W: most * 0.9999 }).possible(330)).toBe(true);
    expect(supplyOf(of, { kind: 'power', U_V: 24, load_W: most * 1.0001 }).possible(330)).toBe(false);
  });
});

describe('the threshold', () => {
  const H = 0.3;

  it('of a straight line and a constant resistance is nowhere reached: I(θ) climbs towards 1/√(n R α ΣT) up to melting', () => {
    const of = linear(0.004, 0, H);
    const total = of.resistance + 1 / H;
    const { I, kind } = threshold(of);
    const x = 0.004 * 1480;
    expect(kind).toBe('melts first');
    expect(I / straightLineThreshold(of, total)).toBeCloseTo(Math.sqrt(x / (1 + x)), 9);
    expect(ratingAt(linear(0.004, 0, H, 4000), 4273.15)).toBeLessThan(straightLineThreshold(of, total));
  });

  it('of a curved line is a true runaway at 1/√β above 20 °C, with I² = 1/(n R ΣT (α + 2√β))', () => {
    const beta = 2e-5;
    const of = linear(0.004, beta, H);
    const total = of.resistance + 1 / H;
    const { I, T, kind } = threshold(of);
    expect(kind).toBe('runaway');
    expect(T - 293.15).toBeCloseTo(1 / Math.sqrt(beta), 2);
    expect(I).toBeCloseTo(1 / Math.sqrt(of.cable.conductor.R20 * total * (0.004 + 2 * Math.sqrt(beta))), 8);
  });

  it.each([0.9, 0.99, 0.999, 0.9999, 0.999_999])(
    'of a runaway has a steady state below it, by the formula’s lower root: %f',
    (share) => {
      const [alpha, beta] = [0.004, 2e-5];
      const of = linear(alpha, beta, H);
      const I = share * threshold(of).I;
      // x/ΣT = I² R (1 + αx + βx²), the lower root
      const q = I * I * of.cable.conductor.R20 * (of.resistance + 1 / H);
      const half = (1 - q * alpha) / (2 * q * beta);
      const x = half - Math.sqrt(half * half - 1 / beta);
      expect(conductorAt(of, held(I))).toBeCloseTo(293.15 + x, 2);
    },
  );

  it('of a runaway has none above it, from the cold or from beyond the upper root', () => {
    const of = linear(0.004, 2e-5, H);
    const { I } = threshold(of);
    expect(steadyAt(of, held(I * 1.0001)).kind).toBe('no steady state');
    expect(steadyAt(of, held(I * 0.9), 1200).kind).toBe('no steady state');
    expect(steadyAt(of, held(I * 0.9), 400).kind).toBe('steady');
  });

  it('is nothing where nothing is shed', () => {
    expect(threshold(linear(0.004, 0, 0)).I).toBe(0);
  });
});

describe('a rating', () => {
  it('is nothing at and below ambient, and null where the metal melts first', () => {
    const of = buildCase(cord);
    expect(ratingAt(of, of.Ta)).toBe(0);
    expect(ratingAt(of, of.Ta - 5)).toBe(0);
    expect(ratingAt(of, 2000)).toBeNull();
  });

  it('rises with the temperature allowed, with the area, and falls with ambient and with loaded cores', () => {
    const rate = (extra: object, T = 343.15, ambient_degC = 20) =>
      ratingAt(
        buildCase({
          ...cord,
          cable: { ...cord.cable, ...extra } as Scenario['cable'],
          surroundings: { kind: 'stillAir', ambient_degC },
        }),
        T,
      ) as number;
    const base = rate({});
    expect(rate({}, 353.15)).toBeGreaterThan(base);
    expect(rate({ size_mm2: 2.5 })).toBeGreaterThan(base);
    expect(rate({}, 343.15, 30)).toBeLessThan(base);
    expect(rate({ loaded: 3 })).toBeLessThan(base);
  });

  it.each(Object.entries(cases))('at the insulation’s own limit agrees with its list of ratings: %s', (_, scenario) => {
    const { ratings, rating, thermal } = predict({ ...scenario, run: { duration_s: 1 } });
    const own = ratings.find(({ limit }) => limit.kind === 'rating');
    expect(rating).toBe(own ? own.I : null);
    for (const { limit, T, I } of ratings) {
      if (!I || limit.place !== 'conductor') continue;
      expect(thermal.n * I * I * conductorResistance(thermal, T)).toBeCloseTo(steadyFlow(thermal, T), 7);
    }
  });
});
