import type { Confidence } from '../material/property.ts';
import type { SourceId } from '../sources.ts';

/** A share of the nominal volts that a usage of the trade advises not to lose. */
export interface DropGuide {
  /** Share of the nominal volts, 0 to 1. */
  readonly share: number;
  /** What it is for: 'lighting'. */
  readonly of: string;
  readonly sources: readonly SourceId[];
  readonly where: string;
  readonly confidence: Confidence;
}

const appendix = {
  sources: ['bs7671', 'iec60364-5-52'],
  where: 'BS 7671 Appendix 4, IEC 60364-5-52 Annex G',
  confidence: 'from memory',
} as const;
const notes = { sources: ['nfpa70'], confidence: 'from memory' } as const;

/**
 * Guides on voltage drop by usage, the stricter first. BS 7671 and IEC count from the origin of the installation to the load;
 * those of NFPA 70 are informational notes, no rule. A lead is only the last part of what they count.
 */
export const dropGuides: Readonly<Record<'iec' | 'na', readonly DropGuide[]>> = {
  iec: [
    { share: 0.03, of: 'lighting', ...appendix },
    { share: 0.05, of: 'other uses', ...appendix },
  ],
  na: [
    { share: 0.03, of: 'branch circuit', ...notes, where: 'NEC 210.19, informational note' },
    { share: 0.05, of: 'feeder and branch', ...notes, where: 'NEC 215.2, informational note' },
  ],
};
