// Ampacity tables against first principles. The tables state neither walls nor surroundings in full, so most bands are as
// found. Cords are different: their rated currents allow for being coiled, covered and touched, so they must come out below
// the free-air rating, and no more.
import { caseOf, ratingAt_degC } from './cases.ts';
import { checkTable, num, type Row, text } from './table.ts';

/** The size as a scenario says it. */
function sizeOf(row: Row): object {
  const gauge = row.inputs.gauge === 'yes' || row.quantity === 'single wire in free air';
  return gauge ? { size_AWG: num(row, 'size') } : { size_mm2: num(row, 'size') };
}

/** All cores of a cable of the construction table loaded, in 30 °C. */
function tabled(row: Row, surroundings?: object): number {
  const cores = num(row, 'cores');
  const cable = { table: text(row, 'table'), cores, loaded: cores, ...sizeOf(row) };
  return ratingAt_degC(caseOf(cable, 30, surroundings), num(row, 'T_degC'));
}

function wall(material: string, thickness: string): object | null {
  return thickness ? { material, thickness_mm: Number(thickness) } : null;
}

/** A cable by its walls, all cores loaded: solid conductors to 10 mm² (aluminium: to 6 mm²), stranded ones above. */
function built(row: Row, surroundings?: object): number {
  const cores = num(row, 'cores');
  const { R20_ohmPerKm, insulation_mm, sheath_mm } = row.inputs;
  const measured = R20_ohmPerKm ? { R20_ohmPerKm: Number(R20_ohmPerKm) } : {};
  const metal = text(row, 'metal');
  const greatestSolid = metal === 'aluminium' ? 6 : 10;
  const solid = row.quantity === 'single wire in free air' || num(row, 'size') <= greatestSolid;
  const conductor = { metal, class: solid ? 1 : 2, ...sizeOf(row), ...measured };
  const insulation = wall(text(row, 'plastic'), insulation_mm);
  const sheath = wall(num(row, 'T_degC') > 70 ? 'pvc90' : 'pvc70', sheath_mm);
  const cable = { layout: cores > 1 ? 'round' : 'single', cores, loaded: cores, conductor, insulation, sheath };
  return ratingAt_degC(caseOf(cable, 30, surroundings), num(row, 'T_degC'));
}

/** A flexible multicore cable of PVC clipped to a wall; the larger sizes have the walls of the heavy rubber cable. */
function onSurface(row: Row): number {
  const clipped = { kind: 'clipped', arrangement: 'clipped' };
  if (row.inputs.table === 'H05VV-F') return tabled(row, clipped);
  const walls: Record<string, [number, number]> = { 6: [1, 2], 10: [1.2, 3.1], 16: [1.2, 3.3], 25: [1.4, 3.6] };
  const [insulation, sheath] = walls[text(row, 'size')];
  const layers = { insulation: wall('pvc70', `${insulation}`), sheath: wall('pvc70', `${sheath}`) };
  const cable = { layout: 'round', cores: 2, loaded: 2, conductor: { ...sizeOf(row), class: 5 }, ...layers };
  return ratingAt_degC(caseOf(cable, 30, clipped), num(row, 'T_degC'));
}

checkTable('ratings.csv', {
  'multicore in free air': (row) => built(row),
  'single cores touching': (row) => built(row, { kind: 'clipped', arrangement: text(row, 'arrangement') }),
  'single wire in free air': (row) => built(row),
  'table cord in still air': (row) => tabled(row),
  'multicore on a surface': onSurface,
  'cord rating below the free-air rating': (row) => tabled(row),
});
