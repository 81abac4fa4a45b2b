import type { Practice } from '../../lib/format.ts';

/** How one conductor is named and which tokens its ring is drawn in; two for a striped one. */
export interface ConductorLook {
  readonly letter: string;
  readonly colours: readonly string[];
}

const look = (letter: string, ...colours: string[]): ConductorLook => ({
  letter,
  colours: colours.map((colour) => `var(--cond-${colour})`),
});

const earth = (letter: string): ConductorLook => look(letter, 'pe-a', 'pe-b');
const live = (letter: string, colour: string): ConductorLook => look(letter, colour);

/** Cores by number, first to last, as flexible cords have them: IEC 60445 and HD 308 colours (from memory). */
const iec: Record<number, readonly ConductorLook[]> = {
  1: [live('L', 'l')],
  2: [live('L', 'l'), live('N', 'n')],
  3: [live('L', 'l'), live('N', 'n'), earth('PE')],
  4: [live('L1', 'l'), live('L2', 'black'), live('L3', 'grey'), earth('PE')],
  5: [live('L1', 'l'), live('L2', 'black'), live('L3', 'grey'), live('N', 'n'), earth('PE')],
};

/** North American flexible cords: black, white and green, a second line conductor red (from memory). */
const na: Record<number, readonly ConductorLook[]> = {
  1: [live('L', 'black')],
  2: [live('L', 'black'), live('N', 'white')],
  3: [live('L', 'black'), live('N', 'white'), look('G', 'pe-a')],
  4: [live('L1', 'black'), live('L2', 'red'), live('N', 'white'), look('G', 'pe-a')],
};

/** Names and colours of a cable's cores; beyond what has colours of its own, black and numbered with the earth last. */
export function conductorLooks(cores: number, practice: Practice): readonly ConductorLook[] {
  const known = (practice === 'na' ? na : iec)[cores];
  if (known) return known;
  const last = practice === 'na' ? look('G', 'pe-a') : earth('PE');
  return Array.from({ length: cores }, (_, i) => (i === cores - 1 ? last : look(String(i + 1), 'black')));
}
