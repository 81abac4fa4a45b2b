import { OutOfRange } from '../../errors.ts';
import type { Hypothesis } from './hypotheses.ts';
import { emptyLine, type Line, normalised, put, spread } from './line.ts';
import type { LnPiece } from './pieces.ts';
import type { Priors } from './priors.ts';
import { likelihoodAt, reachOf, type Smeared, sharpened } from './smear.ts';

/** The measured pieces as one metal sees them; null where there is none, or where it is left out. */
export interface MeasuredPieces {
  readonly strands: LnPiece | null;
  readonly bundle: LnPiece | null;
  readonly resistance: Smeared | null;
  readonly mass: Smeared | null;
}

/** What the measured pieces make of one metal. */
export interface MetalPosterior {
  /** Logarithm of how likely the pieces are, were it this metal; −∞ where they cannot be. */
  readonly log: number;
  /** Densities over the logarithms of metal area [m²], R'20 [Ω/m] and mass [kg/m] per metre of core. */
  readonly area: Line;
  readonly R20: Line;
  readonly massPerMetre: Line;
  /** Over the logarithm of R'20·area [Ω·m], as far as the other pieces tell; the resistance itself does not sharpen it. */
  readonly resistivity: Line;
  /** Weights of its makes, summing to 1. */
  readonly makes: Float64Array;
}

const coarsest = 0.02; // step of the logarithm of area where nothing asks for a finer one
const finest = 0.0004;

/** Step of the logarithm of area that resolves every piece: no wider than the narrowest standard deviation over 1.5. */
function stepFor({ strands, bundle, resistance, mass }: MeasuredPieces, { uRho, uDensity }: Hypothesis): number {
  const widths = [
    strands?.width,
    bundle?.width,
    resistance ? uRho : undefined,
    mass ? massWidth(mass, uDensity) : undefined,
  ];
  const narrowest = Math.min(...widths.map((width) => width ?? Number.POSITIVE_INFINITY)) / 1.5;
  return Math.max(finest, Math.min(coarsest, narrowest));
}

const massWidth = (mass: Smeared, uDensity: number) => Math.hypot(3 * mass.nodes.step, uDensity);

/** First and last logarithm of area that the prior and the smeared pieces allow. */
function windowOf(of: Hypothesis, lays: readonly number[], pieces: MeasuredPieces, priors: Priors) {
  let [low, high] = priors.area.value.map(Math.log) as [number, number];
  if (!(low < high)) throw new OutOfRange('the prior of the area', high, [low, 0], 'ln m²');
  const rho = of.makes.map(({ lnRho }) => lnRho);
  const density = of.makes.map(({ lnDensity }) => lnDensity);
  const [layLow, layHigh] = [Math.min(...lays), Math.max(...lays)];
  if (pieces.resistance) {
    const [from, to] = reachOf(pieces.resistance);
    low = Math.max(low, Math.min(...rho) + layLow - to);
    high = Math.min(high, Math.max(...rho) + layHigh - from);
  }
  if (pieces.mass) {
    const [from, to] = reachOf(pieces.mass);
    low = Math.max(low, from - Math.max(...density) - layHigh);
    high = Math.min(high, to - Math.min(...density) - layLow);
  }
  return { low, high, rho, density, layLow, layHigh };
}

/** What the pieces that speak of the area alone say of it, at each point of a grid; over their greatest sum, whose logarithm is `top`. */
function aboutArea(
  { strands, bundle }: MeasuredPieces,
  { from, step, p }: Line,
): { weight: Float64Array; top: number } {
  const logs = p.map((_, i) => {
    const x = from + i * step;
    return (strands?.log(x) ?? 0) + (bundle?.log(x) ?? 0);
  });
  const top = logs.reduce((best, one) => Math.max(best, one), Number.NEGATIVE_INFINITY);
  return { weight: logs.map((one) => Math.exp(one - top)), top };
}

/**
 * One metal against the measured pieces, over the logarithm of metal area: R'20 = ρ·lay/A and m' = density·lay·A, with each
 * make of the metal, each lay and the tolerances of ρ and density integrated out. `lays` are logarithms of the lay factor.
 */
export function integrate(
  of: Hypothesis,
  lays: readonly number[],
  pieces: MeasuredPieces,
  priors: Priors,
): MetalPosterior {
  const { low, high, rho, density, layLow, layHigh } = windowOf(of, lays, pieces, priors);
  const step = stepFor(pieces, of);
  const area = emptyLine(low, Math.max(low, high), step);
  const nominalR = emptyLine(
    Math.min(...rho) + layLow - high - step,
    Math.max(...rho) + layHigh - low + 2 * step,
    of.uRho / 4,
  );
  const nominalM = emptyLine(
    Math.min(...density) + layLow + low - step,
    Math.max(...density) + layHigh + high + 2 * step,
    Math.max(of.uDensity / 4, step / 4),
  );
  const nominalX = emptyLine(Math.min(...rho) + layLow, Math.max(...rho) + layHigh, of.uRho / 4);
  const makes = new Float64Array(of.makes.length);
  if (!(low < high))
    return { log: Number.NEGATIVE_INFINITY, area, R20: nominalR, massPerMetre: nominalM, resistivity: nominalX, makes };
  const { weight, top } = aboutArea(pieces, area);
  const each = 1 / lays.length;
  let sum = 0;
  for (let i = 0; i < area.p.length; i++) {
    const base = (weight[i] as number) * each;
    if (base < 1e-16) continue;
    const a = area.from + i * area.step;
    for (let k = 0; k < makes.length; k++) {
      const make = of.makes[k] as Hypothesis['makes'][number];
      for (const lay of lays) {
        const r = make.lnRho + lay - a;
        const m = make.lnDensity + lay + a;
        const byR = pieces.resistance ? likelihoodAt(pieces.resistance, r) : 1;
        const byM = pieces.mass ? likelihoodAt(pieces.mass, m) : 1;
        const here = base * make.weight;
        if (byM > 0) put(nominalR, r, here * byM);
        if (byR > 0) put(nominalM, m, here * byR);
        const all = here * byR * byM;
        if (all === 0) continue;
        sum += all;
        put(nominalX, make.lnRho + lay, all);
        area.p[i] = (area.p[i] as number) + all;
        makes[k] = (makes[k] as number) + all;
      }
    }
  }
  const [from, to] = priors.area.value;
  const log =
    Math.log((sum * step) / Math.log(to / from)) + top + (pieces.resistance?.log ?? 0) + (pieces.mass?.log ?? 0);
  return {
    log: sum > 0 ? log : Number.NEGATIVE_INFINITY,
    area: normalised(area),
    R20: normalised(pieces.resistance ? sharpened(pieces.resistance, nominalR, of.uRho) : spread(nominalR, of.uRho)),
    massPerMetre: normalised(
      pieces.mass ? sharpened(pieces.mass, nominalM, of.uDensity) : spread(nominalM, of.uDensity),
    ),
    resistivity: normalised(spread(nominalX, of.uRho)),
    makes: makes.map((one) => one / sum),
  };
}
