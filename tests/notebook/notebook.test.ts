// The notebook document: what its edits keep, what its schema refuses and in which words, and how older keys come over.
import { describe, expect, it } from 'vitest';
import {
  doneIn,
  emptyNotebook,
  entryOf,
  fromOldKeys,
  type Notebook,
  present,
  readNotebook,
  withEntry,
  withoutEntry,
  withPlace,
} from '#engine';

const at = '2031-05-04T09:30:00.000Z';
const words = (id: string, text: string) => ({ kind: 'words', id, lesson: '2.2', at, text }) as const;
const ref = { id: 'Q28', version: 1, practice: 'iec', seed: 'lesson' } as const;
const question = { kind: 'question', id: 'q28', lesson: '2.2', at, ref, given: ['62 °C'] } as const;
const prediction = { kind: 'prediction', id: 'warm-up', lesson: '2.2', at, said: { iec: { kind: 'facts' } } } as const;
const full = [words('why', 'Copper first.'), question, prediction].reduce<Notebook>(withEntry, emptyNotebook);

describe('edits', () => {
  it('replace an entry where it stood and leave the others in order', () => {
    const changed = withEntry(full, { ...question, given: ['62 °C', '71 °C'] });
    expect(changed.entries.map(({ kind }) => kind)).toEqual(['words', 'question', 'prediction']);
    expect(entryOf(changed, 'question', '2.2', 'q28')?.given).toHaveLength(2);
    expect(entryOf(full, 'question', '2.2', 'q28')?.given).toHaveLength(1);
  });

  it('tell the same name in two lessons apart', () => {
    const both = withEntry(full, { ...words('why', 'Other.'), lesson: '1.1' });
    expect(entryOf(both, 'words', '2.2', 'why')?.text).toBe('Copper first.');
    expect(entryOf(withoutEntry(both, 'words', '2.2', 'why'), 'words', '1.1', 'why')?.text).toBe('Other.');
  });

  it('count what is done, and not what was begun and wiped', () => {
    expect(doneIn(full, '2.2')).toBe(3);
    expect(doneIn(withEntry(full, words('why', '  ')), '2.2')).toBe(2);
    expect(doneIn(full, '1.1')).toBe(0);
  });
});

describe('the schema', () => {
  it('takes what the edits make', () => {
    const notebook = withPlace(full, '2.2', { step: 'say-why', of: 9, at });
    expect(readNotebook(JSON.parse(JSON.stringify(notebook)))).toEqual({ notebook });
  });

  it('keeps an entry of a kind it does not know, whole', () => {
    const later = { ...full, entries: [...full.entries, { kind: 'weather', sky: ['grey'] }] };
    expect(readNotebook(later).notebook?.entries.at(-1)).toEqual({ kind: 'weather', sky: ['grey'] });
    expect(doneIn(later, '2.2')).toBe(3);
  });

  it.each<[string, unknown, RegExp]>([
    ['another format', { ...full, format: 'recipes' }, /format must be “ampere-and-ember notebook”/],
    ['a later version', { ...full, version: 2 }, /version must be 1/],
    [
      'a lesson that is none',
      { ...full, entries: [{ ...question, lesson: 'two' }] },
      /entries\.0\.lesson is written like 2\.2/,
    ],
    ['a time that is none', { ...full, entries: [{ ...question, at: 'noon' }] }, /entries\.0\.at is no time like/],
    [
      'a ref that is none',
      { ...full, entries: [{ ...question, ref: { ...ref, id: '<b>' } }] },
      /ref\.id is written like Q28/,
    ],
  ])('refuses %s and says where', (_name, value, says) => {
    const faults = readNotebook(value).faults ?? [];
    expect(faults.map(({ path, message }) => `${path} ${message}`).join('\n')).toMatch(says);
  });
});

describe('what stood alone before there was a document', () => {
  const kept = {
    'ampere-and-ember:prediction:warm-up': JSON.stringify({ practice: 'na', facts: { start: 25 } }),
    'ampere-and-ember:words:why-steeper': 'The copper is small.',
    'ampere-and-ember:prediction:broken': '{',
    'ampere-and-ember:theme': 'lamp',
  };

  it('comes over as entries, and passes the schema', () => {
    const notebook = fromOldKeys(kept, at);
    expect(readNotebook(notebook).faults).toBeUndefined();
    expect(entryOf(notebook, 'words', '2.2', 'why-steeper')?.text).toBe('The copper is small.');
    expect(entryOf(notebook, 'prediction', '2.2', 'warm-up')?.said).toEqual({
      na: { kind: 'facts', facts: { start: 25 } },
    });
    expect(notebook.entries).toHaveLength(2);
  });

  it('is never taken for a document, nor is one of a later version', () => {
    for (const value of [null, 3, [], {}, { ...full, version: 2 }, { ...full, entries: 'none' }])
      expect(present(value)).toBeUndefined();
    expect(present(full)).toEqual(full);
  });
});
