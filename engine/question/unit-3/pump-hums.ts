import { mostDeals } from '../deal.ts';
import { amount, given, percentText, plainNumber } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import { toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { whoDecides } from './cited-words.ts';
import { ohmsOf, runCable, runCables } from './warm-conductors.ts';
import { voltsOf } from './watts.ts';

// D07: a pump hums at the far end of its run and will not start: the cause, and the readings that show it.

interface Case {
  readonly place: string;
  readonly size: number;
  /** Length of the run in metres, or in feet. */
  readonly length: number;
  /** What the pump draws running, and how many times as much while it stands still on full volts [A, tenths]. */
  readonly run_A: number;
  readonly times: number;
  /** Volts at the source while it hums. */
  readonly source_V: number;
  readonly deal: number;
}

const places = [
  'at the far trough of a farm',
  'at the end of an orchard',
  'behind a row of polytunnels',
  'at a boatyard’s slip',
  'in a field drain',
] as const;
/** Share of the nominal volts that a pump like these needs to start (common practice, no source). */
const needed = 0.85;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cables = runCables(practice).slice(0, practice === 'iec' ? 4 : 3);
  const { size, most } = random.pick(cables);
  const drawn = {
    place: random.pick(places),
    size,
    length: practice === 'iec' ? 5 * random.whole(6, 24) : 10 * random.whole(8, 40),
    run_A: random.whole(3, Math.min(8, most)),
    times: random.whole(45, 65),
    source_V: voltsOf(practice) - random.whole(1, practice === 'iec' ? 5 : 3),
    deal: random.whole(0, mostDeals),
  };
  const { share, running, once } = factsOf(drawn, practice);
  // it would run if it ran, it does not start, and half the loss would not explain the volts
  return share >= 0.45 && share <= 0.78 && running <= 0.08 && once / voltsOf(practice) >= share + 0.05 ? drawn : null;
}

/** Still, a pump is a fixed load of so many ohms; the run stands before it, cold, as it is in the first seconds. */
function factsOf(drawn: Case, practice: Practice) {
  const { cold } = ohmsOf(runCable(drawn.size, practice), practice);
  const U0 = voltsOf(practice);
  const { L } = toldLength(drawn.length, practice);
  const still = U0 / ((drawn.run_A * drawn.times) / 10);
  const humming = (R: number) => drawn.source_V / (still + R);
  const R = 2 * cold.R * L;
  const I = humming(R);
  const at = drawn.source_V - I * R;
  return {
    cold,
    R,
    still,
    I,
    at,
    share: at / U0,
    /** Share lost while it runs. */
    running: (drawn.run_A * R) / U0,
    /** Volts it would have if the run counted once. */
    once: drawn.source_V - (I * R) / 2,
    starts_A: (drawn.run_A * drawn.times) / 10,
  };
}

const volts = (U: number) => amount(U, 3, 'V');

function causesOf(drawn: Case, practice: Practice): Offer[] {
  const { once, at, running } = factsOf(drawn, practice);
  return [
    [
      'drop at start',
      'The run: at the current of a start it takes so many volts that the pump cannot turn.',
      { trueOf: 'the run does take volts.', ask: 'Which reading speaks for another cause?' },
    ],
    [
      'bad contact',
      `A bad contact: by the run’s own ohms the pump should have ${volts(once)}.`,
      {
        id: 'M09',
        trueOf: `${volts(once)} would be left if the run counted once.`,
        ask: 'Which way does the current come back?',
      },
    ],
    [
      'small breaker',
      'The breaker is too small for a start, and the next size up would let it through.',
      {
        id: 'M33',
        trueOf: 'a larger one would let it hum for longer.',
        whyNot: 'The breaker has not opened. A larger one gives no volt more, and lets the windings burn.',
        ask: 'Did the breaker keep any current back?',
      },
    ],
    [
      'stuck',
      'The pump is stuck: something blocks it.',
      {
        trueOf: 'a stuck pump hums as well.',
        whyNot: 'By the house the same pump starts at once.',
        ask: 'What changed between the two places?',
      },
    ],
    [
      'low supply',
      'The supply is too low in the whole yard.',
      {
        trueOf: `the pump has ${volts(at)} while it hums.`,
        whyNot: `The house keeps ${given(drawn.source_V, 'V')} meanwhile. A run that loses ${percentText(running)} with a running pump loses far more at a start.`,
        ask: 'Where do the volts get lost?',
      },
    ],
  ];
}

