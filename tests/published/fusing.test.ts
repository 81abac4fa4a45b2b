// Preece's fusing currents (1884–1888), I = 10 244 d^1.5 with d in inches, as a printed table: known to be loose.
// The engine's threshold is that of a long bare wire, dull copper, in still air of 20 °C, at its melting point.
import { inch, threshold } from '#engine';
import { caseOf } from './cases.ts';
import { checkTable, num, type Row } from './table.ts';

function fusing(row: Row): number {
  const area_mm2 = (Math.PI / 4) * (1e3 * inch * num(row, 'diameter_in')) ** 2;
  const conductor = { metal: 'copper', law: 'curved', class: 1, area_mm2 };
  return threshold(caseOf({ layout: 'single', conductor }, 20)).I;
}

checkTable('fusing.csv', { 'fusing current of a copper wire': fusing });
