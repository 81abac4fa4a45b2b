/** A wrong idea that learners hold, and what to say to it. */
export interface Misconception {
  /** The thought itself, in one line. */
  readonly thinks: string;
  /** The lesson that deals with it. */
  readonly lesson: string;
  /** 1 is met most often; where two slips fit one answer, the lower number is spoken to. Our judgement, not a count. */
  readonly rank: number;
  /** Why it is not so, in two sentences at most. */
  readonly whyNot: string;
}

/**
 * Wrong ideas by their number in the curriculum. What each would compute from a case is with the template, beside the right
 * computation; add a record here before a template names it.
 */
export const misconceptions = {
  M17: {
    thinks: 'A rise and a temperature are the same.',
    lesson: '2.1',
    rank: 2,
    whyNot: 'A rise is counted from the surroundings. Add the temperature it started from.',
  },
  M18: {
    thinks: 'It goes on heating as fast as it began.',
    lesson: '2.2',
    rank: 3,
    whyNot: 'A warmer cord sheds more heat. So the curve bends, and holds where heat shed equals heat made.',
  },
  M19: {
    thinks: 'It is hot at once.',
    lesson: '2.2',
    rank: 2,
    whyNot: 'The metal warms first, but the plastic round it has to be warmed too. A small cord takes minutes.',
  },
  M20: {
    thinks: 'After one time constant it is done.',
    lesson: '2.2',
    rank: 1,
    whyNot: 'One time constant makes about 63\u00A0% of the rise. Allow about five before you call it settled.',
  },
  M21: {
    thinks: 'The 63\u00A0% is of the temperature.',
    lesson: '2.2',
    rank: 1,
    whyNot: 'The curve starts at ambient, not at zero. Take the part of the rise, then add the start.',
  },
  M47: {
    thinks: 'Average the current over on and off.',
    lesson: '2.2',
    rank: 1,
    whyNot: 'Heat goes with current squared. Average the squares over the cycle, then take the root.',
  },
} as const satisfies Record<`M${number}`, Misconception>;

/** The number of a wrong idea, as in the curriculum. */
export type MisconceptionId = keyof typeof misconceptions;
