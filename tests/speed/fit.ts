// A bench log of 2001 rows, five parameters freed, volts and one probe: time of one fit, beside the calibration loop.
import { type FitParameterId, fitAndJudge, fitLog, singleChanges } from '#engine';
import { bench, emptyLog, engineLog, ladder, lead } from '../engine/fit-logs.ts';
import { calibration, line, microseconds } from './clock.ts';

const truth = { R20: 0.0251, contact: 0.012, surface: 0.88, probeOffset: -1.1, probeLag: 22 };
const free: readonly FitParameterId[] = ['R20', 'contact', 'surface', 'probeOffset', 'probeLag'];

/** Prints the figures. */
export function fitFigures(): void {
  const log = engineLog(lead, emptyLog(ladder([0, 4, 8, 11, 0], 600, 1.5)), truth, 'speed');
  const problem = { scenario: lead, log, u: bench };
  const base = calibration();
  const figure = (what: string, work: () => unknown, more = '') => {
    const time = microseconds(work, 1, 5);
    line(what, `${(time / 1000).toFixed(0)} ms, ${(time / base).toFixed(0)} loops${more}`);
  };
  const { rows, groups, evaluations } = fitLog({ ...problem, free });
  line('calibration loop', `${base.toFixed(3)} µs`);
  figure(
    `fit of ${rows} rows, ${free.length} parameters`,
    () => fitLog({ ...problem, free }),
    `, ${groups} means, ${evaluations} runs of the model`,
  );
  figure('four single changes on the same log', () => singleChanges(problem));
  figure('the same log fitted early and judged late', () => fitAndJudge({ ...problem, free }));
}
