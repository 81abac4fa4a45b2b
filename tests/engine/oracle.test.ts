// The engine against a second writing of the heat model (oracle.ts), whose numbers are typed in here.
import { describe, expect, it } from 'vitest';
import { runCase } from '#engine/heating/run.ts';
import { steadyState } from '#engine/heating/steady.ts';
import { supplyOf } from '#engine/heating/supply.ts';
import { buildCase } from '#engine/heating/thermal-case.ts';
import type { Scenario } from '#engine/scenario/schema.ts';
import {
  draughtShed,
  finiteG,
  lineSourceG,
  type PlainProblem,
  plainRun,
  stillAirShed,
  surfaceGamma,
} from './oracle.ts';

const Ta = 293.15;
const copper = { alpha: 3.93e-3, rhoC: 3.45e6 };
const pvc = { rhoT: 5, rhoC: 1.7e6, emissivity: 0.9 };
const spread = 1.13; // of a strand bundle's diameter
const lay = 1.02;

/** A metre of loop resistance by the straight line. */
const resistance = (R20: number, T: number) => R20 * (1 + copper.alpha * (T - 293.15));

/** Three cores of 0.75 mm² under a PVC sheath, two of them loaded: IEC 60227-5, walls of 0.6 and 0.8 mm; 26 Ω/km. */
function cord(heat: PlainProblem['heat']): { problem: PlainProblem; G: number; images: number } {
  const A = 0.75e-6;
  const rc = Math.sqrt(A / Math.PI) * spread;
  const ri = rc + 0.6e-3;
  const a = (2 * ri) / Math.sqrt(3);
  const R = a + ri;
  const outer = R + 0.8e-3;
  const z = [0, 1, 2].map((i) => [a * Math.cos((2 * Math.PI * i) / 3), a * Math.sin((2 * Math.PI * i) / 3)] as const);
  const shed = (T: number) => stillAirShed(2 * outer, pvc.emissivity, Ta, T);
  const h = shed(Ta + 30) / (2 * Math.PI * outer * 30);
  const k = 1 / pvc.rhoT;
  const gamma = (m: number) => surfaceGamma(m, k, R, outer, k, h);
  const G = finiteG([...z], rc, R, [0, 1], 0, gamma);
  const r0 = R * Math.exp(-G / 2);
  const metal = A * lay * copper.rhoC;
  const held = (Math.PI * R * R - 3 * Math.PI * rc * rc) * pvc.rhoC + metal;
  const body = { r0, r1: R, k, rhoC: held / (Math.PI * (R * R - r0 * r0)) };
  const rings = [body, { r0: R, r1: outer, k, rhoC: pvc.rhoC }];
  return {
    problem: { rings, capacity: 2 * metal, heat, shed, T0: Ta },
    G,
    images: lineSourceG([...z], rc, R, [0, 1], 0),
  };
}

/** The greatest distance [K] of a whole run from the plain one, at the plain one's marks. */
function worst(scenario: Scenario, problem: PlainProblem, end: number, every: number, cells = 12): number {
  const { curves } = runCase(buildCase(scenario), { samplesPerStep: 60 });
  const coarse = plainRun(problem, cells, end, every);
  const fine = plainRun(problem, 2 * cells, end, every);
  let off = 0;
  for (const [n, mark] of fine.entries()) {
    if (n === 0) continue;
    const i = curves.t.findIndex((t) => t >= mark.t - 1e-9);
    const [t0, t1] = [curves.t[i - 1] as number, curves.t[i] as number];
    const part = t1 > t0 ? (mark.t - t0) / (t1 - t0) : 1;
    for (const place of ['conductor', 'surface'] as const) {
      const own = (1 - part) * (curves[place][i - 1] as number) + part * (curves[place][i] as number);
      // the plain run's cells leave an error of second order, taken out by the two of them
      const plain = mark[place] + (mark[place] - (coarse[n]?.[place] as number)) / 3;
      off = Math.max(off, Math.abs(own - plain));
    }
  }
  return off;
}

