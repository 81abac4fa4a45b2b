import { cableOf } from '../../cable/cable.ts';
import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { kOf } from '../../protection/adiabatic-k.ts';
import { fastest, slowest } from '../../protection/band.ts';
import type { DeviceFamily } from '../../protection/device.ts';
import { energyOver } from '../../protection/device-energy.ts';
import { allowedTime, withstand } from '../../protection/withstand.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, clearly, settledAt } from '../carrying.ts';
import { cordOf, ratingNote } from '../cords.ts';
import { mostDeals } from '../deal.ts';
import { amount, given, percentText, rounded, temperatureText, timeText } from '../figures.ts';
import { type Offer, partOf } from '../offers.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, Practice, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { askedDevice, shortCaution, spanText, withArticle } from './asked-devices.ts';

// D12: a fuse has opened, and a lead is scorched at one end only: the cause, and the readings that show it.

interface Case {
  readonly family: DeviceFamily;
  readonly In: number;
  readonly cord: CastKey;
  readonly load: string;
  readonly load_A: number;
  readonly hours: number;
  readonly ambient_degC: number;
  /** The short circuit as it was recorded. */
  readonly If_A: number;
  readonly t_s: number;
  readonly scorched_mm: number;
  readonly deal: number;
}

const loads = [
  'a heater in a polytunnel',
  'a washer in a boatyard',
  'an urn in a village hall',
  'an oven on a market stall',
  'a dryer in a laundry',
];
/** Cords that a fuse of the practice may stand before. */
const pairs: Readonly<Record<Practice, readonly (readonly [DeviceFamily, number, CastKey])[]>> = {
  iec: [
    ['bs1362', 10, 'C100'],
    ['bs1362', 13, 'C125'],
    ['bs1362', 13, 'C150'],
    ['gG', 10, 'C100'],
    ['gG', 16, 'C150'],
  ],
  na: [
    ['ul248', 15, 'A16'],
    ['ul248', 15, 'A14'],
  ],
};
/** Heat of the short circuit, in parts of what a core stands (our choice: it is plainly not the short circuit's doing). */
const shares = [0.04, 0.5] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const [family, In, cord] = random.pick(pairs[practice]);
  const most = Math.min(In, cordOf(cord).rating);
  const drawn: Case = {
    family,
    In,
    cord,
    load: random.pick(loads),
    load_A: random.whole(Math.ceil(0.6 * most), most),
    hours: random.whole(2, 6),
    ambient_degC: random.whole(12, 26),
    If_A: 5 * random.whole(10, 50),
    t_s: random.pick([0.11, 0.12, 0.15, 0.18, 0.2, 0.25, 0.3]),
    scorched_mm: 5 * random.whole(5, 9),
    deal: random.whole(0, mostDeals),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** The fuse may have taken that time, the core stood the heat, and the load was borne by fuse and cord. */
function isClear(drawn: Case, practice: Practice): boolean {
  const { family, In, If_A, t_s } = drawn;
  const of = askedDevice(family, In);
  const { share, settled_degC, limit_degC } = factsOf(drawn, practice);
  const couldTake = fastest(of, If_A, 'guaranteed') <= t_s && t_s <= (slowest(of, If_A, 'guaranteed') ?? 0);
  return couldTake && share >= shares[0] && share <= shares[1] && settled_degC <= limit_degC - clearly;
}

const scenarioOf = ({ cord, ambient_degC, load_A, hours }: Case, practice: Practice): Scenario =>
  carrying(cast[cord], ambient_degC, load_A, practice, 3600 * hours);

function factsOf(drawn: Case, practice: Practice) {
  const { conductor, insulation } = cableOf(cast[drawn.cord]);
  const found = insulation && kOf(conductor.metal, insulation, conductor.area);
  if (!found) throw new Error(`${drawn.cord} has no limit for a short circuit`);
  const stands = rounded(withstand(found.k, conductor.area), 3);
  const gets = energyOver(drawn.If_A, drawn.t_s);
  return {
    stands,
    gets,
    share: gets / stands,
    /** Time that the formula would allow the load [s]: a slip, since heat leaves for all of it. */
    formula_s: allowedTime(found.k, conductor.area, drawn.load_A).value,
    settled_degC: settledAt(scenarioOf(drawn, practice)),
    limit_degC: celsius(ratingOf(cableOf(cast[drawn.cord])) as number),
  };
}

const hoursText = ({ hours }: Case) => given(hours, 'h');

function causesOf(drawn: Case, practice: Practice): Offer[] {
  const { gets, stands, formula_s } = factsOf(drawn, practice);
  const formula = timeText(formula_s);
  return [
    [
      'joint',
      'A poor joint at the connector ran hot, charred the plastic and arced.',
      { trueOf: 'a poor joint makes heat in one place.', ask: 'Which reading speaks for another cause?' },
    ],
    [
      'long load',
      `The load: by k²S²/I² it takes a core to its limit in ${formula}.`,
      {
        id: 'M39',
        trueOf: `the formula gives ${formula} for a core that loses no heat.`,
        ask: `Does a core lose no heat in ${hoursText(drawn)}?`,
      },
    ],
    [
      'short circuit',
      'The short circuit: its current took the cores past their limit.',
      {
        trueOf: 'a short circuit does heat the cores, all the way to the fault.',
        whyNot: `It gave them ${amount(gets, 3, 'A²s')}, and they stand ${amount(stands, 3, 'A²s')}. It would also show along the whole lead.`,
        ask: 'Where would that heat have shown?',
      },
    ],
    [
      'little metal',
      'The lead: it has less metal than its marking.',
      {
        trueOf: 'such a lead runs hotter, all along.',
        whyNot: 'These cores read as the table says for their size. So their metal is there.',
        ask: 'What did the cores read?',
      },
    ],
  ];
}

function readingsOf(): Offer[] {
  return [
    [
      'place and ohms',
      'Scorched at one end only, and cores that read as the table says.',
      { trueOf: 'these two show where the heat was.', ask: 'What else could they come from?' },
    ],
    [
      'fuse and recorder',
      'The opened fuse, and the recorded short circuit.',
      {
        trueOf: 'both tell how it ended.',
        whyNot: 'Each of the causes may end in a short circuit that opens the fuse. So they rule out none.',
        ask: 'Would another cause have left these two as well?',
      },
    ],
    [
      'load and hours',
      'The amperes of the load, and the hours it ran.',
      {
        trueOf: 'they show that the load was no overload.',
        whyNot: 'They leave too little metal and the short circuit standing. Those need another reading.',
        ask: 'Which causes do these two leave standing?',
      },
    ],
    [
      'markings',
      'The rating of the fuse, and the size on the cord.',
      {
        trueOf: 'the two fit together.',
        whyNot: 'Markings say what was meant to be. The cause shows in what was found.',
        ask: 'Do these two say where the heat was made?',
      },
    ],
  ];
}

const scorchCaution =
  'A scorched lead may shock or burn. Switch off at the source. Have both ends looked at, and never put the lead back.';

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { load, load_A, If_A, t_s, scorched_mm, family, In } = drawn;
  const of = askedDevice(family, In);
  const cord = cordOf(drawn.cord);
  const { stands, gets, share, settled_degC, limit_degC, formula_s } = factsOf(drawn, practice);
  const text = 'a poor joint at the connector ran hot and arced. Heat of the current would show all along.';
  return {
    kind: 'choose',
    stem: [
      words`The lead of ${load} is ${cord.words}, behind ${withArticle(of.name)}. It has carried ${quantity(given(load_A, 'A'))} for ${quantity(hoursText(drawn))}.`,
      words`Then the fuse opened. A recorder shows a short circuit of ${quantity(given(If_A, 'A'))} for ${quantity(spanText(t_s))}.`,
      words`The lead is scorched over ${quantity(given(scorched_mm, 'mm'))} next to the connector at its far end, and nowhere else. Its cores read as the table says for their size.`,
      words`A core of this size stands ${quantity(amount(stands, 3, 'A²s'))}. What made the scorch, and which two readings rule the other causes out?`,
    ],
    ask: 'Choose one in each part.',
    parts: [
      partOf('cause', 'The cause', causesOf(drawn, practice), drawn.deal),
      partOf('readings', 'The two readings', readingsOf(), drawn.deal + 1),
    ],
    answer: { text },
    scenarios: [{ name: 'the load, for hours', scenario: scenarioOf(drawn, practice) }],
    hints: [
      words`The same current flows in every centimetre of a core. Where does its heat show?`,
      words`What the short circuit gave is its current squared, times its time. Compare it with what a core stands.`,
      words`For the hours before, ask whether heat could leave.`,
    ],
    solution: [
      words`The short circuit gave ${quantity(amount(gets, 3, 'A²s'))}. A core stands ${quantity(amount(stands, 3, 'A²s'))}, so it got ${quantity(percentText(share))} of that.`,
      words`The load ran for ${quantity(hoursText(drawn))}. The formula would allow ${quantity(timeText(formula_s))}, but it is meant for ${quantity(given(5, 's'))} at most: heat leaves all the while.`,
      words`The engine lets the conductors settle at ${quantity(temperatureText(settled_degC, practice))}, below their limit of ${quantity(temperatureText(limit_degC, practice))}.`,
      words`Too little metal would read more ohms, and would run hot all along.`,
      words`So ${text}`,
      words`The fuse did its part at the end. A joint that runs hot draws no more current, so no fuse sees it.`,
      words`${ratingNote(cord)}`,
    ],
    look: 'Ask of each cause where along the lead it would show.',
    cautions: [scorchCaution, shortCaution],
  };
}

/** How D12 is drawn and built. */
export const scorchedEndSpec: TemplateSpec<Case> = {
  id: 'D12',
  version: 1,
  lesson: '4.4',
  kind: 'choose',
  title: 'Scorched at one end',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['4.4 use t = k²S²/I² and its limits'],
  misconceptions: ['M39'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        ...{ family: 'bs1362', In: 13, cord: 'C150', load: loads[0] as string, load_A: 12, hours: 3 },
        ...{ ambient_degC: 20, If_A: 150, t_s: 0.15, scorched_mm: 30, deal: 1 },
      },
    ],
    na: [
      {
        ...{ family: 'ul248', In: 15, cord: 'A16', load: loads[0] as string, load_A: 12, hours: 3 },
        ...{ ambient_degC: 20, If_A: 150, t_s: 0.15, scorched_mm: 30, deal: 1 },
      },
    ],
  },
  build: built,
};

/** D12: why a lead is scorched at one end only. */
export const scorchedEnd = defineTemplate(scorchedEndSpec);
