import { saveBlob } from './save.ts';
import { type SheetWords, sheetSvg } from './sheet-svg.ts';
import { toPng } from './to-png.ts';

/** A picture's kind of file. */
export type PictureForm = 'png' | 'svg';

/**
 * Hands a sheet out as a picture: to the clipboard, or as a file where that is asked for or the browser keeps its clipboard to
 * itself. Returns what happened, in words for the reader.
 */
export async function copyOut(
  figure: Element,
  words: SheetWords,
  form: PictureForm,
  way: 'copy' | 'save',
): Promise<string> {
  try {
    const file = sheetSvg(figure, words);
    const name = `${fileName(words)}.${form}`;
    const vector = new Blob([file.svg], { type: 'image/svg+xml' });
    const blob = form === 'svg' ? Promise.resolve(vector) : toPng(file);
    if (way === 'copy' && (await copied(form, blob, file.svg))) return `Copied as ${form.toUpperCase()}.`;
    saveBlob(name, await blob);
    return way === 'save' ? `Saved as ${name}.` : `This browser does not let a page copy it. Saved as ${name}.`;
  } catch {
    return 'The picture could not be made. Try the other kind.';
  }
}

async function copied(form: PictureForm, blob: Promise<Blob>, svg: string): Promise<boolean> {
  try {
    if (form === 'png') await navigator.clipboard.write([new ClipboardItem({ 'image/png': blob })]);
    else if (takes('image/svg+xml')) {
      const text = new Blob([svg], { type: 'text/plain' });
      await navigator.clipboard.write([new ClipboardItem({ 'image/svg+xml': blob, 'text/plain': text })]);
    } else await navigator.clipboard.writeText(svg);
    return true;
  } catch {
    return false;
  }
}

const takes = (type: string): boolean => 'supports' in ClipboardItem && ClipboardItem.supports(type);

/** Name of the file: 'fig-2.2.1-a-lead-warming'. */
export function fileName({ number, title }: SheetWords): string {
  const plain = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return [...(number === undefined ? [] : [`fig-${number}`]), plain.slice(0, 60).replace(/-$/, '')]
    .filter(Boolean)
    .join('-');
}
