import type { ProbePlace } from '../log.ts';
import type { ColumnQuantity } from './types.ts';
import { type LogUnit, type UnitKind, unitOf } from './units.ts';

/** A header taken apart. */
export interface HeaderParts {
  readonly name: string;
  readonly unit: LogUnit | undefined;
}

const parted = [
  /^(?<name>.*?)\s*[[({<]\s*(?<unit>[^\])}>]*?)\s*[\])}>]\s*(?<more>.*)$/,
  /^(?<name>.+?)\s*\/\s*(?<unit>[^/]+)$/,
  /^(?<name>.+?)\s+in\s+(?<unit>.+)$/i,
  /^(?<name>.+?)[_,;:|]\s*(?<unit>deg[ _.]?[CFK]|[^_,;:|]+)$/i,
  /^(?<name>.+?)[\s.-]+(?<unit>deg[ _.]?[CFK]|\S+(?:\s?[AD]C)?)$/i,
] as const;

/** `U [V]`, `Current (mA)`, `Temp_degC`, `T °F`, `T/K`, `Zeit in s`, or a unit alone: the name and the unit of a header. */
export function headerParts(header: string): HeaderParts {
  const text = header.trim().slice(0, 200);
  const alone = unitOf(text);
  if (alone && !/^[tTIURPhkdsSC]$/.test(text)) return { name: '', unit: alone };
  for (const form of parted) {
    const { name, unit: written, more = '' } = form.exec(text)?.groups ?? {};
    if (name === undefined || written === undefined) continue;
    const unit = unitOf(written);
    if (unit && !isChannelLetter(name, written)) return { name: `${name} ${more}`.trim(), unit };
  }
  return { name: text, unit: undefined };
}

/** 'Channel A' and 'Phase C' name a channel, not amperes or degrees. */
const isChannelLetter = (name: string, letter: string): boolean =>
  /^[A-Z]$/.test(letter) &&
  /(?:^|[\s_])(?:ch|chan|channel|phase|input|sensor|probe|group|line|port|type|tc)$/i.test(name.trim());

/** A quantity read from a name. */
export interface NamedQuantity {
  readonly quantity: ColumnQuantity;
  readonly why: string;
}

/** Names by their words, the particular before the general. Words of a few languages, since loggers speak their owner's. */
const names: readonly (readonly [RegExp, ColumnQuantity])[] = [
  [
    /\b(?:predicted|difference|diff|residual|computed|calculated|model|theta from r|from resistance|initials|rise|delta)\b/,
    'ignored',
  ],
  [/\b(?:serial|battery|checksum|crc|humidity|pressure|alarm|status|flags?)\b/, 'ignored'],
  [/\b(?:origin)\b/, 'origin'],
  [
    /\b(?:remarks?|events?|notes?|comments?|annotations?|bemerkung(?:en)?|kommentar|remarque|observaciones|marker)\b/,
    'remark',
  ],
  [
    /(?:\bi set\b|\b(?:set ?point|set|soll|target|nominal|demand(?:ed)?) ?(?:current|amps?|i|strom)?\b.*|\biset\b|\bcurrent set(?: ?point)?\b|\bisoll\b)/,
    'set current',
  ],
  [/^(?:step|stage|segment|phase|schritt|step (?:no|number|index))\b/, 'step'],
  [
    /\b(?:time|epoch|unix|elapsed|duration|time ?stamp|date|date ?time|clock|zeit|datum|uhrzeit|zeitstempel|temps|heure|hora|fecha|tiempo|ora|tempo)\b/,
    'time',
  ],
  [
    /^(?:sample|scan|index|record|reading|row|no|nr|number|sample (?:no|number)|scan (?:no|number)|record (?:no|number)|n|#)$/,
    'time',
  ],
  [
    /\b(?:ambient|room|air|surroundings|umgebung|raum(?:temperatur)?|lab|ambiante|ambiente|t ?amb|ta|theta a|t env)\b/,
    'ambient',
  ],
  [
    /\b(?:current|amps?|amperes?|strom|courant|corriente|corrente|intensit[eéày]|i\d?|i (?:lead|load|meas|dc|ac|rms))\b/,
    'I',
  ],
  [
    /\b(?:voltage|volts?|spannung|tension|tensione|voltaje|potential|u\d?|v\d?|(?:u|v) (?:lead|load|meas|dc|ac|rms|sense|drop)|drop)\b/,
    'U',
  ],
  [/\b(?:resistance|ohms?|widerstand|r|r (?:lead|loop))\b/, 'R'],
  [/\b(?:power|watts?|leistung|puissance|potencia|p)\b/, 'P'],
  [
    /(?:\b(?:temp|temperature|temperatur|temperatura|temp[eé]rature|theta|thermo\w*|tc|probe|sheath|surface|plug|jacket|mantel|skin)\d*\b|θ|ϑ|^t ?\d+$|^temp)/,
    'probe',
  ],
];

/** What a header's name says; undefined where it says nothing we know. */
export function namedQuantity(name: string): NamedQuantity | undefined {
  if (/^t$/.test(name.trim())) return { quantity: 'time', why: 'its name is t' };
  if (/^T$/.test(name.trim())) return { quantity: 'probe', why: 'its name is T' };
  const words = spaced(name);
  const known = names.find(([pattern]) => pattern.test(words));
  return known && { quantity: known[1], why: `its name is '${name}'` };
}

/** 'LeadVoltage_2' as 'lead voltage 2'. */
const spaced = (name: string): string =>
  name
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/[_./\-–()[\]:|]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();

/** What a unit alone makes of a column. */
export const quantityOfUnit: Readonly<Record<UnitKind, ColumnQuantity>> = {
  current: 'I',
  voltage: 'U',
  resistance: 'R',
  power: 'P',
  temperature: 'probe',
  time: 'time',
};

/** Whether a unit of this kind can belong to that quantity. */
export function suits(kind: UnitKind, quantity: ColumnQuantity): boolean {
  if (quantity === 'ambient') return kind === 'temperature';
  if (quantity === 'set current') return kind === 'current';
  return quantityOfUnit[kind] === quantity;
}

/** Where a thermometer of this name sits. */
export function placeOf(name: string): ProbePlace {
  const words = spaced(name);
  if (/\b(?:plug|pins?|socket|connector|terminal)\b/.test(words)) return 'plug';
  if (/\b(?:outside|outer|cover|covered|lagging)\b/.test(words)) return 'outside';
  return /\b(?:sheath|surface|jacket|skin|mantel|middle|lead)\b/.test(words) ? 'surface' : 'other';
}
