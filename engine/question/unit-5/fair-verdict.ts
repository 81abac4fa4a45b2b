import { mostDeals } from '../deal.ts';
import { amount, given, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { type BenchLog, drawnLog, equalText, logFacts, logScenario, rated_degC, standing } from './bench-log.ts';
import { benchCaution, keepOutCaution } from './bench-words.ts';

// Q70: which verdict a log supports: of the ohms beside their limit, and of what the lead may be used for.

interface Case extends BenchLog {
  readonly deal: number;
}

/** How far the edge of two uncertainties keeps from the limit, in parts of it (our choice: rounding shall not decide). */
const near = 0.003;

function drawnCase(random: Random, practice: Practice): Case | null {
  const kind = random.whole(0, 2);
  const share = kind === 0 ? random.whole(930, 985) : kind === 1 ? random.whole(985, 1020) : random.whole(1030, 2600);
  const log = drawnLog(random, practice, share);
  if (!log) return null;
  const drawn = { ...log, deal: random.whole(0, mostDeals) };
  const { R, limit } = logFacts(drawn, practice);
  const edges = [R.value - 2 * R.u, R.value + 2 * R.u].map((edge) => Math.abs(edge / limit.R - 1));
  return Math.min(...edges) > near ? drawn : null;
}

const findings = {
  above: 'Its resistance does not meet what its marking calls for.',
  open: 'Its resistance is neither shown to meet what its marking calls for, nor shown not to.',
  below: 'Its resistance meets what its marking calls for.',
} as const;

const found = {
  above: 'its ohms do not meet its marking.',
  open: 'its ohms are not decided beside its marking.',
  below: 'its ohms meet its marking.',
} as const;

function ohmsOf(drawn: Case, practice: Practice): Offer[] {
  const { R, limit, told, doubtText } = logFacts(drawn, practice);
  const is = standing(R, limit.R);
  const band = given(drawn.doubt / 5, '%');
  const said = {
    above: {
      trueOf: is === 'open' ? 'the figure itself may lie above.' : 'that would be so of more ohms.',
      whyNot: `Two uncertainties of ${doubtText} make the band as wide as ${band} each way. It has to lie above as a whole.`,
      ask: `Does the whole band lie above ${limit.text}?`,
    },
    open: {
      trueOf: 'that would be so if the limit lay inside the band.',
      whyNot: `Two uncertainties of ${doubtText} reach ${band} each way from ${told.text}. The limit lies outside.`,
      ask: 'On which side of the limit does the whole band lie?',
    },
    below: {
      trueOf: is === 'open' ? 'the figure itself may lie below.' : 'that would be so of fewer ohms.',
      whyNot: `Two uncertainties of ${doubtText} make the band as wide as ${band} each way. It has to lie below as a whole.`,
      ask: `Does the whole band lie below ${limit.text}?`,
    },
  };
  const offer = (id: keyof typeof findings): Offer => [id, findings[id], said[id]];
  return [is, ...(['above', 'open', 'below'] as const).filter((id) => id !== is)].map(offer);
}

function usesOf(drawn: Case, practice: Practice): Offer[] {
  const { equal, settled_degC } = logFacts(drawn, practice);
  const got = temperatureText(settled_degC, practice);
  const I = given(drawn.I_A, 'A');
  return [
    [
      'reached',
      `Laid straight in still air, this sample reached ${got} at ${I}. Other uses are not established.`,
      { trueOf: 'that is what the log says.', ask: 'What else does it say?' },
    ],
    [
      'as copper',
      `It may carry what a copper cord of ${amount(equal.value * 1e6, 2, 'mm²')} may carry, and takes the same terminals.`,
      { id: 'M50', trueOf: 'that much copper has as many ohms.', ask: 'Was a copper cord of that size on the bench?' },
    ],
    [
      'larger device',
      'If its fuse or breaker opens in use, the next size up will serve.',
      {
        id: 'M33',
        trueOf: 'a larger device would hold longer.',
        ask: 'What in this log speaks of the device?',
      },
    ],
    [
      'safe',
      `It may be used up to ${I} anywhere.`,
      {
        trueOf: `on the bench it carried ${I}.`,
        whyNot: 'It lay straight in still air. Wound, covered or in a warm place it would run hotter.',
        ask: 'In which surroundings was it tested?',
      },
    ],
    [
      'nothing',
      'Nothing can be said of it, since only one lead was tested.',
      {
        trueOf: 'other leads are not established.',
        whyNot: 'Of this one the log says its ohms, and how hot it got at which current.',
        ask: 'What does the log say of this one?',
      },
    ],
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { R, limit, told, marked, equal, settled_degC, doubtText } = logFacts(drawn, practice);
  const is = standing(R, limit.R);
  const text = `${found[is]} Of its use, only this step is known.`;
  return {
    kind: 'choose',
    stem: [
      words`${drawn.lead} is marked ${quantity(marked)}. Copper of that size may have ${quantity(limit.text)} at most, at ${quantity(temperatureText(20, practice))}. This conductor has ${quantity(told.text)}, with a standard uncertainty of ${quantity(doubtText)}.`,
      words`On the bench it lay straight in still air at ${quantity(temperatureText(drawn.ambient_degC, practice))}. At ${quantity(given(drawn.I_A, 'A'))} its conductors settled at ${quantity(temperatureText(settled_degC, practice))}. Its plastic is rated ${quantity(temperatureText(rated_degC(drawn), practice))}.`,
      words`A verdict counts two standard uncertainties each way. Which sentences does the log support?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('ohms', 'Of its ohms', ohmsOf(drawn, practice), drawn.deal),
      partOf('use', 'Of its use', usesOf(drawn, practice), drawn.deal + 1),
    ],
    answer: { text },
    scenarios: [{ name: 'its step on the bench', scenario: logScenario(drawn, practice) }],
    hints: [
      words`Draw the band of two uncertainties round the figure. Where does the limit lie?`,
      words`A verdict says what was shown, in which surroundings, and what was not.`,
      words`Ask of each sentence: which line of the log shows that?`,
    ],
    solution: [
      words`The band reaches from ${quantity(amountOf(R.value - 2 * R.u, practice))} to ${quantity(amountOf(R.value + 2 * R.u, practice))}. The limit is ${quantity(limit.text)}.`,
      words`By its ohms it equals ${quantity(equalText(equal))} of copper. Only the ohms are equal.`,
      words`Wound, covered or in a warm place it was not tested. Nor was any device.`,
      words`So ${text}`,
    ],
    look: 'Put a line of the log beside each sentence.',
    cautions: [benchCaution, keepOutCaution],
  };
}

const amountOf = (R: number, practice: Practice) =>
  practice === 'iec' ? amount(R * 1e3, 4, 'mΩ/m') : amount(R * 0.3048 * 1e3, 4, 'mΩ/ft');

/** How Q70 is drawn and built. */
export const fairVerdictSpec: TemplateSpec<Case> = {
  id: 'Q70',
  version: 1,
  lesson: '5.4',
  kind: 'choose',
  title: 'The verdict a log supports',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.4 write verdict, evidence, limits, action'],
  misconceptions: ['M33', 'M50'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: 'A lead from a polytunnel', cord: 'C150', share: 998, doubt: 9, ambient_degC: 20, I_A: 16, deal: 1 }],
    na: [{ lead: 'A lead from a polytunnel', cord: 'A16', share: 998, doubt: 9, ambient_degC: 20, I_A: 13, deal: 1 }],
  },
  build: built,
};

/** Q70: the verdict that a log supports. */
export const fairVerdict = defineTemplate(fairVerdictSpec);
