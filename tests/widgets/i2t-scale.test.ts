import { beforeEach, expect, it } from 'vitest';
import { cableOf, cast, kOf, meltingEnergy, plastics, withstand } from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import I2tScale from '#site/widgets/I2tScale.svelte';
import { type EnergyAsk, energyCase } from '#site/widgets/i2t-scale/energy-case.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const pair: EnergyAsk = {
  ...{ amps: 302, metal: 'copper', size: 1.5, down: 'gG', downRating: 16, up: 'gG', upRating: 32 },
  ...{ downMaker: 0, upMaker: 0 },
};
const american: EnergyAsk = { ...pair, size: 14, down: 'ul489', downRating: 20, up: 'ul489', upRating: 60 };
const asks = { iec: pair, na: american };
const cables = { iec: cast.C150, na: cast.A14 };
const shown = (props: Record<string, unknown> = {}, width?: number) =>
  figureOnScreen(I2tScale, { id: 'energy', number: '4.4.1', title: 'I²t', cables, asks, ...props }, width);
const bare = (text: string | undefined) => Number(text?.replace(/[^\d.]/g, '').replace(/\.$/, ''));
const verdict = (frame: HTMLElement, name: string) =>
  frame.querySelector(`[data-${name}]`)?.getAttribute(`data-${name}`);

beforeEach(asNew);

it('stands k²S² by the engine, for the time that it gives', async () => {
  const { readings } = await shown();
  const { conductor } = cableOf(cast.C150);
  const k = kOf(conductor.metal, plastics.pvc70, conductor.area);
  const stands = withstand(k?.k ?? 0, conductor.area);
  expect(bare(readings()[0]?.replace('A²s', ''))).toBeCloseTo(stands, -3);
  expect(readings()[1]).toBe('0.33s');
  expect(readings()[2]).toBe('2250A²s');
});

it('sets everything on one scale: what stands more stands further right', async () => {
  const { frame } = await shown({ earth: { iec: 1, na: 16 } });
  const needle = (row: string) =>
    Number(
      frame
        .querySelector(`[data-row="${row}"]`)
        ?.getAttribute('d')
        ?.match(/[\d.]+/)?.[0],
    );
  const bar = frame.querySelector('[data-row="down"]');
  const end = Number(bar?.getAttribute('x')) + Number(bar?.getAttribute('width'));
  expect(needle('earth')).toBeLessThan(needle('conductor'));
  expect(end).toBeLessThan(needle('earth'));
  expect(verdict(frame, 'survives')).toBe('true');
  expect(frame.textContent).toMatch(/thinner protective conductor survives/);
});

it('judges a pair of gG fuses by 1.6 : 1', async () => {
  const { frame, screen } = await shown();
  expect(verdict(frame, 'selective')).toBe('true');
  await screen.getByRole('combobox', { name: 'Rating, downstream' }).selectOptions('25');
  await expect.poll(() => verdict(frame, 'selective')).toBe('false');
  expect(frame.textContent).toMatch(/Both may open: gG fuses want 1\.6 : 1, and these are 1\.28 : 1/);
  expect(
    energyCase({ ...pair, downRating: 25 }, 'iec', { cable: cast.C150, metal: 'copper', size: 1.5 }, null).selectivity
      ?.pair,
  ).toEqual({ upstream: meltingEnergy(32)?.least.value, downstream: meltingEnergy(25)?.greatest.value });
});

it('tells how far the time holds: below 0.1 s compare, above 5 s warm up', async () => {
  const { push, frame } = await shown();
  await push('Fault current', '{End}');
  await expect.poll(() => frame.textContent).toMatch(/below 0\.1\ss: compare I²t/);
  await push('Fault current', '{Home}');
  await expect.poll(() => frame.textContent).toMatch(/above 5\ss: heat leaves/);
});

it('tells that North American standards give no let-through, and takes a maker’s figure', async () => {
  const { frame, screen } = await shown();
  practice.value = 'na';
  await expect.poll(() => frame.querySelectorAll('[data-unknown]').length).toBe(2);
  expect(verdict(frame, 'survives')).toBe('null');
  expect(verdict(frame, 'selective')).toBe('null');
  await screen.getByRole('textbox', { name: /^Let-through/ }).fill('9000');
  await expect.poll(() => verdict(frame, 'survives')).toBe('true');
  await screen.getByRole('textbox', { name: /^Pre-arcing/ }).fill('30000');
  await expect.poll(() => verdict(frame, 'selective')).toBe('true');
  await expect.poll(() => readFragment(location.hash, 'energy')).toBe('na;downMaker:9000;upMaker:30000');
});

it('gives a clad lead its own k, and says whose mixing that is', async () => {
  const { frame, screen } = await shown();
  await screen.getByRole('radio', { name: 'CCA' }).click();
  await expect.poll(() => frame.textContent).toMatch(/No standard prints k/);
});

it.each<[string, Partial<EnergyAsk>]>([
  ['a current that its device may carry', { amps: 20, down: 'B', downRating: 63 }],
  ['the greatest current behind a breaker', { amps: 10_000, down: 'C', downRating: 16 }],
  ['a plug fuse without a zone', { down: 'bs1362', downRating: 5 }],
  ['a plug fuse under a small fuse', { down: 'bs1362', downRating: 13, up: 'gG', upRating: 10 }],
  ['a rewirable fuse', { down: 'bs3036', downRating: 30 }],
  ['steel', { metal: 'steel', amps: 2000 }],
])('draws %s without a broken number', async (_name, change) => {
  const { broken, frame } = await shown({ asks: { ...asks, iec: { ...pair, ...change } } });
  expect(verdict(frame, 'survives')).toMatch(/true|false|null/);
  expect(broken()).toBeUndefined();
});

it('stands in 288 px', async () => {
  const { frame } = await shown({ earth: { iec: 1, na: 16 } }, 288);
  expect(frame.scrollWidth).toBeLessThanOrEqual(288 + 5);
});
