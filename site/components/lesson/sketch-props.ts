import * as v from 'valibot';
import { forPractice, isEach } from './by-practice.ts';
import { caseProps, faultWords } from './num-props.ts';
import { figureNumber, named, words } from './prop-parts.ts';

/** What <SketchPad> accepts, as one practice has it. */
const forOne = v.strictObject({
  id: named,
  number: v.optional(figureNumber),
  title: words('title'),
  figure: v.optional(named),
  quantity: v.optional(v.picklist(['temperature', 'current'], 'is temperature or current')),
  ...caseProps,
});

/** The props of a pad for one practice. */
export type SketchProps = v.InferOutput<typeof forOne>;

/** What <SketchPad> accepts: each prop of its case may be written by practice. */
export const sketchProps = v.pipe(
  v.record(v.string(), v.unknown(), 'has no props'),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    const split = Object.values(dataset.value).some(isEach);
    for (const practice of ['iec', 'na'] as const) {
      const { issues } = v.safeParse(forOne, forPractice(dataset.value, practice));
      for (const issue of issues ?? [])
        addIssue({
          message: `${split ? `(${practice}) ` : ''}${v.getDotPath(issue) ?? 'props'}: ${faultWords(issue)}`,
        });
      if (!split) break;
    }
  }),
);

/** A pad's props as one practice has them, to be asked for once they are checked. */
export const sketchFor = (props: unknown, practice: 'iec' | 'na'): SketchProps =>
  forPractice(props, practice) as SketchProps;
