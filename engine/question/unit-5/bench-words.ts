import { amount } from '../figures.ts';
import { perLength } from '../per-length.ts';
import type { Practice } from '../types.ts';

// Words and figures that questions about a suspect lead on the bench share.

/** Hazard, what it does, what to do, where a dead lead is measured with four wires. */
export const fourWireCaution =
  'A lead that is still plugged in can shock and kill. Unplug both ends and take the lead away before you connect anything.';

/** The same, where a lead is loaded on an isolated supply of a few volts. */
export const benchCaution =
  'A loaded lead burns skin and bench at any volts. Isolated supply, bare tiles, two people, stop at the limit; never mains.';

/** The same, where a lead may be put back to use. */
export const keepOutCaution =
  'A suspect lead may shock or burn. Tag it, and keep it out of use until a competent person has decided.';

/** Where suspect leads are found. */
export const finders = [
  'A lead from a furniture maker’s sander',
  'The lead of a polisher in a joinery',
  'An extension lead of a village hall',
  'A lead from a market stall',
  'The lead of a boatyard washer',
  'A lead from a polytunnel',
  'The lead of a laundry press',
] as const;

/** Grams for each metre or foot of a core: its value as told [kg/m], and its words. `mass` in kg/m. */
export function toldMass(mass: number, practice: Practice): { readonly mass: number; readonly text: string } {
  const { length, unit } = perLength[practice];
  const number = Number((mass * length * 1e3).toPrecision(3));
  return { mass: number / length / 1e3, text: amount(number, 3, `g/${unit}`) };
}

const productUnit = { iec: ['mΩ·g/m²', 1e-6], na: ['mΩ·g/ft²', 1e-6 / perLength.na.length ** 2] } as const;

/** Ohms times grams for each length, to three figures: its value as told [Ω·kg/m²], its words and its unit. */
export function toldProduct(product: number, practice: Practice) {
  const [unit, factor] = productUnit[practice];
  const number = Number((product / factor).toPrecision(3));
  return { value: number * factor, text: amount(number, 3, unit), unit };
}
