// k of IEC 60364-5-54 Annex A from the engine's metals: k = √(Qc (β + 20)/ρ20 · ln((β + θf)/(β + θi))), β = 1/α20 − 20. The
// engine's α gives β = 234.45, 228.14 and 202.2 °C where the table says 234.5, 228 and 202: at most 0.05 % in k.
// Rows of lead are left out: the engine has no lead.
import { type Metal, metals } from '#engine';
import { checkTable, num, type Row, text } from './table.ts';

const metalOf = (row: Row): Metal => metals[text(row, 'metal') as keyof typeof metals];
const beta = ({ alpha20 }: Metal) => 1 / alpha20.value - 20;

/** The constant K [A·s^½/mm²]: 1e-6 takes it from square metres. */
function K(metal: Metal): number {
  return 1e-6 * Math.sqrt((metal.heatCapacity.value * (beta(metal) + 20)) / metal.rho20.value);
}

function k(row: Row): number {
  const metal = metalOf(row);
  const b = beta(metal);
  return K(metal) * Math.sqrt(Math.log((b + num(row, 'end_degC')) / (b + num(row, 'start_degC'))));
}

checkTable('k-values.csv', { k, K: (row) => K(metalOf(row)) });
