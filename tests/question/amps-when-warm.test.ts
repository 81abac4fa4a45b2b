// The current of a warm lead whose voltage is held: what is right and what is wrong, from the words of the stem.
import { expect, it } from 'vitest';
import { predict } from '#engine';
import type { TemplateSpec } from '#engine/question/types.ts';
import { ampsWhenWarmSpec } from '#engine/question/unit-1/amps-when-warm.ts';
import { firstCase, practices, questions, testNumbers, testSpecs } from './number-templates.ts';
import { celsius, fahrenheit, number, type Works } from './stem.ts';

const works: Works = {
  Q15b(stem) {
    const loop = /loop has ([\d.]+) (m?)Ω/.exec(stem) as unknown as [string, string, string];
    const cold = number(stem, /holds ([\d.]+) V/) / (Number(loop[1]) * (loop[2] === 'm' ? 1e-3 : 1));
    const alpha = number(stem, /coefficient is ([\d.]+)/);
    const end = number(stem, /settles at (\d+) °C/);
    const endF = fahrenheit(stem).at(-1);
    const slips = [
      { id: 'M16', value: cold },
      { id: 'M13', value: cold / (1 - alpha * (end - 20)) },
      { id: 'M14', value: cold / (1 + alpha * end) },
      ...(endF === undefined ? [] : [{ id: 'M14', value: cold / (1 + alpha * endF) }]),
    ];
    expect(celsius(stem)).toContain(20);
    return { right: cold / (1 + alpha * (end - 20)), slips };
  },
};

testNumbers({ works, accused: 0.04 });
testSpecs([ampsWhenWarmSpec] as unknown as TemplateSpec<never>[]);

it('the engine’s own run ends at that current, at a few volts and within the table rating of copper', () => {
  for (const practice of practices) {
    for (const question of questions('Q15b', practice).slice(0, 12)) {
      const { supply, lead, cable } = firstCase(question);
      expect(supply[0]).toMatchObject({ kind: 'voltage' });
      expect(lead).toHaveProperty('length_m');
      expect(cable).toBeDefined();
      const { steady } = predict({ ...firstCase(question), run: { duration_s: 1 } }, { samplesPerStep: 1 });
      if (steady.kind !== 'steady') throw new Error('a lead this cool settles');
      expect(Math.abs(steady.I / question.answer.value - 1)).toBeLessThan(0.006); // told to three figures and whole degrees
    }
  }
});
