import { beforeEach, expect, it } from 'vitest';
import { ambientFactor, chooseSize, device, fixedSizes, flatTwinRatings, groupingFactor } from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import SizeChooser from '#site/widgets/SizeChooser.svelte';
import type { ChooserAsk } from '#site/widgets/size-chooser/ask.ts';
import { choiceOf } from '#site/widgets/size-chooser/choice.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const heater: ChooserAsk = {
  ...{ told: 'watts', load: 4400, volts: 230, continuous: false, family: 'B', rating: 20, laid: 'flat twin' },
  ...{ metal: 'copper', ambient: 35, together: 3, lagged: 0, column: 90, terminals: 60, leave: false },
};
const storage: ChooserAsk = {
  ...{ ...heater, volts: 240, continuous: true, family: 'ul489', rating: 25, ambient: 45, together: 8 },
};
const asks = { iec: heater, na: storage };
const shown = (props: Record<string, unknown> = {}, width?: number) =>
  figureOnScreen(SizeChooser, { id: 'choose', number: '3.1.1', title: 'From load to size', asks, ...props }, width);
const open = (frame: HTMLElement) =>
  [...frame.querySelectorAll<HTMLElement>('[data-card]')].filter((card) => getComputedStyle(card).display !== 'none');
const card = (frame: HTMLElement, id: string) =>
  (frame.querySelector(`[data-card="${id}"]`)?.textContent ?? '').replace(/\s+/g, ' ');

beforeEach(asNew);

it('opens one card at a time, by the keyboard, and takes the focus along', async () => {
  const { frame, screen, press } = await shown();
  expect(open(frame)).toHaveLength(1);
  await press(screen.getByRole('button', { name: 'Next step' }).element(), '{Enter}');
  expect(open(frame)).toHaveLength(2);
  await expect.poll(() => document.activeElement?.getAttribute('data-card')).toBe('device');
  await screen.getByRole('button', { name: /Open all/ }).click();
  expect(open(frame)).toHaveLength(13);
  expect(screen.getByRole('button', { name: 'Next step' }).elements()).toHaveLength(0);
  await screen.getByRole('button', { name: 'Start again, one by one' }).click();
  expect(open(frame)).toHaveLength(1);
});

it('steps as the engine does: 4.4 kW, 20 A, three circuits at 35 °C want 30.4 A and 4 mm²', async () => {
  const { frame } = await shown({ all: true });
  const B20 = device('B', 20);
  if (!B20) throw new Error('there is a B20');
  const { chosen, trials } = chooseSize(
    fixedSizes(flatTwinRatings(), {
      Ib: 4400 / 230,
      device: B20,
      factors: [ambientFactor('iec', 70, 35), groupingFactor(3)],
    }),
  );
  expect(chosen?.name).toBe('4 mm²');
  expect(card(frame, 'load')).toMatch(/4400 W ÷ 230 V.*Ib = 19\.1 A/);
  expect(card(frame, 'needed')).toMatch(/20 A ÷ \(0\.94 × 0\.70?\).*It,min = 30\.4 A/);
  expect(card(frame, 'in place')).toMatch(/37 A × 0\.94 × 0\.70?.*Iz = 24\.3 A/);
  for (const { size, rejections } of trials) {
    const row = frame.querySelector(`[data-size="${size.size}"]`)?.textContent?.replace(/\s+/g, ' ') ?? '';
    for (const { text } of rejections) expect(row).toContain(text.replace(/\s+/g, ' '));
    if (size === chosen) expect(row).toContain('holds, and is the smallest');
  }
});

it('tells the table’s answer as the verdict and heat’s as information, with the engine’s reasons', async () => {
  const { frame } = await shown({ all: true });
  const says = (answer: string) => frame.querySelector(`[data-answer="${answer}"]`)?.textContent ?? '';
  expect(says('table')).toMatch(/verdict.*4 mm²/s);
  expect(says('heat')).toMatch(/no leave to use it: the table’s answer holds/);
  for (const { text } of choiceOf(heater, 'iec').chosen?.answers?.reasons ?? [])
    expect(card(frame, 'answers')).toContain(text.replace(/\s+/g, ' '));
  expect(card(frame, 'answers')).toMatch(/never permission/);
});

