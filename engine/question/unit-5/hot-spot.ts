import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { metals } from '../../material/metals.ts';
import { celsius, kelvin } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, withResistance } from '../carrying.ts';
import { cordOf, overloadCaution, ratingNote } from '../cords.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, percentText, riseText, temperatureText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import { perLength, toldLength } from '../per-length.ts';
import type { Random } from '../random.ts';
import { chainOf } from '../settled-chain.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { benchCaution, keepOutCaution } from './bench-words.ts';

// D04: a lead that reads a little high, and is hot at one spot: the cause, and the readings that show it.

interface Case {
  readonly tool: string;
  readonly cord: CastKey;
  /** In metres, or feet in `na`. */
  readonly count: number;
  readonly I_A: number;
  readonly ambient_degC: number;
  /** How much more than its table the loop reads, in per cent. */
  readonly more: number;
  readonly deal: number;
}

const tools = ['a polisher', 'a floor polisher', 'a sander', 'an angle grinder', 'a hedge trimmer'];
const keys: Readonly<Record<Practice, readonly CastKey[]>> = { iec: ['C100', 'C125', 'C150'], na: ['A16', 'A14'] };
/** By how much the spot is hotter than the rest, as the curriculum has it, give or take [K]. */
const spots_K = [34, 46] as const;
/** At this a practitioner stops: no probe of ours reads as much [°C] (curriculum, section 8). */
const abort_degC = 80;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(keys[practice]);
  const { rating } = cordOf(cord);
  const drawn = {
    tool: random.pick(tools),
    cord,
    count: practice === 'iec' ? random.whole(4, 15) : random.whole(12, 50),
    I_A: random.whole(Math.ceil(0.6 * rating), rating),
    ambient_degC: random.whole(15, 26),
    more: random.whole(3, 6),
    deal: random.whole(0, mostDeals),
  };
  const { rest, spot_K } = factsOf(drawn, practice);
  const inBand = spot_K >= spots_K[0] && spot_K <= spots_K[1];
  return inBand && rest + spot_K < abort_degC ? drawn : null;
}

const onBench = ({ cord, ambient_degC, I_A, count }: Case, practice: Practice): Scenario => ({
  ...carrying(cast[cord], ambient_degC, I_A, practice, 3600),
  lead: { length_m: toldLength(count, practice).L },
});

/** The same lead if all of it had as many ohms more. */
const evenly = (drawn: Case, practice: Practice): Scenario => {
  const { R20 } = cableOf(cast[drawn.cord]).conductor;
  return { ...onBench(drawn, practice), cable: withResistance(cast[drawn.cord], R20 * (1 + drawn.more / 100)) };
};

function factsOf(drawn: Case, practice: Practice) {
  const { conductor } = cableOf(cast[drawn.cord]);
  const { L } = toldLength(drawn.count, practice);
  const extra = (2 * L * conductor.R20 * drawn.more) / 100;
  const settled = (scenario: Scenario) => chainOf(scenario) as NonNullable<ReturnType<typeof chainOf>>;
  const as = settled(onBench(drawn, practice));
  const spot = drawn.I_A ** 2 * extra;
  const rest = celsius(as.surface);
  return {
    rest,
    /** Rise of the sheath that the extra ohms would make if they lay all along [K]. */
    spread: celsius(settled(evenly(drawn, practice)).surface) - rest,
    /** Heat of the extra ohms [W]. */
    spot,
    /** What that does in one place, as it runs off along the copper [K]. */
    spot_K: Math.round(riseOfSpot(spot, drawn.cord, as.flow / (as.conductor - kelvin(drawn.ambient_degC)))),
    extra,
    /** Share by which clad aluminium of the same size would read more. */
    clad: metals.cca10.rho20.value / metals.copper.rho20.value - 1,
  };
}

/**
 * Rise [K] of a cord where `P` [W] is made in one place: both ways are long fins, P = 2 ΔT √(k A G'), with the copper of all
 * cores alike in it and `G` [W/(m·K)] shed along it (Incropera, the infinite fin, from memory). An estimate.
 */
function riseOfSpot(P: number, key: CastKey, G: number): number {
  const { conductor, cores } = cableOf(cast[key]);
  return P / (2 * Math.sqrt(metals.copper.conductivity.value * cores * conductor.area * G));
}

