import type { MeasurementId, NextMeasurement } from './next.ts';
import type { OutcomeMeaning, ReadQuantity } from './outcomes.ts';
import { figures, type IdentifySentence, metalName, mostNamed, percent, sentence } from './word-parts.ts';

const doing: Record<MeasurementId, string> = {
  magnet: 'hold a magnet to the bare strands',
  skin: 'look at the colour of the bare metal',
  under: 'scrape one strand and look at the colour under the skin',
  resistance: 'measure the resistance with four terminals, and the length',
  strands: 'count the strands of one core and gauge one of them',
  bundle: 'gauge the bundle of strands across',
  mass: 'strip a measured length of core and weigh the metal',
};

const readingOf: Record<ReadQuantity, (x: number) => string> = {
  resistance: (x) => `${figures(x * 1e3)} mΩ/m`,
  strands: (x) => `${figures(x * 1e6)} mm² in all`,
  bundle: (x) => `${figures(x * 1e3)} mm`,
  mass: (x) => `${figures(x * 1e3)} g/m`,
  resistivity: (x) => `${figures(x * 1e9)} nΩ·m, resistance a metre times area`,
};

const seenAs: Record<string, string> = {
  clings: 'it clings',
  weakly: 'it is drawn weakly',
  'does not': 'it does not cling',
};

function outcomeWords({ quantity }: NextMeasurement, { reading, leaders }: OutcomeMeaning): IdentifySentence {
  let outcome = '';
  if (typeof reading === 'string') outcome = seenAs[reading] ?? `it is ${reading}`;
  else if (quantity) {
    const [from, to] = reading.map(readingOf[quantity]) as [string, string];
    outcome = `it reads ${from.replace(/ .*/, '')} to ${to}`;
  }
  const metals = leaders
    .slice(0, mostNamed)
    .map(({ metal, probability }) => `${metalName[metal]} ${percent(probability)}`);
  return { id: 'outcome', text: sentence(`if ${outcome}: ${metals.join(', ')}.`) };
}

/** The next measurement in sentences: a caution where it cannot be undone, what to do, and what each outcome would mean. */
export function nextWords(nextBest: NextMeasurement | null): IdentifySentence[] {
  if (!nextBest) return [];
  const { measurement, also, destructive, outcomes } = nextBest;
  const photograph: IdentifySentence[] = destructive
    ? [{ id: 'photograph', text: 'Photograph the sample first, with its marking: this ends any claim of “as found”.' }]
    : [];
  const both = also ? `; then ${doing[also]}` : '';
  return [
    ...photograph,
    { id: 'next', text: sentence(`next, ${doing[measurement]}${both}.`) },
    ...outcomes.map((one) => outcomeWords(nextBest, one)),
  ];
}
