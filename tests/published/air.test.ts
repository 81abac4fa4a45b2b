// Air tables: Incropera & DeWitt Table A.4 (printed for 100 000 Pa) and Çengel Table A-15 (101 325 Pa). They differ from each
// other by 2.4 % in conductivity at room temperature; the engine's law follows the first.
import { air, airConductivity, airDensity, airViscosity } from '#engine';
import { checkTable, num, type Row } from './table.ts';

const T = (row: Row) => num(row, 'T_K');
/** The engine's air is at 101 325 Pa; density goes with pressure, diffusivity against it. */
const pressure = (row: Row) => num(row, 'pressure_Pa') / 101_325;

checkTable('air.csv', {
  density: (row) => airDensity(T(row)) * pressure(row),
  viscosity: (row) => 1e7 * airViscosity(T(row)),
  conductivity: (row) => 1e3 * airConductivity(T(row)),
  diffusivity: (row) => (1e6 * air(T(row)).a) / pressure(row),
  'Prandtl number': (row) => air(T(row)).Pr,
});
