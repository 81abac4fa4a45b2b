import { type Metal, metals } from '../../material/metals.ts';
import { allApart, carrying, clearly, settledAt } from '../carrying.ts';
import { dealtOrder, mostDeals } from '../deal.ts';
import { given, plainNumber, temperatureText } from '../figures.ts';
import { inWords } from '../mark-order.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltOrder, OrderItem, Practice, TemplateSpec, WrongOrder } from '../types.ts';
import { quantity, words } from '../words.ts';
import { type AskedMetal, leadOf, metalNames, otherMetals, sizesOf, sizeText } from './metal-leads.ts';

// Q13: cords alike but for their metal, in order of where they settle.

interface Case {
  readonly metals: readonly AskedMetal[];
  readonly size: number;
  readonly ambient_degC: number;
  readonly I_A: number;
  readonly deal: number;
}

// the second metal, and the two after it
const light: readonly AskedMetal[] = ['cca10', 'cca10', 'cca10', 'aluminium'];
const others: readonly AskedMetal[] = ['brass', 'ccs30'];

/** Above this a cord of the model is too far past its plastic's limit [°C]. */
const hottest = 155;

function drawnCase(random: Random, practice: Practice): Case | null {
  const drawn: Case = {
    metals: ['copper', random.pick(light), random.pick(others), 'steel'],
    size: random.pick(sizesOf(practice).slice(0, 3)),
    ambient_degC: random.whole(10, 35),
    I_A: random.whole(4, 10),
    deal: random.whole(0, mostDeals),
  };
  const ends = endsOf(drawn, practice).map(({ T_degC }) => T_degC);
  return allApart(ends, clearly) && Math.max(...ends) <= hottest ? drawn : null;
}

/** Where each cord settles, coolest first, by the engine [°C]. */
function endsOf(drawn: Case, practice: Practice) {
  const ends = drawn.metals.map((id) => ({ id, T_degC: settledAt(scenarioOf(drawn, id, practice)) }));
  return ends.sort((a, b) => a.T_degC - b.T_degC);
}

const scenarioOf = ({ size, ambient_degC, I_A }: Case, metal: AskedMetal, practice: Practice) =>
  carrying(leadOf(size, metal, practice), ambient_degC, I_A, practice, 3600);

/** The order of one who takes clad aluminium for copper: side by side, and which of the two comes first is chance. */
function wrongOf(order: readonly AskedMetal[]): WrongOrder[] {
  if (!order.includes('cca10')) return [];
  const rest = order.filter((id) => id !== 'cca10');
  const at = rest.indexOf('copper');
  const beside = [at, at + 1].map((i) => [...rest.slice(0, i), 'cca10', ...rest.slice(i)] as AskedMetal[]);
  return beside
    .filter((one) => one.join() !== order.join())
    .map((one) => ({
      id: 'M10',
      order: one,
      trueOf: 'this would fit if the copper skin did all the work.',
      ask: 'Nine tenths of that wire are aluminium. What carries the current there?',
    }));
}

const resistivity_nOhmM = (metal: Metal) => metal.rho20.value * 1e9;

function solutionOf(drawn: Case, text: string, practice: Practice) {
  const ends = endsOf(drawn, practice);
  const rho = ends.map(({ id }) => `${metalNames[id]} ${plainNumber(resistivity_nOhmM(metals[id]), 3)}`).join(', ');
  const told = ends.map(({ id, T_degC }) => `${metalNames[id]} ${temperatureText(T_degC, practice)}`).join(', ');
  return [
    words`Size and current are alike, so the heat made goes with the resistivity. And so does the rise, nearly.`,
    words`Resistivity in nΩ·m: ${rho}.`,
    words`In clad wire both metals carry current side by side, each by its share of the section.`,
    words`The engine lets each settle: ${told}.`,
    words`So ${text}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltOrder {
  const order = endsOf(drawn, practice).map(({ id }) => id);
  const wrong = wrongOf(order);
  const items = dealtOrder(
    order,
    wrong.map((one) => one.order),
    drawn.deal,
  ).map((id): OrderItem => ({ id, name: metalNames[id as AskedMetal] }));
  const ends = ['coolest', 'hottest'] as const;
  const text = `${inWords({ items, ends }, order)}.`;
  const clad = order.includes('cca10') ? ' The clad aluminium is a tenth copper by volume.' : '';
  const second = order[1] as AskedMetal;
  const warmest = order.at(-1) as AskedMetal;
  return {
    kind: 'order',
    stem: [
      words`Four cords of ${quantity(sizeText(drawn.size, practice))} are alike but for the metal of their conductors.${clad}`,
      words`Each carries ${quantity(given(drawn.I_A, 'A'))} in still air at ${quantity(temperatureText(drawn.ambient_degC, practice))}. Put them in order of where their conductors settle.`,
    ],
    ask: 'Move each up or down with its two buttons.',
    items,
    ends,
    answer: { order, text },
    wrong,
    scenarios: [
      { name: 'copper', scenario: scenarioOf(drawn, 'copper', practice) },
      { name: metalNames[second], scenario: scenarioOf(drawn, second, practice) },
      { name: metalNames[warmest], scenario: scenarioOf(drawn, warmest, practice) },
    ],
    hints: [
      words`At one size and current, the metal that resists most makes most heat.`,
      words`A clad wire lies between its two metals, nearer to the one with more of the section.`,
      words`Copper resists least of these. Which resists most?`,
    ],
    solution: solutionOf(drawn, text, practice),
    look: 'Open the cases and compare where the conductors settle.',
    cautions: [otherMetals],
  };
}

/** How Q13 is drawn and built. */
export const metalsInOrderSpec: TemplateSpec<Case> = {
  id: 'Q13',
  version: 1,
  lesson: '1.3',
  kind: 'order',
  title: 'Four metals by temperature',
  difficulty: 1,
  practices: ['iec', 'na'],
  objectives: ['1.3 order metals by resistivity'],
  misconceptions: ['M10'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ metals: ['copper', 'cca10', 'brass', 'steel'], size: 1, ambient_degC: 20, I_A: 8, deal: 1 }],
    na: [{ metals: ['copper', 'cca10', 'brass', 'steel'], size: 16, ambient_degC: 20, I_A: 9, deal: 1 }],
  },
  build: built,
};

/** Q13: four metals in order of where a cord settles. */
export const metalsInOrder = defineTemplate(metalsInOrderSpec);
