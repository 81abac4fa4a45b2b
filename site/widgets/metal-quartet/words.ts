import { type ComparedMetal, celsius, type MetalCase } from '#engine';
import { fixed, type Practice, temperature, thin } from '../../lib/format.ts';

/** What the supply holds. */
export type Held = 'amps' | 'volts';

/** What holding means, in one sentence. */
export const heldMeans: Readonly<Record<Held, string>> = {
  amps: 'Amps held: the supply turns its volts up or down, so that every cord carries the same current.',
  volts:
    'Volts held: every cord gets the same volts from end to end, its far end bridged, and takes the amps its ohms let through.',
};

/** The metals in words; the clad one with its share of copper. */
export function metalNames(share: number): Readonly<Record<ComparedMetal, string>> {
  return { copper: 'copper', clad: `CCA ${sharePercent(share)}`, aluminium: 'aluminium', steel: 'steel' };
}

/** A share by volume in words: '10 %', '12.5 %'. */
export function sharePercent(share: number): string {
  const tenth = fixed(100 * share, 1);
  return `${tenth.endsWith('.0') ? tenth.slice(0, -2) : tenth}${thin}%`;
}

const spoken: Readonly<Record<ComparedMetal, string>> = {
  copper: 'copper',
  clad: 'CCA',
  aluminium: 'aluminium',
  steel: 'steel',
};

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** The metals from hottest to coolest with what each settles at, and which of them lie outside the model. */
export function quartetSentence(cases: readonly MetalCase[], held: Held, practice: Practice): string {
  const order = [...cases].sort((a, b) => (b.settled?.T ?? Infinity) - (a.settled?.T ?? Infinity));
  const told = order.map(({ id, settled }) =>
    settled ? `${spoken[id]} at ${temperature(celsius(settled.T), practice)}` : `${spoken[id]}, which melts first`,
  );
  const outside = order.filter((one) => one.outside);
  const end = outside[0] ? temperature(celsius(outside[0].modelEnd), practice) : '';
  const beyond =
    outside.length === 0
      ? ''
      : ` The model of this plastic ends at ${end}. What is shown for ${listed(outside.map(({ id }) => spoken[id]))} is outside it.`;
  return `With ${held} held, from hottest to coolest: ${told.join(', ')}.${beyond}`;
}
