import type { Scenario, SupplyStep } from '../scenario/schema.ts';
import { type Load, loadOf, nominalVolts, sourceVolts } from './nominal-load.ts';
import { leadReading } from './predict.ts';
import { type Chain, heatMade, steadyState } from './steady.ts';
import { supplyOf } from './supply.ts';
import { buildCase, conductorResistance, leadResistance, type ThermalCase } from './thermal-case.ts';

/** Volts along a lead that has settled with its load. SI throughout, temperatures in K. */
export interface SettledRun {
  readonly kind: 'settled';
  readonly thermal: ThermalCase;
  readonly load: Load | null;
  /** Volts at the start of the lead, and the nominal ones that a loss is told as a share of [V]. */
  readonly source: number;
  readonly nominal: number;
  /** Length of the run, one way [m]. */
  readonly length: number;
  /** Current round the loop [A]. */
  readonly I: number;
  readonly chain: Chain;
  /** Resistance of the conductors in series round the loop, at 20 °C and as warm as they are [Ω]. */
  readonly cold: number;
  readonly R: number;
  /** Volts lost for each metre of run in one conductor, and in all that are in series [V/m]. */
  readonly lostPerMetre: { readonly out: number; readonly loop: number };
  /** Volts lost along the run and at contacts [V], and that as a share of the nominal volts. */
  readonly lost: number;
  readonly share: number;
  /** Volts between the conductors at the load [V], and what the load takes there [W]. */
  readonly atLoad: number;
  readonly delivered: number;
  /** Heat made along the lead, and at its contacts [W]; the lead's own per metre [W/m]. */
  readonly heat: number;
  readonly contactHeat: number;
  readonly heatPerMetre: number;
}

/** A load that the lead cannot feed. */
export interface NoSuchLoad {
  readonly kind: 'no such load';
  readonly thermal: ThermalCase;
  readonly load: Load;
  readonly source: number;
  /** The most of its kind that the lead passes while it is still at its start temperature: A, or W. */
  readonly mostCold: number;
  /** True where the load can be fed at first, and no longer once the lead has warmed. */
  readonly atFirst: boolean;
}

/** How volts fall along a run; or that no such load exists, or that the metal melts before it settles. */
export type AlongRun = SettledRun | NoSuchLoad | { readonly kind: 'melts first'; readonly thermal: ThermalCase };

/**
 * Volts along the run of a scenario's first supply step in steady state. Current and conductor temperature are found together:
 * the lead is as warm as its own current makes it, and the current is what the load takes behind a lead so warm. A load of
 * constant watts takes the stable root, I = (U − √(U² − 4 P R))/2R, and none where 4 P R > U²; a load of constant amperes is
 * none where the lead alone would take all the volts.
 */
export function alongRun(scenario: Scenario): AlongRun {
  const thermal = buildCase(scenario);
  const source = sourceVolts(scenario);
  const load = loadOf(scenario);
  const supply = supplyOf(thermal, scenario.supply[0] as SupplyStep);
  const steady = steadyState(thermal, supply);
  if (steady.kind === 'steady') {
    const settled = settledRun(thermal, load, source, steady.I, steady.chain);
    if (settled.atLoad >= 0 || load === null) return settled;
  }
  const mostCold = mostPassed(thermal, load, source);
  if (load && (steady.kind === 'steady' || steady.reason === 'supply has no solution' || load.value > mostCold))
    return { kind: 'no such load', thermal, load, source, mostCold, atFirst: load.value <= mostCold };
  return { kind: 'melts first', thermal };
}

function settledRun(of: ThermalCase, load: Load | null, source: number, I: number, chain: Chain): SettledRun {
  const { length, inSeries, contact } = of.lead;
  const { U, heat, contactHeat, R } = leadReading(of, I, chain.conductor);
  const lost = U + I * contact;
  const nominal = nominalVolts[of.scenario.practice ?? 'iec'].value;
  const out = I * conductorResistance(of, chain.conductor);
  return {
    kind: 'settled',
    thermal: of,
    load,
    source,
    nominal,
    length,
    I,
    chain,
    cold: inSeries * length * of.cable.conductor.R20,
    R,
    lostPerMetre: { out, loop: inSeries * out },
    lost,
    share: lost / nominal,
    atLoad: source - lost,
    delivered: (source - lost) * I,
    heat,
    contactHeat,
    heatPerMetre: heatMade(of, I, chain.conductor),
  };
}

/** The most that a load of this kind can take behind the lead at its start temperature: U/R [A], or U²/4R [W]. */
function mostPassed(of: ThermalCase, load: Load | null, U: number): number {
  const R = leadResistance(of, of.T0) + of.lead.contact;
  if (load?.kind === 'amps') return U / R;
  return load?.kind === 'watts' ? U ** 2 / (4 * R) : Number.POSITIVE_INFINITY;
}

/** Volts at one place of a run [V]. */
export interface VoltsAt {
  /** Between the conductors. */
  readonly between: number;
  /** Lost on the way out to here, and on the way back from here. */
  readonly out: number;
  readonly back: number;
}

/** Volts at `x` [m] from the source, in the run or at its end; contacts count at the load. */
export function voltsAt({ source, lostPerMetre: { out, loop } }: SettledRun, x: number): VoltsAt {
  return { between: source - loop * x, out: out * x, back: (loop - out) * x };
}

/**
 * How far volts along a run hold, in words. BS 7671 Appendix 4 leaves reactance out up to 16 mm² (from memory); contacts count
 * only where a case gives them.
 */
export const alongRunHolds = ['settled', 'the source holds its volts', 'reactance left out'] as const;
