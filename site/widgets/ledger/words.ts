import { celsius, type HeatLedger, type LedgerLine, type Threshold } from '#engine';
import { fixed, type Practice, quantity, significant, temperature, thin } from '../../lib/format.ts';

/** Heat in figures; less than a thousandth of a watt is told as none [W/m]. */
export const heatFigure = (heat: number, figures = 3): string =>
  Math.abs(heat) < 1e-3 ? '0' : significant(heat, figures);

const watts = (heat: number): string => `${heatFigure(heat)}${thin}W/m`;
const small = (heat: number): string => `${heatFigure(heat, 2)}${thin}W/m`;

/** True where what is left over is too little to tell. */
const inBalance = ({ made, lost, stored }: LedgerLine): boolean => Math.abs(stored) <= 2e-3 * Math.max(made, lost);

function waysWords({ shed, lost }: LedgerLine): string {
  if (lost <= 0) return '';
  return shed
    ? `: ${small(shed.convection)} into the air, ${small(shed.radiation)} radiated`
    : ', air and radiation together';
}

/** One line of the ledger in words: what is made, what is lost and how, and what the rest does. */
export function lineWords(line: LedgerLine, outside = false): string {
  const { made, lost, stored } = line;
  const rest =
    inBalance(line) || Math.abs(stored) < 1e-3
      ? 'As much is lost as is made: it stays there.'
      : stored > 0
        ? `The other ${small(stored)} warms the lead.`
        : `The lead gives up ${small(-stored)} and cools.`;
  const gone = lost < 5e-4 ? 'nothing is lost' : `${watts(lost)} lost${waysWords(line)}`;
  return `${watts(made)} made, ${gone}. ${rest}${outside ? ' This is outside the model.' : ''}`;
}

/** Where the lead settles, as far as the model can say it: whole degrees inside, about so many outside. */
export function settlesAt(T: number, end: number, practice: Practice): string {
  if (T <= end) return temperature(celsius(T), practice);
  return `about ${quantity(Number(celsius(T).toPrecision(2)), '°C', 0)}`;
}

/** Why the curves do not cross, and from which current on. */
function noCrossing(most: Threshold | null, practice: Practice): string {
  const from = most ? ` For this lead that is so above about ${significant(most.I, 2)}${thin}A.` : '';
  const melts =
    most?.kind === 'runaway'
      ? `Past ${temperature(Number(celsius(most.T).toPrecision(2)), practice)} each kelvin adds more heat than it sheds.`
      : 'Whatever its temperature, it makes more heat than it loses, until the metal melts.';
  return `No crossing: the lead never settles. ${melts}${from} The plastic is destroyed long before.`;
}

/** What the figure says, in sentences made from its data. `line` is the ledger at the crossing, null where there is none. */
export function ledgerSentence(
  ledger: HeatLedger,
  line: LedgerLine | null,
  most: Threshold | null,
  practice: Practice,
): string {
  const { modelEnd, fixedResistance } = ledger;
  if (!line) return noCrossing(most, practice);
  const kept = fixedResistance ? ` Here the metal keeps the resistance it has at ${temperature(20, practice)}.` : '';
  if (line.T > modelEnd) {
    const end = temperature(celsius(modelEnd), practice);
    return `The curves would cross at ${settlesAt(line.T, modelEnd, practice)}. That is outside the model, which ends at ${end} for this plastic.${kept}`;
  }
  if (line.made < 1e-3)
    return `Next to no heat is made, so the lead stays as warm as the air, ${temperature(celsius(line.T), practice)}.`;
  const ways = line.shed
    ? ` The air carries off ${small(line.shed.convection)}, and ${small(line.shed.radiation)} is radiated.`
    : ' One law covers air and radiation here, so the figure does not tell them apart.';
  return `At ${temperature(celsius(line.T), practice)} the lead loses as much heat as it makes, ${watts(line.made)}. So it settles there.${ways}${kept}`;
}

/** Shares of the heat lost, for a reading: '64 % air, 36 % radiated'. */
export function shareWords({ shed, lost }: LedgerLine): { value: string; meaning: string } {
  if (!shed || lost < 1e-3) return { value: '–', meaning: lost >= 1e-3 ? 'one law holds both' : 'nothing is lost' };
  const air = fixed((100 * shed.convection) / lost, 0);
  return { value: air, meaning: `the other ${100 - Number(air)}${thin}% is radiated` };
}
