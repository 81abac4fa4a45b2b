import { describe, expect, it } from 'vitest';
import { parseScenario, predict } from '#engine';
import { readAnswer } from '#engine/question/answer.ts';
import { isWithin, staysApart } from '#engine/question/guard.ts';
import { mark } from '#engine/question/mark.ts';
import { misconceptions } from '#engine/question/misconceptions.ts';
import { randomOf } from '#engine/question/random.ts';
import { refFromText, refToText } from '#engine/question/ref.ts';
import { defineTemplate } from '#engine/question/template.ts';
import { questionFrom, templates, templatesOfLesson } from '#engine/question/templates.ts';
import type { Practice, Question, Template, TemplateSpec, TypedQuestion } from '#engine/question/types.ts';
import { onOffCurrentSpec } from '#engine/question/unit-2/on-off-current.ts';
import { partWayUpSpec } from '#engine/question/unit-2/part-way-up.ts';
import { timeOffTraceSpec } from '#engine/question/unit-2/time-off-trace.ts';
import { plainText } from '#engine/question/words.ts';
import { typedInSixFormats } from './formats.ts';
import { slipsFor } from './slips.ts';
import { typedQuestion } from './typed.ts';

const practices: Practice[] = ['iec', 'na'];
const seeds = Array.from({ length: 200 }, (_, i) => `class ${i}`);
const lesson = templatesOfLesson('2.2');
const cases = lesson.flatMap((template) => practices.map((practice) => [template.id, practice, template] as const));
const made = new Map<string, TypedQuestion[]>();

/** The 200 questions of a template and practice, drawn once. */
function questions(template: Template, practice: Practice): TypedQuestion[] {
  const key = `${template.id} ${practice}`;
  const known = made.get(key) ?? seeds.map((seed) => typedQuestion(template, seed, practice));
  made.set(key, known);
  return known;
}

const textsOf = (q: TypedQuestion): string[] => [
  ...[...q.stem, ...q.hints, ...q.solution].map(plainText),
  q.ask,
  q.look,
  ...q.cautions,
  ...q.wrong.flatMap(({ trueOf, ask, id }) => [
    `20.8\u00A0A ${trueOf}`,
    ask,
    misconceptions[id].whyNot,
    misconceptions[id].thinks,
  ]),
  ...(q.figure ? [q.figure.words] : []),
];

/** The words in each sentence of a text; a unit counts as one. */
const sentences = (text: string) => text.split(/(?<=[.?!:])\s+/).map((sentence) => sentence.split(/[\s]+/).length);

it('lesson 2.2 has its three questions', () => {
  expect(lesson.map(({ id }) => id)).toEqual(['Q28', 'Q29', 'Q30']);
  expect(Object.keys(templates)).toEqual(expect.arrayContaining(['Q28', 'Q29', 'Q30']));
});

