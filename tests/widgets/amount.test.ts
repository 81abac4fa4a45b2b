import { expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import Amount from '#site/controls/Amount.svelte';
import '#site/styles/base.css';

const current = { label: 'Current', min: 0, max: 50, step: 0.5, unit: 'A' };

async function shown(props: Record<string, unknown> = {}) {
  const seen: number[] = [];
  const screen = await render(Amount, {
    ...current,
    value: 20,
    onchange: (value: number) => seen.push(value),
    ...props,
  });
  const field = screen.getByRole('textbox', { name: 'Current' });
  const slider = screen.getByRole('slider', { name: 'Current, slider' });
  const typed = async (text: string) => {
    await userEvent.clear(field);
    await userEvent.type(field, text);
  };
  return { screen, field, slider, typed, seen };
}

it('shows one value as a figure with its unit and on the slider', async () => {
  const { screen, field, slider } = await shown({ also: '(for all cores)' });
  await expect.element(field).toHaveValue('20.0');
  await expect.element(slider).toHaveAttribute('aria-valuetext', '20.0 A (for all cores)');
  await expect.element(screen.getByText('(for all cores)')).toBeVisible();
});

it('reads a decimal comma and a decimal point alike, finer than the slider steps', async () => {
  const { field, typed, seen } = await shown();
  await typed('13,25');
  expect(seen.at(-1)).toBe(13.25);
  await typed('13.75 A');
  expect(seen.at(-1)).toBe(13.75);
  await userEvent.keyboard('{Enter}');
  await expect.element(field).toHaveValue('13.75');
});

it('explains a figure out of range while it is typed and changes nothing before it is committed', async () => {
  const { screen, field, typed, seen } = await shown();
  await userEvent.fill(field, '600');
  expect(seen).toEqual([]);
  await expect.element(field).toHaveValue('600');
  await expect.element(screen.getByRole('status')).toMatchTextContent(/600 is outside the range from 0 to 50 A/);
  await userEvent.keyboard('{Enter}');
  expect(seen).toEqual([50]);
  await expect.element(field).toHaveValue('50.0');
  await expect
    .element(screen.getByRole('status'))
    .toMatchTextContent(/You typed 600\. The range is from 0 to 50 A, so 50 A is used\./);
  await typed('7');
  expect(screen.getByRole('status').element().textContent).toBe('');
});

it('says so when a figure cannot be read, and keeps the value', async () => {
  const { screen, field, seen } = await shown();
  await userEvent.fill(field, 'twelve');
  await expect.element(screen.getByRole('status')).toMatchTextContent(/“twelve” could not be read as a number/);
  await userEvent.keyboard('{Enter}');
  await expect.element(field).toHaveValue('20.0');
  expect(seen).toEqual([]);
});

it('moves by one step with the arrow keys and by ten with the page keys, and stops at its ends', async () => {
  const { slider, seen } = await shown();
  (slider.element() as HTMLElement).focus();
  await userEvent.keyboard('{ArrowRight}{PageDown}{ArrowLeft}');
  expect(seen).toEqual([20.5, 15.5, 15]);
  await userEvent.keyboard('{End}');
  expect(seen.at(-1)).toBe(50);
  await userEvent.keyboard('{ArrowRight}');
  expect(seen.at(-1)).toBe(50);
});

it('goes by equal ratios on a logarithmic slider and reaches both ends', async () => {
  const { slider, seen } = await shown({ min: 0.5, max: 35, value: 4, log: true });
  (slider.element() as HTMLElement).focus();
  await userEvent.keyboard('{ArrowRight}');
  const up = (seen.at(-1) ?? 0) / 4;
  expect(up).toBeGreaterThan(1);
  expect(up).toBeLessThan(1.02);
  await userEvent.keyboard('{Home}');
  expect(seen.at(-1)).toBe(0.5);
  await userEvent.keyboard('{End}');
  expect(seen.at(-1)).toBe(35);
});

it('gives a finger 44 px to press, on the field and on the slider', async () => {
  const { field, slider } = await shown();
  const frame = field.element().parentElement as HTMLElement;
  expect(frame.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
  expect(slider.element().getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
});
