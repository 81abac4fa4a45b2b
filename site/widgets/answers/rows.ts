import { clock, quantity } from '../../lib/format.ts';
import type { Practice } from '../../lib/practice.ts';
import type { Said } from '../prediction/locked.ts';
import type { FieldUnit } from '../prediction/read-amount.ts';
import type { Ask, ChoiceAsk, NumberAsk, OrderAsk } from './asks.ts';
import { besideComputed } from './beside.ts';

/** One ask as a row: what was said, what was computed, each in a line or more, and how they lie to each other. */
export interface AnswerRow {
  readonly id: string;
  readonly words: string;
  readonly yours: readonly string[];
  readonly computed: readonly string[];
  readonly beside: string;
}

/** The row of one ask, told in `practice`. */
export function rowOf(ask: Ask, said: Said | undefined, practice: Practice): AnswerRow {
  const { id } = ask;
  const words = ask.words[practice];
  switch (ask.kind) {
    case 'number':
      return { id, words, ...numberRow(ask, said, practice) };
    case 'choice':
      return { id, words, ...choiceRow(ask, said, practice) };
    case 'order':
      return { id, words, ...orderRow(ask, said, practice) };
  }
}

type Cells = Pick<AnswerRow, 'yours' | 'computed' | 'beside'>;
const none = '–';

function numberRow({ unit, computed }: NumberAsk, said: Said | undefined, practice: Practice): Cells {
  const { value, told } = computed[practice];
  if (typeof said !== 'number') return { yours: [none], computed: [told], beside: '' };
  return { yours: [numberTold(said, unit)], computed: [told], beside: besideComputed(said, value, unit) };
}

/** A number as it was said: no finer than it was typed. */
export function numberTold(value: number, unit: FieldUnit): string {
  if (unit === 'min:s') return clock(value);
  const places = (String(Number(value.toPrecision(4))).split('.')[1] ?? '').length;
  return unit === '×' ? `${value} times` : quantity(value, unit, places);
}

function choiceRow({ options, computed }: ChoiceAsk, said: Said | undefined, practice: Practice): Cells {
  const named = (id: string) => options.find((option) => option.id === id)?.words[practice];
  const { id, told } = computed[practice];
  const yours = typeof said === 'string' ? named(said) : undefined;
  return {
    yours: [yours ?? none],
    computed: [named(id) ?? none, told],
    beside: yours === undefined ? '' : said === id ? 'the same' : '',
  };
}

function orderRow({ items, computed }: OrderAsk, said: Said | undefined, practice: Practice): Cells {
  const named = (id: string) => items.find((item) => item.id === id)?.words[practice] ?? none;
  const { ids, told } = computed[practice];
  const yours = Array.isArray(said) ? (said as readonly string[]) : [];
  const same = ids.filter((id, i) => yours[i] === id).length;
  return {
    yours: yours.length > 0 ? yours.map((id, i) => `${i + 1}. ${named(id)}`) : [none],
    computed: ids.map((id, i) => `${i + 1}. ${named(id)}: ${told[id] ?? none}`),
    beside: yours.length === 0 ? '' : same === ids.length ? 'the same' : `the same in ${same} of ${ids.length} places`,
  };
}

/** Whether what was kept answers this ask: a page may have changed since. */
export function answers(ask: Ask, said: Said | undefined): boolean {
  if (ask.kind === 'number') return typeof said === 'number';
  if (ask.kind === 'choice') return ask.options.some(({ id }) => id === said);
  return Array.isArray(said) && said.length === ask.items.length && ask.items.every(({ id }) => said.includes(id));
}
