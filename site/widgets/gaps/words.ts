import {
  celsius,
  type Device,
  deviceOf,
  type MatrixAsk,
  type MatrixCell,
  type MatrixLead,
  type MatrixRow,
  plastics,
  type RuleStanding,
  type ToldSpan,
} from '#engine';
import { fixed, temperature, thin } from '../../lib/format.ts';
import { shortName } from '../figure/devices.ts';
import { placeNames } from '../places/words.ts';

/** A told current stands as the engine rounded it. */
const amps = (I: number): string => `${I}${thin}A`;

/** One gap: '16 to 100 A', '202 A up'. */
export const gapWords = ({ from, to }: ToldSpan): string =>
  to === null ? `${amps(from)} up` : `${from} to ${amps(to)}`;

/** All gaps of a cell in one line: '16 to 100 A; 202 A up', or 'no gap'. */
export const gapsWords = ({ gaps }: MatrixCell): string =>
  gaps.length === 0 ? 'no gap' : gaps.map(gapWords).join('; ');

/** What a rule says of a cell, in a few words; a rule that does not see how hot the place is has that said beside it. */
export const standingOf = ({ standing, carries }: MatrixCell): string =>
  standing === 'met' && !carries ? `${standingWords.met}, too hot here` : standingWords[standing];

const standingWords: Readonly<Record<RuleStanding, string>> = {
  met: 'rule met',
  'no table': 'no table',
  'not met': 'not allowed by rule',
};

/** The mark before those words. */
export const standingMarks: Readonly<Record<RuleStanding, string>> = { met: '✓', 'no table': '–', 'not met': '✕' };

const metals: Readonly<Record<string, string>> = {
  copper: 'copper',
  cca10: 'CCA, 10 % copper',
  aluminium: 'aluminium',
  steel: 'steel',
};

/** A metal of the matrix in a word or two. */
export const metalName = (metal: MatrixLead['metal']): string => metals[metal] ?? metal;
export const placeName = (place: MatrixLead['place']): string => placeNames[place];

/** '1.5 mm²', or '16 AWG'. */
export const sizeName = (size: number, practice: MatrixAsk['practice']): string =>
  `${size}${thin}${practice === 'na' ? 'AWG' : 'mm²'}`;

/** The devices of an ask. */
export const devicesOf = (ask: MatrixAsk): Device[] => ask.devices.map(deviceOf);

type OfLimit = Pick<MatrixAsk, 'limit' | 'practice'>;
const limitOf = ({ limit }: OfLimit) => plastics.pvc70.limits.find(({ id }) => id === limit);

/** The limit of an ask in words: '70 °C'. */
export const limitWords = (of: OfLimit): string => temperature(celsius(limitOf(of)?.low ?? Number.NaN), of.practice);

/** The limits that can be asked for, as options. */
export const limitOptions = (practice: MatrixAsk['practice']) =>
  [
    { value: 'rating', label: `${limitWords({ limit: 'rating', practice })}, rating` },
    { value: 'shortTime', label: `${limitWords({ limit: 'shortTime', practice })}, short circuit` },
  ] as const;

/** The case of a cell in a line: 'copper lead of 1.5 mm², free in still air at 30 °C'. */
export const leadWords = ({ metal, place, size }: MatrixLead, { practice, ambient_degC }: MatrixAsk): string =>
  `${sizeName(size, practice)} ${metalName(metal)}, ${placeName(place)} at ${temperature(ambient_degC, practice)}`;

/** What a cell says, in sentences: by temperature, then by rule. */
export function cellSentences(row: MatrixRow, cell: MatrixCell, device: Device, ask: MatrixAsk) {
  const T = limitWords(ask);
  const name = shortName(device);
  const heat =
    cell.outcome === 'none'
      ? [`Up to ${amps(ask.prospective)}, no current takes the conductor past ${T} before the ${name} must have acted.`]
      : [`At these currents the conductor can pass ${T} while the ${name} may still hold: ${gapsWords(cell)}.`];
  const silent = cell.outcome === 'no upper end found' ? [`The upper end was not found. ${device.silent}`] : [];
  const borrowed =
    ask.limit === 'shortTime' && cell.outcome !== 'none'
      ? [`${T} is a limit for ${limitOf(ask)?.duration}, taken here for longer.`]
      : [];
  return { heat: [...heat, ...silent, ...borrowed], rule: ruleSentences(row, cell, device) };
}

function ruleSentences({ tabled }: MatrixRow, cell: MatrixCell, { In }: Device): string[] {
  const { standing, why, aboveTable, outcome, carries } = cell;
  const head = {
    met: 'The rule is met by a table.',
    'no table': 'No table allows it, so nothing here is permission.',
    'not met': 'Not allowed by rule.',
  }[standing];
  const above = aboveTable ? 'above' : 'not above';
  return [
    head,
    ...(why ? [why] : []),
    ...(tabled === null
      ? []
      : [`The table allows the cord ${amps(tabled)} at 30${thin}°C; the device is rated ${amps(In)}, ${above} it.`]),
    ...(outcome === 'none' && standing !== 'met' ? ['That no gap was found does not change this.'] : []),
    ...(standing === 'met' && !carries
      ? [`Yet in this place ${amps(In)} for ever takes the lead past its rating: the table does not see the place.`]
      : []),
    ...(outcome !== 'none' && standing === 'met' && carries
      ? ['A rule may accept a gap. The bench says which part of it.']
      : []),
  ];
}

/** What the whole matrix came to, in sentences. */
export function summary(rows: readonly MatrixRow[]): string {
  const cells = rows.flatMap((row) => row.cells);
  const count = (holds: (cell: MatrixCell) => boolean) => fixed(cells.filter(holds).length, 0);
  const none = ({ outcome }: MatrixCell) => outcome === 'none';
  const standing = (which: RuleStanding) => count((cell) => none(cell) && cell.standing === which);
  return [
    ...(cells.some(none)
      ? [
          `Of ${fixed(cells.length, 0)} cases, ${count(none)} have no gap.`,
          `Of those, a table allows ${standing('met')} and the rules refuse ${standing('not met')}.`,
        ]
      : [`Of ${fixed(cells.length, 0)} cases, none is without a gap.`]),
    `In ${count(({ outcome }) => outcome === 'no upper end found')} cases the standards do not say where the gap ends.`,
    `${count(({ standing }) => standing === 'not met')} are not allowed by rule.`,
  ].join(' ');
}

/** What the table that is shown is of, and how to read it, in sentences. */
export function leadsWords(ask: MatrixAsk, metal: MatrixLead['metal'], place: MatrixLead['place']): string {
  const { practice, ambient_degC, prospective } = ask;
  const name = metalName(metal);
  return [
    `Leads of ${name}, three cores of which two are loaded, ${placeName(place)} at ${temperature(ambient_degC, practice)}.`,
    `Hatched: from cold, the conductor can pass ${limitWords(ask)} while the device may still hold.`,
    `Each bar runs from 1${thin}A to ${amps(prospective)}, a fine line at 10${thin}A and 100${thin}A.`,
  ].join(' ');
}
