import { type CastKey, cast } from '../../examples/cast.ts';
import { heatMade } from '../../heating/steady.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { kelvin } from '../../quantity.ts';
import { withResistance } from '../carrying.ts';
import { type Cord, cordOf, cordsOf, ratingNote } from '../cords.ts';
import { dealt, mostDeals } from '../deal.ts';
import { heldCurrent } from '../experiment.ts';
import { amount, given, plainNumber } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q04: which change halves the heat made in each metre.

interface Case {
  readonly cord: CastKey;
  readonly load: string;
  readonly I_A: number;
  readonly length_m: number;
  readonly deal: number;
}

const loads = [
  'a heat gun in a theatre workshop',
  'a soup warmer on a market stall',
  'a glue pot in a joinery',
  'a dough warmer in a bakery',
  'a fan heater in a site cabin',
  'a steam iron in a laundry',
];

function drawnCase(random: Random, practice: Practice): Case {
  const cord = random.pick(cordsOf(practice));
  return {
    cord: cord.key,
    load: random.pick(loads),
    I_A: random.whole(4, cord.rating),
    length_m: 2 * random.whole(2, 12),
    deal: random.whole(0, mostDeals),
  };
}

/** A change to the lead or its load: what current, length and resistance are multiplied by. */
interface Change {
  readonly id: string;
  readonly I_A: number;
  readonly length: number;
  readonly resistance: number;
  readonly text: string;
  readonly said: Said;
}

function changesOf({ I_A, length_m }: Case): Change[] {
  const same = { I_A, length: 1, resistance: 1 };
  const less = Number((I_A / Math.SQRT2).toPrecision(3));
  return [
    {
      ...same,
      id: 'current over root two',
      I_A: less,
      text: `Cut the current to ${amount(less, 3, 'A')}.`,
      said: {
        trueOf: 'that current makes half the heat.',
        ask: 'What is 0.71 times 0.71?',
      },
    },
    {
      ...same,
      id: 'half the current',
      I_A: I_A / 2,
      text: `Cut the current to ${given(I_A / 2, 'A')}.`,
      said: {
        id: 'M01',
        trueOf: 'half the current leaves a quarter of the heat.',
        ask: 'Heat goes with amps times amps. What is a half times a half?',
      },
    },
    {
      ...same,
      id: 'half the length',
      length: 0.5,
      text: `Cut the lead to ${given(length_m / 2, 'm')}.`,
      said: {
        id: 'M05',
        trueOf: 'half the length halves the heat of the whole lead, not of each metre.',
        whyNot: 'Each metre makes its own heat. The metres that are left go on as before.',
        ask: 'Does a metre in the middle notice that the lead is shorter?',
      },
    },
    {
      ...same,
      id: 'twice the resistance',
      resistance: 2,
      text: 'Take a lead with twice the resistance in each metre, at the same current.',
      said: {
        trueOf: 'at the same current, twice the resistance makes twice the heat.',
        whyNot: 'Heat is current squared times resistance. With the current held, more ohms mean more heat.',
        ask: 'Which gets warmer at one current: a thick wire or a thin one?',
      },
    },
  ];
}

/** Heat in each metre after a change, in parts of that before, at 20 °C, by the engine. */
function heatLeft(drawn: Case, change: Change): number {
  const T = kelvin(20);
  const before = heldCurrent(cordOf(drawn.cord), 20, drawn.I_A, 1800);
  const of = buildCase({ ...before, lead: { length_m: drawn.length_m } });
  const cable = withResistance(cast[drawn.cord], of.cable.conductor.R20 * change.resistance);
  const after = buildCase({ ...before, cable, lead: { length_m: drawn.length_m * change.length } });
  return heatMade(after, change.I_A, T) / heatMade(of, drawn.I_A, T);
}

const halves = (left: number) => Math.abs(left - 0.5) < 0.005;

function solutionOf(drawn: Case, cord: Cord, text: string) {
  const told = (id: string) => plainNumber(heatLeft(drawn, changesOf(drawn).find((one) => one.id === id) as Change), 2);
  return [
    words`Heat in each metre is the number of loaded cores, times current squared, times the resistance of a metre.`,
    words`${law}`,
    words`The length is not in it. Half the length leaves ${told('half the length')} times the heat in each metre.`,
    words`Twice the resistance makes ${told('twice the resistance')} times the heat. Half the current leaves ${told('half the current')} times.`,
    words`To halve the heat, divide the current by the root of 2, which is 1.41. So ${text}`,
    words`${ratingNote(cord)}`,
  ];
}

const law = formula("W' = n\\,I^2R'", 'W dash is n times I squared times R dash.');

function built(drawn: Case): BuiltChoose {
  const cord = cordOf(drawn.cord);
  const changes = changesOf(drawn);
  const right = changes.filter((change) => halves(heatLeft(drawn, change)));
  const [only] = right;
  if (!only || right.length > 1) throw new Error('one change halves the heat');
  const options = changes.map(
    ({ id, text, said }): ChooseOption => (id === only.id ? { id, text } : { id, text, said }),
  );
  const text = `${amount(only.I_A, 3, 'A')} leaves half the heat.`;
  return {
    kind: 'choose',
    stem: [
      words`The lead of ${drawn.load} is ${quantity(given(drawn.length_m, 'm'))} of ${cord.words}. It carries ${quantity(given(drawn.I_A, 'A'))}.`,
      words`Which one change halves the heat made in each metre of it? Take the metal at ${quantity(given(20, '°C'))} throughout.`,
    ],
    ask: 'Choose one. Everything else stays as it is.',
    parts: [{ id: 'change', label: 'The change', options: dealt(options, drawn.deal), right: only.id }],
    answer: { text },
    scenarios: [
      { name: `${drawn.I_A}\u00A0A`, scenario: heldCurrent(cord, 20, drawn.I_A, 1800) },
      { name: amount(only.I_A, 3, 'A'), scenario: heldCurrent(cord, 20, only.I_A, 1800) },
    ],
    hints: [
      words`Write down what the heat in one metre depends on.`,
      words`Heat goes with current times current. Cross out each change that leaves the metre as it was.`,
      words`Which number, times itself, is a half?`,
    ],
    solution: solutionOf(drawn, cord, text),
    look: 'Open both cases and compare the heat made in each metre.',
    cautions: [],
  };
}

/** How Q04 is drawn and built. */
export const halfTheHeatSpec: TemplateSpec<Case> = {
  id: 'Q04',
  version: 1,
  lesson: '1.1',
  kind: 'choose',
  title: 'Half the heat',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['1.1 state the effect of ×2 and ×½ on heat without a calculator'],
  misconceptions: ['M01', 'M05'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C150', load: 'a glue pot in a joinery', I_A: 12, length_m: 10, deal: 1 }],
    na: [{ cord: 'A14', load: 'a glue pot in a joinery', I_A: 12, length_m: 10, deal: 1 }],
  },
  build: built,
};

/** Q04: which change halves the heat made in each metre. */
export const halfTheHeat = defineTemplate(halfTheHeatSpec);
