// American wire gauge 24 to 4: diameters of ASTM B258, and both printed sets of ohms per 1000 ft: the older one from the
// exact geometry, that of NBS Handbook 100 (1966) from diameters rounded to 0.1 mil. They part by up to 0.4 % (22 AWG).
import { awgArea, awgDiameter, foot, inch, metals, resistivity } from '#engine';
import { checkTable, num, type Row } from './table.ts';

const per1000ft = (row: Row) => (1000 * foot * resistivity(metals.copper, 293.15)) / awgArea(num(row, 'gauge'));

checkTable('wire-gauge.csv', {
  'ratio of neighbouring gauges': () => awgDiameter(17) / awgDiameter(18),
  diameter: (row) => awgDiameter(num(row, 'gauge')) / inch,
  area: (row) => 1e6 * awgArea(num(row, 'gauge')),
  'resistance, exact geometry': per1000ft,
  'resistance, rounded diameter': per1000ft,
});
