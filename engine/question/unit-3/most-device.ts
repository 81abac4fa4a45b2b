import { type TradeSize, tradeSize } from '../../conductor/area-scale.ts';
import { ampacity, smallConductorCap } from '../../protection/ampacity.ts';
import { type AmpacityChain, ampacityChain } from '../../protection/ampacity-chain.ts';
import { type Factor, factorProduct } from '../../protection/factors.ts';
import { usualRatings } from '../../protection/standard-ratings.ts';
import { amount, given, plainNumber, temperatureText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { checkYours, citedWords, whoDecides } from './cited-words.ts';
import {
  addedReductions,
  clippedRun,
  companyOf,
  factorList,
  factorsAt,
  fixedLimit,
  type Place,
  runPlaces,
  sizeName,
} from './fixed-runs.ts';

// Q43: the North American chain: column, correction, adjustment, terminals and small conductors, down to the greatest breaker.

interface Case extends Place {
  readonly size_AWG: number;
  readonly place: string;
  readonly terminal_degC: 60 | 75;
}

function drawnCase(random: Random): Case | null {
  const drawn: Case = {
    size_AWG: random.pick([14, 12, 12, 10, 10, 8, 6]),
    place: random.pick(runPlaces),
    terminal_degC: random.pick([60, 75] as const),
    ambient_degC: random.whole(31, 70),
    circuits: random.whole(1, 6),
    insulated_mm: 0,
  };
  return isClear(drawn) ? drawn : null;
}

/** A standard breaker is left, its neighbours are on offer, and no cap lies on a rating by a hair. */
function isClear(drawn: Case): boolean {
  const { chain, right } = factsOf(drawn);
  const near = standard().some((In) => Math.abs(chain.Iz / In - 1) < 0.01 && chain.Iz !== In);
  return right !== null && !near && slipsOf(drawn).length > 0;
}

const standard = () => usualRatings('na').filter((In) => In <= 60);
/** The greatest standard rating that is at most so much [A]; null where there is none. */
const standardBelow = (most: number) => standard().findLast((In) => In <= most * (1 + 1e-9)) ?? null;

const sizeOf = ({ size_AWG }: Case): TradeSize => tradeSize('AWG', size_AWG) as TradeSize;

function chainOf(
  drawn: Case,
  factors: readonly Factor[],
  insulation_degC: 60 | 75 | 90 = fixedLimit.na,
): AmpacityChain {
  const load = { Ib: 0, continuous: false, device: { In: 0 } };
  const { terminal_degC } = drawn;
  return ampacityChain({ ...load, size: sizeOf(drawn), metal: 'copper', insulation_degC, terminal_degC, factors });
}

function factsOf(drawn: Case) {
  const factors = factorsAt(drawn, 'na');
  const chain = chainOf(drawn, factors);
  return { factors, chain, right: standardBelow(chain.mostDevice) };
}

/** The breaker that each known slip leads to, where it is not the right one. */
function slipsOf(drawn: Case): { readonly In: number; readonly said: Said }[] {
  const { factors, chain, right } = factsOf(drawn);
  const leads = (chain: AmpacityChain) => standardBelow(chain.mostDevice);
  const added = Math.max(0, 1 - addedReductions(factors));
  const all: readonly (readonly [number | null, Said])[] = [
    [
      leads(
        chainOf(
          drawn,
          factors.filter(({ symbol }) => symbol !== 'Ca'),
        ),
      ),
      noAmbient,
    ],
    [
      leads(
        chainOf(
          drawn,
          factors.slice(0, 1).map((one) => ({ ...one, value: added })),
        ),
      ),
      addedUp,
    ],
    [standardBelow(chain.Iz), noSmall(drawn)],
    [leads(chainOf(drawn, factors, drawn.terminal_degC)), wrongColumn(drawn)],
  ];
  const found = all.flatMap(([In, said]) => (In !== null && In !== right ? [{ In, said }] : []));
  return found.filter(({ In }, i) => found.findIndex((one) => one.In === In) === i);
}

const noAmbient: Said = {
  id: 'M25',
  trueOf: 'this breaker would suit the cable in air at 30\u00A0°C.',
  ask: 'How much of the way to its limit is the cable before any current flows?',
};
const addedUp: Said = {
  id: 'M26',
  trueOf: 'this breaker would be left if the reductions were added up.',
  ask: 'By that rule, what would four reductions of 30\u00A0% each leave?',
};
const noSmall = ({ size_AWG }: Case): Said => ({
  trueOf: 'this breaker suits what the cable may carry here.',
  whyNot: `But a small conductor has a greatest device of its own: ${given(smallConductorCap(size_AWG, 'copper')?.value ?? 0, 'A')} for this gauge.`,
  ask: 'Which cap is left to look at?',
});
const wrongColumn = ({ terminal_degC }: Case): Said => ({
  trueOf: `this breaker is left when the factors act on the ${given(terminal_degC, '°C')} column.`,
  whyNot: 'The factors act on the insulation’s own column. The terminals’ column is a cap beside it.',
  ask: 'What is the insulation rated for, and what are the terminals marked for?',
});

/** What is said of a breaker that no known slip leads to. */
function saidOf(In: number, { chain, right }: ReturnType<typeof factsOf>): Said {
  if (In < (right ?? 0))
    return {
      trueOf: 'this breaker may stand here.',
      whyNot: 'But a greater one may as well, and the question asks for the greatest.',
      ask: 'Which of the caps is the least?',
    };
  return {
    trueOf: `this is more than ${amount(chain.mostDevice, 3, 'A')}, which the caps leave.`,
    whyNot: 'Each cap is looked at in turn, and the least of them holds.',
    ask: 'Which of the caps is the least?',
  };
}

const boundWords: Readonly<Record<AmpacityChain['bound'], string>> = {
  derated: 'The derated ampacity is the least of the caps.',
  terminals: 'The terminals are the least of the caps.',
  'small conductor': 'The small-conductor rule is the least of the caps.',
  'next size up': 'The next standard rating above is used.',
  none: 'No rule covers this.',
};

/** Five ratings about the right one, with those that slips lead to. */
function offeredIn(drawn: Case): number[] {
  const { right } = factsOf(drawn);
  const list = standard();
  const at = list.indexOf(right ?? 0);
  const slips = slipsOf(drawn)
    .map(({ In }) => In)
    .slice(0, 3);
  const near = [list[at + 1], list[at - 1], list[at + 2], list[at - 2], list[at + 3], list[at + 4]];
  const all = [right, ...slips, ...near].filter((In): In is number => In !== undefined && In !== null);
  return [...new Set(all)].slice(0, 5).sort((a, b) => a - b);
}

function solutionOf(drawn: Case, text: string) {
  const { factors, chain } = factsOf(drawn);
  const own = ampacity(drawn.size_AWG, 'copper', fixedLimit.na);
  const terminal = ampacity(drawn.size_AWG, 'copper', drawn.terminal_degC);
  const small = smallConductorCap(drawn.size_AWG, 'copper');
  const derated = (own?.value ?? 0) * factorProduct(factors);
  const row = factors.map(({ value }) => plainNumber(value, 2)).join(' times ');
  const sources = factors.map((one) => `${one.symbol}: ${citedWords(one)}`);
  return [
    words`The factors act on the 90\u00A0°C column: ${quantity(given(own?.value ?? 0, 'A'))} times ${row} leaves ${quantity(amount(derated, 3, 'A'))}.`,
    words`The terminals' column gives ${quantity(given(terminal?.value ?? 0, 'A'))}. The lesser of the two is ${quantity(amount(chain.Iz, 3, 'A'))}.`,
    words`${small ? `A small conductor of this gauge has a greatest device of ${given(small.value, 'A')}.` : 'This gauge is too thick for the small-conductor rule.'} ${boundWords[chain.bound]}`,
    words`So ${text}`,
    words`The code lets the next standard rating stand above the ampacity in some places. Here that leave is not used.`,
    words`${own ? `It: ${citedWords(own)}. ` : ''}${sources.join('. ')}. ${checkYours}`,
    words`The small-conductor rule caps the device. It does not change what the conductor may carry.`,
  ];
}

function built(drawn: Case): BuiltChoose {
  const facts = factsOf(drawn);
  const { right, factors, chain } = facts;
  if (right === null) throw new Error('a breaker is left');
  const slips = slipsOf(drawn);
  const options = offeredIn(drawn).map((In): ChooseOption => {
    const option = { id: `${In}`, text: `a ${given(In, 'A')} breaker` };
    if (In === right) return option;
    return { ...option, said: slips.find((slip) => slip.In === In)?.said ?? saidOf(In, facts) };
  });
  const T = (T_degC: number) => quantity(temperatureText(T_degC, 'na'));
  const A = (I: number | undefined) => quantity(given(I ?? 0, 'A'));
  const text = `the greatest is ${given(right, 'A')}.`;
  return {
    kind: 'choose',
    stem: [
      words`In North American practice, a cable of ${quantity(sizeName(sizeOf(drawn)))} copper runs ${drawn.place}. It is ${T(drawn.ambient_degC)} there. ${drawn.circuits === 1 ? 'It runs alone.' : companyOf(drawn, 'na')}`,
      words`Its insulation is rated ${T(fixedLimit.na)}, and that column gives ${A(ampacity(drawn.size_AWG, 'copper', fixedLimit.na)?.value)}. The terminals are marked ${T(drawn.terminal_degC)}, and that column gives ${A(ampacity(drawn.size_AWG, 'copper', drawn.terminal_degC)?.value)}.`,
      words`The factors are ${factorList(factors)}. ${smallWords} What is the greatest standard breaker?`,
    ],
    ask: 'Choose one. Do not use the leave to take the next rating above.',
    parts: [{ id: 'device', label: 'The breaker', options, right: `${right}` }],
    answer: { text },
    scenarios: [
      {
        name: 'the cable alone, in that air',
        scenario: clippedRun(sizeOf(drawn), drawn.ambient_degC, Math.round(chain.Iz), 'na'),
      },
    ],
    hints: [
      words`On which column do the factors act: the insulation's, or the terminals'?`,
      words`Write all the caps side by side: derated ampacity, terminals, small conductor.`,
      words`The least of them holds. Then take the standard rating that is no more.`,
    ],
    solution: solutionOf(drawn, text),
    look: 'Write the caps side by side, and take the least.',
    cautions: [whoDecides],
  };
}

const smallWords =
  'Small conductors have a greatest device: 15\u00A0A for 14\u00A0AWG, 20\u00A0A for 12, 30\u00A0A for 10.';

/** How Q43 is drawn and built. */
export const mostDeviceSpec: TemplateSpec<Case> = {
  id: 'Q43',
  version: 1,
  lesson: '3.1',
  kind: 'choose',
  title: 'The chain of caps',
  difficulty: 3,
  practices: ['na'],
  objectives: ['3.1 divide by factors', '3.1 apply Ib ≤ In ≤ Iz and I2 ≤ 1.45 Iz'],
  misconceptions: ['M25', 'M26'],
  draw: drawnCase,
  fallbacks: {
    na: [{ size_AWG: 10, place: 'in a cabin roof', terminal_degC: 60, ambient_degC: 45, circuits: 4, insulated_mm: 0 }],
  },
  build: built,
};

/** Q43: the greatest breaker that the caps leave a conductor. */
export const mostDevice = defineTemplate(mostDeviceSpec);
