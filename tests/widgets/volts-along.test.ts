import { beforeEach, expect, it } from 'vitest';
import { type AlongRun, alongRun, castScenario, type Scenario, scenarioToLink, stepOfLoad } from '#engine';
import { practice } from '#site/widgets/practice.svelte.ts';
import VoltsAlong from '#site/widgets/VoltsAlong.svelte';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const scenarios: Record<'iec' | 'na', Scenario> = {
  iec: { ...castScenario('C150', 12, 20), lead: { length_m: 60 } },
  na: { ...castScenario('A14', 12, 20), lead: { length_m: 30.48 } },
};
const all = ['length', 'size', 'current', 'load'];
const shown = (props: Record<string, unknown> = {}, width?: number) =>
  figureOnScreen(
    VoltsAlong,
    { id: 'volts', number: '1.2.2', title: 'Volts', scenarios, controls: all, ...props },
    width,
  );
function settled(run: AlongRun) {
  if (run.kind !== 'settled') throw new Error(run.kind);
  return run;
}
const atLoad = (scenario: Scenario) => settled(alongRun(scenario)).atLoad.toFixed(1);

beforeEach(asNew);

it('reads volts at the load, watts lost and the conductor, as the engine has them', async () => {
  const { readings, screen } = await shown();
  const run = settled(alongRun(scenarios.iec));
  expect(readings()[0]).toBe(`${run.atLoad.toFixed(1)}V`);
  expect(readings()[1]).toBe(`${run.heat.toFixed(0)}W`);
  await expect.element(screen.getByText(/past the 5\s% guide for other uses/).first()).toBeVisible();
});

it('draws the way out and the way back, the loop falling twice as far as one conductor', async () => {
  const { frame } = await shown();
  const fall = (line: string) => {
    const path = frame.querySelector(`[data-line="${line}"]`)?.getAttribute('d') ?? '';
    const [, y0, , y1] = path.match(/[\d.]+/g)?.map(Number) ?? [];
    return (y1 ?? 0) - (y0 ?? 0);
  };
  expect(fall('loop') / fall('out')).toBeCloseTo(2, 1);
  expect(frame.querySelectorAll('[data-guide]')).toHaveLength(2);
});

it('reads the volts along the run by the arrow keys', async () => {
  const { screen, press } = await shown();
  const line = screen.getByRole('slider', { name: /Reading line/ });
  await press(line.element(), '{Home}');
  await expect.element(line).toHaveAttribute('aria-valuetext', expect.stringMatching(/230\.0\sV between/));
  await press(line.element(), '{End}');
  await expect
    .element(line)
    .toHaveAttribute('aria-valuetext', expect.stringMatching(new RegExp(`60\\sm: ${atLoad(scenarios.iec)}\\sV`)));
  await press(line.element(), '{Escape}');
  await expect.element(line).toHaveAttribute('aria-valuetext', 'not set');
});

it('turns the load from amps to ohms and watts, alike at full volts, and each does its own', async () => {
  const { screen, readings } = await shown();
  await screen.getByRole('radio', { name: 'ohms' }).click();
  await expect.element(screen.getByRole('textbox', { name: 'Load' })).toHaveValue('19.2');
  const ohms = Number.parseFloat(readings()[0] ?? '');
  await screen.getByRole('radio', { name: 'watts' }).click();
  await expect.element(screen.getByRole('textbox', { name: 'Load' })).toHaveValue('2760');
  expect(Number.parseFloat(readings()[0] ?? '')).toBeLessThan(ohms);
});

it('changes size and length by keyboard', async () => {
  const { screen, press, push, readings } = await shown();
  const before = Number.parseFloat(readings()[0] ?? '');
  await press(screen.getByRole('radio', { name: '1.5', exact: true }).element(), '{ArrowRight}{ArrowRight}');
  const thick = Number.parseFloat(readings()[0] ?? '');
  expect(thick).toBeGreaterThan(before);
  await push('Length of the run', '{PageUp}');
  expect(Number.parseFloat(readings()[0] ?? '')).toBeLessThan(thick);
});

it('turns with the practice: 120 V, feet, and the notes of its own code', async () => {
  const { screen, readings } = await shown();
  practice.value = 'na';
  await expect.element(screen.getByText(/NEC 210\.19, informational note/)).toBeVisible();
  expect(readings()[0]).toBe(`${atLoad(scenarios.na)}V`);
  await expect.element(screen.getByText('100\u00A0ft, out and back')).toBeVisible();
  expect(screen.getByRole('button', { name: 'Back to the lesson’s case' }).elements()).toHaveLength(0);
});

it('keeps its own load in the other practice: as many amps at the other’s full volts', async () => {
  const { screen } = await shown();
  await screen.getByRole('radio', { name: 'watts' }).click();
  practice.value = 'na';
  await expect.element(screen.getByRole('textbox', { name: 'Load' })).toHaveValue('1440');
});

it('says that there is no such load, and why', async () => {
  const big = { ...scenarios.iec, supply: [stepOfLoad({ kind: 'watts', value: 20_000 }, 230)] };
  const { screen, frame, broken } = await shown({ scenarios: { ...scenarios, iec: big } });
  await expect.element(screen.getByText(/There is no such load.*Even cold, the lead passes/)).toBeVisible();
  expect(frame.querySelector('[data-line]')).toBeNull();
  expect(broken()).toBeUndefined();
});

it.each<[string, Scenario]>([
  ['no current', { ...scenarios.iec, supply: [{ kind: 'current', I_A: 0 }] }],
  ['a lead that melts', { ...scenarios.iec, lead: { length_m: 1 }, supply: [{ kind: 'current', I_A: 300 }] }],
  ['a lead that takes nearly all', { ...castScenario('SUS', 20, 20), lead: { length_m: 90 } }],
  ['volts held across it', { ...scenarios.iec, supply: [{ kind: 'voltage', U_V: 6 }] }],
  ['nothing on', { ...scenarios.iec, supply: [{ kind: 'off' }] }],
  ['no length', castScenario('C150', 12, 20)],
])('draws a link with %s without a broken number', async (_name, scenario) => {
  history.replaceState(null, '', `#volts=${scenarioToLink(scenario)}`);
  const { broken, screen } = await shown();
  await expect.element(screen.getByRole('button', { name: 'Back to the lesson’s case' })).toBeVisible();
  expect(broken()).toBeUndefined();
});

it('stands in 288 px', async () => {
  const { frame } = await shown({}, 288);
  expect(frame.scrollWidth).toBeLessThanOrEqual(288 + 5);
});
