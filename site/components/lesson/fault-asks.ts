import { type Selectivity, selectiveByCurves, selectiveGG } from '#engine';
import { type Practice, quantity } from '../../lib/format.ts';
import type { ChoiceAsk, Each, NumberAsk } from '../../widgets/answers/asks.ts';
import { lengthWords } from '../../widgets/figure/length-words.ts';
import { energy } from '../../widgets/i2t-scale/words.ts';
import { amps, ohms, opensWithin } from '../../widgets/loop-trace/words.ts';
import { inUnit, kindOfUnit } from '../../widgets/prediction/read-amount.ts';
import type { NumberProps } from './ask-props.ts';
import { forPractice } from './by-practice.ts';
import type { FaultAskProps, PairProps } from './fault-ask-props.ts';
import { faultValue, lessonLoop } from './fault-numbers.ts';
import type { FaultNumber, LoopSpot } from './fault-props.ts';
import { filledWith } from './fill-words.ts';
import { numFor } from './num-props.ts';

const each = <T>(make: (practice: Practice) => T): Each<T> => ({ iec: make('iec'), na: make('na') });

/** A number of a fault to be predicted, in the unit that the lesson names. */
export function faultNumberAsk({ id, words, unit, answer }: NumberProps): NumberAsk {
  const specs = each((practice) => numFor(answer, practice) as FaultNumber);
  const values = each((practice) => faultValue(specs[practice], practice));
  if (values.iec.kind !== kindOfUnit(unit)) throw new Error(`the ask ${id}: ${specs.iec.of} is not told in ${unit}`);
  return {
    kind: 'number',
    id,
    unit,
    words: each((practice) => filledWith(words, practice, givensOf(specs[practice], practice))),
    computed: each((practice) => ({ value: inUnit(values[practice].value, unit), told: values[practice].told })),
  };
}

const short = (value: number, unit: string) => quantity(value, unit, (String(value).split('.')[1] ?? '').length);

/** The givens of a number in words: its length and the ohms before the lead. */
function givensOf(spec: FaultNumber, practice: Practice): Record<string, string | undefined> {
  return {
    ...('length' in spec && spec.length !== undefined && { length: lengthWords(spec.length, practice) }),
    ...('source' in spec && { source: short(spec.source, 'Ω') }),
    ...('origin' in spec && { origin: short(spec.origin, 'Ω') }),
  };
}

/** An ask about a fault, answered by the engine for both practices. */
export function faultAsk(ask: FaultAskProps): ChoiceAsk {
  return ask.kind === 'clears' ? clearsAsk(ask) : whichOpensAsk(ask);
}

type Option = readonly [id: string, words: string];
const optionsOf = (options: readonly Option[]): ChoiceAsk['options'] =>
  options.map(([id, words]) => ({ id, words: each(() => words) }));

const clearings: readonly Option[] = [
  ['met', 'It surely clears in time'],
  ['not met', 'It does not surely clear in time'],
  ['no rule', 'The code has no number to judge it by'],
];

function clearsAsk({ id, words, answer }: Extract<FaultAskProps, { kind: 'clears' }>): ChoiceAsk {
  const specs = each((practice) => forPractice(answer, practice) as unknown as LoopSpot);
  return {
    kind: 'choice',
    id,
    words: each((practice) => filledWith(words, practice, { length: lengthWords(specs[practice].length, practice) })),
    options: optionsOf(clearings),
    computed: each((practice) => {
      const { loop, clearing } = lessonLoop(specs[practice], practice);
      if (!clearings.some(([one]) => one === clearing.outcome))
        throw new Error(`the ask ${id}: its outcome is ${clearing.outcome} (${practice})`);
      const opens = `${amps(loop.least)} over ${ohms(loop.Zs)}, and the device opens ${opensWithin(clearing.t)}`;
      return {
        id: clearing.outcome,
        told: Number.isFinite(clearing.t) ? opens : `${amps(loop.least)}, and it may hold`,
      };
    }),
  };
}

const openings: readonly Option[] = [
  ['lower', 'Only the one nearer the fault'],
  ['both', 'Both may open'],
  ['upper', 'Only the one nearer the source'],
];

function whichOpensAsk({ id, words, answer }: Extract<FaultAskProps, { kind: 'which opens' }>): ChoiceAsk {
  const pairs = each((practice) => forPractice({ answer }, practice).answer as PairProps);
  return {
    kind: 'choice',
    id,
    words: each((practice) => filledWith(words, practice, pairGivens(pairs[practice]))),
    options: optionsOf(openings),
    computed: each((practice) => {
      const { selective, pair } = selectivityOf(pairs[practice]);
      if (selective === null || !pair) throw new Error(`the ask ${id}: no table tells which opens (${practice})`);
      const told = `${energy(pair.downstream)} against ${energy(pair.upstream)}`;
      return { id: selective ? 'lower' : 'both', told };
    }),
  };
}

const selectivityOf = (pair: PairProps): Selectivity =>
  'melts' in pair
    ? selectiveByCurves({ upstream: pair.melts, downstream: pair.through })
    : selectiveGG(pair.upper, pair.lower);

const pairGivens = (pair: PairProps): Record<string, string | undefined> => ({
  lower: short(pair.lower, 'A'),
  upper: short(pair.upper, 'A'),
  ...('melts' in pair && { through: energy(pair.through), melts: energy(pair.melts) }),
});
