// Properties of metals and insulations as the engine holds them, against the values of their documents.
import { celsius, type Metal, metals, type Plastic, plastics, tin } from '#engine';
import { checkTable, type Row, text } from './table.ts';

const all: Record<string, Metal | Plastic> = { ...metals, tin, ...plastics };

/** A property of the row's material in the row's unit. */
function held(row: Row, factor = 1): number {
  const material = all[text(row, 'of')] as unknown as Record<string, { value: number } | undefined>;
  return factor * (material[row.quantity]?.value ?? Number.NaN);
}

checkTable('properties.csv', {
  rho20: (row) => held(row, 1e8),
  alpha20: (row) => held(row),
  density: (row) => held(row),
  heatCapacity: (row) => held(row, 1e-6),
  conductivity: (row) => held(row),
  melting: (row) => celsius(held(row)),
  emissivity: (row) => held(row),
  rhoT: (row) => held(row),
});
