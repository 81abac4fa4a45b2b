import type { RuleStep } from '#engine';
import type { AmpereMark } from '../../charts/amperes/ampere-mark.ts';

const asks = ['load', 'continuous', 'device', 'needed'];
const gives = ['table', 'derated', 'terminals', 'in place'];
const strong = ['load', 'device', 'in place'];

/** The currents that a step puts on the line: its own, or the two it compares where no other step has them. */
function marksOf(step: RuleStep): AmpereMark[] {
  if (step.kind === 'value') {
    const side = asks.includes(step.id) ? 'asks' : gives.includes(step.id) ? 'gives' : undefined;
    return side ? [{ id: step.id, symbol: step.symbol, I: step.value, side, strong: strong.includes(step.id) }] : [];
  }
  const { id, left, right } = step;
  const cap: AmpereMark = { id: `${id} most`, symbol: right.symbol, I: right.value, side: 'gives', strong: false };
  if (id === 'acting') return [{ id, symbol: left.symbol, I: left.value, side: 'asks', strong: false }, cap];
  return id === 'small conductor' || id === 'rewirable' ? [cap] : [];
}

/** The currents of the steps that stand open, and the greatest of all steps [A]. */
export function ampereMarks(
  steps: readonly RuleStep[],
  open: readonly string[],
): { marks: AmpereMark[]; most: number } {
  const known = (list: AmpereMark[]) => list.filter(({ I }) => Number.isFinite(I));
  const all = known(steps.flatMap(marksOf));
  const shown = known(steps.filter(({ id }) => open.includes(id)).flatMap(marksOf));
  const Iz = shown.find(({ id }) => id === 'in place')?.I;
  const marks = shown.filter(({ id, I }) => !(id === 'derated' && I === Iz));
  return { marks, most: Math.max(1, ...all.map(({ I }) => I)) };
}
