// `npm run study -- recovery 2000`: how well known leads are recovered from honest readings. Prints a table; nothing here passes or fails.
import { recover } from './recover.ts';

const count = Number(process.argv.find((word) => /^\d+$/.test(word)) ?? 2000);
const percent = (share: number) => `${(100 * share).toFixed(1)} %`.padStart(8);
const rows = [
  ['all but the mass', false, []],
  ['with the mass', true, []],
  ['with the mass, no scrape', true, ['under']],
  ['resistance, diameter, magnet', false, ['skin', 'under']],
] as const;

console.log(`${count} leads                      metal first   trust   area held   R'20 held   R'20 error   none fits`);
for (const [name, withMass, blind] of rows) {
  const found = recover(count, 'study', withMass, [...blind]);
  const { metalFirst, trust, areaHeld, R20Held, R20Error, noneFits, byKind } = found;
  const cells = [metalFirst, trust, areaHeld, R20Held, R20Error, noneFits].map(percent).join('    ');
  console.log(`${name.padEnd(30)} ${cells}`);
  for (const [kind, of] of [...byKind].sort())
    console.log(`    ${kind.padEnd(14)} ${of.first} of ${of.leads} first, area held for ${of.areaHeld}`);
}
