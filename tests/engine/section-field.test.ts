import { describe, expect, it } from 'vitest';
import type { RoundSection } from '../../engine/cable/section.ts';
import { paint, prepareField } from '../../engine/cable/section-field.ts';
import { shapeFactorFinite } from '../../engine/cable/section-finite.ts';
import { cable } from './section-cables.ts';
import { referenceSolution } from './section-reference.ts';

const sheathed = cable([3, 0.75, 0.6, 0.8], [0, 1], { kSheath: 0.14 });
const lagged: RoundSection = {
  ...sheathed,
  layers: [...sheathed.layers, { k: 0.05, r1: sheathed.layers[0].r1 + 4e-3 }],
  h: 9,
};
const r1 = sheathed.layers[0].r1;

/** Points of the body outside the conductors, spread evenly without chance. */
function bodyPoints(s: RoundSection, clear: number): [number, number][] {
  const points: [number, number][] = [];
  for (let n = 0; n < 300; n++) {
    const r = 0.95 * s.R * Math.sqrt((n + 0.5) / 300);
    const x = r * Math.cos(2.399963 * n);
    const y = r * Math.sin(2.399963 * n);
    const distances = Array.from(s.x, (xi, i) => Math.hypot(x - xi, y - s.y[i]));
    if (Math.min(...distances) > s.rc + clear) points.push([x, y]);
  }
  return points;
}

