import * as v from 'valibot';
import { type Notebook, notebookFormat, notebookVersion } from './document.ts';

const name = v.pipe(v.string(), v.minLength(1), v.maxLength(80));
const lesson = v.pipe(v.string(), v.regex(/^[1-9]\.[1-9]$/, 'is written like 2.2'));
const moment = v.pipe(v.string(), v.isoTimestamp('is no time like 2031-05-04T09:30:00Z'));
const practice = v.picklist(['iec', 'na'], 'is none of iec, na');
const base = { id: name, lesson, at: moment };

const ref = v.object({
  id: v.pipe(v.string(), v.regex(/^[QD]\d\d[a-z]?$/, 'is written like Q28')),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  practice,
  seed: v.pipe(v.string(), v.maxLength(200)),
});

const entry = v.lazy((input) => {
  const kind = typeof input === 'object' && input !== null && 'kind' in input ? input.kind : undefined;
  if (kind === 'words')
    return v.object({ kind: v.literal('words'), ...base, text: v.pipe(v.string(), v.maxLength(20_000)) });
  if (kind === 'prediction')
    return v.object({ kind: v.literal('prediction'), ...base, said: v.record(practice, v.unknown()) });
  if (kind === 'question') return v.object({ kind: v.literal('question'), ...base, ref, given: v.array(v.unknown()) });
  return v.looseObject({ kind: v.string('has no kind') });
});

const notebookSchema = v.object({
  format: v.literal(notebookFormat, `must be “${notebookFormat}”`),
  version: v.literal(notebookVersion, `must be ${notebookVersion}`),
  entries: v.array(entry),
  places: v.record(lesson, v.object({ step: name, of: v.pipe(v.number(), v.integer(), v.minValue(0)), at: moment })),
});

/** A notebook that was read, or what is wrong with it: where, and a plain sentence. */
export type ReadNotebook =
  | { readonly notebook: Notebook; readonly faults?: undefined }
  | { readonly notebook?: undefined; readonly faults: readonly { path: string; message: string }[] };

/** Checks a document of the present version from outside. An entry of an unknown kind is kept as it is. */
export function readNotebook(value: unknown): ReadNotebook {
  const { success, output, issues } = v.safeParse(notebookSchema, value);
  if (success) return { notebook: output as Notebook };
  return { faults: issues.map((issue) => ({ path: v.getDotPath(issue) ?? '', message: issue.message })) };
}
