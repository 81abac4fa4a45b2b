import type { Statement } from '../heating/validity.ts';
import { type Cited, cite } from './cited.ts';
import { meltingEnergy } from './let-through.ts';

/** Energies that decide which of two devices in series opens [A²s]. */
export interface EnergyPair {
  /** Least that starts to melt, or to unlatch, the device nearer the source. */
  readonly upstream: number;
  /** Most that the device nearer the fault lets through until it has cleared. */
  readonly downstream: number;
}

/** Whether only the device nearer the fault opens. */
export interface Selectivity extends Cited {
  readonly selective: boolean | null;
  readonly pair: EnergyPair | null;
  readonly statements: readonly Statement[];
}

/** The device nearer the fault clears alone when its total I²t is less than the pre-arcing I²t of the one above [A²s]. */
export const selectiveByEnergy = ({ upstream, downstream }: EnergyPair): boolean => downstream < upstream;

/** Ratio of ratings at which IEC 60269 has gG fuses selective [1]; the ratio is seen in makers’ guides, its lower end of 16 A is from memory. */
export const gGRatio = { value: 1.6, ...cite('iec60269-1', 'selectivity 1.6 : 1, as makers’ guides quote it', 'seen') };

const usual: Statement = {
  id: 'ratio',
  text: 'The ratio 1.6 holds between neighbours of the standard series of 16 A and more.',
};
const arc: Statement = {
  id: 'arc',
  text: 'The lower fuse also burns while its arc lasts. The standard’s test counts that; the melting figures alone do not.',
};

/**
 * Two gG fuse-links in series by their ratings [A]: selective where the upper is at least 1.6 times the lower, both of 16 A or
 * more (IEC 60269-1). 16, 25, 40, 63, 100 and 20, 32, 50, 80, 125 A are the neighbours meant; 25 to 40 is exactly
 * 1.6, and 20 to 32 too. `pair` holds the melting figures at 10 ms: least of the upper, greatest of the lower. Null below 16 A.
 */
export function selectiveGG(upper: number, lower: number): Selectivity {
  const { source, where, confidence } = gGRatio;
  const [above, below] = [meltingEnergy(upper), meltingEnergy(lower)];
  if (!above || !below) return { selective: null, pair: null, source, where, confidence, statements: [unknown] };
  const pair = { upstream: above.least.value, downstream: below.greatest.value };
  const selective = neighboursApart(upper, lower);
  return { selective, pair, source, where, confidence, statements: [usual, arc] };
}

/** 63 over 40 A is 1.575, and the series counts it as 1.6: ratings are rounded numbers. */
const neighboursApart = (upper: number, lower: number) => upper / lower >= gGRatio.value - 0.05;

const unknown: Statement = { id: 'not tabled', text: 'The standard’s table of melting energy starts at 16 A.' };

/** Two devices by energies at one fault current [A²s], as their makers state them. */
export function selectiveByCurves(pair: EnergyPair): Selectivity {
  const cited = cite('common practice', 'let-through against pre-arcing I²t', 'from memory');
  return { selective: selectiveByEnergy(pair), pair, ...cited, statements: [atOneCurrent] };
}

const atOneCurrent: Statement = {
  id: 'at one current',
  text: 'This holds at this fault current. At another the figures differ; below 0.1 s compare the makers’ tables.',
};
