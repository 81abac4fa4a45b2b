import { describe, expect, it } from 'vitest';
import { parseScenario, predict } from '#engine';
import { mark } from '#engine/question/mark.ts';
import { misconceptions } from '#engine/question/misconceptions.ts';
import { defineTemplate } from '#engine/question/template.ts';
import { questionFrom, templates } from '#engine/question/templates.ts';
import type {
  ChooseQuestion,
  GivenChoice,
  GivenOrder,
  OrderQuestion,
  Practice,
  Template,
  TemplateSpec,
} from '#engine/question/types.ts';
import { plainText } from '#engine/question/words.ts';

// What holds for every template that asks for a choice or an order.

/** A question whose answer is chosen or put in order. */
export type Given = ChooseQuestion | OrderQuestion;

const practices: readonly Practice[] = ['iec', 'na'];
const seeds = Array.from({ length: 60 }, (_, i) => `class ${i}`);

const known = new Map<string, Given[]>();

/** The 60 questions of a template and practice, drawn once. */
export function chosenQuestions(id: string, practice: Practice): Given[] {
  const key = `${id} ${practice}`;
  const made = known.get(key) ?? seeds.map((seed) => askedOf(templates[id] as Template, seed, practice));
  known.set(key, made);
  return made;
}

function askedOf(template: Template, seed: string, practice: Practice): Given {
  const question = template.question(seed, practice);
  if (question.kind !== 'choose' && question.kind !== 'order') throw new Error(`${template.id} is typed`);
  return question;
}

/** The answer that is right. */
export const rightOf = (question: Given): GivenChoice | GivenOrder =>
  question.kind === 'choose'
    ? { kind: 'choice', chosen: Object.fromEntries(question.parts.map(({ id, right }) => [id, right])) }
    : { kind: 'order', ids: question.answer.order };

/** Every answer that a known idea leads to, with that idea; in a choice of parts one part at a time is off. */
function slipsOf(question: Given): { id: string | undefined; given: GivenChoice | GivenOrder }[] {
  if (question.kind === 'order')
    return question.wrong.map(({ id, order }) => ({ id, given: { kind: 'order', ids: order } }));
  const { chosen } = rightOf(question) as GivenChoice;
  return question.parts.flatMap((part) =>
    part.options
      .filter(({ id }) => id !== part.right)
      .map(({ id, said }) => ({
        id: said?.id,
        given: { kind: 'choice' as const, chosen: { ...chosen, [part.id]: id } },
      })),
  );
}

const saidIn = (question: Given) =>
  question.kind === 'order'
    ? question.wrong
    : question.parts.flatMap(({ options }) => options.flatMap(({ said }) => said ?? []));
const shownIn = (question: Given): string[] =>
  question.kind === 'order'
    ? question.items.map(({ name }) => name)
    : question.parts.flatMap(({ label, options }) => [label, ...options.map(({ text }) => text)]);

const textsOf = (question: Given): string[] => [
  ...[...question.stem, ...question.hints, ...question.solution].map(plainText),
  question.ask,
  question.look,
  question.answer.text,
  ...question.cautions,
  ...shownIn(question),
  ...saidIn(question).flatMap(({ id, trueOf, whyNot, ask }) => [
    `Not yet: ${trueOf}`,
    ask,
    whyNot ?? '',
    ...(id ? [misconceptions[id].whyNot, misconceptions[id].thinks] : []),
  ]),
];

/** The words in each sentence of a text; a unit counts as one with its number. */
const sentences = (text: string) =>
  text
    .replaceAll('\u00A0', '')
    .split(/(?<=[.?!:])\s+/)
    .map((sentence) => sentence.split(/\s+/).length);

/** Ideas met in one practice, where they are fewer than the template's. */
export type Meets = Readonly<Record<string, Readonly<Partial<Record<Practice, readonly string[]>>>>>;

