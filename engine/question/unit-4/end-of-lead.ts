import { cableOf } from '../../cable/cable.ts';
import { metals } from '../../material/metals.ts';
import { adiabaticConstant } from '../../protection/adiabatic-k.ts';
import { loopOf } from '../../protection/loop.ts';
import { withstand } from '../../protection/withstand.ts';
import { kelvin } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { amount, given, plainNumber, rounded, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import { markedAs, perLength, toldLength, toldResistance } from '../per-length.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { type AskedMetal, leadOf, metalNames, sizesOf } from '../unit-1/metal-leads.ts';
import { formula, quantity, words } from '../words.ts';
import { localWords, shortCaution } from './asked-devices.ts';

// Q59: the current of a short circuit at the far end of a lead.

interface Case {
  readonly load: string;
  readonly metal: AskedMetal;
  readonly size: number;
  /** In metres, or feet in `na`. */
  readonly count: number;
  /** Resistance of the supply up to the lead [Ω]. */
  readonly source: number;
}

const volts: Readonly<Record<Practice, number>> = { iec: 230, na: 120 };
const loads = [
  'a washer in a boatyard',
  'a heater in a polytunnel',
  'a lamp bar in a theatre workshop',
  'a saw in a joinery',
  'a soup warmer on a market stall',
  'a pump on a farm',
];

function drawnCase(random: Random, practice: Practice): Case | null {
  const drawn: Case = {
    load: random.pick(loads),
    metal: random.pick(['copper', 'cca10', 'cca10', 'aluminium'] as const),
    size: random.pick(sizesOf(practice)),
    count: practice === 'iec' ? random.whole(5, 50) : random.whole(15, 150),
    source: random.whole(practice === 'iec' ? 12 : 5, practice === 'iec' ? 60 : 30) / 100,
  };
  return staysApart(answerOf(drawn, practice), wrongOf(drawn, practice)) ? drawn : null;
}

/** How many times as much the lead's metal resists as copper, as told. */
const timesOf = ({ metal }: Case) => rounded(metals[metal].rho20.value / metals.copper.rho20.value, 3);

/** What the stem tells of the lead: one conductor of copper by the length, and the length. */
function partsOf({ size, count }: Case, practice: Practice) {
  const told = toldResistance(cableOf(leadOf(size, 'copper', practice)).conductor.R20, practice);
  return { copper: told, length: toldLength(count, practice) };
}

/** Current [A] through the supply and `conductors` of the lead, cold, each of copper's resistance `times` over. */
function currentOf(drawn: Case, practice: Practice, conductors: number, times: number): number {
  const { copper, length } = partsOf(drawn, practice);
  const part = { name: 'conductor', R20: copper.R * times * length.L, alpha20: metals[drawn.metal].alpha20.value };
  const parts = Array.from({ length: conductors }, () => part);
  return loopOf({ U0: volts[practice], Ze: drawn.source, parts, T: kelvin(20), Cmin: 1 }).greatest;
}

function answerOf(drawn: Case, practice: Practice): NumberAnswer {
  const value = currentOf(drawn, practice, 2, timesOf(drawn));
  const tolerance = { kind: 'relative', part: 0.025 } as const;
  return { value, kind: 'current', unit: 'A', tolerance, figures: 3, text: amount(value, 3, 'A') };
}

function wrongOf(drawn: Case, practice: Practice): WrongValue[] {
  const once: WrongValue = {
    id: 'M09',
    value: currentOf(drawn, practice, 1, timesOf(drawn)),
    trueOf: 'counts one conductor of the lead only.',
    ask: 'By which way does the current come back?',
  };
  if (drawn.metal === 'copper') return [once];
  const asCopper: WrongValue = {
    id: 'M10',
    value: currentOf(drawn, practice, 2, 1),
    trueOf: 'is what a copper lead of that size would let through.',
    whyNot: `This lead is ${metalNames[drawn.metal]}. It resists ${plainNumber(timesOf(drawn), 3)} times as much, so less current flows.`,
    ask: 'Of which metal is this lead?',
  };
  return [once, asCopper];
}

/** The fault itself, for a third of the time that the lead's cores would stand it from cold. */
function scenarioOf(drawn: Case, practice: Practice): Scenario {
  const cable = leadOf(drawn.size, drawn.metal, practice);
  const { conductor } = cableOf(cable);
  const k = adiabaticConstant(conductor.metal, kelvin(20), kelvin(160));
  const I = currentOf(drawn, practice, 2, timesOf(drawn));
  const t = rounded((0.3 * withstand(k, conductor.area)) / I ** 2, 2);
  return {
    practice,
    cable,
    lead: { length_m: partsOf(drawn, practice).length.L },
    surroundings: { kind: 'stillAir', ambient_degC: 20 },
    supply: [{ kind: 'voltage', U_V: volts[practice], source_ohm: drawn.source }],
    run: { duration_s: t },
  };
}

const law = formula(
  String.raw`I_\mathrm{f} = \frac{U_0}{R_\mathrm{s} + 2 L R'}`,
  'I f is U nought over R s plus two L R dash.',
);

function built(drawn: Case, practice: Practice): BuiltNumber {
  const answer = answerOf(drawn, practice);
  const { copper, length } = partsOf(drawn, practice);
  const times = timesOf(drawn);
  const { line } = localWords[practice];
  const { name: each, resistance: unit } = perLength[practice];
  const own = amount(Number.parseFloat(copper.text) * times, 3, unit);
  const run = 2 * copper.R * times * length.L;
  const other =
    drawn.metal === 'copper'
      ? words`This lead is of copper.`
      : words`This lead is of ${metalNames[drawn.metal]}, which resists ${quantity(`${plainNumber(times, 3)} times`)} as much.`;
  return {
    kind: 'number',
    stem: [
      words`The lead of ${drawn.load} is ${quantity(length.text)} long, its cores ${quantity(markedAs(drawn.size, practice))}. Its supply has ${quantity(given(volts[practice], 'V'))} behind ${quantity(given(drawn.source, 'Ω'))}.`,
      [
        ...words`At ${quantity(temperatureText(20, practice))} a copper core of that size has ${quantity(copper.text)}. `,
        ...other,
      ],
      words`At its far end ${line} and neutral touch. What current flows at first, with everything cold?`,
    ],
    ask: 'A current with its unit. Three figures are enough.',
    scenarios: [{ name: 'the first moments', scenario: scenarioOf(drawn, practice) }],
    hints: [
      words`Follow the current once round: supply, out along the lead, and back.`,
      words`Find what each ${each} of this metal resists, and the length of the way out and back.`,
      words`Add the ohms of the supply. Then divide the volts by all the ohms.`,
    ],
    solution: [
      words`Each ${each} of a core has ${quantity(own)}.`,
      words`Out and back the lead has ${quantity(amount(run, 3, 'Ω'))}. With the supply that makes ${quantity(amount(run + drawn.source, 3, 'Ω'))}.`,
      words`${law}`,
      words`${quantity(given(volts[practice], 'V'))} over that is ${quantity(answer.text)}.`,
      words`A poor metal loses twice: its core stands less, and less current makes the device slower.`,
    ],
    look: 'Draw the path round, and write its ohms beside each part.',
    cautions: [shortCaution],
    answer,
    wrong: wrongOf(drawn, practice),
  };
}

/** How Q59 is drawn and built. */
export const endOfLeadSpec: TemplateSpec<Case> = {
  id: 'Q59',
  version: 1,
  lesson: '4.4',
  kind: 'number',
  title: 'Short circuit at the far end',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['4.4 find If from the loop'],
  misconceptions: ['M09', 'M10'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ load: loads[0] as string, metal: 'cca10', size: 1.5, count: 20, source: 0.23 }],
    na: [{ load: loads[0] as string, metal: 'cca10', size: 16, count: 60, source: 0.12 }],
  },
  build: built,
};

/** Q59: the current of a short circuit at the end of a lead. */
export const endOfLead = defineTemplate(endOfLeadSpec);
