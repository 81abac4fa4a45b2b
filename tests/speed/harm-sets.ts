// Harm sets: one that follows a drag, and a matrix of 12 sizes, 4 metals, 5 places and 12 devices with what the rules say of
// each, on one core, beside the calibration loop of the same run.
import { buildCase, harmMatrix, matrixCases, matrixScenario, usualMatrix } from '#engine';
import type { Device } from '#engine/protection/device.ts';
import { device } from '#engine/protection/devices.ts';
import { harmSet } from '#engine/protection/harm-set.ts';
import { mend } from '#engine/protection/mend.ts';
import { calibration, line, microseconds } from './clock.ts';

const question = { prospective: 1000, Ib: 2 };

/** Every set of the usual matrix, from cold; returns how many intervals they hold together. */
function matrix(kind: 'rating' | 'shortTime'): number {
  let spans = 0;
  for (const { cells } of harmMatrix(usualMatrix('iec', kind, 30))) {
    for (const { gaps } of cells) spans += gaps.length;
  }
  return spans;
}

/** Prints the figures. */
export function harmSetFigures(): void {
  const base = calibration();
  line('calibration loop', `${base.toFixed(3)} µs`);
  const ask = usualMatrix('iec', 'rating', 30);
  const of = buildCase(matrixScenario(ask, { metal: 'copper', place: 'stillAir', size: 1.5 }));
  const by = device('bs1362', 13) as Device;
  for (const kind of ['rating', 'shortTime'] as const) {
    const limit = of.limits.find((one) => one.kind === kind);
    if (!limit) continue;
    for (const behind of [by, device('B', 16), device('ul489', 20)] as Device[]) {
      const cold = microseconds(() => harmSet(of, behind, limit, { prospective: 1000 }), 60);
      const both = microseconds(() => harmSet(of, behind, limit, question), 60);
      line(
        `harm set, 1.5 mm², ${behind.name}, ${kind} (2 ms wanted)`,
        `${(cold / 1000).toFixed(2)} ms cold, ${(both / 1000).toFixed(2)} ms with a load before, ${(both / base).toFixed(0)} loops`,
      );
    }
    const found = matrix(kind);
    const all = microseconds(() => matrix(kind), 1, 3);
    line(
      `matrix of ${matrixCases(ask)} harm sets, ${kind} (4 s wanted)`,
      `${(all / 1e6).toFixed(2)} s, ${(all / base / 1e3).toFixed(0)} thousand loops, ${found} intervals`,
    );
    const mended = microseconds(() => mend(of, by, limit, { prospective: 1000, Ib: 17 }), 2, 4);
    line(`what mends it, ${kind}`, `${(mended / 1000).toFixed(1)} ms`);
  }
}
