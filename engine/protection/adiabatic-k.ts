import type { Statement } from '../heating/validity.ts';
import type { Metal } from '../material/metals.ts';
import type { Plastic } from '../material/plastics.ts';
import { celsius, kelvin, squareMetres } from '../quantity.ts';
import type { Cited } from './cited.ts';

/** Temperature below zero Celsius at which a straight line of resistance would reach nothing, β = 1/α20 − 20 [°C]. */
export const zeroResistance = ({ alpha20 }: Metal): number => 1 / alpha20.value - 20;

/**
 * Constant K of a metal, K = √(σc (β + 20)/ρ20) [A·s^½/m²], which no temperature enters: IEC 60949 clause 3. A millionth of it
 * is the trade's figure in A·s^½/mm².
 */
export const metalConstant = (metal: Metal): number =>
  Math.sqrt((metal.heatCapacity.value * (zeroResistance(metal) + 20)) / metal.rho20.value);

/**
 * k = K √(ln((β + θf)/(β + θi))) [A·s^½/m²] of a metal warmed from `from` to `to` [K] by a current so short that no heat leaves
 * it: IEC 60364-5-54 Annex A. 0 where `to` is no higher than `from`. A millionth of it is the trade's figure per mm².
 */
export function adiabaticConstant(metal: Metal, from: number, to: number): number {
  if (to <= from) return 0;
  const beta = zeroResistance(metal);
  return metalConstant(metal) * Math.sqrt(Math.log((beta + celsius(to)) / (beta + celsius(from))));
}

/** k of a metal in an insulation, with what it rests on. */
export interface AdiabaticK extends Cited {
  /** [A·s^½/m²]; a millionth of it is the trade's figure in A·s^½/mm². */
  readonly k: number;
  /** Temperature at the start, and the insulation's short-circuit limit [K]. */
  readonly from: number;
  readonly to: number;
  readonly statements: readonly Statement[];
}

/** Above this area, standards allow PVC only 140 °C in a short circuit (IEC 60724; IEC 60364-4-43 Table 43A). */
const largePvc = { area: squareMetres(300), T: kelvin(140) };
const tabled: readonly string[] = ['copper', 'aluminium', 'steel'];

/**
 * k of a conductor of `metal` and `area` [m²] in `plastic`, from `from` [K] (its rating, unless given) to the insulation's
 * short-circuit limit. Null where the insulation has no such limit. Copper, aluminium and steel are in the standard's tables;
 * a clad metal has k by our own mixing, and a statement says so.
 */
export function kOf(metal: Metal, plastic: Plastic, area: number, from?: number): AdiabaticK | null {
  const find = (kind: string) => plastic.limits.find((limit) => limit.kind === kind);
  const short = find('shortTime');
  const start = from ?? find('rating')?.low;
  if (!short || start === undefined) return null;
  const large = plastic.id.startsWith('pvc') && area > largePvc.area * (1 + 1e-9);
  const to = large ? Math.min(short.low, largePvc.T) : short.low;
  const standard = tabled.includes(metal.id);
  const cited: Cited = standard
    ? { source: 'iec60364-5-54', where: 'Annex A, formula of k', confidence: 'computed' }
    : { source: 'own', where: 'IEC 60949 with a metal of our own values', confidence: 'our choice' };
  return {
    k: adiabaticConstant(metal, start, to),
    from: start,
    to,
    ...cited,
    statements: statementsOf(metal, standard),
  };
}

function statementsOf({ name }: Metal, standard: boolean): Statement[] {
  const all: Statement[] = [
    {
      id: 'uniform core',
      text: 'k takes the whole core as one metal at one temperature. It says nothing of joints, clips or a nicked strand.',
    },
  ];
  if (standard) return all;
  return [
    { id: 'own mixing', text: `No standard prints k for ${name}. We put its values into the standard’s formula.` },
    ...all,
  ];
}
