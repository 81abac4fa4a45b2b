import { describe, expect, it } from 'vitest';
import { kelvin, parseScenario, predict, type Scenario } from '#engine';
import { readAnswer } from '#engine/question/answer.ts';
import { isWithin, staysApart } from '#engine/question/guard.ts';
import { mark } from '#engine/question/mark.ts';
import { misconceptions } from '#engine/question/misconceptions.ts';
import { randomOf } from '#engine/question/random.ts';
import { refFromText, refToText } from '#engine/question/ref.ts';
import { mostDraws } from '#engine/question/template.ts';
import { questionFrom, templates } from '#engine/question/templates.ts';
import type { NumberAnswer, Practice, Template, TemplateSpec, TypedQuestion } from '#engine/question/types.ts';
import { type Unit, unitOf } from '#engine/question/units.ts';
import { plainText } from '#engine/question/words.ts';
import { typedInSixFormats } from './formats.ts';
import { stemOf, type Works, workedBy } from './stem.ts';
import { typedQuestion } from './typed.ts';

// What holds for every template that asks for a number with its unit.

export const practices: readonly Practice[] = ['iec', 'na'];
const seeds = Array.from({ length: 100 }, (_, i) => `evening ${i}`);
const made = new Map<string, TypedQuestion[]>();

const templateOf = (id: string) => templates[id] as Template;

/** The 100 questions of a template and practice, drawn once. */
export function questions(id: string, practice: Practice): TypedQuestion[] {
  const key = `${id} ${practice}`;
  const known = made.get(key) ?? seeds.map((seed) => typedQuestion(templateOf(id), seed, practice));
  made.set(key, known);
  return known;
}

/** 25 questions of a template in each practice. */
export const some = (id: string): TypedQuestion[] =>
  practices.flatMap((practice) => questions(id, practice).slice(0, 25));

/** The case that a question is about. */
export const firstCase = ({ scenarios }: TypedQuestion): Scenario => (scenarios[0] as { scenario: Scenario }).scenario;

/** Where the case of a question settles [K], of the last of its supply steps. */
export function settled(scenario: Scenario) {
  const { steady } = predict({ ...scenario, run: { duration_s: 1 } }, { samplesPerStep: 1 });
  if (steady.kind !== 'steady') throw new Error('the case settles');
  return steady.chain;
}

/** A number in the unit an answer is told in, and back. */
const unitOfAnswer = ({ unit }: NumberAnswer) => unitOf(unit) as Unit;
const inUnit = (answer: NumberAnswer, value: number) =>
  (value - unitOfAnswer(answer).offset) / unitOfAnswer(answer).factor;
const fromUnit = (answer: NumberAnswer, number: number) =>
  number * unitOfAnswer(answer).factor + unitOfAnswer(answer).offset;

/** Everything a learner may read of a question. */
export function textsOf(q: TypedQuestion): string[] {
  const said = q.wrong.flatMap(({ id, trueOf, ask, whyNot }) => [
    `20.8\u00A0A ${trueOf}`,
    ask,
    whyNot ?? misconceptions[id].whyNot,
    misconceptions[id].thinks,
  ]);
  return [...[...q.stem, ...q.hints, ...q.solution].map(plainText), q.ask, q.look, ...q.cautions, ...said];
}

/** The words in each sentence of a text; a unit counts as one. */
const sentences = (text: string) => text.split(/(?<=[.?!:])\s+/).map((sentence) => sentence.split(/[\s]+/).length);

/** Numbers with four decimals and more than four significant figures, which no cord's data carry. */
const tooFine = (text: string) =>
  (text.match(/\d+\.\d{4,}/g) ?? []).filter((found) => found.replace('.', '').replace(/^0+/, '').length > 4);

/** What differs from one set of templates to the next. */
export interface Expected {
  readonly works: Works;
  /** The greatest part of random wrong answers that may be taken for a known slip. */
  readonly accused: number;
  /** Templates about short circuits, whose cases may carry more than a lead's 30 A. */
  readonly faults?: readonly string[];
  /** Templates whose answer may stand among the numbers of the stem. */
  readonly mayTell?: readonly string[];
}

