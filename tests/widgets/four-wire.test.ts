import { beforeEach, expect, it } from 'vitest';
import { againstGreatest, handHeldSet, kelvin, metals, setByLimits, tableResistance, twoAndFour } from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import FourWire from '#site/widgets/FourWire.svelte';
import type { WireAsk } from '#site/widgets/four-wire/lead-case.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const ask: WireAsk = { amps: 1, leads: 0.12, length: 8, T: 23, instruments: 'limits' };
const asks = { iec: ask, na: { ...ask, length: 7.62 } };
const leads = { iec: { R20: 13.28e-3, size: 1.5 }, na: { R20: 13.43e-3, size: 16 } };
const limits = { volts: 0.2, amps: 0.5, length: 0.5, kelvin: 1 };
const shown = (props: Record<string, unknown> = {}, width?: number) =>
  figureOnScreen(FourWire, { id: 'wires', number: '5.1.1', title: 'Wires', leads, asks, limits, ...props }, width);
const verdict = (frame: HTMLElement, way: 'two' | 'four') =>
  frame.querySelector(`[data-${way}]`)?.getAttribute(`data-${way}`);

const { alpha20, beta20 } = metals.copper;
const known = {
  ...{ R20: 13.28e-3, metal: { alpha20: alpha20.value, beta20: beta20.value }, alpha20 },
  ...{ length: 8, inSeries: 2, T: kelvin(23) },
};
const byEngine = (amps = 1, ohms = 0.12, set = setByLimits({ U: 0.002, I: 0.005, L: 0.005, T: 1 })) =>
  twoAndFour(known, amps, ohms, set);
const milli = (R: number) => (1e3 * R).toFixed(2);

beforeEach(asNew);

it('reads what the engine does, by two leads and by four', async () => {
  const { readings, frame } = await shown();
  const { two, four } = byEngine();
  expect(readings()[0]).toBe(`${milli(two.measured.R20.value)}mΩ/m`);
  expect(readings()[1]).toBe(`${milli(four.measured.R20.value)}mΩ/m`);
  expect(frame.textContent).toMatch(/0\.2150\sV/);
  expect(frame.textContent).toMatch(/0\.3350\sV/);
});

it('decides as the engine does: not shown to fail by four leads, and by two the test leads speak', async () => {
  const { frame } = await shown();
  const greatest = (tableResistance(1.5, 5)?.R20_ohmPerKm ?? 0) * 1e-3;
  expect(verdict(frame, 'four')).toBe(againstGreatest(byEngine().four.measured.R20, greatest).verdict);
  expect(verdict(frame, 'four')).toBe('not shown to fail');
  expect(verdict(frame, 'two')).toBe('above the limit');
  expect(frame.textContent).toMatch(/cannot be told from the limit: not shown to fail/);
  expect(frame.textContent).toMatch(/That is the test leads speaking/);
});

it('moves only the reading by two leads when the test leads change, by keyboard', async () => {
  const { readings, push } = await shown();
  const before = readings()[1];
  await push('Test leads and contacts, both together', '{End}');
  await expect.poll(() => readings()[0]).toBe(`${milli(byEngine(1, 0.5).two.measured.R20.value)}mΩ/m`);
  expect(readings()[1]).toBe(before);
  await push('Test leads and contacts, both together', '{Home}');
  await expect.poll(() => readings()[0]).toBe(before);
  await expect.poll(() => readFragment(location.hash, 'wires')).toBe('iec;leads:0');
});

it('draws both bars on one scale, the true value inside that of four leads', async () => {
  const { frame } = await shown();
  const place = (of: string) =>
    (frame.querySelector(of)?.getAttribute('d') ?? '').match(/-?[\d.]+/g)?.map(Number) ?? [];
  const truth = place('[data-mark="truth"]')[0] ?? Number.NaN;
  const bar = place('[data-reading="four"] .bar');
  const [from, to] = [bar[0] ?? Number.NaN, bar[5] ?? Number.NaN];
  expect(from).toBeLessThan(truth);
  expect(to).toBeGreaterThan(truth);
  expect(place('[data-reading="two"] .bar')[0]).toBeGreaterThan(to);
});

it('has wider bars by hand-held meters', async () => {
  const { frame, screen } = await shown();
  await screen.getByRole('radio', { name: 'hand-held' }).click();
  const u = byEngine(1, 0.12, handHeldSet).four.measured.R20.u;
  const two = Number((2e3 * u).toPrecision(2));
  await expect.poll(() => frame.querySelectorAll('.reading')[1]?.textContent).toContain(String(two));
});

it('holds a gauge against sound copper, with feet and °F, where the practice is North American', async () => {
  const { frame, screen } = await shown();
  practice.value = 'na';
  await expect.poll(() => frame.textContent).toMatch(/sound copper of 16\sAWG/);
  expect(frame.textContent).toMatch(/a gauge has no greatest value/);
  expect(frame.textContent).toMatch(/Ω\/1000\sft/);
  expect(screen.getByRole('textbox', { name: /^Length of the lead/ }).element()).toHaveProperty('value', '25');
  expect(verdict(frame, 'four')).toBe('not shown to fail');
});

it.each<[string, Partial<WireAsk>]>([
  ['no ohms in the test leads', { leads: 0 }],
  ['a long lead', { length: 50 }],
  ['a short lead with a small current', { length: 1, amps: 0.1, leads: 0.5 }],
  ['a warm lead on the supply’s ammeter', { T: 40, instruments: 'panel', amps: 2 }],
])('draws %s without a broken number', async (_name, change) => {
  const { broken, frame } = await shown({ asks: { ...asks, iec: { ...ask, ...change } } });
  for (const way of ['two', 'four'] as const)
    expect(verdict(frame, way)).toMatch(/^(not shown to fail|above the limit|below the limit)$/);
  expect(broken()).toBeUndefined();
});

it('stands in 288 px', async () => {
  const { frame } = await shown({}, 288);
  expect(frame.scrollWidth).toBeLessThanOrEqual(288 + 5);
});
