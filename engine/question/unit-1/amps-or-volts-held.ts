import { ratingAt } from '../../heating/rating.ts';
import { heatMade, steadyState } from '../../heating/steady.ts';
import { supplyOf } from '../../heating/supply.ts';
import { buildCase, leadResistance } from '../../heating/thermal-case.ts';
import { celsius, kelvin } from '../../quantity.ts';
import type { Scenario, SupplyStep } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { amount, given, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, ChoosePart, Practice, Said, TemplateSpec } from '../types.ts';
import { formula, quantity, words } from '../words.ts';
import { type AskedMetal, leadOf, sizesOf, sizeText } from './metal-leads.ts';

// Q18: a lead warms with its current held, or with its voltage held: what becomes of the heat it makes.

interface Case {
  readonly metal: AskedMetal;
  readonly size: number;
  readonly length_m: number;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly U_V: number;
  /** Which of the two is asked first. */
  readonly voltsFirst: boolean;
}

function drawnCase(random: Random, practice: Practice): Case | null {
  const metal = random.pick<AskedMetal>(['steel', 'steel', 'copper', 'aluminium']);
  const size = random.pick(sizesOf(practice).slice(0, 3));
  const length_m = random.whole(2, 6);
  const ambient_degC = random.whole(15, 25);
  const rise = random.whole(35, 60);
  const cold = buildCase(leadAt(leadOf(size, metal, practice), ambient_degC, 1, length_m, practice));
  const I_A = Math.round(2 * (ratingAt(cold, kelvin(ambient_degC + rise)) ?? 0)) / 2;
  const U_V = Number((I_A * leadResistance(cold, cold.T0)).toPrecision(2));
  const drawn = { metal, size, length_m, ambient_degC, I_A, U_V, voltsFirst: random.whole(0, 1) === 1 };
  if (I_A < 2 || I_A > 30 || U_V < 1 || U_V > 24) return null;
  const { amps, volts } = factsOf(drawn, practice);
  return Math.abs(amps.grown - 1) > 0.06 && Math.abs(volts.grown - 1) > 0.04 ? drawn : null;
}

function leadAt(
  cable: Scenario['cable'],
  ambient_degC: number,
  I_A: number,
  length_m: number,
  practice: Practice,
): Scenario {
  return { ...carrying(cable, ambient_degC, I_A, practice, 3600), lead: { length_m } };
}

function scenariosOf({ metal, size, length_m, ambient_degC, I_A, U_V }: Case, practice: Practice) {
  const amps = leadAt(leadOf(size, metal, practice), ambient_degC, I_A, length_m, practice);
  const volts: Scenario = { ...amps, supply: [{ kind: 'voltage', U_V }] };
  return { amps, volts };
}

/** What a supply that is held makes of the lead: heat at the end over heat at the start, and both ends. */
function endsOf(scenario: Scenario) {
  const of = buildCase(scenario);
  const supply = supplyOf(of, scenario.supply[0] as SupplyStep);
  const steady = steadyState(of, supply);
  if (steady.kind !== 'steady') throw new Error('a lead this cool settles');
  const T = steady.chain.conductor;
  const first = supply.current(of.T0);
  return { grown: heatMade(of, steady.I, T) / heatMade(of, first, of.T0), T_degC: celsius(T), first, last: steady.I };
}

function factsOf(drawn: Case, practice: Practice) {
  const { amps, volts } = scenariosOf(drawn, practice);
  return { amps: endsOf(amps), volts: endsOf(volts) };
}

type Way = 'rises' | 'same' | 'falls';

const ways: readonly (readonly [Way, string])[] = [
  ['rises', 'rises'],
  ['same', 'stays the same'],
  ['falls', 'falls'],
];
const wayOf = (grown: number): Way => (Math.abs(grown - 1) < 0.01 ? 'same' : grown > 1 ? 'rises' : 'falls');
const opposite: Readonly<Record<Way, Way>> = { rises: 'falls', falls: 'rises', same: 'same' };

function partOf(id: string, label: string, grown: number, other: Said): ChoosePart {
  const right = wayOf(grown);
  const same: Said = {
    id: 'M16',
    trueOf: 'that is the heat of a lead which stays cold.',
    whyNot: 'Ordinary metals resist more when hot. So the heat changes while the lead warms.',
    ask: 'What does the resistance do while the lead warms?',
  };
  const options = ways.map(([way, text]): ChooseOption => {
    if (way === right) return { id: way, text };
    return { id: way, text, said: way === opposite[right] ? { ...other, id: 'M13' } : same };
  });
  return { id, label, options, right };
}

