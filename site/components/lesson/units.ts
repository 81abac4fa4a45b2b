/** A unit of the course. */
export interface Unit {
  readonly name: string;
  /** What it answers, in one question. */
  readonly question: string;
  /** What it is about, in two or three plain sentences. */
  readonly about: string;
  /** What a learner brings along. */
  readonly brings: string;
}

/** The course's units by their number. */
export const units: Readonly<Record<number, Unit>> = {
  1: {
    name: 'Where the heat comes from',
    question: 'What makes the heat in a lead, and what makes more of it?',
    about:
      'Current makes heat in every metre of conductor. How much depends on the amps, the metal and its area. You learn to work it out, and to tell heat from temperature.',
    brings: 'Volts, amps and ohms, and how to multiply. Nothing else.',
  },
  2: {
    name: 'How hot, how soon',
    question: 'How hot does a lead get, how soon, and what can its insulation stand?',
    about:
      'Heat that is made must also leave. You watch a lead come to rest, slow or fast, and see what lagging, winding and warm rooms change. Then you weigh that against what the plastic stands.',
    brings: 'Unit one, or a feeling for amps squared.',
  },
};

/** A unit as the page says it: '2 How hot, how soon'. */
export function unitName(unit: number): string {
  return `${unit} ${units[unit]?.name ?? ''}`.trim();
}
