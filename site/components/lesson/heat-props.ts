import * as v from 'valibot';
import { type MetalId, metals, placeKinds } from '#engine';
import { amount, either, leadParts, oneOf, sizesByPractice } from './prop-parts.ts';

// What the figures of a lead's heat accept: its ledger, and one lead in several surroundings.

const amps = amount(0, 1000, 'A');

const lead = {
  ...leadParts,
  amps: either(amps),
  /** Greatest current that can be set. */
  greatest: v.optional(amount(1, 1000, 'A')),
};

/** Heat made against heat lost. `beside` are further currents in thin lines; `resistance` says how the metal's ohms are taken. */
export const heatLedgerProps = v.strictObject({
  ...lead,
  metal: v.optional(oneOf(Object.keys(metals) as MetalId[])),
  draught: v.optional(either(amount(0, 60, 'm/s'))),
  beside: v.optional(either(v.pipe(v.array(amps), v.maxLength(4, 'at most four currents stand beside it')))),
  resistance: v.optional(oneOf(['warm', 'fixed'])),
  sizes: v.optional(sizesByPractice),
  controls: v.optional(v.array(oneOf(['current', 'size', 'metal', 'ambient', 'draught', 'resistance']))),
});

/** One lead in several surroundings; what is left out of lagging, reel and draught is as lessons usually have it. */
export const wrapAndWindProps = v.pipe(
  v.strictObject({
    ...lead,
    /** Length of the lead. */
    length_m: either(amount(0.5, 1000, 'm')),
    kinds: v.optional(v.pipe(v.array(oneOf(placeKinds)), v.minLength(2, 'names two surroundings at least'))),
    /** The one that the title block states when the figure opens; the first unless given. */
    pick: v.optional(oneOf(placeKinds)),
    thickness_mm: v.optional(amount(0.1, 1000, 'mm')),
    conductivity: v.optional(amount(0.005, 10, 'W/(m·K)')),
    drum_mm: v.optional(amount(1, 5000, 'mm')),
    turns: v.optional(amount(1, 1000, 'turns a layer')),
    wound_m: v.optional(either(amount(0.1, 1000, 'm'))),
    draught: v.optional(amount(0, 60, 'm/s')),
    controls: v.optional(v.array(oneOf(['current', 'thickness', 'conductivity', 'layers', 'draught', 'ambient']))),
  }),
  v.check(
    ({ kinds = placeKinds, pick }) => pick === undefined || kinds.includes(pick),
    'picks surroundings that are not among its kinds',
  ),
);
