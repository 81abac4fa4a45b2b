// Factors for ambient temperature, and for cable wound on a drum. The ambient tables are square roots; in still air the film
// grows with the rise, so first principles fall below them close to the limit. Then the factors that the engine quotes.
import { adjustmentFactor, ambientFactor, cableOf, groupingFactor, thermalInsulationFactor } from '#engine';
import { caseOf, ratingAt_degC } from './cases.ts';
import { checkTable, num, type Row, text } from './table.ts';

/** A two-core cable of 2.5 mm² with the row's insulation. */
function cableOfRow(row: Row): object {
  const material = text(row, 'plastic');
  const conductor = { size_mm2: 2.5, class: 5 };
  const sheath = { material: material === 'rubber60' ? material : 'pvc90', thickness_mm: 1.2 };
  return { layout: 'round', cores: 2, conductor, insulation: { material, thickness_mm: 0.8 }, sheath };
}

function ambientFactorByHeat(row: Row): number {
  const at = (ambient_degC: number) => ratingAt_degC(caseOf(cableOfRow(row), ambient_degC), num(row, 'T_degC'));
  return at(num(row, 'ambient_degC')) / at(30);
}

/** A heavy rubber cable of 3 × 1.5 mm² wound in full layers of 20 turns on a drum of 200 mm, over the same cable hung free. */
function drumFactor(row: Row): number {
  const cable = { table: 'H07RN-F', cores: 3, size_mm2: 1.5 } as const;
  const layers = num(row, 'layers');
  const De = 2 * cableOf(cable).outerRadius;
  const wound_m = Math.PI * layers * 20 * (0.2 + layers * De);
  const drum = { kind: 'coiled', drum_mm: 200, turns: 20, layers, wound_m };
  return ratingAt_degC(caseOf(cable, 30, drum), 60) / ratingAt_degC(caseOf(cable, 30), 60);
}

function printedAmbientFactor(row: Row): number {
  const practice = row.source === 'nfpa70' ? 'na' : 'iec';
  return ambientFactor(practice, num(row, 'T_degC'), num(row, 'ambient_degC')).value;
}

checkTable('derating.csv', {
  'ambient factor': ambientFactorByHeat,
  'drum factor': drumFactor,
  'ambient factor as printed': printedAmbientFactor,
  'grouping factor': (row) => groupingFactor(num(row, 'count')).value,
  'adjustment for conductors together': (row) => 100 * adjustmentFactor(num(row, 'count')).value,
  'thermal insulation factor': (row) => thermalInsulationFactor(num(row, 'count')).value,
});
