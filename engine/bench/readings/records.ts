import Papa from 'papaparse';

/** One row of a file: its cells, the line of the file it begins in (from 1), and its text. */
export type Visit = (cells: string[], line: number, text: string) => void;

/** Splits a text that comes in pieces into rows. */
export interface Records {
  /** Gives the rows that are complete with this piece. */
  push(piece: string): void;
  /** Gives what is left; true where the last line had its line end. */
  end(): boolean;
  /** Lines looked at so far: each once, and again where a quote was left open. */
  looked(): number;
}

/** A quoted cell may hold this many line ends at most; an open quote beyond is a stray one, and swallows nothing. */
const mostLinesInCell = 40;

/**
 * Rows as papaparse reads them, with two rules of our own, since a logger's file may be broken: lines end with LF, CR or CRLF in
 * any mixture, and a quote that nothing closes within a few lines is a letter like any other.
 */
export function recordsOf(delimiter: string, visit: Visit): Records {
  let rest = '';
  let line = 1;
  let looked = 0;
  let endedClean = true;
  const widths = commonWidth();

  function block(lines: string[], last: boolean): number {
    looked += lines.length;
    const whole = wholeBlock(lines, delimiter);
    if (whole) {
      for (let i = 0; i < lines.length; i++) visit(whole[i] as string[], line + i, lines[i] as string);
      line += lines.length;
      widths.see(whole[whole.length >> 1]?.length ?? 0, whole.length);
      return lines.length;
    }
    for (const one of lines) if (!oddQuotes(one)) widths.see(count(one, delimiter) + 1, 1);
    let at = 0;
    while (at < lines.length) {
      const first = lines[at] as string;
      const record = oddQuotes(first) ? openRecord(lines, at, last) : quoted(first, delimiter);
      if (record === 'unfinished') break;
      if (record === null) visit(first.split(delimiter), line, first);
      else visit(record.cells, line, record.text);
      line += record?.lines ?? 1;
      at += record?.lines ?? 1;
    }
    return at;
  }

  /** A line inside a quoted cell that is itself a row like the others: its quote was a stray one. */
  const isRowLike = (inner: string): boolean =>
    /^["\d+-]/.test(inner) && count(inner, delimiter) + 1 === widths.usual();

  /** A record whose quotes close in a later line, null where none does; 'unfinished' where more lines may yet come. */
  function openRecord(lines: string[], at: number, last: boolean): Quoted | null | 'unfinished' {
    const end = Math.min(lines.length, at + mostLinesInCell + 1);
    let text = lines[at] as string;
    for (let i = at + 1; i < end; i++) {
      looked += 1;
      text += `\n${lines[i]}`;
      if (!oddQuotes(lines[i] as string)) {
        if (isRowLike(lines[i] as string)) return null;
        continue;
      }
      const record = quoted(text, delimiter);
      return record && { ...record, lines: i - at + 1 };
    }
    return !last && lines.length - at <= mostLinesInCell ? 'unfinished' : null;
  }

  function push(piece: string, last: boolean): void {
    if (!last && !/[\r\n]/.test(piece)) {
      rest += piece;
      return;
    }
    const held = !last && piece.endsWith('\r') ? 1 : 0; // its LF may come with the next piece
    const text = rest + piece.slice(0, piece.length - held);
    const tail = piece.slice(piece.length - held);
    const lines = (text.includes('\r') ? text.replace(/\r\n?/g, '\n') : text).split('\n');
    const open = lines.pop() as string;
    const done = block(lines, false);
    rest = [...lines.slice(done), open].join('\n') + tail;
  }

  return {
    push: (piece) => push(piece, false),
    looked: () => looked,
    end() {
      push('', true);
      const lines = rest.split('\n');
      endedClean = lines.at(-1) === '';
      if (endedClean) lines.pop();
      rest = '';
      block(lines, true);
      return endedClean;
    },
  };
}

/** The number of cells that most rows have had so far, among those of more than one. */
function commonWidth() {
  const seen = new Map<number, number>();
  let usual = 0;
  return {
    usual: () => usual,
    see(width: number, rows: number): void {
      if (width < 2) return;
      seen.set(width, (seen.get(width) ?? 0) + rows);
      if ((seen.get(width) as number) > (seen.get(usual) ?? 0)) usual = width;
    },
  };
}

interface Quoted {
  readonly cells: string[];
  readonly text: string;
  readonly lines: number;
}

/** All lines at once, where each is a row by itself. */
function wholeBlock(lines: string[], delimiter: string): string[][] | null {
  if (lines.length === 0) return [];
  const text = lines.join('\n');
  const plain = !text.includes('"');
  if (!plain && lines.some(oddQuotes)) return null;
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, newline: '\n', fastMode: plain });
  return data.length === lines.length && errors.length === 0 ? data : null;
}

/** One row with quotes in it; null where they do not stand as quotes of cells. */
function quoted(text: string, delimiter: string): Quoted | null {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, newline: '\n', fastMode: false });
  return data.length === 1 && errors.length === 0 ? { cells: data[0] as string[], text, lines: 1 } : null;
}

const oddQuotes = (text: string): boolean => count(text, '"') % 2 === 1;

function count(text: string, letter: string): number {
  let found = 0;
  for (let at = text.indexOf(letter); at >= 0; at = text.indexOf(letter, at + 1)) found += 1;
  return found;
}
