// The notebook document: what its edits keep, what its schema refuses and in which words, and how older keys come over.
import { describe, expect, it } from 'vitest';
import {
  doneIn,
  emptyNotebook,
  entryOf,
  fromOldKeys,
  lessonsBegun,
  memoriesOf,
  type Notebook,
  notebookVersion,
  practiceSettings,
  present,
  readNotebook,
  withEntry,
  withoutEntry,
  withPlace,
  withReview,
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
    ['a later version', { ...full, version: notebookVersion + 1 }, /version must be 2/],
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
    for (const value of [null, 3, [], {}, { ...full, version: notebookVersion + 1 }, { ...full, entries: 'none' }])
      expect(present(value)).toBeUndefined();
    expect(present(full)).toEqual(full);
  });
});

describe('what is remembered', () => {
  const objectives = ['2.2 read the time to 63 % of the rise'];
  const review = { day: 22_403, template: 'Q28', seed: 'a', difficulty: 2, grade: 3, tags: [] } as const;
  const kept = withReview(full, objectives, review, at);

  it('is an entry for each objective, and a later review changes it', () => {
    const later = withReview(kept, objectives, { ...review, day: 22_406, grade: 1, tags: ['M21'] }, at);
    const [memory, ...more] = memoriesOf(later);
    expect(more).toEqual([]);
    expect(memory).toMatchObject({ objective: objectives[0], day: 22_406, reviews: [{ grade: 3 }, { tags: ['M21'] }] });
    expect(doneIn(later, '2.2')).toBe(3);
  });

  it('passes the schema, and comes back from a file as it was', () => {
    expect(readNotebook(JSON.parse(JSON.stringify(kept)))).toEqual({ notebook: kept });
  });

  it.each<[string, object, RegExp]>([
    ['a grade that is none', { reviews: [{ ...review, grade: 7 }] }, /reviews\.0\.grade is none of 1, 2, 3, 4/],
    ['a mistake that is not known', { reviews: [{ ...review, tags: ['M99'] }] }, /tags\.0 is no mistake that is known/],
    ['a day that is none', { day: 1.5 }, /memory\.day is no whole day/],
    ['a stability that the schedule cannot go on from', { S: 0 }, /memory\.S Invalid value/],
  ])('is refused with %s', (_name, change, says) => {
    const [memory] = memoriesOf(kept);
    const entry = { kind: 'memory', id: objectives[0], lesson: '2.2', at, memory: { ...memory, ...change } };
    const faults = readNotebook({ ...full, entries: [entry] }).faults ?? [];
    expect(faults.map(({ path, message }) => `${path} ${message}`).join('\n')).toMatch(says);
  });

  it('is asked of the lessons that were begun: read, or answered in', () => {
    expect(lessonsBegun(withPlace(kept, '1.1', { step: 'explain', of: 9, at }))).toEqual(['1.1', '2.2']);
    expect(lessonsBegun({ ...full, entries: [{ kind: 'weather' }] })).toEqual([]);
  });

  it('is asked by the settings, where an exam is a day', () => {
    expect(practiceSettings(emptyNotebook)).toEqual({ retention: 0.9, examDay: undefined });
    const set = { ...full, settings: { retention: 0.8, exam: '2031-06-12' } };
    expect(practiceSettings(set)).toEqual({ retention: 0.8, examDay: 22_442 });
    expect(readNotebook({ ...set, settings: { retention: 0.8, exam: '12 June' } }).faults?.[0]?.message).toMatch(
      /no day/,
    );
  });
});

describe('a document of version 1', () => {
  // as version 1 wrote it: no settings, and nothing remembered
  const old = {
    format: 'ampere-and-ember notebook',
    version: 1,
    entries: [
      { kind: 'words', id: 'why', lesson: '2.2', at, text: 'Copper first.' },
      { kind: 'question', id: 'q28', lesson: '2.2', at, ref, given: ['62 °C'] },
      { kind: 'prediction', id: 'warm-up', lesson: '2.2', at, said: { iec: { kind: 'facts' } } },
    ],
    places: { '2.2': { step: 'say-why', of: 9, at } },
  };

  it('is brought up to the present one with all it held, from this device and from a file', () => {
    const now = { ...old, version: notebookVersion, settings: { retention: 0.9 } };
    expect(present(old)).toEqual(now);
    expect(readNotebook(old)).toEqual({ notebook: now });
  });

  it('of another program is not touched', () => {
    expect(present({ ...old, format: 'recipes' })).toBeUndefined();
  });
});
