// `npm run study -- held-back 300`: logs of another model, fitted to their early steps and judged on the last. Prints a table.
import { foretell } from './fitted.ts';

const count = Number(process.argv.find((word) => /^\d+$/.test(word)) ?? 300);
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
const { held, inside, R20Held, R20Error } = foretell(count, 'study');

console.log(`${count} benches of another model, fitted to two steps, judged on the third`);
console.log(`  last step inside its bands (90 % of readings or more): ${percent(held)}`);
console.log(`  readings inside, mean:                                  ${percent(inside)}`);
console.log(`  R'20 inside its wide interval:                          ${percent(R20Held)}`);
console.log(`  R'20 error, median:                                     ${percent(R20Error)}`);
