import type { KnownEntry, Notebook, OtherEntry, Place } from './document.ts';

type Kind = KnownEntry['kind'];
type OfKind<K extends Kind> = Extract<KnownEntry, { kind: K }>;

const kinds: readonly string[] = ['words', 'prediction', 'question', 'memory'] satisfies Kind[];
const isKnown = (entry: KnownEntry | OtherEntry): entry is KnownEntry => kinds.includes(entry.kind);
const isOne = (entry: KnownEntry | OtherEntry, kind: string, lesson: string, id: string): boolean =>
  isKnown(entry) && entry.kind === kind && entry.lesson === lesson && entry.id === id;

/** The entry of that kind and name in a lesson; undefined where there is none. */
export function entryOf<K extends Kind>(
  { entries }: Notebook,
  kind: K,
  lesson: string,
  id: string,
): OfKind<K> | undefined {
  return entries.find((entry) => isOne(entry, kind, lesson, id)) as OfKind<K> | undefined;
}

/** The notebook with `entry` in the place of the one of the same kind, lesson and name, else at its end. */
export function withEntry(notebook: Notebook, entry: KnownEntry): Notebook {
  const at = notebook.entries.findIndex((one) => isOne(one, entry.kind, entry.lesson, entry.id));
  const entries = at < 0 ? [...notebook.entries, entry] : notebook.entries.with(at, entry);
  return { ...notebook, entries };
}

/** The notebook without that entry. */
export function withoutEntry(notebook: Notebook, kind: Kind, lesson: string, id: string): Notebook {
  return { ...notebook, entries: notebook.entries.filter((one) => !isOne(one, kind, lesson, id)) };
}

/** The notebook with the place a reader came to in a lesson. */
export function withPlace(notebook: Notebook, lesson: string, place: Place): Notebook {
  return { ...notebook, places: { ...notebook.places, [lesson]: place } };
}

/**
 * How many things of a lesson are done: predictions locked in, words written, questions tried. It calls nothing, so that a
 * page can carry it as it stands.
 */
export function doneIn({ entries }: Pick<Notebook, 'entries'>, lesson: string): number {
  const ofLesson = (entries as readonly KnownEntry[]).filter((entry) => entry.lesson === lesson);
  return ofLesson.filter((entry) => {
    if (entry.kind === 'words') return entry.text.trim() !== '';
    return entry.kind === 'prediction' || (entry.kind === 'question' && entry.given.length > 0);
  }).length;
}