describe.each(cases)('%s in %s', (_id, practice, template) => {
  const all = () => questions(template, practice);

  it('draws within the cap, and makes other questions from other seeds', () => {
    expect(all().filter(({ fallback }) => fallback).length).toBeLessThan(0.05 * seeds.length);
    const different = new Set(all().map(({ stem, figure }) => JSON.stringify([stem, figure])));
    expect(different.size).toBeGreaterThan(0.9 * seeds.length);
  });

  it('makes the same question from the same ref, also by way of an address', () => {
    for (const question of all().slice(0, 20)) {
      const ref = refFromText(refToText(question.ref));
      expect(ref).toEqual(question.ref);
      expect(questionFrom(question.ref)).toEqual(question);
    }
  });

  it('gives full marks to the right answer in six formats', () => {
    for (const question of all()) {
      const { kind, value } = question.answer;
      for (const figures of [3, 4]) {
        for (const typed of typedInSixFormats(kind, value, figures)) {
          const { marks, verdict, tags } = mark(question, typed);
          expect([typed, marks, verdict, tags]).toEqual([typed, 1, 'right', []]);
        }
      }
    }
  });

  it('never accuses an answer within the tolerance', () => {
    const random = randomOf('within the tolerance');
    for (const { answer, ...rest } of all()) {
      const question = { answer, ...rest } as TypedQuestion;
      const { value, tolerance, kind } = answer;
      const part = random.whole(-99, 99) / 100;
      const near =
        tolerance.kind === 'absolute'
          ? value + part * tolerance.by
          : value * (tolerance.kind === 'relative' ? 1 + part * tolerance.part : tolerance.by ** part);
      const typed = kind === 'temperature' ? `${near - 273.15} °C` : `${near} ${answer.unit}`;
      expect(mark(question, typed)).toMatchObject({ marks: 1, tags: [] });
    }
  });

  it('recognises every slip, typed to 2, 3 and 4 figures in six formats', () => {
    const score = new Map<string, [known: number, of: number]>();
    for (const question of all()) {
      for (const slip of slipsFor(question)) {
        for (const figures of [2, 3, 4]) {
          const typed = typedInSixFormats(question.answer.kind, slip.value, figures);
          for (const text of slip.inF ? typed.filter((one) => /F/.test(one)) : typed) {
            const entry = score.get(slip.id) ?? [0, 0];
            score.set(slip.id, [entry[0] + (mark(question, text).misconception?.id === slip.id ? 1 : 0), entry[1] + 1]);
          }
        }
      }
    }
    for (const [id, [known, of]] of score) {
      console.log(`${template.id} ${practice} ${id}: ${((100 * known) / of).toFixed(2)} % of ${of} recognised`);
      expect(known / of, id).toBeGreaterThanOrEqual(0.97);
    }
  });

  it('seldom accuses an answer that is wrong in its own way', () => {
    const random = randomOf('any wrong answer');
    let accused = 0;
    let of = 0;
    for (const question of all()) {
      const { kind, value, unit, tolerance } = question.answer;
      const number = kind === 'temperature' ? value - 273.15 : value;
      for (let i = 0; i < 40; i++) {
        const wrong = number * 10 ** (random.whole(-200_000, 200_000) / 100_000);
        const rounded = Number(wrong.toPrecision(random.whole(2, 4)));
        if (isWithin(tolerance, value, kind === 'temperature' ? rounded + 273.15 : rounded)) continue;
        of++;
        if (mark(question, `${rounded} ${unit}`).tags.length > 0) accused++;
      }
    }
    console.log(`${template.id} ${practice}: ${((100 * accused) / of).toFixed(2)} % of ${of} random answers accused`);
    expect(accused / of).toBeLessThanOrEqual(0.02);
  });

  it('keeps slips apart, holds no absurd number, and does not tell its answer', () => {
    for (const question of all()) {
      const { answer, wrong, stem, scenarios } = question;
      expect(staysApart(answer, wrong)).toBe(true);
      expect(wrong.every(({ id }) => template.misconceptions.includes(id))).toBe(true);
      const amounts = stem.flat().filter(({ kind }) => kind === 'quantity');
      expect(amounts.length).toBeGreaterThan(2);
      for (const segment of amounts) {
        const [typed] = plainText([segment]).split(' (') as [string];
        const reading = readAnswer(typed, answer.kind);
        const tells = reading.status === 'read' && isWithin(answer.tolerance, answer.value, reading.value);
        expect(tells, typed).toBe(false);
      }
      expect(stem.map(plainText).join(' ')).not.toContain(answer.text);
      expect(question.hints.map(plainText).join(' ')).not.toContain(answer.text);
      expect(plainText(question.solution.flat())).toContain(answer.text);
      for (const { scenario } of scenarios) {
        expect(parseScenario(scenario).faults).toBeUndefined();
        const supply = scenario.supply.map((step) => ('I_A' in step ? step.I_A : 0));
        expect(Math.max(...supply)).toBeLessThanOrEqual(30);
        expect(scenario.surroundings.ambient_degC).toBeGreaterThanOrEqual(0);
        expect(scenario.surroundings.ambient_degC).toBeLessThanOrEqual(45);
      }
    }
  });

  it('speaks in short sentences, with every number whole', () => {
    for (const question of all().slice(0, 60)) {
      for (const text of textsOf(question)) {
        expect(text).not.toMatch(/NaN|undefined|null|Infinity|\d e[+-]|\d\.\d{4}/);
        expect(text).not.toMatch(/\b(obviously|simply|just)\b|wrong!/i);
        expect(text).not.toMatch(/\d (?:A|s|min|K|°C|%|mm²|AWG)(?![a-z])/); // a plain space before a unit
        expect(Math.max(...sentences(text)), text).toBeLessThanOrEqual(25);
      }
    }
  });

  it('stays below 160 °C, and carries a caution wherever the cord is overloaded', () => {
    for (const question of all().slice(0, 60)) {
      for (const { scenario } of question.scenarios) {
        const { run } = predict(scenario);
        expect(run.outcome).toBe('completed');
        expect(Math.max(...run.curves.conductor)).toBeLessThan(273.15 + 160);
      }
      const I = Math.max(
        ...question.scenarios.flatMap(({ scenario }) => scenario.supply.map((s) => ('I_A' in s ? s.I_A : 0))),
      );
      expect(question.cautions.length > 0).toBe(I > ratingOf(question));
    }
  });
});

/** The table rating that the solution quotes. */
function ratingOf(question: Question): number {
  return Number(/table rating is (\d+)/.exec(plainText(question.solution.flat()))?.[1]);
}

