import { clad, metals } from '../../material/metals.ts';
import { amount, given, plainNumber } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { otherMetals } from './metal-leads.ts';

// Q11: resistivity of a clad wire, from the copper's share of its section.

interface Case {
  readonly inner: 'aluminium' | 'steel';
  /** Copper, in per cent of the section. */
  readonly share: number;
  readonly from: string;
}

const origins = [
  'A wire from a market stall’s lead',
  'A wire out of a boatyard’s spares',
  'A sample on a tutor’s table',
  'A wire from a cabin’s old heater',
  'A wire from a laundry’s lead',
  'A wire from the lead of a joinery’s sander',
  'A wire out of a drawer in a village hall',
  'A wire from the lead of a farm’s heat lamp',
  'A wire from a theatre’s oldest lead',
  'A wire from the lead of a bakery’s mixer',
  'A wire that was left in a polytunnel',
  'A wire from the bottom of a van',
];

/** Copper’s share in half per cent of the section, least and most. */
const ranges = { aluminium: [20, 60], steel: [30, 80] } as const;

function drawnCase(random: Random): Case | null {
  const inner = random.pick(['aluminium', 'aluminium', 'steel'] as const);
  const [least, most] = ranges[inner];
  const drawn = { inner, share: random.whole(least, most) / 2, from: random.pick(origins) };
  return staysApart(answerOf(drawn), wrongOf(drawn)) ? drawn : null;
}

/** Resistivity as it is told, to four figures [nΩ·m]. */
const told = (metal: 'copper' | 'aluminium' | 'steel') => Number((metals[metal].rho20.value * 1e9).toPrecision(4));
const resistivityText = (rho_nOhmM: number, figures = 3) => amount(rho_nOhmM, figures, 'nΩ·m');

const wireOf = ({ inner, share }: Case) => clad('wire', 'clad wire', metals.copper, metals[inner], share / 100);

function answerOf(drawn: Case): NumberAnswer {
  const value = wireOf(drawn).rho20.value;
  const tolerance = { kind: 'relative', part: 0.01 } as const;
  return { value, kind: 'resistivity', unit: 'nΩ·m', tolerance, figures: 3, text: resistivityText(value * 1e9) };
}

function wrongOf({ inner, share }: Case): WrongValue[] {
  const f = share / 100;
  return [
    {
      id: 'M11',
      value: (f * told('copper') + (1 - f) * told(inner)) * 1e-9,
      trueOf: 'is the average of the two resistivities.',
      ask: 'Two resistors in parallel: is their resistance the average of both?',
    },
    {
      id: 'M10',
      value: told('copper') * 1e-9,
      trueOf: 'is copper’s own.',
      ask: 'How much of the section is not copper, and what does that part carry?',
    },
  ];
}

const law = formula(
  String.raw`\frac{1}{\rho} = \frac{f}{\rho_\mathrm{Cu}} + \frac{1 - f}{\rho_\mathrm{in}}`,
  'One over rho is f over rho copper, plus one minus f over rho of the inner metal.',
);

function built(drawn: Case): BuiltNumber {
  const { inner, share, from } = drawn;
  const answer = answerOf(drawn);
  const f = share / 100;
  const [skin, core] = [f / told('copper'), (1 - f) / told(inner)];
  return {
    kind: 'number',
    stem: [
      words`${from} is ${inner} with a skin of copper. The copper takes ${quantity(given(share, '%'))} of the section, the ${inner} the rest.`,
      words`Take copper at ${quantity(resistivityText(told('copper'), 4))} and ${inner} at ${quantity(resistivityText(told(inner), 4))}. What is the resistivity of the whole wire?`,
    ],
    ask: 'A resistivity in nΩ·m. Three figures are enough.',
    scenarios: [],
    hints: [
      words`Skin and inside are two conductors in parallel. Conductivities add.`,
      words`The conductivity of each part is its share of the section, divided by its resistivity.`,
      words`Add the two. One divided by the sum is the resistivity.`,
    ],
    solution: [
      words`As a part of one, copper has ${quantity(plainNumber(f, 3))} of the section. Divided by its resistivity that is ${quantity(plainNumber(skin, 3))}.`,
      words`The ${inner} gives ${quantity(plainNumber(core, 3))}. The sum is ${quantity(plainNumber(skin + core, 3))}.`,
      words`${law}`,
      words`One divided by the sum is ${quantity(answer.text)}.`,
    ],
    look: 'Parallel parts: add how well they conduct, not how badly.',
    cautions: [otherMetals],
    answer,
    wrong: wrongOf(drawn),
  };
}

/** How Q11 is drawn and built. */
export const cladResistanceSpec: TemplateSpec<Case> = {
  id: 'Q11',
  version: 1,
  lesson: '1.3',
  kind: 'number',
  title: 'Two metals side by side',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['1.3 work out a clad metal as two in parallel'],
  misconceptions: ['M10', 'M11'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ inner: 'aluminium', share: 20, from: 'A sample on a tutor’s table' }],
    na: [{ inner: 'aluminium', share: 20, from: 'A sample on a tutor’s table' }],
  },
  build: built,
};

/** Q11: the resistivity of a clad wire. */
export const cladResistance = defineTemplate(cladResistanceSpec);
