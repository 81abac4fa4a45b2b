import { metals } from '#engine';
import { type Practice, quantity, significant, temperature, thin, timeInWords } from '../../lib/format.ts';
import type { Ask, ChoiceAsk, Each, NumberAsk, OrderAsk } from '../../widgets/answers/asks.ts';
import { inUnit, kindOfUnit, ofUnit } from '../../widgets/prediction/read-amount.ts';
import type { AskProps, ChoiceProps, NumberProps, OrderProps } from './ask-props.ts';
import { type ByPractice, isEach } from './by-practice.ts';
import { caseKinds, caseValue } from './case-value.ts';
import { deviceAsk } from './device-asks.ts';
import { faultAsk, faultNumberAsk } from './fault-asks.ts';
import { isFault } from './fault-props.ts';
import { type CaseNumber, caseNumbers, numFor } from './num-props.ts';
import { caseWordsOf } from './number-of.ts';
import { sizeAsk } from './size-asks.ts';
import { suspectNumberAsk, whichMetalAsk } from './suspect-asks.ts';
import { isSuspect } from './suspect-props.ts';

/** The asks of a lesson with their answers, computed for both practices; the right choice and order are found, never given. */
export const asksOf = (asks: readonly AskProps[]): Ask[] => asks.map(askOf);

function askOf(ask: AskProps): Ask {
  switch (ask.kind) {
    case 'number':
      return isOf(ask, isFault) ? faultNumberAsk(ask) : isOf(ask, isSuspect) ? suspectNumberAsk(ask) : numberAsk(ask);
    case 'choice':
      return choiceAsk(ask);
    case 'order':
      return orderAsk(ask);
    case 'promise':
    case 'band time':
      return deviceAsk(ask);
    case 'size':
    case 'circuit amps':
      return sizeAsk(ask);
    case 'clears':
    case 'which opens':
      return faultAsk(ask);
    case 'which metal':
      return whichMetalAsk(ask);
  }
}

function isOf({ answer }: NumberProps, kind: (spec: { of: string }) => boolean): boolean {
  const spec = numFor(answer, 'iec');
  return 'of' in spec && kind(spec);
}

/** Each practice's own. */
const each = <T>(make: (practice: Practice) => T): Each<T> => ({ iec: make('iec'), na: make('na') });

/** A number's props as one practice has them; only a number of a case can be predicted. */
function specOf(props: unknown, practice: Practice): CaseNumber {
  const spec = numFor(props, practice);
  if (!('of' in spec) || !(caseNumbers as readonly string[]).includes(spec.of))
    throw new Error(`a prediction is of a number of a case, not of ${JSON.stringify(spec)}`);
  return spec as CaseNumber;
}

function numberAsk({ id, words, unit, answer }: NumberProps): NumberAsk {
  const { of } = specOf(answer, 'iec');
  if (caseKinds[of] !== kindOfUnit(unit)) throw new Error(`the ask ${id}: ${of} is not told in ${unit}`);
  return {
    kind: 'number',
    id,
    unit,
    words: each((practice) => filled(words, practice, { '': specOf(answer, practice) })),
    computed: each((practice) => {
      const spec = specOf(answer, practice);
      const value = caseValue(spec);
      return { value: inUnit(value, unit), told: caseWordsOf(spec, value, practice) };
    }),
  };
}

type Option = NonNullable<ChoiceProps['options']>[number];

const directions: readonly Option[] = [
  { id: 'up', words: 'It goes up' },
  { id: 'same', words: 'It stays the same' },
  { id: 'down', words: 'It goes down' },
];
const yesOrNo: readonly Option[] = [
  { id: 'yes', words: 'Yes' },
  { id: 'no', words: 'No' },
];

function choiceAsk({ id, words, options, answer }: ChoiceProps): ChoiceAsk {
  const usual = typeof answer === 'object' && answer.over ? yesOrNo : directions;
  const among = options ?? usual;
  const givens = (practice: Practice): Record<string, CaseNumber> =>
    typeof answer === 'string'
      ? {}
      : {
          '': specOf(answer.compare, practice),
          ...(answer.with ? { 'with.': specOf(answer.with, practice) } : {}),
        };
  const computed = each((practice) => choiceOf(answer, among, practice));
  for (const { id: found } of Object.values(computed))
    if (!among.some((option) => option.id === found)) throw new Error(`the ask ${id}: no option is named ${found}`);
  return {
    kind: 'choice',
    id,
    words: each((practice) => filled(words, practice, givens(practice))),
    options: among.map((option) => ({
      id: option.id,
      words: each((practice) =>
        filled(
          option.words,
          practice,
          option.answer ? { '': specOf(option.answer, practice) } : givens(practice),
          option.value,
        ),
      ),
    })),
    computed,
  };
}

