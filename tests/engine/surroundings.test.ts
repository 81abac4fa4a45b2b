import { describe, expect, it } from 'vitest';
import { cableOf } from '#engine/cable/cable.ts';
import type { SurroundingsSpec } from '#engine/scenario/schema.ts';
import { arrangements, clipped, draught, stillAir } from '#engine/surroundings/air-laws.ts';
import { coilEffect, layersFor } from '#engine/surroundings/coil.ts';
import {
  film,
  nusseltChurchillBernstein,
  nusseltChurchillChu,
  nusseltKuehnGoldstein,
} from '#engine/surroundings/convection.ts';
import { behindResistance, stefanBoltzmann } from '#engine/surroundings/law.ts';
import { outsideOf } from '#engine/surroundings/outside.ts';

const Ta = 293.15;
const shedding = (diameter: number, emissivity = 0.9) => ({ diameter, perimeter: Math.PI * diameter, emissivity, Ta });
const correlations = ['kuehnGoldstein', 'churchillChu'] as const;
const diameters = [1e-3, 3e-3, 8e-3, 30e-3];

const laws: [string, (T: number) => number][] = diameters.flatMap((d) => [
  ...correlations.flatMap((correlation): [string, (T: number) => number][] => [
    [`still air, ${correlation}, ${d * 1e3} mm`, stillAir(shedding(d), correlation)],
    [`0.3 m/s, ${correlation}, ${d * 1e3} mm`, draught(shedding(d), 0.3, correlation)],
    [`10 m/s, ${correlation}, ${d * 1e3} mm`, draught(shedding(d), 10, correlation)],
  ]),
  [`clipped, ${d * 1e3} mm`, clipped(d, arrangements.clipped, Ta)],
  [`trefoil, ${d * 1e3} mm`, clipped(d, arrangements.trefoil, Ta)],
]);

describe('laws of the surface', () => {
  it.each(laws)('shed nothing at ambient, and without a jump there: %s', (_, law) => {
    expect(law(Ta)).toBe(0);
    expect(Math.abs(law(Ta + 1e-9))).toBeLessThan(1e-8);
    expect(Math.abs(law(Ta - 1e-9))).toBeLessThan(1e-8);
  });

  it.each(laws)(
    'shed the more the hotter they are, from −60 to 1500 °C, and take heat in below ambient: %s',
    (_, law) => {
      let before = Number.NEGATIVE_INFINITY;
      for (let T = 213; T < 1773; T += T < 400 ? 0.5 : 5) {
        const shed = law(T);
        expect(shed).toBeGreaterThan(before);
        before = shed;
        expect(Math.sign(shed)).toBe(Math.sign(T - Ta));
      }
    },
  );

  it.each(diameters)('of a draught are those of still air below 0.01 m/s, and no less above: %f m', (d) => {
    for (const correlation of correlations) {
      const still = stillAir(shedding(d), correlation);
      for (const T of [280, 294, 320, 400, 900]) {
        expect(draught(shedding(d), 0, correlation)(T)).toBe(still(T));
        expect(draught(shedding(d), 0.0099, correlation)(T)).toBe(still(T));
        let before = Math.abs(still(T));
        for (const speed of [0.01, 0.05, 0.2, 1, 5, 60]) {
          const shed = Math.abs(draught(shedding(d), speed, correlation)(T));
          expect(shed).toBeGreaterThanOrEqual(before);
          before = shed;
        }
      }
    }
  });

  it.each(diameters)('jump little where a draught begins to count: %f m', (d) => {
    const still = stillAir(shedding(d), 'kuehnGoldstein')(323);
    const slow = draught(shedding(d), 0.01, 'kuehnGoldstein')(323);
    expect(slow / still - 1).toBeLessThan(0.02);
  });

  it('radiate by Stefan and Boltzmann beside their convection', () => {
    const black = stillAir(shedding(5e-3, 1), 'kuehnGoldstein');
    const bright = stillAir(shedding(5e-3, 0), 'kuehnGoldstein');
    const radiated = Math.PI * 5e-3 * stefanBoltzmann * (500 ** 4 - Ta ** 4);
    expect(black(500) - bright(500)).toBeCloseTo(radiated, 10);
  });

  it('of IEC 60287 grow with the five-fourths power of the rise', () => {
    const law = clipped(10e-3, arrangements.single, Ta);
    expect(law(Ta + 32) / law(Ta + 2)).toBeCloseTo(16 ** 1.25, 10);
    expect(law(Ta + 1)).toBeCloseTo(Math.PI * 10e-3 * (0.21 / 10e-3 ** 0.6 + 3.94), 10);
  });
});

