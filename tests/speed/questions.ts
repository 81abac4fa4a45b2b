// Drawing and marking questions, and reading typed answers, beside the calibration loop of the same run.
import { mark, readAnswer, templates } from '#engine';
import { calibration, line, microseconds } from './clock.ts';

/** Prints the mean time to draw a question and the slowest templates, and what marking and reading an answer take. */
export function questions(): void {
  const all = Object.values(templates).flatMap((template) =>
    template.practices.map((practice) => ({ template, practice })),
  );
  const drawn = all.map(({ template, practice }) => {
    let i = 0;
    const draw = () => template.question(`speed ${i++}`, practice);
    return { name: `${template.id} ${practice}`, time: microseconds(draw, 4, 3), question: draw() };
  });
  const mean = drawn.reduce((sum, { time }) => sum + time, 0) / drawn.length;
  const slowest = drawn.toSorted((a, b) => b.time - a.time).slice(0, 3);
  const told = slowest.map(({ name, time }) => `${name} ${(time / 1000).toFixed(1)}`).join(', ');
  line('calibration loop', `${calibration().toFixed(1)} µs`);
  line(`a question drawn, mean of ${drawn.length} templates`, `${(mean / 1000).toFixed(2)} ms; slowest ${told}`);
  const number = drawn.find(({ question }) => question.kind === 'number')?.question;
  if (number) line('an answer marked', `${microseconds(() => mark(number, '12.3 A'), 200).toFixed(1)} µs`);
  line('an answer read', `${microseconds(() => readAnswer('1 min 35 s', 'time'), 500).toFixed(1)} µs`);
}
