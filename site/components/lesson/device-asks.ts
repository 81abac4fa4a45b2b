import { type Device, fastest, type Promised, promised, slowest } from '#engine';
import { type Practice, significant, thin, timeInWords } from '../../lib/format.ts';
import type { ChoiceAsk, Each, NumberAsk } from '../../widgets/answers/asks.ts';
import { inUnit, kindOfUnit } from '../../widgets/prediction/read-amount.ts';
import { type ByPractice, forPractice } from './by-practice.ts';
import type { DeviceAskProps } from './device-ask-props.ts';
import { deviceValue, lessonDevice } from './device-numbers.ts';
import type { DeviceBandNumber, PromisedProps } from './device-props.ts';
import { filledWith } from './fill-words.ts';

const each = <T>(make: (practice: Practice) => T): Each<T> => ({ iec: make('iec'), na: make('na') });

/** An ask about a fuse or a breaker, its answer from the standard's points, for both practices. */
export function deviceAsk(ask: DeviceAskProps): ChoiceAsk | NumberAsk {
  return ask.kind === 'promise' ? promiseAsk(ask) : bandTimeAsk(ask);
}

const says: Readonly<Record<Promised, Readonly<Record<Device['kind'], string>>>> = {
  holds: { fuse: 'It must hold', breaker: 'It must hold' },
  may: { fuse: 'It may do either', breaker: 'It may do either' },
  acts: { fuse: 'It must open', breaker: 'It must trip' },
};

function promiseAsk({ id, words, answer }: Extract<DeviceAskProps, { kind: 'promise' }>): ChoiceAsk {
  const specs = each((practice) => forPractice(answer, practice) as unknown as PromisedProps);
  const options = (['holds', 'may', 'acts'] as const).map((one) => ({
    id: one,
    words: each((practice) => says[one][lessonDevice(specs[practice]).kind]),
  }));
  return {
    kind: 'choice',
    id,
    words: each((practice) => filled(words, practice, specs[practice])),
    options,
    computed: each((practice) => {
      const { amps, within } = specs[practice];
      const of = lessonDevice(specs[practice]);
      return { id: promised(of, amps, within), told: timesOf(of, amps) };
    }),
  };
}

/** The times that the standard's points leave a device at a held current. */
function timesOf(of: Device, I: number): string {
  const [least, most] = [fastest(of, I, 'guaranteed'), slowest(of, I, 'guaranteed')];
  if (!Number.isFinite(least)) return 'no time at which it acts';
  const latest = Number.isFinite(most) ? `at most ${timeInWords(most)}` : 'no latest time';
  return least > 0 ? `at least ${timeInWords(least)}, ${latest}` : `no least time, ${latest}`;
}

function bandTimeAsk({ id, words, unit, answer }: Extract<DeviceAskProps, { kind: 'band time' }>): NumberAsk {
  const specs = each((practice) => forPractice(answer, practice) as unknown as DeviceBandNumber);
  const values = each((practice) => deviceValue(specs[practice], practice));
  if (values.iec.kind !== kindOfUnit(unit)) throw new Error(`the ask ${id}: its answer is not told in ${unit}`);
  return {
    kind: 'number',
    id,
    unit,
    words: each((practice) => filled(words, practice, specs[practice])),
    computed: each((practice) => ({ value: inUnit(values[practice].value, unit), told: values[practice].told })),
  };
}

/** Words with {device}, {amps} and {within} filled in. */
function filled(
  words: ByPractice<string>,
  practice: Practice,
  spec: { device: PromisedProps['device']; rating: number; amps?: number | undefined; within?: number | undefined },
): string {
  return filledWith(words, practice, {
    device: lessonDevice(spec).name,
    amps: spec.amps === undefined ? undefined : `${significant(spec.amps, 3).replace(/\.0+$/, '')}${thin}A`,
    within: spec.within === undefined ? undefined : timeInWords(spec.within),
  });
}