it('the answer to Q28 is the engine’s own curve at that time, and the answer to Q30 its own event', () => {
  for (const practice of practices) {
    for (const question of questions(templates.Q28 as Template, practice).slice(0, 20)) {
      const stem = question.stem.map(plainText).join(' ').replaceAll('\u00A0', ' ');
      const [, min, s] = /conductor (?:(\d+) min ?)?(?:(\d+) s )?after/.exec(stem) as unknown as string[];
      const t = 60 * Number(min ?? 0) + Number(s ?? 0);
      const { curves } = predict((question.scenarios[0] as { scenario: Parameters<typeof predict>[0] }).scenario).run;
      const after = curves.t.findIndex((time) => time >= t);
      const [t0, t1] = [curves.t[after - 1] as number, curves.t[after] as number];
      const [T0, T1] = [curves.conductor[after - 1] as number, curves.conductor[after] as number];
      // linear between samples: their bend leaves some hundredths of a kelvin
      expect(Math.abs(T0 + ((T1 - T0) * (t - t0)) / (t1 - t0) - question.answer.value)).toBeLessThan(0.2);
    }
    for (const question of questions(templates.Q30 as Template, practice).slice(0, 20)) {
      if (question.kind !== 'read') throw new Error('Q30 is read off a trace');
      const { events } = predict(question.figure.scenario).run;
      expect(events.find(({ limit }) => limit.id === 'own 1')?.t).toBe(question.answer.value);
    }
  }
});

it('the answer to Q29 is the current times the root of the on-share, from the words of the stem', () => {
  for (const practice of practices) {
    for (const { stem, answer } of questions(templates.Q29 as Template, practice)) {
      const text = stem.map(plainText).join(' ').replaceAll('\u00A0', ' ');
      const [, I, on, off] = /draws (\d+) A for (\d+) s, then nothing for (\d+) s/.exec(text)!.map(Number);
      const share = (on as number) / ((on as number) + (off as number));
      expect(answer.value).toBeCloseTo((I as number) * Math.sqrt(share), 10);
    }
  }
});

it('the answer to Q29 warms the cord as the cycle does, by the engine', () => {
  for (const question of questions(templates.Q29 as Template, 'iec').slice(0, 10)) {
    const [cycle, steady] = question.scenarios.map(({ scenario }) => predict(scenario).run.curves);
    const last = (steady as NonNullable<typeof steady>).conductor.at(-1) as number;
    const { t, conductor } = cycle as NonNullable<typeof cycle>;
    const period = t.at(-1) as number;
    const from = t.findIndex((time) => time >= period - 240);
    const tail = conductor.slice(from);
    expect(last).toBeGreaterThan(Math.min(...tail) - 0.5);
    expect(last).toBeLessThan(Math.max(...tail) + 0.5);
  }
});

const specs = [partWayUpSpec, onOffCurrentSpec, timeOffTraceSpec] as unknown as TemplateSpec<object>[];

it.each(specs.map((spec) => [spec.id, spec] as const))('the listed fallbacks of %s pass its guard', (_id, spec) => {
  const stuck = defineTemplate({ ...spec, draw: () => null });
  for (const practice of practices) {
    const question = typedQuestion(stuck, 'any', practice);
    expect(question.fallback).toBe(true);
    expect(staysApart(question.answer, question.wrong)).toBe(true);
    expect(mark(question, typedInSixFormats(question.answer.kind, question.answer.value, 3)[0] as string).marks).toBe(
      1,
    );
  }
});

it('chance is the same everywhere', () => {
  const random = randomOf('pinned');
  expect(Array.from({ length: 6 }, () => random.whole(1, 1000))).toMatchInlineSnapshot(`
    [
      776,
      644,
      87,
      542,
      314,
      716,
    ]
  `);
  expect(plainText((templates.Q29 as Template).question('pinned', 'iec').stem.flat())).toMatchInlineSnapshot(
    `"An air compressor in a joinery draws 15 A for 4 s, then nothing for 16 s, over and over.It hangs on a three-core 1 mm² cord in still air at 10 °C. The cycle is far shorter than the cord's warm-up.Which steady current would make the same heat on average?"`,
  );
});

it('an address that names no question of ours says why', () => {
  expect(questionFrom({ id: 'Q99', version: 1, practice: 'iec', seed: 'a' })).toEqual({
    fault: 'There is no question Q99.',
  });
  expect(questionFrom({ id: 'toString', version: 1, practice: 'iec', seed: 'a' })).toHaveProperty('fault');
  expect(questionFrom({ id: 'Q28', version: 9, practice: 'iec', seed: 'a' })).toHaveProperty('fault');
  expect(refFromText('Q28.1.xx.a')).toBeUndefined();
  expect(refFromText('Q28.1.iec.%')).toBeUndefined();
  expect(refFromText('')).toBeUndefined();
  const ref = { id: 'Q28', version: 1, practice: 'na', seed: 'evening class. 7/ü' } as const;
  expect(refFromText(refToText(ref))).toEqual(ref);
});
