import { awgArea } from '../../conductor/awg.ts';
import { metals } from '../../material/metals.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, percentText, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import { markedAs, perLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, Said, TemplateSpec } from '../types.ts';
import { metalNames } from '../unit-1/metal-leads.ts';
import { quantity, words } from '../words.ts';
import { finders, keepOutCaution, toldMass, toldProduct } from './bench-words.ts';
import {
  coreReads,
  densityByMass,
  isPlain,
  nearestMetal,
  productOf,
  type SuspectMetal,
  suspectMetals,
} from './suspects.ts';

// D03: what a lead's conductors are, whatever is printed on it: metal and area, from ohms, grams and strands.

interface Case {
  readonly lead: string;
  readonly marked: number;
  readonly strands: number;
  readonly strand_mm: number;
  /** As measured on one core: [Ω/m] at 20 °C and [kg/m]. */
  readonly R: number;
  readonly mass: number;
  readonly deal: number;
}

const markings = { iec: [1, 1.5, 2.5], na: [16, 14, 12] } as const satisfies Record<Practice, unknown>;
/** The five conductors that such a lead may have: its metal, and its area as a share of the marking. */
const conductors: readonly (readonly [SuspectMetal, number])[] = [
  ['copper', 1],
  ['copper', 0.6],
  ['cca10', 1],
  ['cca10', 0.52],
  ['aluminium', 1],
];
/** Copper's share of the volume of the clad wire in question [1]. */
const cladding = 0.1;
/** Areas to choose from keep this from each other, in parts (our choice: more than the readings are off). */
const apart = 0.08;

const areaOf = ({ strands, strand_mm }: Pick<Case, 'strands' | 'strand_mm'>) =>
  (strands * Math.PI * (strand_mm * 1e-3) ** 2) / 4;
const claimed = (marked: number, practice: Practice) => (practice === 'iec' ? marked * 1e-6 : awgArea(marked));

function drawnCase(random: Random, practice: Practice): Case | null {
  const [metal, share] = random.pick(conductors);
  const marked = random.pick<number>(markings[practice]);
  const strand_mm = random.pick([0.16, 0.18, 0.2, 0.25]);
  const one = areaOf({ strands: 1, strand_mm });
  const strands = Math.round((claimed(marked, practice) * share) / one);
  const { R, mass } = coreReads(metal, strands * one);
  const spread = () => 1 + random.whole(-8, 8) / 1000;
  const drawn = {
    lead: random.pick(finders),
    marked,
    strands,
    strand_mm,
    R: toldResistance(R * spread(), practice).R,
    mass: toldMass(mass * spread(), practice).mass,
    deal: random.whole(0, mostDeals),
  };
  return isPlain(drawn.R * drawn.mass) && areasOf(drawn, practice).length >= 4 ? drawn : null;
}

function metalsOf(drawn: Case, practice: Practice): Offer[] {
  const { R, mass, marked } = drawn;
  const right = nearestMetal(R * mass);
  const offer = (metal: SuspectMetal): Offer => {
    const own = toldProduct(productOf(metals[metal]), practice).text;
    const said: Said =
      metal === 'copper' && right === 'cca10'
        ? {
            id: 'M10',
            trueOf: 'the skin of these strands is copper.',
            ask: `How many ohms would copper of this area have?`,
          }
        : {
            trueOf: `its product of ohms and grams is ${own}.`,
            whyNot: `This core, marked ${markedAs(marked, practice)}, has ${toldProduct(R * mass, practice).text}. Another metal is nearer.`,
            ask: 'What do you get when you multiply the two readings?',
          };
    return [metal, `${metalNames[metal].charAt(0).toUpperCase()}${metalNames[metal].slice(1)}`, said];
  };
  return [right, ...suspectMetals.filter((metal) => metal !== right)].map(offer);
}

const mm2 = (area: number) => amount(area * 1e6, 2, 'mm²');

