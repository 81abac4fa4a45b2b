import { describe, expect, it } from 'vitest';
import { shapeFactorImages } from '../../engine/cable/section-images.ts';
import { cable, cords } from './section-cables.ts';
import { referenceSolution } from './section-reference.ts';

describe('shape factors by images', () => {
  it('are ln(R/rc) for one centred core', () => {
    expect(shapeFactorImages({ x: [0], y: [0], rc: 1e-3, R: 3e-3, loaded: [0] }).hottest).toBeCloseTo(Math.log(3), 14);
  });

  it.each([2, 3, 4, 5])('agree with the closed form for a ring of %i cores, all loaded', (n) => {
    const s = cable(
      [n, 1.5, 0.7, 0.8],
      Array.from({ length: n }, (_, i) => i),
    );
    const { a, R, rc } = s;
    const closed = Math.log((R ** (2 * n) - a ** (2 * n)) / (n * a ** (n - 1) * rc * R ** n));
    for (const G of shapeFactorImages(s).G) expect(G).toBeCloseTo(closed, 12);
  });

  it('tend to the exact solution as conductors get thin, under an isothermal surface', () => {
    const s = { ...cable([3, 1.5, 0.7, 0], [0, 1], { h: Infinity }), rc: 2e-5 };
    const { G } = referenceSolution(s, 4, 32);
    shapeFactorImages(s).G.forEach((g, i) => {
      expect(g).toBeCloseTo(G[i], 3);
    });
  });

  it('are symmetric between source and place for cores not loaded', () => {
    const s = { x: [1e-3, -2e-3, 0.5e-3], y: [0.3e-3, 0.2e-3, -1.9e-3], rc: 4e-4, R: 4e-3 };
    for (const [i, j] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ] as const) {
      const there = shapeFactorImages({ ...s, loaded: [i] }).G[j];
      const back = shapeFactorImages({ ...s, loaded: [j] }).G[i];
      expect(there).toBeCloseTo(back, 13);
    }
  });

  it('give nothing where no core is loaded', () => {
    expect(shapeFactorImages({ x: [0], y: [0], rc: 1e-3, R: 3e-3, loaded: [] })).toEqual({
      G: new Float64Array([0]),
      hottest: 0,
      core: -1,
    });
  });
});

describe('the error of shape factors by images against an exact solution', () => {
  const twoAndThree = cords.filter(([cores]) => cores < 4);
  const errors = (cores: number, loaded: number[], surface: { h?: number }, sheathed = true) =>
    twoAndThree
      .filter(([n]) => n === cores)
      .map(([n, area, insulation, sheath]) => {
        const s = cable([n, area, insulation, sheathed ? sheath : 0], loaded, surface);
        return shapeFactorImages(s).hottest / referenceSolution(s, 6, 24).G[loaded[0]] - 1;
      });

  it.each([
    ['two cores under a real surface', 2, [0, 1], {}, true, -0.03, 0],
    ['two cores under a sheath of even temperature', 2, [0, 1], { h: Infinity }, true, 0.01, 0.08],
    ['two cores, even temperature at the outline the images assume', 2, [0, 1], { h: Infinity }, false, 0.07, 0.17],
    ['two of three cores under a real surface', 3, [0, 1], {}, true, -0.07, 0],
    ['three cores under a real surface', 3, [0, 1, 2], {}, true, 0.07, 0.16],
    ['one of two cores under a real surface', 2, [0], {}, true, -0.22, -0.2],
  ] as const)('%s', (_, cores, loaded, surface, sheathed, low, high) => {
    for (const error of errors(cores, [...loaded], surface, sheathed)) {
      expect(error).toBeGreaterThan(low);
      expect(error).toBeLessThan(high);
    }
  });

  it('is on the unsafe side, by 15 to 20 %, for three neighbours of five under a real surface', () => {
    for (const cord of cords.filter(([cores]) => cores === 5)) {
      const s = cable(cord, [0, 1, 2]);
      const error = shapeFactorImages(s).hottest / referenceSolution(s, 6, 24).G[1] - 1;
      expect(error).toBeGreaterThan(-0.2);
      expect(error).toBeLessThan(-0.15);
    }
  });
});
