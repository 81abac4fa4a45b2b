import { wordsOf } from './mark-choice.ts';
import type { Misconception } from './misconceptions.ts';
import { misconceptions } from './misconceptions.ts';
import type { Feedback, OrderQuestion, Verdict, WrongOrder } from './types.ts';

/** Marks an order: right when every item stands in its place. `ids` and `before` as in `GivenOrder` and `mark`. */
export function markOrder(question: OrderQuestion, ids: readonly string[], before: readonly Verdict[]): Feedback {
  const { order } = question.answer;
  if (!isOrderOf(order, ids)) return untouched(before);
  const readAs = `read as ${inWords(question, ids)}`;
  if (same(ids, order)) {
    const headline = `Right: ${question.answer.text}`;
    return { verdict: 'right', marks: 1, headline, readAs, tags: [], solutionOpen: true };
  }
  return { ...saidNotYet(question, ids), readAs };
}

const same = (a: readonly string[], b: readonly string[]) => a.length === b.length && a.every((id, i) => id === b[i]);
const isOrderOf = (order: readonly string[], ids: readonly string[]) => same([...order].sort(), [...ids].sort());
const nameOf = ({ items }: OrderQuestion, id: string) => items.find((item) => item.id === id)?.name ?? id;

/** An order in words: 'from coolest to hottest: a, b, c'. */
export function inWords(question: Pick<OrderQuestion, 'items' | 'ends'>, ids: readonly string[]): string {
  const [first, last] = question.ends;
  return `from ${first} to ${last}: ${ids.map((id) => nameOf(question as OrderQuestion, id)).join(', ')}`;
}

function untouched(before: readonly Verdict[]): Feedback {
  return {
    verdict: 'unreadable',
    marks: null,
    headline: 'Nothing is in order yet',
    readAs: '',
    tags: [],
    whyNot: 'The items stand as they were dealt, which is not their order. Move them first.',
    solutionOpen: before.includes('not yet'),
  };
}

function saidNotYet(question: OrderQuestion, ids: readonly string[]): Omit<Feedback, 'readAs'> {
  const { order } = question.answer;
  const turned = [...ids].reverse();
  const backwards = same(turned, order);
  // an idea's own order comes before a right one turned round, and that before an idea's order turned round
  const exact = slipsOf(question.wrong, ids);
  const slips = exact.length > 0 || backwards ? exact : slipsOf(question.wrong, turned);
  const tags = slips.map(({ id }) => id);
  const base = {
    verdict: 'not yet',
    marks: 0,
    tags,
    look: { words: question.look, scenario: 0 },
    solutionOpen: true,
  } as const;
  const said = slips[0];
  if (said) {
    return {
      ...base,
      headline: `Not yet: ${said.trueOf}`,
      ...standing(order, ids),
      ...wordsOf(said, slips.length === 1),
    };
  }
  if (backwards) {
    const trueOf = `this runs from ${question.ends[1]} to ${question.ends[0]}.`;
    const ask = `Which end of the list was ${question.ends[0]} to stand at?`;
    return { ...base, headline: `Not yet: ${trueOf}`, trueOf, good: 'The steps between are right.', notice: ask };
  }
  return { ...base, headline: 'Not yet', ...standing(order, ids), notice: pairToCompare(question, ids) };
}

/** The slips whose order this is, one entry each, the more common first. */
function slipsOf(wrong: readonly WrongOrder[], ids: readonly string[]): WrongOrder[] {
  const fits = wrong.filter((slip) => same(slip.order, ids));
  const once = fits.filter(({ id }, i) => fits.findIndex((other) => other.id === id) === i);
  const rank = ({ id }: WrongOrder) => (misconceptions[id] as Misconception).rank;
  return once.sort((a, b) => rank(a) - rank(b));
}

function standing(order: readonly string[], ids: readonly string[]): { good?: string } {
  const right = ids.filter((id, i) => id === order[i]).length;
  return right === 0 ? {} : { good: `${right} of ${ids.length} stand in their place.` };
}

/** The first two neighbours that stand the wrong way round. */
function pairToCompare(question: OrderQuestion, ids: readonly string[]): string {
  const { order } = question.answer;
  const at = ids.findIndex((id, i) => i > 0 && order.indexOf(id) < order.indexOf(ids[i - 1] as string));
  const [before, after] = [ids[at - 1] as string, ids[at] as string].map((id) => nameOf(question, id));
  return `Which should come first: ‘${before}’ or ‘${after}’?`;
}
