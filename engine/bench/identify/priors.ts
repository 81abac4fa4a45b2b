import type { Confidence } from '../../material/property.ts';
import type { SourceId } from '../../sources.ts';
import type { CandidateId, ClaimedMaterial, Colour, MagnetSeen } from './evidence.ts';

/** Something held before any measurement, with where it comes from and why. */
export interface Prior<T> {
  readonly value: T;
  /** Unit of its numbers; '1' where they have none. */
  readonly unit: string;
  readonly source: SourceId;
  readonly confidence: Confidence;
  readonly why: string;
}

type Range = readonly [number, number];
/** A mean and its standard uncertainty. */
type Spread = readonly [mean: number, u: number];

/** All that is held of a conductor, and of those who look at it, before the evidence speaks. */
export interface Priors {
  /** How likely each metal is in a lead that somebody asks about; they sum to 1. */
  readonly metals: Prior<Readonly<Record<CandidateId, number>>>;
  /** Metal area [m²], even over its logarithm. */
  readonly area: Prior<Range>;
  /** Length of strand over length of core of a stranded conductor, even over the range. */
  readonly lay: Prior<Range>;
  /** Share of metal in the circle round a bundle of strands. */
  readonly fill: Prior<Spread>;
  /** Copper by volume of clad aluminium, even over the range. */
  readonly aluminiumShare: Prior<Range>;
  /** Conductivity of a clad steel over the least of its grade, even over the range. */
  readonly steelConductivity: Prior<Range>;
  /** Relative standard uncertainty of the resistivity of copper as drawn. */
  readonly copperResistivity: Prior<number>;
  /** Resistivity of clad aluminium over that of its two metals in parallel, and its relative standard uncertainty. */
  readonly aluminiumMixing: Prior<Spread>;
  /** Logarithm of resistivity [Ω·m] and of density [kg/m³] of something else. */
  readonly otherResistivity: Prior<Spread>;
  readonly otherDensity: Prior<Spread>;
  /** Resistance of test leads and contacts of a two-terminal reading [Ω]: median, and the factor of one standard uncertainty. */
  readonly testLeads: Prior<readonly [median: number, factor: number]>;
  /** What a magnet does at metals that it draws, and at those that it does not. */
  readonly magnet: Prior<{
    readonly drawn: Readonly<Record<MagnetSeen, number>>;
    readonly notDrawn: Readonly<Record<MagnetSeen, number>>;
  }>;
  /** Colour of the skin and of what lies under it, where it is named rightly. */
  readonly skin: Prior<ColourTable>;
  readonly under: Prior<ColourTable>;
  /** How often a colour is named wrongly. */
  readonly colourError: Prior<number>;
  /** How much likelier a claimed material is where it is so than where it is not. */
  readonly markingTrust: Prior<number>;
}

/** Probability of each colour, by metal; what is not listed is never seen but by error. */
export type ColourTable = Readonly<Record<CandidateId, Partial<Record<Colour, number>>>>;

const own = <T>(unit: string, value: T, why: string): Prior<T> => ({
  value,
  unit,
  source: 'own',
  confidence: 'our choice',
  why,
});

const anyColour = { 'copper-red': 0.25, silvery: 0.25, yellowish: 0.25, grey: 0.25 };
const red = { 'copper-red': 1 };

