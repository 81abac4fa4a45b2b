import { tableCurrentNeeded } from '#engine';
import { type Practice, quantity, three } from '../../lib/format.ts';
import type { ChoiceAsk, Each, NumberAsk } from '../../widgets/answers/asks.ts';
import { type Choice, choiceOf } from '../../widgets/size-chooser/choice.ts';
import { type ByPractice, isEach } from './by-practice.ts';
import { chooserAsks } from './circuit-case.ts';
import type { SizeAskProps } from './size-ask-props.ts';

const each = <T>(make: (practice: Practice) => T): Each<T> => ({ iec: make('iec'), na: make('na') });
const said = (words: ByPractice<string>): Each<string> => (isEach(words) ? words : { iec: words, na: words });

/** An ask on the way from a load to a size, answered by the engine's own chain for both practices. */
export function sizeAsk(ask: SizeAskProps): ChoiceAsk | NumberAsk {
  const asks = chooserAsks(ask.answer);
  const choices = each((practice) => choiceOf(asks[practice], practice));
  return ask.kind === 'size' ? whichSize(ask, choices) : ampsOf(ask, choices);
}

function whichSize({ id, words, sizes }: Extract<SizeAskProps, { kind: 'size' }>, choices: Each<Choice>): ChoiceAsk {
  const length = Math.min(sizes.iec.length, sizes.na.length); // drawing: as many as both practices offer
  return {
    kind: 'choice',
    id,
    words: said(words),
    options: Array.from({ length }, (_, i) => ({
      id: `size-${i + 1}`,
      words: each((practice) => sizeWords(sizes[practice][i] ?? 0, practice)),
    })),
    computed: each((practice) => {
      const size = choices[practice].chosen?.size;
      const at = size ? (sizes[practice] as readonly number[]).indexOf(size.size) : -1;
      if (!size || at < 0) throw new Error(`the ask ${id}: the right size is not among those offered (${practice})`);
      return { id: `size-${at + 1}`, told: sizeWords(size.size, practice) };
    }),
  };
}

const sizeWords = (size: number, practice: Practice): string =>
  quantity(size, practice === 'na' ? 'AWG' : 'mm²', (String(size).split('.')[1] ?? '').length);

function ampsOf({ id, words, of }: Extract<SizeAskProps, { kind: 'circuit amps' }>, choices: Each<Choice>): NumberAsk {
  return {
    kind: 'number',
    id,
    unit: 'A',
    words: said(words),
    computed: each((practice) => {
      const { Ib, device, factors } = choices[practice];
      const value = of === 'load' ? Ib : tableCurrentNeeded(device.In, factors);
      return { value, told: three(value, 'A') };
    }),
  };
}
