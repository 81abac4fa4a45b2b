import { ratingOf } from '../../heating/limits-of.ts';
import type { ThermalCase } from '../../heating/thermal-case.ts';
import { resistanceRatio } from '../../material/resistivity.ts';
import { celsius } from '../../quantity.ts';
import type { PlateauMeans } from '../fit/beside.ts';
import type { Agreement } from '../fit/compare.ts';
import type { LogFit } from '../fit/result.ts';
import type { Identification } from '../identify/identify.ts';
import type { Interval } from '../identify/size.ts';
import { metalName } from '../identify/word-parts.ts';
import type { Measured } from '../measured.ts';
import type { VerdictFacts } from '../verdict-words.ts';

/** Half of a 95 % interval over its standard uncertainty, where it is normal. */
const wide = 1.96;

const fromInterval = ({ median, low, high }: Interval): Measured => ({ value: median, u: (high - low) / (2 * wide) });

/**
 * Resistance of a conductor per metre at 20 °C [Ω/m]: as it was identified, else as a fit to the log found it, the plastics' doubt
 * in its uncertainty. Null where neither tells it.
 */
export function resistanceOfSample(identified: Identification | null, fit: LogFit | null): Measured | null {
  if (identified?.R20) return fromInterval(identified.R20);
  const fitted = fit?.parameters.find(({ id, state }) => id === 'R20' && state === 'fitted');
  return fitted && fitted.u !== null ? { value: fitted.value, u: Math.hypot(fitted.u, fitted.uModel ?? 0) } : null;
}

/** The likeliest metal; null where none fits the evidence. */
export function metalOfSample(identified: Identification | null): VerdictFacts['metal'] {
  const first = identified?.candidates[0];
  if (!identified || !first || identified.fit.none || first.metal === 'other') return null;
  return { name: metalName[first.metal], probability: first.probability };
}

/** Difference of resistance beyond two uncertainties that is put down to rounding [1] (our choice). */
const asGood = 0.01;

/** Whether a case is of the sample that was measured, by its resistance a metre: no other may carry a verdict. */
export function isSample({ cable }: ThermalCase, R20: Measured | null): boolean {
  return R20 !== null && Math.abs(cable.conductor.R20 - R20.value) <= 2 * R20.u + asGood * R20.value;
}

const places: Readonly<Record<ThermalCase['scenario']['surroundings']['kind'], string>> = {
  stillAir: 'in still air',
  draught: 'in a draught',
  clipped: 'clipped to a surface',
  lagged: 'covered',
  coiled: 'wound',
};

/**
 * The hottest plateau by resistance. Its uncertainty is the instruments' and that of the resistance at 20 °C, by which the
 * temperature is read: (R/R20)/α20 kelvins for each share of it.
 */
export function reachedBy(
  of: ThermalCase,
  R20: Measured,
  agreements: readonly Agreement[] | null,
  means: readonly PlateauMeans[],
): VerdictFacts['reached'] {
  const plateaus = agreements?.find(({ thermometer }) => thermometer === 'conductor by resistance')?.plateaus ?? [];
  const [first, ...rest] = plateaus;
  if (!first) return null;
  const hottest = rest.reduce((most, one) => (one.measured > most.measured ? one : most), first);
  const { alpha20, beta20 } = of.cable.conductor;
  const share = R20.u / R20.value;
  const u = Math.hypot(hottest.uMeasured, (share * resistanceRatio(alpha20, beta20, hottest.measured)) / alpha20);
  const air = means.find(({ span }) => span.from === hottest.span.from)?.ambient ?? Number.NaN;
  const ambient = Math.round(celsius(Number.isNaN(air) ? of.Ta : air));
  const place = `${places[of.scenario.surroundings.kind]} at ${ambient}\u00A0°C`;
  return { I: hottest.I, place, T: { value: hottest.measured, u }, rating: ratingOf(of.cable) };
}
