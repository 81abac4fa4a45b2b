// What a conductor is, with what to measure next: 50 ms wanted of it all.
import { type Evidence, identify } from '#engine';
import { measuredLead } from '../study/leads.ts';
import { calibration, line, microseconds } from './clock.ts';

const { evidence, mass } = measuredLead('speed');
const cases: [string, Evidence][] = [
  ['all there is', { ...evidence, mass }],
  ['resistance, two-terminal', { ...evidence, resistance: { ...evidence.resistance!, method: 'two-terminal' } }],
  ['a bundle alone', { bundle: { value: 1.5e-3, u: 3e-5 } }],
  ['nothing', {}],
];

/** Prints the figures. */
export function identifyFigures(): void {
  const base = calibration();
  for (const [name, given] of cases) {
    const time = microseconds(() => identify(given), 5, 5);
    line(
      `identify, ${name} (50 ms wanted)`,
      `${(time / 1000).toFixed(1)} ms, ${(time / base / 1e3).toFixed(1)} thousand loops`,
    );
  }
}
