import type { CastKey } from '../../examples/cast.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { kelvin } from '../../quantity.ts';
import { ringResistance } from '../../surroundings/outside.ts';
import { cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { inTheScale } from '../degrees.ts';
import { heldCurrent } from '../experiment.ts';
import { amount, given, plainNumber, rounded, temperatureText } from '../figures.ts';
import { staysApart } from '../guard.ts';
import type { Random } from '../random.ts';
import { chainOf, whole_degC } from '../settled-chain.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltNumber, NumberAnswer, Practice, TemplateSpec, WrongValue } from '../types.ts';
import { formula, quantity, words } from '../words.ts';

// Q20: the conductor from the surface, by the heat that falls through the plastic.

interface Case {
  readonly cord: CastKey;
  readonly place: string;
  readonly ambient_degC: number;
  readonly I_A: number;
}

const places = [
  'on a market stall',
  'in a theatre workshop',
  'in a site cabin',
  'in a village hall',
  'in a boatyard shed',
  'in a joinery',
] as const;

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const place = random.pick(places);
  const ambient_degC = random.whole(5, 35);
  const rise = random.whole(24, 60);
  const cold = buildCase(heldCurrent(cord, ambient_degC, 1, 1800));
  const I_A = Math.round(ratingAt(cold, kelvin(ambient_degC + rise)) ?? 0);
  if (I_A < 2 || I_A > 30) return null;
  const drawn = { cord: cord.key, place, ambient_degC, I_A };
  return isClear(drawn, practice) ? drawn : null;
}

/** The figures of the stem, rounded as they are told, and what follows from them. */
function factsOf({ cord: key, ambient_degC, I_A }: Case) {
  const cord = cordOf(key);
  const scenario = heldCurrent(cord, ambient_degC, I_A, 3600);
  const of = buildCase(scenario);
  const chain = chainOf(scenario);
  if (!chain) throw new Error('the case of Q20 settles');
  const surface_degC = whole_degC(chain.surface);
  const heat = rounded(chain.flow, 3);
  const rhoT = of.cable.insulation?.rhoT.value ?? 0;
  const [core_mm, outer_mm] = [2e3 * of.equivalentRadius, 2e3 * of.cable.outerRadius].map((d) => rounded(d, 3)) as [
    number,
    number,
  ];
  const layer = { name: 'plastic', r0: core_mm / 2e3, r1: outer_mm / 2e3, k: 1 / rhoT, rhoC: 0 };
  const drop = heat * ringResistance(layer);
  return { cord, scenario, chain, surface_degC, heat, rhoT, core_mm, outer_mm, drop };
}

type Facts = ReturnType<typeof factsOf>;

function isClear(drawn: Case, practice: Practice): boolean {
  const facts = factsOf(drawn);
  const answer = answerOf(drawn, facts, practice);
  const near = Math.abs(facts.chain.conductor - answer.value) < 0.45;
  return near && staysApart(answer, wrongOf(drawn, facts, practice));
}

function answerOf({ ambient_degC }: Case, { surface_degC, drop }: Facts, practice: Practice): NumberAnswer {
  const T_degC = surface_degC + drop;
  const rise = T_degC - ambient_degC;
  const tolerance = { kind: 'absolute', by: Math.max(0.6, 0.025 * rise) } as const;
  const text = temperatureText(T_degC, practice);
  return { value: kelvin(T_degC), kind: 'temperature', unit: '°C', tolerance, figures: 2, span: rise, text };
}

function wrongOf({ ambient_degC }: Case, { surface_degC, drop }: Facts, practice: Practice): WrongValue[] {
  const sheath: WrongValue = {
    id: 'M22',
    value: kelvin(surface_degC),
    trueOf: 'is the surface, not the copper.',
    ask: 'What would make heat flow outward, if the copper were no hotter than the sheath?',
  };
  const alone = {
    id: 'M17',
    trueOf: 'is the drop through the plastic alone, told as a temperature.',
    whyNot: 'The drop is counted from the surface. Add the surface temperature.',
    ask: `Can the copper be cooler than the air, at ${temperatureText(ambient_degC, practice)}?`,
  } as const;
  // in degrees of either scale
  return [sheath, ...inTheScale(practice, alone, (told) => (drop * (told(100) - told(0))) / 100)];
}