describe('still air, written out for speed', () => {
  it.each([1e-3, 5e-3, 30e-3])('is the film and the correlation it stands for, at %f m', (d) => {
    const law = stillAir(shedding(d, 0), 'kuehnGoldstein');
    for (const T of [250, 294, 320, 400, 700, 1300]) {
      const { Ra, Pr, k } = film(d, T, Ta);
      expect(law(T) / (Math.PI * nusseltKuehnGoldstein(Ra, Pr) * k * (T - Ta))).toBeCloseTo(1, 12);
    }
  });
});

describe('Nusselt numbers', () => {
  it('of Kuehn and Goldstein fall to nothing with Ra, and never with a jump', () => {
    expect(nusseltKuehnGoldstein(0, 0.7)).toBe(0);
    let before = 0;
    for (let Ra = 1e-12; Ra < 1e13; Ra *= 1.05) {
      const Nu = nusseltKuehnGoldstein(Ra, 0.7);
      expect(Nu).toBeGreaterThan(before);
      if (before > 0) expect(Nu / before).toBeLessThan(1.02);
      before = Nu;
    }
  });

  it('of Kuehn and Goldstein are the printed formula, term by term', () => {
    for (const Ra of [1e-3, 10, 1e3, 1e6, 1e9, 1e11]) {
      const laminar = 0.518 * Ra ** 0.25 * (1 + (0.559 / 0.71) ** 0.6) ** (-5 / 12);
      const b = (laminar ** 15 + (0.1 * Ra ** (1 / 3)) ** 15) ** (1 / 15);
      expect(nusseltKuehnGoldstein(Ra, 0.71) / (2 / Math.log(1 + 2 / b))).toBeCloseTo(1, 12);
    }
  });

  it('of Churchill and Chu are the printed formula', () => {
    for (const Ra of [1, 1e3, 1e7, 1e11]) {
      const printed = (0.6 + (0.387 * Ra ** (1 / 6)) / (1 + (0.559 / 0.71) ** (9 / 16)) ** (8 / 27)) ** 2;
      expect(nusseltChurchillChu(Ra, 0.71) / printed).toBeCloseTo(1, 12);
    }
  });

  it('of Churchill and Chu lie 10 to 20 per cent lower at the size of cords', () => {
    for (const Ra of [1e2, 1e3, 1e4]) {
      const ratio = nusseltChurchillChu(Ra, 0.7) / nusseltKuehnGoldstein(Ra, 0.7);
      expect(ratio).toBeGreaterThan(0.79);
      expect(ratio).toBeLessThan(0.91);
    }
  });

  it('of Churchill and Bernstein rise with the speed', () => {
    let before = 0;
    for (let Re = 0.1; Re < 1e6; Re *= 1.5) {
      expect(nusseltChurchillBernstein(Re, 0.7)).toBeGreaterThan(before);
      before = nusseltChurchillBernstein(Re, 0.7);
    }
  });

  it('take the film between surface and ambient, whichever is hotter', () => {
    expect(film(5e-3, 350, 300)).toEqual(film(5e-3, 300, 350));
    expect(film(10e-3, 350, 300).Ra / film(5e-3, 350, 300).Ra).toBeCloseTo(8, 12);
  });
});

describe('a temperature behind a resistance', () => {
  it.each(laws)('carries the same heat through the resistance as it sheds: %s', (_, law) => {
    for (const R of [1e-6, 0.1, 3, 50, 1e4]) {
      for (const Ti of [230, 293.1500001, 294, 330, 600, 1400]) {
        const T = behindResistance(law, Ti, R, Ta);
        expect(T).toBeGreaterThanOrEqual(Math.min(Ti, Ta));
        expect(T).toBeLessThanOrEqual(Math.max(Ti, Ta));
        expect(Math.abs(Ti - T - R * law(T))).toBeLessThan(1e-7 * Math.max(1, R));
      }
    }
  });
});

const cable = cableOf({ table: 'H05VV-F', cores: 3, size_mm2: 1.5 });
const De = 2 * cable.outerRadius;

