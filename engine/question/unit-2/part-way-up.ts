import type { CastKey } from '../../examples/cast.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { celsius, fahrenheit, kelvin, zeroCelsius } from '../../quantity.ts';
import { type Cord, cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { conductorAt, heldCurrent, settlesAt, timeTo63 } from '../experiment.ts';
import { given, percentText, plainNumber, riseText, rounded, temperatureText, timeText } from '../figures.ts';
import { isWithin, staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q28: the temperature at a time, from where the cord settles and its time to 63 %.

interface Case {
  readonly cord: CastKey;
  readonly place: string;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly t_s: number;
}

/** What the stem gives, rounded as it is told, and what the engine answers. */
interface Facts {
  readonly cord: Cord;
  /** Where it settles, to whole degrees [°C]. */
  readonly end_degC: number;
  /** Time to 63 %, to two figures [s]. */
  readonly tau: number;
  /** Conductor at the time asked for, by the engine [K]. */
  readonly T: number;
  /** Part of the rise made by then in one first-order curve, from the stem's own figures. */
  readonly part: number;
}

// Warm places: with a start near zero degrees, 63 % of the temperature would be too near 63 % of the rise.
const places: readonly (readonly [string, number, number])[] = [
  ['in a bakery, beside the ovens', 32, 45],
  ['in a laundry, behind the press', 32, 44],
  ['in a polytunnel in July', 32, 45],
  ['in a site cabin in the sun', 32, 42],
  ['in the drying room of a joinery', 34, 45],
];

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const [place, least, most] = random.pick(places);
  const ambient_degC = random.whole(least, most);
  const rise = random.whole(32, 56);
  const ratio = random.pick([100, 100, 105, 110, 115, 120]) / 100;
  const cold = buildCase(heldCurrent(cord, ambient_degC, 1, 3600));
  const I_A = Math.round(ratingAt(cold, kelvin(ambient_degC + rise)) ?? 0);
  if (I_A < 2 || I_A > 26) return null;
  const tau = tauOf(cord, ambient_degC, I_A);
  if (tau === null) return null;
  const drawn = { cord: cord.key, place, ambient_degC, I_A, t_s: 10 * Math.round((tau * ratio) / 10) };
  return isClear(drawn, practice) ? drawn : null;
}

function tauOf(cord: Cord, ambient_degC: number, I_A: number): number | null {
  const scenario = heldCurrent(cord, ambient_degC, I_A, 3600);
  const settled = settlesAt(buildCase(scenario));
  const tau = settled === null ? null : timeTo63(scenario, settled);
  return tau === null ? null : rounded(tau, 2);
}

/** The stem's first-order estimate is well inside the tolerance, every slip well outside. */
function isClear(drawn: Case, practice: Practice): boolean {
  const facts = factsOf(drawn);
  const answer = answerOf(drawn, facts, practice);
  const { tolerance, value } = answer;
  const estimate = kelvin(drawn.ambient_degC + facts.part * (facts.end_degC - drawn.ambient_degC));
  const cool = facts.end_degC <= 130 && drawn.t_s >= facts.tau;
  return cool && isWithin(tolerance, value, estimate, 0.4) && staysApart(answer, wrongOf(drawn, facts));
}

function factsOf({ cord: key, ambient_degC, I_A, t_s }: Case): Facts {
  const cord = cordOf(key);
  const scenario = heldCurrent(cord, ambient_degC, I_A, 3600);
  const settled = settlesAt(buildCase(scenario)) as number;
  const tau = rounded(timeTo63(scenario, settled) as number, 2);
  const T = conductorAt(scenario, t_s);
  return { cord, end_degC: Math.round(celsius(settled)), tau, T, part: -Math.expm1(-t_s / tau) };
}

function answerOf({ ambient_degC }: Case, { T, end_degC }: Facts, practice: Practice): NumberAnswer {
  const rise = celsius(T) - ambient_degC;
  return {
    value: T,
    kind: 'temperature',
    unit: '°C',
    tolerance: { kind: 'absolute', by: Math.max(5, 0.1 * rise) },
    figures: 2,
    span: end_degC - ambient_degC,
    text: temperatureText(celsius(T), practice),
  };
}

const kelvinOfF = (T_degF: number) => (T_degF - 32) / 1.8 + zeroCelsius;

function wrongOf({ ambient_degC }: Case, { end_degC, part }: Facts): WrongValue[] {
  const rise = end_degC - ambient_degC;
  const [endF, startF] = [Math.round(fahrenheit(kelvin(end_degC))), Math.round(fahrenheit(kelvin(ambient_degC)))];
  const done = {
    trueOf: 'is where the cord settles in the end.',
    ask: 'How much of the rise is still to come after one time constant?',
  };
  const ofTemperature = {
    trueOf: 'would fit a cord that started at zero degrees.',
    ask: 'By that rule, how hot is the cord before the current is switched on?',
  };
  const riseOnly = {
    trueOf: 'is the rise alone, told as a temperature.',
    ask: `The cord was at ${ambient_degC}\u00A0°C before any current flowed. Can it be cooler now?`,
  };
  return [
    { id: 'M20', value: kelvin(end_degC), ...done },
    { id: 'M21', value: kelvin(part * end_degC), ...ofTemperature },
    { id: 'M21', value: kelvinOfF(part * endF), onlyIn: '°F', ...ofTemperature },
    { id: 'M17', value: kelvin(part * rise), ...riseOnly },
    { id: 'M17', value: kelvinOfF(part * (endF - startF)), onlyIn: '°F', ...riseOnly },
  ];
}

function solutionOf(drawn: Case, { cord, end_degC, tau, part }: Facts, answer: NumberAnswer, practice: Practice) {
  const rise = end_degC - drawn.ambient_degC;
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const ratio = drawn.t_s === tau ? 'exactly' : `${plainNumber(drawn.t_s / tau, 2)} times`;
  const made = quantity(percentText(part));
  return [
    words`The whole rise is from ${told(drawn.ambient_degC)} to ${told(end_degC)}, so ${quantity(riseText(rise))}.`,
    words`The time asked for is ${ratio} the time to 63\u00A0%. By then ${made} of the rise is made.`,
    words`${law}`,
    words`That part of the rise is ${quantity(riseText(part * rise))}. Added to the start it gives about ${told(drawn.ambient_degC + part * rise)}.`,
    words`The engine also follows the heat through the plastic. It gives ${quantity(answer.text)}.`,
    words`${ratingNote(cord)}`,
  ];
}

const law = formula(
  String.raw`\theta(t) = \theta_\mathrm{a} + \Delta\theta\,(1 - e^{-t/\tau})`,
  'Theta at t is theta a plus delta theta times one minus e to the minus t over tau.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const facts = factsOf(drawn);
  const { cord, end_degC, tau } = facts;
  const answer = answerOf(drawn, facts, practice);
  const I = quantity(given(drawn.I_A, 'A'));
  const t = timeText(drawn.t_s);
  const start = quantity(temperatureText(drawn.ambient_degC, practice));
  const span = 600 * Math.ceil((5 * tau) / 600);
  return {
    kind: 'number',
    stem: [
      words`It is ${start} ${drawn.place}. There ${cord.words} starts at that temperature and then carries ${I}.`,
      words`Held for long, its conductor would settle at ${quantity(temperatureText(end_degC, practice))}. It makes 63\u00A0% of that rise in ${quantity(timeText(tau))}.`,
      words`Take the warm-up as one first-order curve. About how hot is the conductor ${quantity(t)} after switching on?`,
    ],
    ask: 'A temperature with its unit. Two figures are enough.',
    scenarios: [
      { name: `${drawn.I_A}\u00A0A from cold`, scenario: heldCurrent(cord, drawn.ambient_degC, drawn.I_A, span) },
    ],
    hints: [
      words`First find the whole rise: where the cord settles, less where it starts.`,
      words`After one time constant 63\u00A0% of the rise is made. After a time t the part made is ${formula('1 - e^{-t/\\tau}', 'one minus e to the minus t over tau')}.`,
      words`Take that part of the rise, and add it to the temperature at the start.`,
    ],
    solution: solutionOf(drawn, facts, answer, practice),
    look: `Open the curve and read it ${t} after the start. How far has it come from its start to its end?`,
    cautions: overloadCaution(cord, drawn.I_A),
    answer,
    wrong: wrongOf(drawn, facts),
  };
}

/** How Q28 is drawn and built. */
export const partWayUpSpec: TemplateSpec<Case> = {
  id: 'Q28',
  version: 1,
  lesson: '2.2',
  kind: 'number',
  title: 'Part of the way up',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['2.2 read the time to 63 % of the rise'],
  misconceptions: ['M20', 'M21', 'M17'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', place: 'in a bakery, beside the ovens', ambient_degC: 40, I_A: 18, t_s: 240 }],
    na: [{ cord: 'A16', place: 'in a bakery, beside the ovens', ambient_degC: 40, I_A: 20, t_s: 260 }],
  },
  build: built,
};

/** Q28: how hot part of the way up, from where a cord settles and its time to 63 %. */
export const partWayUp = defineTemplate(partWayUpSpec);
