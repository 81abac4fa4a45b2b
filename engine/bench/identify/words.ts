import type { CandidateId, ClaimedMaterial, Evidence, PieceId } from './evidence.ts';
import type { Candidate, Identification } from './identify.ts';
import type { MeasurementId, NextMeasurement } from './next.ts';
import type { OutcomeMeaning, ReadQuantity } from './outcomes.ts';
import { claimedMetals } from './priors.ts';
import type { Interval } from './size.ts';

/** What a sentence of the identification is about. */
export type IdentifySentenceId =
  | 'none fits'
  | 'clash'
  | 'behaves as'
  | 'not established'
  | 'marked material'
  | 'area'
  | 'equal copper'
  | 'table'
  | 'product'
  | 'next'
  | 'photograph'
  | 'outcome';

/** One sentence of the identification. */
export interface IdentifySentence {
  readonly id: IdentifySentenceId;
  readonly text: string;
}

/** Metals together this likely are what the sample behaves as; fewer than four of them. */
const sure = 0.95;
const mostNamed = 3;

const metalName: Record<CandidateId, string> = {
  copper: 'copper',
  tinnedCopper: 'tinned copper',
  aluminium: 'plain aluminium',
  cladAluminium: 'clad aluminium',
  ccs40: 'clad steel',
  ccs30: 'clad steel',
  ccs21: 'clad steel',
  steel: 'steel',
  brass: 'brass',
  other: 'something else',
};

const pieceName: Record<PieceId, string> = {
  resistance: 'the resistance',
  strands: 'the strands',
  bundle: 'the diameter of the bundle',
  mass: 'the mass',
  magnet: 'the magnet',
  skin: 'the colour of the skin',
  under: 'the colour under the skin',
  marking: 'the marking',
};

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

const figures = (x: number, count = 3) => (x < 10 ** count ? x.toPrecision(count) : `${Math.round(x)}`);
const percent = (p: number) => (p > 0.99 ? 'over 99 %' : `${Math.round(100 * p)} %`);
const mm2 = (area: number) => `${figures(area * 1e6)} mm²`;
const or = (names: readonly string[]) =>
  [names.slice(0, -1).join(', '), ...names.slice(-1)].filter(Boolean).join(' or ');
/** A space that holds a number to its unit, and a capital to begin with. */
const sentence = (text: string) =>
  (text.charAt(0).toUpperCase() + text.slice(1)).replace(/(\d) (?=mm|mΩ|nΩ|g\/m|%|AWG)/g, '$1\u00A0');
const span = ({ low, high }: Interval, of: (x: number) => string) => `${of(low).replace(/ mm²$/, '')} to ${of(high)}`;

/** Names of metals, each once; two kinds of aluminium share their noun. */
function named(metals: readonly CandidateId[]): string {
  const names = [...new Set(metals.map((metal) => metalName[metal]))];
  const both = names.includes('clad aluminium') && names.includes('plain aluminium');
  return or(both ? ['clad or plain aluminium', ...names.filter((name) => !name.endsWith('aluminium'))] : names);
}

/** The likeliest metals that together are sure enough; null where it takes too many, or something else is one of them. */
function leadersOf({ candidates }: Identification): Candidate[] | null {
  const found: Candidate[] = [];
  const kinds = new Set<string>();
  let sum = 0;
  for (const one of candidates) {
    if (sum >= sure) break;
    found.push(one);
    kinds.add(metalName[one.metal]);
    sum += one.probability;
  }
  const tooMany = kinds.size > mostNamed || found.some(({ metal }) => metal === 'other');
  return sum >= sure && !tooMany ? found : null;
}

/** 'undersized' where all the leaders are, 'full-size' likewise; nothing where they differ or no size is marked. */
function standingWords(leaders: readonly Candidate[]): string {
  const standings = new Set(leaders.map(({ size }) => size?.standing));
  if (standings.size !== 1) return '';
  const [only] = standings;
  return only === 'undersized' ? 'undersized ' : only === 'full size' ? 'full-size ' : '';
}

