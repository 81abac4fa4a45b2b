// The same posterior by chance: wires are drawn from the stated priors and weighed by how well they would read, with no grid
// and no convolution.
import { describe, expect, it } from 'vitest';
import { clad, type Evidence, identify, type Metal, metals, usualPriors } from '#engine';
import { type Chance, chanceOf } from '../study/chance.ts';
import { loopOf, massOf, strandsOf, the } from './identify-cases.ts';

const evidence = {
  resistance: loopOf(35.5e-3, 0.01),
  strands: strandsOf(24, 0.205, 0.008),
  mass: massOf(2.35e-3, 0.06),
} satisfies Evidence;

const draws = 60_000;
const bell = (read: number, expected: number, u: number) => Math.exp(-(((read - expected) / u) ** 2) / 2) / u;

/** Weighted areas of one metal, and their mean weight: how likely the evidence is. */
function drawn(by: Chance, wire: () => { metal: Metal; rho: number }): { likelihood: number; area: number } {
  const { resistance, strands, mass } = evidence;
  const centre = 24 * (Math.PI / 4) * strands.diameter!.value ** 2;
  const around = 0.25; // wider than the gauge
  let [weights, areas] = [0, 0];
  for (let i = 0; i < draws; i++) {
    const z = by.normal();
    const area = centre * Math.exp(around * z);
    const lay = by.even(1, 1.05);
    const { metal, rho } = wire();
    const density = metal.density.value * Math.exp((metal.density.u / metal.density.value) * by.normal());
    const loop = (16 * rho * lay) / area;
    const uR = Math.hypot(resistance.R.u, loop * (0.02 / 8), loop * metal.alpha20.value * 0.5);
    const m = 2 * density * lay * area;
    const weight =
      bell(resistance.R.value, loop, uR) *
      bell(strands.diameter!.value, Math.sqrt((4 * area) / (24 * Math.PI)), strands.diameter!.u) *
      bell(mass.mass.value, m, Math.hypot(mass.mass.u, m * (0.005 / 2))) *
      Math.exp((z * z) / 2);
    weights += weight;
    areas += weight * Math.log(area);
  }
  return { likelihood: weights / draws, area: Math.exp(areas / weights) };
}

describe('the posterior', () => {
  it('is that of a hundred and twenty thousand wires drawn from the priors', () => {
    const by = chanceOf('wires');
    const { aluminium, copper } = metals;
    const plain = drawn(by, () => ({
      metal: aluminium,
      rho: aluminium.rho20.value * Math.exp((aluminium.rho20.u / aluminium.rho20.value) * by.normal()),
    }));
    const [above, u] = usualPriors.aluminiumMixing.value;
    const skinned = drawn(by, () => {
      const metal = clad('drawn', 'drawn', copper, aluminium, by.even(0.08, 0.17));
      return { metal, rho: above * metal.rho20.value * Math.exp(u * by.normal()) };
    });
    const found = identify(evidence);
    const [one, two] = [the('aluminium', found), the('cladAluminium', found)];
    const prior = usualPriors.metals.value;
    const odds = (plain.likelihood * prior.aluminium) / (skinned.likelihood * prior.cladAluminium);
    expect(odds).toBeGreaterThan(0.05); // both are in the running
    expect(odds).toBeLessThan(20);
    expect(one.probability / two.probability / odds).toBeGreaterThan(0.93);
    expect(one.probability / two.probability / odds).toBeLessThan(1.07);
    expect((one.area?.median ?? 0) / plain.area).toBeCloseTo(1, 2);
    expect((two.area?.median ?? 0) / skinned.area).toBeCloseTo(1, 2);
  });
});
