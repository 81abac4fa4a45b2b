import { ambientFactor } from '../../protection/ambient-factor.ts';
import { factorProduct, ratingInPlace } from '../../protection/factors.ts';
import { thermalInsulationFactor } from '../../protection/insulation-factor.ts';
import { carrying, settledAt } from '../carrying.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, plainNumber, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { tableCurrentOf } from '../unit-2/table-currents.ts';
import { quantity, words } from '../words.ts';
import { checkYours, citedWords, whoDecides } from './cited-words.ts';

// D09: a cable that was right until a loft was lagged: the cause, and the two figures that show it.

interface Case {
  readonly place: string;
  readonly cable: string;
  readonly In: number;
  readonly Ib: number;
  readonly ambient_degC: number;
  readonly lagged_mm: number;
  readonly deal: number;
}

const places = ['a farmhouse', 'a bakery', 'a village hall', 'a site office', 'a laundry'];
/** Cables and the breaker that each is found behind. */
const pairs = [
  ['flat 1.5', 16],
  ['flat 2.5', 20],
  ['flat 2.5', 25],
  ['flat 4', 32],
] as const;
/** Lengths in lagging that the table has a factor for [mm]. */
const lengths = [50, 100, 200, 400] as const;
/** Currents to choose from keep this from each other and from the breaker's, in parts (our choice). */
const apart = 0.03;

function drawnCase(random: Random): Case | null {
  const [cable, In] = random.pick(pairs);
  const drawn = {
    place: random.pick(places),
    cable,
    In,
    Ib: random.whole(Math.ceil(0.75 * In), In - 1),
    ambient_degC: 5 * random.whole(7, 9),
    lagged_mm: random.pick(lengths),
    deal: random.whole(0, mostDeals),
  };
  return isClear(drawn) ? drawn : null;
}

function isClear(drawn: Case): boolean {
  const { Iz, before, unlagged, cool } = factsOf(drawn);
  const all = [Iz, unlagged, cool, drawn.In].sort((a, b) => a - b);
  const clear = all.every((one, i) => i === 0 || one / (all[i - 1] as number) > 1 + apart);
  return clear && before >= drawn.In && Iz < drawn.Ib;
}

/** What the cable may carry: as it is, before the loft was lagged (cool, uncovered), and with one of the factors left out [A]. */
function factsOf({ cable, ambient_degC, lagged_mm }: Case) {
  const of = tableCurrentOf(cable);
  const ambient = ambientFactor('iec', of.limit_degC, ambient_degC);
  const lagging = thermalInsulationFactor(lagged_mm);
  const rating = (factors: Parameters<typeof ratingInPlace>[1]) => ratingInPlace(of.It, factors);
  return {
    of,
    ambient,
    lagging,
    together: factorProduct([ambient, lagging]),
    Iz: rating([ambient, lagging]),
    before: rating([]),
    unlagged: rating([ambient]),
    cool: rating([lagging]),
  };
}

const amps = (I: number) => amount(I, 3, 'A');

function causesOf(drawn: Case): Offer[] {
  const { of, lagging } = factsOf(drawn);
  return [
    [
      'lagging',
      'In the lagging and the warm loft it may carry less than the breaker’s rating.',
      { trueOf: 'lagging keeps heat in.', ask: 'Which figure speaks for another cause?' },
    ],
    [
      'only slower',
      'Nothing is amiss: in lagging it only takes longer to get as warm as before.',
      {
        id: 'M29',
        trueOf: 'lagging does make it slower.',
        ask: 'Through what has the heat to get out in the end?',
      },
    ],
    [
      'loft',
      'Nothing is amiss: the air of a loft has no say in what a cable may carry.',
      { id: 'M25', trueOf: `the table gives ${given(of.It, 'A')}.`, ask: 'For air of what temperature is that?' },
    ],
    [
      'faulty breaker',
      'The breaker is faulty: it should have tripped.',
      {
        trueOf: `it is rated ${given(drawn.In, 'A')}.`,
        whyNot: `The load draws ${given(drawn.Ib, 'A')}, which it has to carry for ever. It sees no lagging.`,
        ask: 'What must a breaker carry?',
      },
    ],
    [
      'overload',
      'The load draws more than its breaker is rated.',
      {
        trueOf: `the breaker is rated ${given(drawn.In, 'A')}.`,
        whyNot: `The meter reads ${given(drawn.Ib, 'A')}. The cable was right for that, until its factor became ${plainNumber(lagging.value, 2)}.`,
        ask: 'Which two currents are to be compared?',
      },
    ],
  ];
}

