import { celsius, type DeviceEnergy, gGRatio } from '#engine';
import { fixed, quantity, significant, temperature, thin, timeInWords } from '../../lib/format.ts';
import { shortName } from '../figure/devices.ts';
import type { EnergyCase, Standing } from './energy-case.ts';

/** An I²t as it is told: '29 800 A²s'. */
export const energy = (I2t: number): string => `${significant(I2t, 3)}${thin}A²s`;

/** A k as the trade writes it: '115 A·√s/mm²'. */
export const kWords = ({ k }: Pick<Standing, 'k'>): string => `${fixed(k.k / 1e6, 0)}${thin}A·√s/mm²`;

const times = (ratio: number): string => `${significant(ratio, 2)} times`;

/** What a device lets through, in words, with both ends where they are told. */
export function throughWords({ atLeast, atMost, t }: DeviceEnergy): string {
  if (atLeast && atMost && atLeast.I2t < atMost.I2t) return `${energy(atLeast.I2t)} to ${energy(atMost.I2t)}`;
  if (atMost) return `${energy(atMost.I2t)} at most`;
  const least = atLeast ? `${energy(atLeast.I2t)} at least, ` : '';
  return `${least}${Number.isFinite(t) ? 'the most not told' : 'it may hold for ever'}`;
}

/** What becomes of the conductor behind the lower device. */
export function survivalWords({ survives, conductor, earth, down, downEnergy }: EnergyCase): string {
  const name = shortName(down);
  const weak = earth && earth.I2t < conductor.I2t ? earth : conductor;
  const who = weak === conductor ? 'the conductor' : 'the thinner protective conductor';
  const most = downEnergy.atMost;
  if (survives && most)
    return `The ${name} lets through ${energy(most.I2t)} at most, so ${who} survives: it stands ${times(weak.I2t / most.I2t)} that.`;
  if (survives === false && downEnergy.atLeast)
    return `The ${name} lets through ${energy(downEnergy.atLeast.I2t)} at least. That is more than ${who} stands: it does not survive.`;
  if (!Number.isFinite(downEnergy.t))
    return `At this current the ${name} may hold for ever, so nothing shows that ${who} survives.`;
  if (most)
    return `The ${name} may let through up to ${energy(most.I2t)}. That is more than ${who} stands, so survival is not shown.`;
  return `What the ${name} lets through is not told, so nothing shows that ${who} survives.`;
}

/** Which of the two devices opens. */
export function pairWords({ selectivity, up, down, ask }: EnergyCase): string {
  const [above, below] = [shortName(up), shortName(down)];
  if (!selectivity || selectivity.selective === null)
    return `Whether only the ${below} opens is not found: the ${above} in front of it may open too.`;
  const why =
    up.family === 'gG' && down.family === 'gG' && ask.downMaker === 0 && ask.upMaker === 0
      ? `gG fuses want ${gGRatio.value} : 1, and these are ${significant(up.In / down.In, 3)} : 1`
      : `the ${above} starts to act at ${energy(selectivity.pair?.upstream ?? 0)}`;
  return selectivity.selective ? `Only the ${below} opens: ${why}.` : `Both may open: ${why}.`;
}

/** How far the time is the verdict, in words. */
export const rangeWords = ({ lasts }: Standing): string => lasts.statement.text;

/** The scale in three or four sentences. */
export function energySentence(of: EnergyCase): string {
  const { conductor, ask } = of;
  const lasts = timeInWords(conductor.lasts.value);
  return `The conductor stands ${energy(conductor.I2t)}; at ${quantity(ask.amps, 'A', 0)} that is ${lasts}. ${rangeWords(conductor)} ${survivalWords(of)} ${pairWords(of)}`;
}

/** How a conductor is told in the title block. */
export function standingWords({ area, k }: Standing, metal: string, usage: EnergyCase['usage']): string {
  return `${metal}, ${significant(area * 1e6, 3)}${thin}mm² of metal, from ${temperature(celsius(k.from), usage)} to ${temperature(celsius(k.to), usage)}`;
}
