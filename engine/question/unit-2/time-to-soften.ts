import type { CastKey } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { pvc70 } from '../../material/plastics.ts';
import { celsius, kelvin } from '../../quantity.ts';
import { cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { heldCurrent, settlesAt, timeTo, timeTo63, watching } from '../experiment.ts';
import { given, percentText, plainNumber, riseText, rounded, temperatureText, timeText } from '../figures.ts';
import { isWithin, staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q34: how long from the start until the conductor passes a temperature within the softening range.

interface Case {
  readonly cord: CastKey;
  readonly place: string;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly level_degC: number;
}

/** Places with the air to be met there, from and to [°C]. */
const places: readonly (readonly [string, number, number])[] = [
  ['in a theatre workshop', 15, 30],
  ['in a bakery, beside the ovens', 28, 45],
  ['in a laundry, behind the press', 28, 44],
  ['in a site cabin in the sun', 24, 42],
  ['in a polytunnel in July', 24, 45],
  ['in the drying room of a joinery', 32, 45],
];

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const [place, least, most] = random.pick(places);
  const ambient_degC = random.whole(least, most);
  const level_degC = random.pick([90, 100, 100, 110, 120]);
  const part = random.whole(900, 955) / 1000;
  const cold = buildCase(heldCurrent(cord, ambient_degC, 1, 3600));
  const I = ratingAt(cold, kelvin(ambient_degC + (level_degC - ambient_degC) / part));
  const I_A = Math.round(2 * (I ?? 0)) / 2;
  if (I_A < 14 || I_A > 30) return null;
  const drawn = { cord: cord.key, place, ambient_degC, I_A, level_degC };
  return isClear(drawn) ? drawn : null;
}

/** What the stem gives, rounded as it is told, and when the engine's conductor passes the level [s]. */
function factsOf({ cord: key, ambient_degC, I_A, level_degC }: Case) {
  const cord = cordOf(key);
  const scenario = heldCurrent(cord, ambient_degC, I_A, 2 * 3600);
  const of = buildCase(scenario);
  const settled = settlesAt(of);
  const tau = settled === null ? null : timeTo63(scenario, settled);
  const t = timeTo(scenario, kelvin(level_degC));
  const rating = ratingOf(of.cable);
  if (settled === null || tau === null || t === null || rating === null) return null;
  return { cord, end_degC: Math.round(celsius(settled)), tau: rounded(tau, 2), t, rating_degC: celsius(rating) };
}

type Facts = NonNullable<ReturnType<typeof factsOf>>;

/** Time to `T_degC` in one first-order curve of the stem's figures: t = −τ ln(1 − p) [s]. */
const firstOrder = ({ ambient_degC }: Case, { end_degC, tau }: Facts, T_degC: number) =>
  -tau * Math.log1p(-partOf(T_degC, ambient_degC, end_degC));

const partOf = (T_degC: number, from_degC: number, to_degC: number) => (T_degC - from_degC) / (to_degC - from_degC);

function isClear(drawn: Case): boolean {
  const { ambient_degC, level_degC } = drawn;
  const cord = cordOf(drawn.cord);
  // the steady end is quick to find: a case that cannot pass is dropped before any curve is run
  const end = settlesAt(buildCase(heldCurrent(cord, ambient_degC, drawn.I_A, 3600)));
  if (end === null || celsius(end) > 140) return false;
  const part = partOf(level_degC, ambient_degC, Math.round(celsius(end)));
  if (part < 0.89 || part > 0.96) return false;
  const facts = factsOf(drawn);
  if (!facts) return false;
  const answer = answerOf(facts);
  const estimate = firstOrder(drawn, facts, level_degC);
  return isWithin(answer.tolerance, answer.value, estimate, 0.6) && staysApart(answer, wrongOf(drawn, facts));
}

function answerOf({ t }: Facts): NumberAnswer {
  const told = rounded(t, 2);
  return {
    value: t,
    kind: 'time',
    unit: 's',
    tolerance: { kind: 'factor', by: 1.25 },
    figures: 2,
    text: `${given(told, 's')} (${timeText(told)})`,
  };
}

function wrongOf(drawn: Case, facts: Facts): WrongValue[] {
  const { ambient_degC, level_degC } = drawn;
  const { end_degC, tau, rating_degC } = facts;
  return [
    {
      id: 'M18',
      value: (tau * partOf(level_degC, ambient_degC, end_degC)) / -Math.expm1(-1),
      trueOf: 'would fit a cord that goes on warming at one pace.',
      ask: 'How much heat does the cord shed at the start, and how much near the end?',
    },
    {
      id: 'M24',
      value: firstOrder(drawn, facts, rating_degC),
      trueOf: `is when it passes its rating of ${given(rating_degC, '°C')}.`,
      whyNot: 'The rating is the limit for a long life. The plastic goes soft some way above it.',
      ask: `Which temperature was asked for, and what does ${given(rating_degC, '°C')} stand for?`,
    },
  ];
}

const law = formula(String.raw`t = -\tau\,\ln(1 - p)`, 'The time is minus tau times the natural log of one minus p.');

function solutionOf(drawn: Case, facts: Facts, answer: NumberAnswer, practice: Practice) {
  const { ambient_degC, level_degC } = drawn;
  const { cord, end_degC, tau, rating_degC } = facts;
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const part = partOf(level_degC, ambient_degC, end_degC);
  const estimate = firstOrder(drawn, facts, level_degC);
  return [
    words`The whole rise is from ${told(ambient_degC)} to ${told(end_degC)}, so ${quantity(riseText(end_degC - ambient_degC))}.`,
    words`To ${told(level_degC)} it is ${quantity(riseText(level_degC - ambient_degC))}, which is ${quantity(percentText(part))} of the rise.`,
    words`${law}`,
    words`For that part it takes ${plainNumber(estimate / tau, 2)} time constants, so about ${quantity(timeText(rounded(estimate, 2)))}.`,
    words`The engine follows the heat through the plastic as well. It finds ${quantity(answer.text)}.`,
    words`It passes its rating of ${told(rating_degC)} long before. From there on it ages faster, and nothing is seen.`,
    words`${ratingNote(cord)}`,
  ];
}

function softening(practice: Practice): string {
  const limit = pvc70.limits.find(({ kind }) => kind === 'softening');
  if (!limit) throw new Error('PVC softens');
  const [low, high] = [limit.low, limit.high].map((T) => temperatureText(celsius(T), practice));
  return `from ${low} to ${high}`;
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const facts = factsOf(drawn);
  if (!facts) throw new Error('the case of Q34 passes its level');
  const { cord, end_degC, tau, t, rating_degC } = facts;
  const answer = answerOf(facts);
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const I = given(drawn.I_A, 'A');
  const scenario = heldCurrent(cord, drawn.ambient_degC, drawn.I_A, 600 * Math.ceil((1.6 * t) / 600));
  return {
    kind: 'number',
    stem: [
      words`It is ${told(drawn.ambient_degC)} ${drawn.place}. There ${cord.words} starts at that temperature and then carries ${quantity(I)}.`,
      words`Held for long, its conductor would settle at ${told(end_degC)}. It makes 63\u00A0% of that rise in ${quantity(timeText(tau))}.`,
      words`Its PVC is rated for ${told(rating_degC)}. It goes soft ${softening(practice)}, depending on the compound.`,
      words`Take the warm-up as one first-order curve. About how long after switching on does the conductor pass ${told(drawn.level_degC)}?`,
    ],
    ask: 'A time with its unit, in s or min. Two figures are enough.',
    scenarios: [
      {
        name: `${I} from cold`,
        scenario: watching(scenario, drawn.level_degC),
      },
    ],
    hints: [
      words`Which part of the whole rise has it made, when it passes the temperature asked for?`,
      words`After a time t the part made is ${formula('p = 1 - e^{-t/\\tau}', 'p is one minus e to the minus t over tau')}.`,
      words`Turn that about. ${law}`,
    ],
    solution: solutionOf(drawn, facts, answer, practice),
    look: `Open the case and follow the conductor until it passes ${temperatureText(drawn.level_degC, practice)}. Is the curve straight on the way?`,
    cautions: [
      ...overloadCaution(cord, drawn.I_A),
      'Overheated PVC gives off acid fume. It harms lungs. Stop, leave, ventilate.',
    ],
    answer,
    wrong: wrongOf(drawn, facts),
  };
}

/** How Q34 is drawn and built. */
export const timeToSoftenSpec: TemplateSpec<Case> = {
  id: 'Q34',
  version: 1,
  lesson: '2.3',
  kind: 'number',
  title: 'Time to go soft',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['2.3 order the events on the way up'],
  misconceptions: ['M18', 'M24'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', place: 'in a polytunnel in July', ambient_degC: 24, I_A: 26, level_degC: 100 }],
    na: [{ cord: 'A16', place: 'in a polytunnel in July', ambient_degC: 28, I_A: 28, level_degC: 100 }],
  },
  build: built,
};

/** Q34: the time from the start to a temperature at which PVC is soft. */
export const timeToSoften = defineTemplate(timeToSoftenSpec);
