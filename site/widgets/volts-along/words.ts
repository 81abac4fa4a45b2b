import { type AlongRun, celsius, type DropGuide, type Load, modelEnd, type SettledRun, type VoltsAt } from '#engine';
import { fixed, type Practice, quantity, significant, temperature, thin, three } from '../../lib/format.ts';
import { lengthWords } from '../figure/length-words.ts';

const units = { amps: 'A', ohms: 'Ω', watts: 'W' } as const;

/** A load as it is told: '12 A', '19.2 Ω', '2760 W'. */
export function loadWords({ kind, value }: Load): string {
  return kind === 'amps'
    ? quantity(value, 'A', Number.isInteger(value) ? 0 : 1)
    : `${significant(value, value >= 1000 ? 4 : 3)}${thin}${units[kind]}`;
}

/** A share as per cent: '8.8 %'. */
export const percent = (share: number): string => `${fixed(100 * share, 1)}${thin}%`;

/** What the volts are at one place of the run. */
export function placeWords({ between, out, back }: VoltsAt): string {
  return `${quantity(between, 'V', 1)} between the conductors; ${quantity(out + back, 'V', 1)} lost, ${quantity(out, 'V', 1)} out and ${quantity(back, 'V', 1)} back`;
}

/** Guides with where they are printed: '3 % lighting, 5 % other uses: BS 7671 Appendix 4'. */
export function guidesWords(guides: readonly DropGuide[]): string {
  const places = [...new Set(guides.map(({ where }) => where))];
  return places
    .map((place) => {
      const told = guides.filter(({ where }) => where === place);
      return `${told.map(({ share, of }) => `${fixed(100 * share, 0)}${thin}% ${of}`).join(', ')}: ${place}`;
    })
    .join('; ');
}

/** Which guides a loss keeps to: 'past the 5 % guide for other uses'. */
export function guideWords({ share }: SettledRun, guides: readonly DropGuide[]): string {
  const passed = guides.filter((guide) => share > guide.share).at(-1);
  if (passed) return `past the ${fixed(100 * passed.share, 0)}${thin}% guide for ${passed.of}`;
  const least = guides[0];
  return least ? `within the ${fixed(100 * least.share, 0)}${thin}% guide for ${least.of}` : '';
}

/** What the run does to the volts, in words; or why there is no such load. */
export function runSentence(run: AlongRun, practice: Practice, guides: readonly DropGuide[]): string {
  if (run.kind === 'melts first') return 'The lead melts before it settles with this load.';
  if (run.kind === 'no such load') {
    const most = quantity(run.mostCold, units[run.load.kind], 0);
    const why = run.atFirst
      ? 'It works at first. Then the lead warms, and can no longer pass so much.'
      : `Even cold, the lead passes ${most} at the most.`;
    return `There is no such load: ${loadWords(run.load)} cannot be had through this lead. ${why}`;
  }
  const T = temperature(celsius(run.chain.conductor), practice);
  const end = modelEnd(run.thermal);
  const beyond =
    run.chain.conductor > end
      ? ` That is outside the model, which ends at ${temperature(celsius(end), practice)} in this plastic.`
      : '';
  return `The load gets ${quantity(run.atLoad, 'V', 1)} of ${quantity(run.source, 'V', 0)} at ${quantity(run.I, 'A', 1)}. Over ${lengthWords(run.length, practice)}, out and back, the lead takes ${quantity(run.lost, 'V', 1)}, which is ${percent(run.share)}: ${guideWords(run, guides)}. It turns ${three(run.heat, 'W')} into heat, and its conductor settles at ${T}.${beyond}`;
}