const readings: readonly Offer[] = [
  [
    'by the house',
    'By the house the pump starts at once. The house keeps its volts while it hums far out.',
    { trueOf: 'these two leave the run alone.', ask: 'What else could they come from?' },
  ],
  [
    'rest and breaker',
    'At rest the far end has full volts. The breaker holds.',
    {
      trueOf: 'no current flows at rest, so nothing is lost.',
      whyNot: 'That is so for every one of the causes. So these two rule out none.',
      ask: 'What would the far end have at rest, on the thinnest of runs?',
    },
  ],
  [
    'hum and volts',
    'It hums. Its volts are low while it does.',
    {
      trueOf: 'both show that it cannot turn.',
      whyNot: 'Low volts may come from the run, from a contact or from the supply.',
      ask: 'Where else were volts read?',
    },
  ],
  [
    'breaker and hum',
    'The breaker holds. The pump hums.',
    {
      trueOf: 'a breaker may well hold that for a while.',
      whyNot: 'A stuck pump would do the same, and so would a low supply.',
      ask: 'What happened by the house?',
    },
  ],
];

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { place, size, length, source_V, run_A, deal } = drawn;
  const { words: cable } = runCable(size, practice);
  const { cold, R, I, at, share, running, starts_A } = factsOf(drawn, practice);
  const text =
    'the run takes too many volts at the current of a start. It needs thicker conductors, or a pump nearer by.';
  return {
    kind: 'choose',
    stem: [
      words`A pump ${place} hums and will not start. It hangs on ${quantity(toldLength(length, practice).text)} of ${cable}, cold at first, with ${quantity(cold.text)} in each conductor.`,
      words`The supply has ${quantity(given(voltsOf(practice), 'V'))}. While the pump hums it draws ${quantity(amount(I, 3, 'A'))}. Then the house has ${quantity(given(source_V, 'V'))} and the pump ${quantity(volts(at))}. At rest the far end has full volts, and the breaker holds.`,
      words`By the house, on a short lead, the same pump starts at once and runs at ${quantity(given(run_A, 'A'))}. What is the cause, and which two readings rule the others out?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('cause', 'The cause', causesOf(drawn, practice), deal),
      partOf('readings', 'The two readings', readings, deal + 1),
    ],
    answer: { text },
    scenarios: [],
    hints: [
      words`How many volts does this run lose at that current, out and back?`,
      words`A pump at rest in its first moment draws several times its running current.`,
      words`For each cause, ask how the pump would behave by the house.`,
    ],
    solution: [
      words`Out and back the run has ${quantity(amount(R, 3, 'Ω'))}. At ${quantity(amount(I, 3, 'A'))} it takes ${quantity(volts(I * R))}, which is what is missing. So there is no bad contact.`,
      words`Still, on full volts, the pump would draw ${quantity(amount(starts_A, 3, 'A'))}. Here it has ${quantity(percentText(share))} of its volts, and most need about ${quantity(percentText(needed))} (common practice).`,
      words`Running, it would lose ${quantity(percentText(running))} only. That is why a drop worked out for the running current misses it.`,
      words`So ${text}`,
      words`A motor that stands still under current overheats, and so does a thin run. It makes about ${quantity(plainNumber((I / run_A) ** 2, 2))} times the running heat.`,
    ],
    look: 'Work out the volts lost out and back, at the current of the start.',
    cautions: [
      'A motor that hums and stands still overheats and may burn. Switch it off at once, and find the cause first.',
      whoDecides,
    ],
  };
}

/** How D07 is drawn and built. */
export const pumpHumsSpec: TemplateSpec<Case> = {
  id: 'D07',
  version: 1,
  lesson: '3.2',
  kind: 'choose',
  title: 'The pump that hums',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['3.2 say what low volts does to heaters and motors'],
  misconceptions: ['M09', 'M33'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ place: places[0], size: 1.5, length: 100, run_A: 6, times: 55, source_V: 227, deal: 1 }],
    na: [{ place: places[0], size: 14, length: 200, run_A: 8, times: 55, source_V: 118, deal: 1 }],
  },
  build: built,
};

/** D07: why a pump hums and will not start. */
export const pumpHums = defineTemplate(pumpHumsSpec);
