import { metals } from '../material/metals.ts';
import { celsius } from '../quantity.ts';
import type { VerdictFacts, VerdictSentence } from './verdict-words.ts';

const three = (value: number) => String(Number(value.toPrecision(3)));

/** Where the numbers of each sentence of a verdict come from, in a sentence or two; empty where it has none. */
export function verdictOrigin(id: VerdictSentence['id'], { R20, metal, reached, device }: VerdictFacts): string {
  switch (id) {
    case 'behaves as': {
      if (!R20) return '';
      const rho = three(metals.copper.rho20.value * 1e9);
      const named = metal ? ' The metal is named by ohms and grams together.' : '';
      return `Copper’s ${rho}\u00A0nΩ·m over the ${(R20.value * 1e3).toPrecision(3)}\u00A0mΩ/m that was measured. The band is two standard uncertainties.${named}`;
    }
    case 'reaches':
      if (!reached) return '';
      return `Mean of the last fifth of the step at ${three(reached.I)}\u00A0A, by volts over amperes. The band is two standard uncertainties. The rating is the insulation’s own.`;
    case 'device':
      if (!device) return '';
      return `The current it holds is in its standard. This lead settles at ${Math.round(celsius(device.harm.limit.low))}\u00A0°C at ${three(device.harm.Iz)}\u00A0A, which the model computes for the place of the test.`;
    case 'suitable':
      return device ? `The rule, not the temperature: ${device.rule.rule.name}, ${device.rule.rule.where}.` : '';
    case 'agreement':
      return 'Each plateau: the difference is at most twice √(u² of the prediction + u² of the reading).';
    case 'not established':
      return 'What no line of the log shows. It is named, so that nobody reads it into the rest.';
  }
}
