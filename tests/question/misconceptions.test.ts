import { expect, it } from 'vitest';
import { misconceptions } from '#engine/question/misconceptions.ts';
import { templates } from '#engine/question/templates.ts';

const all = Array.from({ length: 50 }, (_, i) => `M${String(i + 1).padStart(2, '0')}`);

it('all fifty wrong ideas of the curriculum have their words', () => {
  expect(Object.keys(misconceptions)).toEqual(all);
});

it('each wrong idea is met in some question', () => {
  const met = new Set(Object.values(templates).flatMap((template) => template.misconceptions as readonly string[]));
  expect(all.filter((id) => !met.has(id))).toEqual([]);
});
