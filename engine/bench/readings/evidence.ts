import type { Layout } from './layout.ts';
import { type Decimal, decimalEvidence } from './numbers.ts';
import { recordsOf } from './records.ts';
import { dateNumbers, dayNumber } from './times.ts';
import type { DateOrder } from './types.ts';

/** What a file as a whole says of its decimal mark and of its dates. */
export interface Evidence {
  readonly decimal: Decimal;
  readonly dateOrder: DateOrder;
  /** What stayed ambiguous, in sentences. */
  readonly notes: readonly string[];
}

/** What a column holds: dates, figures, or what tells nothing of either. */
export type ColumnContent = 'dates' | 'figures' | 'other';

const piece = 1 << 16;

/** Decides decimal mark and date order; goes on through the file beyond its head for as long as one of them is open. */
export function evidenceOf(
  text: string,
  layout: Layout,
  contents: readonly ColumnContent[],
  usual: 'dmy' | 'mdy',
): Evidence {
  const marks = markVotes();
  const dates = dateVotes();
  const judge = (cells: readonly string[]): void => {
    for (let i = 0; i < cells.length; i++) {
      const cell = cells[i] as string;
      if (contents[i] === 'dates') dates.see(cell);
      else if (contents[i] === 'figures') marks.see(cell);
    }
  };
  for (const { cells } of layout.body) judge(cells);
  const settled = (): boolean => marks.sure() && (dates.sure() || !contents.includes('dates'));
  if (!settled()) {
    const records = recordsOf(layout.delimiter, judge);
    for (let at = 0; at < text.length && !settled(); at += piece) records.push(text.slice(at, at + piece));
    records.end();
  }
  const [decimal, said] = marks.decide(layout.delimiter);
  const [dateOrder, told] = dates.decide(usual);
  return { decimal, dateOrder, notes: [...said, ...told] };
}

function markVotes() {
  const votes = { '.': 0, ',': 0, '.?': 0, ',?': 0 };
  const example: Partial<Record<keyof typeof votes, string>> = {};
  return {
    sure: () => votes['.'] !== votes[','],
    see(cell: string) {
      if (!cell.includes('.') && !cell.includes(',')) return;
      const vote = decimalEvidence(cell);
      if (!vote) return;
      votes[vote] += 1;
      example[vote] ??= cell.trim();
    },
    decide(delimiter: string): [Decimal, string[]] {
      if (votes['.'] > 0 && votes[','] > 0) return bothMarks();
      if (votes['.'] !== votes[',']) return [votes['.'] > votes[','] ? '.' : ',', []];
      if (votes[',?'] === 0 && votes['.?'] === 0) return ['.', []];
      return ambiguous(delimiter);
    },
  };

  function bothMarks(): [Decimal, string[]] {
    const decimal = votes['.'] >= votes[','] ? '.' : ',';
    const [point, comma] = [example['.'], example[',']];
    return [
      decimal,
      [`Both marks are used for decimals ('${point}', '${comma}'). The file is read with '${decimal}'.`],
    ];
  }

  /** Only figures like 1,234: decimals where the cells are parted by something else, groups of three where a comma parts them. */
  function ambiguous(delimiter: string): [Decimal, string[]] {
    const comma = votes[',?'] > votes['.?'];
    const decimal = comma && delimiter !== ',' ? ',' : '.';
    const shown = (comma ? example[',?'] : example['.?']) as string;
    if (!comma && delimiter === ',') return [decimal, []];
    const how = comma === (decimal === ',') ? 'a decimal' : 'a group of thousands';
    return [decimal, [`'${shown}' is ambiguous all through the file. Its mark is read as ${how}; check it.`]];
  }
}

function dateVotes() {
  const votes = { dmy: 0, mdy: 0, ymd: 0 };
  const seen: [number, number, number][] = [];
  let last = '';
  let example = '';
  return {
    sure: () => votes.dmy + votes.mdy + votes.ymd > 0,
    see(cell: string) {
      const date = cell.trim().split(/[T\s]/i, 1)[0] as string;
      if (date === last) return;
      last = date;
      const numbers = dateNumbers(date);
      if (!numbers) return;
      example ||= date;
      const [a, b] = numbers;
      if (a > 31) votes.ymd += 1;
      else if (a > 12 && b <= 12) votes.dmy += 1;
      else if (b > 12 && a <= 12) votes.mdy += 1;
      if (seen.length < 1000) seen.push([...numbers]);
    },
    decide(usual: 'dmy' | 'mdy'): [DateOrder, string[]] {
      if (votes.ymd > 0) return ['ymd', []];
      if (votes.dmy !== votes.mdy) return [votes.dmy > votes.mdy ? 'dmy' : 'mdy', []];
      if (seen.length === 0) return ['ymd', []];
      return bySpan(usual);
    },
  };

  /** Rows follow each other within days, not months: the order that makes the shorter way through all dates. */
  function bySpan(usual: 'dmy' | 'mdy'): [DateOrder, string[]] {
    const way = (order: 'dmy' | 'mdy'): number => {
      const days = seen.map(([a, b, c]) =>
        order === 'dmy' ? dayNumber(2000 + (c % 100), b, a) : dayNumber(2000 + (c % 100), a, b),
      );
      return days.slice(1).reduce((sum, day, i) => sum + Math.abs(day - (days[i] as number)), 0);
    };
    const [dmy, mdy] = [way('dmy'), way('mdy')];
    if (3 * dmy < mdy)
      return ['dmy', [`Dates like '${example}' are read with the day first, since the days then follow each other.`]];
    if (3 * mdy < dmy)
      return ['mdy', [`Dates like '${example}' are read with the month first, since the days then follow each other.`]];
    if (seen.every(([a, b]) => a === b)) return [usual, []];
    const words = usual === 'dmy' ? 'the day' : 'the month';
    return [
      usual,
      [
        `'${example}' is ambiguous: nothing in the file tells day from month. It is read with ${words} first; check it.`,
      ],
    ];
  }
}
