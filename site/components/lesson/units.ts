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
  3: {
    name: 'Choosing the size',
    question: 'Which size is right for the load, the place and the distance?',
    about:
      'A size must carry its load without too much heat, and still leave the load enough volts. You go from load to device to cable, then along the run. Then you pick a cord and fuse for what is plugged in.',
    brings: 'Units one and two: amps squared, and what the surroundings do.',
  },
  4: {
    name: 'What the device does',
    question: 'What does a fuse or breaker promise, and what does it leave to the lead?',
    about:
      'A device holds some currents, opens at others, and may do either between. You read that from the standards, and lay it over the lead. Then you ask about short circuits, and about faults to earth or ground.',
    brings: 'Unit two, and unit three for the cord rules.',
  },
  5: {
    name: 'The suspect lead',
    question: 'What is this lead, what will a current do to it, and what do we tell its owner?',
    about:
      'A marking is a claim. You measure a resistance of thousandths of an ohm, and name the metal and the size. Then you say what will happen, load the lead on a safe bench, and stop in time.',
    brings: 'Units one and two. Unit four says what the device would have done.',
  },
};

/** A unit as the page says it: '2 How hot, how soon'. */
export function unitName(unit: number): string {
  return `${unit} ${units[unit]?.name ?? ''}`.trim();
}
