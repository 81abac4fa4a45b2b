/**
 * The plain rule in which the schedule is told to learners, and the one to fall back on where no memory is computed: five boxes and the days
 * that each waits. Source: Leitner's boxes, common practice; the days are the curriculum's own choice (section 5).
 */
export const boxDays = [1, 3, 7, 16, 35] as const;

/** The box after an answer, 1 to 5: right moves up one, wrong goes to box 1. A question that is new stands before the first, in 0. */
export const boxAfter = (box: number, right: boolean): number => (right ? Math.min(box + 1, boxDays.length) : 1);
