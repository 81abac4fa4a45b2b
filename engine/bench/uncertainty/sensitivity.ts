import { OutOfRange } from '../../errors.ts';
import { type Model, resultAt } from './model.ts';

const [ofU, ofValue, ofNothing] = [1e-2, 1e-4, 1e-6]; // steps: parts of an uncertainty, of a value, of neither
const narrower = 0.1;
const mostTries = 5;

/** Central difference of fourth order over ±h and ±h/2: its error falls with h⁴. */
function difference(of: Model, i: number, h: number): number {
  const slope = (by: number) => (resultAt(of, [i, by]) - resultAt(of, [i, -by])) / (2 * by);
  return (4 * slope(h / 2) - slope(h)) / 3;
}

/**
 * Sensitivity ∂f/∂x of input `i`: as given, or by central differences about the inputs' values. Steps are a hundredth of
 * the uncertainty or a ten-thousandth of the value, whichever is more; they are narrowed tenfold where the model gives no
 * number so far out. Refused where it gives none however near.
 */
export function sensitivityOf(of: Model, i: number): number {
  const input = of.inputs[i];
  if (!input) throw new OutOfRange('place of the input', i, [0, of.inputs.length - 1], '');
  if (input.sensitivity !== undefined) return input.sensitivity;
  let h = Math.max(ofU * input.u, ofValue * Math.abs(input.value)) || ofNothing;
  for (let tries = 0; tries < mostTries; tries++, h *= narrower) {
    const c = difference(of, i, h);
    if (Number.isFinite(c)) return c;
  }
  throw new OutOfRange(
    `sensitivity to ${input.name}`,
    Number.NaN,
    [-Number.MAX_VALUE, Number.MAX_VALUE],
    'result per input',
  );
}
