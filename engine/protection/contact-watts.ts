import type { ThermalCase } from '../heating/thermal-case.ts';
import { resistanceRatio } from '../material/resistivity.ts';
import type { ContactKind, Scenario } from '../scenario/schema.ts';
import { type Cited, cite } from './cited.ts';

export type { ContactKind } from '../scenario/schema.ts';

/** One contact of a circuit; `together` for several whose ohms are told as one. */
export interface Contact {
  readonly kind: ContactKind | 'together';
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

const plainNames: Readonly<Record<ContactKind, string>> = {
  pin: 'plug pin',
  terminal: 'terminal',
  joint: 'joint',
  fuse: 'fuse',
};

/**
 * The contacts of a scenario's lead: those listed, each by its name or else by its kind and its place among that kind
 * ('terminal 2'), then what `contact_ohm` tells of the rest together.
 */
export function contactsOf({ lead }: Pick<Scenario, 'lead'>): Contact[] {
  const listed = lead?.contacts ?? [];
  const rest = lead?.contact_ohm ?? 0;
  const nameOf = (kind: ContactKind, i: number): string => {
    const alike = listed.map((one, at) => ({ at, one })).filter(({ one }) => one.kind === kind);
    const place = alike.findIndex(({ at }) => at === i) + 1;
    return alike.length > 1 ? `${plainNames[kind]} ${place}` : plainNames[kind];
  };
  const each = listed.map(({ kind, name, R_ohm }, i): Contact => ({ kind, name: name || nameOf(kind, i), R: R_ohm }));
  const others = listed.length > 0 ? 'other contacts together' : 'all contacts together';
  return rest > 0 ? [...each, { kind: 'together', name: others, R: rest }] : each;
}

/**
 * Heat of the lead's contacts while each loaded core carries `I` [A] with its conductor at `T` [K]; null where it has
 * none. As metres of lead they are told without current, too: both heats go with its square.
 */
export function contactsAt({ scenario, cable, n }: ThermalCase, I: number, T: number): ContactsBeside | null {
  const contacts = contactsOf(scenario);
  if (contacts.length === 0) return null;
  const { R20, alpha20, beta20 } = cable.conductor;
  const perMetre = n * R20 * resistanceRatio(alpha20, beta20, T);
  const each = contactsBeside(contacts, I, I ** 2 * perMetre);
  return { ...each, contacts: each.contacts.map((contact) => ({ ...contact, asMetres: contact.R / perMetre })) };
}

/** A resistance that a contact may have, sound and poor [Ω]. */
export interface UsualContact extends Cited {
  readonly kind: ContactKind;
  readonly words: string;
  readonly sound: number;
  readonly poor: number;
}

/**
 * Orders of size of contact resistance, to show what a poor contact does; measured values differ widely. Only the fuse
 * has a bound: BS 1362 allows it 1 W at its rating, which is 5.9 mΩ hot for 13 A.
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
