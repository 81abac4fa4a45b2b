import { beforeEach, describe, expect, it, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import type { Ask } from '#site/widgets/answers/asks.ts';
import { besideComputed } from '#site/widgets/answers/beside.ts';
import PredictAnswers from '#site/widgets/PredictAnswers.svelte';
import { practice } from '#site/widgets/practice.svelte.ts';
import { lockedEvent } from '#site/widgets/prediction/names.ts';
import { type FieldUnit, readAmount } from '#site/widgets/prediction/read-amount.ts';
import { keepPrediction, keptPrediction } from './kept-prediction.ts';
import '#site/styles/base.css';

const both = <T>(value: T) => ({ iec: value, na: value });
const asks: readonly Ask[] = [
  {
    kind: 'number',
    id: 'rise',
    words: { iec: 'Rise of the metric cord', na: 'Rise of the gauge cord' },
    unit: 'K',
    computed: { iec: { value: 40, told: '40 K' }, na: { value: 24, told: '24 K' } },
  },
  {
    kind: 'choice',
    id: 'longer',
    words: both('What does its temperature do?'),
    options: [
      { id: 'up', words: both('It goes up') },
      { id: 'same', words: both('It stays the same') },
    ],
    computed: both({ id: 'same', told: '26 °C, then 26 °C' }),
  },
  {
    kind: 'order',
    id: 'metals',
    words: both('Put them in order'),
    ends: ['coolest', 'hottest'],
    items: [
      { id: 'steel', words: both('steel') },
      { id: 'copper', words: both('copper') },
      { id: 'tin', words: both('tin') },
    ],
    computed: both({ ids: ['copper', 'tin', 'steel'], told: { copper: '31 °C', tin: '36 °C', steel: '105 °C' } }),
  },
];

let count = 0;
async function shown(kept?: unknown, width = 720) {
  const id = `asks-${count++}`;
  if (kept !== undefined) keepPrediction(id, kept);
  const frame = document.createElement('div');
  frame.style.width = `${width}px`;
  document.body.append(frame);
  const screen = await render(PredictAnswers, { props: { id, asks, figure: 'figure' } }, { baseElement: frame });
  const press = (name: string | RegExp) => screen.getByRole('button', { name }).click();
  const order = () => [...frame.querySelectorAll('.list .name')].map((item) => item.textContent?.trim());
  const rows = () =>
    [...frame.querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent?.trim()));
  return { id, screen, frame, press, order, rows };
}

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
});

it('locks in a number, a choice and an order, and stands them beside the computed ones', async () => {
  const { id, screen, press, rows } = await shown();
  const heard = vi.fn();
  document.addEventListener(lockedEvent, (event) => heard((event as CustomEvent).detail), { once: true });
  await screen.getByRole('textbox', { name: 'Rise of the metric cord' }).fill('20');
  await expect.element(screen.getByText('read as 20\u00A0K')).toBeVisible();
  await screen.getByRole('radio', { name: 'It goes up' }).click();
  await press('Move copper up');
  await press('Lock it in');
  await expect.element(screen.getByText('Your prediction, locked in')).toHaveFocus();
  expect(heard).toHaveBeenCalledWith(id);
  expect(keptPrediction(id)).toEqual({
    iec: { kind: 'answers', answers: { rise: 20, longer: 'up', metals: ['copper', 'steel', 'tin'] } },
  });
  const [rise, longer, metals] = rows();
  expect(rise?.slice(0, 2)).toEqual(['Rise of the metric cord', '20\u00A0K']);
  expect(rise?.[2]).toMatch(/^40 K\s*about half of it$/);
  expect(longer?.[1]).toBe('It goes up');
  expect(longer?.[2]).toMatch(/^It stays the same\s*26 °C, then 26 °C$/);
  expect(metals?.[1]).toMatch(/^1\. copper\s*2\. steel\s*3\. tin$/);
  expect(metals?.[2]).toMatch(/^1\. copper: 31 °C\s*2\. tin: 36 °C\s*3\. steel: 105 °C\s*the same in 1 of 3 places$/);
});

it('does not lock while an answer is missing: it names how many, and goes to the first', async () => {
  const { screen, press } = await shown();
  await press('Lock it in');
  await expect.element(screen.getByText('3 answers are still missing.')).toBeInTheDocument();
  await expect.element(screen.getByRole('textbox')).toHaveFocus();
  await expect.element(screen.getByRole('textbox')).toHaveAttribute('aria-invalid', 'true');
  await screen.getByRole('textbox').fill('12');
  await press('Lock it in');
  await expect.element(screen.getByText('2 answers are still missing.')).toBeInTheDocument();
  await expect.element(screen.getByRole('radio', { name: 'It goes up' })).toHaveFocus();
});

