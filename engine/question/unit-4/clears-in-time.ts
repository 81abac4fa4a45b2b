import { deviceOf } from '../../protection/devices.ts';
import { amount, given, plainNumber } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, ChoosePart, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { localWords, loopCaution, spanText, withArticle } from './asked-devices.ts';
import { breakerOf, clearingOf, type FaultCase, leastShare, magnets, timeToClear, volts } from './earth-fault.ts';

// Q64: whether a breaker clears a fault to earth in time, and what a residual current device sees of another event.

type Event = 'overload' | 'short circuit' | 'leak';

interface Case extends FaultCase {
  readonly load: string;
  readonly event: Event;
}

const loads = [
  'a heater in a polytunnel',
  'a saw in a joinery',
  'a washer in a boatyard',
  'a pump on a farm',
  'a press in a laundry',
  'the urn of a village hall',
];
/** How near its limit the loop may lie, in parts of it (our choice: rounding shall not decide). */
const near = 0.05;

function drawnCase(random: Random, practice: Practice): Case | null {
  const In = random.pick(practice === 'iec' ? [6, 10, 16, 20, 25, 32] : [15, 20, 25, 30]);
  const type = practice === 'iec' ? random.pick(['B', 'B', 'C', 'C', 'D'] as const) : null;
  const level_A = type ? magnets[type] * In : 10 * random.whole(Math.ceil(0.6 * In), Math.floor(1.5 * In));
  const drawn: Case = {
    load: random.pick(loads),
    In,
    type,
    level_A,
    Zs: 0,
    event: random.pick(['overload', 'short circuit', 'leak'] as const),
  };
  const most = clearingOf({ ...drawn, Zs: 100 }, practice).greatestLoop as number;
  const Zs = Math.round(most * random.whole(45, 190));
  const loop = { ...drawn, Zs };
  return Zs >= 15 && Math.abs(Zs / 100 / most - 1) > near ? loop : null;
}

/** Amperes out and back, in parts of what goes out: what a residual current device compares. */
const back: Readonly<Record<Event, number>> = { overload: 1, 'short circuit': 1, leak: 0 };
const opens = (event: Event) => back[event] < 1;

function eventText(event: Event, { In }: Case, practice: Practice): string {
  const { line, earth } = localWords[practice];
  switch (event) {
    case 'overload':
      return `an overload of ${given(Number((1.3 * In).toPrecision(3)), 'A')}`;
    case 'short circuit':
      return `a short circuit from ${line} to neutral`;
    case 'leak':
      return `a fault from ${line} to ${earth}`;
  }
}

function breakerPart(drawn: Case, practice: Practice): ChoosePart {
  const { outcome, I, Ia } = clearingOf(drawn, practice);
  const right = outcome === 'met' ? 'in time' : 'not in time';
  const [flows, needs] = [amount(I, 3, 'A'), amount(Ia as number, 3, 'A')];
  const said: Said = {
    id: 'M42',
    trueOf: `${flows} flows, and the breaker surely acts from ${needs} on.`,
    ask: 'With more ohms in the loop, does more current flow, or less?',
  };
  const options = [
    ['in time', 'In time'],
    ['not in time', 'Not surely in time'],
  ].map(([id, text]): ChooseOption => {
    const option = { id: id as string, text: text as string };
    return id === right ? option : { ...option, said };
  });
  return { id: 'breaker', label: 'The breaker, on the fault', options, right };
}

function residualPart(drawn: Case, practice: Practice): ChoosePart {
  const { rcd } = localWords[practice];
  const right = opens(drawn.event) ? 'opens' : 'holds';
  const said: Said = opens(drawn.event)
    ? {
        trueOf: 'it holds while as much comes back as goes out.',
        whyNot: 'In this fault the current comes back another way, past the device.',
        ask: 'Which way does the fault current take back?',
      }
    : { id: 'M44', trueOf: 'it opens when less comes back than goes out.', ask: 'How much comes back here?' };
  const options = [
    ['opens', 'It opens'],
    ['holds', 'It holds'],
  ].map(([id, text]): ChooseOption => {
    const option = { id: id as string, text: text as string };
    return id === right ? option : { ...option, said };
  });
  return { id: 'residual', label: `The ${rcd}, on ${eventText(drawn.event, drawn, practice)}`, options, right };
}

