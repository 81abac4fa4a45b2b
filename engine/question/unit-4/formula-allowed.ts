import { adiabaticFrom, adiabaticTo, type ShortRange, shortRange, withstand } from '../../protection/withstand.ts';
import { given, rounded } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { shortCaution, spanText } from './asked-devices.ts';
import { areaTold, type Core, coreSizes, coreText, kTold, shortScenario, sizeWithArea } from './short-circuit.ts';

// Q61: whether t = k²S²/I² may be used for a time, and what to use instead.

interface Case {
  readonly place: string;
  readonly device: 'fuse' | 'breaker';
  readonly size: number;
  readonly I_A: number;
  readonly t_s: number;
}

const places = [
  'On a farm',
  'In a bakery',
  'Behind a stage',
  'In a boatyard',
  'At a market stall',
  'In a joinery',
  'In a village hall',
];
const copperInPvc: Core = { metal: 'copper', plastic: 'pvc70' };

/** Times of each range, clear of its ends [s]. */
const times: Readonly<Record<ShortRange, readonly number[]>> = {
  'let-through': [0.002, 0.004, 0.006, 0.01, 0.015, 0.02, 0.03, 0.05, 0.07],
  adiabatic: [0.15, 0.2, 0.3, 0.4, 0.6, 0.8, 1.2, 2, 3, 4],
  'warm-up': [8, 12, 20, 35, 60, 90, 150, 240, 400, 600],
};
/** Heat of the event, in parts of what the core stands without losing any (our choice: plausible currents). */
const shares: Readonly<Record<ShortRange, readonly [number, number]>> = {
  'let-through': [5, 60],
  adiabatic: [20, 90],
  'warm-up': [60, 90],
};

function drawnCase(random: Random, practice: Practice): Case | null {
  const range = random.pick<ShortRange>(['let-through', 'adiabatic', 'warm-up']);
  const sizes = coreSizes(copperInPvc, practice).slice(0, 5);
  const size = random.pick(sizes);
  const t_s = random.pick(times[range]);
  const area = areaTold(size, practice);
  const [least, most] = shares[range];
  const heat = (random.whole(least, most) / 100) * withstand(kTold(copperInPvc, area) * 1e6, area);
  // for minutes the core sheds heat, so that more current than the formula's would flow
  const I_A = rounded(Math.sqrt(heat / Math.min(t_s, 20)), 2);
  return { place: random.pick(places), device: random.pick(['fuse', 'breaker']), size, I_A, t_s };
}

const answers: readonly (readonly [ShortRange, string])[] = [
  ['let-through', 'Compare the I²t that the device lets through with k²S².'],
  ['adiabatic', 'Use the formula t = k²S²/I².'],
  ['warm-up', 'Use the warm-up model, with heat leaving the core.'],
];

const [shortest, longest] = [adiabaticFrom, adiabaticTo].map((t) => given(t, 's')) as [string, string];

function saidOf({ t_s }: Case, chosen: ShortRange): Said {
  const right = shortRange(t_s);
  const t = spanText(t_s);
  if (chosen === 'adiabatic')
    return right === 'warm-up'
      ? {
          id: 'M39',
          trueOf: `the formula is for ${shortest} to ${longest}.`,
          ask: `Does a warm core keep all of its heat for ${t}?`,
        }
      : {
          trueOf: `the formula is for ${shortest} to ${longest}.`,
          whyNot: 'In less than that, the first swing of the current may be far higher than its mean.',
          ask: 'What does the maker tell of a device that acts so soon?',
        };
  if (chosen === 'warm-up')
    return {
      trueOf: `the warm-up model is for more than ${longest}.`,
      whyNot: `In ${t} almost no heat has left the core. The plainer way is enough.`,
      ask: `How far does heat get into the plastic in ${t}?`,
    };
  return {
    trueOf: `that is for less than ${shortest}.`,
    whyNot: `In ${t} the current has settled, and its effective value tells the heat.`,
    ask: 'How many swings of the mains are there in that time?',
  };
}

const texts: Readonly<Record<ShortRange, string>> = {
  'let-through': `shorter than ${shortest}, where the device’s let-through decides.`,
  adiabatic: `between ${shortest} and ${longest}, where the formula holds.`,
  'warm-up': `longer than ${longest}, where heat leaves and the warm-up model is needed.`,
};

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { place, device, size, I_A, t_s } = drawn;
  const right = shortRange(t_s);
  const options = answers.map(
    ([id, text]): ChooseOption => (id === right ? { id, text } : { id, text, said: saidOf(drawn, id) }),
  );
  const text = `${spanText(t_s)} is ${texts[right]}`;
  const area = areaTold(size, practice);
  return {
    kind: 'choose',
    stem: [
      words`${place} a recorder has caught a fault. For ${quantity(spanText(t_s))} a current of ${quantity(given(I_A, 'A'))} flowed in cores of ${quantity(sizeWithArea(size, practice))}, ${coreText(copperInPvc)}. Then the ${device} had cleared it.`,
      words`Did the insulation stay within its limit? Which way of working that out is sound here?`,
    ],
    ask: 'Choose one.',
    parts: [{ id: 'way', label: 'The way', options, right }],
    answer: { text },
    scenarios: right === 'warm-up' ? [] : shortScenario(copperInPvc, area, I_A, t_s, practice),
    hints: [
      words`The formula leaves something out. For which times may that be left out?`,
      words`Is the time longer than a few seconds? Then heat has had time to leave.`,
      words`Is it only a few swings of the mains? Then the current has no steady value yet.`,
    ],
    solution: [
      words`The formula takes all heat to stay in the core. That holds for ${longest} at most.`,
      words`Below ${shortest} the current’s first swing may be higher, and a device may cut it short. There I²t is compared, from the maker’s sheet.`,
      words`So ${text}`,
    ],
    look: 'Put the time on a line with two marks: a tenth of a second, and five seconds.',
    cautions: [shortCaution],
  };
}

/** How Q61 is drawn and built. */
export const formulaAllowedSpec: TemplateSpec<Case> = {
  id: 'Q61',
  version: 1,
  lesson: '4.4',
  kind: 'choose',
  title: 'Is the formula allowed',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['4.4 use t = k²S²/I² and its limits'],
  misconceptions: ['M39'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ place: 'On a farm', device: 'fuse', size: 1.5, I_A: 45, t_s: 20 }],
    na: [{ place: 'On a farm', device: 'fuse', size: 14, I_A: 60, t_s: 20 }],
  },
  build: built,
};

/** Q61: whether the short-circuit formula may be used. */
export const formulaAllowed = defineTemplate(formulaAllowedSpec);
