import { describe, expect, it } from 'vitest';
import { flatLayout } from '../../engine/cable/layout.ts';
import { paint } from '../../engine/cable/section-field.ts';
import { type FlatSection, prepareFlatField } from '../../engine/cable/section-flat.ts';
import { shapeFactorImages } from '../../engine/cable/section-images.ts';
import { panelSolution } from './section-panels.ts';

// Walls [mm]: IEC 60227-5 (60227 IEC 52 and 53, flat), the last two without a sheath (60227 IEC 42: 0.8 mm in all).
const twins = [
  [0.5, 0.5, 0.6],
  [0.75, 0.6, 0.8],
  [1, 0.6, 0.8],
  [2.5, 0.8, 1.0],
  [0.5, 0.8, 0],
  [0.75, 0.8, 0],
] as const;

function flat(
  cores: number,
  [area_mm2, insulation_mm, sheath_mm]: readonly [number, number, number],
  loaded: number[],
  kSheath = 0.2,
  h = 18,
) {
  const rc = 1.13e-3 * Math.sqrt(area_mm2 / Math.PI);
  const ri = rc + 1e-3 * insulation_mm;
  const layout = flatLayout(cores, 2 * ri, ri);
  const section: FlatSection = {
    x: layout.x,
    rc,
    loaded,
    halfRun: layout.halfRun,
    halfHeight: ri,
    k: 0.2,
    h,
    ...(sheath_mm > 0 ? { sheath: { k: kSheath, thickness: 1e-3 * sheath_mm } } : {}),
  };
  return { section, layout };
}

/** Boundary elements at two refinements, carried to the limit: their error falls as the square of the panels' length. */
function panelLimit(section: FlatSection): { values: number[]; change: number } {
  const all = (n: number) => {
    const { G, surface } = panelSolution(section, n);
    return [...G, surface];
  };
  const [once, twice] = [all(24), all(48)];
  const values = twice.map((v, i) => v + (v - once[i]) / 3);
  return { values, change: Math.max(...values.map((v, i) => Math.abs(v - twice[i]))) };
}

describe('the boundary element solution itself', () => {
  it('tends to the exact logarithms for one core in a round sheath, at nearly second order', () => {
    const { section } = flat(1, [1, 0.6, 0.8], [0], 0.14);
    const b = section.halfHeight;
    const exact = Math.log(b / section.rc);
    const error = (n: number) => Math.abs(panelSolution(section, n).G[0] - exact);
    expect(Math.log2(error(16) / error(32))).toBeGreaterThan(1.7);
    const { values } = panelLimit(section);
    expect(values[0]).toBeCloseTo(exact, 4);
    expect(values[1]).toBeCloseTo((-0.2 / 0.14) * Math.log((b + 0.8e-3) / b), 4);
  });
});

