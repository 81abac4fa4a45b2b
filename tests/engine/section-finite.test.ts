import { describe, expect, it } from 'vitest';
import { roundLayout } from '../../engine/cable/layout.ts';
import type { RoundSection } from '../../engine/cable/section.ts';
import { shapeFactorFinite, surfaceResponse } from '../../engine/cable/section-finite.ts';
import { shapeFactorImages } from '../../engine/cable/section-images.ts';
import { cable, cables, choices, cords } from './section-cables.ts';
import { referenceSolution } from './section-reference.ts';

const uneven: RoundSection = {
  x: [1e-3, -2e-3, 0.5e-3, 0.1e-3],
  y: [0.3e-3, 0.2e-3, -1.9e-3, 2.2e-3],
  rc: 6e-4,
  R: 4e-3,
  k: 0.2,
  layers: [
    { k: 0.15, r1: 4.8e-3 },
    { k: 0.05, r1: 9e-3 },
  ],
  h: 12,
  loaded: [0, 2],
};

/** The largest error of any core's G, idle ones too, as a share of the hottest loaded core's. */
function worst(s: RoundSection, L = 8, M = 28): number {
  const { G } = referenceSolution(s, L, M);
  const hottest = Math.max(...s.loaded.map((i) => G[i]));
  return Math.max(...shapeFactorFinite(s).G.map((g, i) => Math.abs(g - G[i]))) / hottest;
}

describe('the reference solution itself', () => {
  it('gives ln(R/rc) for a concentric core, whatever the sheath and the surface', () => {
    const s = cable([1, 1.5, 0.7, 0.8], [0], { kSheath: 0.1 });
    expect(referenceSolution(s, 4, 8).G[0]).toBeCloseTo(Math.log(s.R / s.rc), 10);
  });

  it('gives acosh((R² + rc² − e²)/(2 R rc)) for an eccentric conductor in an isothermal circle', () => {
    const s = { x: [0.4e-3], y: [0.2e-3], rc: 0.5e-3, R: 1.5e-3, loaded: [0], k: 0.2, layers: [], h: Infinity };
    const exact = Math.acosh((1.5 ** 2 + 0.5 ** 2 - 0.2) / (2 * 1.5 * 0.5));
    expect(referenceSolution(s, 10, 40).G[0]).toBeCloseTo(exact, 9);
  });

  it.each([
    ['the smallest cord', cable([2, 0.5, 0.5, 0.6], [0, 1])],
    ['three cores of 2.5 mm², one loaded', cable([3, 2.5, 0.8, 1.1], [0])],
    ['four cores of 16 mm², one loaded, a sheath of lesser conductivity', cable(cables[2], [0], { kSheath: 0.12 })],
    ['cores anywhere under two layers', uneven],
  ])(
    'changes by less than 1e-4 when its orders are doubled: %s',
    (_, s) => {
      const once = referenceSolution(s, 8, 28).G;
      const twice = referenceSolution(s, 16, 56).G;
      once.forEach((g, i) => {
        expect(Math.abs(g - twice[i])).toBeLessThan(1e-4);
      });
    },
    30_000,
  );
});