function figuresOf(drawn: Case): Offer[] {
  const { of, Iz, unlagged, cool } = factsOf(drawn);
  const pair = (I: number) => `${amps(I)} may flow there. The breaker holds ${given(drawn.In, 'A')}.`;
  return [
    ['both', pair(Iz), { trueOf: 'both factors are in it.', ask: 'What else acts there?' }],
    [
      'no lagging',
      pair(unlagged),
      { id: 'M29', trueOf: 'that leaves the lagging out.', ask: 'Does lagging change where it settles?' },
    ],
    [
      'no ambient',
      pair(cool),
      { id: 'M25', trueOf: 'that leaves the warm loft out.', ask: 'For air of what temperature is the table?' },
    ],
    [
      'table',
      `The table gives ${given(of.It, 'A')}. The meter reads ${given(drawn.Ib, 'A')}.`,
      {
        trueOf: 'both figures are so.',
        whyNot: 'The table is for a cable in the open, in cooler air. It was right before the loft was lagged.',
        ask: 'What acts on the table’s current here?',
      },
    ],
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { place, In, Ib, ambient_degC, lagged_mm, deal } = drawn;
  const { of, ambient, lagging, together, Iz } = factsOf(drawn);
  const text =
    'lagging and warm air leave the cable less than its breaker lets through. Cable, way or breaker has to change.';
  const open = settledAt(carrying(of.cable, { kind: 'clipped', ambient_degC: 30 }, Ib, practice, 3600));
  return {
    kind: 'choose',
    stem: [
      words`In ${place} ${of.words}, has run for years behind a ${quantity(given(In, 'A'))} breaker. A meter reads ${quantity(given(Ib, 'A'))}. Its table gives ${quantity(given(of.It, 'A'))}, in the open and in air of ${quantity(temperatureText(30, practice))}.`,
      words`Then the loft was lagged. Now ${quantity(given(lagged_mm, 'mm'))} of its way lies in lagging, and the loft comes to ${quantity(temperatureText(ambient_degC, practice))}. Where the cable enters the lagging its sheath is browned.`,
      words`For that air the factor is ${quantity(plainNumber(ambient.value, 2))}, and for that length in lagging ${quantity(plainNumber(lagging.value, 2))}. What is the cause, and which two figures show it?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('cause', 'The cause', causesOf(drawn), deal),
      partOf('figures', 'The two figures', figuresOf(drawn), deal + 1),
    ],
    answer: { text },
    scenarios: [],
    hints: [
      words`What may the cable carry there now? Start from its table’s current.`,
      words`Each factor acts on what the one before has left.`,
      words`Then compare that with what the breaker lets through for ever.`,
    ],
    solution: [
      words`Both factors together make ${quantity(plainNumber(together, 3))}. Times ${quantity(given(of.It, 'A'))} that is ${quantity(amps(Iz))}.`,
      words`The breaker holds ${quantity(given(In, 'A'))} and the load takes ${quantity(given(Ib, 'A'))}. Both are more.`,
      words`In the open, at the table’s air, the engine lets it settle at ${quantity(temperatureText(open, practice))} with this load.`,
      words`So ${text}`,
      words`${citedWords(ambient)}; ${citedWords(lagging)}. ${checkYours}`,
    ],
    look: 'Multiply, then compare with the breaker’s rating.',
    cautions: [
      'A cable in lagging may be far hotter than it feels. Switch it off at the breaker before anyone uncovers it.',
      whoDecides,
    ],
  };
}

/** How D09 is drawn and built. */
export const underLoftLaggingSpec: TemplateSpec<Case> = {
  id: 'D09',
  version: 1,
  lesson: '3.1',
  kind: 'choose',
  title: 'The loft that was lagged',
  difficulty: 2,
  practices: ['iec'],
  objectives: ['3.1 divide by factors', '3.1 apply Ib ≤ In ≤ Iz and I2 ≤ 1.45 Iz'],
  misconceptions: ['M25', 'M29'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ place: 'a farmhouse', cable: 'flat 1.5', In: 16, Ib: 14, ambient_degC: 35, lagged_mm: 200, deal: 1 }],
  },
  build: built,
};

/** D09: why a cable overheats since a loft was lagged. */
export const underLoftLagging = defineTemplate(underLoftLaggingSpec);
