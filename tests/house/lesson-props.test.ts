// What no compiler checks in a lesson: the props of its components, numbers typed into its prose, and how long its sentences are.
import { describe, expect, it } from 'vitest';
import { templates } from '#engine';
import { asksOf } from '#site/components/lesson/asks-of.ts';
import { numFor } from '#site/components/lesson/num-props.ts';
import { numberOf } from '#site/components/lesson/number-of.ts';
import { type LessonComponent, type LessonProps, lessonProps, propFaults } from '#site/components/lesson/props.ts';
import { root } from '../run/tool.ts';
import { type LessonSource, lessonSources, numberWord, type Placed, type Prose, readLesson } from './lesson-source.ts';

const lessons = await lessonSources(root);

/** Props whose text a reader meets; the others are names, keys and numbers of figures. */
const readers = ['title', 'question', 'spoken', 'note', 'name', 'words', 'iec', 'na'];
/** Lines of the front matter that hold keys and counts, not words for the reader. */
const keys = /^\s*(?:- )?(?:number|order|unit|minutes|sources):/;
const banned = /\b(?:simply|just|obviously|obvious|wrong!|of course|easy|easily)\b/i;

/** Components that stand inside a sentence or set one. */
const inWords = ['Num', 'In', 'Cite', 'For', 'Formula', 'ToBench'];

const at = (lesson: { path: string }, line: number, says: string) => `${lesson.path}:${line} ${says}`;

/** What a prediction can be made with. */
const predictions = ['Predict', 'SketchPad', 'PredictAnswers'];

/** Faults of a lesson's components: unknown ones, props not accepted, names that lead nowhere. */
function componentFaults(lesson: LessonSource): string[] {
  const { components } = lesson;
  const idsOf = (names: readonly string[]) =>
    components.filter(({ name }) => names.includes(name)).map(({ props }) => props.id);
  const leads = (one: Placed, prop: string, to: readonly string[]) =>
    [one.props[prop] ?? []]
      .flat()
      .filter((id) => !idsOf(to).includes(id))
      .map((id) => `<${one.name}> ${prop}: no ${to.join(' or ')} is named ${id}`);
  return components.flatMap((one) => {
    const known = Object.hasOwn(lessonProps, one.name);
    const faults = !known
      ? /^[a-z]/.test(one.name)
        ? []
        : [`<${one.name}> is no component of lessons`]
      : [
          ...one.computed.map((prop) => `<${one.name}> ${prop}: is computed here; give the value itself`),
          ...(one.computed.length > 0 ? [] : propFaults(one.name as LessonComponent, one.props)),
        ];
    const names = {
      Predict: () => leads(one, 'figure', ['EmberTrace']),
      AfterPrediction: () => leads(one, 'of', predictions),
      EmberTrace: () => leads(one, 'prediction', ['Predict', 'SketchPad']),
      Question: () => templateFaults(one),
      Worked: () => templateFaults(one),
    }[one.name];
    return [...faults, ...(names?.() ?? [])].map((says) => at(lesson, one.line, says));
  });
}

function templateFaults({ name, props }: Placed): string[] {
  return templates[String(props.template)] ? [] : [`<${name}> template: there is no question ${props.template}`];
}

/** Places where a digit is typed into words for the reader. */
function typedNumbers(lesson: LessonSource): string[] {
  const says = (line: number, text: string) =>
    at(lesson, line, `a number is typed into words for the reader: “${text.trim()}”. Let <Num> compute it.`);
  const digit = ({ text }: Prose) => /\d/.test(text);
  return [
    ...lesson.head.filter((line) => digit(line) && !keys.test(line.text)).map(({ line, text }) => says(line, text)),
    ...lesson.prose.filter(digit).map(({ line, text }) => says(line, text)),
    ...lesson.components.flatMap(({ line, props }) =>
      readers.filter((name) => /\d/.test(String(props[name] ?? ''))).map((name) => says(line, String(props[name]))),
    ),
  ];
}

const sentencesOf = ({ text }: Prose): string[] => text.split(/(?<=[.?!])\s+/).filter((one) => /[.?!]$/.test(one));
const wordsOf = (sentence: string): number =>
  sentence.split(/\s+/).filter((word) => /\p{L}/u.test(word) || word.includes(numberWord)).length;

it('finds the lessons', () => {
  expect(lessons.length).toBeGreaterThan(0);
});

