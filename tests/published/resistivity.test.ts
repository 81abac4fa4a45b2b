// Resistivity against temperature: Matula 1979 (copper), Desai et al. 1984 and the CRC handbook (aluminium, iron). The prints
// are of pure metals, so each is compared over its own value at 293 K. The straight line of the standards is held to the band
// it can meet, and so is the engine's curvature.
import { type Metal, metals, resistanceRatio } from '#engine';
import { checkTable, num, type Row, text } from './table.ts';

function ratio(row: Row): number {
  const metal: Metal = metals[text(row, 'metal') as keyof typeof metals];
  const bend = text(row, 'law') === 'curved' ? (metal.curvature?.value ?? Number.NaN) : metal.beta20.value;
  const at = (T: number) => resistanceRatio(metal.alpha20.value, bend, T);
  return at(num(row, 'T_K')) / at(293);
}

checkTable('resistivity.csv', { 'resistivity over that at 293 K': (row) => num(row, 'at293') * ratio(row) });
