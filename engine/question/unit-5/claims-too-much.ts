import { mostDeals } from '../deal.ts';
import { given, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { type BenchLog, drawnLog, equalText, logFacts, logScenario, rated_degC, settlesText } from './bench-log.ts';
import { benchCaution, keepOutCaution } from './bench-words.ts';

// Q70b: which sentence of a report claims more than its log shows.

interface Case extends BenchLog {
  /** Which of the sentences that claim too much. */
  readonly claim: number;
  readonly deal: number;
}

const claims = 6;

function drawnCase(random: Random, practice: Practice): Case | null {
  const log = drawnLog(random, practice, random.whole(960, 2400));
  return log && { ...log, claim: random.whole(0, claims - 1), deal: random.whole(0, mostDeals) };
}

/** A sentence that claims too much, and why, to follow 'because'. */
function claimOf(drawn: Case, practice: Practice): readonly [id: string, text: string, because: string] {
  const { marked, settled_degC } = logFacts(drawn, practice);
  // heat goes with the square: three tenths more current is far more than three tenths more rise
  const hoped = settled_degC + Math.floor(0.3 * (settled_degC - drawn.ambient_degC));
  const more = Math.round(1.3 * drawn.I_A);
  const [I, higher] = [given(drawn.I_A, 'A'), given(more, 'A')];
  const all: readonly (readonly [string, string, string])[] = [
    ['safe', 'This lead is safe for daily use.', 'no test shows that nothing can go wrong.'],
    ['batch', `All leads of this kind have these ohms.`, 'one lead was measured, and no other.'],
    [
      'reel',
      `Wound on its reel it would also stay near ${temperatureText(settled_degC, practice)} at ${I}.`,
      'it was tested laid straight, and turns on a reel heat each other.',
    ],
    [
      'more current',
      `At ${higher} it would stay below ${temperatureText(hoped, practice)}.`,
      `no step went so high. The engine lets it settle at ${settlesText(logScenario(drawn, practice, more), practice)}.`,
    ],
    [
      'cause',
      'It was made badly, and that is why it got warm.',
      'the log shows how warm it got, and not why it is as it is.',
    ],
    [
      'marking',
      `It is a copper cord of ${marked}, as marked.`,
      'the log has ohms, and ohms alone name neither metal nor area.',
    ],
  ];
  return all[drawn.claim] as readonly [string, string, string];
}

function offersOf(drawn: Case, practice: Practice): Offer[] {
  const { told, equal, settled_degC, doubtText } = logFacts(drawn, practice);
  const [id, text] = claimOf(drawn, practice);
  return [
    [id, text, { trueOf: 'that claims too much.', ask: 'Which line of the log shows it?' }],
    [
      'reached',
      `At ${given(drawn.I_A, 'A')}, straight in still air, its conductors reached ${temperatureText(settled_degC, practice)}.`,
      {
        trueOf: 'the log has that very step.',
        whyNot: 'Current, place and temperature all stand in the log. So it claims what was seen.',
        ask: 'Which sentence goes beyond its step?',
      },
    ],
    [
      'equal',
      `By resistance it equals copper of ${equalText(equal)}.`,
      {
        trueOf: `it follows from ${told.text}.`,
        whyNot: `It says ‘by resistance’, and its band is twice ${doubtText}. It claims no more than the ohms.`,
        ask: 'Which sentence rests on no reading?',
      },
    ],
    [
      'not established',
      'Not established: other leads of its kind, and other surroundings.',
      {
        trueOf: 'none of these was tested.',
        whyNot: 'It says what is not known. A report is the better for it.',
        ask: 'Which sentence says more than is known?',
      },
    ],
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { told, settled_degC, marked, doubtText } = logFacts(drawn, practice);
  const [, claim, because] = claimOf(drawn, practice);
  return {
    kind: 'choose',
    stem: [
      words`${drawn.lead} is marked ${quantity(marked)}. Its conductors have ${quantity(told.text)} at ${quantity(temperatureText(20, practice))}, with a standard uncertainty of ${quantity(doubtText)}.`,
      words`It lay straight in still air at ${quantity(temperatureText(drawn.ambient_degC, practice))}. At its last step, ${quantity(given(drawn.I_A, 'A'))}, the conductors settled at ${quantity(temperatureText(settled_degC, practice))}. Its plastic is rated ${quantity(temperatureText(rated_degC(drawn), practice))}.`,
      words`Nothing else was tested. Which sentence of the report claims too much?`,
    ],
    ask: 'Choose the one sentence that the log does not support.',
    parts: [partOf('claim', 'The sentence that claims too much', offersOf(drawn, practice), drawn.deal)],
    answer: { text: claim },
    scenarios: [{ name: 'its last step', scenario: logScenario(drawn, practice) }],
    hints: [
      words`Put a line of the log beside each sentence.`,
      words`A log speaks of one sample, in one place, at the steps that were run.`,
      words`A sentence that says what is not known claims nothing.`,
    ],
    solution: [
      words`Too much is: ${claim}`,
      words`For ${because}`,
      words`The other three say what was read, what follows from it, and what is open.`,
    ],
    look: 'Which sentence has no line of the log behind it?',
    cautions: [benchCaution, keepOutCaution],
  };
}

/** How Q70b is drawn and built. */
export const claimsTooMuchSpec: TemplateSpec<Case> = {
  id: 'Q70b',
  version: 1,
  lesson: '5.4',
  kind: 'choose',
  title: 'A sentence that claims too much',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.4 correct two bad verdicts'],
  misconceptions: [],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        lead: 'A lead from a polytunnel',
        cord: 'C150',
        share: 1600,
        doubt: 9,
        ambient_degC: 20,
        I_A: 15,
        claim: 2,
        deal: 1,
      },
    ],
    na: [
      {
        lead: 'A lead from a polytunnel',
        cord: 'A16',
        share: 1600,
        doubt: 9,
        ambient_degC: 20,
        I_A: 13,
        claim: 2,
        deal: 1,
      },
    ],
  },
  build: built,
};

/** Q70b: the sentence that claims too much. */
export const claimsTooMuch = defineTemplate(claimsTooMuchSpec);
