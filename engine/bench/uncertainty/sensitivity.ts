import { OutOfRange, within } from '../../errors.ts';
import { type Model, resultAt } from './model.ts';

const [ofU, ofValue, ofNothing] = [0.1, 1e-4, 1e-6]; // steps: parts of an uncertainty, of a value, of neither
const narrower = 0.1;
const mostTries = 6;
const alike = 1e-7; // of a slope: two steps that agree so well need no third

/** Central difference of fourth order over ±h and ±h/2: its error falls with h⁴. */
function difference(of: Model, i: number, h: number): number {
  const slope = (by: number) => (resultAt(of, [i, by]) - resultAt(of, [i, -by])) / (2 * by);
  return (4 * slope(h / 2) - slope(h)) / 3;
}

/** The difference over the widest step that a tenth of it hardly changes: wider ones meet the model's bend or its end, narrower ones rounding. */
function steadiest(of: Model, i: number, first: number): number {
  let [best, apart] = [Number.NaN, Number.POSITIVE_INFINITY];
  let last = difference(of, i, first);
  for (let tries = 1, h = first * narrower; tries < mostTries; tries++, h *= narrower) {
    const next = difference(of, i, h);
    if (Math.abs(next - last) < narrower * apart) [best, apart] = [last, Math.abs(next - last)];
    if (apart <= alike * Math.abs(best)) break;
    last = next;
  }
  return best;
}

/**
 * Sensitivity ∂f/∂x of input `i`: as given, or by central differences about the inputs' values. Steps begin at a tenth of
 * the uncertainty or a ten-thousandth of the value, whichever is more, and are narrowed tenfold until the difference is
 * steady. Refused where the model gives no number however near.
 */
export function sensitivityOf(of: Model, i: number): number {
  const input = of.inputs[i];
  if (!input) throw new OutOfRange('place of the input', i, [0, of.inputs.length - 1], '');
  if (input.sensitivity !== undefined) return input.sensitivity;
  const c = steadiest(of, i, Math.max(ofU * input.u, ofValue * Math.abs(input.value)) || ofNothing);
  within(`sensitivity to ${input.name}`, c, [-Number.MAX_VALUE, Number.MAX_VALUE], 'result per input');
  return c;
}
