import { actingShare, coordination } from '../../protection/coordination.ts';
import type { Device } from '../../protection/device.ts';
import { ratingInPlace } from '../../protection/factors.ts';
import { gGFuse } from '../../protection/gg-fuse.ts';
import { iecBreaker } from '../../protection/iec-breaker.ts';
import { rewirableFuse } from '../../protection/rewirable-fuse.ts';
import type { RuleVerdict, TestStep } from '../../protection/rule-steps.ts';
import { flatTwinRatings, type TableRating } from '../../protection/table-rating.ts';
import { amount, given, plainNumber, rounded } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, ChoosePart, Said, TemplateSpec } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { checkYours, citedWords, whoDecides } from './cited-words.ts';
import { clippedRun, factorsAt, runPlaces } from './fixed-runs.ts';

// Q42: a device and a cable: which of the two tests of the rule hold. A rule of UK and IEC practice alone.

type Kind = 'breaker B' | 'breaker C' | 'gG' | 'rewirable';

interface Case {
  readonly kind: Kind;
  readonly In_A: number;
  readonly size_mm2: number;
  readonly place: string;
  readonly ambient_degC: number;
  readonly circuits: number;
}

const makers: Readonly<Record<Kind, { readonly ratings: readonly number[]; make(In: number): Device }>> = {
  'breaker B': { ratings: [10, 16, 20, 25, 32, 40], make: (In) => iecBreaker('B', In) },
  'breaker C': { ratings: [10, 16, 20, 25, 32, 40], make: (In) => iecBreaker('C', In) },
  gG: { ratings: [6, 10, 16, 20, 25, 32, 40], make: gGFuse },
  rewirable: { ratings: [5, 15, 20, 30], make: rewirableFuse },
};
const kinds: readonly Kind[] = ['breaker B', 'breaker C', 'gG', 'gG', 'rewirable', 'rewirable'];

function drawnCase(random: Random): Case | null {
  const kind = random.pick(kinds);
  const drawn: Case = {
    kind,
    In_A: random.pick(makers[kind].ratings),
    size_mm2: random.pick(flatTwinRatings()).size.size,
    place: random.pick(runPlaces),
    ambient_degC: random.whole(31, 50),
    circuits: random.whole(1, 4),
  };
  return isClear(drawn) ? drawn : null;
}

/** No test is lost or won by a hair, and rating and cable are of one size. */
function isClear(drawn: Case): boolean {
  const { device, Iz } = factsOf(drawn);
  const [first, second] = [device.In / Iz, (device.I2 ?? 0) / (actingShare * Iz)];
  const near = (ratio: number) => Math.abs(ratio - 1) < 0.02;
  return first > 0.55 && first < 1.6 && !near(first) && !near(second);
}

const rowOf = ({ size_mm2 }: Case): TableRating =>
  flatTwinRatings().find(({ size }) => size.size === size_mm2) as TableRating;

/** The cable's current in its place, to three figures as it is told, and the rule worked on it. */
function factsOf(drawn: Case): { device: Device; Iz: number; verdict: RuleVerdict } {
  const device = makers[drawn.kind].make(drawn.In_A);
  const Iz = rounded(ratingInPlace(rowOf(drawn).I, factorsAt({ ...drawn, insulated_mm: 0 }, 'iec')), 3);
  const verdict = coordination({ Ib: 0, device, table: { ...rowOf(drawn), I: Iz }, factors: [] });
  return { device, Iz, verdict };
}

const testOf = ({ steps }: RuleVerdict, id: string): TestStep =>
  steps.find((step): step is TestStep => step.kind === 'test' && step.id === id) as TestStep;

function partOf(id: string, label: string, holds: boolean, said: Said): ChoosePart {
  const right = holds ? 'holds' : 'fails';
  const options = (['holds', 'fails'] as const).map((one): ChooseOption => {
    const option = { id: one, text: one === 'holds' ? 'holds' : 'does not hold' };
    return one === right ? option : { ...option, said };
  });
  return { id, label, options, right };
}

function partsOf({ device, Iz, verdict }: ReturnType<typeof factsOf>): ChoosePart[] {
  const [rating, acting] = [testOf(verdict, 'rating').holds === true, testOf(verdict, 'acting').holds === true];
  const most = amount(actingShare * Iz, 3, 'A');
  return [
    partOf(
      'rating',
      'In ≤ Iz',
      rating,
      rating
        ? {
            trueOf: `the cable may carry ${given(Iz, 'A')}.`,
            whyNot: `That is no less than the device’s ${given(device.In, 'A')}, so the test holds.`,
            ask: 'Which of the two is the greater?',
          }
        : {
            id: 'M37',
            trueOf: `${given(device.In, 'A')} is no more than 1.45 times what the cable may carry.`,
            ask: 'Which of a device’s two currents may be 1.45 times Iz?',
          },
    ),
    partOf(
      'acting',
      'I2 ≤ 1.45 Iz',
      acting,
      acting
        ? {
            trueOf: `1.45 times Iz is ${most}.`,
            whyNot: `The device acts at ${amount(device.I2 ?? 0, 3, 'A')}, which is no more than that.`,
            ask: 'At how many times its rating does this device act?',
          }
        : {
            id: 'M30',
            trueOf: 'it would hold if the device opened a little above its rating.',
            ask: 'How many times its rating may this device carry before it must open?',
          },
    ),
  ];
}

