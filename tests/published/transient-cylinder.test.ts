// The one-term solution of the infinite cylinder (Incropera & DeWitt, 6th ed., Table 5.1): θ0* = C1 exp(−ζ1² Fo), with
// ζ1 J1(ζ1) = Bi J0(ζ1). The transient solver runs a cable that is nearly all insulation (a wire of 1e-3 of its radius stands in
// the axis) as it cools through a constant film; two late times of the run give ζ1 and C1.
import { describe, expect, it } from 'vitest';
import { buildCase, runCase } from '#engine';
import { scenarioOf, withFilm } from './cases.ts';
import { checkTable, num, type Row, readTable } from './table.ts';

const R = 0.05; // m
const k = 0.2; // W/(m·K)
const rhoC = 2e6; // J/(m³·K)
const wire_mm = 2 * Math.sqrt(0.01 / Math.PI);

const cable = {
  layout: 'single',
  conductor: {
    metal: { rho20_nOhmM: 10, alpha20_perK: 0, heatCapacity_MJPerM3K: rhoC / 1e6, melting_degC: 3000 },
    class: 1,
    area_mm2: 0.01,
  },
  insulation: {
    material: { rhoT_KmPerW: 1 / k, heatCapacity_MJPerM3K: rhoC / 1e6 },
    thickness_mm: 1e3 * R - wire_mm / 2,
  },
};

/** Share of the first temperature difference left in the axis after `Fo` = a t/R². */
function axis(Bi: number, Fo: number): number {
  const scenario = scenarioOf({
    cable,
    surroundings: { kind: 'stillAir', ambient_degC: 0 },
    start: { T_degC: 1000 },
    supply: [{ kind: 'off' }],
    run: { duration_s: (Fo * R * R * rhoC) / k, cells: 300, tolerance_K: 1e-5 },
  });
  const of = withFilm(buildCase(scenario), 2 * Math.PI * R * ((Bi * k) / R));
  const { conductor } = runCase(of).curves;
  return (conductor[conductor.length - 1] - of.Ta) / 1000;
}

/** ζ1 and C1 as a run shows them, from Fo 0.9 and 1.5, where the second term has died away to 1e-6. */
function fromRun(Bi: number): { zeta: number; C: number } {
  const [early, late] = [0.9, 1.5];
  const first = axis(Bi, early);
  const square = Math.log(first / axis(Bi, late)) / (late - early);
  return { zeta: Math.sqrt(square), C: first * Math.exp(square * early) };
}

/** Bessel function of the first kind by its integral, exact to rounding for these arguments. */
function besselJ(n: number, x: number): number {
  const points = 64;
  let sum = 0;
  for (let i = 0; i < points; i++) {
    const t = (Math.PI * (i + 0.5)) / points;
    sum += Math.cos(n * t - x * Math.sin(t));
  }
  return sum / points;
}

/** The exact first root of ζ J1(ζ) = Bi J0(ζ), below the first zero of J0, and its C1. */
function exact(Bi: number): { zeta: number; C: number } {
  let [low, high] = [0, 2.4048];
  for (let i = 0; i < 60; i++) {
    const z = (low + high) / 2;
    if (z * besselJ(1, z) < Bi * besselJ(0, z)) low = z;
    else high = z;
  }
  const [J0, J1] = [besselJ(0, low), besselJ(1, low)];
  return { zeta: low, C: (2 * J1) / (low * (J0 * J0 + J1 * J1)) };
}

const runs = new Map<number, { zeta: number; C: number }>();
function runOf(Bi: number): { zeta: number; C: number } {
  const known = runs.get(Bi) ?? fromRun(Bi);
  runs.set(Bi, known);
  return known;
}

/** Holman's cylinder: the axis of a run, carried to radius r by J0(ζ r/R). */
function temperature(row: Row): number {
  const Bi = num(row, 'Bi');
  const share = axis(Bi, num(row, 'Fo')) * besselJ(0, runOf(Bi).zeta * num(row, 'radius_share'));
  const ambient = num(row, 'ambient_degC');
  return ambient + share * (num(row, 'start_degC') - ambient);
}

checkTable('transient-cylinder.csv', {
  'ζ1 of a run': (row) => runOf(num(row, 'Bi')).zeta,
  'C1 of a run': (row) => runOf(num(row, 'Bi')).C,
  'temperature of a cooling cylinder': temperature,
});

const printed = readTable('transient-cylinder.csv').filter(({ quantity }) => quantity.startsWith('ζ1'));

describe('beside the table', () => {
  it.each(printed.map((row) => num(row, 'Bi')))('a run has the exact ζ1 and C1 at Bi = %d to 1e-5', (Bi) => {
    const { zeta, C } = exact(Bi);
    expect(Math.abs(runOf(Bi).zeta - zeta)).toBeLessThan(1e-5);
    expect(Math.abs(runOf(Bi).C - C)).toBeLessThan(1e-5);
  });
});
