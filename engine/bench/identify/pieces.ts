import { within } from '../../errors.ts';
import { resistanceRatio, T20 } from '../../material/resistivity.ts';
import type { Measured } from '../measured.ts';
import type { Evidence, MassEvidence, ResistanceEvidence, StrandEvidence } from './evidence.ts';
import type { Priors } from './priors.ts';
import { combined, logDensity, part } from './student.ts';

/**
 * What a measured piece says of one quantity: the logarithm of its likelihood over the natural logarithm of the quantity,
 * about where it is greatest, and how wide it is there.
 */
export interface LnPiece {
  log(x: number): number;
  readonly centre: number;
  readonly width: number;
}

const positive = (what: string, { value, u }: Measured, unit: string, least = 0): void => {
  within(what, value, [Number.MIN_VALUE, Number.MAX_VALUE], unit);
  within(`standard uncertainty of ${what}`, u, [least, Number.MAX_VALUE], unit);
};
/** Relative standard uncertainty of the diameter of a wire, however well it is gauged: none is rounder. Our choice. */
const unround = 2e-4;
const doubted = Number.MIN_VALUE; // a measured value without any doubt is a caller's mistake

/** Whether the conductor is one solid wire: its only strand was counted. */
export const isSolid = ({ strands }: Evidence): boolean => strands?.count?.value === 1 && strands.count.u === 0;

/** Strands over the metal area [ln m²]: d = √(4A/(πn)). Null where the count or the diameter is missing. */
export function strandsPiece({ count, diameter }: StrandEvidence): LnPiece | null {
  if (count) positive('the count of strands', count, 'strands');
  if (diameter) positive('the diameter of a strand', diameter, 'm', doubted);
  if (!count || !diameter) return null;
  const perArea = 4 / (Math.PI * count.value);
  const byCount = 0.5 / count.value;
  const log = (x: number) => {
    const d = Math.sqrt(perArea * Math.exp(x));
    const { u, dof } = combined([part(diameter), part(count, d * byCount), { u: d * unround }]);
    return logDensity(diameter.value - d, u, dof);
  };
  const { u } = combined([part(diameter, 1 / diameter.value), part(count, byCount), { u: unround }]);
  return { log, centre: Math.log(diameter.value ** 2 / perArea), width: 2 * u };
}

/** Bundle diameter over the metal area [ln m²]: D = √(4A/(π·fill)); a solid wire fills its circle. */
export function bundlePiece(bundle: Measured, solid: boolean, { fill }: Priors): LnPiece {
  positive('the diameter of the bundle', bundle, 'm', doubted);
  const [mean, uFill] = solid ? [1, 0] : fill.value;
  const byFill = Math.hypot(uFill / (2 * mean), unround);
  const log = (x: number) => {
    const D = Math.sqrt((4 * Math.exp(x)) / (Math.PI * mean));
    const { u, dof } = combined([part(bundle), { u: D * byFill }]);
    return logDensity(bundle.value - D, u, dof);
  };
  const centre = Math.log((Math.PI / 4) * mean * bundle.value ** 2);
  return { log, centre, width: 2 * Math.hypot(bundle.u / bundle.value, byFill) };
}

/** Mass over the mass per metre of core [ln kg/m]. */
export function massPiece({ mass, length }: MassEvidence): LnPiece {
  positive('the mass', mass, 'kg', doubted);
  positive('the length that was weighed', length, 'm');
  const log = (x: number) => {
    const perMetre = Math.exp(x);
    const { u, dof } = combined([part(mass), part(length, perMetre)]);
    return logDensity(mass.value - perMetre * length.value, u, dof);
  };
  const width = Math.hypot(mass.u / mass.value, length.u / length.value);
  return { log, centre: Math.log(mass.value / length.value), width };
}

/** Temperature coefficient of a metal with its standard uncertainty [1/K]. */
export interface Coefficient {
  readonly alpha20: number;
  readonly uAlpha: number;
}

/** Resistance over that of a metre of core at 20 °C [ln Ω/m], for a metal of that temperature coefficient. */
export function resistancePiece(of: ResistanceEvidence, { alpha20, uAlpha }: Coefficient, priors: Priors): LnPiece {
  const { R, length, inSeries, temperature, method, testLeads } = of;
  positive('the resistance', R, 'Ω', doubted);
  positive('the length', length, 'm');
  positive('the temperature', temperature, 'K');
  within('cores in series', inSeries, [1, 100], 'cores');
  const ratio = resistanceRatio(alpha20, 0, temperature.value);
  const metresAt20 = inSeries * length.value * ratio;
  const relative = [
    part(length, 1 / length.value),
    part(temperature, alpha20 / ratio),
    { u: (uAlpha * Math.abs(temperature.value - T20)) / ratio },
  ];
  const leads = method === 'two-terminal' ? (testLeads ?? null) : { value: 0, u: 0 };
  const spread = (loop: number) =>
    combined([part(R), ...relative.map(({ u, dof }) => ({ u: u * loop, dof })), ...(leads ? [part(leads)] : [])]);
  const known = (x: number) => {
    const loop = metresAt20 * Math.exp(x);
    const { u, dof } = spread(loop);
    return logDensity(R.value - loop - (leads?.value ?? 0), u, dof);
  };
  const unknown = (x: number) => {
    const loop = metresAt20 * Math.exp(x);
    const { u, dof } = spread(loop);
    return overLeads(R.value - loop, u, dof, priors);
  };
  const [usual, factor] = priors.testLeads.value;
  const loop = Math.max(R.value - (leads?.value ?? usual), R.value / 20);
  const u = Math.hypot(spread(loop).u, leads ? 0 : usual * Math.log(factor));
  return { log: leads ? known : unknown, centre: Math.log(loop / metresAt20), width: u / loop };
}

const leadSteps = 33; // quarter of a standard uncertainty of the leads' spread, four to each side
const errorSteps = 17; // half a standard uncertainty of the reading, four to each side

/** Likelihood of a reading that is `rest` [Ω] above the loop, `u` its standard uncertainty: the leads' own share is integrated out. */
function overLeads(rest: number, u: number, dof: number, { testLeads }: Priors): number {
  const [median, factor] = testLeads.value;
  const s = Math.log(factor);
  let sum = 0;
  if (u > (median * s) / 4) {
    // the reading is the wider of the two: steps of the leads
    for (let i = 0; i < leadSteps; i++) {
      const z = (i - (leadSteps - 1) / 2) / 4;
      sum += Math.exp(logDensity(rest - median * Math.exp(s * z), u, dof) - (z * z) / 2) / 4;
    }
    return Math.log(sum / Math.sqrt(2 * Math.PI));
  }
  for (let i = 0; i < errorSteps; i++) {
    const z = (i - (errorSteps - 1) / 2) / 2;
    const lead = rest - u * z;
    if (lead <= 0) continue;
    const depth = Math.log(lead / median) / s;
    sum += Math.exp(logDensity(z, 1, dof) - (depth * depth) / 2) / (2 * s * lead);
  }
  return Math.log(sum / Math.sqrt(2 * Math.PI));
}
