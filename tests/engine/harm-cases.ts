import fc from 'fast-check';
import { constructions } from '#engine/cable/constructions.ts';
import type { ThermalCase } from '#engine/heating/thermal-case.ts';
import type { Limit } from '#engine/material/limits.ts';
import type { Device } from '#engine/protection/device.ts';
import { deviceFamilies } from '#engine/protection/devices.ts';
import type { HarmSpan } from '#engine/protection/harm-spans.ts';
import type { Scenario } from '#engine/scenario/schema.ts';

const share = (least: number, most: number) =>
  fc.integer({ min: 0, max: 1000 }).map((i) => +(least + (i / 1000) * (most - least)).toPrecision(4));

/** Places that a cable may lie in, without their ambient. */
export const anyPlace = fc.oneof(
  fc.constant({ kind: 'stillAir' as const }),
  share(0.1, 5).map((speed_mPerS) => ({ kind: 'draught' as const, speed_mPerS })),
  fc.tuple(share(5, 100), share(0.03, 0.1)).map(([thickness_mm, conductivity_WPerMK]) => ({
    kind: 'lagged' as const,
    thickness_mm,
    conductivity_WPerMK,
  })),
  fc.constant({ kind: 'clipped' as const }),
);
export type AnyPlace = typeof anyPlace extends fc.Arbitrary<infer T> ? T : never;

export const ambients = share(-10, 45);

/** Cords and cables of the table. */
export const tabledCable = fc
  .constantFrom(...constructions)
  .map(({ table, cores, gauge, size }): Scenario['cable'] => ({
    table,
    cores,
    ...(gauge ? { size_AWG: size } : { size_mm2: size }),
  }));

/** One make of cable by its own values, in any size. */
export const anyMake = fc
  .record({
    layout: fc.constantFrom('single' as const, 'round' as const, 'flat' as const),
    metal: fc.constantFrom('copper' as const, 'aluminium' as const, 'cca10' as const, 'steel' as const),
    insulation: fc.constantFrom('pvc70' as const, 'xlpe' as const, 'rubber60' as const),
    thickness_mm: share(0.5, 1.5),
    sheath_mm: share(0.6, 2),
  })
  .map(({ layout, metal, insulation, thickness_mm, sheath_mm }) => (size_mm2: number): Scenario['cable'] => ({
    layout,
    ...(layout === 'single' ? {} : { cores: layout === 'flat' ? 2 : 3, loaded: 2 }),
    conductor: { metal, size_mm2, class: 2 },
    insulation: { material: insulation, thickness_mm },
    sheath: { material: 'pvc70', thickness_mm: sheath_mm },
  }));

export const anyFamily = fc.constantFrom(...deviceFamilies);
export const anyDevice = anyFamily.chain(({ ratings, make }) => fc.constantFrom(...ratings).map(make));
export const prospectives = fc.constantFrom(100, 300, 1000, 6000);

/** A scenario for its heat alone; the supply is not used. */
export const caseOf = (cable: Scenario['cable'], place: AnyPlace, ambient_degC: number): Scenario => ({
  cable,
  surroundings: { ...place, ambient_degC } as Scenario['surroundings'],
  supply: [{ kind: 'current', I_A: 1 }],
});

/** The continuous limit and, where there is one, that of a short circuit. */
export const limitsAsked = (of: ThermalCase): Limit[] =>
  of.limits.filter(({ kind }) => kind === 'rating' || kind === 'shortTime' || kind === 'touch');

/** Harm that `inner` has and `outer` lacks, as intervals; edges may differ by the ratio `slack`, less one. */
export function missing(inner: readonly HarmSpan[], outer: readonly HarmSpan[], slack = 4e-3): [number, number][] {
  return inner.flatMap(({ from, to }) => {
    let left = from.I * (1 + slack);
    const gaps: [number, number][] = [];
    for (const span of outer) {
      if (span.from.I > left && span.from.I < to.I) gaps.push([left, span.from.I]);
      if (span.from.I <= Math.max(left, from.I)) left = Math.max(left, span.to.I * (1 + slack));
      else if (span.from.I < to.I) left = Math.max(left, span.to.I * (1 + slack));
    }
    if (left < to.I * (1 - slack)) gaps.push([left, to.I]);
    return gaps.filter(([a, b]) => b > a * (1 + 2 * slack));
  });
}

/** Whether the points of a device's rating were found, beyond its conventional currents. */
export const hasGates = ({ by }: Device): boolean => by.length > 1;
