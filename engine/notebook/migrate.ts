import {
  emptyNotebook,
  type KnownEntry,
  type Notebook,
  notebookFormat,
  notebookVersion,
  usualSettings,
} from './document.ts';
import { withEntry } from './edit.ts';

// Version 0 had no document: each prediction and each text stood alone under a key of its own. What it kept was all of the
// one lesson there was.

/** Beginnings of the keys of version 0, by what they kept. */
export const oldKeys = { prediction: 'ampere-and-ember:prediction:', words: 'ampere-and-ember:words:' } as const;
const oldLesson = '2.2';

/** The document of what version 0 kept: its keys with their texts. A text that cannot be read is left out. `at` is when. */
export function fromOldKeys(kept: Readonly<Record<string, string>>, at: string): Notebook {
  return Object.entries(kept).reduce<Notebook>((notebook, [key, text]) => {
    const entry = oldWords(key, text, at) ?? oldPrediction(key, text, at);
    return entry ? withEntry(notebook, entry) : notebook;
  }, emptyNotebook);
}

function oldWords(key: string, text: string, at: string): KnownEntry | undefined {
  if (!key.startsWith(oldKeys.words)) return undefined;
  return { kind: 'words', id: key.slice(oldKeys.words.length), lesson: oldLesson, at, text };
}

function oldPrediction(key: string, text: string, at: string): KnownEntry | undefined {
  if (!key.startsWith(oldKeys.prediction)) return undefined;
  const kept = parsed(text);
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { practice, ...said } = kept as Record<string, unknown>;
  if (practice !== 'iec' && practice !== 'na') return undefined;
  return {
    kind: 'prediction',
    id: key.slice(oldKeys.prediction.length),
    lesson: oldLesson,
    at,
    said: { [practice]: { kind: 'facts', ...said } },
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/**
 * What this device kept, as the present version. Undefined when it is no document of ours or one of a later version: that is
 * never written over. To add a version: bring the one before up to it here, and add its file to the tests.
 */
export function present(kept: unknown): Notebook | undefined {
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { format, version, entries, places, settings } = upToDate(kept) as Partial<Record<keyof Notebook, unknown>>;
  const ours = format === notebookFormat && version === notebookVersion;
  const whole = Array.isArray(entries) && isRecord(places) && isRecord(settings);
  return ours && whole ? (upToDate(kept) as Notebook) : undefined;
}

/** A document of version 1 as version 2, which has settings and keeps what is remembered; any other value as it is. */
export function upToDate(kept: unknown): unknown {
  if (!isRecord(kept) || kept.format !== notebookFormat || kept.version !== 1) return kept;
  return { ...kept, version: 2, settings: usualSettings };
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
