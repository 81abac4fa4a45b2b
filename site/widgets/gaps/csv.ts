import { deviceOf, type MatrixAsk, type MatrixRow } from '#engine';
import { gapWords, metalName, placeName } from './words.ts';

/** For programs a space is a space. */
const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

const columns = (practice: MatrixAsk['practice']) => [
  practice === 'na' ? 'size_AWG' : 'size_mm2',
  'metal',
  'surroundings',
  'ambient_degC',
  'limit',
  'device',
  'rating_A',
  'Iz_A',
  'table_A',
  'outcome',
  'gap_from_A',
  'gap_to_A',
  'further_gaps',
  'rule',
  'why',
  'carries_rating',
];

/** A matrix as CSV: one header row with units, decimal points, a row a case; an end that is not found is left empty. */
export async function matrixCsv(ask: MatrixAsk, rows: readonly MatrixRow[]): Promise<string> {
  const { default: Papa } = await import('papaparse');
  const devices = ask.devices.map(deviceOf);
  const data = rows.flatMap((row) =>
    row.cells.map(({ outcome, gaps: [first, ...more], standing, why, carries }, i) => [
      row.size,
      metalName(row.metal),
      placeName(row.place),
      ask.ambient_degC,
      ask.limit === 'rating' ? 'rating' : 'short circuit',
      plain(devices[i]?.name ?? ''),
      devices[i]?.In ?? '',
      row.Iz,
      row.tabled ?? '',
      outcome,
      first?.from ?? '',
      first?.to ?? '',
      plain(more.map(gapWords).join('; ')),
      standing,
      why,
      carries ? 'yes' : 'no',
    ]),
  );
  return Papa.unparse({ fields: columns(ask.practice), data }, { newline: '\r\n' });
}
