import { conductorByResistance } from '../../heating/by-resistance.ts';
import { heatMade, steadyFlow } from '../../heating/steady.ts';
import { buildCase, leadResistance, type ThermalCase } from '../../heating/thermal-case.ts';
import { T20 } from '../../material/resistivity.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { ringResistance } from '../../surroundings/outside.ts';
import type { FitWords } from './result.ts';

/** Readings at one moment, best at a plateau. SI, temperatures in K. */
export interface DifferenceQuestion {
  readonly scenario: Scenario;
  /** Current in each loaded core [A], and volts over it [Ω]; contacts that the case knows are taken off. */
  readonly I: number;
  readonly R: number;
  readonly uR: number;
  /** A probe at the middle of the lead, on its sheath. */
  readonly probe: number;
  readonly uProbe: number;
  readonly ambient: number;
  /** How fast the probe's reading rises [K/s], and its time constant where it is known [s]; 0 at a plateau. */
  readonly rate?: number;
  readonly lag?: number;
}

/** What is likely behind a difference that is not explained. */
export type DifferenceCause = 'explained' | 'lag' | 'loose probe or contact resistance' | 'hot spot at the probe';

/** Why the mean by resistance and a probe differ. Temperatures and differences in K. */
export interface Difference {
  /** Mean of the lead by its resistance, and that less the probe, with its standard uncertainty. */
  readonly byResistance: number;
  readonly difference: number;
  readonly u: number;
  /** Predicted from conductor to surface at this heat [K]. */
  readonly inner: number;
  /** How much warmer the middle is than the mean, if both ends are at ambient: the most the ends can do [K]. */
  readonly ends: number;
  /** Length over which an end's coolness falls to a third (1/e) [m]; share (0 to 1) of the lead within 0.3 m of its ends. */
  readonly reach: number;
  readonly endShare: number;
  /** By how much the probe is behind, if its lag is known [K]. */
  readonly behind: number;
  /** What is left of the difference. */
  readonly left: number;
  /** Kelvins that a milliohm of unknown contact adds to the mean by resistance. */
  readonly perMilliohm: number;
  readonly cause: DifferenceCause;
  readonly words: readonly FitWords[];
}

/** The cable within this of an end is not the cable's own [m]. */
const endLength = 0.3;
/** Rate from which a probe's lag can be behind a difference [K/s]: half a kelvin a minute. */
const moving = 0.5 / 60;

/**
 * Explains why a lead's mean temperature by resistance differs from one probe on its sheath: the fall from conductor to surface
 * at this heat, the cooler ends, and what is left. Ends are a fin: a cable that conducts along itself with kA and sheds g a
 * metre and kelvin cools towards ends at ambient as cosh(mx), m² = g/kA, and its mean rise is the middle's times
 * (1 − tanh(z)/z)/(1 − 1/cosh(z)), z = mL/2. Null where the resistance names no temperature.
 */
export function explainDifference(question: DifferenceQuestion): Difference | null {
  const { scenario, I, R, uR, probe, uProbe, ambient, rate = 0, lag = 0 } = question;
  const of = buildCase({ ...scenario, surroundings: { ...scenario.surroundings, ambient_degC: celsius(ambient) } });
  const T = conductorByResistance(of, R - of.lead.contact);
  if (T === null) return null;
  const { alpha20, beta20 } = of.cable.conductor;
  const perOhm = 1 / (leadResistance(of, T20) * (alpha20 + 2 * beta20 * (T - T20)));
  const inner = heatMade(of, I, T) * innerResistance(of);
  const { ends, reach } = endEffect(of, I, T);
  const behind = lag * rate;
  const difference = T - probe;
  const left = difference - (inner - ends + behind);
  const u = Math.hypot(uR * Math.abs(perOhm), uProbe, inner * innerShare(of), ends / 2);
  const answer = {
    byResistance: T,
    difference,
    u,
    inner,
    ends,
    reach,
    endShare: Math.min(1, (2 * endLength) / of.lead.length),
    behind,
    left,
    perMilliohm: perOhm * 1e-3,
    cause: causeOf(left, u, rate),
  };
  return { ...answer, words: differenceWords(answer, rate) };
}

