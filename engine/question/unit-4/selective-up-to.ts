import { meltingEnergy } from '../../protection/let-through.ts';
import { selectiveByCurves } from '../../protection/selectivity.ts';
import { amount, given, rounded } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { shortCaution, withArticle } from './asked-devices.ts';

// Q62: up to which fault current only the lower of two devices opens, by their I²t.

interface Case {
  readonly place: string;
  /** Rating of the upper fuse and of the lower breaker [A]. */
  readonly upper_A: number;
  readonly lower_A: number;
  /** What starts to melt the upper fuse [A²s]. */
  readonly melts: number;
  /** Fault currents [A], and what the lower breaker lets through at each until it has cleared [A²s]. */
  readonly faults_A: readonly number[];
  readonly through: readonly number[];
}

const places = ['a joinery', 'a bakery', 'a boatyard', 'a laundry', 'a theatre workshop', 'a village hall'];
const faultSets: readonly (readonly number[])[] = [
  [500, 1000, 2000, 4000],
  [400, 800, 1500, 3000],
  [600, 1200, 2500, 5000],
];

/** A breaker's sheet is invented; the fuse has its standard's least figure or, in `na`, an invented one. */
function drawnCase(random: Random, practice: Practice): Case | null {
  const upper_A = random.pick(practice === 'iec' ? [32, 40, 50, 63, 80] : [40, 60, 80, 100]);
  const lower_A = random.pick(practice === 'iec' ? [6, 10, 13, 16, 20] : [15, 20]);
  const melts = meltsOf(upper_A, practice, random);
  const first = random.pick([0, 1, 1, 2, 2, 3, 3, 4]); // so many of the four currents are to be selective
  const grows = random.whole(160, 240) / 100;
  const faults_A = random.pick(faultSets);
  const through = faults_A.map((_, i) => rounded(melts * grows ** (i - first + random.whole(35, 65) / 100), 2));
  const drawn = { place: random.pick(places), upper_A, lower_A, melts, faults_A, through };
  const clear = through.every((I2t) => Math.abs(I2t / melts - 1) > 0.12 && I2t >= 100);
  const grown = through.every((I2t, i) => i === 0 || I2t > (through[i - 1] as number));
  return clear && grown && selectiveCount(drawn) === first ? drawn : null;
}

function meltsOf(upper_A: number, practice: Practice, random: Random): number {
  if (practice === 'na') return 100 * random.whole(20, 250);
  const found = meltingEnergy(upper_A);
  if (!found) throw new Error(`no melting energy of ${upper_A} A`);
  return found.least.value;
}

/** How many of the currents, from the least on, open the lower device alone. */
function selectiveCount({ melts, through }: Case): number {
  const at = through.findIndex((downstream) => !selectiveByCurves({ upstream: melts, downstream }).selective);
  return at < 0 ? through.length : at;
}

function textOf({ faults_A }: Case, count: number): string {
  if (count === 0) return 'At none of them.';
  return count === faults_A.length ? 'At all four of them.' : `Up to ${given(faults_A[count - 1] as number, 'A')}.`;
}

const energy = (I2t: number) => amount(I2t, 2, 'A²s');

function saidOf(drawn: Case, count: number): Said {
  const { faults_A, through, melts } = drawn;
  const right = selectiveCount(drawn);
  const at = Math.min(count, right);
  const I = given(faults_A[at] as number, 'A');
  const trueOf = `at ${I} the breaker lets ${energy(through[at] as number)} through.`;
  if (count === faults_A.length)
    return { id: 'M48', trueOf, ask: `At ${I}, which is more: that, or what starts to melt the fuse?` };
  const more =
    count > right ? 'more than what starts to melt the fuse' : 'still less than what starts to melt the fuse';
  return {
    trueOf,
    whyNot: `That is ${more}, which is ${energy(melts)}.`,
    ask: 'Which is the last current at which the fuse stays whole?',
  };
}

function devicesOf({ upper_A, lower_A }: Case, practice: Practice): readonly [upper: string, lower: string] {
  const lower = practice === 'iec' ? `${lower_A}\u00A0A type B breaker` : `${lower_A}\u00A0A breaker (UL 489)`;
  const upper = practice === 'iec' ? `${upper_A}\u00A0A gG fuse` : `${upper_A}\u00A0A fuse (UL 248)`;
  return [withArticle(upper), withArticle(lower)];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { place, faults_A, through, melts } = drawn;
  const right = selectiveCount(drawn);
  const [upper, lower] = devicesOf(drawn, practice);
  const options = [0, 1, 2, 3, 4].map((count): ChooseOption => {
    const option = { id: String(count), text: textOf(drawn, count) };
    return count === right ? option : { ...option, said: saidOf(drawn, count) };
  });
  const told = faults_A.map((I, i) => `${energy(through[i] as number)} at ${given(I, 'A')}`);
  const list = `${told.slice(0, 3).join(', ')} and ${told[3]}`;
  const text =
    right === 0
      ? 'at each of these currents the fuse may melt too.'
      : right === faults_A.length
        ? 'at all four the breaker clears before the fuse starts to melt.'
        : `the breaker alone opens at ${given(faults_A[right - 1] as number, 'A')}, and no longer at ${given(faults_A[right] as number, 'A')}.`;
  return {
    kind: 'choose',
    stem: [
      words`In ${place} ${upper} feeds a board, and on it ${lower} feeds the sockets. The fuse starts to melt at ${quantity(energy(melts))}.`,
      words`Until it has cleared a fault, the breaker lets through ${list}. Its sheet is invented for this question.`,
      words`At which of these fault currents does the breaker alone open?`,
    ],
    ask: 'Choose one.',
    parts: [{ id: 'current', label: 'The breaker alone opens', options, right: String(right) }],
    answer: { text },
    scenarios: [],
    hints: [
      words`Both carry the same fault current. What has each taken by the time the breaker has cleared?`,
      words`Compare what the breaker lets through with what starts to melt the fuse.`,
      words`Do that at each of the four currents, from the least on.`,
    ],
    solution: [
      words`The fuse stays whole while the breaker’s let-through is less than ${quantity(energy(melts))}.`,
      words`The breaker lets through: ${list}.`,
      words`So ${text}`,
      words`The ratings do not settle it. Where both open, the whole board goes dark.`,
      words`${
        practice === 'iec'
          ? 'The fuse’s figure is the least of IEC 60269-1 for 10\u00A0ms. Makers’ tables of pairs tell more.'
          : 'Both figures are makers’ data; no standard states them. Makers’ tables of pairs tell more.'
      }`,
    ],
    look: 'Write the five energies in a row, the smallest first. Where does the fuse stand?',
    cautions: [shortCaution],
  };
}

/** How Q62 is drawn and built. */
export const selectiveUpToSpec: TemplateSpec<Case> = {
  id: 'Q62',
  version: 1,
  lesson: '4.4',
  kind: 'choose',
  title: 'Selective up to',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['4.4 compare let-through I²t', '4.4 judge selectivity of two devices'],
  misconceptions: ['M48'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        place: 'a joinery',
        upper_A: 63,
        lower_A: 16,
        melts: 9000,
        faults_A: [500, 1000, 2000, 4000],
        through: [2900, 5800, 12_000, 23_000],
      },
    ],
    na: [
      {
        place: 'a joinery',
        upper_A: 60,
        lower_A: 20,
        melts: 8000,
        faults_A: [500, 1000, 2000, 4000],
        through: [2900, 5800, 12_000, 23_000],
      },
    ],
  },
  build: built,
};

/** Q62: up to which fault current two devices are selective. */
export const selectiveUpTo = defineTemplate(selectiveUpToSpec);
