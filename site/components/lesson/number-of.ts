import {
  awgArea,
  awgDiameter,
  celsius,
  kelvin,
  metals,
  plastics,
  ratingInPlace,
  tableCurrentNeeded,
  timeToBurn,
  touchLimit,
} from '#engine';
import { burnWords } from '../../lib/burn-words.ts';
import {
  fixed,
  type Practice,
  quantity,
  rise,
  significant,
  temperature,
  thin,
  three,
  timeInWords,
} from '../../lib/format.ts';
import { perLength } from '../../widgets/figure/length-words.ts';
import { caseKinds, caseValue } from './case-value.ts';
import { deviceValue } from './device-numbers.ts';
import { type DeviceBandNumber, isDeviceBand } from './device-props.ts';
import { faultValue } from './fault-numbers.ts';
import { type FaultNumber, isFault } from './fault-props.ts';
import { ageingValue, factorsFor } from './life-and-factors.ts';
import {
  type AgeingNumber,
  ageingNumbers,
  type CaseNumber,
  type FactorNumber,
  factorNumbers,
  type NumProps,
} from './num-props.ts';
import { protectionWords } from './protection-numbers.ts';
import { isProtection, type ProtectionNumber } from './protection-props.ts';
import { suspectValue } from './suspect-numbers.ts';
import { isSuspect, type SuspectNumber } from './suspect-props.ts';

/**
 * A number of the prose in words with its unit, as the engine computes it: temperatures in whole degrees, times to two
 * figures, resistance, volts and watts to three. Throws when there is no such number, so that a page never prints one that
 * is not there. `practice` is the reader's: with `na`, °F stands beside °C.
 */
export function numberOf(spec: NumProps, practice: Practice = 'iec'): string {
  if ('value' in spec) return givenNumber(spec.value, spec.unit, practice);
  if (spec.of === 'limit') return limitWords(spec, practice);
  if (spec.of === 'absolute') return quantity(kelvin(spec.at), 'K', 2);
  if (spec.of === 'time to burn') return burnWords(timeToBurn(spec.surface, kelvin(spec.at)));
  if (isAgeing(spec)) return ageingWords(spec);
  if (isFactor(spec)) return factorWords(spec, practice);
  if (isCircuit(spec)) return protectionWords(spec, practice);
  if (isOfDevice(spec)) return deviceValue(spec, practice).told;
  if (isOfFault(spec)) return faultValue(spec, practice).told;
  if (isOfSuspect(spec)) return suspectValue(spec, practice).told;
  if ('gauge' in spec)
    return spec.of === 'gauge area'
      ? three(awgArea(spec.gauge) * 1e6, 'mm²')
      : three(awgDiameter(spec.gauge) * 1e3, 'mm');
  if (!('cast' in spec)) return metalWords(spec);
  const value = caseValue(spec);
  if (spec.timesAt !== undefined) return timesWords(value / caseValue({ ...spec, amps: spec.timesAt }));
  return caseWordsOf(spec, value, practice);
}

const isAgeing = (spec: Exclude<NumProps, { value: number }>): spec is AgeingNumber =>
  (ageingNumbers as readonly string[]).includes(spec.of);
const isFactor = (spec: Exclude<NumProps, { value: number }>): spec is FactorNumber =>
  (factorNumbers as readonly string[]).includes(spec.of);

const isOfDevice = (spec: Exclude<NumProps, { value: number }>): spec is DeviceBandNumber => isDeviceBand(spec);
const isOfFault = (spec: Exclude<NumProps, { value: number }>): spec is FaultNumber => isFault(spec);
const isOfSuspect = (spec: Exclude<NumProps, { value: number }>): spec is SuspectNumber => isSuspect(spec);
const isCircuit = (spec: Exclude<NumProps, { value: number }>): spec is ProtectionNumber => isProtection(spec);

