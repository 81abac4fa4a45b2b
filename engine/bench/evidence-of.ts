import { kelvin, metres } from '../quantity.ts';
import type { Evidence, ResistanceEvidence } from './identify/evidence.ts';
import type { FoundOnLead } from './job-schema.ts';
import type { Measured } from './measured.ts';

// What was typed about a lead, as evidence with uncertainties. Where an instrument is not told more exactly, it is taken as a usual one.

/** How well the usual instruments tell, standard uncertainties: shares of the reading [1] unless said otherwise. Own choice, after usual data sheets. */
export const usualReadings = {
  /** Volts and amperes at four terminals: 0.5 % + 2 digits and 1 % + 3 digits of hand-held meters, rectangular. */
  voltsOverAmps: 0.0075,
  /** An instrument with four leads that shows ohms. */
  fourTerminalOhms: 0.004,
  /** A hand-held meter's ohms: 0.9 %, and two digits of 0.1 Ω, both rectangular; the second in ohms. */
  twoTerminalOhms: 0.0052,
  twoTerminalDigits: 0.115,
  /** Shorted test leads, read once [Ω]. */
  shortedLeads: 0.06,
  length: 0.003,
  /** Conductor taken at the air's temperature [K]. */
  temperature: 1,
  /** A micrometer or a calliper on one thin wire [m]. */
  strand: 6e-6,
  /** A soft bundle, gauged. */
  bundle: 0.03,
  /** A kitchen scale [kg], and the length that was stripped. */
  scale: 0.5e-4,
  strippedLength: 0.003,
} as const;

const share = (value: number, part: number): Measured => ({ value, u: Math.abs(value) * part });

/** Evidence of what was found, SI, each value with its standard uncertainty; what was not typed is left out. */
export function evidenceOf(found: FoundOnLead): Evidence {
  const { resistance, strands, bundle_mm, mass, magnet, skin, under, marking } = found;
  const read = resistance && resistanceOf(resistance);
  const diameter = strands?.diameter_mm;
  return {
    ...(read && { resistance: read }),
    ...(strands && {
      strands: {
        ...(strands.count !== undefined && { count: { value: strands.count, u: 0 } }),
        ...(diameter !== undefined && { diameter: { value: metres(diameter), u: usualReadings.strand } }),
      },
    }),
    ...(bundle_mm !== undefined && { bundle: share(metres(bundle_mm), usualReadings.bundle) }),
    ...(mass && {
      mass: {
        mass: { value: mass.mass_g * 1e-3, u: usualReadings.scale },
        length: share(mass.length_m, usualReadings.strippedLength),
      },
    }),
    ...(magnet && { magnet }),
    ...(skin && { skin: { colour: skin } }),
    ...(under && { under: { colour: under } }),
    ...(marking && {
      marking: {
        ...(marking.size_mm2 !== undefined && { size_mm2: marking.size_mm2 }),
        ...(marking.size_AWG !== undefined && { size_AWG: marking.size_AWG }),
        ...(marking.material && { material: marking.material }),
      },
    }),
  };
}

/** The resistance as read, or volts over amperes; none where neither is complete. */
function resistanceOf(told: NonNullable<FoundOnLead['resistance']>): ResistanceEvidence | undefined {
  const { method, length_m, T_degC, cores, testLeads_ohm } = told;
  const R = ohmsOf(told);
  if (!R || !(R.value > 0)) return undefined;
  return {
    ...{ R, method, inSeries: cores },
    length: share(length_m, usualReadings.length),
    temperature: { value: kelvin(T_degC), u: usualReadings.temperature },
    ...(method === 'two-terminal' &&
      testLeads_ohm !== undefined && { testLeads: { value: testLeads_ohm, u: usualReadings.shortedLeads } }),
  };
}

function ohmsOf({ R_ohm, U_V, I_A, method }: NonNullable<FoundOnLead['resistance']>): Measured | undefined {
  if (R_ohm === undefined) return U_V !== undefined && I_A ? share(U_V / I_A, usualReadings.voltsOverAmps) : undefined;
  if (method === 'four-terminal') return share(R_ohm, usualReadings.fourTerminalOhms);
  return { value: R_ohm, u: Math.hypot(R_ohm * usualReadings.twoTerminalOhms, usualReadings.twoTerminalDigits) };
}
