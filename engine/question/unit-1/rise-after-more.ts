import type { CastKey } from '../../examples/cast.ts';
import { settledAt } from '../carrying.ts';
import { type Cord, cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { dealt, mostDeals } from '../deal.ts';
import { heldCurrent } from '../experiment.ts';
import { given, plainNumber, riseText, rounded, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';

// Q03b: does the rise grow exactly with current squared, a little less, or a little more, and why.

interface Case {
  readonly cord: CastKey;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly more_A: number;
  readonly deal: number;
}

// from, to [A]: 1.4 to 2.2 times
const steps: readonly (readonly [number, number])[] = [
  [5, 8],
  [5, 10],
  [6, 9],
  [6, 12],
  [7, 10],
  [8, 12],
  [8, 16],
  [9, 14],
  [10, 15],
  [10, 18],
  [10, 20],
  [12, 18],
  [12, 20],
];

function drawnCase(random: Random, practice: Practice): Case | null {
  const [I_A, more_A] = random.pick(steps);
  const drawn = {
    cord: random.pick(cordsOf(practice)).key,
    ambient_degC: random.whole(10, 30),
    I_A,
    more_A,
    deal: random.whole(0, mostDeals),
  };
  const { first, second, grown } = factsOf(drawn);
  const square = (more_A / I_A) ** 2;
  const told = first >= 3 && second >= 12 && drawn.ambient_degC + second < 100;
  // the engine's answer keeps clear of current squared, and is nearer to it than to current alone
  return told && grown < 0.975 * square && grown > (square + more_A / I_A) / 2 ? drawn : null;
}

/** Both rises by the engine [K], and the second over the first. */
function factsOf({ cord: key, ambient_degC, I_A, more_A }: Case) {
  const cord = cordOf(key);
  const rise = (I: number) => settledAt(heldCurrent(cord, ambient_degC, I, 1800)) - ambient_degC;
  const [first, second] = [rise(I_A), rise(more_A)];
  return { cord, first, second, grown: second / first };
}

/** A ratio to three figures, without zeros at its end. */
const times = (ratio: number) => String(rounded(ratio, 3));

/** An answer, and whether the rise's growth is such. */
interface Answer {
  readonly id: string;
  readonly holds: (grown: number) => boolean;
  readonly text: string;
  readonly said: Said;
}

function answersOf({ I_A, more_A }: Case): Answer[] {
  const ratio = more_A / I_A;
  const square = ratio * ratio;
  const exact = (grown: number) => Math.abs(grown / square - 1) <= 0.005;
  const asAmps = (grown: number) => Math.abs(grown / ratio - 1) <= 0.02;
  const [r, r2] = [times(ratio), times(square)];
  return [
    {
      id: 'exactly the square',
      holds: exact,
      text: `Exactly ${r2} times, for heat goes with current squared.`,
      said: {
        id: 'M04',
        trueOf: 'that is true of the heat at one metal temperature.',
        ask: 'The surface is hotter now. Does it shed as much for each kelvin as it did before?',
      },
    },
    {
      id: 'a little less',
      holds: (grown) => !exact(grown) && !asAmps(grown) && grown < square,
      text: `A little less than ${r2} times, for a hotter surface sheds more for each kelvin.`,
      said: { trueOf: 'the surface does shed more for each kelvin.', ask: 'Is that all that changes?' },
    },
    {
      id: 'a little more',
      holds: (grown) => !exact(grown) && grown > square,
      text: `A little more than ${r2} times, for hot metal makes more heat.`,
      said: {
        trueOf: 'hot metal does make more heat, but something else outdoes it.',
        whyNot: 'A hotter surface also sheds more heat for each kelvin of rise. In free air that gain is the greater.',
        ask: 'What draws the air past a surface faster when it is hotter?',
      },
    },
    {
      id: 'as the current',
      holds: asAmps,
      text: `About ${r} times, for the rise goes as the current does.`,
      said: {
        id: 'M03',
        trueOf: 'the current itself grew that much.',
        ask: 'How many times as much heat does the cord have to shed?',
      },
    },
  ];
}

function solutionOf(drawn: Case, cord: Cord, text: string) {
  const { first, second } = factsOf(drawn);
  const ratio = drawn.more_A / drawn.I_A;
  return [
    words`The current grows ${times(ratio)} times. At one metal temperature the heat grows ${times(ratio * ratio)} times.`,
    words`Hot metal makes a little more than that. But the hotter surface sheds more for each kelvin, and here that wins.`,
    words`The engine adds both. The rise goes from ${quantity(`${plainNumber(first, 2)}\u00A0K`)} to ${quantity(`${plainNumber(second, 2)}\u00A0K`)}.`,
    words`So ${text}`,
    words`${ratingNote(cord)}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { cord, first, grown } = factsOf(drawn);
  const answers = answersOf(drawn);
  const right = answers.find(({ holds }) => holds(grown));
  if (!right) throw new Error('the rise grows in a way that no answer tells');
  const options = answers.map(
    ({ id, text, said }): ChooseOption => (id === right.id ? { id, text } : { id, text, said }),
  );
  const from = quantity(given(drawn.I_A, 'A'));
  const to = quantity(given(drawn.more_A, 'A'));
  const square = times((drawn.more_A / drawn.I_A) ** 2);
  const text = `the rise grows ${times(grown)} times, and the square would be ${square}.`;
  return {
    kind: 'choose',
    stem: [
      words`In still air at ${quantity(temperatureText(drawn.ambient_degC, practice))}, ${cord.words} carries ${from}. Its conductor settles ${quantity(riseText(first))} above the air.`,
      words`The current is then raised to ${to}, and held until the temperature stands. How many times as large is the rise?`,
    ],
    ask: 'Choose what is nearest, with its reason.',
    parts: [{ id: 'growth', label: 'The new rise', options: dealt(options, drawn.deal), right: right.id }],
    answer: { text },
    scenarios: [
      { name: `${drawn.I_A}\u00A0A`, scenario: heldCurrent(cord, drawn.ambient_degC, drawn.I_A, 3600) },
      { name: `${drawn.more_A}\u00A0A`, scenario: heldCurrent(cord, drawn.ambient_degC, drawn.more_A, 3600) },
    ],
    hints: [
      words`First find how many times as large the current is, and then the heat.`,
      words`Two things change as the cord warms: how much heat the metal makes, and how much each kelvin sheds.`,
      words`In free air, which of the two changes is the greater?`,
    ],
    solution: solutionOf(drawn, cord, text),
    look: 'Open both cases, and divide the second rise by the first.',
    cautions: overloadCaution(cord, drawn.more_A),
  };
}

/** How Q03b is drawn and built. */
export const riseAfterMoreSpec: TemplateSpec<Case> = {
  id: 'Q03b',
  version: 1,
  lesson: '1.1',
  kind: 'choose',
  title: 'Not quite the square',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['1.1 separate heat from temperature rise'],
  misconceptions: ['M04', 'M03'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C150', ambient_degC: 20, I_A: 8, more_A: 16, deal: 1 }],
    na: [{ cord: 'A14', ambient_degC: 20, I_A: 8, more_A: 16, deal: 1 }],
  },
  build: built,
};

/** Q03b: whether the rise grows with current squared, a little less or a little more. */
export const riseAfterMore = defineTemplate(riseAfterMoreSpec);