/** A number that the case is given by, not computed: '20 A', '3 min', '63 %'. */
function givenNumber(value: number, unit: string, practice: Practice): string {
  const places = (String(value).split('.')[1] ?? '').length;
  if (unit === '°C') return temperature(value, practice, places);
  return quantity(value, unit, places);
}

function limitWords({ kind, insulation = 'pvc70' }: Extract<NumProps, { of: 'limit' }>, practice: Practice): string {
  const limit = kind === 'touch' ? touchLimit : plastics[insulation].limits.find((one) => one.kind === kind);
  if (!limit) throw new Error(`${insulation} has no limit of the kind ${kind}`);
  const low = temperature(celsius(limit.low), practice);
  return limit.high > limit.low ? `${low} to ${temperature(celsius(limit.high), practice)}` : low;
}

function metalWords({ of, metal }: Extract<NumProps, { of: 'resistivity' | 'coefficient' | 'conductivity' }>): string {
  const { rho20, alpha20 } = metals[metal];
  if (of === 'resistivity') return three(rho20.value * 1e9, 'nΩ·m');
  if (of === 'coefficient') return `${significant(alpha20.value * 100, 3)}${thin}%`;
  return `${significant((100 * metals.copper.rho20.value) / rho20.value, 3)}${thin}%`;
}

/** Hours to two figures, as estimates are told; how many times as fast; a step in kelvin. */
function ageingWords(spec: AgeingNumber): string {
  const value = ageingValue(spec);
  if (spec.of === 'life') return quantity(roughly(value / 3600), 'h', 0);
  return spec.of === 'ageing' ? timesWords(value) : riseWords(value);
}

/** One factor as tables print it, to a hundredth; a product of several and a current to three figures. */
function factorWords(spec: FactorNumber, practice: Practice): string {
  const factors = factorsFor(spec, practice);
  if (spec.device !== undefined) return three(tableCurrentNeeded(spec.device, factors), 'A');
  if (spec.table !== undefined) return three(ratingInPlace(spec.table, factors), 'A');
  const product = ratingInPlace(1, factors);
  return factors.length === 1 ? fixed(product, 2) : significant(product, 3);
}

const timesWords = (ratio: number): string => `${significant(ratio, 2)}${thin}times`;

/** A time to two figures, as estimates are told [s]. */
const roughly = (t: number): number => Number(significant(t, 2).replaceAll(thin, ''));

/** A value of `spec`'s kind, SI, in words. */
export function caseWordsOf({ of, about }: CaseNumber, value: number, practice: Practice): string {
  switch (caseKinds[of]) {
    case 'temperature':
      return temperature(celsius(value), practice);
    case 'temperature rise':
      return riseWords(value);
    case 'time':
      return timeInWords(about ? 60 * Math.max(1, Math.round(value / 60)) : roughly(value));
    case 'current':
      if (about) return `${significant(value, 2)}${thin}A`;
      return of === 'runaway current' || of === 'table rating' ? quantity(value, 'A', 0) : three(value, 'A');
    case 'heat per metre':
      return three(value, 'W/m');
    case 'power':
      return three(value, 'W');
    case 'voltage':
      return three(value, 'V');
    case 'resistance':
      return ohms(value);
    case 'resistance per metre':
      return resistancePerLength(value, practice);
    case 'area':
      return three(value * 1e6, 'mm²');
    case 'length':
      return three(value * 1e3, 'mm');
  }
}

/** A rise in whole kelvin, or with a tenth where it is small enough for that to matter. */
const riseWords = (dT: number): string => rise(dT, dT < 9.5 ? 1 : 0);

/** A metre's resistance [Ω/m]: with `na`, Ω for a thousand feet beside it. */
function resistancePerLength(R: number, practice: Practice): string {
  const metre = three(R * 1e3, 'mΩ/m');
  if (practice === 'iec') return metre;
  const { value, unit } = perLength(R, practice);
  return `${metre} (${three(value, unit)})`;
}

const ohms = (R: number): string => (R < 1 ? three(R * 1e3, 'mΩ') : three(R, 'Ω'));
