import * as v from 'valibot';
import { type MisconceptionId, misconceptions } from '../question/misconceptions.ts';
import { dayNumber } from '../question/practice/days.ts';
import { mostReviews, retentions } from '../question/practice/review.ts';
import { type Notebook, notebookFormat, notebookVersion } from './document.ts';
import { upToDate } from './migrate.ts';

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

const day = v.pipe(v.number(), v.integer('is no whole day'), v.minValue(0));
const state = {
  D: v.pipe(v.number(), v.minValue(1), v.maxValue(10)),
  S: v.pipe(v.number(), v.minValue(0.001), v.maxValue(36_500)),
  day,
};
const tag = v.picklist(Object.keys(misconceptions) as MisconceptionId[], 'is no mistake that is known');
const review = v.object({
  day,
  template: v.pipe(v.string(), v.regex(/^[QD]\d\d[a-z]?$/, 'is written like Q28')),
  seed: v.pipe(v.string(), v.maxLength(200)),
  difficulty: v.picklist([1, 2, 3]),
  grade: v.picklist([1, 2, 3, 4], 'is none of 1, 2, 3, 4'),
  tags: v.array(tag),
});
const memory = v.object({
  objective: name,
  ...state,
  before: v.nullable(v.object(state)),
  reviews: v.pipe(v.array(review), v.maxLength(mostReviews)),
});
const settings = v.object({
  retention: v.pipe(v.number(), v.minValue(retentions.least), v.maxValue(retentions.most)),
  exam: v.optional(
    v.pipe(
      v.string(),
      v.check((date) => dayNumber(date) !== undefined, 'is no day like 2031-05-04'),
    ),
  ),
});

const entry = v.lazy((input) => {
  const kind = typeof input === 'object' && input !== null && 'kind' in input ? input.kind : undefined;
  if (kind === 'words')
    return v.object({ kind: v.literal('words'), ...base, text: v.pipe(v.string(), v.maxLength(20_000)) });
  if (kind === 'prediction')
    return v.object({ kind: v.literal('prediction'), ...base, said: v.record(practice, v.unknown()) });
  if (kind === 'question') return v.object({ kind: v.literal('question'), ...base, ref, given: v.array(v.unknown()) });
  if (kind === 'memory') return v.object({ kind: v.literal('memory'), ...base, memory });
  return v.looseObject({ kind: v.string('has no kind') });
});

const notebookSchema = v.object({
  format: v.literal(notebookFormat, `must be “${notebookFormat}”`),
  version: v.literal(notebookVersion, `must be ${notebookVersion}`),
  entries: v.array(entry),
  places: v.record(lesson, v.object({ step: name, of: v.pipe(v.number(), v.integer(), v.minValue(0)), at: moment })),
  settings,
});

/** A notebook that was read, or what is wrong with it: where, and a plain sentence. */
export type ReadNotebook =
  | { readonly notebook: Notebook; readonly faults?: undefined }
  | { readonly notebook?: undefined; readonly faults: readonly { path: string; message: string }[] };

/** Checks a document from outside, and brings one of an older version up to the present. An entry of an unknown kind is kept as it is. */
export function readNotebook(value: unknown): ReadNotebook {
  const { success, output, issues } = v.safeParse(notebookSchema, upToDate(value));
  if (success) return { notebook: output as Notebook };
  return { faults: issues.map((issue) => ({ path: v.getDotPath(issue) ?? '', message: issue.message })) };
}
