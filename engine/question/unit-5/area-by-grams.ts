import { metals } from '../../material/metals.ts';
import { amount, given, percentText, temperatureText } from '../figures.ts';
import { markedAs, perLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { staysApartRounded } from '../unit-3/two-figures.ts';
import { formula, quantity, words } from '../words.ts';
import { finders, keepOutCaution, toldMass } from './bench-words.ts';
import { cladOf, densityByMass, layFactor } from './suspects.ts';

// Q67c: the area of metal in a clad core, from what it weighs.

interface Case {
  readonly lead: string;
  readonly marked: number;
  /** Copper's share of the volume, in per cent. */
  readonly volume: number;
  /** As measured on one core: [Ω/m] at 20 °C and [kg/m]. */
  readonly R: number;
  readonly mass: number;
}

const markings = { iec: [0.75, 1, 1.5, 2.5], na: [18, 16, 14] } as const satisfies Record<Practice, unknown>;

function drawnCase(random: Random, practice: Practice): Case | null {
  const volume = random.pick([8, 10, 12, 15, 18, 20]);
  const area = random.whole(40, 240) / 1e8;
  const { rho20, density } = cladOf(volume / 100);
  const drawn = {
    lead: random.pick(finders),
    marked: random.pick<number>(markings[practice]),
    volume,
    R: toldResistance((rho20.value * layFactor) / area, practice).R,
    mass: toldMass(density.value * layFactor * area, practice).mass,
  };
  // an area that the marking tells would need no balance
  const told = practice === 'iec' && Math.abs(answerOf(drawn).value / (drawn.marked * 1e-6) - 1) < 0.05;
  return !told && staysApartRounded(answerOf(drawn), wrongOf(drawn)) ? drawn : null;
}

const densityOf = ({ volume }: Case) => cladOf(volume / 100).density.value;

function answerOf(drawn: Case): NumberAnswer {
  const value = drawn.mass / densityOf(drawn);
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value, kind: 'area', unit: 'mm²', tolerance, figures: 3, text: amount(value * 1e6, 3, 'mm²') };
}

function wrongOf(drawn: Case): WrongValue[] {
  return [
    {
      id: 'M12',
      value: drawn.mass / densityByMass(drawn.volume / 100),
      trueOf: 'takes the share of the volume for one of the mass.',
      whyNot: 'A share of the volume mixes the two densities as they stand. Copper is the denser by far.',
      ask: 'What does a litre of this wire weigh?',
    },
    {
      id: 'M50',
      value: metals.copper.rho20.value / drawn.R,
      trueOf: 'is the copper that has as many ohms.',
      ask: 'Would that much copper weigh as many grams?',
    },
  ];
}

const law = formula(String.raw`A = \frac{m'}{d}`, 'A is m prime over d.');

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn);
  const { lead, marked, volume, R, mass } = drawn;
  const { copper, aluminium } = metals;
  const { name } = perLength[practice];
  return {
    kind: 'number',
    stem: [
      words`${lead} is marked ${quantity(markedAs(marked, practice))}. It was found to be aluminium clad with copper: ${quantity(given(volume, '%'))} of its volume is copper.`,
      words`One core reads ${quantity(toldResistance(R, practice).text)} at ${quantity(temperatureText(20, practice))} and weighs ${quantity(toldMass(mass, practice).text)} bare.`,
      words`Copper has ${quantity(given(copper.density.value, 'kg/m³'))} and ${quantity(amount(copper.rho20.value * 1e9, 4, 'nΩ·m'))}, aluminium ${quantity(given(aluminium.density.value, 'kg/m³'))}. What area of metal does one core have, by its grams?`,
    ],
    ask: 'An area in mm². Three figures are enough.',
    scenarios: [],
    hints: [
      words`First find what the mixed metal weighs: each density by its share of the volume.`,
      words`Then divide what one ${name} weighs by that.`,
      words`The ohms tell another thing: how much copper would conduct as well.`,
    ],
    solution: [
      words`The mixed metal has ${quantity(amount(densityOf(drawn), 4, 'kg/m³'))}.`,
      words`${law}`,
      words`So one core has ${quantity(answer.text)} of metal.`,
      words`By its ohms it equals ${quantity(amount((copper.rho20.value / R) * 1e6, 3, 'mm²'))} of copper. It fills more room, weighs less, and needs other terminals.`,
      words`By its mass ${quantity(percentText((volume / 100) * (copper.density.value / densityOf(drawn))))} of it is copper.`,
    ],
    look: 'Which reading belongs to the area of metal, and which to how well it conducts?',
    cautions: [keepOutCaution],
    answer,
    wrong: wrongOf(drawn),
  };
}

/** How Q67c is drawn and built. */
export const areaByGramsSpec: TemplateSpec<Case> = {
  id: 'Q67c',
  version: 1,
  lesson: '5.2',
  kind: 'number',
  title: 'Area by weighing',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.2 use R′, g/m, strands, magnet and scrape', '5.2 state equal copper size'],
  misconceptions: ['M12', 'M50'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: finders[0], marked: 1.5, volume: 10, R: 0.036, mass: 0.0025 }],
    na: [{ lead: finders[0], marked: 16, volume: 10, R: 0.036, mass: 0.0025 }],
  },
  build: built,
};

/** Q67c: the area of a clad core from its grams. */
export const areaByGrams = defineTemplate(areaByGramsSpec);
