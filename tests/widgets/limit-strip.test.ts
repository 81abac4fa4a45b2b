import { beforeEach, expect, it } from 'vitest';
import { heldAt, kelvin, plastics } from '#engine';
import LimitStrip from '#site/widgets/LimitStrip.svelte';
import { stripCase } from '#site/widgets/limit-strip/strip-case.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const scenarios = {
  iec: stripCase('C125', 'iec', 'pvc70', 70, 3600),
  na: stripCase('A16', 'na', 'pvc70', 70, 3600),
};
const shown = (width?: number) =>
  figureOnScreen(LimitStrip as never, { id: 'strip', number: '0.0.1', title: 'What PVC stands', scenarios }, width);

beforeEach(asNew);

it('stands on the rating without having passed it, and says so', async () => {
  const { readings, screen } = await shown();
  expect(readings()[0]).toBe('70°C');
  await expect.element(screen.getByText(/held at 70.°C for 1.h: past its touch limit/).first()).toBeVisible();
});

it('follows the keyboard: past the rating a short circuit alone may, and the life that it uses is the engine’s', async () => {
  const { push, readings, screen, frame } = await shown();
  for (let i = 0; i < 3; i++) await push('Temperature', '{PageUp}');
  const T = Number.parseInt(readings()[0] ?? '', 10);
  expect(T).toBeGreaterThan(75);
  const share = heldAt(plastics.pvc70, kelvin(T), 3600).ageing?.share ?? 0;
  expect(Number.parseFloat(readings()[1] ?? '')).toBeCloseTo(100 * share, 3);
  await expect
    .element(screen.getByText(/Only a short circuit may, and for five seconds at most/).first())
    .toBeVisible();
  expect([...frame.querySelectorAll('svg text.bold')].map((text) => text.textContent)).toContain('Rating 70');
});

it('knows no life of silicone, and says why there is no figure', async () => {
  const { screen, readings } = await shown();
  await screen.getByRole('combobox', { name: 'Insulation' }).selectOptions('silicone rubber, 180 °C');
  await expect.element(screen.getByText('No life is known for this compound. The limits still hold.')).toBeVisible();
  expect(readings()[1]).toBe('–%');
});

it('adds the columns of the tables in North American practice, and keeps what is held', async () => {
  const { push, readings, frame } = await shown();
  await push('Temperature', '{PageUp}');
  const before = readings()[0];
  practice.value = 'na';
  await expect.poll(() => frame.textContent).toMatch(/90 column/);
  expect(readings()[0]).toBe(before);
});

it('draws the extremes without a broken number, on a phone too', async () => {
  for (const width of [752, 296]) {
    const { push, broken, frame } = await shown(width);
    await push('Temperature', '{End}');
    expect(broken()).toBeUndefined();
    expect(frame.querySelector('svg .value')?.textContent).toBe('400');
    frame.remove();
  }
});
