// Harm sets: one that follows a drag, and a matrix of 12 sizes, 4 metals, 5 places and 12 devices, on one core, beside the
// calibration loop of the same run.
import { buildCase, type Scenario } from '#engine';
import type { Device, DeviceFamily } from '#engine/protection/device.ts';
import { device } from '#engine/protection/devices.ts';
import { harmSet } from '#engine/protection/harm-set.ts';
import { harmSets } from '#engine/protection/harm-sets.ts';
import { mend } from '#engine/protection/mend.ts';
import { calibration, line, microseconds } from './clock.ts';

const sizes = [0.5, 0.75, 1, 1.25, 1.5, 2.5, 4, 6, 10, 16, 25, 35];
const metals = ['copper', 'cca10', 'aluminium', 'steel'] as const;
const places: readonly Scenario['surroundings'][] = [
  { kind: 'stillAir', ambient_degC: 25 },
  { kind: 'draught', ambient_degC: 25, speed_mPerS: 1 },
  { kind: 'clipped', ambient_degC: 30 },
  { kind: 'lagged', ambient_degC: 20, thickness_mm: 25, conductivity_WPerMK: 0.05 },
  { kind: 'coiled', ambient_degC: 20, drum_mm: 300, turns: 20, layers: 2 },
];
const families: readonly (readonly [DeviceFamily, number])[] = [
  ['bs1362', 3],
  ['bs1362', 13],
  ['gG', 6],
  ['gG', 16],
  ['gG', 32],
  ['B', 6],
  ['B', 16],
  ['C', 20],
  ['D', 32],
  ['iec60127T', 6.3],
  ['ul248', 15],
  ['ul489', 20],
];
const devices = families.map(([family, In]) => device(family, In) as Device);

const cable = (size_mm2: number, metal: (typeof metals)[number]): Scenario['cable'] => ({
  layout: 'round',
  cores: 3,
  loaded: 2,
  conductor: { metal, size_mm2 },
  insulation: { material: 'pvc70', thickness_mm: 0.8 },
  sheath: { material: 'pvc70', thickness_mm: 1 },
});
const caseIn = (surroundings: Scenario['surroundings'], size: number, metal: (typeof metals)[number]): Scenario => ({
  cable: cable(size, metal),
  surroundings,
  supply: [{ kind: 'current', I_A: 1 }],
});
const question = { prospective: 1000, Ib: 2 };

/** Every set of the matrix, from cold and from 2 A; returns how many intervals they hold together. */
function matrix(kind: 'rating' | 'shortTime'): number {
  let spans = 0;
  for (const size of sizes) {
    for (const metal of metals) {
      for (const place of places) {
        const of = buildCase(caseIn(place, size, metal));
        const limit = of.limits.find((one) => one.kind === kind);
        if (!limit) continue;
        for (const set of harmSets(of, devices, limit, question)) spans += set.spans.length;
      }
    }
  }
  return spans;
}

/** Prints the figures. */
export function harmSetFigures(): void {
  const base = calibration();
  line('calibration loop', `${base.toFixed(3)} µs`);
  const of = buildCase(caseIn(places[0] as Scenario['surroundings'], 1.5, 'copper'));
  for (const kind of ['rating', 'shortTime'] as const) {
    const limit = of.limits.find((one) => one.kind === kind);
    if (!limit) continue;
    for (const by of [device('bs1362', 13), device('B', 16), device('ul489', 20)] as Device[]) {
      const cold = microseconds(() => harmSet(of, by, limit, { prospective: 1000 }), 60);
      const both = microseconds(() => harmSet(of, by, limit, question), 60);
      line(
        `harm set, 1.5 mm², ${by.name}, ${kind} (2 ms wanted)`,
        `${(cold / 1000).toFixed(2)} ms cold, ${(both / 1000).toFixed(2)} ms with a load before, ${(both / base).toFixed(0)} loops`,
      );
    }
    const found = matrix(kind);
    const all = microseconds(() => matrix(kind), 1, 2);
    line(
      `matrix of 2880 harm sets, ${kind} (4 s wanted)`,
      `${(all / 1e6).toFixed(2)} s, ${(all / base / 1e3).toFixed(0)} thousand loops, ${found} intervals`,
    );
    const by = devices[1] as Device;
    const mended = microseconds(() => mend(of, by, limit, { prospective: 1000, Ib: 17 }), 2, 4);
    line(`what mends it, ${kind}`, `${(mended / 1000).toFixed(1)} ms`);
  }
}
