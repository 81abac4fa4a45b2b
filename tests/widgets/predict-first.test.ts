import { beforeEach, expect, it, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import PredictFirst from '#site/widgets/PredictFirst.svelte';
import { practice } from '#site/widgets/practice.svelte.ts';
import { lockedEvent } from '#site/widgets/prediction/names.ts';
import { keepPrediction, keptPrediction } from './kept-prediction.ts';
import '#site/styles/base.css';

let count = 0;
/** A prediction of its own for each test, as the page keeps what it has read. */
async function shown(kept?: unknown) {
  const id = `trial-${count++}`;
  if (kept !== undefined) keepPrediction(id, kept);
  const props = { id, figure: 'figure', on: '30 min', cases: { iec: 'A cord of the old world.', na: 'A gauge cord.' } };
  const screen = await render(PredictFirst, { props });
  const field = (name: RegExp) => screen.getByRole('textbox', { name });
  const fill = async (start: string, minute: string, end: string, share: string) => {
    await field(/start/).fill(start);
    await field(/1 minute/).fill(minute);
    await field(/30 min/).fill(end);
    await field(/63/).fill(share);
  };
  const lock = () => screen.getByRole('button', { name: 'Lock it in' }).click();
  return { id, screen, field, fill, lock };
}

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
});

it('locks four facts in, keeps them on the device and says so on the page', async () => {
  const { id, screen, fill, lock } = await shown();
  const said = vi.fn();
  document.addEventListener(lockedEvent, (event) => said((event as CustomEvent).detail), { once: true });
  await fill('25', '52', '88', '3:30');
  await lock();
  await expect.element(screen.getByText('Your prediction, locked in')).toBeVisible();
  for (const text of ['25 °C', '52 °C', '88 °C', '3:30'])
    await expect.element(screen.getByText(text.replace(' ', '\u00A0'), { exact: true })).toBeVisible();
  expect(said).toHaveBeenCalledWith(id);
  expect(keptPrediction(id)).toEqual({
    iec: { kind: 'facts', facts: { start: 25, minute: 52, end: 88, share: 210 } },
  });
  await expect.element(screen.getByText('Your prediction, locked in')).toHaveFocus();
});

it('shows what was kept, in violet, and lets it be predicted again', async () => {
  const facts = { start: 25, minute: 40, end: 70, share: 240 };
  practice.value = 'na';
  const { id, screen, field } = await shown({ na: { kind: 'facts', facts } });
  const start = screen.getByText('25\u00A0°C', { exact: true });
  await expect.element(start).toBeVisible();
  await expect.element(screen.getByText('A gauge cord.')).toBeVisible();
  const yours = getComputedStyle(document.documentElement).getPropertyValue('--yours');
  const probe = document.createElement('i');
  probe.style.color = yours;
  document.body.append(probe);
  expect(getComputedStyle(start.element()).color).toBe(getComputedStyle(probe).color);
  await screen.getByRole('button', { name: 'Predict again' }).click();
  await expect.element(field(/start/)).toHaveFocus();
  expect(keptPrediction(id)).toBeUndefined();
});

it.each([
  ['°F', '77 F', 'read as 77\u00A0°F'],
  ['a bare number', '25', 'read as 25\u00A0°C'],
  ['words', 'warm', /No number/],
  ['a current', '20 A', /is for a current/],
])('reads %s in a temperature field and says how', async (_name, typed, says) => {
  const { screen, field } = await shown();
  await field(/start/).fill(typed);
  await expect.element(screen.getByText(says)).toBeVisible();
});

it('asks for the unit of a bare time, and takes clock, seconds and minutes', async () => {
  const { screen, field } = await shown();
  await field(/63/).fill('4');
  await expect.element(screen.getByText(/Minutes or seconds/)).toBeVisible();
  for (const typed of ['3:30', '210 s', '3 min 30 s', '3.5 min']) {
    await field(/63/).fill(typed);
    await expect.element(screen.getByText(/^read as/)).toBeVisible();
  }
});

it('does not lock while a fact is missing: it names how many, and goes to the first', async () => {
  const { screen, field, fill, lock } = await shown();
  await fill('25', '', '', '4:00');
  await lock();
  await expect.element(screen.getByRole('status')).toMatchTextContent('2 facts are still missing.');
  await expect.element(field(/1 minute/)).toHaveFocus();
  await expect.element(field(/1 minute/)).toHaveAttribute('aria-invalid', 'true');
});

it('locks by keyboard alone', async () => {
  const { screen, field } = await shown();
  (field(/start/).element() as HTMLElement).focus();
  await userEvent.keyboard('25{Tab}50{Tab}80{Tab}4:00{Enter}');
  await expect.element(screen.getByText('Your prediction, locked in')).toBeVisible();
});

it('says in words that a browser keeps nothing, and works on', async () => {
  const refuse = vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
    throw new DOMException('refused', 'SecurityError');
  });
  try {
    const { screen, fill, lock } = await shown();
    await fill('25', '50', '80', '4:00');
    await lock();
    await expect.element(screen.getByText(/This browser keeps nothing/)).toBeVisible();
  } finally {
    refuse.mockRestore();
  }
});

it('reads what an older version kept, one prediction with its practice', async () => {
  const facts = { start: 21, minute: 41, end: 71, share: 240 };
  const { screen } = await shown({ iec: { kind: 'facts', facts } });
  await expect.element(screen.getByText('21\u00A0°C', { exact: true })).toBeVisible();
});

it('is asked for the cord of the chosen practice, each with a prediction of its own', async () => {
  const facts = { start: 25, minute: 40, end: 70, share: 240 };
  const { screen } = await shown({ iec: { kind: 'facts', facts } });
  await expect.element(screen.getByText('A cord of the old world.')).toBeVisible();
  await expect.element(screen.getByText('Your prediction, locked in')).toBeVisible();
  practice.value = 'na';
  await expect.element(screen.getByText('A gauge cord.')).toBeVisible();
  await expect.element(screen.getByRole('button', { name: 'Lock it in' })).toBeVisible();
});