function causeOf(left: number, u: number, rate: number): DifferenceCause {
  if (Math.abs(left) <= 2 * u) return 'explained';
  if (Math.abs(rate) > moving && left * rate > 0) return 'lag';
  return left > 0 ? 'loose probe or contact resistance' : 'hot spot at the probe';
}

/** Thermal resistance of the cable's own rings, conductor to surface [K·m/W]. */
function innerResistance({ rings, outside }: ThermalCase): number {
  const own = rings.slice(0, rings.length - outside.rings.length);
  return own.reduce((sum, ring) => sum + ringResistance(ring), 0);
}

/** Its standard uncertainty as a share, that of the insulation's thermal resistivity. */
function innerShare({ cable: { insulation } }: ThermalCase): number {
  return insulation ? insulation.rhoT.u / insulation.rhoT.value : 0;
}

/** Heat that the cable conducts along itself per gradient [W·m/K]: all its cores, which are longer than it is, and its plastics. */
function alongCable({ cable }: ThermalCase): number {
  const { conductor, cores, insulation, sheath, plasticArea, outerRadius, bodyRadius } = cable;
  const metal = (cores * conductor.metal.conductivity.value * conductor.area) / conductor.lay;
  const body = insulation ? plasticArea / insulation.rhoT.value : 0;
  const jacket = sheath ? (Math.PI * (outerRadius ** 2 - bodyRadius ** 2)) / sheath.rhoT.value : 0;
  return metal + body + jacket;
}

/** How much warmer the middle is than the mean, and the reach of an end. */
function endEffect(of: ThermalCase, I: number, T: number): { ends: number; reach: number } {
  const { alpha20, beta20 } = of.cable.conductor;
  const gap = 0.1;
  const shed = (steadyFlow(of, T + gap) - steadyFlow(of, T - gap)) / (2 * gap);
  const fed = of.n * I * I * of.cable.conductor.R20 * (alpha20 + 2 * beta20 * (T - T20));
  const m = Math.sqrt(Math.max(shed - fed, 1e-3 * shed) / alongCable(of));
  const z = (m * of.lead.length) / 2;
  const share = (1 - Math.tanh(z) / z) / (1 - 1 / Math.cosh(z)); // mean rise over the middle's
  return { ends: (T - of.Ta) * (1 / share - 1), reach: 1 / m };
}

const kelvins = (x: number) => `${Math.abs(x) < 9.95 ? x.toFixed(1) : x.toFixed(0)} K`;

function differenceWords(answer: Omit<Difference, 'words'>, rate: number): FitWords[] {
  const { difference, inner, ends, reach, endShare, behind, left, u, perMilliohm, cause } = answer;
  const words = [
    {
      id: 'what',
      text: 'Resistance gives the mean of the whole lead, ends and contacts in it. A probe gives one spot of the sheath.',
    },
    { id: 'inner', text: `At this heat the sheath lies ${kelvins(inner)} below the conductor.` },
    {
      id: 'ends',
      text: `Ends at ambient make the middle up to ${kelvins(ends)} warmer than the mean. Each reaches about ${(100 * reach).toFixed(0)} cm inward.`,
    },
    { id: 'end share', text: `${(100 * endShare).toFixed(0)} % of this lead lies within 0.3 m of an end.` },
    ...(behind === 0 ? [] : [{ id: 'behind', text: `The probe’s lag keeps it ${kelvins(behind)} behind.` }]),
    {
      id: 'left',
      text: `Of ${kelvins(difference)} measured, ${kelvins(left)} is left, with a standard uncertainty of ${kelvins(u)}.`,
    },
  ];
  return [...words, { id: 'cause', text: causeText(cause, left, rate, perMilliohm) }];
}

function causeText(cause: DifferenceCause, left: number, rate: number, perMilliohm: number): string {
  switch (cause) {
    case 'explained':
      return 'Nothing is left to explain.';
    case 'lag':
      return `The reading is still moving. A probe lag of about ${(left / rate).toFixed(0)} s would explain what is left.`;
    case 'loose probe or contact resistance':
      return `The probe reads ${kelvins(left)} too low: it may sit loose. Or ${Math.abs(left / perMilliohm).toFixed(1)} mΩ of contact is in the resistance.`;
    case 'hot spot at the probe':
      return `The probe reads ${kelvins(-left)} too high: the lead may have a hot spot there.`;
  }
}