it('is answered by keyboard alone, and the keyboard stays on the item that it moves', async () => {
  const { screen, order } = await shown();
  (screen.getByRole('textbox').element() as HTMLElement).focus();
  await userEvent.keyboard('38{Tab} {Tab}');
  const name = () => (document.activeElement as HTMLElement).getAttribute('aria-label');
  expect(name()).toBe('Move steel down');
  await userEvent.keyboard('{Enter}');
  await vi.waitFor(() => expect(order()).toEqual(['copper', 'steel', 'tin']));
  await vi.waitFor(() => expect(name()).toBe('Move steel down'));
  await userEvent.keyboard('{Enter}');
  await vi.waitFor(() => expect(order()).toEqual(['copper', 'tin', 'steel']));
  await vi.waitFor(() => expect(name()).toBe('Move steel up'));
  await expect.element(screen.getByText('steel is now 3 of 3.')).toBeInTheDocument();
  (screen.getByRole('button', { name: 'Lock it in' }).element() as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
  await expect.element(screen.getByText('Your prediction, locked in')).toBeVisible();
});

const answers = { rise: 41, longer: 'same', metals: ['copper', 'tin', 'steel'] };

it('shows what was kept, in the reader’s practice, and lets it be predicted again', async () => {
  const { id, screen, rows, press } = await shown({ iec: { kind: 'answers', answers } });
  expect(rows().map((row) => row[2]?.split(/\s{2,}|(?=within|the same)/).at(-1))).toEqual([
    'within 10\u00A0%',
    'the same',
    'the same',
  ]);
  practice.value = 'na';
  await expect.element(screen.getByRole('textbox', { name: 'Rise of the gauge cord' })).toBeVisible();
  practice.value = 'iec';
  await press('Predict again');
  await expect.element(screen.getByRole('textbox', { name: 'Rise of the metric cord' })).toBeVisible();
  expect(keptPrediction(id)).toBeUndefined();
});

it.each<[string, unknown]>([
  ['an answer short', { rise: 41, longer: 'same' }],
  ['an option that is gone', { ...answers, longer: 'sideways' }],
  ['an item that is gone', { ...answers, metals: ['copper', 'tin', 'lead'] }],
  ['text for a number', { ...answers, rise: 'hot' }],
])('asks anew where what was kept has %s', async (_name, kept) => {
  const { screen } = await shown({ iec: { kind: 'answers', answers: kept } });
  await expect.element(screen.getByRole('button', { name: 'Lock it in' })).toBeVisible();
});

it('works on in a browser that keeps nothing, and says so', async () => {
  const refuse = vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
    throw new DOMException('refused', 'SecurityError');
  });
  try {
    const { screen, press } = await shown();
    await screen.getByRole('textbox').fill('12');
    await screen.getByRole('radio', { name: 'It goes up' }).click();
    await press('Move tin up');
    await press('Lock it in');
    await expect.element(screen.getByText(/This browser keeps nothing/)).toBeVisible();
  } finally {
    refuse.mockRestore();
  }
});

it('fits a narrow phone, open and locked', async () => {
  for (const kept of [undefined, { iec: { kind: 'answers', answers } }]) {
    const { frame } = await shown(kept, 328);
    expect((frame.firstElementChild as HTMLElement).scrollWidth).toBeLessThanOrEqual(328);
    for (const button of frame.querySelectorAll('button'))
      expect(button.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
  }
});

describe('where a number lies to the computed one', () => {
  it.each<[number, number, FieldUnit, string]>([
    [40, 40, 'K', 'the same'],
    [43, 40, 'K', 'within 10\u00A0%'],
    [20, 40, 'W', 'about half of it'],
    [80, 40, 'W', 'about twice it'],
    [160, 40, 'W', 'about 4 times it'],
    [13, 40, 'W', 'about a third of it'],
    [1, 40, 'W', 'far below it'],
    [4000, 40, 'W', 'far above it'],
    [62, 55, '°C', '7\u00A0K high'],
    [55.2, 55.4, '°C', 'the same'],
  ])('%d for %d %s: %s', (yours, computed, unit, says) => {
    expect(besideComputed(yours, computed, unit)).toBe(says);
  });
});

describe('a typed amount', () => {
  it.each<[string, FieldUnit, number]>([
    ['40', 'K', 40],
    ['0.05 kW', 'W', 50],
    ['77 F', '°C', 25],
    ['25', '°C', 25],
    ['1,7', 'W/m', 1.7],
    ['1.1', 'Ω', 1.1],
    ['25', '%', 25],
    ['0.25', '×', 0.25],
    ['4', 'min', 4],
    ['90 s', 'min', 1.5],
    ['3:30', 'min:s', 210],
  ])('%s in a field of %s is %d', (typed, unit, value) => {
    expect(readAmount(typed, unit).value).toBeCloseTo(value, 9);
  });

  it('asks which unit a bare time has where the field has two', () => {
    expect(readAmount('4', 'min:s')).toEqual({ says: 'Minutes or seconds? Write it like 3:30 or 210 s.' });
  });
});
