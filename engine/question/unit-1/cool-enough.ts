import { cableOf } from '../../cable/cable.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { metals } from '../../material/metals.ts';
import { celsius, kelvin } from '../../quantity.ts';
import { carrying, clearly, settledAt } from '../carrying.ts';
import { dealt, mostDeals } from '../deal.ts';
import { given, plainNumber, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { type AskedMetal, leadOf, metalNames, otherMetals, sizesOf, sizeText } from './metal-leads.ts';

// Q14: of four leads of several metals and sizes, the one that keeps within its insulation's limit.

interface Lead {
  readonly size: number;
  readonly metal: AskedMetal;
}

interface Case {
  readonly leads: readonly Lead[];
  readonly place: string;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly deal: number;
}

const places = ['a bakery', 'a laundry', 'a polytunnel', 'a site cabin', 'a market stall', 'a theatre workshop'];

/** Leads hotter than this are out of the question and of the model [°C]. */
const hottest = 155;

/** A current that copper of one size may carry and clad aluminium of that size may not, with leads round about. */
function drawnCase(random: Random, practice: Practice): Case | null {
  const sizes = sizesOf(practice);
  const at = practice === 'iec' ? random.whole(0, 3) : random.whole(1, 2);
  const size = sizes[at] as number;
  const ambient_degC = random.whole(20, 40);
  const most = (metal: AskedMetal, T_degC: number) =>
    ratingAt(buildCase(carrying(leadOf(size, metal, practice), ambient_degC, 1, practice)), kelvin(T_degC)) ?? 0;
  const limit = limitOf({ size, metal: 'copper' }, practice);
  const from = Math.ceil(most('cca10', limit + clearly));
  const to = Math.floor(most('copper', limit - clearly));
  if (to < from) return null;
  const thicker = sizes[at + 1] as number;
  const thinner = sizes[at - 1];
  const right = random.pick<Lead>([
    { size, metal: 'copper' },
    { size: thicker, metal: 'cca10' },
    { size: thicker, metal: 'aluminium' },
  ]);
  const past: Lead[] = [
    { size, metal: 'aluminium' },
    { size: sizes.at(-1) as number, metal: 'steel' },
    ...(thinner === undefined
      ? []
      : ([
          { size: thinner, metal: 'cca10' },
          { size: thinner, metal: 'copper' },
        ] as const)),
  ];
  const last = practice === 'na' ? past.pop() : undefined; // thin copper, which the gauge turned round makes thick
  const rest = dealt(past, random.whole(0, mostDeals)).slice(0, last ? 1 : 2);
  const drawn: Case = {
    leads: [right, { size, metal: 'cca10' }, ...(last ? [last] : []), ...rest],
    place: random.pick(places),
    ambient_degC,
    I_A: random.whole(from, to),
    deal: random.whole(0, mostDeals),
  };
  return isClear(drawn, practice) ? drawn : null;
}

/** One lead keeps within the limit, the others are clearly past it, and every slip of the practice is on offer. */
function isClear(drawn: Case, practice: Practice): boolean {
  const ends = drawn.leads.map((lead) => endOf(drawn, lead, practice));
  const limit = limitOf(drawn.leads[0] as Lead, practice);
  const clear = ends.every((T) => Math.abs(T - limit) >= clearly && T <= hottest);
  if (!clear || ends.filter((T) => T <= limit).length !== 1) return false;
  const slips = drawn.leads.map((lead) => slipOf(drawn, lead, practice));
  return slips.includes('M10') && (practice === 'iec' || slips.includes('M08'));
}

const scenarioOf = ({ ambient_degC, I_A }: Case, { size, metal }: Lead, practice: Practice) =>
  carrying(leadOf(size, metal, practice), ambient_degC, I_A, practice, 3600);

/** Where a lead settles, by the engine [°C]. */
const endOf = (drawn: Case, lead: Lead, practice: Practice) => settledAt(scenarioOf(drawn, lead, practice));

/** Rating of a lead's insulation [°C]; all of the leads have the same. */
function limitOf({ size, metal }: Lead, practice: Practice): number {
  return celsius(ratingOf(cableOf(leadOf(size, metal, practice))) as number);
}

/** The idea by which a lead that gets too hot would pass: copper where it is clad; the gauge turned round. */
function slipOf(drawn: Case, lead: Lead, practice: Practice): 'M10' | 'M08' | undefined {
  const limit = limitOf(drawn.leads[0] as Lead, practice);
  if (endOf(drawn, lead, practice) <= limit) return undefined;
  const passes = (other: Lead) => endOf(drawn, other, practice) <= limit;
  if (lead.metal === 'cca10' && passes({ ...lead, metal: 'copper' })) return 'M10';
  const turned = { ...lead, size: [...sizesOf('na')].reverse()[sizesOf('na').indexOf(lead.size)] ?? 0 };
  return practice === 'na' && passes(turned) ? 'M08' : undefined;
}

function saidOf(drawn: Case, lead: Lead, practice: Practice): Said {
  const end = temperatureText(endOf(drawn, lead, practice), practice);
  const slip = slipOf(drawn, lead, practice);
  const trueOf = `this lead settles at ${end}.`;
  if (slip === 'M10') return { id: slip, trueOf, ask: 'How much of that wire is copper, and how much aluminium?' };
  if (slip === 'M08') return { id: slip, trueOf, ask: 'Which is thicker to look at: 18 or 10\u00A0AWG?' };
  return {
    trueOf,
    whyNot: 'Heat made goes with the metal’s resistivity over its area. Here that is too much for the current.',
    ask: 'Which of the four has the least resistance in a metre?',
  };
}

/** How many times as much a metal resists as copper does. */
const more = (metal: AskedMetal) => plainNumber(metals[metal].rho20.value / metals.copper.rho20.value, 2);

const nameOf = ({ size, metal }: Lead, practice: Practice) => `${sizeText(size, practice)} ${metalNames[metal]}`;

function solutionOf(drawn: Case, text: string, practice: Practice) {
  const told = drawn.leads.map(
    (lead) => `${nameOf(lead, practice)} ${temperatureText(endOf(drawn, lead, practice), practice)}`,
  );
  return [
    words`A metre’s resistance is resistivity over area. So metal and size have to be weighed together.`,
    words`At one size, clad aluminium with a tenth of copper resists ${more('cca10')} times as much as copper. Aluminium resists ${more('aluminium')} times as much, steel ${more('steel')} times.`,
    words`The engine lets each lead settle: ${told.slice(0, 2).join(', ')}.`,
    words`And the others: ${told.slice(2).join(', ')}.`,
    words`So ${text}`,
    words`A lead within its limit here may still be over its table rating, since a cord is also coiled, covered and gripped.`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const limit = limitOf(drawn.leads[0] as Lead, practice);
  const within = drawn.leads.filter((lead) => endOf(drawn, lead, practice) <= limit);
  const [right] = within;
  if (!right || within.length > 1) throw new Error('one lead keeps within the limit');
  const idOf = ({ size, metal }: Lead) => `${size} ${metal}`;
  const options = drawn.leads.map((lead): ChooseOption => {
    const option = { id: idOf(lead), text: nameOf(lead, practice) };
    return lead === right ? option : { ...option, said: saidOf(drawn, lead, practice) };
  });
  const text = `${nameOf(right, practice)} settles at ${temperatureText(endOf(drawn, right, practice), practice)}.`;
  return {
    kind: 'choose',
    stem: [
      words`In ${drawn.place} it is ${quantity(temperatureText(drawn.ambient_degC, practice))}. A three-core lead in still air there is to carry ${quantity(given(drawn.I_A, 'A'))} for hours.`,
      words`All four leads have PVC that is rated ${quantity(temperatureText(limit, practice))}. Which one keeps its conductor within that?`,
    ],
    ask: 'Choose one. The clad aluminium is a tenth copper by volume.',
    parts: [{ id: 'lead', label: 'The lead', options: dealt(options, drawn.deal), right: idOf(right) }],
    answer: { text },
    scenarios: drawn.leads.map((lead) => ({
      name: nameOf(lead, practice),
      scenario: scenarioOf(drawn, lead, practice),
    })),
    hints: [
      words`Find the lead with the least resistance in a metre. It makes the least heat.`,
      words`To compare metals, divide each area by how much more the metal resists than copper.`,
      words`${practice === 'na' ? 'Gauge runs backwards: three numbers up is about half the area.' : 'Twice the area is half the resistance.'}`,
    ],
    solution: solutionOf(drawn, text, practice),
    look: 'Open the cases and compare where the conductors settle.',
    cautions: [overloaded, otherMetals],
  };
}

const overloaded =
  'Some of these leads are overloaded. Too hot, insulation softens and fails. Simulate only; never load a lead above its marking.';

const lead = (size: number, metal: AskedMetal): Lead => ({ size, metal });

/** How Q14 is drawn and built. */
export const coolEnoughSpec: TemplateSpec<Case> = {
  id: 'Q14',
  version: 1,
  lesson: '1.3',
  kind: 'choose',
  title: 'Which lead stays within its limit',
  difficulty: 2,
  practices: ['iec', 'na'],
  objectives: ['1.3 state the copper size that a clad conductor is equal to'],
  misconceptions: ['M10', 'M08'],
  draw: drawnCase,
  fallbacks: {
    iec: [
      {
        leads: [lead(1.5, 'copper'), lead(1.5, 'cca10'), lead(1, 'copper'), lead(1.5, 'aluminium')],
        place: 'a bakery',
        ambient_degC: 35,
        I_A: 17,
        deal: 1,
      },
    ],
    na: [
      {
        leads: [lead(16, 'copper'), lead(16, 'cca10'), lead(18, 'copper'), lead(16, 'aluminium')],
        place: 'a bakery',
        ambient_degC: 35,
        I_A: 17,
        deal: 1,
      },
    ],
  },
  build: built,
};

/** Q14: which of four leads keeps within its limit. */
export const coolEnough = defineTemplate(coolEnoughSpec);