describe('a coil', () => {
  const coil = { drum: 0.15, turns: 14, layers: 4, length: 30, De, k: 0.17, openFlanges: false };

  it.each([0.3, 1, 2, 3.7, 8])('holds the length that so many layers need: %f', (layers) => {
    const length = Math.PI * layers * 14 * (0.15 + layers * De);
    expect(layersFor(length, 0.15, 14, De)).toBeCloseTo(layers, 10);
  });

  it('sheds by no more than the cable’s own surface, and by less the more layers there are', () => {
    let before = Number.POSITIVE_INFINITY;
    for (let layers = 0.05; layers < 20; layers *= 1.2) {
      const length = Math.PI * layers * 14 * (0.15 + layers * De);
      const { perimeter, resistance, diameter } = coilEffect({ ...coil, layers, length });
      expect(perimeter).toBeLessThanOrEqual(Math.PI * De * (1 + 1e-12));
      expect(perimeter).toBeLessThanOrEqual(before);
      expect(resistance).toBeGreaterThanOrEqual(0);
      expect(diameter).toBeCloseTo(0.15 + 2 * layers * De, 12);
      before = perimeter;
    }
  });

  it('of one layer has no resistance of its own', () => {
    const length = Math.PI * 14 * (0.15 + De);
    expect(coilEffect({ ...coil, layers: 1, length }).resistance).toBe(0);
  });

  it.each([2, 4, 9])(
    'of %i layers drops what heat made evenly in its body drops on the way out, a turn’s own half left out',
    (layers) => {
      const length = Math.PI * layers * 14 * (0.15 + layers * De);
      const [a, b] = [0.075, 0.075 + layers * De];
      // heat of 1 W/m from each De² of the winding; nothing goes inward: dT/dr = (r² − a²)/(2 De² k r), by Simpson's rule
      const slope = (r: number) => (r * r - a * a) / (2 * De * De * 0.17 * r);
      const n = 200;
      const h = (b - a) / n;
      let sum = slope(a) + slope(b);
      for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * slope(a + i * h);
      const { resistance } = coilEffect({ ...coil, layers, length });
      expect(resistance).toBeCloseTo((sum * h) / 3 - 1 / (2 * 0.17), 8);
    },
  );

  it('with open flanges sheds by their two rings as well', () => {
    const shut = coilEffect(coil);
    const open = coilEffect({ ...coil, openFlanges: true });
    const [a, b] = [0.075, 0.075 + 4 * De];
    expect(open.perimeter - shut.perimeter).toBeCloseTo((2 * Math.PI * (b * b - a * a)) / 30, 12);
  });

  it('refuses a length that does not fit', () => {
    expect(() => coilEffect({ ...coil, length: 1.06 * Math.PI * 4 * 14 * (0.15 + 4 * De) })).toThrow(
      /length on the drum/,
    );
  });
});

describe('what lies outside a cable', () => {
  const grounds: SurroundingsSpec[] = [
    { kind: 'stillAir', ambient_degC: 20 },
    { kind: 'draught', ambient_degC: 20, speed_mPerS: 1 },
    { kind: 'lagged', ambient_degC: 20, thickness_mm: 20, conductivity_WPerMK: 0.04 },
    { kind: 'clipped', ambient_degC: 20 },
    { kind: 'coiled', ambient_degC: 20, drum_mm: 150, turns: 14, wound_m: 30 },
    { kind: 'coiled', ambient_degC: 20, drum_mm: 150, turns: 14, wound_m: 3 },
  ];

  it.each(grounds)('sheds at its outside what leaves its last solid: $kind', (spec) => {
    const outside = outsideOf(spec, cable, 30);
    expect(outside.Ta).toBe(293.15);
    for (const T of [230, 293.15, 293.2, 320, 400, 1000]) {
      const own = outside.outsideOf(T);
      expect(own).toBeGreaterThanOrEqual(Math.min(T, 293.15));
      expect(own).toBeLessThanOrEqual(Math.max(T, 293.15));
      expect(outside.law(own)).toBeCloseTo(outside.flow(T), 6);
      expect(own + outside.flow(T) * outside.series).toBeCloseTo(T, 8);
    }
  });

  it('of a lagged cable is a ring from its surface on', () => {
    const { rings } = outsideOf(grounds[2] as SurroundingsSpec, cable, 1);
    expect(rings.map(({ r0, r1 }) => [r0, r1])).toEqual([[cable.outerRadius, cable.outerRadius + 0.02]]);
  });
});
