import type { ColumnQuantity, LogColumn, LogMapping, ProbePlace, TimeForm } from '#engine';
import type { Option } from '../../../controls/options.ts';

/** What a column can be, in words. */
export const quantities: readonly Option<ColumnQuantity>[] = [
  { value: 'time', label: 'time' },
  { value: 'I', label: 'current' },
  { value: 'U', label: 'volts across the lead' },
  { value: 'probe', label: 'sheath or other probe' },
  { value: 'ambient', label: 'air beside it' },
  { value: 'set current', label: 'current that was set' },
  { value: 'step', label: 'number of the step' },
  { value: 'remark', label: 'remark' },
  { value: 'R', label: 'resistance, by an ohmmeter' },
  { value: 'P', label: 'power, by a wattmeter' },
  { value: 'origin', label: 'measured or simulated' },
  { value: 'ignored', label: 'not used' },
];

const units: Partial<Record<ColumnQuantity, readonly string[]>> = {
  I: ['A', 'mA', 'kA', 'V', 'mV'],
  U: ['V', 'mV', 'kV'],
  R: ['Ω', 'mΩ', 'µΩ', 'kΩ'],
  P: ['W', 'mW', 'kW'],
  probe: ['°C', '°F', 'K'],
  ambient: ['°C', '°F', 'K'],
  'set current': ['A', 'mA'],
};
const times = ['s', 'ms', 'min', 'h'];

/** The units a column can be in; none where it needs none. The one it has is among them. */
export function unitOptions({ quantity, form, unit }: LogColumn): Option<string>[] {
  const known = quantity === 'time' ? (form === 'elapsed' && unit !== '' ? times : []) : (units[quantity] ?? []);
  const all = known.length === 0 || known.includes(unit) ? known : [...known, unit];
  return all.map((value) => ({ value, label: value === '' ? 'no unit' : value }));
}

/** How time can be written. */
export const forms: readonly Option<TimeForm>[] = [
  { value: 'date-time', label: 'date and time of day' },
  { value: 'date', label: 'date' },
  { value: 'clock', label: 'time of day' },
  { value: 'elapsed', label: 'time since the start' },
  { value: 'epoch', label: 'seconds since 1970' },
  { value: 'sample', label: 'number of the row' },
];

/** Where a probe can sit. */
export const places: readonly Option<ProbePlace>[] = [
  { value: 'surface', label: 'on the sheath' },
  { value: 'outside', label: 'outside a cover' },
  { value: 'plug', label: 'at a plug or terminal' },
  { value: 'other', label: 'elsewhere, or not known' },
];

const inOptions = <T extends string>(options: readonly Option<T>[], value: T | undefined): string =>
  options.find((option) => option.value === value)?.label ?? '';

/** What a column is taken for, in words: 'Probe on the sheath, in °C'. */
export function takenWords({ quantity, unit, form, place }: LogColumn): string {
  const unitWords = unit !== '' && quantity !== 'ignored' && quantity !== 'remark' ? `, in ${unit}` : '';
  if (quantity === 'probe') return `Probe ${inOptions(places, place ?? 'other')}${unitWords}`;
  const name = inOptions(quantities, quantity);
  const more = quantity === 'time' && form ? `, as ${inOptions(forms, form)}` : '';
  return name.charAt(0).toUpperCase() + name.slice(1) + more + unitWords;
}

/** How sure a guess is. */
export function sureWords({ confidence }: LogColumn): 'sure' | 'likely' | 'a guess' {
  if (confidence >= 0.9) return 'sure';
  return confidence >= 0.6 ? 'likely' : 'a guess';
}

const delimiters: Readonly<Record<string, string>> = {
  ',': 'commas',
  ';': 'semicolons',
  '\t': 'tabs',
  '|': 'bars',
  ' ': 'spaces',
};
const names: Partial<Record<ColumnQuantity, string>> = {
  I: 'current',
  U: 'volts',
  R: 'resistance',
  P: 'power',
  probe: 'probe',
  ambient: 'air',
};
const order: readonly ColumnQuantity[] = [
  'time',
  'I',
  'U',
  'probe',
  'ambient',
  'R',
  'P',
  'set current',
  'step',
  'remark',
];

/** What a file was taken for, in two sentences. */
export function mappingSentence({ dialect, columns, own }: LogMapping): string {
  const counted = order.flatMap((quantity) => {
    const n = columns.filter((column) => column.quantity === quantity).length;
    const name = names[quantity] ?? quantity;
    return n === 0 ? [] : [n > 1 && quantity !== 'time' ? `${n} ${name}s` : name];
  });
  const cells = delimiters[dialect.delimiter] ?? `'${dialect.delimiter}'`;
  const written = own
    ? 'A log in this site’s own columns.'
    : `Cells apart by ${cells}, decimal ${dialect.decimal === ',' ? 'comma' : 'point'}.`;
  const unused = columns.filter(({ quantity }) => quantity === 'ignored').length;
  return `${written} Found: ${counted.join(', ')}${unused > 0 ? `; ${unused} not used` : ''}.`;
}

/** Why a file cannot be read so yet; empty where it can. */
export function mappingLack({ columns, dialect }: LogMapping): string {
  const has = (quantity: ColumnQuantity) => columns.some((column) => column.quantity === quantity);
  if (columns.length === 0) return 'No row of readings was found in this file. Is it a text file with columns?';
  if (!has('I')) return 'Name the column that holds the current.';
  if (needsInterval({ columns, dialect }) && dialect.interval === null)
    return 'Say how much time lies between two rows.';
  return '';
}

/** Whether time must be counted by rows. */
export function needsInterval({ columns }: Pick<LogMapping, 'columns' | 'dialect'>): boolean {
  return columns.every(({ quantity, form }) => quantity !== 'time' || form === 'sample');
}