describe('the heat model written a second time agrees with the engine', () => {
  const cable = { table: 'H05VV-F', cores: 3, size_mm2: 0.75 };
  const surroundings = { kind: 'stillAir', ambient_degC: 20 } as const;

  it('on the shape factors of a cord, line sources as well as finite conductors', () => {
    const of = buildCase({ cable, surroundings, supply: [{ kind: 'off' }] });
    const { G, images } = cord(() => 0);
    expect(of.G.lineSources).toBeCloseTo(images, 10);
    expect(of.G.finiteConductors).toBeCloseTo(G, 8);
  });

  it('within 0.05 K on a cord that carries 13 A for ten minutes', () => {
    const { problem } = cord((T) => 2 * 13 ** 2 * resistance(26e-3, T));
    const scenario: Scenario = {
      cable,
      surroundings,
      supply: [{ kind: 'current', I_A: 13 }],
      run: { duration_s: 600 },
    };
    expect(worst(scenario, problem, 600, 10, 24)).toBeLessThan(0.05);
  });

  it('within 0.05 K on a wire along a wall that carries 30 A for three minutes and then cools', () => {
    // H07V-K, 1.5 mm² in 0.7 mm of PVC, 13.3 Ω/km; IEC 60287-2-1: Z = 1.69, E = 0.63, g = 0.25
    const rc = Math.sqrt(1.5e-6 / Math.PI) * spread;
    const r1 = rc + 0.7e-3;
    const De = 2 * r1;
    const shed = (T: number) =>
      Math.PI * De * (1.69 / De ** 0.25 + 0.63) * Math.sign(T - Ta) * Math.abs(T - Ta) ** 1.25;
    const ring = { r0: rc, r1, k: 1 / pvc.rhoT, rhoC: pvc.rhoC };
    const heat = (T: number, t: number) => (t < 180 ? 30 ** 2 * resistance(13.3e-3, T) : 0);
    const scenario: Scenario = {
      cable: { table: 'H07V-K', cores: 1, size_mm2: 1.5 },
      surroundings: { kind: 'clipped', ambient_degC: 20 },
      supply: [{ kind: 'current', I_A: 30, duration_s: 180 }, { kind: 'off' }],
      run: { duration_s: 400 },
    };
    expect(
      worst(scenario, { rings: [ring], capacity: 1.5e-6 * lay * copper.rhoC, heat, shed, T0: Ta }, 400, 10),
    ).toBeLessThan(0.05);
  });

  it('within 0.05 K on a wire in a draught with the voltage held on its lead', () => {
    const rc = Math.sqrt(2.5e-6 / Math.PI) * spread;
    const ring = { r0: rc, r1: rc + 0.8e-3, k: 1 / pvc.rhoT, rhoC: pvc.rhoC };
    const shed = (T: number) => draughtShed(2 * ring.r1, pvc.emissivity, Ta, 1.5, T);
    const heat = (T: number) => {
      const R = resistance(7.98e-3, T);
      return (9 / (2 * 10 * R + 0.02 + 0.03)) ** 2 * R;
    };
    const scenario: Scenario = {
      cable: { table: 'H07V-K', cores: 1, size_mm2: 2.5 },
      lead: { length_m: 10, contact_ohm: 0.02 },
      surroundings: { kind: 'draught', ambient_degC: 20, speed_mPerS: 1.5 },
      supply: [{ kind: 'voltage', U_V: 9, source_ohm: 0.03 }],
      run: { duration_s: 300 },
    };
    expect(
      worst(scenario, { rings: [ring], capacity: 2.5e-6 * lay * copper.rhoC, heat, shed, T0: Ta }, 300, 5),
    ).toBeLessThan(0.05);
  });

  it('within 0.05 K on a bare wire, and on where it settles', () => {
    // 1.5 mm² solid, 12.1 Ω/km, emissivity 0.65
    const D = 2 * Math.sqrt(1.5e-6 / Math.PI);
    const shed = (T: number) => stillAirShed(D, 0.65, Ta, T);
    const heat = (T: number) => 40 ** 2 * resistance(12.1e-3, T);
    const scenario: Scenario = {
      cable: { layout: 'single', conductor: { size_mm2: 1.5, class: 1 }, insulation: null },
      surroundings,
      supply: [{ kind: 'current', I_A: 40 }],
      run: { duration_s: 900 },
    };
    const problem = { rings: [], capacity: 1.5e-6 * copper.rhoC, heat, shed, T0: Ta };
    expect(worst(scenario, problem, 900, 10)).toBeLessThan(0.05);
    const of = buildCase(scenario);
    const steady = steadyState(of, supplyOf(of, { kind: 'current', I_A: 40 }));
    const end = plainRun(problem, 0, 4000, 20).at(-1)?.conductor as number;
    expect(Math.abs((steady.kind === 'steady' ? steady.chain.conductor : 0) - end)).toBeLessThan(1e-3);
  });
});
