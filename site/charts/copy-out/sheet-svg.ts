import { token } from '../../lib/theme.ts';
import type { Cell } from '../sheet.ts';
import { byDay } from './by-day.ts';
import { drawingsOf } from './drawings.ts';
import { escaped, type Setting, textAt, widthOf, wrapped } from './typeset.ts';

/** What is written on a sheet besides its drawings. */
export interface SheetWords {
  readonly number?: string | undefined;
  readonly title: string;
  readonly sentence?: string | undefined;
  readonly cells: readonly Cell[];
}

/** A sheet as a file of its own. */
export interface SheetFile {
  readonly width: number;
  readonly height: number;
  readonly svg: string;
}

const maker = 'Ampere & Ember, computed';
const pad = 24; // px
const least = 440; // px wide, so that a title block has room
const edge = 8; // px round the frame, for its corner ticks
const foot = 22; // px under it, for where it is from

interface Faces {
  readonly number: Setting;
  readonly title: Setting;
  readonly sentence: Setting;
  readonly name: Setting;
  readonly value: Setting;
  readonly line: string;
  readonly ink: string;
  readonly yours: string;
}

/** The sheet `figure` as SVG that needs nothing else: drawings, number, title, sentence and title block, by Day on white. */
export function sheetSvg(figure: Element, words: SheetWords): SheetFile {
  return byDay(() => {
    const body = figure.querySelector('.body') ?? figure;
    const drawn = drawingsOf(body);
    const faces = facesOf(figure);
    const width = Math.max(least, drawn.width + 2 * pad);
    const parts: string[] = [];
    let y = head(parts, words, faces, width);
    parts.push(`<g transform="translate(${pad} ${y})">\n${drawn.markup}\n</g>`);
    y += drawn.height + 14;
    for (const line of wrapped(words.sentence ?? '', faces.sentence, Math.min(736, width - 2 * pad))) {
      y += 20;
      parts.push(textAt(pad, y, line, faces.sentence));
    }
    y += words.sentence ? 20 : 6;
    const height = y + block(parts, words.cells, faces, width, y);
    return file(parts, words, faces, width, height);
  });
}

function facesOf(figure: Element): Faces {
  const colour = (name: `--${string}`) => token(figure, name);
  const [ui, prose] = [colour('--face-ui'), colour('--face-prose')];
  return {
    number: { family: ui, size: 15, weight: 600, colour: colour('--ink') },
    title: { family: prose, size: 18, colour: colour('--ink') },
    sentence: { family: ui, size: 15, colour: colour('--ink-2') },
    name: { family: ui, size: 13, colour: colour('--ink-3') },
    value: { family: ui, size: 15, colour: colour('--ink') },
    line: colour('--line'),
    ink: colour('--ink'),
    yours: colour('--yours'),
  };
}

/** Number and title; returns where the drawings begin. */
function head(parts: string[], { number, title }: SheetWords, faces: Faces, width: number): number {
  const fig = number === undefined ? '' : `Fig. ${number}`;
  const left = fig ? pad + widthOf(fig, faces.number) + 14 : pad;
  if (fig) parts.push(textAt(pad, 36, fig, faces.number));
  const lines = wrapped(title, faces.title, width - left - pad);
  lines.forEach((line, i) => {
    parts.push(textAt(left, 36 + 24 * i, line, faces.title));
  });
  return 36 + 24 * Math.max(0, lines.length - 1) + 24;
}

const cellPad = 24; // px

/** The title block below `top`, its cells in as many rows as they need; returns its height. */
function block(parts: string[], cells: readonly Cell[], faces: Faces, width: number, top: number): number {
  const most = width - 2 * cellPad;
  const sized = cells.map((cell) => {
    const value = cell.voice === 'yours' ? { ...faces.value, colour: faces.yours, weight: 600 } : faces.value;
    const lines = wrapped(cell.value, value, most);
    const wide = Math.max(widthOf(cell.name, faces.name), ...lines.map((line) => widthOf(line, value)));
    return { name: cell.name, value, lines, wide: wide + 2 * cellPad };
  });
  const rows: (typeof sized)[] = [];
  for (const cell of sized) {
    const row = rows.at(-1);
    const taken = row?.reduce((sum, { wide }) => sum + wide, 0) ?? 0;
    if (row && taken + cell.wide <= width) row.push(cell);
    else rows.push([cell]);
  }
  let y = top;
  for (const row of rows) {
    const tall = 46 + 20 * Math.max(...row.map(({ lines }) => lines.length));
    const spare = (width - row.reduce((sum, { wide }) => sum + wide, 0)) / row.length;
    parts.push(rule(`M0 ${y}H${width}`, faces.line));
    let x = 0;
    for (const [i, { name, value, lines, wide }] of row.entries()) {
      if (i > 0) parts.push(rule(`M${round(x)} ${y}V${y + tall}`, faces.line));
      parts.push(textAt(x + cellPad, y + 25, name, faces.name));
      lines.forEach((line, n) => {
        parts.push(textAt(x + cellPad, y + 46 + 20 * n, line, value));
      });
      x += wide + spare;
    }
    y += tall;
  }
  return y - top;
}

const rule = (d: string, colour: string, wide = 1): string =>
  `<path d="${d}" fill="none" stroke="${colour}" stroke-width="${wide}"/>`;
const round = (value: number): number => Math.round(value * 100) / 100;

function file(parts: readonly string[], words: SheetWords, faces: Faces, width: number, tall: number): SheetFile {
  const height = Math.ceil(tall);
  const [whole, high] = [width + 2 * edge, height + 2 * edge + foot];
  const name = [words.number === undefined ? '' : `Fig. ${words.number} `, words.title].join('');
  const says = [words.sentence ?? '', ...words.cells.map((cell) => `${cell.name}: ${cell.value}.`)].join(' ').trim();
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${whole}" height="${high}" viewBox="${-edge} ${-edge} ${whole} ${high}" role="img">`,
    `<title>${escaped(name)}</title>`,
    `<desc>${escaped(says)}</desc>`,
    `<rect x="${-edge}" y="${-edge}" width="${whole}" height="${high}" fill="#ffffff"/>`,
    `<rect x="0.5" y="0.5" width="${width - 1}" height="${height - 1}" fill="none" stroke="${faces.line}"/>`,
    rule(`M-5 9V-5H9M${width + 5} ${height - 9}V${height + 5}H${width - 9}`, faces.ink, 1.25),
    ...parts,
    textAt(0, height + foot, maker, faces.name),
    '</svg>',
  ].join('\n');
  return { width: whole, height: high, svg };
}
