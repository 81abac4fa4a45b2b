import type { Practice } from '../types.ts';

// Words for questions in which the ohms of a lead are measured.

/** The two conductors that carry the current, as each practice calls them. */
export const currentPair: Readonly<Record<Practice, string>> = { iec: 'line and neutral', na: 'hot and neutral' };

/** Hazard, what it does, what to do, where ohms are measured through a bridge at the far end. */
export const bridgeCaution =
  'An ohmmeter or a bridge on a live lead can arc and burn you. Unplug both ends first; take the bridge out before any use.';

/** The same, where volts and amps of a loaded lead are measured. */
export const loadedCaution =
  'Measuring on mains can shock and kill. Do it on an isolated supply of a few volts, with your tutor, and never on mains.';
