import { type Metal, metals } from '../../material/metals.ts';
import type { Measured } from '../measured.ts';
import type { CandidateId, Evidence } from './evidence.ts';
import { type Hypothesis, middles } from './hypotheses.ts';
import { moments } from './line.ts';
import { massPiece, resistancePiece } from './pieces.ts';
import type { Priors } from './priors.ts';
import { smeared } from './smear.ts';
import { combined } from './student.ts';
import { laysOf } from './weigh.ts';

/** R'20·m' of a metal, from its own resistivity and density: the area cancels, and the lay factor enters squared. */
export interface MetalProduct {
  readonly metal: CandidateId;
  /** ρ·density of the straight wire [Ω·kg/m²]. */
  readonly straight: number;
  /** Over the makes of the metal and the lays of the conductor, with two standard uncertainties of resistivity and density [Ω·kg/m²]. */
  readonly low: number;
  readonly high: number;
}

/** Resistivity times density of a straight wire of `metal` at 20 °C, ρ·d = R'20·m' [Ω·kg/m²]: no area is in it. */
export const straightProduct = ({ rho20, density }: Metal): number => rho20.value * density.value;

/** R'20·m' as measured, beside each metal's own. */
export interface MassTimesResistance {
  /** [Ω·kg/m²]; null without both a resistance and a mass. Taken to 20 °C by copper's coefficient. */
  readonly measured: Measured | null;
  readonly metals: readonly MetalProduct[];
}

function ownProduct(of: Hypothesis, lays: readonly number[]): MetalProduct {
  const products = of.makes.map(({ lnRho, lnDensity }) => lnRho + lnDensity);
  const doubt = 2 * Math.hypot(of.uRho, of.uDensity);
  const middle = products.reduce((sum, one) => sum + one, 0) / products.length;
  return {
    metal: of.id,
    straight: Math.exp(middle),
    low: Math.exp(Math.min(...products) + 2 * Math.min(...lays) - doubt),
    high: Math.exp(Math.max(...products) + 2 * Math.max(...lays) + doubt),
  };
}

/** What the resistance and the mass say together, without any area. */
function measuredProduct({ resistance, mass }: Evidence, priors: Priors): Measured | null {
  if (!resistance || !mass) return null;
  const { alpha20 } = metals.copper;
  const { nodes } = smeared(
    resistancePiece(resistance, { alpha20: alpha20.value, uAlpha: alpha20.u }, priors),
    priors.copperResistivity.value,
  );
  const R = moments({ from: nodes.x[0] as number, step: nodes.step, p: nodes.weight });
  const m = massPiece(mass);
  const value = Math.exp(R.mean + m.centre);
  const { u, dof } = combined([
    { u: R.sd, dof: resistance.R.dof },
    { u: m.width, dof: mass.mass.dof },
  ]);
  return { value, u: value * u, dof };
}

/** R'20·m' by measurement and by metal; something else has none. */
export function massTimesResistance(
  evidence: Evidence,
  all: readonly Hypothesis[],
  priors: Priors,
): MassTimesResistance {
  const [low, high] = priors.lay.value;
  const lays = laysOf(evidence, priors).length === 1 ? [0] : [...middles([low, high], 1), low, high].map(Math.log);
  return {
    measured: measuredProduct(evidence, priors),
    metals: all.filter(({ id }) => id !== 'other').map((of) => ownProduct(of, lays)),
  };
}
