import { metals } from '../../material/metals.ts';
import { mostDeals } from '../deal.ts';
import { amount, percentText, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import { markedAs, perLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { metalNames } from '../unit-1/metal-leads.ts';
import { quantity, words } from '../words.ts';
import { finders, keepOutCaution, toldMass, toldProduct } from './bench-words.ts';
import {
  coreReads,
  isPlain,
  massShare,
  nearestMetal,
  productOf,
  type SuspectMetal,
  suspectMetals,
} from './suspects.ts';

// Q67b: which metal ohms and grams name, and how much of its mass is copper.

interface Case {
  readonly lead: string;
  readonly marked: number;
  /** As measured on one core: [Ω/m] at 20 °C and [kg/m]. */
  readonly R: number;
  readonly mass: number;
  readonly deal: number;
}

const markings = { iec: [0.75, 1, 1.5, 2.5], na: [18, 16, 14] } as const satisfies Record<Practice, unknown>;
const trueMetals: readonly SuspectMetal[] = ['copper', 'cca10', 'cca10', 'cca10', 'aluminium', 'steel'];
/** Copper's share of the volume of the clad wire in question [1]. */
const cladding = 0.1;

function drawnCase(random: Random, practice: Practice): Case | null {
  const { R, mass } = coreReads(random.pick(trueMetals), random.whole(40, 240) / 1e8);
  const spread = () => 1 + random.whole(-8, 8) / 1000;
  const drawn = {
    lead: random.pick(finders),
    marked: random.pick<number>(markings[practice]),
    R: toldResistance(R * spread(), practice).R,
    mass: toldMass(mass * spread(), practice).mass,
    deal: random.whole(0, mostDeals),
  };
  return isPlain(drawn.R * drawn.mass) ? drawn : null;
}

const named = (metal: SuspectMetal) =>
  metal === 'cca10'
    ? 'Copper-clad aluminium, a tenth of its volume copper'
    : `${metalNames[metal].charAt(0).toUpperCase()}${metalNames[metal].slice(1)}`;

function metalsOf({ R, mass, deal }: Case, practice: Practice) {
  const right = nearestMetal(R * mass);
  const told = (metal: SuspectMetal) => toldProduct(productOf(metals[metal]), practice).text;
  const equal = metals.copper.rho20.value / R;
  const weighs = toldMass(metals.copper.density.value * equal, practice).text;
  const offer = (metal: SuspectMetal): Offer => {
    if (metal === 'copper' && right !== 'copper')
      return [
        metal,
        named(metal),
        {
          id: 'M50',
          trueOf: `${amount(equal * 1e6, 2, 'mm²')} of copper has as many ohms.`,
          whyNot: `That much copper would weigh ${weighs}. Only the ohms are equal.`,
          ask: 'What do the grams say?',
        },
      ];
    return [
      metal,
      named(metal),
      {
        trueOf: `its own product is ${told(metal)}.`,
        whyNot: `This core has ${toldProduct(R * mass, practice).text}. Another of the four is nearer.`,
        ask: 'What do you get when you multiply the two readings?',
      },
    ];
  };
  const others = suspectMetals.filter((metal) => metal !== right);
  return { right, part: partOf('metal', 'The metal', [right, ...others].map(offer), deal) };
}

function sharesOf(right: SuspectMetal, deal: number) {
  const share = massShare(cladding);
  const clad = right === 'cca10';
  const offers: Record<'all' | 'by mass' | 'by volume' | 'none', Offer> = {
    all: [
      'all',
      'All of it',
      {
        trueOf: 'that would be so of plain copper.',
        whyNot: 'The product of ohms and grams names another metal here.',
        ask: 'Which metal does the product name?',
      },
    ],
    'by mass': [
      'by mass',
      `About ${percentText(share)}`,
      {
        trueOf: 'that would be so of aluminium with a tenth of its volume copper.',
        whyNot: 'The product of ohms and grams names another metal here.',
        ask: 'Which metal does the product name?',
      },
    ],
    'by volume': [
      'by volume',
      `About ${percentText(cladding)}`,
      clad
        ? { id: 'M12', trueOf: 'a tenth is its share of the volume.', ask: 'Which of the two metals is the denser?' }
        : {
            trueOf: 'no metal of the four has that.',
            whyNot: 'A tenth of the volume is more than a tenth of the mass, since copper is the denser.',
            ask: 'Which metal does the product name?',
          },
    ],
    none: [
      'none',
      'None',
      {
        trueOf: 'that would be so of plain aluminium, and of steel.',
        whyNot: 'The product of ohms and grams names another metal here.',
        ask: 'Which metal does the product name?',
      },
    ],
  };
  const first = right === 'copper' ? 'all' : clad ? 'by mass' : 'none';
  const { [first]: best, ...rest } = offers;
  return partOf('share', 'Copper in its mass', [best, ...Object.values(rest)], deal + 1);
}

const answers: Readonly<Record<SuspectMetal, () => string>> = {
  copper: () => 'it is copper all through.',
  cca10: () => `it is copper-clad aluminium, and copper makes ${percentText(massShare(cladding))} of its mass.`,
  aluminium: () => 'it is plain aluminium, without copper.',
  steel: () => 'it is steel, without copper.',
};

const cladShare = () =>
  words`A clad wire with a tenth of its volume copper has ${quantity(percentText(massShare(cladding)))} of its mass in copper, since copper is the denser.`;

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { lead, marked, R, mass, deal } = drawn;
  const { right, part } = metalsOf(drawn, practice);
  const { name } = perLength[practice];
  const told = (metal: SuspectMetal) => quantity(toldProduct(productOf(metals[metal]), practice).text);
  const text = answers[right]();
  return {
    kind: 'choose',
    stem: [
      words`${lead} is marked ${quantity(markedAs(marked, practice))}. One core of it reads ${quantity(toldResistance(R, practice).text)} at ${quantity(temperatureText(20, practice))}. It weighs ${quantity(toldMass(mass, practice).text)} bare.`,
      words`Straight wires have these products of ohms and grams: aluminium ${told('aluminium')}, copper-clad aluminium with a tenth of its volume copper ${told('cca10')}, copper ${told('copper')}, steel ${told('steel')}.`,
      words`Strands run a little longer than the core, which makes a product up to ${quantity(percentText(0.06))} larger. Which metal is it, and how much of its mass is copper?`,
    ],
    ask: 'Choose one in each part.',
    parts: [part, sharesOf(right, deal)],
    answer: { text },
    scenarios: [],
    hints: [
      words`Multiply the ohms by the grams, each for one ${name} of one core.`,
      words`In that product the size cancels. What is left is the metal’s own.`,
      words`A share of the volume and a share of the mass differ when one metal is the denser.`,
    ],
    solution: [
      words`The product is ${quantity(toldProduct(R * mass, practice).text)}.`,
      words`Nearest below it is ${metalNames[right]}, with ${told(right)}. The lay of the strands explains the rest.`,
      ...(right === 'cca10' ? [cladShare()] : []),
      words`So ${text}`,
      words`A marking is a claim. So is the colour of a skin.`,
    ],
    look: 'Multiply the two readings, and compare.',
    cautions: [keepOutCaution],
  };
}

/** How Q67b is drawn and built. */
export const whichMetalSpec: TemplateSpec<Case> = {
  id: 'Q67b',
  version: 1,
  lesson: '5.2',
  kind: 'choose',
  title: 'Which metal is it',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.2 use R′·m′ to name the metal'],
  misconceptions: ['M12', 'M50'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ lead: finders[0], marked: 1.5, R: 0.036, mass: 0.0025, deal: 1 }],
    na: [{ lead: finders[0], marked: 16, R: 0.036, mass: 0.0025, deal: 1 }],
  },
  build: built,
};

/** Q67b: the metal that ohms and grams name. */
export const whichMetal = defineTemplate(whichMetalSpec);