describe('shape factors with finite conductors and a real surface', () => {
  it.each(cords)(
    'are within one per cent of the reference for %i × %f mm² cords, any cores loaded',
    (...cord) => {
      for (const loaded of choices[cord[0]]) expect(worst(cable(cord, loaded))).toBeLessThan(0.01);
    },
    30_000,
  );

  it.each([
    ['a poorly conducting sheath', { kSheath: 0.12 }],
    ['a well conducting sheath', { kSheath: 0.3 }],
    ['a brisk draught', { h: 80 }],
    ['a sheath of even temperature', { h: Infinity }],
  ])('are within one per cent of the reference for three cores of 1.5 mm² under %s', (_, surface) => {
    for (const loaded of choices[3]) expect(worst(cable([3, 1.5, 0.7, 0.9], loaded, surface))).toBeLessThan(0.01);
  });

  it.each(cables)(
    'are within 2.1 per cent of the reference for %i × %f mm² cables, any cores loaded',
    (...small) => {
      for (const loaded of choices[small[0]]) expect(worst(cable(small, loaded))).toBeLessThan(0.021);
    },
    30_000,
  );

  it('are within 1 % of the reference for cores anywhere under sheath and lagging', () => {
    for (const loaded of [[0], [1, 3], [0, 1, 2, 3]]) expect(worst({ ...uneven, loaded }, 10, 36)).toBeLessThan(0.01);
  });

  it('are never too low for the hottest core of a cord: the cautious side', () => {
    for (const loaded of choices[3]) {
      const s = cable([3, 0.75, 0.6, 0.8], loaded);
      const exact = Math.max(...loaded.map((i) => referenceSolution(s, 8, 28).G[i]));
      expect(shapeFactorFinite(s).hottest).toBeGreaterThan(exact);
    }
  });

  it('are ln(R/rc) for one centred core and 0 for a bare conductor', () => {
    const s = cable([1, 1.5, 0.7, 0.8], [0]);
    expect(shapeFactorFinite(s).hottest).toBeCloseTo(Math.log(s.R / s.rc), 14);
    expect(shapeFactorFinite({ ...s, rc: 1e-3, R: 1e-3, layers: [] }).hottest).toBe(0);
    expect(shapeFactorFinite({ ...s, rc: 1e-3, R: 1e-3, layers: [], h: Infinity }).hottest).toBe(0);
  });

  it('become those by images as conductors get thin, under an isothermal surface', () => {
    for (const loaded of choices[5]) {
      const s = { ...cable([5, 1.5, 0.7, 0], loaded, { h: Infinity }), rc: 1e-7 };
      const images = shapeFactorImages(s).G;
      shapeFactorFinite(s).G.forEach((g, i) => {
        expect(g).toBeCloseTo(images[i], 6);
      });
    }
  });

  it('do not change when the cable is turned or its cores are numbered anew', () => {
    const G = shapeFactorFinite(uneven).G;
    const [c, s] = [Math.cos(0.7), Math.sin(0.7)];
    const { x, y } = uneven;
    const turned = Array.from(x, (_, i) => [x[i] * c - y[i] * s, x[i] * s + y[i] * c] as const);
    const order = [2, 0, 3, 1];
    const anew = shapeFactorFinite({
      ...uneven,
      x: order.map((i) => turned[i][0]),
      y: order.map((i) => turned[i][1]),
      loaded: [1, 0],
    }).G;
    order.forEach((from, to) => {
      expect(anew[to]).toBeCloseTo(G[from], 12);
    });
  });

  it('do not change with the unit of length or of conductivity', () => {
    const G = shapeFactorFinite(uneven).G;
    const other = shapeFactorFinite({
      ...uneven,
      x: Array.from(uneven.x, (v) => 1000 * v),
      y: Array.from(uneven.y, (v) => 1000 * v),
      rc: 1000 * uneven.rc,
      R: 1000 * uneven.R,
      k: 7 * uneven.k,
      layers: uneven.layers.map(({ k, r1 }) => ({ k: 7 * k, r1: 1000 * r1 })),
      h: (7 * uneven.h) / 1000,
    }).G;
    other.forEach((g, i) => {
      expect(g).toBeCloseTo(G[i], 12);
    });
  });

  it('are reciprocal: core j warms core i as i warms j', () => {
    const warmedBy = [0, 1, 2, 3].map((j) => shapeFactorFinite({ ...uneven, loaded: [j] }).G);
    for (let i = 0; i < 4; i++) for (let j = 0; j < i; j++) expect(warmedBy[i][j]).toBeCloseTo(warmedBy[j][i], 12);
  });

  it('add up: all cores loaded are the sum of each alone', () => {
    const all = shapeFactorFinite({ ...uneven, loaded: [0, 1, 2, 3] }).G;
    const each = [0, 1, 2, 3].map((j) => shapeFactorFinite({ ...uneven, loaded: [j] }).G);
    all.forEach((g, i) => {
      expect(g).toBeCloseTo(
        each.reduce((sum, G) => sum + G[i], 0),
        12,
      );
    });
  });

  it('name the hottest loaded core', () => {
    const { G, hottest, core } = shapeFactorFinite(cable([5, 1.5, 0.7, 1.1], [0, 1, 2]));
    expect(core).toBe(1);
    expect(hottest).toBe(G[1]);
  });

  it('keep no memory of a call with more cores', () => {
    const three = cable([3, 1.5, 0.7, 0.9], [0, 1]);
    const before = shapeFactorFinite(three);
    shapeFactorFinite(cable([5, 2.5, 0.8, 1.2], [0, 1, 2, 3]));
    expect(shapeFactorFinite(three)).toEqual(before);
  });

  it('refuse cores that overlap, leave the body, are not there or are named twice', () => {
    const s = cable([3, 1.5, 0.7, 0.9], [0]);
    expect(() => shapeFactorFinite({ ...s, rc: 1.05 * (s.R - s.a) })).toThrow(/must lie/);
    expect(() => shapeFactorFinite({ ...s, R: s.a })).toThrow(/must lie/);
    expect(() => shapeFactorFinite({ ...s, loaded: [3] })).toThrow(/must lie/);
    expect(() => shapeFactorFinite({ ...s, loaded: [1, 1] })).toThrow(/must lie/);
  });
});

describe('the surface’s answer to a harmonic', () => {
  const gamma = (section: Pick<RoundSection, 'k' | 'layers' | 'h'>) => {
    const out = new Float64Array(5);
    surfaceResponse({ ...roundLayout(1, 1e-3), rc: 1e-4, loaded: [0], ...section }, 4, out);
    return [...out.slice(1)];
  };

  it('is −1 for an isothermal surface and +1 for an insulated one', () => {
    for (const g of gamma({ k: 0.2, layers: [], h: Infinity })) expect(g).toBe(-1);
    for (const g of gamma({ k: 0.2, layers: [], h: 0 })) expect(g).toBe(1);
  });

  it('is (1 − Y)/(1 + Y), Y = hR/(km), without a sheath', () => {
    gamma({ k: 0.2, layers: [], h: 50 }).forEach((g, i) => {
      const Y = (50 * 1e-3) / (0.2 * (i + 1));
      expect(g).toBeCloseTo((1 - Y) / (1 + Y), 14);
    });
  });

  it('is −(R/r1)^2m for a sheath of the body’s own stuff, isothermal outside', () => {
    gamma({ k: 0.2, layers: [{ k: 0.2, r1: 1.5e-3 }], h: Infinity }).forEach((g, i) => {
      expect(g).toBeCloseTo(-((1 / 1.5) ** (2 * (i + 1))), 14);
    });
  });

  it('does not change when a layer is cut in two', () => {
    const whole = gamma({ k: 0.2, layers: [{ k: 0.1, r1: 2e-3 }], h: 15 });
    const cut = gamma({
      k: 0.2,
      layers: [
        { k: 0.1, r1: 1.4e-3 },
        { k: 0.1, r1: 2e-3 },
      ],
      h: 15,
    });
    cut.forEach((g, i) => {
      expect(g).toBeCloseTo(whole[i], 13);
    });
  });
});
