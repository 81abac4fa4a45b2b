import { combined } from '../../bench/identify/student.ts';
import { settledAt } from '../carrying.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, riseText, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChoosePart, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { type BenchLog, drawnLog, logFacts, logScenario } from './bench-log.ts';
import { benchCaution } from './bench-words.ts';

// Q70d: at which plateaus readings and prediction agree, within two uncertainties.

interface Case extends BenchLog {
  /** Standard uncertainty of the prediction and of the reading, in tenths of a kelvin. */
  readonly predicted_dK: number;
  readonly measured_dK: number;
  /** How far the reading lies from the prediction at each of three steps [K]. */
  readonly off: readonly [number, number, number];
  readonly deal: number;
}

/** Currents of the steps, as shares of the last. */
const steps = [0.5, 0.75, 1] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const log = drawnLog(random, practice, random.whole(960, 1800));
  if (!log || log.I_A < 8) return null;
  const off = steps.map(() => random.whole(-9, 9)) as [number, number, number];
  const drawn = {
    ...log,
    predicted_dK: random.whole(8, 25),
    measured_dK: random.whole(5, 20),
    off,
    deal: random.whole(0, mostDeals),
  };
  const { most, plateaus } = factsOf(drawn, practice);
  const plain = off.every((one) => Math.abs(Math.abs(one) - most) > 0.3);
  const some = new Set(off.map((one) => Math.abs(one) <= most)).size === 2;
  // the sum of both, not doubled, or each alone would lead to another answer at one step at least
  return plain && some && plateaus.every(({ reads, ambient }) => reads > ambient) ? drawn : null;
}

function factsOf(drawn: Case, practice: Practice) {
  const parts = [drawn.predicted_dK, drawn.measured_dK].map((one) => ({ u: one / 10 }));
  const both = combined(parts).u;
  const plateaus = steps.map((share, i) => {
    const I = Math.round(2 * share * drawn.I_A) / 2;
    const predicted = Math.round(settledAt(logScenario(drawn, practice, I)));
    return {
      I,
      predicted,
      reads: predicted + (drawn.off[i] as number),
      off: drawn.off[i] as number,
      ambient: drawn.ambient_degC,
    };
  });
  return { both, most: 2 * both, plateaus };
}

const kelvins = (tenths: number) => given(tenths / 10, 'K');

function partsOf(drawn: Case, practice: Practice): ChoosePart[] {
  const { most, plateaus } = factsOf(drawn, practice);
  return plateaus.map(({ I, off }): ChoosePart => {
    const agrees = Math.abs(off) <= most;
    const apart = riseText(Math.abs(off));
    const said: Said = agrees
      ? {
          trueOf: off === 0 ? 'the two are the same here.' : `the two are ${apart} apart.`,
          whyNot: `Two uncertainties of both together are ${amount(most, 2, 'K')}. So much may be chance.`,
          ask: 'How far apart may the two be by chance?',
        }
      : {
          trueOf: 'the two are near each other.',
          whyNot: `They are ${apart} apart. Two uncertainties of both together are ${amount(most, 2, 'K')}, which is less.`,
          ask: 'How far apart may the two be by chance?',
        };
    const options = (['agrees', 'differs'] as const).map((id) => ({
      id,
      text: id === 'agrees' ? 'Agrees' : 'Does not agree',
      ...((id === 'agrees') === agrees ? {} : { said }),
    }));
    return { id: `at ${I}`, label: `At ${given(I, 'A')}`, options, right: agrees ? 'agrees' : 'differs' };
  });
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { both, most, plateaus } = factsOf(drawn, practice);
  const { marked } = logFacts(drawn, practice);
  const agreeing = plateaus.filter(({ off }) => Math.abs(off) <= most).map(({ I }) => given(I, 'A'));
  const text = `readings and prediction agree at ${agreeing.join(' and ')}, and not elsewhere.`;
  const told = plateaus.map(
    ({ I, predicted, reads }) =>
      words`At ${quantity(given(I, 'A'))} it was predicted to settle at ${quantity(temperatureText(predicted, practice))}, and reads ${quantity(temperatureText(reads, practice))}.`,
  );
  return {
    kind: 'choose',
    stem: [
      words`${drawn.lead}, marked ${quantity(marked)}, was predicted, locked and then run in three steps at ${quantity(temperatureText(drawn.ambient_degC, practice))}.`,
      ...told,
      words`Each prediction has a standard uncertainty of ${quantity(kelvins(drawn.predicted_dK))}, each reading one of ${quantity(kelvins(drawn.measured_dK))}. They agree where they differ by no more than two uncertainties of both together. Where do they?`,
    ],
    ask: 'Choose one in each part.',
    parts: partsOf(drawn, practice),
    answer: { text },
    scenarios: [{ name: 'its last step', scenario: logScenario(drawn, practice) }],
    hints: [
      words`Two uncertainties that know nothing of each other add as squares.`,
      words`Double what you get: that is how far apart the two may be.`,
      words`Then take each step’s difference, either way.`,
    ],
    solution: [
      words`Both together have ${quantity(amount(both, 2, 'K'))}. Twice that is ${quantity(amount(most, 2, 'K'))}.`,
      ...plateaus.map(
        ({ I, off }) =>
          words`At ${quantity(given(I, 'A'))} they are ${quantity(riseText(Math.abs(off)))} apart: ${Math.abs(off) <= most ? 'within' : 'outside'}.`,
      ),
      words`So ${text}`,
      words`Where they do not agree, the report says so, and does not rest on the prediction.`,
    ],
    look: 'Work out the one width first, then compare each step with it.',
    cautions: [benchCaution],
  };
}

/** How Q70d is drawn and built. */
export const plateausAgreeSpec: TemplateSpec<Case> = {
  id: 'Q70d',
  version: 1,
  lesson: '5.4',
  kind: 'choose',
  title: 'Prediction beside reading',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.4 write verdict, evidence, limits, action'],
  misconceptions: [],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        ...{ lead: 'A lead from a polytunnel', cord: 'C150', share: 1600, doubt: 9, ambient_degC: 20, I_A: 15 },
        ...{ predicted_dK: 15, measured_dK: 10, off: [1, -2, -7], deal: 1 },
      },
    ],
    na: [
      {
        ...{ lead: 'A lead from a polytunnel', cord: 'A16', share: 1600, doubt: 9, ambient_degC: 20, I_A: 13 },
        ...{ predicted_dK: 15, measured_dK: 10, off: [1, -2, -7], deal: 1 },
      },
    ],
  },
  build: built,
};

/** Q70d: where readings and prediction agree. */
export const plateausAgree = defineTemplate(plateausAgreeSpec);
