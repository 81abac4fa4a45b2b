import { type Notebook, notebookFormat, notebookVersion, readNotebook } from '#engine';

const mostTold = 5;

/** A notebook of a file, or what is wrong with the file, in sentences. */
export type ReadFile =
  | { readonly notebook: Notebook; readonly faults?: undefined }
  | { readonly notebook?: undefined; readonly faults: readonly string[] };

/** Reads the text of a notebook file. */
export function readNotebookFile(text: string): ReadFile {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { faults: ['It is not written as a notebook is: it may be cut short, or of another program.'] };
  }
  const { format, version } = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>;
  if (format !== notebookFormat)
    return { faults: [`It is no notebook of this site: its format must be “${notebookFormat}”.`] };
  if (typeof version === 'number' && version > notebookVersion)
    return { faults: ['A later version of this site wrote it. Open it there, or once this site is up to date.'] };
  const { notebook, faults } = readNotebook(value);
  if (notebook) return { notebook };
  const told = faults.slice(0, mostTold).map(({ path, message }) => sentence(path, message));
  return { faults: faults.length > mostTold ? [...told, `There are ${faults.length - mostTold} more.`] : told };
}

/** 'entries.0.lesson' counts from nought; people count from one: 'Entry 1, lesson: is written like 2.2.' */
function sentence(path: string, message: string): string {
  const [first = '', second, ...rest] = path.split('.');
  const place = first === 'entries' && second !== undefined ? `Entry ${Number(second) + 1}` : first || 'The file';
  const more = first === 'entries' ? rest : second === undefined ? [] : [second, ...rest];
  return `${[place, ...more].join(', ')}: ${message.replace(/\.$/, '')}.`;
}