function whatItIs(of: Identification, claimed: ClaimedMaterial | undefined): IdentifySentence[] {
  const leaders = leadersOf(of);
  if (!leaders) {
    const likely = of.candidates
      .slice(0, mostNamed)
      .map(({ metal, probability }) => `${metalName[metal]} ${percent(probability)}`);
    return [{ id: 'not established', text: sentence(`not established: ${likely.join(', ')}.`) }];
  }
  const metals = leaders.map(({ metal }) => metal);
  const told: IdentifySentence = {
    id: 'behaves as',
    text: sentence(`this sample behaves as ${standingWords(leaders)}${named(metals)}.`),
  };
  const asClaimed = !claimed || metals.some((metal) => claimedMetals[claimed].includes(metal));
  if (asClaimed) return [told];
  return [told, { id: 'marked material', text: sentence(`it does not behave as the ${claimed} that is marked.`) }];
}

function noneWords({ fit }: Identification): IdentifySentence[] {
  return [
    { id: 'none fits', text: 'None of these metals fits all the evidence.' },
    ...fit.clashes.map(
      ({ piece, restSays }): IdentifySentence => ({
        id: 'clash',
        text: sentence(
          `${pieceName[piece]} clashes with the rest, which speaks for ${metalName[restSays]}: repeat it.`,
        ),
      }),
    ),
  ];
}

function sizeWords(
  { area, equalCopper, againstMarking, fit }: Identification,
  { marking }: Evidence,
  practice: 'iec' | 'na',
): IdentifySentence[] {
  const told: IdentifySentence[] = [];
  const least =
    againstMarking && marking?.size_AWG === undefined
      ? `; ${againstMarking.marked} needs ${mm2(againstMarking.leastArea)} at least`
      : '';
  if (area && !fit.none)
    told.push({
      id: 'area',
      text: sentence(`its metal area is about ${mm2(area.median)}, ${span(area, mm2)}${least}.`),
    });
  if (equalCopper) {
    const size = practice === 'na' ? equalCopper.nearest_AWG : equalCopper.nearest_mm2;
    const is = `equal to ${mm2(equalCopper.area.median)} of copper by resistance, ${span(equalCopper.area, mm2)}`;
    told.push({ id: 'equal copper', text: sentence(`it is ${is}; the nearest size is ${size.name}.`) });
  }
  if (againstMarking) {
    const { ratio, marked, R20 } = againstMarking;
    const times = `its resistance is ${figures(ratio.median, 2)} times the ${figures(R20 * 1e3)} mΩ/m`;
    const verdict =
      ratio.low > 1 ? 'does not meet it' : ratio.high <= 1 ? 'meets it' : 'is not shown to miss or to meet it';
    const text =
      marking?.size_AWG === undefined
        ? `${times} that ${marked} copper may have: it ${verdict}.`
        : `${times} of ${marked} in annealed copper.`;
    told.push({ id: 'table', text: sentence(text) });
  }
  return told;
}

function productWords({ massTimesResistance: { measured, metals }, candidates }: Identification): IdentifySentence[] {
  const first = metals.find(({ metal }) => metal === candidates[0]?.metal);
  if (!measured || !first) return [];
  const inMilli = (x: number) => figures(x * 1e6);
  const own = `${metalName[first.metal]} has ${inMilli(first.low)} to ${inMilli(first.high)}`;
  return [
    {
      id: 'product',
      text: sentence(`resistance times mass is ${inMilli(measured.value)} mΩ·g/m², whatever the area; ${own}.`),
    },
  ];
}

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

function nextWords({ nextBest }: Identification): IdentifySentence[] {
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

/** The identification in sentences: what the sample behaves as, its size, and what to measure next. `evidence` gives the claim. */
export function identifyWords(
  of: Identification,
  evidence: Evidence,
  practice: 'iec' | 'na' = 'iec',
): IdentifySentence[] {
  return [
    ...(of.fit.none ? noneWords(of) : whatItIs(of, evidence.marking?.material)),
    ...sizeWords(of, evidence, practice),
    ...productWords(of),
    ...nextWords(of),
  ];
}

/** The identification as one text. */
export const identifyText = (of: Identification, evidence: Evidence, practice: 'iec' | 'na' = 'iec'): string =>
  identifyWords(of, evidence, practice)
    .map(({ text }) => text)
    .join(' ');