/** The tests of each template of `expected.works`, in both practices. */
export function testNumbers(expected: Expected): void {
  const { works, accused: mostAccused, faults = [], mayTell = [] } = expected;
  const cases = Object.keys(works).flatMap((id) => practices.map((practice) => [id, practice] as const));
  describe.each(cases)('%s in %s', (id, practice) => {
    const template = templateOf(id);
    const all = () => questions(id, practice);

    it('seldom needs a fallback, and makes other questions from other seeds', () => {
      const fallbacks = all().filter(({ fallback }) => fallback).length;
      const different = new Set(all().map(stemOf)).size;
      console.log(`${id} ${practice}: ${fallbacks} fallbacks, ${different} different`);
      expect(fallbacks).toBeLessThan(0.05 * seeds.length);
      expect(different).toBeGreaterThan(0.9 * seeds.length);
    });

    it('makes the same question from the same ref, by way of an address', () => {
      for (const question of all().slice(0, 5)) {
        expect(refFromText(refToText(question.ref))).toEqual(question.ref);
        expect(questionFrom(question.ref)).toEqual(question);
      }
    });

    it('gives full marks to the engine’s answer in six formats', () => {
      for (const question of all()) {
        const { kind, value } = question.answer;
        for (const figures of [3, 4]) {
          const ways = typedInSixFormats(kind, value, figures);
          expect(new Set(ways).size).toBe(6);
          for (const typed of ways) {
            const { marks, verdict, tags } = mark(question, typed);
            expect([typed, marks, verdict, tags]).toEqual([typed, 1, 'right', []]);
          }
        }
      }
    });

    it('gives full marks to what the stem’s own figures lead to, and to the answer as it is told', () => {
      for (const question of all()) {
        const { kind, text, figures } = question.answer;
        for (const typed of typedInSixFormats(kind, workedBy(works, question).right, 3)) {
          const { marks, tags } = mark(question, typed);
          expect([stemOf(question), typed, marks, tags]).toEqual([stemOf(question), typed, 1, []]);
        }
        expect(mark(question, text.split(' (')[0] as string).marks, text).toBe(1);
        expect([2, 3]).toContain(figures);
      }
    });

    it('never accuses an answer within the tolerance', () => {
      const random = randomOf('within the tolerance');
      for (const question of all()) {
        const { answer } = question;
        const { value, tolerance, unit } = answer;
        for (let i = 0; i < 5; i++) {
          const part = random.whole(-99, 99) / 100;
          const near =
            tolerance.kind === 'absolute'
              ? value + part * tolerance.by
              : value * (tolerance.kind === 'relative' ? 1 + part * tolerance.part : tolerance.by ** part);
          expect(mark(question, `${inUnit(answer, near)} ${unit}`)).toMatchObject({ marks: 1, tags: [] });
        }
      }
    });

    it('recognises every slip, typed to 2, 3 and 4 figures in six formats', () => {
      const score = new Map<string, [known: number, of: number]>();
      for (const question of all()) {
        for (const slip of workedBy(works, question).slips) {
          for (const figures of [2, 3, 4]) {
            const typed = typedInSixFormats(question.answer.kind, slip.value, figures);
            for (const text of slip.inF ? typed.filter((one) => /F/.test(one)) : typed) {
              const entry = score.get(slip.id) ?? [0, 0];
              const known = mark(question, text).misconception?.id === slip.id;
              score.set(slip.id, [entry[0] + (known ? 1 : 0), entry[1] + 1]);
            }
          }
        }
      }
      expect([...score.keys()].sort()).toEqual([...template.misconceptions].sort());
      for (const [slip, [known, of]] of score) {
        console.log(`${id} ${practice} ${slip}: ${((100 * known) / of).toFixed(2)} % of ${of} recognised`);
        expect(known / of, slip).toBeGreaterThanOrEqual(0.97);
      }
    });

    it('seldom accuses an answer that is wrong in its own way', () => {
      const random = randomOf('any wrong answer');
      let accused = 0;
      let of = 0;
      for (const question of all()) {
        const { answer } = question;
        for (let i = 0; i < 40; i++) {
          const wrong = inUnit(answer, answer.value) * 10 ** (random.whole(-200_000, 200_000) / 100_000);
          const rounded = Number(wrong.toPrecision(random.whole(2, 4)));
          if (isWithin(answer.tolerance, answer.value, fromUnit(answer, rounded))) continue;
          of++;
          if (mark(question, `${rounded} ${answer.unit}`).tags.length > 0) accused++;
        }
      }
      console.log(`${id} ${practice}: ${((100 * accused) / of).toFixed(2)} % of ${of} random answers accused`);
      expect(accused / of).toBeLessThanOrEqual(mostAccused);
    });

    it('keeps slips apart, and does not tell its answer', () => {
      for (const question of all()) {
        const { answer, wrong, stem } = question;
        expect(staysApart(answer, wrong)).toBe(true);
        expect(wrong.every((slip) => template.misconceptions.includes(slip.id))).toBe(true);
        for (const segment of stem.flat().filter(({ kind }) => kind === 'quantity')) {
          const [typed] = plainText([segment]).split(' (') as [string];
          const reading = readAnswer(typed, answer.kind);
          const tells = reading.status === 'read' && isWithin(answer.tolerance, answer.value, reading.value);
          if (!mayTell.includes(id)) expect(tells, typed).toBe(false);
        }
        expect(question.hints.map(plainText).join(' ')).not.toContain(answer.text);
        expect(plainText(question.solution.flat())).toContain(answer.text);
      }
    });

    it('speaks in short sentences, with whole numbers and thin spaces', () => {
      for (const question of all()) {
        for (const text of textsOf(question)) {
          expect(text).not.toMatch(/NaN|undefined|null|Infinity|\d e[+-]/);
          expect(tooFine(text), text).toEqual([]);
          expect(text).not.toMatch(/\b(obviously|simply|just)\b|wrong!/i);
          expect(text).not.toMatch(/\d (?:A|W|h|m|ft|s|min|mm|K|°C|°F|%|m?Ω|nΩ·m|mm²|AWG)(?![a-z])/);
          expect(Math.max(...sentences(text)), text).toBeLessThanOrEqual(25);
        }
      }
    });

    it('has °F beside each °C of a stem in na, and nowhere else', () => {
      for (const { stem } of all()) {
        const told = stem.flat().filter(({ kind }) => kind === 'quantity');
        const [C, F] = ['°C', '°F'].map((unit) => plainText(told).split(unit).length - 1) as [number, number];
        if (practice === 'iec') expect(F).toBe(0);
        else expect(C === 0 || F > 0, plainText(told)).toBe(true);
      }
    });

    it('offers cases that parse, run to their end below 160 °C, and warn where the cord is overloaded', () => {
      for (const question of all().slice(0, 12)) {
        for (const { scenario } of question.scenarios) {
          expect(parseScenario(scenario).faults).toBeUndefined();
          expect(scenario.surroundings.ambient_degC).toBeLessThanOrEqual(60);
          const { run } = predict(scenario);
          expect(run.outcome).toBe('completed');
          expect(Math.max(...run.curves.conductor)).toBeLessThan(kelvin(160));
        }
        const rating = Number(/table rating is (\d+)/.exec(plainText(question.solution.flat()))?.[1] ?? Infinity);
        const currents = question.scenarios.flatMap(({ scenario }) =>
          scenario.supply.map((s) => ('I_A' in s ? s.I_A : 0)),
        );
        const most = Math.max(0, ...currents);
        expect(most).toBeLessThanOrEqual(faults.includes(id) ? 10_000 : 30);
        expect(question.cautions.some((caution) => caution.startsWith('Overload'))).toBe(most > rating);
      }
    });
  });
}

/** The tests of templates as they are written: their fallbacks, and how many draws pass. */
export function testSpecs(specs: readonly TemplateSpec<never>[]): void {
  it.each(specs.map((spec) => [spec.id, spec] as const))('the fallbacks of %s meet its own guard', (_id, spec) => {
    for (const practice of practices) {
      const listed = spec.fallbacks[practice] ?? [];
      expect(listed.length).toBeGreaterThan(0);
      for (const drawn of listed) {
        const built = spec.build(drawn, practice);
        if (built.kind !== 'number') throw new Error(`${spec.id} asks for a number`);
        expect(staysApart(built.answer, built.wrong)).toBe(true);
      }
      const random = randomOf(`${spec.id} ${practice}`);
      const tries = Array.from({ length: 400 }, () => (spec.draw(random, practice) === null ? 0 : 1));
      const share = tries.reduce<number>((sum, one) => sum + one, 0) / tries.length;
      console.log(`${spec.id} ${practice}: ${(100 * share).toFixed(0)} % of draws pass the guard`);
      expect((1 - share) ** mostDraws).toBeLessThan(0.02);
    }
  });
}
