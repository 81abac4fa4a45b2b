// k of IEC 60364-5-54 Annex A from the engine's metals: k = √(Qc (β + 20)/ρ20 · ln((β + θf)/(β + θi))), β = 1/α20 − 20. The
// engine's α gives β = 234.45, 228.14 and 202.2 °C where the table says 234.5, 228 and 202: at most 0.05 % in k.
// Rows of lead are left out: the engine has no lead.
import { adiabaticConstant, kelvin, type Metal, metalConstant, metals } from '#engine';
import { checkTable, num, type Row, text } from './table.ts';

const metalOf = (row: Row): Metal => metals[text(row, 'metal') as keyof typeof metals];

/** The trade tells both for square millimetres. */
const perSquareMillimetre = 1e-6;

checkTable('k-values.csv', {
  k: (row) =>
    perSquareMillimetre * adiabaticConstant(metalOf(row), kelvin(num(row, 'start_degC')), kelvin(num(row, 'end_degC'))),
  K: (row) => perSquareMillimetre * metalConstant(metalOf(row)),
});
