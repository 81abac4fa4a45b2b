import { misconceptions } from './misconceptions.ts';
import type { ChooseOption, ChoosePart, ChooseQuestion, Feedback, Said, Verdict } from './types.ts';

/** Marks a choice: right when the right option is chosen in every part. `chosen` and `before` as in `GivenChoice` and `mark`. */
export function markChoice(
  question: ChooseQuestion,
  chosen: Readonly<Record<string, string>>,
  before: readonly Verdict[],
): Feedback {
  const { parts } = question;
  const made = parts.flatMap((part) => {
    const option = part.options.find(({ id }) => id === chosen[part.id]);
    return option ? [{ part, option }] : [];
  });
  if (made.length < parts.length) return stillOpen(parts, made, before);
  const readAs = `read as ${made.map(({ option }) => option.text).join(', ')}`;
  const standing =
    parts.length > 1 ? { parts: Object.fromEntries(made.map((one) => [one.part.id, isRight(one)])) } : {};
  if (made.every(isRight)) {
    const headline = `Right: ${question.answer.text}`;
    return { verdict: 'right', marks: 1, headline, readAs, tags: [], solutionOpen: true, ...standing };
  }
  return { ...saidNotYet(question, made), readAs, ...standing };
}

interface Made {
  readonly part: ChoosePart;
  readonly option: ChooseOption;
}

const isRight = ({ part, option }: Made) => option.id === part.right;

/** Comes back without loss: a part has nothing chosen. */
function stillOpen(parts: readonly ChoosePart[], made: readonly Made[], before: readonly Verdict[]): Feedback {
  const open = parts.filter((part) => !made.some((one) => one.part === part));
  const names = open.map(({ label }) => `‘${label}’`).join(' and ');
  return {
    verdict: 'unreadable',
    marks: null,
    headline: 'Nothing is chosen yet',
    readAs: '',
    tags: [],
    whyNot: parts.length > 1 ? `Choose in every part. Still open: ${names}.` : 'Choose one of the answers first.',
    solutionOpen: before.includes('not yet'),
  };
}

/** Speaks of one part that is not right, the first behind which an idea is known, and tells which parts stand. */
function saidNotYet({ parts, look }: ChooseQuestion, made: readonly Made[]): Omit<Feedback, 'readAs'> {
  const off = made.filter((one) => !isRight(one));
  const spoken = off.find(({ option }) => option.said?.id !== undefined) ?? off[0];
  const said = spoken?.option.said;
  const tags = [...new Set(off.flatMap(({ option }) => option.said?.id ?? []))];
  const standing = made.filter(isRight).map(({ part }) => `‘${part.label}’`);
  const good = standing.length > 0 ? { good: `Right already: ${standing.join(' and ')}.` } : {};
  const base = {
    verdict: 'not yet',
    marks: 0,
    tags,
    ...good,
    look: { words: look, scenario: 0 },
    solutionOpen: true,
  } as const;
  if (!said) return { ...base, headline: 'Not yet' };
  const at = parts.length > 1 ? `${spoken?.part.label}: ` : '';
  return { ...base, headline: `Not yet: ${said.trueOf}`, ...wordsOf(said, tags.length === 1, at) };
}

/** What is said of an answer that a wrong idea leads to; the idea is named where it is `alone`. `at` says which part is meant. */
export function wordsOf(said: Said, alone: boolean, at = ''): Partial<Feedback> {
  const record = said.id === undefined ? undefined : misconceptions[said.id];
  const whyNot = said.whyNot ?? record?.whyNot;
  return {
    trueOf: said.trueOf,
    notice: at + said.ask,
    ...(whyNot === undefined ? {} : { whyNot }),
    ...(said.id !== undefined && record && alone ? { misconception: { id: said.id, thinks: record.thinks } } : {}),
  };
}
