import type { CandidateId, ClaimedMaterial, Evidence, PieceId } from './evidence.ts';
import type { Candidate, Identification } from './identify.ts';
import { nextWords } from './next-words.ts';
import { claimedMetals } from './priors.ts';
import {
  figures,
  type IdentifySentence,
  metalName,
  mm2,
  mostNamed,
  or,
  percent,
  sentence,
  span,
} from './word-parts.ts';

export type { IdentifySentence, IdentifySentenceId } from './word-parts.ts';

/** Metals together this likely are what the sample behaves as, `mostNamed` of them at most. */
const sure = 0.95;

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
  practice: 'iec' | 'na',
): IdentifySentence[] {
  const told: IdentifySentence[] = [];
  const least = againstMarking?.isLimit
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
    const { ratio, marked, R20, isLimit } = againstMarking;
    const times = `its resistance is ${figures(ratio.median, 2)} times the ${figures(R20 * 1e3)} mΩ/m`;
    const verdict =
      ratio.low > 1 ? 'does not meet it' : ratio.high <= 1 ? 'meets it' : 'is not shown to miss or to meet it';
    const text = isLimit
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

/** The identification in sentences: what the sample behaves as, its size, and what to measure next. `evidence` gives the claim. */
export function identifyWords(
  of: Identification,
  evidence: Evidence,
  practice: 'iec' | 'na' = 'iec',
): IdentifySentence[] {
  return [
    ...(of.fit.none ? noneWords(of) : whatItIs(of, evidence.marking?.material)),
    ...sizeWords(of, practice),
    ...productWords(of),
    ...nextWords(of.nextBest),
  ];
}

/** The identification as one text. */
export const identifyText = (of: Identification, evidence: Evidence, practice: 'iec' | 'na' = 'iec'): string =>
  identifyWords(of, evidence, practice)
    .map(({ text }) => text)
    .join(' ');
