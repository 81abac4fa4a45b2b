import { beforeEach, expect, it } from 'vitest';
import { cast, type Scenario, scenarioToLink } from '#engine';
import LoopTrace from '#site/widgets/LoopTrace.svelte';
import { loopCase } from '#site/widgets/loop-trace/loop-case.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const lead = (key: keyof typeof cast, rest: Partial<Scenario>): Scenario => ({
  ...{ cable: cast[key], surroundings: { kind: 'stillAir', ambient_degC: 20 } },
  ...{ practice: 'iec', lead: { length_m: 30 }, supply: [{ kind: 'voltage', U_V: 230, source_ohm: 0.35 }] },
  ...{ device: { family: 'B', rating_A: 16 }, ...rest },
});
const american: Partial<Scenario> = {
  ...{ practice: 'na', lead: { length_m: 30.48 }, supply: [{ kind: 'voltage', U_V: 120, source_ohm: 0.12 }] },
  device: { family: 'ul489', rating_A: 20 },
};
const scenarios = { iec: lead('C150', {}), na: lead('A14', american) };
const suspect = { iec: lead('SUS', {}), na: lead('A16S', american) };
const fixed = { line: 0.15, earth: 0.25 };
const fixedWiring = { iec: fixed, na: fixed };
const all = ['length', 'size', 'metal', 'origin', 'temperature', 'device'];
const shown = (props: Record<string, unknown> = {}, width?: number) =>
  figureOnScreen(
    LoopTrace,
    { id: 'loop', number: '4.5.1', title: 'Round the loop', scenarios, fixedWiring, controls: all, ...props },
    width,
  );

beforeEach(asNew);

it('reads the loop, the current and the time as the engine has them, and passes', async () => {
  const { readings, frame } = await shown();
  const { loop, clearing } = loopCase(scenarios.iec, fixed);
  expect(readings()).toEqual([`${loop.Zs.toFixed(2)}Ω`, `${loop.least.toFixed(0)}A`, '0.10s']);
  expect(clearing.greatestLoop).toBeCloseTo(218.5 / 80, 2);
  expect(frame.querySelector('[data-outcome]')?.getAttribute('data-outcome')).toBe('met');
  expect(frame.textContent).toMatch(/Passes: the fault clears in time/);
});

it('draws every ohm once: the parts of the bar add up to the loop', async () => {
  const { frame } = await shown();
  const parts = [...frame.querySelectorAll('[data-part]')].map((part) => Number(part.getAttribute('width')));
  const { loop } = loopCase(scenarios.iec, fixed);
  const whole = parts.reduce((sum, part) => sum + part, 0);
  expect(parts).toHaveLength(5);
  expect((parts[2] ?? 0) / whole).toBeCloseTo((loop.parts[1]?.warm ?? 0) / loop.Zs, 2);
  expect(frame.querySelectorAll('[data-mark]')).toHaveLength(2);
});

it('fails behind the suspect lead, and says why', async () => {
  const { frame, readings } = await shown({ scenarios: suspect });
  const { loop } = loopCase(suspect.iec, fixed);
  expect(loop.least).toBeCloseTo(64, 0);
  expect(readings()[1]).toBe(`${loop.least.toPrecision(3)}A`);
  expect(frame.textContent).toMatch(/Fails: the fault does not surely clear in time/);
  expect(frame.textContent).toMatch(/The loop may be 2\.73\sΩ at most/);
});

it('changes by keyboard: longer, hotter, thicker', async () => {
  const { push, readings, screen, press } = await shown();
  const ohms = () => Number.parseFloat(readings()[0] ?? '');
  const first = ohms();
  await push('Length of the run', '{PageUp}');
  await expect.poll(ohms).toBeGreaterThan(first);
  const longer = ohms();
  await push('Conductors at', '{ArrowRight}{ArrowRight}{ArrowRight}{ArrowRight}{ArrowRight}{ArrowRight}');
  await expect.poll(ohms).toBeGreaterThan(longer);
  await press(screen.getByRole('radio', { name: '1.5', exact: true }).element(), '{ArrowRight}');
  await expect.poll(ohms).toBeLessThan(longer);
});

it('another device has another limit', async () => {
  const { screen, frame } = await shown();
  await screen.getByRole('combobox', { name: 'Device' }).selectOptions('C');
  await expect.poll(() => frame.querySelector('[data-outcome]')?.getAttribute('data-outcome')).toBe('not met');
});

it('turns to the lead that the page gives there, whatever its size and its metal', async () => {
  const pair = { iec: suspect.iec, na: suspect.na };
  const { readings, screen } = await shown({ scenarios: pair });
  practice.value = 'na';
  await expect.poll(() => readings()[0]).toBe(`${loopCase(pair.na, fixed).loop.Zs.toFixed(2)}Ω`);
  expect(screen.container.textContent).not.toContain('Back to the lesson’s case');
});

it('turns with the practice: no limit in ohms, no time, and the promise of the device alone', async () => {
  const { frame, readings } = await shown();
  practice.value = 'na';
  await expect.poll(() => frame.textContent).toMatch(/The code gives no ohms and no seconds/);
  const { loop, clearing } = loopCase(scenarios.na, fixed);
  expect(readings()).toEqual([`${loop.Zs.toPrecision(3)}Ω`, `${loop.least.toPrecision(3)}A`, `${clearing.t}s`]);
  expect(frame.querySelectorAll('[data-mark]')).toHaveLength(0);
  expect(frame.textContent).toMatch(/GFCI/);
});

it.each<[string, Partial<Scenario>]>([
  ['hardly any current', { supply: [{ kind: 'voltage', U_V: 230, source_ohm: 200 }] }],
  ['no ohms before it', { supply: [{ kind: 'voltage', U_V: 230 }], lead: { length_m: 0.5 } }],
  ['volts so low that no time is asked', { supply: [{ kind: 'voltage', U_V: 24, source_ohm: 0.1 }] }],
  ['no device', { device: undefined }],
  ['steel at its hottest', { cable: cast.SUS, start: { T_degC: 160 } }],
])('draws a link with %s without a broken number', async (_name, change) => {
  history.replaceState(null, '', `#loop=${scenarioToLink(lead('C150', change))}`);
  const { broken, screen } = await shown();
  await expect.element(screen.getByRole('button', { name: 'Back to the lesson’s case' })).toBeVisible();
  expect(broken()).toBeUndefined();
});

it('says that a link’s device is not made, and keeps the lesson’s own case', async () => {
  const link = scenarioToLink(lead('C150', { device: { family: 'B', rating_A: 17 } }));
  history.replaceState(null, '', `#loop=${link}`);
  const { broken, screen, readings } = await shown();
  await expect.element(screen.getByRole('alert')).toBeVisible();
  expect(screen.getByRole('alert').element().textContent).toMatch(/is 17 A.*is made for/);
  expect(readings()[2]).toBe('0.10s');
  expect(broken()).toBeUndefined();
});

it('stands in 288 px', async () => {
  const { frame } = await shown({}, 288);
  expect(frame.scrollWidth).toBeLessThanOrEqual(288 + 5);
});
