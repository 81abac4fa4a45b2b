import { combined } from '../../bench/identify/student.ts';
import { metals } from '../../material/metals.ts';
import { amount, given, plainNumber, rounded } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { finders, fourWireCaution } from './bench-words.ts';

// Q66: how well R' is known, from how well volts, amps, length and temperature are.

interface Case {
  readonly lead: string;
  /** In tenths of a per cent: volts, amps, length. */
  readonly U: number;
  readonly I: number;
  readonly L: number;
  /** [K] */
  readonly T: number;
}

const part = 0.1; // as the curriculum allows an uncertainty

function drawnCase(random: Random): Case | null {
  const drawn = {
    lead: random.pick(finders),
    U: random.whole(1, 12),
    I: random.whole(2, 12),
    L: random.whole(2, 20),
    T: random.pick([0.5, 1, 1.5, 2, 3]),
  };
  const parts = partsOf(drawn);
  const sum = parts.reduce((all, one) => all + one, 0);
  const whole = uncertaintyOf(drawn);
  // the sum, and the greatest part alone, are well away from what is right
  return sum > (1 + 3 * part) * whole && Math.max(...parts) < whole / (1 + 2.1 * part) ? drawn : null;
}

const alpha = rounded(metals.copper.alpha20.value, 3);

/** The four parts, each as a share of R' [1]. */
const partsOf = ({ U, I, L, T }: Case) => [U / 1e3, I / 1e3, L / 1e3, alpha * T];
const uncertaintyOf = (drawn: Case) => combined(partsOf(drawn).map((u) => ({ u }))).u;

const percent = (share: number, figures = 2) => amount(100 * share, figures, '%');
const tenths = (count: number) => given(count / 10, '%');

function answerOf(drawn: Case): NumberAnswer {
  const value = uncertaintyOf(drawn);
  const tolerance = { kind: 'relative', part } as const;
  return { value, kind: 'ratio', unit: '%', tolerance, figures: 2, text: percent(value) };
}

const law = formula(
  String.raw`u = \sqrt{u_U^2 + u_I^2 + u_L^2 + (\alpha u_\theta)^2}`,
  'U is the root of four squares added: of volts, of amps, of length, and of alpha times the temperature’s.',
);

function built(drawn: Case, _practice: Practice): BuiltNumber {
  const answer = answerOf(drawn);
  const { lead, U, I, L, T } = drawn;
  const parts = partsOf(drawn);
  const sum = parts.reduce((all, one) => all + one, 0);
  return {
    kind: 'number',
    stem: [
      words`${lead} was measured with four wires, and brought to the reference temperature with ${quantity(plainNumber(alpha, 3))} for each kelvin.`,
      words`Each reading has a standard uncertainty of its own. Volts have ${quantity(tenths(U))}, amps ${quantity(tenths(I))} and length ${quantity(tenths(L))}. The temperature is known to ${quantity(given(T, 'K'))}.`,
      words`None of the four has to do with another. What is the standard uncertainty of the resistance for each length, as a share of it?`,
    ],
    ask: 'In %. Two figures are enough.',
    scenarios: [],
    hints: [
      words`First make the fourth a share as well: kelvin times the coefficient.`,
      words`Errors that know nothing of each other seldom all go one way. So they do not add straight.`,
      words`Square each share, add the squares, and take the root.`,
    ],
    solution: [
      words`The temperature’s part is ${quantity(percent(alpha * T))} of the resistance.`,
      words`${law}`,
      words`The root of the four squares is ${quantity(answer.text)}.`,
      words`Added straight they would make ${quantity(percent(sum))}, as if all four were off the same way at once.`,
      words`The greatest part rules: ${quantity(percent(Math.max(...parts)))}. To know the result better, improve that one.`,
    ],
    look: 'Did you add the shares straight, or their squares? Did the kelvin become a share first?',
    cautions: [fourWireCaution],
    answer,
    wrong: [],
  };
}

/** How Q66 is drawn and built. */
export const howSureSpec: TemplateSpec<Case> = {
  id: 'Q66',
  version: 1,
  lesson: '5.1',
  kind: 'number',
  title: 'How well it is known',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['5.1 give R′ with its uncertainty'],
  misconceptions: [],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: finders[0], U: 2, I: 5, L: 5, T: 1 }],
    na: [{ lead: finders[0], U: 2, I: 5, L: 5, T: 1 }],
  },
  build: built,
};

/** Q66: the uncertainty of R' from its four parts. */
export const howSure = defineTemplate(howSureSpec);
