import { type CastKey, cast } from '../../examples/cast.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { carrying, clearly, settledAt } from '../carrying.ts';
import { type Cord, cordOf, cordsOf, overloadCaution, ratingNote } from '../cords.ts';
import { dealt, mostDeals } from '../deal.ts';
import { given, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { wallOf, withWall } from './walls.ts';

// Q24: two cords that differ in the thickness of their insulation alone: which one runs hotter.

interface Case {
  readonly cord: CastKey;
  readonly ambient_degC: number;
  readonly I_A: number;
  /** Insulation round each core, before and after [mm]. */
  readonly from_mm: number;
  readonly to_mm: number;
  readonly deal: number;
}

function drawnCase(random: Random, practice: Practice): Case | null {
  const cord = random.pick(cordsOf(practice));
  const insulation_mm = wallOf(cast[cord.key]);
  const times = random.pick([2, 2, 2.5, 3]);
  const walls = [insulation_mm, Number((insulation_mm * times).toFixed(2))] as const;
  const [from_mm, to_mm] = random.whole(0, 2) > 0 ? walls : [walls[1], walls[0]];
  const drawn = {
    cord: cord.key,
    ambient_degC: random.whole(15, 35),
    I_A: random.whole(8, 25),
    from_mm,
    to_mm,
    deal: random.whole(0, mostDeals),
  };
  const [before, after] = endsOf(drawn, practice);
  return Math.abs(after - before) >= clearly && Math.max(before, after) <= 110 ? drawn : null;
}

const scenarioOf = ({ cord, ambient_degC, I_A }: Case, wall_mm: number, practice: Practice): Scenario =>
  carrying(withWall(cast[cord], wall_mm), ambient_degC, I_A, practice, 3600);

/** Where the conductor settles before and after, by the engine [°C]. */
function endsOf(drawn: Case, practice: Practice): [number, number] {
  const end = (wall_mm: number) => settledAt(scenarioOf(drawn, wall_mm, practice));
  return [end(drawn.from_mm), end(drawn.to_mm)];
}

type Way = 'cooler' | 'same' | 'hotter';

function optionsOf({ from_mm, to_mm }: Case, right: Way): ChooseOption[] {
  const thicker = to_mm > from_mm;
  const [skin, wall] = thicker ? ['has more', 'more'] : ['has less', 'less'];
  const bySkin: Way = thicker ? 'cooler' : 'hotter';
  const reason = (way: Way) =>
    way === bySkin ? `for the cord ${skin} surface to shed heat from` : `for the heat has ${wall} plastic to cross`;
  const said = (way: Way): Said => {
    if (way === 'same')
      return {
        trueOf: 'the heat made is nearly the same, but not its way out.',
        whyNot: 'The wall and the surface both lie on that way, and both have changed.',
        ask: 'Which two things has the heat to pass between metal and air?',
      };
    if (way === bySkin) return { trueOf: 'the surface changes so.', ask: 'What else lies on the heat’s way out?' };
    return {
      id: 'M23',
      trueOf: `the wall itself holds back ${thicker ? 'more' : 'less'} heat, but the surface outdoes it.`,
      ask: 'On a cord this thin, what is harder for the heat: the plastic, or the step into the air?',
    };
  };
  const all: readonly (readonly [Way, string])[] = [
    ['cooler', `Cooler, ${reason('cooler')}.`],
    ['same', 'The same, for the same heat is made.'],
    ['hotter', `Hotter, ${reason('hotter')}.`],
  ];
  return all.map(([id, text]) => (id === right ? { id, text } : { id, text, said: said(id) }));
}

function solutionOf(drawn: Case, cord: Cord, text: string, practice: Practice) {
  const [before, after] = endsOf(drawn, practice);
  const told = (T_degC: number) => quantity(temperatureText(T_degC, practice));
  return [
    words`Heat has two steps to take: through the plastic, then from the surface into the air.`,
    words`On a thin cord the step into the air is the harder one. There a larger surface helps more than the wall hinders.`,
    words`The engine lets both settle: ${told(before)} with the first wall, ${told(after)} with the second.`,
    words`So ${text}`,
    words`This holds for thin cords in free air. Lagging, a reel or a draught can turn it round.`,
    words`${ratingNote(cord)}`,
  ];
}

function built(drawn: Case, practice: Practice): BuiltChoose {
  const cord = cordOf(drawn.cord);
  const [before, after] = endsOf(drawn, practice);
  const change = after - before;
  const right: Way = Math.abs(change) < 0.5 ? 'same' : change < 0 ? 'cooler' : 'hotter';
  const [from, to] = [given(drawn.from_mm, 'mm'), given(drawn.to_mm, 'mm')];
  const thicker = drawn.to_mm > drawn.from_mm;
  const text = `the ${thicker ? 'thicker' : 'thinner'} wall runs the conductor ${right}, by about ${Math.round(Math.abs(change))}\u00A0K.`;
  return {
    kind: 'choose',
    stem: [
      words`${cord.words.replace('a ', 'A ')} has ${quantity(from)} of PVC round each core. It carries ${quantity(given(drawn.I_A, 'A'))} in still air at ${quantity(temperatureText(drawn.ambient_degC, practice))}.`,
      words`A second cord is the same, but with ${quantity(to)} of PVC round each core. Does its conductor settle cooler, the same or hotter?`,
    ],
    ask: 'Choose one, with its reason.',
    parts: [{ id: 'way', label: 'The second cord', options: dealt(optionsOf(drawn, right), drawn.deal), right }],
    answer: { text },
    scenarios: [
      { name: `${from} of insulation`, scenario: scenarioOf(drawn, drawn.from_mm, practice) },
      { name: `${to} of insulation`, scenario: scenarioOf(drawn, drawn.to_mm, practice) },
    ],
    hints: [
      words`Follow the heat from the metal to the air. Which two steps does it take?`,
      words`What does the wall do to the first step, and what to the surface of the second?`,
      words`On a cord a few millimetres thick, which of the two steps takes more kelvin?`,
    ],
    solution: solutionOf(drawn, cord, text, practice),
    look: 'Open both cases, and compare conductor and surface in each.',
    cautions: overloadCaution(cord, drawn.I_A),
  };
}

/** How Q24 is drawn and built. */
export const thickerWallSpec: TemplateSpec<Case> = {
  id: 'Q24',
  version: 1,
  lesson: '2.1',
  kind: 'choose',
  title: 'Thicker plastic',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['2.1 state conductor, surface and ambient in order'],
  misconceptions: ['M23'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ cord: 'C075', ambient_degC: 20, I_A: 16, from_mm: 0.6, to_mm: 1.2, deal: 1 }],
    na: [{ cord: 'A18', ambient_degC: 20, I_A: 18, from_mm: 0.76, to_mm: 1.52, deal: 1 }],
  },
  build: built,
};

/** Q24: whether thicker insulation runs a thin cord hotter. */
export const thickerWall = defineTemplate(thickerWallSpec);
