import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { type SourceId, sources } from '#engine';

const sourceIds = Object.keys(sources) as [SourceId, ...SourceId[]];

/** The front matter of a lesson. What stands here is shown by the page itself, so the MDX does not say it again. */
const lesson = z.strictObject({
  /** Heading of the page: 'The warm-up curve'. */
  title: z.string().min(3),
  /** The curriculum's number, unit first: '2.2'. It also begins the name of the lesson's folder. */
  number: z.string().regex(/^[1-9]\.[1-9]$/, 'is written like 2.2'),
  /** Place in the whole course, counted from 1: lessons are listed in this order. */
  order: z.int().positive(),
  /** Number of the unit, 1 to 5. */
  unit: z.int().min(1).max(5),
  /** Study time with its questions [min]. */
  minutes: z.int().min(5).max(90),
  /** The question from the job, in one sentence; it stands under the title. */
  question: z.string().endsWith('?'),
  /** One or two sentences for lists and search. */
  summary: z.string().max(200),
  /** What a learner can do afterwards, each beginning with a verb. */
  objectives: z.array(z.string()).min(1).max(5),
  /** Lessons to have done before, by number and title; one that does not exist yet is named without a link. */
  needs: z.array(z.strictObject({ number: z.string(), title: z.string() })),
  /** What the lesson rests on: keys of the engine's bibliography, shown at its end. */
  sources: z.array(z.enum(sourceIds)).min(1),
  /** Cautions of the panel at the end; a caution that belongs to one step also stands at that step. */
  cautions: z.strictObject({
    /** The imperative in the panel's header. */
    title: z.string(),
    /** Hazard, what it does, what to do: at most 25 words each. */
    lines: z.array(z.string()).min(1).max(4),
  }),
  /** The one line to remember. */
  remember: z.string(),
});

const lessons = defineCollection({
  loader: glob({
    base: './lessons',
    pattern: '*/index.mdx',
    // the folder's own name is the address: the dot of the number stays
    generateId: ({ entry }) => entry.replace(/\/index\.mdx$/, ''),
  }),
  schema: lesson,
});

/** The collections of the site. */
export const collections = { lessons };