describe('the temperature field of a round section', () => {
  it('has the conductors at the shape factors of the same section', () => {
    const field = prepareField(sheathed);
    const { G, hottest } = shapeFactorFinite(sheathed);
    for (let i = 0; i < 3; i++) expect(field.potential(sheathed.x[i], sheathed.y[i] + 0.5 * sheathed.rc)).toBe(G[i]);
    expect(field.hottest).toBe(hottest);
    expect(field.at(sheathed.x[0], sheathed.y[0])).toBeCloseTo(1, 14);
  });

  it('has a conductor’s G as the mean of its perimeter', () => {
    // Both loaded cores are as hot as can be, where the field is cut off; the idle one shows the mean.
    const field = prepareField(sheathed);
    let mean = 0;
    for (let n = 0; n < 360; n++) {
      const t = (n * Math.PI) / 180;
      const r = sheathed.rc * (1 + 1e-9);
      mean += field.potential(sheathed.x[2] + r * Math.cos(t), sheathed.y[2] + r * Math.sin(t)) / 360;
    }
    expect(mean).toBeCloseTo(field.G[2], 7);
  });

  it('obeys Laplace’s equation: a point is the mean of a circle round it', () => {
    const field = prepareField(sheathed);
    const radius = 0.05e-3;
    for (const [x, y] of bodyPoints(sheathed, 3 * radius)) {
      let mean = 0;
      for (let n = 0; n < 12; n++) {
        const t = (n * Math.PI) / 6;
        mean += field.potential(x + radius * Math.cos(t), y + radius * Math.sin(t)) / 12;
      }
      if (mean < field.hottest - 0.05) expect(mean).toBeCloseTo(field.potential(x, y), 8);
    }
  });

  it('carries temperature and heat flow across each layer and out of the surface', () => {
    const field = prepareField(lagged, r1);
    const radii = [lagged.R, ...lagged.layers.map((l) => l.r1)];
    const ks = [lagged.k, ...lagged.layers.map((l) => l.k)];
    const slope = (r: number, c: number, s: number, d: number) =>
      (-3 * field.potential(r * c, r * s) +
        4 * field.potential((r + d) * c, (r + d) * s) -
        field.potential((r + 2 * d) * c, (r + 2 * d) * s)) /
      (2 * d);
    const outside = radii.length - 1;
    const meanOutside = field.surface - 2 * (lagged.k / 0.05) * Math.log(radii[2] / r1);
    const ambient = meanOutside - (2 * lagged.k) / (lagged.h * radii[outside]);
    for (let n = 0; n < 24; n++) {
      const c = Math.cos(0.26 * n);
      const s = Math.sin(0.26 * n);
      for (let l = 0; l < outside; l++) {
        const r = radii[l];
        const before = field.potential(r * (1 - 1e-9) * c, r * (1 - 1e-9) * s);
        expect(field.potential(r * (1 + 1e-9) * c, r * (1 + 1e-9) * s)).toBeCloseTo(before, 5);
        const flowIn = ks[l] * slope(r * (1 - 1e-9), c, s, -2e-6);
        const flowOut = ks[l + 1] * slope(r * (1 + 1e-9), c, s, 2e-6);
        expect(flowOut / flowIn).toBeCloseTo(1, 2);
      }
      const r = radii[outside] * (1 - 1e-9);
      const shed = lagged.h * (field.potential(r * c, r * s) - ambient);
      expect((-ks[outside] * slope(r, c, s, -2e-6)) / shed).toBeCloseTo(1, 4);
    }
  });

  it('is nowhere hotter than its hottest conductor nor colder than its surface’s coldest spot', () => {
    for (const loaded of [[0], [0, 1], [0, 1, 2]]) {
      const s = cable([3, 1.5, 0.7, 0.9], loaded);
      const field = prepareField(s);
      const rs = s.layers[0].r1;
      let coldest = Infinity;
      for (let n = 0; n < 720; n++) {
        coldest = Math.min(
          coldest,
          field.potential(rs * Math.cos((n * Math.PI) / 360), rs * Math.sin((n * Math.PI) / 360)),
        );
      }
      for (const [x, y] of bodyPoints(s, 0)) {
        expect(field.potential(x, y)).toBeLessThanOrEqual(field.hottest);
        expect(field.potential(x, y)).toBeGreaterThan(coldest);
      }
    }
  });

  it.each([
    ['a 3 × 0.75 mm² cord, two loaded', cable([3, 0.75, 0.6, 0.8], [0, 1]), 0.02],
    ['a 3 × 2.5 mm² cord, all loaded', cable([3, 2.5, 0.8, 1.1], [0, 1, 2]), 0.02],
    ['a 5 × 2.5 mm² cord, three loaded', cable([5, 2.5, 0.8, 1.2], [0, 1, 2]), 0.03],
  ])('is close to the reference solution anywhere in %s', (_, s, tolerance) => {
    const field = prepareField(s);
    const reference = referenceSolution(s, 8, 28);
    for (const [x, y] of bodyPoints(s, 0)) {
      const off = Math.abs(field.potential(x, y) - reference.at(x, y)) / (field.hottest - field.surface);
      expect(off).toBeLessThan(tolerance);
    }
  });

  it('has u = 0 as the mean of the cable’s own surface, lagged or not', () => {
    for (const [s, radius] of [
      [sheathed, undefined],
      [lagged, r1],
    ] as const) {
      const field = prepareField(s, radius);
      let mean = 0;
      for (let n = 0; n < 360; n++)
        mean += field.at(r1 * Math.cos((n * Math.PI) / 180), r1 * Math.sin((n * Math.PI) / 180)) / 360;
      expect(mean).toBeCloseTo(0, 9);
    }
    expect(prepareField(lagged, r1).at(0, r1 + 3e-3)).toBeLessThan(0);
  });

  it('is −n Σ ln(r1/r0) k/k_layer at the surface of a concentric cable, and has no hot spot there', () => {
    const s = cable([1, 1.5, 0.7, 0.8], [0], { kSheath: 0.1 });
    const field = prepareField(s);
    const rs = s.layers[0].r1;
    expect(field.surface).toBeCloseTo(-2 * Math.log(rs / s.R), 14);
    expect(field.potential(0, s.R)).toBeCloseTo(0, 12);
    expect(field.potential(rs, 0)).toBeCloseTo(field.surface, 12);
    expect(field.hotSpot).toBeCloseTo(0, 12);
  });

  it('has its surface’s hottest spot above the mean by some per cent of the rise', () => {
    expect(prepareField(cable([2, 0.75, 0.6, 0.8], [0, 1])).hotSpot).toBeCloseTo(0.044, 2);
    expect(prepareField(cable([3, 0.75, 0.6, 0.8], [0, 1])).hotSpot).toBeCloseTo(0.067, 2);
    expect(prepareField(cable([5, 2.5, 0.8, 1.2], [0, 1])).hotSpot).toBeCloseTo(0.221, 2);
  });

  it('is nowhere outside the cable', () => {
    const field = prepareField(sheathed);
    expect(field.at(0, 1.001 * r1)).toBeNaN();
    expect(field.at(0, 0.999 * r1)).not.toBeNaN();
  });
});

describe('the painter', () => {
  it('gives what the field gives at the centre of each pixel, from the top left', () => {
    const field = prepareField(sheathed);
    const out = paint(field, 30, 20, { left: -r1, right: r1, bottom: -r1, top: r1 }, new Float32Array(600));
    for (let row = 0; row < 20; row++) {
      for (let column = 0; column < 30; column++) {
        const u = field.at(-r1 + ((column + 0.5) / 30) * 2 * r1, r1 - ((row + 0.5) / 20) * 2 * r1);
        const painted = out[30 * row + column];
        if (Number.isNaN(u)) expect(painted).toBeNaN();
        else expect(painted).toBeCloseTo(u, 6);
      }
    }
  });
});
