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
const finest = 0.00015; // resolves what `unround` leaves of a perfect gauge

/** Step of the logarithm of area that resolves every piece: a third of the narrowest standard deviation. */
function stepFor({ strands, bundle, resistance, mass }: MeasuredPieces): number {
  const widths = [strands, bundle, resistance, mass].map((piece) => piece?.width ?? Number.POSITIVE_INFINITY);
  return Math.max(finest, Math.min(coarsest, Math.min(...widths) / 3));
}

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

/** Empty densities of one metal: of the area, and of the nominal values of what follows from it and the make. */
interface Lines {
  readonly area: Line;
  readonly R20: Line;
  readonly massPerMetre: Line;
  readonly resistivity: Line;
}

function linesFor(of: Hypothesis, step: number, window: ReturnType<typeof windowOf>): Lines {
  const { low, high, rho, density, layLow, layHigh } = window;
  const [rhoLow, rhoHigh] = [Math.min(...rho) + layLow, Math.max(...rho) + layHigh];
  const [densityLow, densityHigh] = [Math.min(...density) + layLow, Math.max(...density) + layHigh];
  return {
    area: emptyLine(low, Math.max(low, high), step),
    R20: emptyLine(rhoLow - high - step, rhoHigh - low + 2 * step, Math.max(of.uRho / 4, step)),
    massPerMetre: emptyLine(densityLow + low - step, densityHigh + high + 2 * step, Math.max(of.uDensity / 4, step)),
    resistivity: emptyLine(rhoLow, rhoHigh, of.uRho / 4),
  };
}

/** Fills the densities over every area, make and lay; `makes` takes the weight of each make. Returns the sum of all weights. */
function fill(
  { area, R20, massPerMetre, resistivity }: Lines,
  makes: Float64Array,
  of: Hypothesis,
  lays: readonly number[],
  { resistance, mass }: MeasuredPieces,
  weight: Float64Array,
): number {
  let sum = 0;
  for (let i = 0; i < area.p.length; i++) {
    const base = (weight[i] as number) / lays.length;
    if (base < 1e-16) continue;
    const a = area.from + i * area.step;
    for (let k = 0; k < makes.length; k++) {
      const make = of.makes[k] as Hypothesis['makes'][number];
      const here = base * make.weight;
      for (const lay of lays) {
        const x = make.lnRho + lay;
        const m = make.lnDensity + lay + a;
        const byR = resistance ? likelihoodAt(resistance, x - a) : 1;
        const byM = mass ? likelihoodAt(mass, m) : 1;
        // what is read of R or m is left out of its own nominal value, and sharpens it afterwards
        if (byM > 0) put(R20, x - a, here * byM);
        if (byR > 0) put(massPerMetre, m, here * byR);
        const all = here * byR * byM;
        if (all === 0) continue;
        sum += all;
        put(resistivity, x, all);
        area.p[i] = (area.p[i] as number) + all;
        makes[k] = (makes[k] as number) + all;
      }
    }
  }
  return sum;
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
  const { resistance, mass } = pieces;
  const window = windowOf(of, lays, pieces, priors);
  const step = stepFor(pieces);
  const lines = linesFor(of, step, window);
  const makes = new Float64Array(of.makes.length);
  if (!(window.low < window.high)) return { log: Number.NEGATIVE_INFINITY, ...lines, makes };
  const { weight, top } = aboutArea(pieces, lines.area);
  const sum = fill(lines, makes, of, lays, pieces, weight);
  if (!(sum > 0)) return { log: Number.NEGATIVE_INFINITY, ...lines, makes };
  const [from, to] = priors.area.value;
  const { R20, massPerMetre } = lines;
  return {
    log: Math.log((sum * step) / Math.log(to / from)) + top + (resistance?.log ?? 0) + (mass?.log ?? 0),
    area: normalised(lines.area),
    R20: normalised(resistance ? sharpened(resistance, R20, of.uRho) : spread(R20, of.uRho)),
    massPerMetre: normalised(mass ? sharpened(mass, massPerMetre, of.uDensity) : spread(massPerMetre, of.uDensity)),
    resistivity: normalised(spread(lines.resistivity, of.uRho)),
    makes: makes.map((one) => one / sum),
  };
}
