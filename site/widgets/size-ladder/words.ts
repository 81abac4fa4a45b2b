import { areaNeighbours, celsius, modelEnd, type SizeCase, type TradeSize } from '#engine';
import { type Practice, quantity, significant, temperature, thin, three } from '../../lib/format.ts';
import { offTheRamp } from '../../lib/ramp.ts';
import { lengthWords } from '../figure/length-words.ts';

/** A current as the learner set it: '8 A', '12.5 A'. */
export const ampsWords = (I: number): string => quantity(I, 'A', Number.isInteger(I) ? 0 : 1);

/** What the chosen size does, and that length changes the whole, not the temperature. `length` in m. */
export function sizeSentence({ size, settled }: SizeCase, length: number, practice: Practice): string {
  if (!settled) return `At this current, ${size.name} melts before it settles.`;
  const T = temperature(celsius(settled.T), practice);
  const run = lengthWords(length, practice);
  return `At ${ampsWords(settled.I)}, a cord of ${size.name} makes ${three(settled.heat, 'W/m')} and settles at ${T}. Over ${run}, out and back, that is ${three(settled.loop, 'Ω')} and ${three(settled.total, 'W')}. Make the run longer: ohms and watts grow with it, and the temperature stays.`;
}

const listed = (words: readonly string[]): string => words.join(', ');

/** Which sizes the model does not reach, and which are hotter than the ramp; empty when there is nothing to say. */
export function beyondWords(cases: readonly SizeCase[], practice: Practice): string {
  const first = cases[0];
  if (!first) return '';
  const end = modelEnd(first.thermal);
  const past = (limit: number) =>
    cases.filter(({ settled }) => settled === null || settled.T > limit).map(({ size }) => size.name);
  const outside = past(end);
  const off = cases.filter(({ settled }) => settled && offTheRamp(celsius(settled.T))).map(({ size }) => size.name);
  const parts = [
    outside.length > 0 ? `Past ${temperature(celsius(end), practice)}, outside the model: ${listed(outside)}.` : '',
    off.length > 0 ? `Off the ramp: ${listed(off)}.` : '',
  ];
  return parts.filter(Boolean).join(' ');
}

/** The sizes of the other system that a size lies between: '1.31 mm², 16 AWG, to 2.08 mm², 14 AWG'. */
export function neighbourWords(size: TradeSize): string {
  const { below, above } = areaNeighbours(size);
  const told = (one: TradeSize) =>
    one.system === 'AWG' ? `${one.name} (${significant(one.area * 1e6, 3)}${thin}mm²)` : one.name;
  if (below && above) return below === above ? told(below) : `${told(below)} and ${told(above)}`;
  const one = below ?? above;
  return one ? `${below ? 'over' : 'under'} ${told(one)}` : '–';
}