describe.each(lessons)('$path', (lesson) => {
  it('uses known components with accepted props, and names that lead somewhere', () => {
    expect(componentFaults(lesson)).toEqual([]);
  });

  it('names each figure, prediction and question once', () => {
    const ids = lesson.components.flatMap(({ props }) => (props.id === undefined ? [] : [String(props.id)]));
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it('uses at most ten kinds of component, those inside a sentence not counted', () => {
    const kinds = new Set(lesson.components.map(({ name }) => name).filter((name) => !inWords.includes(name)));
    expect(kinds.size).toBeLessThanOrEqual(10);
  });

  it('has no number typed into words for the reader', () => {
    expect(typedNumbers(lesson)).toEqual([]);
  });

  it('computes every number of its prose', () => {
    const computed = lesson.components.filter(({ name, props }) => name === 'Num' && 'of' in props);
    for (const { props } of computed)
      for (const practice of ['iec', 'na'] as const)
        expect(numberOf(numFor(props, practice), practice), JSON.stringify(props)).toMatch(/^[−\d][^–∞]*$/);
  });

  it('finds an answer to all that it asks to be predicted, in both practices', () => {
    const asked = lesson.components.filter(({ name }) => name === 'PredictAnswers');
    for (const { props } of asked)
      expect(asksOf((props as LessonProps<'PredictAnswers'>).asks).map(({ id }) => id)).not.toHaveLength(0);
  });

  it('has no sentence over 25 words, 14 on average, and none that talks down', () => {
    const sentences = lesson.prose.flatMap(sentencesOf);
    const counts = sentences.map(wordsOf);
    expect(sentences.filter((sentence) => wordsOf(sentence) > 25)).toEqual([]);
    expect(counts.reduce((sum, count) => sum + count, 0) / counts.length).toBeLessThanOrEqual(14);
    expect([...lesson.prose, ...lesson.head].map(({ text }) => text).filter((text) => banned.test(text))).toEqual([]);
  });
});

describe('the checks themselves', () => {
  const faultsOf = (body: string) => componentFaults(readLesson('lessons/0.0-trial/index.mdx', `---\n---\n${body}`));
  const good = '<Num of="conductor" cast="C125" amps={20} ambient={25} at={60} />';

  it('accept a number with its case', () => {
    expect(faultsOf(`It is at ${good} now.`)).toEqual([]);
  });

  it.each<[string, string, RegExp]>([
    ['a prop that is none', good.replace('at=', 'att='), /:4 <Num> att: is no prop of it/],
    ['a cord that is not of the cast', good.replace('C125', 'C999'), /<Num> cast: .*C999.* is none of C075/],
    ['a figure given as text', good.replace('{20}', '"20"'), /<Num> amps: is a number in A, in braces/],
    ['a prop left out', good.replace('amps={20} ', ''), /<Num> amps: is missing/],
    ['a value out of all reason', good.replace('{25}', '{900}'), /<Num> ambient: is at most 200 °C/],
    ['a value that is computed in the lesson', good.replace('{20}', '{4 * 5}'), /<Num> amps: is computed here/],
    ['a component that is none', '<Nmu value={3} unit="A" />', /<Nmu> is no component/],
    ['a question that is none', '<Worked template="Q99" seed="a" />', /there is no question Q99/],
    [
      'a prediction that is none',
      '<AfterPrediction of="nothing">\n\nWords.\n\n</AfterPrediction>',
      /no Predict or SketchPad or PredictAnswers is named nothing/,
    ],
  ])('refuse %s in plain words', (_name, body, says) => {
    const faults = faultsOf(`\n${body}`).join('\n');
    expect(faults).toMatch(says);
    expect(faults).not.toMatch(/undefined|\[object|Expected|Received/);
  });

  it.each([
    ['in a paragraph', 'It is at 38 °C now.'],
    ['in a heading', '## After 5 minutes'],
    ['in a title', '<EmberTrace id="a" title="20 A for half an hour" />'],
  ])('find a number typed %s', (_name, body) => {
    expect(typedNumbers(readLesson('a', `---\n---\n\n${body}\n`))).toHaveLength(1);
  });

  it('leave formulas and props alone', () => {
    const body = `Here $I_2 = 2 I_1$ and ${good}.\n\n$$\nx^2\n$$\n`;
    expect(typedNumbers(readLesson('a', `---\norder: 6\n---\n\n${body}`))).toEqual([]);
  });
});

/** The type of a component's props is what its schema gives. */
const sample: LessonProps<'Cite'> = { of: 'iec60228' };
it('types props by their schema', () => {
  expect(propFaults('Cite', sample)).toEqual([]);
});
