import type { Statement } from '../heating/validity.ts';
import { cite } from './cited.ts';
import type { TimeLimit } from './disconnection.ts';
import type { Slowest } from './guard.ts';
import { greatestLoop, type Loop, leastVoltageFactor } from './loop.ts';
import { noRule, type RuleStep, type RuleVerdict, testStep, valueStep, verdictOf } from './rule-steps.ts';

/** Currents between which an acting current is looked for [A]. */
const least = 0.1;
const greatest = 1e6;

/**
 * Least current Ia [A] at which a device surely acts within `t` [s], by its slow edge; null where no current does, as far as
 * the standard says. By halving on a logarithmic scale to a part in 10¹²; `slowest` must not rise with current.
 */
export function actingCurrent(slowest: Slowest, t: number): number | null {
  const acts = (I: number) => (slowest(I) ?? Number.POSITIVE_INFINITY) <= t;
  if (!acts(greatest)) return null;
  let [low, high] = [least, greatest];
  if (acts(low)) return low;
  while (high / low > 1 + 1e-12) {
    const middle = Math.sqrt(low * high);
    if (acts(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Whether a fault clears in time. */
export interface Clearing extends RuleVerdict {
  /** Least fault current [A], and the longest the device may take on it [s]; null where its standard is silent. */
  readonly I: number;
  readonly t: number | null;
  /** Current that must flow [A] and the greatest loop that lets it [Ω]; null where no current is sure to be enough. */
  readonly Ia: number | null;
  readonly greatestLoop: number | null;
}

const rule = { name: 'a fault to earth is cleared in time', ...cite('iec60364-4-41', '411.4.4', 'seen') };

/**
 * Whether a fault in `loop` clears within `limit`: Zs ≤ Cmin U0/Ia, with Ia the least current at which `slowest` lies within
 * the time. IEC 60364-4-41 411.4.4 (BS 7671 411.4.4). Ohms, A and s.
 */
export function clearsInTime(loop: Loop, slowest: Slowest, limit: TimeLimit): Clearing {
  const { Zs, U0, least: I } = loop;
  const Ia = actingCurrent(slowest, limit.t);
  const most = Ia === null ? null : greatestLoop(U0, Ia, loop.Cmin);
  const t = slowest(I);
  const beside = { unit: 'Ω', aside: true };
  const steps: RuleStep[] = [
    ...ohms(loop),
    valueStep('fault', 'If', 'least fault current', I, leastVoltageFactor, 'Cmin · U0/Zs'),
    valueStep('time limit', 't', `longest time for ${limit.words}`, limit.t, limit, '', 's'),
    testStep('time', 'the device acts in time', ['t(If)', t], ['t', limit.t], limit, { unit: 's' }),
    testStep('loop limit', 'the loop is no larger than the greatest', ['Zs', Zs], ['Zs,max', most], rule, beside),
  ];
  return { ...verdictOf(rule, steps, statements), I, t, Ia, greatestLoop: most };
}

/** Every ohm of the loop, and their sum. */
function ohms({ Ze, Zs, parts }: Loop): RuleStep[] {
  const warm = cite('own', 'warm resistance', 'computed');
  const sum = ['Ze', ...parts.map((_, i) => `R${i + 1}`)].join(' + ');
  return [
    valueStep('origin', 'Ze', 'up to the origin', Ze, cite('user', 'the supply', 'our choice'), '', 'Ω'),
    ...parts.map((part, i) => valueStep(`part ${i + 1}`, `R${i + 1}`, part.name, part.warm, warm, '', 'Ω')),
    valueStep('loop', 'Zs', 'all the way round', Zs, rule, sum, 'Ω'),
  ];
}

const statements: readonly Statement[] = [
  {
    id: 'warm',
    text: 'The conductors are taken as warm as their limit. Cold, more current flows and the device acts sooner.',
  },
  {
    id: 'one fault',
    text: 'The fault itself is taken to have no resistance. A real fault has some, so less current flows.',
  },
];

const path = { name: 'an effective fault path', ...cite('nfpa70', '250.4(A)(5)', 'seen') };

/**
 * The North American question: the code asks for a fault path that opens the device, and gives no ohms and no time. The
 * verdict is `no rule` in numbers; the fault current [A] and the time that the device's standard guarantees [s] stand beside it.
 */
export function effectivePath(loop: Loop, slowest: Slowest): Clearing {
  const t = slowest(loop.least);
  return { ...noRule(path, [noOhms]), I: loop.least, t, Ia: null, greatestLoop: null };
}

const noOhms: Statement = {
  id: 'no ohms',
  text: 'The code asks for a path that opens the device. It sets no greatest loop and no time.',
};
