import { describe, expect, it } from 'vitest';
import {
  buildCase,
  cast,
  castScenario,
  heatLedger,
  inMetal,
  kelvin,
  ledgerAt,
  ledgerCurves,
  modelEnd,
  type Scenario,
  steadyState,
  supplyOf,
  threshold,
} from '#engine';
import { cases } from './cases.ts';

const first = (scenario: Scenario) => scenario.supply[0] as Scenario['supply'][number];
const held = (scenario: Scenario, I_A: number): Scenario => ({ ...scenario, supply: [{ kind: 'current', I_A }] });
const cord = castScenario('C150', 20, 20);
const steelCord: Scenario = { ...castScenario('C075', 5, 20), cable: inMetal(cast.C075, 'steel') };

const grounds: [string, Scenario['surroundings']][] = [
  ['still air', { kind: 'stillAir', ambient_degC: 20 }],
  ['still air by Churchill and Chu', { kind: 'stillAir', ambient_degC: 20, convection: 'churchillChu' }],
  ['a draught', { kind: 'draught', ambient_degC: 20, speed_mPerS: 2 }],
  ['lagging', { kind: 'lagged', ambient_degC: 20, thickness_mm: 40, conductivity_WPerMK: 0.04 }],
  ['a wall', { kind: 'clipped', ambient_degC: 20 }],
  ['a coil', { kind: 'coiled', ambient_degC: 20, drum_mm: 150, turns: 12, wound_m: 20 }],
];

describe.each(Object.entries(cases))('the ledger of %s', (_, scenario) => {
  const of = buildCase(scenario);
  const ledger = heatLedger(scenario);
  const steady = steadyState(of, supplyOf(of, first(scenario)));

  it('crosses where the steady state lies, and says so too where there is none', () => {
    expect(ledger.steady).toEqual(steady);
    const at = ledger.crossings.map(({ T }) => T);
    if (steady.kind === 'steady') expect(at).toContain(steady.chain.conductor);
    for (const { T, flow } of ledger.crossings) {
      const { made, lost } = ledgerAt(ledger, T);
      expect(Math.abs(made - lost)).toBeLessThan(1e-6 * (1 + Math.abs(made)));
      expect(lost).toBeCloseTo(flow, 9);
    }
  });

  it('loses the more the hotter the conductor is, to melting', () => {
    const low = Math.min(of.Ta, of.T0);
    const { lost } = ledgerCurves(ledger, low, of.cable.conductor.metal.melting.value, 200);
    for (let i = 1; i < lost.length; i++) expect(lost[i]).toBeGreaterThan(lost[i - 1] as number);
  });
});

describe.each(grounds)('heat lost in %s', (_, surroundings) => {
  const ledger = heatLedger({ ...cord, surroundings });

  it.each([0, 20, 21, 60, 160, 700])('splits into what air carries and what radiates: %f °C', (T_degC) => {
    const { shed, lost, outside, made, stored } = ledgerAt(ledger, kelvin(T_degC));
    expect(stored).toBeCloseTo(made - lost, 12);
    if (surroundings.kind === 'clipped') {
      expect(shed).toBeNull();
      return;
    }
    const { convection, radiation } = shed as { convection: number; radiation: number };
    expect(convection + radiation).toBeCloseTo(lost, 8);
    for (const part of [convection, radiation])
      expect(Math.sign(part) * Math.sign(outside - ledger.thermal.Ta)).toBeGreaterThanOrEqual(0);
  });
});

it('radiates by ε σ π De (Ts⁴ − Ta⁴), worked by hand', () => {
  const ledger = heatLedger(cord);
  const { outside, shed } = ledgerAt(ledger, kelvin(60));
  const De = 2 * ledger.thermal.cable.outerRadius;
  const byHand = 0.9 * 5.670374419e-8 * Math.PI * De * (outside ** 4 - 293.15 ** 4);
  expect(shed?.radiation).toBeCloseTo(byHand, 10);
});

it('with resistance fixed at 20 °C makes the same heat at any temperature, four times as much for twice the current', () => {
  const made = (I_A: number, T_degC: number) =>
    ledgerAt(heatLedger(held(cord, I_A), { fixedResistance: true }), kelvin(T_degC)).made;
  expect(made(5, 20)).toBeCloseTo(2 * 25 * 13.3e-3, 9);
  expect(made(5, 90)).toBe(made(5, 20));
  expect(made(10, 60) / made(5, 60)).toBeCloseTo(4, 12);
  expect(made(20, 60) / made(5, 60)).toBeCloseTo(16, 12);
});

it('crosses lower with fixed resistance than in a metal that resists more when hot', () => {
  const warm = heatLedger(cord).crossings[0]?.T as number;
  const fixed = heatLedger(cord, { fixedResistance: true }).crossings[0]?.T as number;
  expect(fixed).toBeLessThan(warm - 3);
  expect(ledgerAt(heatLedger(cord), kelvin(20)).made).toBeCloseTo(
    ledgerAt(heatLedger(cord, { fixedResistance: true }), kelvin(90)).made,
    9,
  );
});

describe('a 0.75 mm² cord of steel', () => {
  const most = threshold(buildCase(steelCord)).I;

  it('has a crossing just below its threshold and none just above, nor at 28 A', () => {
    expect(heatLedger(held(steelCord, 0.999 * most)).crossings).toHaveLength(1);
    for (const I of [1.001 * most, 28]) {
      const ledger = heatLedger(held(steelCord, I));
      expect(ledger.crossings).toEqual([]);
      expect(ledger.steady).toEqual({ kind: 'no steady state', reason: 'melts first' });
    }
  });

  it('has the crossing far past what its plastic stands, so that the ledger there is outside the model', () => {
    const ledger = heatLedger(held(steelCord, 0.999 * most));
    expect(ledger.modelEnd).toBe(modelEnd(ledger.thermal));
    expect(ledger.crossings[0]?.T).toBeGreaterThan(kelvin(1000));
  });
});

it('tells a crossing that it comes back to from one that it leaves', () => {
  // a curved law: resistance grows with the square of the rise, so that heat made overtakes heat lost a second time
  const curved: Scenario = {
    ...cord,
    cable: {
      layout: 'single',
      conductor: {
        metal: {
          rho20_nOhmM: 17.241,
          alpha20_perK: 0.004,
          beta20_perK2: 2e-5,
          heatCapacity_MJPerM3K: 3.4,
          melting_degC: 1500,
        },
        law: 'curved',
        area_mm2: 1.5,
        class: 1,
      },
      insulation: { material: 'pvc70', thickness_mm: 4 },
    },
  };
  const { I, kind } = threshold(buildCase(curved));
  expect(kind).toBe('runaway');
  const ledger = heatLedger(held(curved, 0.97 * I));
  expect(ledger.crossings.map((crossing) => crossing.kind)).toEqual(['settles', 'leaves']);
  expect(ledger.steady.kind === 'steady' && ledger.steady.chain.conductor).toBe(ledger.crossings[0]?.T);
  expect(heatLedger(held(curved, 1.01 * I)).crossings).toEqual([]);
});

it('takes a case put together before as well as a scenario', () => {
  expect(heatLedger(buildCase(cord)).crossings).toEqual(heatLedger(cord).crossings);
});
