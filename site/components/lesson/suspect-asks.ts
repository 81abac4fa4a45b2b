import { evidenceOf, type IdentifiedMetal, identify } from '#engine';
import { type Practice, quantity } from '../../lib/format.ts';
import type { ChoiceAsk, Each, NumberAsk } from '../../widgets/answers/asks.ts';
import { lengthWords } from '../../widgets/figure/length-words.ts';
import { probabilityWords } from '../../widgets/metal-finder/words.ts';
import { inUnit, kindOfUnit } from '../../widgets/prediction/read-amount.ts';
import type { NumberProps } from './ask-props.ts';
import { forPractice } from './by-practice.ts';
import { filledWith } from './fill-words.ts';
import { numFor } from './num-props.ts';
import { suspectValue } from './suspect-numbers.ts';
import type { SuspectNumber, WhichMetalProps } from './suspect-props.ts';

const each = <T>(make: (practice: Practice) => T): Each<T> => ({ iec: make('iec'), na: make('na') });

/** A number of a suspect lead to be predicted, in the unit that the lesson names. */
export function suspectNumberAsk({ id, words, unit, answer }: NumberProps): NumberAsk {
  const specs = each((practice) => numFor(answer, practice) as SuspectNumber);
  const values = each((practice) => suspectValue(specs[practice], practice));
  if (values.iec.kind !== kindOfUnit(unit)) throw new Error(`the ask ${id}: ${specs.iec.of} is not told in ${unit}`);
  return {
    kind: 'number',
    id,
    unit,
    words: each((practice) => filledWith(words, practice, givensOf(specs[practice], practice))),
    computed: each((practice) => ({ value: inUnit(values[practice].value, unit), told: values[practice].told })),
  };
}

/** The givens of a reading in words. */
const givensOf = (spec: SuspectNumber, practice: Practice): Record<string, string | undefined> =>
  'volts' in spec
    ? {
        volts: quantity(spec.volts, 'V', 3),
        amps: quantity(spec.amps, 'A', 3),
        length: lengthWords(spec.length, practice),
      }
    : {};

const options: readonly (readonly [id: IdentifiedMetal, words: string])[] = [
  ['copper', 'Copper'],
  ['cladAluminium', 'Copper-clad aluminium'],
  ['aluminium', 'Plain aluminium'],
  ['steel', 'Steel'],
];

type Reading = { volts: number; amps: number; length: number; at: number; grams: number; stripped: number };

/** Which metal ohms and grams speak for: the likeliest of all, by the engine. */
export function whichMetalAsk({ id, words, answer }: WhichMetalProps): ChoiceAsk {
  return {
    kind: 'choice',
    id,
    words: each((practice) => filledWith(words, practice, {})),
    options: options.map(([one, told]) => ({ id: one, words: each(() => told) })),
    computed: each((practice) => {
      const of = forPractice(answer, practice) as Reading;
      const { candidates } = identify(
        evidenceOf({
          resistance: {
            U_V: of.volts,
            I_A: of.amps,
            length_m: of.length,
            T_degC: of.at,
            cores: 2,
            method: 'four-terminal',
          },
          mass: { mass_g: of.grams, length_m: of.stripped },
        }),
      );
      const first = candidates[0];
      if (!first || !options.some(([one]) => one === first.metal))
        throw new Error(`the ask ${id}: the likeliest metal is no option (${practice})`);
      return { id: first.metal, told: `${first.name}, ${probabilityWords(first.probability)}` };
    }),
  };
}
