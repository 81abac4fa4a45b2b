import { clad, type Metal, metals, tinnedCopper } from '../../material/metals.ts';
import type { CandidateId } from './evidence.ts';
import type { Priors } from './priors.ts';

/** One make of a metal: a copper share (null where it has none) with its resistivity and density, and how likely it is. */
export interface Make {
  readonly share: number | null;
  readonly lnRho: number;
  readonly lnDensity: number;
  readonly weight: number;
}

/** A metal that the evidence is held against. */
export interface Hypothesis {
  readonly id: CandidateId;
  readonly name: string;
  readonly prior: number;
  readonly makes: readonly Make[];
  /** Relative standard uncertainties of resistivity and density of one make. */
  readonly uRho: number;
  readonly uDensity: number;
  readonly alpha20: number;
  /** Standard uncertainty of the temperature coefficient [1/K]. */
  readonly uAlpha: number;
  readonly magnetic: boolean;
}

/** Makes of a share, in so many steps of equal width: fine beside the tolerance of density of each. */
const steps = { cladAluminium: 16, cladSteel: 6 };

/** Middles of `count` equal parts of a range. */
export const middles = ([from, to]: readonly [number, number], count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((i + 0.5) / count) * (to - from));

const plain = ({ rho20, density }: Metal): Make[] => [
  { share: null, lnRho: Math.log(rho20.value), lnDensity: Math.log(density.value), weight: 1 },
];

/** Records of a metal as a hypothesis; a resistivity that is exact by definition takes the spread of wires as drawn. */
function hypothesis(id: CandidateId, metal: Metal, priors: Priors, makes = plain(metal)): Hypothesis {
  return {
    id,
    name: metal.name,
    prior: priors.metals.value[id],
    makes,
    uRho: metal.rho20.u > 0 ? metal.rho20.u / metal.rho20.value : priors.copperResistivity.value,
    uDensity: metal.density.u / metal.density.value,
    alpha20: metal.alpha20.value,
    uAlpha: metal.alpha20.u,
    magnetic: metal.magnetic,
  };
}

function cladAluminium(priors: Priors): Hypothesis {
  const shares = middles(priors.aluminiumShare.value, steps.cladAluminium);
  const [above, uRho] = priors.aluminiumMixing.value;
  const makes = shares.map((share): Make => {
    const { rho20, density } = clad('share', 'share', metals.copper, metals.aluminium, share);
    const weight = 1 / shares.length;
    return { share, lnRho: Math.log(above * rho20.value), lnDensity: Math.log(density.value), weight };
  });
  return { ...hypothesis('cladAluminium', metals.cca10, priors, makes), name: 'copper-clad aluminium', uRho };
}

/** Clad steel of a grade: conductivities from its least up, each with the copper share and density that mixing asks of it. */
function cladSteel(id: 'ccs40' | 'ccs30' | 'ccs21', priors: Priors): Hypothesis {
  const grade = metals[id];
  const { copper, steel } = metals;
  const sigma = (metal: Metal) => 1 / metal.rho20.value;
  const shareFor = (conductivity: number) => (conductivity - sigma(steel)) / (sigma(copper) - sigma(steel));
  const gradeShare = shareFor(sigma(grade));
  const factors = middles(priors.steelConductivity.value, steps.cladSteel);
  const makes = factors.map((factor): Make => {
    const share = shareFor(factor * sigma(grade));
    const density = grade.density.value + (share - gradeShare) * (copper.density.value - steel.density.value);
    return { share, lnRho: -Math.log(factor * sigma(grade)), lnDensity: Math.log(density), weight: 1 / factors.length };
  });
  return hypothesis(id, grade, priors, makes);
}

/** Something that is none of the metals: wide in resistivity and density. */
function other({ metals: weights, otherResistivity, otherDensity }: Priors): Hypothesis {
  const [lnRho, uRho] = otherResistivity.value;
  const [lnDensity, uDensity] = otherDensity.value;
  return {
    id: 'other',
    name: 'something else',
    prior: weights.value.other,
    makes: [{ share: null, lnRho, lnDensity, weight: 1 }],
    uRho,
    uDensity,
    alpha20: metals.copper.alpha20.value,
    uAlpha: 1e-3, // from brass to steel
    magnetic: false,
  };
}

/** Every metal that is weighed, with what is held of it. */
export function hypotheses(priors: Priors): Hypothesis[] {
  return [
    hypothesis('copper', metals.copper, priors),
    hypothesis('tinnedCopper', tinnedCopper, priors),
    hypothesis('aluminium', metals.aluminium, priors),
    cladAluminium(priors),
    cladSteel('ccs40', priors),
    cladSteel('ccs30', priors),
    cladSteel('ccs21', priors),
    hypothesis('steel', metals.steel, priors),
    hypothesis('brass', metals.brass, priors),
    other(priors),
  ];
}
