import { type Cited, cite } from './cited.ts';

/** A kind of contact in series with a lead. */
export type ContactKind = 'pin' | 'terminal' | 'joint' | 'fuse';

/** One contact of a circuit. */
export interface Contact {
  readonly kind: ContactKind;
  readonly name: string;
  /** [Ω] */
  readonly R: number;
}

/** The heat of one contact. */
export interface ContactHeat extends Contact {
  /** [W] */
  readonly W: number;
  /** Length of the lead that makes as much heat in its loaded cores [m]. */
  readonly asMetres: number;
}

/** Heat of contacts beside that of the lead. */
export interface ContactsBeside {
  readonly contacts: readonly ContactHeat[];
  /** All contacts [W], and the lead's own per metre [W/m]. */
  readonly W: number;
  readonly leadPerMetre: number;
}

/**
 * Heat I² R [W] of each contact at `I` [A], beside the lead's `heatPerMetre` [W/m]. A contact's heat is made in a few
 * millimetres: no temperature follows from it here.
 */
export function contactsBeside(contacts: readonly Contact[], I: number, heatPerMetre: number): ContactsBeside {
  const each = contacts.map((contact) => {
    const W = I ** 2 * contact.R;
    return { ...contact, W, asMetres: W / heatPerMetre };
  });
  return { contacts: each, W: each.reduce((sum, { W }) => sum + W, 0), leadPerMetre: heatPerMetre };
}

/** A resistance that a contact may have, sound and poor [Ω]. */
export interface UsualContact extends Cited {
  readonly kind: ContactKind;
  readonly words: string;
  readonly sound: number;
  readonly poor: number;
}

/**
 * Orders of size of contact resistance, to show what a poor contact does; measured values differ widely. Only the fuse has a
 * bound: BS 1362 allows it 1 W at its rating, which is 5.9 mΩ hot for 13 A.
 */
export const usualContacts: readonly UsualContact[] = [
  { kind: 'pin', words: 'plug pin in its socket', sound: 0.5e-3, poor: 20e-3, ...practice() },
  { kind: 'terminal', words: 'screw terminal', sound: 0.3e-3, poor: 50e-3, ...practice() },
  { kind: 'joint', words: 'crimped or clamped joint', sound: 0.1e-3, poor: 20e-3, ...practice() },
  {
    ...{ kind: 'fuse', words: '13 A plug fuse, without its clips', sound: 4e-3, poor: 5.9e-3 },
    ...cite('bs1362', 'greatest loss 1 W at 13 A; the lower figure from memory', 'from memory'),
  },
];

function practice(): Cited {
  return cite('common practice', 'orders of size', 'from memory');
}