it('shows the steps of another size that is picked', async () => {
  const { frame, screen } = await shown({ all: true });
  await screen.getByRole('radio', { name: '2.5 mm²' }).click();
  expect(card(frame, 'rating')).toMatch(/In 20 A ≤ Iz 17\.8 A.*fails/);
});

it('turns with the practice: continuous load, terminals, and each cap with its step', async () => {
  const { frame } = await shown({ all: true });
  practice.value = 'na';
  await expect.poll(() => card(frame, 'continuous')).toMatch(/1\.25 × 18\.3 A.*22\.9 A/);
  expect(card(frame, 'terminals')).toMatch(/60 °C terminals allow/);
  expect(card(frame, 'next size up')).toMatch(/for information/);
  const { chosen } = choiceOf(storage, 'na');
  expect(card(frame, 'sizes')).toContain(`${chosen?.size.name} is the smallest that holds`);
});

it('changes by its controls and keeps the ask in the address', async () => {
  const { frame, screen, push } = await shown({ all: true });
  await push('Circuits in one bunch', '{Home}');
  await expect.poll(() => card(frame, 'sizes')).toContain('2.5 mm² is the smallest that holds');
  await expect.poll(() => readFragment(location.hash, 'choose')).toBe('iec;together:1');
  await screen.getByRole('radio', { name: 'amps' }).click();
  await expect.element(screen.getByRole('textbox', { name: 'Load' })).toHaveValue('19.1');
  await screen.getByRole('button', { name: 'Back to the lesson’s case' }).click();
  await expect.poll(() => card(frame, 'sizes')).toContain('4 mm² is the smallest');
});

it('reads a link, and says in words what is wrong with one', async () => {
  history.replaceState(null, '', '#choose=na;load:3000;metal:aluminium');
  const { screen, frame } = await shown({ all: true });
  await expect.element(screen.getByText(/3000\sW at 240\sV/).first()).toBeVisible();
  expect(card(frame, 'table')).toMatch(/It = /);
});

it('says in words what is wrong with a link, and keeps the lesson’s own ask', async () => {
  history.replaceState(null, '', '#choose=iec;load:lots;rating:21;nonsense');
  const { screen, frame } = await shown({ all: true });
  await expect.element(screen.getByRole('alert')).toBeVisible();
  const says = screen.getByRole('alert').element().textContent ?? '';
  for (const wrong of ['load:lots', 'rating:21', 'nonsense']) expect(says).toContain(`${wrong} is not accepted.`);
  expect(card(frame, 'sizes')).toContain('4 mm² is the smallest');
});

it.each<[string, Partial<ChooserAsk>, 'iec' | 'na']>([
  ['nothing that will do', { load: 12_000, rating: 63, together: 20, lagged: 600 }, 'iec'],
  ['a load above its device', { load: 12_000, rating: 6 }, 'iec'],
  ['a rewirable fuse', { family: 'bs3036', rating: 30 }, 'iec'],
  ['aluminium', { laid: 'C', metal: 'aluminium' }, 'iec'],
  ['a conduit in a wall', { laid: 'A2' }, 'iec'],
  ['the hottest air', { ambient: 60 }, 'iec'],
  ['the hottest air of its column', { ambient: 85 }, 'na'],
  ['aluminium at 75 °C terminals with leave', { metal: 'aluminium', terminals: 75, leave: true }, 'na'],
  ['twenty conductors at 60 °C', { column: 60, ambient: 55, together: 20 }, 'na'],
])('draws %s without a broken number', async (_name, change, usage) => {
  const { broken, frame } = await shown({ all: true, asks: { ...asks, [usage]: { ...asks[usage], ...change } } });
  practice.value = usage;
  await expect.poll(() => card(frame, 'answers')).toMatch(/By the table/);
  expect(broken()).toBeUndefined();
});

it('stands in 288 px', async () => {
  const { frame } = await shown({ all: true }, 288);
  expect(frame.scrollWidth).toBeLessThanOrEqual(288 + 5);
});
