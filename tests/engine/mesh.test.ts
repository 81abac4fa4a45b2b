import { describe, expect, it } from 'vitest';
import { type Mesh, meshOf } from '#engine/heating/mesh.ts';
import { radialOf } from '#engine/heating/radial.ts';
import type { Ring } from '#engine/surroundings/outside.ts';

const body: Ring = { name: 'insulation', r0: 0.8e-3, r1: 2.6e-3, k: 0.2, rhoC: 1.7e6 };
const sheath: Ring = { name: 'sheath', r0: 2.6e-3, r1: 3.4e-3, k: 0.17, rhoC: 2.0e6 };
const lagging: Ring = { name: 'lagging', r0: 3.4e-3, r1: 20e-3, k: 0.04, rhoC: 5e4 };
const metal = 6; // J/(m·K)
const rings = { one: [body], two: [body, sheath], three: [body, sheath, lagging] } as const;
const capacityOf = (list: readonly Ring[]) =>
  list.reduce((sum, { r0, r1, rhoC }) => sum + Math.PI * (r1 ** 2 - r0 ** 2) * rhoC, metal);
const sum = (x: ArrayLike<number>) => Array.from(x).reduce((total, value) => total + value, 0);

const meshes: [string, readonly Ring[], number, number][] = [
  ['one ring, equal steps', rings.one, 24, Number.POSITIVE_INFINITY],
  ['one ring, fine at the conductor', rings.one, 24, 2e-6],
  ['two rings', rings.two, 24, Number.POSITIVE_INFINITY],
  ['two rings, fine at the conductor', rings.two, 24, 5e-6],
  ['three rings', rings.three, 24, 1e-5],
  ['as few cells as there may be', rings.three, 4, Number.POSITIVE_INFINITY],
];

const meshFor = (list: readonly Ring[], cells: number, first: number) =>
  meshOf(list, metal, Math.min(2, list.length), cells, first, 1e-3);

describe('a mesh', () => {
  it.each(meshes)(
    'holds what its parts hold per kelvin, by its columns as by its rows: %s',
    (_, list, cells, first) => {
      const mesh = meshFor(list, cells, first);
      expect(sum(mesh.capacity)).toBeCloseTo(sum(mesh.lower) + sum(mesh.diagonal) + sum(mesh.upper), 12);
      expect(sum(mesh.capacity) / capacityOf(list) - 1).toBeCloseTo(0, cells > 10 ? 2 : 1);
      expect(Math.min(...mesh.capacity)).toBeGreaterThan(0);
    },
  );

  it('holds the true heat but for a share that falls with the square of the step or faster', () => {
    const off = [24, 48, 96].map((cells) =>
      Math.abs(sum(meshFor(rings.two, cells, Infinity).capacity) / capacityOf(rings.two) - 1),
    );
    expect(off[0]).toBeLessThan(1.5e-3);
    expect((off[0] as number) / (off[1] as number)).toBeGreaterThan(3.8);
    expect((off[1] as number) / (off[2] as number)).toBeGreaterThan(3.8);
  });

  it.each(meshes)('conducts in steady state exactly as ln(r1/r0)/2πk: %s', (_, list, cells, first) => {
    const mesh = meshFor(list, cells, first);
    const exact = list.reduce((total, { r0, r1, k }) => total + Math.log(r1 / r0) / (2 * Math.PI * k), 0);
    expect(sum(mesh.K.map((K) => 1 / K)) / exact).toBeCloseTo(1, 12);
  });

  it.each(meshes)(
    'has its nodes in order from the conductor out, and its surface where the cable ends: %s',
    (_, list, cells, first) => {
      const { r, surface } = meshFor(list, cells, first);
      expect(r[0]).toBeCloseTo(0.8e-3, 15);
      expect(r.at(-1)).toBeCloseTo(list.at(-1)?.r1 as number, 15);
      for (let i = 1; i < r.length; i++) expect(r[i]).toBeGreaterThan(r[i - 1] as number);
      expect(r[surface]).toBeCloseTo(list[Math.min(2, list.length) - 1]?.r1 as number, 15);
    },
  );

  it('begins with a first cell no wider than was asked for, each run of cells twice as wide as the one before', () => {
    const { r } = meshFor(rings.one, 24, 2e-6);
    expect((r[1] as number) - (r[0] as number)).toBeLessThan(2e-6);
    const steps = Array.from(r.slice(1), (radius, i) => Math.log(radius / (r[i] as number)));
    for (let i = 1; i < steps.length; i++) {
      const ratio = (steps[i] as number) / (steps[i - 1] as number);
      expect(ratio).toBeGreaterThan(0.999);
      expect(ratio).toBeLessThan(2.2);
    }
  });

  it('has a single node for a bare conductor', () => {
    const mesh = meshOf([], metal, 0, 24, 1e-5, 1e-3);
    expect([mesh.r.length, mesh.K.length, mesh.surface, mesh.capacity[0]]).toEqual([1, 0, 0, metal]);
  });
});

/** Conductor temperature [K] after `t` [s], heated by `q` [W/m] from 300 K, with a linear surface; steps are fine enough not to count. */
function heated(mesh: Mesh, q: number, t: number, H = 0.3): { conductor: number; imbalance: number } {
  const steps = 1000;
  const n = mesh.r.length;
  const radial = radialOf(mesh, (T) => H * (T - 300), new Float64Array(n).fill(300));
  radial.setHeat(() => q);
  for (let i = 0; i < steps; i++) {
    radial.attempt(t / steps);
    radial.accept();
  }
  const stored = sum(mesh.capacity.map((C, i) => C * ((radial.y[i] as number) - 300)));
  const { made, lost } = radial.account;
  return { conductor: radial.y[0] as number, imbalance: (made - lost - stored) / made };
}

describe('the error of the mesh', () => {
  it.each([
    ['one ring', rings.one, 60],
    ['two rings', rings.two, 60],
    ['three rings', rings.three, 600],
  ])('falls with the third power of the step or faster: %s', (_, list, t) => {
    const at = (cells: number) => heated(meshFor(list, cells, Infinity), 20, t).conductor;
    const converged = at(1152);
    const errors = [96, 192, 384].map((cells) => Math.abs(at(cells) - converged));
    const order = Math.log2((errors[0] as number) / (errors[2] as number)) / 2;
    expect(order).toBeGreaterThan(2.8);
  });

  it.each(meshes)('never lets heat appear or vanish: %s', (_, list, cells, first) => {
    expect(Math.abs(heated(meshFor(list, cells, first), 20, 60).imbalance)).toBeLessThan(1e-11);
  });
});
