import type { Measured } from '../measured.ts';

/** What is asked of a conductor: every piece may be left out. SI; each measured value carries its standard uncertainty. */
export interface Evidence {
  readonly resistance?: ResistanceEvidence;
  readonly strands?: StrandEvidence;
  /** Diameter over the bundle of strands, or of a solid wire [m]. */
  readonly bundle?: Measured;
  readonly mass?: MassEvidence;
  readonly magnet?: MagnetSeen;
  /** Colour of the metal as it lies. */
  readonly skin?: ColourSeen;
  /** Colour after scraping through the skin, or of a cut end. */
  readonly under?: ColourSeen;
  readonly marking?: Marking;
}

/** A resistance with all that takes it to one metre of one core at 20 °C. */
export interface ResistanceEvidence {
  /** As read [Ω]. */
  readonly R: Measured;
  /** Length of the lead [m], not of the loop. */
  readonly length: Measured;
  /** Cores in series: 2 for go and return joined at the far end, 1 for a single core. */
  readonly inSeries: number;
  /** Mean temperature of the conductor [K]. */
  readonly temperature: Measured;
  readonly method: 'two-terminal' | 'four-terminal';
  /** Resistance of the instrument's own leads and contacts [Ω], where it was measured; two-terminal only. */
  readonly testLeads?: Measured;
}

/** Strands of one core. Count and diameter tell of the area only together; one strand is a solid wire. */
export interface StrandEvidence {
  /** u = 0 where they were counted and no doubt is left. */
  readonly count?: Measured;
  /** Mean diameter of a strand [m]. */
  readonly diameter?: Measured;
}

/** Bare conductor that was weighed. */
export interface MassEvidence {
  /** Mass of metal [kg]. */
  readonly mass: Measured;
  /** Length of core it was stripped from [m]; of all the cores together where several were weighed. */
  readonly length: Measured;
}

/** What a magnet does at the bare conductor. */
export const magnetOutcomes = ['clings', 'weakly', 'does not'] as const;
export type MagnetSeen = (typeof magnetOutcomes)[number];

/** Colours that are told apart. */
export const colours = ['copper-red', 'silvery', 'yellowish', 'grey'] as const;
export type Colour = (typeof colours)[number];

/** A colour that was seen. */
export interface ColourSeen {
  readonly colour: Colour;
  /** How often such a look names another colour than a careful one would; the usual rate unless given. */
  readonly errorRate?: number;
}

/** What is printed on the sheath: a claim until it is measured. */
export interface Marking {
  /** Claimed size [mm²] or gauge; one of them. */
  readonly size_mm2?: number;
  readonly size_AWG?: number;
  readonly material?: ClaimedMaterial;
}

/** Materials that a marking may claim. */
export type ClaimedMaterial = 'copper' | 'aluminium' | 'clad aluminium' | 'clad steel' | 'steel' | 'brass';

/** A piece of evidence by its name. */
export type PieceId = 'resistance' | 'strands' | 'bundle' | 'mass' | 'magnet' | 'skin' | 'under' | 'marking';

/** Metals that are weighed against each other; `other` is something else, with wide ranges of resistivity and density. */
export type CandidateId =
  | 'copper'
  | 'tinnedCopper'
  | 'aluminium'
  | 'cladAluminium'
  | 'ccs40'
  | 'ccs30'
  | 'ccs21'
  | 'steel'
  | 'brass'
  | 'other';