function causesOf(drawn: Case, practice: Practice): Offer[] {
  const { clad, spread } = factsOf(drawn, practice);
  const { rating } = cordOf(drawn.cord);
  return [
    [
      'broken strands',
      'Strands are broken in the grip: the few that are left carry all the current there.',
      { trueOf: 'broken strands make heat where they are.', ask: 'Which reading speaks for another cause?' },
    ],
    [
      'long',
      'The lead is too long: so many ohms make it hot.',
      {
        id: 'M05',
        trueOf: 'a longer lead does make more heat in all.',
        ask: 'How would that heat lie along the lead?',
      },
    ],
    [
      'other metal',
      'The cores are copper-clad aluminium.',
      {
        trueOf: `such cores would read ${percentText(clad)} more.`,
        whyNot: `This lead reads ${percentText(drawn.more / 100)} more. And other metal would be hot all along.`,
        ask: 'By how much does it read too high?',
      },
    ],
    [
      'thin',
      'All the cores are a little thin.',
      {
        trueOf: `that would make the whole sheath ${amount(spread, 2, 'K')} hotter.`,
        whyNot: 'It would do so all along, and not in one place.',
        ask: 'Where is the lead hot?',
      },
    ],
    [
      'overload',
      'The current is more than the cord’s table allows.',
      {
        trueOf: `the table allows this cord ${given(rating, 'A')}.`,
        whyNot: `The bench holds ${given(drawn.I_A, 'A')}, and too much would be hot all along.`,
        ask: 'Which two currents are to be compared?',
      },
    ],
  ];
}

const readings: readonly Offer[] = [
  [
    'spot and rest',
    'Hot in one place only; the rest is as warm as predicted.',
    { trueOf: 'these two show where the heat is made.', ask: 'What else could they come from?' },
  ],
  [
    'ohms and marking',
    'It reads a little high; its marking is clear.',
    {
      trueOf: 'the ohms do rule out another metal.',
      whyNot: 'A few per cent may lie all along, or in one place. They do not say where.',
      ask: 'Which readings tell a place?',
    },
  ],
  [
    'current and room',
    'The current is in the table; the room is as predicted.',
    {
      trueOf: 'these do rule out an overload.',
      whyNot: 'They say nothing of one bad place against thin cores.',
      ask: 'Which readings tell a place?',
    },
  ],
  [
    'spot and current',
    'The hottest reading; the current held.',
    {
      trueOf: 'both are needed for a report.',
      whyNot: 'Without the rest of the lead beside it, the hottest reading may be that of all of it.',
      ask: 'What was it compared with?',
    },
  ],
];

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { tool, count, I_A, ambient_degC, more, deal } = drawn;
  const cord = cordOf(drawn.cord);
  const { rest, spot, spot_K, extra } = factsOf(drawn, practice);
  const { name } = perLength[practice];
  const text = 'strands are broken in the grip, and the few that are left carry all the current there.';
  return {
    kind: 'choose',
    stem: [
      words`The lead of ${tool} is ${cord.words}, ${quantity(toldLength(count, practice).text)} long, with a rubber grip where it enters the tool. Its loop reads ${quantity(percentText(more / 100))} more than its table says. The sheath is clearly marked.`,
      words`On the bench it carries ${quantity(given(I_A, 'A'))} until it settles, laid straight at ${quantity(temperatureText(ambient_degC, practice))}. Probes on the sheath read ${quantity(temperatureText(rest, practice))}, as predicted.`,
      words`Only beside the grip, over a hand’s width, the sheath is ${quantity(riseText(spot_K))} hotter than the rest. What is the cause, and which two readings rule the others out?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('cause', 'The cause', causesOf(drawn, practice), deal),
      partOf('readings', 'The two readings', readings, deal + 1),
    ],
    answer: { text },
    scenarios: [
      { name: 'the lead as predicted', scenario: onBench(drawn, practice) },
      { name: 'if all of it read as much more', scenario: evenly(drawn, practice) },
    ],
    hints: [
      words`The same current flows through every ${name} of a core. Where is the heat?`,
      words`A few per cent of the whole loop may all sit in one place.`,
      words`For each cause, ask how hot the middle of the lead would be.`,
    ],
    solution: [
      words`The excess is ${quantity(amount(extra * 1e3, 2, 'mΩ'))}. At ${quantity(given(I_A, 'A'))} it makes ${quantity(amount(spot, 2, 'W'))}.`,
      words`Spread over the lead that is next to nothing. In one place it makes a hot spot: about ${quantity(riseText(spot_K))} by estimate, while it runs off along the copper.`,
      words`The rest is as warm as predicted. So metal, size and current are as they should be.`,
      words`So ${text}`,
      words`Each bend breaks more of them. ${ratingNote(cord)}`,
    ],
    look: 'Open both cases: how warm would the sheath be if the excess lay all along?',
    cautions: [...overloadCaution(cord, I_A), benchCaution, keepOutCaution],
  };
}

/** How D04 is drawn and built. */
export const hotSpotSpec: TemplateSpec<Case> = {
  id: 'D04',
  version: 1,
  lesson: '5.3',
  kind: 'choose',
  title: 'One hot spot',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['5.3 read θ from R'],
  misconceptions: ['M05'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ tool: tools[0] as string, cord: 'C100', count: 12, I_A: 8, ambient_degC: 20, more: 5, deal: 1 }],
    na: [{ tool: tools[0] as string, cord: 'A16', count: 40, I_A: 10, ambient_degC: 20, more: 5, deal: 1 }],
  },
  build: built,
};

/** D04: why a lead is hot at one spot. */
export const hotSpot = defineTemplate(hotSpotSpec);
