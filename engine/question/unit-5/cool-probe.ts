import { celsius } from '../../quantity.ts';
import type { Scenario, SurroundingsSpec } from '../../scenario/schema.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, percentText, riseText, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import { markedAs, toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { chainOf } from '../settled-chain.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { metalNames } from '../unit-1/metal-leads.ts';
import { quantity, words } from '../words.ts';
import { type BenchLoad, benchScenario, drawnLoad, factsOf as leadFacts } from './bench-load.ts';
import { benchCaution } from './bench-words.ts';

// D10: a probe on the bench reads less than predicted: the probe, or the air.

interface Case extends BenchLoad {
  /** Speed of the air along the bench that nobody knew of [m/s]; 0 where the probe has come loose. */
  readonly speed_mPerS: number;
  /** How much a loose probe reads too little [K]. */
  readonly loose_K: number;
  readonly deal: number;
}

/** What a probe reads below its prediction [K], as the curriculum has it. */
const short_K = [6, 15] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const load = drawnLoad(random, practice);
  if (!load) return null;
  const draught = random.whole(0, 1) === 1;
  const drawn = {
    ...load,
    speed_mPerS: draught ? random.pick([0.3, 0.4, 0.5, 0.6, 0.8]) : 0,
    loose_K: random.whole(...short_K),
    deal: random.whole(0, mostDeals),
  };
  const { below, rise, U, reads } = factsOf(drawn, practice);
  const told = U.toPrecision(3) !== reads.toPrecision(3);
  return below >= short_K[0] && below <= short_K[1] && rise >= below + 5 && told === draught ? drawn : null;
}

const inAir = (drawn: Case, practice: Practice): Scenario => {
  const { ambient_degC, speed_mPerS } = drawn;
  const surroundings: SurroundingsSpec = { kind: 'draught', ambient_degC, speed_mPerS };
  const still = benchScenario(drawn, practice);
  return speed_mPerS > 0 ? { ...still, surroundings } : still;
};

/** Where a case settles, and the volts across its lead there. */
function settled(drawn: Case, scenario: Scenario, practice: Practice) {
  const chain = chainOf(scenario);
  if (!chain) throw new Error('the lead settles');
  const { loop } = leadFacts(drawn, practice);
  const [conductor, sheath] = [celsius(chain.conductor), celsius(chain.surface)];
  return { conductor, sheath, U: drawn.I_A * loop(conductor) };
}

function factsOf(drawn: Case, practice: Practice) {
  const predicted = settled(drawn, benchScenario(drawn, practice), practice);
  const is = settled(drawn, inAir(drawn, practice), practice);
  const sheath = Math.round(predicted.sheath);
  const probe = drawn.speed_mPerS > 0 ? Math.round(is.sheath) : sheath - drawn.loose_K;
  return {
    ...{ sheath, probe, below: sheath - probe, U: predicted.U, reads: is.U },
    ...{
      rise: sheath - drawn.ambient_degC,
      between: predicted.conductor - predicted.sheath,
      cooler: predicted.conductor - is.conductor,
    },
  };
}

function causesOf(drawn: Case, practice: Practice): Offer[] {
  const { below, between, rise, U, reads, cooler } = factsOf(drawn, practice);
  const draught = drawn.speed_mPerS > 0;
  const loose: Offer = [
    'loose probe',
    'The probe has come loose from the sheath, and reads some of the air.',
    {
      trueOf: 'a loose probe does read too little.',
      whyNot: `But the volts are low too, and they need no probe. The conductors are ${riseText(cooler)} cooler.`,
      ask: 'Which reading tells how hot the conductors are, without a probe?',
    },
  ];
  const air: Offer = [
    'draught',
    'Air moves along the bench, and the lead is cooler than predicted.',
    {
      trueOf: 'moving air would cool sheath and conductors.',
      whyNot: 'Cooler conductors would take fewer volts. The volts are as predicted.',
      ask: 'What would the volts do in a draught?',
    },
  ];
  const copper: Offer = draught
    ? [
        'thick plastic',
        'The plastic is thicker than we took it for.',
        {
          trueOf: 'thicker plastic would lower the sheath a little.',
          whyNot: 'The thread sways, so the air moves. That alone explains the probe and the volts.',
          ask: 'Which reading is left over?',
        },
      ]
    : [
        'cool metal',
        'The conductors are as cool as the probe says.',
        {
          id: 'M22',
          trueOf: 'a probe on the sheath says something of the sheath.',
          whyNot: `By the volts the conductors are as hot as predicted, ${amount(between, 2, 'K')} above the sheath.`,
          ask: 'What do the volts say of the conductors?',
        },
      ];
  const metal: Offer = [
    'other metal',
    'The conductors are of a metal that resists more.',
    {
      trueOf: 'such metal would make the lead hotter.',
      whyNot: `It would take more volts at the same amps. Predicted are ${amount(U, 3, 'V')}, and the meter shows ${amount(reads, 3, 'V')}.`,
      ask: 'Would it read too little, or too much?',
    },
  ];
  const risen: Offer = [
    'rise told',
    'The prediction is a rise, and the room has to be added.',
    {
      id: 'M17',
      trueOf: `the rise of the sheath is ${riseText(rise)}.`,
      whyNot: `With the room added the prediction would lie still farther off than ${riseText(below)}.`,
      ask: 'Which of the figures told is a rise, and which is a temperature?',
    },
  ];
  return draught ? [air, loose, copper, metal, risen] : [loose, air, copper, metal, risen];
}

