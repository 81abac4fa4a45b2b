import { predict } from '#engine';
import type { Question } from '#engine/question/types.ts';
import { plainText } from '#engine/question/words.ts';

// What a learner with a wrong idea answers, computed from the words of the stem alone (M18: from the cord's own data).

/** A slip's answer [SI]; `onlyIn` where it is the figure typed in that unit. */
export interface Slip {
  id: string;
  value: number;
  inF?: boolean;
}

const stemOf = (question: Question) => question.stem.map(plainText).join(' ').replaceAll('\u00A0', ' ');
const seconds = (text: string) => {
  const [, min, s] = /^(?:(\d+) min)?\s?(?:(\d+) s)?$/.exec(text) ?? [];
  return 60 * Number(min ?? 0) + Number(s ?? 0);
};
const time = String.raw`((?:\d+ min ?)?(?:\d+ s)?)`;

/** Every slip that the curriculum's table links with the question's template. */
export function slipsFor(question: Question): Slip[] {
  const stem = stemOf(question);
  if (question.ref.id === 'Q28') return q28(stem);
  if (question.ref.id === 'Q29') return q29(stem);
  if (question.ref.id === 'Q30') return q30(question);
  throw new Error(`no table for ${question.ref.id}`);
}

function q28(stem: string): Slip[] {
  const celsius = [...stem.matchAll(/(−?\d+) °C/g)].map((found) => Number(found[1]));
  const fahrenheit = [...stem.matchAll(/\((\d+) °F\)/g)].map((found) => Number(found[1]));
  const tau = seconds(new RegExp(`of that rise in ${time}\\.`).exec(stem)?.[1] as string);
  const t = seconds(new RegExp(`conductor ${time} after`).exec(stem)?.[1] as string);
  const [start, end] = celsius as [number, number];
  const made = 1 - Math.exp(-t / tau);
  const slips: Slip[] = [
    { id: 'M20', value: end + 273.15 },
    { id: 'M21', value: made * end + 273.15 },
    { id: 'M17', value: made * (end - start) + 273.15 },
  ];
  if (fahrenheit.length === 0) return slips;
  const [startF, endF] = fahrenheit as [number, number];
  const kelvin = (F: number) => ((F - 32) * 5) / 9 + 273.15;
  return [
    ...slips,
    { id: 'M21', value: kelvin(made * endF), inF: true },
    { id: 'M17', value: kelvin(made * (endF - startF)), inF: true },
  ];
}

function q29(stem: string): Slip[] {
  const [, I, on, off] = /draws (\d+) A for (\d+) s, then nothing for (\d+) s/.exec(stem) as unknown as string[];
  return [{ id: 'M47', value: (Number(I) * Number(on)) / (Number(on) + Number(off)) }];
}

function q30(question: Question): Slip[] {
  const slips: Slip[] = [{ id: 'M19', value: 0 }];
  if (question.kind !== 'read' || !question.wrong.some(({ id }) => id === 'M18')) return slips;
  const { thermal } = predict(question.figure.scenario);
  const { cable } = thermal;
  const I = Number(/carries (\d+) A/.exec(stemOf(question))?.[1]);
  const sheath = Math.PI * (cable.outerRadius ** 2 - cable.bodyRadius ** 2) * 1.7e6;
  const metal = cable.cores * cable.conductor.heatCapacity;
  const heat = 2 * I ** 2 * cable.conductor.R20 * (1 + 0.00393 * (thermal.Ta - 293.15));
  const capacity = metal + cable.plasticArea * 1.7e6 + sheath;
  const level = question.figure.level as number;
  return [...slips, { id: 'M18', value: (capacity * (level - thermal.Ta)) / heat }];
}
