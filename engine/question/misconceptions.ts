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
  M01: {
    thinks: 'Double the amps makes double the heat.',
    lesson: '1.1',
    rank: 1,
    whyNot: 'Heat goes with amps times amps. Twice the amps is four times the watts in the same lead.',
  },
  M02: {
    thinks: 'Only one conductor gets hot.',
    lesson: '1.1',
    rank: 2,
    whyNot: 'Current goes out and comes back. Both conductors make the same heat.',
  },
  M03: {
    thinks: 'Temperature doubles with the amps.',
    lesson: '1.1',
    rank: 2,
    whyNot: 'The rise follows the heat. So it grows a little less than with amps squared.',
  },
  M04: {
    thinks: 'The rise is exactly as amps squared.',
    lesson: '1.1',
    rank: 3,
    whyNot:
      'That is a good first estimate. A hotter surface sheds more per degree and hotter copper makes more; the engine adds both.',
  },
  M05: {
    thinks: 'The longer the lead, the hotter it gets.',
    lesson: '1.2',
    rank: 1,
    whyNot: 'Each metre makes its own heat and has its own skin. Total watts grow, temperature does not.',
  },
  M06: {
    thinks: 'mm² is the diameter.',
    lesson: '1.2',
    rank: 2,
    whyNot: 'mm² is the area of metal. A conductor of 2.5\u00A0mm² is about 1.8\u00A0mm across if it is solid.',
  },
  M07: {
    thinks: 'Twice the diameter is twice the metal.',
    lesson: '1.2',
    rank: 3,
    whyNot:
      'Area goes with the diameter squared. Twice the diameter is four times the metal, and a quarter of the resistance.',
  },
  M08: {
    thinks: 'A bigger AWG number is a bigger wire.',
    lesson: '1.2',
    rank: 1,
    whyNot: 'Gauge runs backwards. Three numbers up is about half the area.',
  },
  M09: {
    thinks: 'The run counts once.',
    lesson: '1.2',
    rank: 1,
    whyNot: 'The loop is out and back. It has twice the length of the run.',
  },
  M10: {
    thinks: 'Copper-clad aluminium is copper where it counts.',
    lesson: '1.3',
    rank: 1,
    whyNot:
      'At mains frequency the whole section carries current. With ten per cent copper it is 54\u00A0% more resistive than copper.',
  },
  M11: {
    thinks: 'Average the resistivities.',
    lesson: '1.3',
    rank: 2,
    whyNot: 'Skin and inside are in parallel. Average the conductivities by their shares, then turn over.',
  },
  M12: {
    thinks: 'Per cent by mass is per cent by volume.',
    lesson: '1.3',
    rank: 3,
    whyNot: 'Copper is 3.3 times as dense as aluminium. Ten per cent of the volume is about 27\u00A0% of the mass.',
  },
  M13: {
    thinks: 'Hot metal resists less.',
    lesson: '1.4',
    rank: 1,
    whyNot: 'Ordinary metals resist more when hot: about 0.4\u00A0% for each degree.',
  },
  M14: {
    thinks: 'Put the degrees straight into the formula.',
    lesson: '1.4',
    rank: 2,
    whyNot: 'The coefficient counts from 20\u00A0°C. Use the degrees above that.',
  },
  M15: {
    thinks: 'The rise above 20\u00A0°C is the temperature.',
    lesson: '1.4',
    rank: 3,
    whyNot: 'That is how far it is above 20\u00A0°C. Add the 20.',
  },
  M16: {
    thinks: 'That it is hot can be ignored.',
    lesson: '1.1',
    rank: 2,
    whyNot: 'At 70\u00A0°C copper has 20\u00A0% more resistance than in the 20\u00A0°C table.',
  },
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
  M22: {
    thinks: 'The sheath is as hot as the copper.',
    lesson: '2.1',
    rank: 1,
    whyNot:
      'Heat flows only from hotter to cooler. It has to fall through the plastic, so the copper is the hotter one.',
  },
  M23: {
    thinks: 'Thicker plastic always runs hotter.',
    lesson: '2.1',
    rank: 1,
    whyNot:
      'On thin cords extra plastic adds skin faster than it blocks heat, so it can run cooler. Lagging is another matter.',
  },
  M24: {
    thinks: '70\u00A0°C is where PVC melts.',
    lesson: '2.3',
    rank: 1,
    whyNot: '70\u00A0°C is the limit for a long life. Harm is temperature and time together.',
  },
  M25: {
    thinks: 'Ambient does not matter.',
    lesson: '2.1',
    rank: 1,
    whyNot: 'The rise sits on top of ambient. Warm places use up the margin.',
  },
  M26: {
    thinks: 'Reductions are added up.',
    lesson: '3.1',
    rank: 1,
    whyNot: 'Each factor acts on what the one before has left. So the factors are multiplied.',
  },
  M27: {
    thinks: 'Multiply by the factors to get the table current.',
    lesson: '3.1',
    rank: 1,
    whyNot: 'The table must give more than you need, so that the factors leave enough. Divide by them.',
  },
  M28: {
    thinks: 'A reel is only storage.',
    lesson: '2.4',
    rank: 1,
    whyNot: 'Inner turns heat each other and only the outside sheds heat. Unwind it.',
  },
  M29: {
    thinks: 'Lagging only slows it.',
    lesson: '2.4',
    rank: 1,
    whyNot: 'It also lifts the final temperature: the same watts go through a harder path.',
  },
  M30: {
    thinks: 'A fuse opens a little above its number.',
    lesson: '4.1',
    rank: 1,
    whyNot: 'It must carry its rating and more. Read what it must hold and where it must open in the standard.',
  },
  M31: {
    thinks: 'A fuse lets no more through than its number.',
    lesson: '4.1',
    rank: 1,
    whyNot: 'A fuse does not throttle. The load sets the current until the fuse opens.',
  },
  M32: {
    thinks: 'The fuse is chosen by the load alone.',
    lesson: '3.3',
    rank: 1,
    whyNot: 'It must carry the load. It must also be no more than the cord can carry.',
  },
  M33: {
    thinks: 'It opens too often: fit the next size.',
    lesson: '3.3',
    rank: 1,
    whyNot: 'Find the overload. A bigger device moves the weak point into the lead.',
  },
  M34: {
    thinks: 'A breaker trips at its number.',
    lesson: '4.2',
    rank: 1,
    whyNot: 'Its standard lets it hold its rating for ever. A little above, it may take an hour or never act.',
  },
  M35: {
    thinks: 'A type C breaker allows more overload than a type B.',
    lesson: '4.2',
    rank: 1,
    whyNot: 'The letter sets the instant zone only. Below it B, C and D share one slow part.',
  },
  M36: {
    thinks: 'The curve of a device is one line.',
    lesson: '4.3',
    rank: 1,
    whyNot: 'Real devices lie in a band. Judge harm by its slow edge, and nuisance by its fast edge.',
  },
  M37: {
    thinks: 'The rating may be up to 1.45 times what the cord may carry.',
    lesson: '4.3',
    rank: 2,
    whyNot: 'It is the operating current that may be 1.45 times Iz. The rating must not exceed Iz.',
  },
  M38: {
    thinks: 'The time is k times S over I.',
    lesson: '4.4',
    rank: 1,
    whyNot: 'Both sides are squared: t is k squared times S squared over I squared.',
  },
  M39: {
    thinks: 'The short-circuit formula works for minutes.',
    lesson: '4.4',
    rank: 1,
    whyNot: 'It assumes that no heat leaves. After about 5\u00A0s use the warm-up model.',
  },
  M40: {
    thinks: 'k is 115 for any metal.',
    lesson: '4.4',
    rank: 1,
    whyNot: 'k belongs to metal, insulation and start temperature. Aluminium in PVC has 76.',
  },
  M41: {
    thinks: 'The loop is the line only.',
    lesson: '4.5',
    rank: 1,
    whyNot: 'Fault current comes back through the protective conductor. Add R2.',
  },
  M42: {
    thinks: 'More loop resistance is safer.',
    lesson: '4.5',
    rank: 1,
    whyNot: 'Less current flows then. So the device waits longer, or never acts.',
  },
  M43: {
    thinks: 'Milli makes no difference.',
    lesson: '3.2',
    rank: 1,
    whyNot: 'Milli is a thousandth. Divide by a thousand to get volts.',
  },
  M44: {
    thinks: 'An RCD or a GFCI covers overload.',
    lesson: '4.3',
    rank: 1,
    whyNot: 'It compares what goes out with what comes back. An overload is equal in both.',
  },
  M45: {
    thinks: 'The meter’s own leads do not count.',
    lesson: '5.1',
    rank: 1,
    whyNot: 'At thousandths of an ohm they do. Use four wires, or take the leads’ own reading off.',
  },
  M46: {
    thinks: 'At 12\u00A0V a lead cannot burn.',
    lesson: '5.3',
    rank: 1,
    whyNot:
      'Heat in the lead depends on its current, not on the volts of the supply. Low volts remove the shock, not the burns.',
  },
  M47: {
    thinks: 'Average the current over on and off.',
    lesson: '2.2',
    rank: 1,
    whyNot: 'Heat goes with current squared. Average the squares over the cycle, then take the root.',
  },
  M48: {
    thinks: 'A bigger number upstream makes two devices selective.',
    lesson: '4.4',
    rank: 1,
    whyNot: 'Compare what the lower one lets through with what starts to melt the upper one.',
  },
  M49: {
    thinks: 'One number of volts does for every supply.',
    lesson: '3.2',
    rank: 1,
    whyNot: 'Use the supply you are on. The same watts need nearly twice the amps at 120\u00A0V as at 230\u00A0V.',
  },
  M50: {
    thinks: 'Equal by resistance is equal in everything.',
    lesson: '5.2',
    rank: 1,
    whyNot: 'Only the ohms are equal. Area, mass, strength and terminals are those of the metal that is there.',
  },
} as const satisfies Record<`M${number}`, Misconception>;

/** The number of a wrong idea, as in the curriculum. */
export type MisconceptionId = keyof typeof misconceptions;