/** The device as the stem has it. */
const deviceWords: Readonly<Record<Kind, string>> = {
  'breaker B': 'a type B breaker',
  'breaker C': 'a type C breaker',
  gG: 'a gG fuse',
  rewirable: 'a rewirable fuse',
};
/** When it must act, as the stem has it. */
function actsAt({ kind }: Case, { I2, In }: Device): string {
  const times = plainNumber((I2 ?? 0) / In, kind.startsWith('breaker') ? 3 : 2);
  if (kind === 'rewirable') return `Its fusing factor is ${times}.`;
  return `Within an hour it must ${kind === 'gG' ? 'open' : 'trip'} at ${times} times its rating.`;
}

const first = formula(String.raw`I_\mathrm{n} \le I_\mathrm{z}`, 'I n is at most I z.');
const second = formula(String.raw`I_2 \le 1.45\,I_\mathrm{z}`, 'I two is at most one point four five I z.');

const kindNotes: Readonly<Record<Kind, string>> = {
  'breaker B': 'A breaker acts by 1.45 times its rating, so for breakers the two tests stand or fall together.',
  'breaker C':
    'The letter C moves the instant zone only. The slow part is that of any breaker, so the two tests agree.',
  gG: 'British rules take a gG fuse with In ≤ Iz as meeting the second test, from memory. Here the test is worked out.',
  rewirable: 'A rewirable fuse acts at twice its rating. So British rules ask for In ≤ 0.725 Iz with it.',
};

function built(drawn: Case): BuiltChoose {
  const facts = factsOf(drawn);
  const { device, Iz, verdict } = facts;
  const parts = partsOf(facts);
  const text = `${parts.map(({ label, right }) => `${label} ${right === 'holds' ? 'holds' : 'does not hold'}`).join(', and ')}.`;
  const I2 = device.I2 ?? 0;
  const met = verdict.outcome === 'met';
  return {
    kind: 'choose',
    stem: [
      words`A cable ${drawn.place} may carry ${quantity(given(Iz, 'A'))} there: that is its Iz. Its device is ${deviceWords[drawn.kind]} rated ${quantity(given(device.In, 'A'))}. ${actsAt(drawn, device)}`,
      words`The rule of UK and IEC practice has two tests. Work both of them out. Which hold?`,
    ],
    ask: 'Choose one in each part.',
    parts,
    answer: { text },
    scenarios: [
      {
        name: `the cable alone, at its Iz`,
        scenario: clippedRun(rowOf(drawn).size, drawn.ambient_degC, Math.min(Iz, 60), 'iec'),
      },
    ],
    hints: [
      words`The first test: ${first} The second: ${second}`,
      words`What is the device's acting current I2, from its rating?`,
      words`What is 1.45 times the cable's Iz?`,
    ],
    solution: [
      words`The first test: ${first} The second: ${second}`,
      words`The rating is ${quantity(given(device.In, 'A'))}, and Iz is ${quantity(given(Iz, 'A'))}.`,
      words`The device must act by ${quantity(amount(I2, 3, 'A'))}, and 1.45 times Iz is ${quantity(amount(actingShare * Iz, 3, 'A'))}.`,
      words`So ${text} ${met ? 'The rule is met.' : 'The rule is not met: a thicker cable is needed, or a smaller device.'}`,
      words`${kindNotes[drawn.kind]}`,
      words`The rule lets up to 45\u00A0% more than Iz flow for an hour. It is meant for rare overloads, never for a steady load.`,
      words`Rule: ${citedWords(verdict.rule)}. Device: ${citedWords({ source: device.source, where: device.where, confidence: 'seen' })}. ${checkYours}`,
    ],
    look: 'Write In, I2, Iz and 1.45 Iz side by side. Then compare them in pairs.',
    cautions: [whoDecides],
  };
}

/** How Q42 is drawn and built. */
export const actingCurrentSpec: TemplateSpec<Case> = {
  id: 'Q42',
  version: 1,
  lesson: '3.1',
  kind: 'choose',
  title: 'The two tests of the rule',
  difficulty: 3,
  practices: ['iec'],
  objectives: ['3.1 apply Ib ≤ In ≤ Iz and I2 ≤ 1.45 Iz'],
  misconceptions: ['M37', 'M30'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ kind: 'rewirable', In_A: 20, size_mm2: 2.5, place: runPlaces[0], ambient_degC: 35, circuits: 1 }],
  },
  build: built,
};

/** Q42: whether a device's rating and its acting current suit a cable. */
export const actingCurrent = defineTemplate(actingCurrentSpec);