function readingsOf(draught: boolean): Offer[] {
  const volts = draught ? 'low' : 'as predicted';
  const thread = draught ? 'The thread sways' : 'The thread hangs still';
  return [
    [
      'volts and thread',
      `The volts are ${volts}. ${thread}.`,
      { trueOf: 'these two tell probe from air.', ask: 'What else could they come from?' },
    ],
    [
      'probe and amps',
      'The probe reads too little. The amps are as set.',
      {
        trueOf: 'the amps do rule out a wrong current.',
        whyNot: 'The probe’s reading is what is to be explained. It rules nothing out.',
        ask: 'Which reading does not go through the probe?',
      },
    ],
    [
      'amps and time',
      'The amps are as set. The lead had time to settle.',
      {
        trueOf: 'these do rule out a wrong current, and haste.',
        whyNot: 'They are alike for a loose probe and for moving air.',
        ask: 'In what do a loose probe and moving air differ?',
      },
    ],
    [
      'probe and marking',
      'The probe reads too little. The marking is clear.',
      {
        trueOf: 'both stand in the log.',
        whyNot: 'A marking is a claim, and the probe is what is in question.',
        ask: 'In what do a loose probe and moving air differ?',
      },
    ],
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { metal, size, count, I_A, ambient_degC, speed_mPerS, deal } = drawn;
  const { sheath, probe, below, U, reads, cooler } = factsOf(drawn, practice);
  const draught = speed_mPerS > 0;
  const text = draught
    ? 'air moves along the bench. Screen it off, and let the lead settle again.'
    : 'the probe has come loose. Stop, let the lead cool, and fix it again.';
  return {
    kind: 'choose',
    stem: [
      words`A three-core lead with conductors of ${metalNames[metal]}, marked ${quantity(markedAs(size, practice))}, is ${quantity(toldLength(count, practice).text)} long. It was measured, predicted and locked.`,
      words`On the isolated bench supply it has carried ${quantity(given(I_A, 'A'))} for an hour, as set. A thermometer on the wall shows ${quantity(temperatureText(ambient_degC, practice))}, as planned.`,
      words`Predicted are ${quantity(amount(U, 3, 'V'))} across it and a sheath at ${quantity(temperatureText(sheath, practice))}. The meter shows ${quantity(amount(reads, 3, 'V'))}. The probe on the sheath shows ${quantity(temperatureText(probe, practice))}.`,
      words`A thread hung beside the lead ${draught ? 'sways' : 'hangs still'}. What is the cause, and which two readings rule the others out?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('cause', 'The cause', causesOf(drawn, practice), deal),
      partOf('readings', 'The two readings', readingsOf(draught), deal + 1),
    ],
    answer: { text },
    scenarios: [
      { name: 'as predicted', scenario: benchScenario(drawn, practice) },
      ...(draught ? [{ name: 'in moving air', scenario: inAir(drawn, practice) }] : []),
    ],
    hints: [
      words`Volts over amps tell how hot the conductors are, without any probe.`,
      words`What would a draught do to the volts? And what would a loose probe do to them?`,
      words`A thread shows what the air does.`,
    ],
    solution: [
      words`The probe is ${quantity(riseText(below))} below what was predicted.`,
      draught
        ? words`The volts are low as well: ${quantity(percentText(1 - reads / U))} less. By them the conductors are ${quantity(riseText(cooler))} cooler than predicted.`
        : words`The volts are as predicted. So the conductors are as hot as predicted, and only the probe is off.`,
      words`The thread ${draught ? 'sways: air moves, and takes heat with it.' : 'hangs still: no air moves.'}`,
      words`So ${text}`,
      words`A probe that reads too little is a hazard: an abort limit that hangs on it would come too late.`,
    ],
    look: 'Take the conductors’ temperature from volts and amps. Is it as predicted?',
    cautions: [benchCaution],
  };
}

/** How D10 is drawn and built. */
export const coolProbeSpec: TemplateSpec<Case> = {
  id: 'D10',
  version: 1,
  lesson: '5.3',
  kind: 'choose',
  title: 'The probe reads less',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['5.3 read θ from R'],
  misconceptions: ['M17', 'M22'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ metal: 'cca10', size: 1.5, count: 8, I_A: 13, ambient_degC: 20, speed_mPerS: 0, loose_K: 9, deal: 1 }],
    na: [{ metal: 'cca10', size: 16, count: 20, I_A: 13, ambient_degC: 20, speed_mPerS: 0, loose_K: 9, deal: 1 }],
  },
  build: built,
};

/** D10: why a probe reads less than predicted. */
export const coolProbe = defineTemplate(coolProbeSpec);
