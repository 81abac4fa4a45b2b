import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { slowest } from '../../protection/band.ts';
import type { DeviceFamily, Gate } from '../../protection/device.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, clearly, settledAt } from '../carrying.ts';
import { cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, temperatureText, timeText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { askedDevice, gapCaution, localWords, withArticle } from './asked-devices.ts';

// D06: two loads on one thin lead, and a breaker that holds: the cause, and what to do.

interface Case {
  readonly family: DeviceFamily;
  readonly In: number;
  readonly cord: CastKey;
  readonly place: string;
  readonly load: string;
  readonly each_W: number;
  readonly ambient_degC: number;
  readonly deal: number;
}

const volts: Readonly<Record<Practice, number>> = { iec: 230, na: 120 };
const places = ['In a village hall', 'In a site cabin', 'At a market stall', 'In a farm shop', 'In a boatyard office'];
const loads = ['heaters', 'tea urns', 'hot plates'];
/** Leads hotter than this are out of the model [°C]. */
const hottest = 150;

function drawnCase(random: Random, practice: Practice): Case | null {
  const In = random.pick(practice === 'iec' ? [16, 20] : [15, 20]);
  const drawn: Case = {
    family: practice === 'iec' ? random.pick(['B', 'C'] as const) : 'ul489',
    In,
    cord: random.pick(cordsOf(practice)).key,
    place: random.pick(places),
    load: random.pick(loads),
    each_W: 50 * Math.round((In * volts[practice] * random.whole(103, 140)) / 1e4),
    ambient_degC: random.whole(15, 30),
    deal: random.whole(0, mostDeals),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** Current of both loads together, to three figures [A]. */
const loadOf = ({ each_W }: Case, practice: Practice) => Number(((2 * each_W) / volts[practice]).toPrecision(3));

/** Past the breaker's number and the cord's limit, yet where the breaker need not act; one load alone is borne by both. */
function isClear(drawn: Case, practice: Practice): boolean {
  const of = askedDevice(drawn.family, drawn.In);
  const I = loadOf(drawn, practice);
  const { both_degC, limit_degC } = factsOf(drawn, practice);
  const holds = slowest(of, 1.02 * I, 'guaranteed') === Number.POSITIVE_INFINITY;
  const hot = both_degC >= limit_degC + clearly && both_degC <= hottest;
  return I > 1.02 * drawn.In && holds && hot && I / 2 <= cordOf(drawn.cord).rating;
}

const scenarioOf = (drawn: Case, I: number, practice: Practice): Scenario => ({
  ...carrying(cast[drawn.cord], drawn.ambient_degC, I, practice, 3600),
  device: { family: drawn.family, rating_A: drawn.In },
});

function factsOf(drawn: Case, practice: Practice) {
  const I = loadOf(drawn, practice);
  return {
    both_degC: settledAt(scenarioOf(drawn, I, practice)),
    one_degC: settledAt(scenarioOf(drawn, I / 2, practice)),
    limit_degC: celsius(ratingOf(cableOf(cast[drawn.cord])) as number),
  };
}

function causesOf(drawn: Case, practice: Practice): Offer[] {
  const of = askedDevice(drawn.family, drawn.In);
  const { rcd, earth } = localWords[practice];
  const must = of.by[0] as Gate;
  return [
    [
      'gap',
      'The current lies in the gap: too much for the cord, and not enough to make the breaker act.',
      { trueOf: 'the current does lie there.', ask: 'Which reading speaks for another cause?' },
    ],
    [
      'faulty breaker',
      'The breaker is faulty: it should have tripped at its number.',
      {
        id: 'M34',
        trueOf: `from ${amount(must.I, 3, 'A')} on it must trip, within ${timeText(must.t)}.`,
        ask: 'At what current does its standard make it act?',
      },
    ],
    [
      'faulty residual device',
      `The ${rcd} is faulty: it should have opened.`,
      {
        id: 'M44',
        trueOf: `it opens when current leaks to ${earth}.`,
        ask: 'How much more goes out than comes back here?',
      },
    ],
    [
      'bad contact',
      'The plug makes bad contact, and its heat runs into the lead.',
      {
        trueOf: 'bad contact makes heat where it is.',
        whyNot: 'Here the plug was cool and the lead warm all along. The heat is made in the lead.',
        ask: 'Where would a bad contact have shown?',
      },
    ],
    [
      'short circuit',
      'Somewhere in the lead there is a short circuit.',
      {
        trueOf: 'a short circuit draws far more than any load.',
        whyNot: 'The meter reads what the two loads take, and no more.',
        ask: 'What would the meter have read?',
      },
    ],
  ];
}

function remediesOf(practice: Practice): Offer[] {
  const { rcd } = localWords[practice];
  return [
    [
      'split the load',
      'Plug the two into sockets of two circuits, each with a lead of its own.',
      { trueOf: 'that does take each lead out of the gap.', ask: 'What else would?' },
    ],
    [
      'bigger breaker',
      'Have the next larger breaker fitted.',
      {
        id: 'M33',
        trueOf: 'a larger one would hold this current more surely.',
        ask: 'Which of the two is too hot: the breaker, or the lead?',
      },
    ],
    [
      'other residual device',
      `Have a new ${rcd} fitted.`,
      {
        id: 'M44',
        trueOf: 'a new one would see as little of an overload.',
        ask: 'Which two currents does it compare?',
      },
    ],
    [
      'shorter lead',
      'Take a shorter lead of the same cord.',
      {
        trueOf: 'a shorter lead makes less heat in all.',
        whyNot: 'Each metre still makes the same heat and has the same skin. It gets as hot.',
        ask: `Does a metre in the middle know how long the lead is?`,
      },
    ],
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const of = askedDevice(drawn.family, drawn.In);
  const cord = cordOf(drawn.cord);
  const I = loadOf(drawn, practice);
  const { both_degC, one_degC, limit_degC } = factsOf(drawn, practice);
  const must = of.by[0] as Gate;
  const both = temperatureText(both_degC, practice);
  const { rcd } = localWords[practice];
  const text = 'the current lies in the gap, and splitting the load takes each lead out of it.';
  return {
    kind: 'choose',
    stem: [
      words`${drawn.place} two ${drawn.load} of ${quantity(given(drawn.each_W, 'W'))} hang on one lead, ${cord.words}. The supply is ${quantity(given(volts[practice], 'V'))}. The circuit has ${withArticle(of.name)} and ${practice === 'iec' ? 'an' : 'a'} ${rcd}.`,
      words`All evening nothing opens. A meter reads ${quantity(given(I, 'A'))}. The lead’s sheath is hot to the hand; its plug is cool. The ${rcd}’s test button works.`,
      words`What is the cause, and what is to be done first, with the lead unplugged?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('cause', 'The cause', causesOf(drawn, practice), drawn.deal),
      partOf('remedy', 'What to do', remediesOf(practice), drawn.deal + 1),
    ],
    answer: { text },
    scenarios: [
      { name: 'both on one lead', scenario: scenarioOf(drawn, I, practice) },
      { name: 'one on each', scenario: scenarioOf(drawn, I / 2, practice) },
    ],
    hints: [
      words`Compare the current with three things: the breaker’s number, what the cord may carry, and where the breaker must act.`,
      words`Which readings speak for heat made all along the lead?`,
      words`What would make the current in each lead smaller?`,
    ],
    solution: [
      words`Two loads of ${quantity(given(drawn.each_W, 'W'))} take ${quantity(given(I, 'A'))}, as the meter says. So it is no short circuit.`,
      words`This breaker must trip from ${quantity(amount(must.I, 3, 'A'))} on, within ${timeText(must.t)}. Below that it may hold: it is sound.`,
      words`The engine lets the conductors settle at ${quantity(both)}, past their limit of ${quantity(temperatureText(limit_degC, practice))}.`,
      words`The plug is cool, so it is no bad contact. The ${rcd} sees as much come back as goes out.`,
      words`With one load on each lead they settle at ${quantity(temperatureText(one_degC, practice))}.`,
      words`So ${text}`,
      words`${ratingNote(cord)}`,
    ],
    look: 'Open both cases, and compare where the lead settles.',
    cautions: [...overloadCaution(cord, I), gapCaution],
  };
}

/** How D06 is drawn and built. */
export const twoHeatersSpec: TemplateSpec<Case> = {
  id: 'D06',
  version: 1,
  lesson: '4.3',
  kind: 'choose',
  title: 'The breaker that held',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['4.3 name the remedy: size, device, surroundings, load'],
  misconceptions: ['M33', 'M34', 'M44'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        family: 'B',
        In: 16,
        cord: 'C100',
        place: 'In a village hall',
        load: 'heaters',
        each_W: 2000,
        ambient_degC: 25,
        deal: 1,
      },
    ],
    na: [
      {
        family: 'ul489',
        In: 20,
        cord: 'A16',
        place: 'In a village hall',
        load: 'heaters',
        each_W: 1500,
        ambient_degC: 20,
        deal: 1,
      },
    ],
  },
  build: built,
};

/** D06: why a lead overheats behind a breaker that holds, and what to do. */
export const twoHeaters = defineTemplate(twoHeatersSpec);