describe('the field of a flat cable', () => {
  it('is that of a concentric cable for one core', () => {
    const { section } = flat(1, [1, 0.6, 0.8], [0], 0.14);
    const field = prepareFlatField(section);
    expect(field.hottest).toBeCloseTo(Math.log(section.halfHeight / section.rc), 8);
    expect(field.surface).toBeCloseTo((-0.2 / 0.14) * Math.log(1 + 0.8e-3 / section.halfHeight), 8);
    expect(field.hotSpot).toBeCloseTo(0, 6);
  });

  it.each([
    ['two cores, both loaded', flat(2, [0.5, 0.5, 0.6], [0, 1])],
    ['two cores, one loaded', flat(2, [0.75, 0.6, 0.8], [0])],
    ['two cores under a sheath of lesser conductivity', flat(2, [0.75, 0.6, 0.8], [0], 0.12)],
    ['two cores without a sheath, one loaded', flat(2, [0.75, 0.8, 0], [0])],
    ['three cores, all loaded, a well conducting sheath', flat(3, [1.5, 0.7, 0.9], [0, 1, 2], 0.3)],
    ['three cores, two neighbours loaded', flat(3, [1.5, 0.7, 0.9], [0, 1])],
  ])('agrees with boundary elements: %s', (_, { section }) => {
    const field = prepareFlatField(section);
    const { values, change } = panelLimit(section);
    expect(change).toBeLessThan(2e-3);
    [...field.G, field.surface].forEach((g, i) => {
      expect(Math.abs(g - values[i])).toBeLessThan(5e-4);
    });
  });

  it('has its conductors isothermal and temperature and flow continuous at the sheath', () => {
    const { section } = flat(2, [0.75, 0.6, 0.8], [0], 0.12);
    const field = prepareFlatField(section);
    for (let n = 0; n < 60; n++) {
      const t = (n * Math.PI) / 30;
      const r = section.rc * (1 + 1e-9);
      for (const i of [0, 1]) {
        const there = field.potential(section.x[i] + r * Math.cos(t), r * Math.sin(t));
        expect(Math.abs(there - field.G[i])).toBeLessThan(5e-4);
      }
      const [c, s] = [Math.abs(Math.cos(t)), Math.sin(t)];
      const at = (d: number) =>
        field.potential(section.halfRun + (section.halfHeight + d) * c, (section.halfHeight + d) * s);
      expect(Math.abs(at(1e-12) - at(-1e-12))).toBeLessThan(2e-3);
    }
    const above = (d: number) => field.potential(0.2e-3, section.halfHeight + d);
    const inside = (0.2 * (above(-1e-9) - above(-1e-6))) / 1e-6;
    const outside = (0.12 * (above(1e-6) - above(1e-9))) / 1e-6;
    expect(outside / inside).toBeCloseTo(1, 2);
  });

  it('is its own mirror image, above and below, left and right', () => {
    const { section } = flat(2, [1, 0.6, 0.8], [0, 1], 0.14);
    const field = prepareFlatField(section);
    for (const [x, y] of [
      [0.3e-3, 0.9e-3],
      [1.9e-3, 0.4e-3],
      [2.6e-3, 0.7e-3],
      [0.1e-3, 1.6e-3],
    ] as const) {
      expect(field.at(x, -y)).toBeCloseTo(field.at(x, y), 12);
      expect(field.at(-x, y)).toBeCloseTo(field.at(x, y), 4);
    }
  });

  it('is reciprocal above its surface’s mean, and adds up', () => {
    const fields = [[0], [1], [0, 1], [2]].map((loaded) => prepareFlatField(flat(3, [1.5, 0.7, 0.9], loaded).section));
    const rise = (field: number, core: number) => fields[field].G[core] - fields[field].surface;
    expect(rise(0, 1)).toBeCloseTo(rise(1, 0), 3);
    expect(rise(0, 2)).toBeCloseTo(rise(3, 0), 3);
    for (let i = 0; i < 3; i++) expect(rise(2, i)).toBeCloseTo(rise(0, i) + rise(1, i), 3);
  });

  it('has no point hotter than its hottest conductor, is 1 there, 0 on the mean of its surface, nowhere outside', () => {
    const { section } = flat(2, [0.75, 0.6, 0.8], [0, 1]);
    const field = prepareFlatField(section);
    const reach = section.halfHeight + 0.8e-3;
    const extent = { left: -section.halfRun - reach, right: section.halfRun + reach, bottom: -reach, top: reach };
    const picture = paint(field, 80, 50, extent, new Float32Array(4000));
    const inside = picture.filter((u) => !Number.isNaN(u));
    expect(inside.length / 4000).toBeCloseTo(
      flatLayout(2, 2 * section.halfRun, reach).area / (4 * reach * (section.halfRun + reach)),
      1,
    );
    expect(Math.max(...inside)).toBeLessThan(1.001);
    expect(Math.min(...inside)).toBeGreaterThan(-0.1);
    expect(field.at(section.x[1], 0)).toBeCloseTo(1, 12);
    expect(field.at(0, 1.01 * reach)).toBeNaN();
  });

  it('refuses a core that leaves the body', () => {
    const { section } = flat(2, [0.75, 0.6, 0.8], [0, 1]);
    expect(() => prepareFlatField({ ...section, halfRun: 0.3 * section.halfRun })).toThrow(/must lie/);
    expect(() => prepareFlatField({ ...section, loaded: [2] })).toThrow(/must lie/);
  });
});

describe('the image formula for a flat cable, R = P/2π', () => {
  it.each(twins)(
    'is less than 3 per cent low and 6 per cent high for two cores of %f mm² and %f mm walls under %f mm, both loaded',
    (...twin) => {
      for (const h of [18, Infinity]) {
        const { section, layout } = flat(2, twin, [0, 1], 0.2, h);
        const error =
          shapeFactorImages({ ...layout, rc: section.rc, loaded: [0, 1] }).hottest / prepareFlatField(section).hottest -
          1;
        expect(error).toBeGreaterThan(-0.03);
        expect(error).toBeLessThan(0.06);
      }
    },
  );

  it('is no guide where one of two is loaded (20 % low and more) or three lie side by side (20 % high and more)', () => {
    const one = flat(2, [0.75, 0.6, 0.8], [0]);
    const three = flat(3, [1.5, 0.7, 0.9], [0, 1, 2]);
    const error = ({ section, layout }: typeof one) =>
      shapeFactorImages({ ...layout, rc: section.rc, loaded: section.loaded }).hottest /
        prepareFlatField(section).hottest -
      1;
    expect(error(one)).toBeLessThan(-0.2);
    expect(error(three)).toBeGreaterThan(0.2);
  });
});
