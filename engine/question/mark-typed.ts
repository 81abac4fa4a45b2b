import { type AnswerReading, readAnswer } from './answer.ts';
import { isWithin } from './guard.ts';
import { type Misconception, type MisconceptionId, misconceptions } from './misconceptions.ts';
import type { Feedback, NumberAnswer, TypedQuestion, Verdict, WrongValue } from './types.ts';
import { type AnswerKind, kindWords } from './units.ts';
import { unitSpace } from './words.ts';

type Read = Extract<AnswerReading, { status: 'read' }>;

/** Marks an amount as typed; `before` as in `mark`. */
export function markTyped(question: TypedQuestion, given: string, before: readonly Verdict[]): Feedback {
  const reading = readAnswer(given, question.answer.kind);
  if (reading.status !== 'read') return handedBack(reading, before);
  const right = rightReading(question.answer, reading);
  if (right) return saidRight(question.answer, right);
  return percentMissing(question.answer, reading) ? percentAsked(reading, before) : saidNotYet(question, reading);
}

/** Where a share is asked for in per cent: a bare number that would be right with its sign, or that no part of one can be. */
function percentMissing({ unit, value, tolerance }: NumberAnswer, reading: Read): boolean {
  if (unit !== '%' || reading.unit !== '') return false;
  return reading.value >= 2 || isWithin(tolerance, value, reading.value / 100);
}

/** A share without its sign comes back without loss, with the question what was meant. */
function percentAsked({ told }: Read, before: readonly Verdict[]): Feedback {
  return {
    verdict: 'unit missing',
    marks: null,
    tags: [],
    headline: `${told} of what?`,
    readAs: `${told} of what?`,
    whyNot: `Did you mean ${told}${unitSpace}%? Then write the sign. A share without it is read as a part of one.`,
    solutionOpen: before.includes('not yet'),
  };
}

/** What was typed cannot be marked: it comes back, without loss but for a second amount of the wrong kind. */
function handedBack(reading: Exclude<AnswerReading, Read>, before: readonly Verdict[]): Feedback {
  const free = { marks: null, tags: [], solutionOpen: before.includes('not yet') } as const;
  switch (reading.status) {
    case 'empty':
      return { ...free, verdict: 'unreadable', headline: 'Type a number with its unit', readAs: '' };
    case 'unit missing':
      return {
        ...free,
        verdict: 'unit missing',
        headline: reading.readAs,
        readAs: reading.readAs,
        whyNot: reading.says,
      };
    case 'unreadable':
      return { ...free, verdict: 'unreadable', headline: 'Not read', readAs: reading.readAs, whyNot: reading.says };
    case 'wrong kind': {
      const again = before.includes('wrong kind');
      const said = { verdict: 'wrong kind', headline: 'Another kind of unit', whyNot: reading.says } as const;
      return { ...free, ...said, readAs: reading.readAs, ...(again ? { marks: 0, solutionOpen: true } : {}) };
    }
  }
}

/** The reading that is right, if one is: within the tolerance, or as near as two figures or more can say it. */
function rightReading({ tolerance, value }: NumberAnswer, reading: Read): Pick<Read, 'readAs' | 'figures'> | undefined {
  const isRight = (one: { value: number; place: number }) => {
    const byFigures = Math.abs(value) >= 9.5 * one.place && Math.abs(one.value - value) <= one.place / 2;
    return isWithin(tolerance, value, one.value) || (tolerance.kind === 'relative' && byFigures);
  };
  if (isRight(reading)) return reading;
  return reading.otherwise && isRight(reading.otherwise) ? reading.otherwise : undefined;
}

/** More figures than this claim a precision that no cord has. */
const mostFigures = 5;

function saidRight(
  { text, figures }: NumberAnswer,
  { readAs, figures: typed }: Pick<Read, 'readAs' | 'figures'>,
): Feedback {
  const plain = { marks: 1, readAs, tags: [], solutionOpen: true } as const;
  if (typed <= mostFigures) return { ...plain, verdict: 'right', headline: `Right: the engine gives ${text}` };
  const enough = figures === 2 ? 'Two figures are' : `${figures === 3 ? 'Three' : figures} figures are`;
  return {
    ...plain,
    verdict: 'right, over-precise',
    headline: 'Right, but you cannot know it that well',
    whyNot: `${enough} as many as this lead's data carry: ${text}.`,
  };
}

function saidNotYet(question: TypedQuestion, reading: Read): Feedback {
  const { answer, look } = question;
  const slips = slipsOf(question, reading);
  const said = slips[0];
  const base = {
    verdict: 'not yet',
    marks: 0,
    readAs: reading.readAs,
    tags: slips.map(({ id }) => id),
    good: `It is ${kindWords[answer.kind].name}, as asked.`,
    look: { words: look, scenario: 0 },
    solutionOpen: true,
  } as const;
  if (!said) return { ...base, headline: 'Not yet', ...unitSlip(answer, reading) };
  const { thinks, whyNot } = misconceptions[said.id];
  const trueOf = `${reading.told} ${said.trueOf}`;
  return {
    ...base,
    headline: `Not yet: ${trueOf}`,
    trueOf,
    whyNot: said.whyNot ?? whyNot,
    notice: said.ask,
    ...(slips.length === 1 ? { misconception: { id: said.id, thinks } } : {}),
  };
}

/** The slips whose answer this is, one entry each, the more common first. */
function slipsOf({ answer, wrong }: TypedQuestion, reading: Read): WrongValue[] {
  const fits = wrong.filter((slip) => slipFits(slip, answer, reading));
  const once = fits.filter(({ id }, i) => fits.findIndex((other) => other.id === id) === i);
  const rank = (id: MisconceptionId) => (misconceptions[id] as Misconception).rank;
  return once.sort((a, b) => rank(a.id) - rank(b.id));
}

/** Within 1 % of the slip's value (of the rise, for a temperature), or what its value rounds to in the figures typed. */
function slipFits({ value, onlyIn }: WrongValue, { value: right, span }: NumberAnswer, reading: Read): boolean {
  if (onlyIn !== undefined && onlyIn !== reading.unit) return false;
  const percent = 0.01 * (span ?? (Math.abs(value) || Math.abs(right)));
  const off = Math.abs(reading.value - value);
  const sameRounding = reading.place <= 0.2 * Math.abs(value) && off <= (reading.place / 2) * (1 + 1e-9);
  return off <= percent * (1 + 1e-9) || sameRounding;
}

/** Where the figures are right and the unit is not: off by thousands, by 60 in a time, by 100 in a ratio. */
function unitSlip({ value, kind, tolerance }: NumberAnswer, reading: Read): { whyNot?: string } {
  if (kind === 'temperature') return {};
  const off = slippedUnits(kind).some((factor) => isWithin(tolerance, value * factor, reading.value));
  if (off && kind === 'ratio') return { whyNot: 'The figures fit, but not as they stand: per cent are hundredths.' };
  return off ? { whyNot: 'The figures fit, but not with this unit. Check the unit, or what stands before it.' } : {};
}

/** By what an answer is off when only its unit is wrong. */
function slippedUnits(kind: AnswerKind): readonly number[] {
  if (kind === 'ratio') return [100, 1 / 100];
  return kind === 'time' ? [60, 1 / 60, 3600, 1 / 3600, 1e3, 1e-3] : [1e3, 1e-3, 1e6, 1e-6];
}
