import type { ThermalCase } from '../../heating/thermal-case.ts';
import { usualInterval } from '../derived.ts';
import type { LogFit } from '../fit/result.ts';
import type { BenchLog } from '../log.ts';
import type { DeviceCheck } from './device-check.ts';
import type { ReportLock } from './lock-of.ts';

/** What the limits of a test are told from. */
export interface LimitFacts {
  readonly log: BenchLog | null;
  readonly of: ThermalCase | null;
  /** What the model says of itself. */
  readonly model: readonly string[];
  readonly lock: ReportLock;
  readonly fit: LogFit | null;
  readonly device: DeviceCheck | null;
  /** False where the case is not of the sample that was measured. */
  readonly ownCase: boolean;
  /** True where no uncertainties of instruments were handed in. */
  readonly usualInstruments: boolean;
}

/** Share of a lead within 0.3 m of its ends. */
const endLength = 0.3;

/** What a reader must know of how far the test and the model hold, in sentences. */
export function limitsWords(facts: LimitFacts): string[] {
  return [
    'One sample was tested. Nothing is said of others.',
    ...logWords(facts),
    ...lockWords(facts.lock),
    ...caseWords(facts),
    ...fitWords(facts.fit),
    ...deviceWords(facts.device),
    ...facts.model,
  ];
}

function logWords({ log, of, usualInstruments }: LimitFacts): string[] {
  if (!log) return [];
  const ends = of ? Math.round(100 * Math.min(1, (2 * endLength) / of.lead.length)) : 0;
  return [
    ...(log.simulated ? ['The log is simulated. It shows what the model does, and nothing of a sample.'] : []),
    ...(usualInstruments
      ? ['Instruments are taken as usual hand-held ones: volts ± 0.5 %, current ± 1 %, sheath ± 1 K, air ± 0.5 K.']
      : []),
    'A conductor’s temperature is the mean of the whole lead, by its resistance. A short hot place hardly shows in it.',
    ...(ends > 0 ? [`${ends}\u00A0% of the lead lies within 0.3\u00A0m of an end, and runs cooler.`] : []),
    ...(log.ambient ? [] : ['No thermometer read the air. The case’s own figure is used.']),
    ...(usualInterval(log) > 60
      ? ['Readings lie more than a minute apart. What happened between them is not known.']
      : []),
    ...(log.startedAt === null ? ['The log tells no date.'] : []),
  ];
}

function lockWords({ state, before }: ReportLock): string[] {
  if (state !== 'locked')
    return ['No locked prediction stands. What is compared here was computed after the readings.'];
  if (before === false) return ['The readings began before the prediction was locked. They do not test it.'];
  return before === null ? ['Whether the readings came after the lock cannot be told from the log.'] : [];
}

function caseWords({ ownCase, of }: LimitFacts): string[] {
  if (!of || ownCase) return [];
  return [
    'The case that was computed has another resistance than the sample, or none was measured. No verdict rests on it.',
  ];
}

function fitWords(fit: LogFit | null): string[] {
  if (!fit) return [];
  const names = fit.parameters.filter(({ state }) => state !== 'held').map(({ name }) => name);
  const used = names.length > 0 ? [`Temperatures by resistance are read with ${names.join(' and ')} as fitted.`] : [];
  return [...used, ...fit.words.map(({ text }) => text)];
}

function deviceWords(device: DeviceCheck | null): string[] {
  if (!device) return [];
  return [
    `The device is judged for a load of ${Number(device.Ib.toPrecision(3))}\u00A0A, in the place of the test, up to ${device.prospective}\u00A0A.`,
    'A lead that is wound, covered or in warmer air passes its rating at less.',
  ];
}