/** The usual priors: our choices, argued one by one. Whoever knows better gives others. */
export const usualPriors: Priors = {
  metals: own(
    '1',
    {
      copper: 0.37,
      tinnedCopper: 0.1,
      aluminium: 0.08,
      cladAluminium: 0.28,
      ccs40: 0.03,
      ccs30: 0.03,
      ccs21: 0.03,
      steel: 0.04,
      brass: 0.02,
      other: 0.02,
    },
    'a lead is put on the bench because it is doubted: copper is likeliest, clad aluminium next, none is ruled out',
  ),
  area: own('m²', [0.01e-6, 200e-6], 'from a hair of 0.1 mm to a conductor thicker than any lead'),
  lay: {
    value: [1, 1.05],
    unit: '1',
    source: 'astmB496',
    confidence: 'our choice',
    why: 'standards of stranded conductors add 2 % for stranding; bunched and roped ones reach 5 % (from memory)',
  },
  fill: own(
    '1',
    [0.75, 0.06],
    'seven and nineteen round wires fill 0.78 and 0.76 of their circle; bunches lie looser, pressed ones tighter',
  ),
  aluminiumShare: {
    value: [0.08, 0.17],
    unit: '1',
    source: 'astmB566',
    confidence: 'our choice',
    why: 'classes 10 and 15; a data sheet allows 8 to 12 % and 13 to 17 % by volume, and nothing between is ruled out',
  },
  steelConductivity: own(
    '1',
    [0.99, 1.08],
    'the limits lie 2 % below the nominal 21, 30 and 40 % IACS; makers stay above them, not far, since copper costs',
  ),
  copperResistivity: {
    value: 0.007,
    unit: '1',
    source: 'eceHandbook',
    confidence: 'our choice',
    why: 'annealed wires of 98 to 100 % IACS are tabled, and pure copper has 102 to 103 %',
  },
  aluminiumMixing: {
    value: [1.015, 0.015],
    unit: '1',
    source: 'astmB566',
    confidence: 'our choice',
    why: 'the standard allows 2.4 and 3.9 % more than mixing gives, and a data sheet promises 65 % IACS where it gives 66.9',
  },
  otherResistivity: own(
    'ln Ω·m',
    [Math.log(6e-8), 1.3],
    'two in three from 1.6e-8 to 2.2e-7: every wire metal we know',
  ),
  otherDensity: own('ln kg/m³', [Math.log(5000), 0.6], 'two in three from 2700 to 9100'),
  testLeads: own('Ω', [0.1, 2], 'a pair of plain test leads with clips: 0.03 to 0.4 Ω in nineteen of twenty'),
  magnet: own(
    '1',
    {
      drawn: { clings: 0.95, weakly: 0.04, 'does not': 0.01 },
      notDrawn: { clings: 0.002, weakly: 0.01, 'does not': 0.988 },
    },
    'strands of steel are drawn unless the magnet is poor; a screen, pin or screw nearby can mislead',
  ),
  skin: own(
    '1',
    {
      copper: red,
      tinnedCopper: { silvery: 0.85, grey: 0.15 },
      aluminium: { silvery: 0.8, grey: 0.2 },
      cladAluminium: red,
      ccs40: red,
      ccs30: red,
      ccs21: red,
      steel: { grey: 0.6, silvery: 0.4 },
      brass: { yellowish: 0.95, 'copper-red': 0.05 },
      other: anyColour,
    },
    'as wires look; tin and aluminium dull to grey, zinc on steel is silvery',
  ),
  under: own(
    '1',
    {
      copper: red,
      tinnedCopper: red,
      aluminium: { silvery: 0.95, grey: 0.05 },
      cladAluminium: { silvery: 0.92, grey: 0.08 },
      ccs40: { grey: 0.65, silvery: 0.35 },
      ccs30: { grey: 0.65, silvery: 0.35 },
      ccs21: { grey: 0.65, silvery: 0.35 },
      steel: { grey: 0.65, silvery: 0.35 },
      brass: { yellowish: 0.97, 'copper-red': 0.03 },
      other: anyColour,
    },
    'as scraped or cut ends look',
  ),
  colourError: own('1', 0.03, 'one look in thirty is misled by grease, oxide, lamp light, or a scrape too shallow'),
  markingTrust: own(
    '1',
    2,
    'the marking is what is doubted: a true claim is taken for twice as likely as an untrue one',
  ),
};

/** Metals that make a claimed material true. */
export const claimedMetals: Readonly<Record<ClaimedMaterial, readonly CandidateId[]>> = {
  copper: ['copper', 'tinnedCopper'],
  aluminium: ['aluminium'],
  'clad aluminium': ['cladAluminium'],
  'clad steel': ['ccs40', 'ccs30', 'ccs21'],
  steel: ['steel'],
  brass: ['brass'],
};