const law = formula(
  String.raw`\theta_\mathrm{c} = \theta_\mathrm{s} + W'\,\rho_T\,\frac{\ln(D_\mathrm{e}/d_\mathrm{eq})}{2\pi}`,
  'Theta c is theta s plus W prime times rho T times the natural log of D e over d e q, over two pi.',
);

function solutionOf(facts: Facts, answer: NumberAnswer, practice: Practice) {
  const { cord, heat, rhoT, core_mm, outer_mm, drop, surface_degC } = facts;
  const log = Math.log(outer_mm / core_mm);
  return [
    words`Heat falls from the copper through the plastic to the surface. The copper must be the hotter one.`,
    words`${law}`,
    words`The cord is ${plainNumber(outer_mm / core_mm, 3)} times as wide as the core. The natural log of that is ${plainNumber(log, 3)}.`,
    words`So the drop is ${quantity(amount(heat, 3, 'W/m'))} times ${quantity(amount(rhoT, 2, 'K·m/W'))} times ${plainNumber(log, 3)}, over two pi: ${quantity(amount(drop, 2, 'K'))}.`,
    words`Added to the surface at ${quantity(temperatureText(surface_degC, practice))}, that makes ${quantity(answer.text)}.`,
    words`${ratingNote(cord)}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltNumber {
  const facts = factsOf(drawn);
  const { cord, scenario, surface_degC, heat, rhoT, core_mm, outer_mm } = facts;
  const answer = answerOf(drawn, facts, practice);
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  const I = given(drawn.I_A, 'A');
  return {
    kind: 'number',
    stem: [
      words`It is ${told(drawn.ambient_degC)} ${drawn.place}. There ${cord.words} carries ${quantity(I)} and has settled. Its surface is at ${told(surface_degC)}.`,
      words`Each metre sheds ${quantity(amount(heat, 3, 'W'))}. All of it comes through plastic with a thermal resistivity of ${quantity(amount(rhoT, 2, 'K·m/W'))}.`,
      words`Take the two hot cores as one core ${quantity(amount(core_mm, 3, 'mm'))} across. The cord is ${quantity(amount(outer_mm, 3, 'mm'))} across. How hot is the conductor?`,
    ],
    ask: 'A temperature with its unit, to the nearest degree.',
    scenarios: [{ name: `${I} for an hour`, scenario }],
    hints: [
      words`Which way does the heat go, and which end of its way is the hotter one?`,
      words`Find the drop through the plastic first. It goes with the heat, the resistivity and ${formula(String.raw`\ln(D_\mathrm{e}/d_\mathrm{eq})`, 'the natural log of D e over d e q')}.`,
      words`${law}`,
    ],
    solution: solutionOf(facts, answer, practice),
    look: 'Open the case and compare its two curves, conductor and surface, at the end.',
    cautions: overloadCaution(cord, drawn.I_A),
    answer,
    wrong: wrongOf(drawn, facts, practice),
  };
}

/** How Q20 is drawn and built. */
export const copperBehindSheathSpec: TemplateSpec<Case> = {
  id: 'Q20',
  version: 1,
  lesson: '2.1',
  kind: 'number',
  title: 'Copper behind the sheath',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['2.1 state conductor, surface and ambient in order'],
  misconceptions: ['M22', 'M17'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C125', place: 'on a market stall', ambient_degC: 20, I_A: 19 }],
    na: [{ cord: 'A16', place: 'on a market stall', ambient_degC: 20, I_A: 20 }],
  },
  build: built,
};

/** Q20: the conductor's temperature from the surface's, through the plastic. */
export const copperBehindSheath = defineTemplate(copperBehindSheathSpec);
