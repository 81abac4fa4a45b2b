import type { Conformity } from '#engine';
import { fixed, quantity, significant, thin, three } from '../../lib/format.ts';
import { perLength } from '../figure/length-words.ts';
import type { InstrumentKind, WireCase } from './lead-case.ts';

/** Resistance of a metre in mΩ, to hundredths: '13.28 mΩ/m'. `R` in Ω/m. */
export const perMetre = (R: number): string => quantity(R * 1e3, 'mΩ/m', 2);

/** The same with ohms a thousand feet beside it in North American practice. */
export function perMetreToo(R: number, usage: WireCase['usage']): string {
  if (usage === 'iec') return perMetre(R);
  const { value, unit } = perLength(R, usage);
  return `${perMetre(R)} (${three(value, unit)})`;
}

/** ± two standard uncertainties, to two figures: '± 0.13 mΩ/m'. */
export const doubt = (u: number): string => `±${thin}${significant(2e3 * u, 2)}${thin}mΩ/m`;

/** Ohms, to thousandths where they are few. */
export const ohms = (R: number): string => (R < 1 ? quantity(R, 'Ω', 3) : three(R, 'Ω'));

/** Volts as the display shows them. */
export const volts = (U: number): string => quantity(U, 'V', U < 0.6 ? 4 : 3);

/** What is read with, in words. */
export const instrumentWords: Readonly<Record<InstrumentKind, string>> = {
  limits: 'instruments within the limits told',
  'hand-held': 'two hand-held meters, a tape, a thermocouple',
  panel: 'a hand-held voltmeter, the ammeter of the supply',
};

/** What the line on the scale is: the greatest that a standard allows, or what sound copper of a gauge has. */
export const referenceWords = ({ reference, usage }: WireCase): string =>
  reference.isLimit
    ? `${reference.marked}: at most ${perMetreToo(reference.R20, usage)}`
    : `sound copper of ${reference.marked}: ${perMetreToo(reference.R20, usage)}`;

/** What a reading decides. */
export function decisionWords({ verdict }: Conformity, isLimit: boolean): string {
  if (verdict === 'above the limit')
    return isLimit
      ? 'It lies above the limit: it does not meet it.'
      : 'It has more ohms than sound copper of its gauge.';
  if (verdict === 'below the limit')
    return isLimit ? 'It lies below the limit: it meets it.' : 'It has fewer ohms than sound copper of its gauge.';
  return isLimit
    ? 'It cannot be told from the limit: not shown to fail.'
    : 'It cannot be told from sound copper: not shown to fail.';
}

/** How far the two leads are out, in words. */
export function offWords({ two, lead }: WireCase): string {
  const off = two.measured.R20.value / lead.R20 - 1;
  return Math.abs(off) < 0.005 ? 'as good as the true value' : `${fixed(100 * off, 0)}${thin}% too much`;
}

const twoWords = (of: WireCase): string => {
  const { two, ask, byTwo, byFour } = of;
  const read = `By two leads it seems to have ${perMetre(two.measured.R20.value)}`;
  if (ask.leads === 0) return `${read}: leads of no ohms would do no harm.`;
  const why = `the meter’s own ${ohms(ask.leads)} is in the reading.`;
  return byTwo.verdict === byFour.verdict ? `${read}: ${why}` : `${read}, and looks too thin: ${why}`;
};

/** The few parts that more than half of the doubt comes from. */
export function greatestDoubt({ four }: WireCase): string {
  const names: string[] = [];
  let sum = 0;
  for (const { name, share } of four.measured.R20.budget.toSorted((a, b) => b.share - a.share)) {
    if (sum > 0.5) break;
    names.push(name);
    sum += share;
  }
  return `Most of the doubt is in the ${names.join(' and the ')}.`;
}

/** Both circuits in four sentences. */
export function wireSentence(of: WireCase): string {
  const { four, reference, byFour } = of;
  const { value, u } = four.measured.R20;
  const line = reference.isLimit
    ? `The most that ${reference.marked} may have is ${perMetre(reference.R20)}.`
    : `Sound copper of ${reference.marked} has ${perMetre(reference.R20)}; a gauge has no greatest value.`;
  return `By four leads the lead has ${perMetre(value)} at 20${thin}°C, ${doubt(u)}. ${line} ${decisionWords(byFour, reference.isLimit)} ${twoWords(of)}`;
}
