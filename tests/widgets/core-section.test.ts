import { beforeEach, expect, it } from 'vitest';
import { castScenario, celsius, momentAt, predict } from '#engine';
import CoreSection from '#site/widgets/CoreSection.svelte';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const scenarios = { iec: castScenario('C125', 13, 25), na: castScenario('A16', 13, 25) };
const shown = (props: Record<string, unknown> = {}, width?: number) =>
  figureOnScreen(
    CoreSection as never,
    { id: 'core', number: '0.0.1', title: 'Through the cord', scenarios, ...props },
    width,
  );
const engineAt = (key: 'iec' | 'na', t: number) => {
  const { conductor, surface } = momentAt(predict(scenarios[key]).run.curves, t);
  return [conductor, surface].map((T) => `${celsius(T).toFixed(0)}°C`);
};

beforeEach(asNew);

it('shows conductor, surface and air at the end of the run', async () => {
  const { readings } = await shown();
  expect(readings()).toEqual([...engineAt('iec', 1800), '25°C']);
});

it('goes back in time by keyboard, to a cord as cold as the air', async () => {
  const { push, readings } = await shown();
  await push('Time since switching on', '{Home}');
  expect(readings()).toEqual(['25°C', '25°C', '25°C']);
});

it('opens at a time of its own, and turns with the practice', async () => {
  const { readings } = await shown({ at: 120 });
  expect(readings().slice(0, 2)).toEqual(engineAt('iec', 120));
  practice.value = 'na';
  await expect.poll(() => readings().slice(0, 2)).toEqual(engineAt('na', 120));
});

it('makes the wall thicker, and a thin cord no hotter', async () => {
  const { push, readings, screen } = await shown({ controls: ['insulation'] });
  const before = Number.parseInt(readings()[0] ?? '', 10);
  await push('Insulation of each core', '{End}');
  const slider = screen.getByRole('slider', { name: 'Insulation of each core, slider' });
  expect(slider.element().getAttribute('aria-valuetext')).toMatch(/^2(\.00)? mm/);
  expect(Number.parseInt(readings()[0] ?? '', 10)).toBeLessThanOrEqual(before);
});

it('draws without a broken number on a phone', async () => {
  const { broken, push } = await shown({}, 296);
  await push('Current', '{End}');
  expect(broken()).toBeUndefined();
});

it('loads a third conductor, which makes the first two hotter', async () => {
  const { readings, screen } = await shown({ controls: ['loaded'] });
  const before = Number.parseInt(readings()[0] ?? '', 10);
  await screen.getByRole('radio', { name: '3' }).click({ force: true });
  expect(Number.parseInt(readings()[0] ?? '', 10)).toBeGreaterThan(before + 5);
});

it('paints its field in both themes, with the temperatures along the cut as a table', async () => {
  for (const theme of ['day', 'lamp']) {
    document.documentElement.dataset.theme = theme;
    const { frame } = await shown();
    await expect.poll(() => frame.querySelector('canvas')?.width ?? 0).toBeGreaterThan(200);
    expect(frame.querySelectorAll('tbody tr').length).toBeGreaterThan(8);
    frame.remove();
  }
  delete document.documentElement.dataset.theme;
});

it('stands at extremes without a broken number', async () => {
  const { broken, push } = await shown({ controls: ['current', 'ambient', 'time'], greatest_A: 400 });
  for (const name of ['Current', 'Ambient']) await push(name, '{End}');
  expect(broken()).toBeUndefined();
  await push('Current', '{Home}');
  await push('Ambient', '{Home}');
  expect(broken()).toBeUndefined();
});