/** The tests of each template of `specs` in its practices, and of its fallbacks. */
export function testChosen(specs: readonly TemplateSpec<object>[], meets: Meets = {}): void {
  const cases = specs.flatMap(({ id, practices: own }) =>
    practices.filter((one) => own.includes(one)).map((practice) => [id, practice] as const),
  );
  describe.each(cases)('%s in %s', (id, practice) => {
    const all = () => chosenQuestions(id, practice);

    it('draws within the cap, and makes other questions from other seeds', () => {
      expect(all().filter(({ fallback }) => fallback).length).toBeLessThan(0.05 * seeds.length);
      const different = new Set(all().map((question) => JSON.stringify([question.stem, shownIn(question)])));
      expect(different.size).toBeGreaterThan(0.8 * seeds.length);
    });

    it('makes the same question from the same ref', () => {
      for (const question of all().slice(0, 10)) expect(questionFrom(question.ref)).toEqual(question);
    });

    it('marks the right answer right, and says what it is', () => {
      for (const question of all()) {
        const feedback = mark(question, rightOf(question));
        expect(feedback).toMatchObject({ verdict: 'right', marks: 1, tags: [], solutionOpen: true });
        expect(feedback.headline).toBe(`Right: ${question.answer.text}`);
      }
    });

    it('recognises every idea that leads to a wrong answer, and meets each of them in some question', () => {
      const met = new Set<string>();
      for (const question of all()) {
        for (const { id: slip, given } of slipsOf(question)) {
          const feedback = mark(question, given);
          expect(feedback).toMatchObject({ verdict: 'not yet', marks: 0, tags: slip ? [slip] : [] });
          expect(feedback.misconception?.id).toBe(slip);
          expect(feedback.headline).toMatch(/^Not yet: .+\.$/);
          expect(feedback.whyNot, feedback.headline).toMatch(/^(?:[A-Z0-9]|k ).{20,}\.$/);
          expect(feedback.notice).toMatch(/\?$/);
          if (slip) met.add(slip);
        }
      }
      const expected = meets[id]?.[practice] ?? templates[id]?.misconceptions ?? [];
      expect([...met].sort()).toEqual([...expected].sort());
    });

    it('offers nothing twice, and one right answer', () => {
      for (const question of all()) {
        const groups = question.kind === 'order' ? [question.items] : question.parts.map(({ options }) => options);
        for (const group of groups) {
          expect(new Set(group.map((one) => one.id)).size).toBe(group.length);
          const shown = group.map((one) => ('name' in one ? one.name : one.text));
          expect(new Set(shown).size).toBe(group.length);
          expect(group.length).toBeGreaterThanOrEqual(question.kind === 'order' ? 3 : 2);
          expect(group.length).toBeLessThanOrEqual(question.kind === 'order' ? 6 : 5);
        }
        if (question.kind === 'order') {
          expect([...question.answer.order].sort()).toEqual(question.items.map((item) => item.id).sort());
          continue;
        }
        for (const part of question.parts)
          for (const { id: option, said } of part.options) expect(said === undefined).toBe(option === part.right);
      }
    });

    it('deals so that the place tells nothing', () => {
      const places = new Map<string, number>();
      for (const question of all()) {
        if (question.kind === 'order') {
          const shown = question.items.map((item) => item.id).join();
          expect(shown).not.toBe(question.answer.order.join());
          expect(shown).not.toBe([...question.answer.order].reverse().join());
          for (const { order } of question.wrong) expect(shown).not.toBe(order.join());
          continue;
        }
        if (question.parts.length > 1) continue; // steps of a scale, the same in each part
        const [part] = question.parts;
        const place = `${part?.options.findIndex((option) => option.id === part.right)}`;
        places.set(place, (places.get(place) ?? 0) + 1);
      }
      for (const count of places.values()) expect(count).toBeLessThan(0.55 * seeds.length);
    });

    it('gives nothing away in stem and hints, and tells the answer in the working', () => {
      for (const question of all()) {
        const before = [...question.stem, ...question.hints].map(plainText).join(' ');
        expect(before).not.toContain(question.answer.text);
        if (question.kind === 'choose')
          for (const part of question.parts) {
            const right = part.options.find((option) => option.id === part.right)?.text ?? '';
            if (question.parts.length === 1) expect(before).not.toContain(right);
          }
        expect(plainText(question.solution.flat())).toContain(question.answer.text);
      }
    });

    it('speaks in short sentences, with every number whole', () => {
      for (const question of all()) {
        for (const text of textsOf(question)) {
          expect(text).not.toMatch(/NaN|undefined|null|Infinity|\d e[+-]|\d\.\d{4}/);
          expect(text).not.toMatch(/\b(obviously|simply|just)\b|wrong!/i);
          expect(text).not.toMatch(/\d (?:A|V|W|m|mm|s|min|K|°C|%|mm²|AWG)(?![a-z])/);
          expect(Math.max(...sentences(text)), text).toBeLessThanOrEqual(25);
        }
      }
    });

    it('opens cases that are sound, below 160 °C, with a caution where a cord is over its table', () => {
      for (const question of all().slice(0, 8)) {
        for (const { scenario } of question.scenarios) {
          expect(parseScenario(scenario).faults).toBeUndefined();
          const { run } = predict(scenario);
          expect(Math.max(...run.curves.conductor)).toBeLessThan(273.15 + 160);
        }
        const told = /table rating is (\d+)/.exec(plainText(question.solution.flat()))?.[1];
        const I = question.scenarios.flatMap(({ scenario }) => scenario.supply.map((s) => ('I_A' in s ? s.I_A : 0)));
        if (told !== undefined && Math.max(...I) > Number(told)) expect(question.cautions.length).toBeGreaterThan(0);
      }
    });
  });

  it.each(specs.map((spec) => [spec.id, spec] as const))(
    'the listed fallbacks of %s are questions as good',
    (_id, spec) => {
      const stuck = defineTemplate({ ...spec, draw: () => null });
      for (const practice of spec.practices) {
        const question = askedOf(stuck, 'any', practice);
        expect(question.fallback).toBe(true);
        expect(mark(question, rightOf(question)).marks).toBe(1);
        for (const { id, given } of slipsOf(question)) expect(mark(question, given).tags).toEqual(id ? [id] : []);
      }
    },
  );
}
