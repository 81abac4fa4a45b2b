import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { slowest } from '../../protection/band.ts';
import type { DeviceFamily } from '../../protection/device.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, clearly, settledAt } from '../carrying.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import { perLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { askedDevice, gapCaution, localWords, withArticle } from '../unit-4/asked-devices.ts';
import { quantity, words } from '../words.ts';
import { keepOutCaution } from './bench-words.ts';

// Q70c: why the device never opened, and what the owner is told to do.

interface Case {
  readonly place: string;
  readonly loads: string;
  readonly lead: CastKey;
  readonly family: DeviceFamily;
  readonly In: number;
  /** In tenths of an ampere. */
  readonly load: number;
  readonly ambient_degC: number;
  readonly deal: number;
}

const places = ['In a village hall', 'In a farm shop', 'In a site cabin', 'In a boatyard office', 'At a market stall'];
const loads = ['two heaters', 'two hot plates', 'a heater and an urn', 'an oven and a kettle'];
/** Leads hotter than this are out of the model [°C]. */
const hottest = 150;

function drawnCase(random: Random, practice: Practice): Case | null {
  const [family, In] = practice === 'iec' ? (['bs1362', 13] as const) : (['ul489', random.pick([15, 20])] as const);
  const drawn: Case = {
    place: random.pick(places),
    loads: random.pick(loads),
    lead: practice === 'iec' ? 'SUS' : 'A16S',
    family,
    In,
    load: random.whole(Math.ceil(10.4 * In), Math.floor(15.5 * In)),
    ambient_degC: random.whole(14, 28),
    deal: random.whole(0, mostDeals),
  };
  const { I, carries, settled_degC, limit_degC } = factsOf(drawn, practice);
  return I <= 0.98 * carries && settled_degC >= limit_degC + clearly && settled_degC <= hottest ? drawn : null;
}

const scenarioOf = (drawn: Case, I: number, practice: Practice): Scenario => ({
  ...carrying(cast[drawn.lead], drawn.ambient_degC, I, practice, 3600),
  device: { family: drawn.family, rating_A: drawn.In },
});

function factsOf(drawn: Case, practice: Practice) {
  const of = askedDevice(drawn.family, drawn.In);
  const I = drawn.load / 10;
  return {
    of,
    I,
    /** The most that the standard lets the device carry without end [A]: it need not act below this. */
    carries: slowest(of, I, 'guaranteed') === Number.POSITIVE_INFINITY ? (of.by[0]?.I ?? 0) : 0,
    settled_degC: settledAt(scenarioOf(drawn, I, practice)),
    one_degC: settledAt(scenarioOf(drawn, I / 2, practice)),
    limit_degC: celsius(ratingOf(cableOf(cast[drawn.lead])) as number),
    R: toldResistance(cableOf(cast[drawn.lead]).conductor.R20, practice),
  };
}

const deviceWord = { iec: 'fuse', na: 'breaker' } as const satisfies Record<Practice, string>;

function whysOf(drawn: Case, practice: Practice): Offer[] {
  const { I, carries, limit_degC, settled_degC } = factsOf(drawn, practice);
  const { rcd, earth } = localWords[practice];
  const it = deviceWord[practice];
  const faulty: Offer =
    practice === 'iec'
      ? [
          'faulty',
          `The fuse is faulty: above ${given(drawn.In, 'A')} it should have opened.`,
          { id: 'M30', trueOf: `it must open from ${amount(carries, 3, 'A')} on.`, ask: 'What must it carry?' },
        ]
      : [
          'faulty',
          `The breaker is faulty: above ${given(drawn.In, 'A')} it should have tripped.`,
          { id: 'M34', trueOf: `it must trip from ${amount(carries, 3, 'A')} on.`, ask: 'What may it carry?' },
        ];
  const meter: Offer =
    practice === 'iec'
      ? [
          'throttled',
          `The meter is off: the fuse lets no more than ${given(drawn.In, 'A')} through.`,
          { id: 'M31', trueOf: `its number is ${given(drawn.In, 'A')}.`, ask: 'What sets the current?' },
        ]
      : [
          'short circuit',
          'Somewhere in the lead there is a short circuit.',
          {
            trueOf: 'a short circuit draws far more than any load.',
            whyNot: 'The breaker would have tripped at once. The meter reads what the loads take.',
            ask: 'What would the meter have read?',
          },
        ];
  return [
    [
      'gap',
      `It need not open below ${amount(carries, 3, 'A')}. This lead’s conductors pass ${temperatureText(limit_degC, practice)} at ${given(I, 'A')}.`,
      { trueOf: `they settle at ${temperatureText(settled_degC, practice)}.`, ask: 'Which of the figures differ?' },
    ],
    faulty,
    meter,
    [
      'residual device',
      `The ${rcd} is faulty: it covers what the ${it} does not.`,
      { id: 'M44', trueOf: `it opens when current leaks to ${earth}.`, ask: 'How much leaks here?' },
    ],
  ];
}

function actionsOf(practice: Practice): Offer[] {
  const it = deviceWord[practice];
  return [
    [
      'tag it',
      'Stop using this lead and tag it. Put each load on a socket of its own.',
      { trueOf: 'that takes the heat away.', ask: 'What else would?' },
    ],
    [
      'larger',
      `Have a larger ${it} fitted, so that it does not open by and by.`,
      {
        id: 'M33',
        trueOf: `a larger ${it} would hold still longer.`,
        ask: 'Which is too hot: the lead, or the device?',
      },
    ],
    [
      'as long as it holds',
      `Go on as before: while the ${it} holds, nothing is amiss.`,
      {
        trueOf: `the ${it} does what its standard asks.`,
        whyNot: 'It was not made to know this lead. The lead is past what its plastic is rated for.',
        ask: 'How hot are the conductors?',
      },
    ],
    [
      'shorten it',
      'Cut the lead to half its length.',
      {
        trueOf: 'half the lead makes half the heat in all.',
        whyNot: 'Each length still makes the same heat and has the same skin. It gets as hot.',
        ask: 'Does the middle of a lead know how long it is?',
      },
    ],
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { of, I, carries, settled_degC, one_degC, limit_degC, R } = factsOf(drawn, practice);
  const it = deviceWord[practice];
  const text = `the ${it} may carry this current for ever, and this lead may not. The lead goes out of use.`;
  return {
    kind: 'choose',
    stem: [
      words`${drawn.place} ${drawn.loads} hang on one lead behind ${withArticle(of.name)}. A meter reads ${quantity(given(I, 'A'))}, all evening. The ${it} never opens, and the sheath is hot.`,
      words`The lead’s conductors have ${quantity(R.text)} each, far more than copper of its marked size. Its plastic is rated ${quantity(temperatureText(limit_degC, practice))}. The room is at ${quantity(temperatureText(drawn.ambient_degC, practice))}.`,
      words`By the standard this ${it} must open within its test time from ${quantity(amount(carries, 3, 'A'))} on. Below that it may hold. Why did it never open, and what is the owner told to do?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('why', 'Why it never opened', whysOf(drawn, practice), drawn.deal),
      partOf('action', 'What to do on Monday', actionsOf(practice), drawn.deal + 1),
    ],
    answer: { text },
    scenarios: [
      { name: 'both loads on it', scenario: scenarioOf(drawn, I, practice) },
      { name: 'one of two equal loads', scenario: scenarioOf(drawn, I / 2, practice) },
    ],
    hints: [
      words`Two limits are in play: what the ${it} may carry, and what the lead stands.`,
      words`Which of them does the current lie above, and which below?`,
      words`What makes the current in the lead smaller, and keeps a doubtful lead out of use?`,
    ],
    solution: [
      words`The current of ${quantity(given(I, 'A'))} lies below ${quantity(amount(carries, 3, 'A'))}. So the ${it} may hold, and is sound.`,
      words`The engine lets the conductors settle at ${quantity(temperatureText(settled_degC, practice))}, past ${quantity(temperatureText(limit_degC, practice))}. At half the current it would be ${quantity(temperatureText(one_degC, practice))}.`,
      words`More ohms in each ${perLength[practice].name} make more heat from the same current. No ${it} sees ohms.`,
      words`So ${text}`,
    ],
    look: 'Open both cases, and compare where the lead settles.',
    cautions: [gapCaution, keepOutCaution],
  };
}

/** How Q70c is drawn and built. */
export const neverOpenedSpec: TemplateSpec<Case> = {
  id: 'Q70c',
  version: 1,
  lesson: '5.4',
  kind: 'choose',
  title: 'Why it never opened',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.4 explain why the fuse never opened'],
  misconceptions: ['M30', 'M31', 'M33', 'M34', 'M44'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        ...{ place: places[0] as string, loads: loads[0] as string, lead: 'SUS', family: 'bs1362', In: 13 },
        ...{ load: 174, ambient_degC: 20, deal: 1 },
      },
    ],
    na: [
      {
        ...{ place: places[0] as string, loads: loads[0] as string, lead: 'A16S', family: 'ul489', In: 15 },
        ...{ load: 170, ambient_degC: 20, deal: 1 },
      },
    ],
  },
  build: built,
};

/** Q70c: why a device never opened, and what to do. */
export const neverOpened = defineTemplate(neverOpenedSpec);
