import type { ProbePlace } from '../log.ts';
import type { ColumnQuantity, TimeForm } from './types.ts';

/** What a column of our own logs is: the header says it whole. */
export interface OwnColumn {
  readonly quantity: ColumnQuantity;
  readonly unit: string;
  readonly name: string;
  readonly form?: TimeForm;
  readonly place?: ProbePlace;
}

/** Headers of our own logs, in their order; probes and ambient thermometers are numbered from 1, and the last three are at the end. */
export const ownHeaders = {
  at: 'time_ISO',
  t: 'elapsed_s',
  step: 'step',
  set: 'I_set_A',
  I: 'I_A',
  U: 'U_lead_V',
  R: 'R_ohm',
  byR: 'theta_from_R_degC',
  predicted: 'predicted_theta_degC',
  difference: 'difference_K',
  /** Only where an ohmmeter or a wattmeter was read beside the others. */
  meterR: 'R_meter_ohm',
  meterP: 'P_meter_W',
  remark: 'event_remark',
  initials: 'initials',
  origin: 'origin',
} as const;

const fixed: Readonly<Record<string, OwnColumn>> = {
  [ownHeaders.at]: { quantity: 'time', unit: '', name: 'time', form: 'date-time' },
  [ownHeaders.t]: { quantity: 'time', unit: 's', name: 'elapsed', form: 'elapsed' },
  [ownHeaders.step]: { quantity: 'step', unit: '', name: 'step' },
  [ownHeaders.set]: { quantity: 'set current', unit: 'A', name: 'I set' },
  [ownHeaders.I]: { quantity: 'I', unit: 'A', name: 'I' },
  [ownHeaders.U]: { quantity: 'U', unit: 'V', name: 'U lead' },
  [ownHeaders.R]: { quantity: 'ignored', unit: 'Ω', name: 'R' },
  [ownHeaders.byR]: { quantity: 'ignored', unit: '°C', name: 'θ from R' },
  [ownHeaders.predicted]: { quantity: 'ignored', unit: '°C', name: 'predicted θ' },
  [ownHeaders.difference]: { quantity: 'ignored', unit: 'K', name: 'difference' },
  [ownHeaders.meterR]: { quantity: 'R', unit: 'Ω', name: 'R meter' },
  [ownHeaders.meterP]: { quantity: 'P', unit: 'W', name: 'P meter' },
  [ownHeaders.remark]: { quantity: 'remark', unit: '', name: 'remark' },
  [ownHeaders.initials]: { quantity: 'ignored', unit: '', name: 'initials' },
  [ownHeaders.origin]: { quantity: 'origin', unit: '', name: 'origin' },
};

const places: readonly ProbePlace[] = ['surface', 'outside', 'plug', 'other'];
const probe = /^theta_probe_(\d+)_degC(?: @(\w+): ([\s\S]*))?$/;

/** Header of the probe number `i` from 1: a thermometer on the surface called 'probe i' needs no more words. */
export function probeHeader(i: number, name: string, place: ProbePlace): string {
  const usual = name === usualName(i) && place === 'surface';
  return `theta_probe_${i}_degC${usual ? '' : ` @${place}: ${name}`}`;
}

/** What a thermometer is called where nobody named it. */
export const usualName = (i: number): string => `probe ${i}`;

/** The meaning of a header of our own; undefined where it is none. */
export function ownColumn(header: string): OwnColumn | undefined {
  const known = fixed[header];
  if (known) return known;
  const [, number, place, name] = probe.exec(header) ?? [];
  if (number !== undefined) {
    const named = places.find((one) => one === place) ?? 'surface';
    return { quantity: 'probe', unit: '°C', name: name ?? usualName(Number(number)), place: named };
  }
  return /^theta_ambient_\d+_degC$/.test(header) ? { quantity: 'ambient', unit: '°C', name: 'ambient' } : undefined;
}

/** Whether these headers are those of our own log. */
export const isOwnHeader = (headers: readonly string[]): boolean =>
  [ownHeaders.t, ownHeaders.I, ownHeaders.U, ownHeaders.origin].every((header) => headers.includes(header));
