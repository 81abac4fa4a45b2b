import * as v from 'valibot';

// Building blocks of the scenario's schema. Every message says what would be right; the path is added by `faultsOf`.

const shown = (input: unknown): string => {
  if (input === undefined) return 'is missing';
  const text = written(input);
  return `is ${text.length > 60 ? `${text.slice(0, 57)}…` : text}`;
};

/** As JSON; a word for what has no JSON, or is nested too deep for it. */
function written(input: unknown): string {
  try {
    return JSON.stringify(input) ?? typeof input;
  } catch {
    return typeof input === 'bigint' ? `${input}n` : 'not plain data';
  }
}

/** A finite number from `least` to `most`, both allowed, in `unit`. */
export function amount(least: number, most: number, unit = '') {
  const says = (issue: { input: unknown }) =>
    `${shown(issue.input)}; it must be a number from ${least} to ${most}${unit ? ` ${unit}` : ''}`;
  return v.pipe(v.number(says), v.finite(says), v.minValue(least, says), v.maxValue(most, says));
}

/** A whole number from `least` to `most`. */
export function count(least: number, most: number) {
  const says = (issue: { input: unknown }) =>
    `${shown(issue.input)}; it must be a whole number from ${least} to ${most}`;
  return v.pipe(v.number(says), v.integer(says), v.minValue(least, says), v.maxValue(most, says));
}

/** One of a few words. */
export function word<const Words extends readonly (string | number)[]>(words: Words) {
  return v.picklist(words, (issue) => `${shown(issue.input)}; it must be one of: ${words.join(', ')}`);
}

/** A short text. */
export const text = (most: number) =>
  v.pipe(
    v.string((issue) => `${shown(issue.input)}; it must be text`),
    v.maxLength(most, `is too long; ${most} characters are the most`),
  );

/** A single value or a [low, high] range of `unit`. */
export function amountOrRange(least: number, most: number, unit: string) {
  const says = (issue: { input: unknown }) =>
    `${shown(issue.input)}; it must be a number from ${least} to ${most} ${unit}, or a pair [low, high] of such numbers`;
  const one = v.pipe(v.number(says), v.finite(says), v.minValue(least, says), v.maxValue(most, says));
  const pair = v.pipe(
    v.strictTuple([one, one], says),
    v.check(([low, high]) => low <= high, 'has its low end above its high end'),
  );
  return v.lazy((input) => (Array.isArray(input) ? pair : one)) as v.GenericSchema<number | [number, number]>;
}

/** An object with these keys and no others. */
export function record<const Entries extends v.ObjectEntries>(entries: Entries) {
  const known = Object.keys(entries).join(', ');
  return v.strictObject(entries, (issue) =>
    issue.expected === 'never'
      ? `does not belong here; known names are: ${known}`
      : issue.input === undefined
        ? 'is missing'
        : `${shown(issue.input)}; it must be a set of values with the names: ${known}`,
  );
}

/** One of several shapes, told apart by the word under `key`. */
export function byWord<const Shapes extends Record<string, v.GenericSchema>>(key: string, shapes: Shapes) {
  const words = Object.keys(shapes);
  type Out = v.InferOutput<Shapes[keyof Shapes]>;
  const unknownWord = v.looseObject(
    { [key]: word(words) },
    (issue) => `${shown(issue.input)}; it must be a set of values`,
  );
  return v.lazy((input) => {
    const chosen = typeof input === 'object' && input !== null ? (input as Record<string, unknown>)[key] : undefined;
    return typeof chosen === 'string' && Object.hasOwn(shapes, chosen)
      ? (shapes[chosen] as v.GenericSchema)
      : unknownWord;
  }) as v.GenericSchema<Out>;
}