function solutionOf(drawn: Case, text: string, practice: Practice) {
  const { I, Ia, greatestLoop } = clearingOf(drawn, practice);
  const { rcd } = localWords[practice];
  const equal =
    drawn.event === 'leak'
      ? `The ${rcd} sees less come back than goes out, and opens.`
      : `Out and back the ${rcd} sees the same current, and holds. It covers people, not the cable.`;
  return [
    words`The fault drives ${quantity(amount(I, 3, 'A'))}: ${practice === 'iec' ? `${plainNumber(leastShare.iec, 2)} times ` : ''}${quantity(given(volts[practice], 'V'))} over ${quantity(given(drawn.Zs / 100, 'Ω'))}.`,
    words`The breaker surely acts at once from ${quantity(amount(Ia as number, 3, 'A'))} on. So the loop may have ${quantity(amount(greatestLoop as number, 3, 'Ω'))} at most.`,
    words`${equal}`,
    words`So ${text}`,
    words`${
      practice === 'iec'
        ? 'Rule: BS 7671 and IEC 60364-4-41, 411.4.4. The least volts, 0.95 of the nominal, are British.'
        : 'NFPA 70 asks for a path that opens the device, and names no ohms. The level is the maker’s.'
    }`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const parts = [breakerPart(drawn, practice), residualPart(drawn, practice)];
  const [breaker, residual] = parts as [ChoosePart, ChoosePart];
  const { rcd, line, earth } = localWords[practice];
  const of = deviceOf(breakerOf(drawn));
  const text = `the breaker ${breaker.right === 'in time' ? 'acts in time' : 'is not sure to act in time'}, and the ${rcd} ${residual.right}.`;
  const limit = timeToClear(practice);
  const asked =
    practice === 'iec'
      ? words`The rules ask for ${quantity(spanText(limit.t))}. Take ${quantity(plainNumber(leastShare.iec, 2))} of the ${quantity(given(volts.iec, 'V'))}.`
      : words`Its maker states that the magnet surely acts within ${quantity(spanText(limit.t))} from ${quantity(given(drawn.level_A, 'A'))} on. The supply has ${quantity(given(volts.na, 'V'))}.`;
  return {
    kind: 'choose',
    stem: [
      words`The circuit of ${drawn.load} has ${withArticle(of.name)}, and ${practice === 'iec' ? 'an' : 'a'} ${rcd} before it. With warm conductors its ${earth}-fault loop has ${quantity(given(drawn.Zs / 100, 'Ω'))}.`,
      asked,
      words`First, a fault from ${line} to the metal case: does the breaker alone clear it in that time? Second, what does the ${rcd} do on ${eventText(drawn.event, drawn, practice)}?`,
    ],
    ask: 'Choose one in each part.',
    parts,
    answer: { text },
    scenarios: [],
    hints: [
      words`Volts over ohms gives the fault current. Less loop, more current.`,
      words`${practice === 'iec' ? 'Find the current from which the breaker surely acts at once: B 5, C 10, D 20 times its rating.' : 'Compare it with the maker’s level.'}`,
      words`The ${rcd} compares what goes out with what comes back. Are they equal here?`,
    ],
    solution: solutionOf(drawn, text, practice),
    look: 'Work out the fault current first. Then ask each device what it sees.',
    cautions: [loopCaution],
  };
}

/** How Q64 is drawn and built. */
export const clearsInTimeSpec: TemplateSpec<Case> = {
  id: 'Q64',
  version: 1,
  lesson: '4.5',
  kind: 'choose',
  title: 'Does it clear in time',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['4.5 compare Zs with its limit', '4.5 say what an RCD or GFCI adds and does not'],
  misconceptions: ['M42', 'M44'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: loads[0] as string, In: 16, type: 'B', level_A: 80, Zs: 342, event: 'overload' }],
    na: [{ load: loads[0] as string, In: 20, type: null, level_A: 200, Zs: 75, event: 'overload' }],
  },
  build: built,
};

/** Q64: whether a fault is cleared in time, and by what. */
export const clearsInTimeOrNot = defineTemplate(clearsInTimeSpec);
