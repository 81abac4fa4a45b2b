// Resistance of a metre times mass of a metre, which names a metal without its area: density times resistivity, as printed or
// from printed values.
import { identify, metals, tinnedCopper } from '#engine';
import { checkTable, type Row, text } from './table.ts';

const perPoundMile = 1609.344 ** 2 / 453.59237; // Ω·lb/mile² of 1 Ω·g/m²
const { copper } = metals;

const cladIds = ['cca10', 'cca15', 'ccs40', 'ccs30', 'ccs21'];
const ownProducts = identify({}).massTimesResistance.metals.filter(({ metal }) => !cladIds.includes(metal));

/** R'·m of a row's metal [Ω·g/m²]: of a clad metal its record's, since the identification spreads its copper share. */
function product(row: Row): number {
  const id = text(row, 'metal') as keyof typeof metals;
  const { rho20, density } = metals[id];
  const straight = ownProducts.find(({ metal }) => metal === id)?.straight;
  return 1e3 * (straight ?? rho20.value * density.value) * (row.unit === 'Ω·lb/mile²' ? perPoundMile : 1);
}

checkTable('mass-resistivity.csv', {
  'resistance times mass': product,
  'tinned over plain': () => tinnedCopper.rho20.value / copper.rho20.value,
});
