/** A face, a size and a weight that text is set in. */
export interface Setting {
  readonly family: string;
  /** px */
  readonly size: number;
  readonly weight?: number;
  readonly colour: string;
}

let pen: CanvasRenderingContext2D | null = null;

/** Width of a text as the browser sets it [px]. */
export function widthOf(text: string, { family, size, weight = 400 }: Setting): number {
  pen ??= document.createElement('canvas').getContext('2d');
  if (!pen) return text.length * size * 0.5;
  pen.font = `${weight} ${size}px ${family}`;
  return pen.measureText(text).width;
}

/** A text in lines of at most `width` px, broken between words; a space that joins a number to its unit does not break. */
export function wrapped(text: string, setting: Setting, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/[ \n\t]+/).filter(Boolean)) {
    const last = lines.at(-1);
    const joined = last === undefined ? word : `${last} ${word}`;
    if (last === undefined || widthOf(joined, setting) > width) lines.push(word);
    else lines[lines.length - 1] = joined;
  }
  return lines;
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** A text as it stands in markup. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (letter) => entities[letter] ?? letter);

/** One line of text with its baseline at `y`. */
export function textAt(x: number, y: number, line: string, { family, size, weight = 400, colour }: Setting): string {
  const face = escaped(family.replaceAll('"', "'"));
  return `<text x="${round(x)}" y="${round(y)}" font-family="${face}" font-size="${size}" font-weight="${weight}" fill="${colour}">${escaped(line)}</text>`;
}

const round = (value: number): number => Math.round(value * 100) / 100;
