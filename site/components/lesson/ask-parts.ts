import * as v from 'valibot';
import { type ByPractice, forPractice, isEach } from './by-practice.ts';

// What the props of asks are made of.

/** The name of an ask, an option or an item. */
export const name = v.pipe(
  v.string(),
  v.regex(/^[a-z][a-z0-9-]*$/, 'a name is small letters, digits and dashes: at-ten'),
);

/** Words without a number: the case fills its numbers in, so they cannot differ from it. */
export const plain = v.pipe(
  v.string('is text'),
  v.trim(),
  v.minLength(1, 'is empty'),
  v.regex(/^\D*$/, 'has a number typed into it; write {amps} or the like, and the case fills it in'),
);

/** Words, the same for both practices or its own for each. */
export const words = v.lazy((input) =>
  isEach(input) ? v.strictObject({ iec: plain, na: plain }) : plain,
) as v.GenericSchema<ByPractice<string>>;

/** A record whose parts may be written by practice, each practice's of the schema that its props ask for. */
export const byPractice = (schema: (props: Record<string, unknown>) => v.GenericSchema) =>
  v.pipe(
    v.record(v.string(), v.unknown(), 'has no props'),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      for (const practice of ['iec', 'na'] as const) {
        const props = forPractice(dataset.value, practice);
        for (const issue of v.safeParse(schema(props), props).issues ?? [])
          addIssue({ message: `(${practice}) ${v.getDotPath(issue) ?? ''}: ${issue.message}` });
      }
    }),
  );
