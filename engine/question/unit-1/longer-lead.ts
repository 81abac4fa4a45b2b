import type { CastKey } from '../../examples/cast.ts';
import { heatMade, steadyState } from '../../heating/steady.ts';
import { supplyOf } from '../../heating/supply.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario, SupplyStep } from '../../scenario/schema.ts';
import { type Cord, cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { heldCurrent } from '../experiment.ts';
import { amount, given, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, ChoosePart, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';

// Q09: another length at the same current: what becomes of heat per metre, total heat and temperature.

interface Case {
  readonly cord: CastKey;
  readonly load: string;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly from_m: number;
  readonly to_m: number;
}

const loads = [
  'A farm pump',
  'A floodlight in a boatyard',
  'A fan in a polytunnel',
  'A dust extractor in a joinery',
  'A stage lamp in a hall',
];

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const from_m = random.pick([8, 10, 12, 15, 20, 24, 30]);
  const times = random.pick([2, 2, 3, 0.5]);
  const drawn = {
    cord: cord.key,
    load: random.pick(loads),
    ambient_degC: random.whole(5, 35),
    I_A: random.whole(3, cord.rating),
    from_m,
    to_m: from_m * times,
  };
  return drawn.to_m <= 60 ? drawn : null;
}

const scenarioOf = ({ ambient_degC, I_A }: Case, cord: Cord, length_m: number): Scenario => ({
  ...heldCurrent(cord, ambient_degC, I_A, 3600),
  lead: { length_m },
});

/** Heat in each metre [W/m], heat of the whole lead [W] and conductor [K] in steady state, by the engine. */
function settled(scenario: Scenario) {
  const of = buildCase(scenario);
  const steady = steadyState(of, supplyOf(of, scenario.supply[0] as SupplyStep));
  if (steady.kind !== 'steady') throw new Error('a cord within its rating settles');
  const { conductor } = steady.chain;
  const metre = heatMade(of, steady.I, conductor);
  return { metre, whole: metre * of.lead.length, conductor };
}

type Way = 'up' | 'same' | 'down';

/** A tenth of one per cent is more than two runs of one cord differ by, and far less than a length makes. */
function wayOf(before: number, after: number): Way {
  if (Math.abs(after / before - 1) < 1e-3) return 'same';
  return after > before ? 'up' : 'down';
}

const ways: readonly (readonly [Way, string])[] = [
  ['up', 'goes up'],
  ['same', 'stays the same'],
  ['down', 'goes down'],
];

function partOf(id: string, label: string, right: Way, said: (way: Way) => Said): ChoosePart {
  const options = ways.map(
    ([way, text]): ChooseOption => (way === right ? { id: way, text } : { id: way, text, said: said(way) }),
  );
  return { id, label, options, right };
}

function partsOf(drawn: Case, cord: Cord): ChoosePart[] {
  const before = settled(scenarioOf(drawn, cord, drawn.from_m));
  const after = settled(scenarioOf(drawn, cord, drawn.to_m));
  const longer = drawn.to_m > drawn.from_m;
  const withLength: Way = longer ? 'up' : 'down';
  const metre: Said = {
    trueOf: 'the whole lead’s heat changes, not that of a metre.',
    whyNot: 'Heat in one metre depends on current and on that metre’s resistance. Both are as they were.',
    ask: 'Does a metre in the middle notice how many others there are?',
  };
  const whole: Said = {
    trueOf: 'each metre makes as much heat as before.',
    whyNot: `But there are now ${longer ? 'more' : 'fewer'} metres, and the whole is their sum.`,
    ask: `If one metre makes 2\u00A0W, what do ${drawn.from_m} make, and what do ${drawn.to_m}?`,
  };
  const warm: Said = {
    trueOf: 'the whole lead’s heat changes, and so does the skin that sheds it.',
    whyNot:
      'Each metre makes its own heat and has its own skin to shed it. So the length leaves the temperature alone.',
    ask: 'Could you tell the length of a lead by touching one metre of it?',
  };
  const tagged = (said: Said) => (way: Way) => (way === withLength ? { id: 'M05' as const, ...said } : said);
  return [
    partOf('metre', 'Heat in each metre', wayOf(before.metre, after.metre), tagged(metre)),
    partOf('whole', 'Heat of the whole lead', wayOf(before.whole, after.whole), () => whole),
    partOf('conductor', 'Conductor temperature', wayOf(before.conductor, after.conductor), tagged(warm)),
  ];
}

function solutionOf(drawn: Case, cord: Cord, text: string, practice: Practice) {
  const before = settled(scenarioOf(drawn, cord, drawn.from_m));
  const after = settled(scenarioOf(drawn, cord, drawn.to_m));
  const told = (value: number, unit: string) => quantity(amount(value, 3, unit));
  return [
    words`Heat in one metre goes with current squared and with that metre’s resistance. The engine gives ${told(before.metre, 'W/m')} for both lengths.`,
    words`The whole lead is the sum of its metres: ${told(before.whole, 'W')} before, ${told(after.whole, 'W')} after.`,
    words`Each metre also has its own skin to shed its own heat. The conductor settles at ${quantity(temperatureText(celsius(after.conductor), practice))} in both.`,
    words`So ${text}`,
    words`${ratingNote(cord)}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const cord = cordOf(drawn.cord);
  const parts = partsOf(drawn, cord);
  const text = `${parts
    .map(({ label, right }) => `${label.toLowerCase()} ${ways.find(([way]) => way === right)?.[1]}`)
    .join(', ')}.`;
  const [from, to] = [quantity(given(drawn.from_m, 'm')), quantity(given(drawn.to_m, 'm'))];
  const name = (length_m: number) => `${length_m}\u00A0m, ${drawn.I_A}\u00A0A`;
  return {
    kind: 'choose',
    stem: [
      words`${drawn.load} draws ${quantity(given(drawn.I_A, 'A'))} through ${from} of ${cord.words}. It is laid out straight in still air at ${quantity(temperatureText(drawn.ambient_degC, practice))}.`,
      words`The lead is changed for one of ${to}, of the same cord. The current stays as it was. What becomes of each of these?`,
    ],
    ask: 'Choose one in each part.',
    parts,
    answer: { text },
    scenarios: [
      { name: name(drawn.from_m), scenario: scenarioOf(drawn, cord, drawn.from_m) },
      { name: name(drawn.to_m), scenario: scenarioOf(drawn, cord, drawn.to_m) },
    ],
    hints: [
      words`Think of one metre in the middle of the lead. What does it carry, and what is its resistance?`,
      words`The whole lead’s heat is that of one metre, times the number of metres.`,
      words`A temperature depends on the heat made in a metre, and on the skin of that metre.`,
    ],
    solution: solutionOf(drawn, cord, text, practice),
    look: 'Open both cases: compare the watts of the lead, then the conductor.',
    cautions: overloadCaution(cord, drawn.I_A),
  };
}

/** How Q09 is drawn and built. */
export const longerLeadSpec: TemplateSpec<Case> = {
  id: 'Q09',
  version: 1,
  lesson: '1.2',
  kind: 'choose',
  title: 'Another length',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['1.2 say why length changes volts and total watts but not temperature'],
  misconceptions: ['M05'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C150', load: 'A farm pump', ambient_degC: 20, I_A: 8, from_m: 30, to_m: 60 }],
    na: [{ cord: 'A14', load: 'A farm pump', ambient_degC: 20, I_A: 8, from_m: 30, to_m: 60 }],
  },
  build: built,
};

/** Q09: what another length does to heat per metre, total heat and temperature. */
export const longerLead = defineTemplate(longerLeadSpec);