/** The area of metal that is there, and those that wrong ideas lead to; those too near one before are left out. */
function areasOf(drawn: Case, practice: Practice): Offer[] {
  const { R, mass, marked } = drawn;
  const metal = nearestMetal(R * mass);
  const all: (readonly [string, number, Said])[] = [
    ['there', areaOf(drawn), { trueOf: 'that is what the strands make.', ask: 'What do the grams say?' }],
    [
      'equal copper',
      metals.copper.rho20.value / R,
      {
        id: 'M50',
        trueOf: 'that is the copper which has as many ohms.',
        ask: 'Would that much copper weigh what this core weighs?',
      },
    ],
    [
      'marked',
      claimed(marked, practice),
      {
        trueOf: 'that is what the marking claims.',
        whyNot: 'A marking is a claim. Strands and grams tell what is there.',
        ask: 'How much do the strands make together?',
      },
    ],
    ...(metal === 'cca10'
      ? [
          [
            'by mass',
            mass / densityByMass(cladding),
            {
              id: 'M12',
              trueOf: 'that takes a tenth of the volume for a tenth of the mass.',
              ask: 'What does a litre of this wire weigh?',
            },
          ] as const,
        ]
      : []),
    [
      'squares',
      (areaOf(drawn) * 4) / Math.PI,
      {
        trueOf: 'that counts each strand as a square.',
        whyNot: 'A strand is round. Its area is a little more than three quarters of that square.',
        ask: 'What is the area of a circle?',
      },
    ],
    [
      'radius',
      areaOf(drawn) * 4,
      {
        trueOf: 'that takes the width of a strand for half of it.',
        whyNot: 'The width told is that of the whole strand, from side to side.',
        ask: 'Which of the two stands in your formula: the radius, or the width?',
      },
    ],
    [
      'half',
      areaOf(drawn) / 2,
      {
        trueOf: 'that is half of what is there.',
        whyNot: 'Ohms and grams were told for one core. So nothing is to be halved.',
        ask: 'For how many cores do the readings stand?',
      },
    ],
  ];
  const kept = all.filter(([, area], i) => all.slice(0, i).every(([, other]) => Math.abs(area / other - 1) > apart));
  return kept.slice(0, 5).map(([id, area, said]): Offer => [id, mm2(area), said]);
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { lead, marked, strands, strand_mm, R, mass, deal } = drawn;
  const right = nearestMetal(R * mass);
  const told = (metal: SuspectMetal) => quantity(toldProduct(productOf(metals[metal]), practice).text);
  const { name } = perLength[practice];
  const text = `it is ${metalNames[right]}, with ${mm2(areaOf(drawn))} of metal in each core.`;
  const equal = metals.copper.rho20.value / R;
  return {
    kind: 'choose',
    stem: [
      words`${lead} is marked ${quantity(markedAs(marked, practice))}. One core has ${quantity(`${strands}`)} strands of ${quantity(given(strand_mm, 'mm'))}.`,
      words`It reads ${quantity(toldResistance(R, practice).text)} at ${quantity(temperatureText(20, practice))}, and weighs ${quantity(toldMass(mass, practice).text)} bare. The strands look like copper.`,
      words`Straight wires have these products of ohms and grams: aluminium ${told('aluminium')}, copper-clad aluminium ${told('cca10')}, copper ${told('copper')}, steel ${told('steel')}. The lay adds up to ${quantity(percentText(0.06))}.`,
      words`Which metal is it, and how much of it is in one core?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('metal', 'The metal', metalsOf(drawn, practice), deal),
      partOf('area', 'Its area', areasOf(drawn, practice), deal + 1),
    ],
    answer: { text },
    scenarios: [],
    hints: [
      words`There are two unknowns, metal and area. So it takes two readings.`,
      words`Multiply ohms and grams of one ${name}. The area drops out of that.`,
      words`Then count and measure strands, or divide the grams by the metal’s density.`,
    ],
    solution: [
      words`The product is ${quantity(toldProduct(R * mass, practice).text)}. Nearest below it is ${metalNames[right]}, with ${told(right)}.`,
      words`The strands make ${quantity(mm2(areaOf(drawn)))}. The grams say so too: divided by density and lay they give as much.`,
      ...(right === 'copper'
        ? []
        : [words`By its ohms the core equals ${quantity(mm2(equal))} of copper. Only the ohms are equal.`]),
      words`So ${text}`,
    ],
    look: 'Which reading depends on the metal alone, and which on how much of it there is?',
    cautions: [keepOutCaution],
  };
}

/** How D03 is drawn and built. */
export const trueConductorSpec: TemplateSpec<Case> = {
  id: 'D03',
  version: 1,
  lesson: '5.2',
  kind: 'choose',
  title: 'What is in this lead',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.2 use R′, g/m, strands, magnet and scrape', '5.2 use R′·m′ to name the metal'],
  misconceptions: ['M10', 'M12', 'M50'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: finders[0], marked: 1.5, strands: 24, strand_mm: 0.2, R: 0.036, mass: 0.00255, deal: 1 }],
    na: [{ lead: finders[0], marked: 16, strands: 24, strand_mm: 0.2, R: 0.036, mass: 0.00255, deal: 1 }],
  },
  build: built,
};

/** D03: metal and area of a suspect lead. */
export const trueConductor = defineTemplate(trueConductorSpec);
