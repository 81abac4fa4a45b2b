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
  await expect.element(screen.getByText(/held at 70.°C for 1.h: at its rating\./).first()).toBeVisible();
  await expect.element(screen.getByText(/A surface so hot is too hot to hold\./).first()).toBeVisible();
});

it('follows the keyboard: past the rating a short circuit alone may, and the life that it uses is the engine’s', async () => {
  const { push, readings, screen, frame } = await shown();
  for (let i = 0; i < 3; i++) await push('Temperature', '{PageUp}');
  const T = Number.parseInt(readings()[0] ?? '', 10);
  expect(T).toBeGreaterThan(75);
  const now = heldAt(plastics.pvc70, kelvin(T), 3600);
  expect(Number.parseFloat(readings()[2] ?? '')).toBeCloseTo(100 * (now.ageing?.share ?? 0), 3);
  await expect
    .element(screen.getByText(/Only a short circuit may go so high, and for five seconds at most/).first())
    .toBeVisible();
  expect([...frame.querySelectorAll('svg text.bold')].map((text) => text.textContent?.trim())).toContain('Rating 70');
});

it('tells a life at the rating and what becomes of it, what 1000 h use, and the round rule as such', async () => {
  const { push, frame } = await shown();
  await push('Temperature', '{PageUp}');
  const life = heldAt(plastics.pvc70, kelvin(80), 3600).ageing?.life ?? 0;
  const text = () => frame.textContent?.replace(/\s+/g, ' ') ?? '';
  expect(text()).toMatch(/A life of 20 000 h at 70 °C becomes (\d+) h here/);
  expect(Number(/becomes (\d+) h/.exec(text())?.[1]) / (life / 3600)).toBeCloseTo(1, 1);
  expect(text()).toMatch(/Each 1000 h at it use 13 % of that life/);
  expect(text()).toMatch(/makes it 2.0 times as fast as at its rating \(common practice, no source\)/);
});

it('puts ageing away, with its scale and its figure', async () => {
  const { screen, frame, readings } = await shown();
  expect(frame.querySelector('svg')?.textContent).toContain('20\u00A0000\u00A0h');
  await screen.getByRole('switch', { name: 'Ageing' }).click();
  expect(frame.querySelector('svg')?.textContent).not.toContain('20\u00A0000\u00A0h');
  expect(readings()).toHaveLength(2);
});

it('knows no life of silicone, and says why there is no figure', async () => {
  const { screen, readings } = await shown();
  await screen.getByRole('combobox', { name: 'Insulation' }).selectOptions('silicone rubber, 180 °C');
  await expect.element(screen.getByText(/No life is known for this compound. The limits still hold./)).toBeVisible();
  expect(readings()[2]).toBe('–%');
});

it('is looked at closer by arrow keys: test, time, place and source of each limit', async () => {
  const { screen, press } = await shown();
  const softens = screen.getByRole('radio', { name: /Softens/ });
  const rating = screen.getByRole('radio', { name: /Rating/ });
  await expect.element(rating).toBeChecked();
  await press(rating.element(), '{ArrowDown}');
  await expect.element(softens).toBeChecked();
  await expect
    .element(screen.getByText('EN 50363-3, PVC insulating compounds (from memory, to be checked)'))
    .toBeVisible();
  await expect.element(screen.getByText('hot pressure; depends on the compound').first()).toBeVisible();
});

it('keeps the picked row where another insulation has it, and goes back to the rating where not', async () => {
  const { screen } = await shown();
  await screen.getByRole('radio', { name: /Fumes/ }).click({ force: true });
  await screen.getByRole('combobox', { name: 'Insulation' }).selectOptions('XLPE, 90 °C');
  await expect.element(screen.getByRole('radio', { name: /Rating/ })).toBeChecked();
  await expect.element(screen.getByText('Rating, 90 °C')).toBeVisible();
});

it('weighs time: char and failures of PVC are reported only for long enough', async () => {
  const { push, screen, frame } = await shown();
  for (let i = 0; i < 9; i++) await push('Temperature', '{PageUp}');
  expect(frame.textContent).not.toMatch(/turned to char/);
  await screen.getByRole('combobox', { name: 'How long' }).selectOptions('1 day');
  await expect.element(screen.getByText(/In such a time PVC has turned to char that conducts/).first()).toBeVisible();
  await screen.getByRole('combobox', { name: 'How long' }).selectOptions('30 days');
  await expect.element(screen.getByText(/PVC wires held so for a month have failed/).first()).toBeVisible();
});

it('draws every insulation in both themes without a broken number, its ranges with both ends', async () => {
  for (const theme of ['day', 'lamp']) {
    document.documentElement.dataset.theme = theme;
    const { screen, broken, frame } = await shown();
    for (const { name, limits } of Object.values(plastics)) {
      await screen.getByRole('combobox', { name: 'Insulation' }).selectOptions(name);
      expect(broken()).toBeUndefined();
      const ranges = limits.filter(({ low, high }) => high > low);
      expect(frame.querySelectorAll('rect.range')).toHaveLength(ranges.length);
    }
    frame.remove();
  }
  delete document.documentElement.dataset.theme;
});

it('adds the columns of the tables in North American practice, and keeps what is held', async () => {
  const { push, readings, frame } = await shown();
  await push('Temperature', '{PageUp}');
  const before = readings()[0];
  practice.value = 'na';
  await expect.poll(() => frame.querySelectorAll('[data-column]').length).toBe(3);
  expect(frame.textContent).toMatch(/NFPA 70/);
  expect(frame.textContent).toMatch(/Rating 70 \(158.°F\)/);
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