function choiceOf(answer: ChoiceProps['answer'], options: readonly Option[], practice: Practice) {
  if (typeof answer === 'string') {
    const order = byValue(
      options.map((option) => ({ id: option.id, spec: specOf(option.answer, practice) })),
      practice,
    );
    const found = answer === 'least' ? order[0] : order.at(-1);
    if (!found) throw new Error('a choice needs options');
    return { id: found.id, told: found.told };
  }
  const spec = specOf(answer.compare, practice);
  const value = caseValue(spec);
  const told = caseWordsOf(spec, value, practice);
  if (answer.over) return { id: value > ofUnit(answer.over.value, answer.over.unit) ? 'yes' : 'no', told };
  const other = answer.with && specOf(answer.with, practice);
  if (options.some((option) => option.value !== undefined)) {
    const against = other ? value / caseValue(other) : value;
    return { id: nearest(options, against), told: other ? `${significant(against, 2)} times` : told };
  }
  if (!other) throw new Error('a comparison needs with, over, or options that have a value');
  const before = caseValue(other);
  return { id: direction(spec, value, before), told: `${caseWordsOf(other, before, practice)}, then ${told}` };
}

/** Values nearer than this are told as the same: half a kelvin, or a hundredth. Our choice: it is as finely as they are told. */
function direction({ of }: CaseNumber, value: number, before: number): 'up' | 'same' | 'down' {
  const degrees = caseKinds[of].startsWith('temperature');
  const fine = degrees ? 0.5 : 0.01 * Math.max(Math.abs(value), Math.abs(before));
  if (Math.abs(value - before) <= fine) return 'same';
  return value > before ? 'up' : 'down';
}

function nearest(options: readonly Option[], to: number): string {
  const off = ({ value }: Option) => (value === undefined ? Number.POSITIVE_INFINITY : Math.abs(value - to));
  return options.toSorted((a, b) => off(a) - off(b))[0]?.id ?? '';
}

/** Things by their computed number, the least first. Throws where two are told alike, so that no order would be right. */
function byValue(things: readonly { id: string; spec: CaseNumber }[], practice: Practice) {
  const valued = things.map(({ id, spec }) => {
    const value = caseValue(spec);
    return { id, spec, value, told: caseWordsOf(spec, value, practice) };
  });
  const order = valued.toSorted((a, b) => a.value - b.value);
  for (const [i, { spec, value, id }] of order.entries()) {
    const after = order[i + 1];
    if (after && direction(spec, after.value, value) === 'same')
      throw new Error(`${id} and ${after.id} come out alike (${practice}), so they have no order`);
  }
  return order;
}

function orderAsk({ id, words, ends, items }: OrderProps): OrderAsk {
  const orders = each((practice) =>
    byValue(
      items.map((item) => ({ id: item.id, spec: specOf(item.answer, practice) })),
      practice,
    ),
  );
  return {
    kind: 'order',
    id,
    ends: [...ends],
    words: each((practice) => filled(words, practice, {})),
    items: dealt(
      items.map((item) => ({
        id: item.id,
        words: each((practice) => filled(item.words, practice, { '': specOf(item.answer, practice) })),
      })),
      Object.values(orders).map((order) => order.map((one) => one.id)),
    ),
    computed: each((practice) => ({
      ids: orders[practice].map((one) => one.id),
      told: Object.fromEntries(orders[practice].map((one) => [one.id, one.told])),
    })),
  };
}

/** The items as the lesson has them, turned round until they stand in no practice's right order. */
function dealt<T extends { id: string }>(items: readonly T[], orders: readonly (readonly string[])[]): T[] {
  let now = [...items];
  const right = () => orders.some((order) => order.every((id, i) => now[i]?.id === id));
  for (let turns = 0; turns < items.length && right(); turns++) now = [...now.slice(1), ...now.slice(0, 1)];
  return now;
}

/** Words with their givens filled in from the case: 'at {amps}' → 'at 20 A', '{with.length}' from the case compared with. */
function filled(
  words: ByPractice<string>,
  practice: Practice,
  specs: Readonly<Record<string, CaseNumber>>,
  value?: number,
): string {
  const text = isEach(words) ? words[practice] : words;
  return text.replace(/\{((?:with\.)?)(\w+)\}/g, (all, of: string, given: string) => {
    if (given === 'value' && value !== undefined) return significant(value, String(value).replace(/\D/g, '').length);
    const spec = specs[of];
    const told = spec && givenWords(spec, given, practice);
    if (told === undefined) throw new Error(`there is nothing to fill in for ${all} in “${text}”`);
    return told;
  });
}

/** A given of a case in words; undefined where the case has none of that name. */
function givenWords(spec: CaseNumber, given: string, practice: Practice): string | undefined {
  const { amps, volts, ambient, length, size, at, on, off, to, share, metal, cast } = spec;
  const short = (value: number, unit: string) => quantity(value, unit, (String(value).split('.')[1] ?? '').length);
  const told: Record<string, string | undefined> = {
    ambient: temperature(ambient, practice),
    ...(amps !== undefined && { amps: short(amps, 'A') }),
    ...(volts !== undefined && { volts: short(volts, 'V') }),
    ...(length !== undefined && { length: short(length, 'm') }),
    ...(size !== undefined && { size: short(size, cast.startsWith('A') ? 'AWG' : 'mm²') }),
    ...(at !== undefined && { at: timeInWords(at) }),
    ...(on !== undefined && { on: timeInWords(on) }),
    ...(off !== undefined && { off: timeInWords(off) }),
    ...(to !== undefined && { to: temperature(to, practice) }),
    ...(share !== undefined && { share: `${share}${thin}%` }),
    ...(metal !== undefined && { metal: metals[metal].name }),
  };
  return told[given];
}
