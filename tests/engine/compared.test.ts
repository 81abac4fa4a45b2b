import { describe, expect, it } from 'vitest';
import { castScenario } from '#engine/examples/cast.ts';
import {
  copperShareOf,
  type MetalCase,
  metalsCompared,
  metalTimes,
  withCopperShare,
} from '#engine/heating/metals-compared.ts';
import { predict } from '#engine/heating/predict.ts';
import { sizesCompared } from '#engine/heating/sizes-compared.ts';
import { aluminium, cca10, copper } from '#engine/material/metals.ts';
import { celsius, kelvin } from '#engine/quantity.ts';
import { parseScenario } from '#engine/scenario/parse.ts';
import type { Scenario } from '#engine/scenario/schema.ts';

const amps = castScenario('C150', 10, 20);
const volts: Scenario = { ...amps, lead: { length_m: 10 }, supply: [{ kind: 'voltage', U_V: 3 }] };

function settledT({ settled }: MetalCase): number {
  if (!settled) throw new Error('does not settle');
  return settled.T;
}
const rising = (values: number[]) => values.every((value, i) => i === 0 || value > (values[i - 1] as number));

describe('one cord in four metals', () => {
  it('has resistances in the ratio of the resistivities, scaled from its copper one', () => {
    const [cu, clad, al] = metalsCompared(amps) as [MetalCase, MetalCase, MetalCase];
    expect(cu.R20).toBeCloseTo(13.3e-3, 12);
    expect(clad.R20 / cu.R20).toBeCloseTo(cca10.rho20.value / copper.rho20.value, 12);
    expect(al.R20 / cu.R20).toBeCloseTo(aluminium.rho20.value / copper.rho20.value, 12);
  });

  it('is hottest in steel with amps held, and coolest in steel with volts held', () => {
    expect(rising(metalsCompared(amps).map(settledT))).toBe(true);
    expect(rising(metalsCompared(volts).map(settledT).reverse())).toBe(true);
  });

  it('carries the same amps where they are held, and fewer than at first where volts are', () => {
    for (const { settled, coldI } of metalsCompared(amps)) expect([settled?.I, coldI]).toEqual([10, 10]);
    for (const { settled, coldI, thermal } of metalsCompared(volts)) {
      expect(settled?.I).toBeLessThan(coldI);
      expect((settled?.I ?? 0) * (settled?.R ?? 0) * 20).toBeCloseTo(3, 9);
      expect(coldI).toBeCloseTo(3 / (20 * thermal.cable.conductor.R20), 9);
    }
  });

  it('agrees with a whole prediction of its copper cord', () => {
    const [cu] = metalsCompared(amps);
    const whole = predict(amps);
    if (!cu || whole.steady.kind !== 'steady') throw new Error('does not settle');
    expect(settledT(cu)).toBeCloseTo(whole.steady.chain.conductor, 8);
    expect(cu.rating).toBeCloseTo(whole.rating ?? 0, 8);
  });

  it('lies outside the model past 160 °C in PVC, and where it melts', () => {
    const steel = metalsCompared(castScenario('SUS', 10, 20)).at(-1) as MetalCase;
    expect(celsius(steel.modelEnd)).toBeCloseTo(160, 9);
    expect(settledT(steel)).toBeGreaterThan(kelvin(160));
    expect(steel.outside).toBe(true);
    const melted = metalsCompared(castScenario('C075', 32, 20)).at(-1);
    expect(melted).toMatchObject({ settled: null, outside: true });
    expect(metalsCompared(amps).map(({ outside }) => outside)).toEqual([false, false, false, false]);
  });

  it('has times of its own: steel passes its rating, copper never does', () => {
    const times = metalsCompared(amps).map(metalTimes);
    expect(times[0]?.toRating).toBeNull();
    expect(times[3]?.toRating).toBeGreaterThan(100);
    expect(times[0]?.toShare).toBeGreaterThan(100);
  });
});

describe('the copper share of a clad cord', () => {
  it.each([0.05, 0.1, 0.123, 0.15, 0.2])('%f is read back from the case, and the case still parses', (share) => {
    const scenario = withCopperShare(amps, share);
    expect(copperShareOf(scenario)).toBe(share);
    expect(parseScenario(scenario).faults).toBeUndefined();
    expect(metalsCompared(scenario)[0]?.R20).toBeCloseTo(13.3e-3, 9);
  });

  it('is the usual one where the cord is of another metal', () => {
    expect(copperShareOf(amps)).toBe(0.1);
    expect(copperShareOf(castScenario('SUS', 10, 20))).toBe(0.1);
  });

  it('lowers the clad resistance as it grows, and no other', () => {
    const [least, most] = [0.05, 0.2].map((share) => metalsCompared(withCopperShare(amps, share))) as [
      MetalCase[],
      MetalCase[],
    ];
    expect(most[1]?.R20).toBeLessThan(least[1]?.R20 ?? 0);
    for (const i of [0, 2, 3]) expect(most[i]?.R20).toBeCloseTo(least[i]?.R20 ?? 0, 12);
  });
});

describe('one cord in many sizes', () => {
  const lead = (length_m: number): Scenario => ({ ...castScenario('C150', 8, 20), lead: { length_m } });

  it('runs cooler the thicker it is', () => {
    const sizes = sizesCompared(lead(30), 'mm2', [4, 0.75, 1.5, 1, 2.5]);
    expect(sizes.map(({ size }) => size.size)).toEqual([0.75, 1, 1.5, 2.5, 4]);
    expect(rising(sizes.map(({ settled }) => settled?.T ?? 0).reverse())).toBe(true);
  });

  it('has twice the ohms and watts over twice the length, at the same temperature', () => {
    const [short, long] = [30, 60].map((length) => sizesCompared(lead(length), 'mm2', [1.5])[0]?.settled);
    expect(long?.loop).toBeCloseTo(2 * (short?.loop ?? 0), 12);
    expect(long?.total).toBeCloseTo(2 * (short?.total ?? 0), 9);
    expect(long?.T).toBe(short?.T);
  });

  it('leaves out what its table does not have, and says what melts', () => {
    expect(sizesCompared(lead(30), 'mm2', [1.5, 16])).toHaveLength(1);
    expect(sizesCompared(lead(30), 'AWG', [14])).toHaveLength(0);
    const melted = sizesCompared({ ...lead(1), supply: [{ kind: 'current', I_A: 300 }] }, 'mm2', [0.75]);
    expect(melted[0]?.settled).toBeNull();
  });
});