function partsOf(drawn: Case, practice: Practice): ChoosePart[] {
  const { amps, volts } = factsOf(drawn, practice);
  const parts = [
    partOf('amps', `Heat with ${given(drawn.I_A, 'A')} held`, amps.grown, {
      trueOf: 'that would fit a metal which resists less when hot.',
      ask: 'With the current held, heat goes with resistance. Does hot metal resist more, or less?',
    }),
    partOf('volts', `Heat with ${given(drawn.U_V, 'V')} held`, volts.grown, {
      trueOf: 'that would fit a metal which lets more current through when hot.',
      ask: 'With the voltage held, what does more resistance do to the current?',
    }),
  ];
  return drawn.voltsFirst ? parts.reverse() : parts;
}

function solutionOf(drawn: Case, text: string, practice: Practice) {
  const { amps, volts } = factsOf(drawn, practice);
  const T = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const A = (I: number) => quantity(amount(I, 2, 'A'));
  return [
    words`Ordinary metals resist more when hot. So the lead’s resistance grows while it warms.`,
    words`With the current held, use ${heldCurrentLaw}: more resistance, more heat. The engine lets it settle at ${T(amps.T_degC)}.`,
    words`With the voltage held, use ${heldVoltageLaw}: more resistance, less heat. It settles at ${T(volts.T_degC)}.`,
    words`There the current falls from ${A(volts.first)} to ${A(volts.last)}.`,
    words`So ${text}`,
  ];
}

const heldCurrentLaw = formula('P = I^2R', 'P is I squared times R');
const heldVoltageLaw = formula('P = U^2/R', 'P is U squared over R');

function built(drawn: Case, practice: Practice): BuiltChoose {
  const parts = partsOf(drawn, practice);
  const { amps, volts } = scenariosOf(drawn, practice);
  const wayText = (id: string) => parts.find((part) => part.id === id)?.right ?? '';
  const [ampsWay, voltsWay] = ['amps', 'volts'].map(wayText) as [string, string];
  const text = `with the current held the heat ${ampsWay}, with the voltage held it ${voltsWay}.`;
  return {
    kind: 'choose',
    stem: [
      words`A demonstration lead is ${quantity(given(drawn.length_m, 'm'))} long. Its ${quantity(sizeText(drawn.size, practice))} conductors are ${drawn.metal}. It starts at ${quantity(temperatureText(drawn.ambient_degC, practice))}.`,
      words`First a supply holds the current at ${quantity(given(drawn.I_A, 'A'))}. Then, from cold again, another holds the voltage at ${quantity(given(drawn.U_V, 'V'))}, which begins at about the same current.`,
      words`What does the heat made in the lead do, from switching on until the temperature stands?`,
    ],
    ask: 'Choose one for each supply.',
    parts,
    answer: { text },
    scenarios: [
      { name: `${drawn.I_A}\u00A0A held`, scenario: amps },
      { name: `${drawn.U_V}\u00A0V held`, scenario: volts },
    ],
    hints: [
      words`What does the lead’s resistance do while the metal warms?`,
      words`With the current held, heat is current squared times resistance.`,
      words`With the voltage held, heat is voltage squared over resistance.`,
    ],
    solution: solutionOf(drawn, text, practice),
    look: 'Open both cases and compare the heat made at the start and at the end.',
    cautions: ['Hot metal burns, also at a few volts. Simulate only; never load a lead to feel it warm.'],
  };
}

/** How Q18 is drawn and built. */
export const ampsOrVoltsHeldSpec: TemplateSpec<Case> = {
  id: 'Q18',
  version: 1,
  lesson: '1.4',
  kind: 'choose',
  title: 'Amps held or volts held',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['1.4 predict the drift with volts held and with amps held'],
  misconceptions: ['M13', 'M16'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ metal: 'steel', size: 0.75, length_m: 3, ambient_degC: 20, I_A: 5, U_V: 5.9, voltsFirst: false }],
    na: [{ metal: 'steel', size: 18, length_m: 3, ambient_degC: 20, I_A: 5, U_V: 5.3, voltsFirst: false }],
  },
  build: built,
};

/** Q18: whether a warming lead makes more heat or less, with amps or with volts held. */
export const ampsOrVoltsHeld = defineTemplate(ampsOrVoltsHeldSpec);
