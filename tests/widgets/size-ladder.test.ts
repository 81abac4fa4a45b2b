import { beforeEach, expect, it } from 'vitest';
import { castScenario, celsius, type Scenario, scenarioFromLink, scenarioToLink, sizesCompared } from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import SizeLadder from '#site/widgets/SizeLadder.svelte';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const scenarios: Record<'iec' | 'na', Scenario> = {
  iec: { ...castScenario('C150', 8, 20), lead: { length_m: 60 } },
  na: { ...castScenario('A14', 8, 20), lead: { length_m: 60 } },
};
const shown = (props: Record<string, unknown> = {}, width?: number) =>
  figureOnScreen(SizeLadder, { id: 'sizes', number: '1.2.1', title: 'Sizes', scenarios, ...props }, width);
const degrees = (scenario: Scenario, system: 'mm2' | 'AWG', size: number) =>
  celsius(sizesCompared(scenario, system, [size])[0]?.settled?.T ?? 0).toFixed(0);

beforeEach(asNew);

it('draws both systems to one scale: area goes with the square of the radius', async () => {
  const { frame } = await shown();
  const circle = (name: string) => frame.querySelector(`[data-size="${name}"]`);
  const r = (name: string) => Number(circle(name)?.getAttribute('r'));
  const x = (name: string) => Number(circle(name)?.getAttribute('cx'));
  expect((r('4 mm²') / r('1 mm²')) ** 2).toBeCloseTo(4, 0);
  expect((r('12 AWG') / r('18 AWG')) ** 2).toBeCloseTo(4, 0);
  const row = ['18 AWG', '1 mm²', '16 AWG', '1.5 mm²', '14 AWG', '2.5 mm²', '12 AWG', '4 mm²', '10 AWG'].map(x);
  expect(row).toEqual([...row].sort((a, b) => a - b));
});

it('shows what the engine computes for each size', async () => {
  const { frame } = await shown();
  const rows = [...frame.querySelectorAll('fieldset tbody tr')].map((row) => row.lastElementChild?.textContent);
  expect(rows).toEqual([0.75, 1, 1.5, 2.5, 4].map((size) => degrees(scenarios.iec, 'mm2', size)));
});

it('chooses a size by keyboard alone, and keeps it in the link', async () => {
  const { screen, press, readings } = await shown();
  await press(screen.getByRole('radio', { name: '1.5 mm²' }).element(), '{ArrowDown}');
  await expect.element(screen.getByRole('radio', { name: '2.5 mm²' })).toBeChecked();
  expect(readings()[0]).toBe(`${degrees(scenarios.iec, 'mm2', 2.5)}°C`);
  const kept = () => scenarioFromLink(readFragment(location.hash, 'sizes') ?? '').scenario?.cable;
  await expect.poll(kept).toMatchObject({ size_mm2: 2.5 });
});

it('says that length changes ohms and watts and leaves the temperature', async () => {
  const { push, readings, screen } = await shown();
  const [T, loop, watts] = readings();
  await push('Length of the run', '{PageDown}{PageDown}{PageDown}');
  const after = readings();
  expect(after[0]).toBe(T);
  expect(Number.parseFloat(after[1] ?? '') / Number.parseFloat(loop ?? '')).toBeCloseTo(0.5, 2);
  expect(Number.parseFloat(after[2] ?? '') / Number.parseFloat(watts ?? '')).toBeCloseTo(0.5, 2);
  await expect.element(screen.getByText(/the temperature stays/).first()).toBeVisible();
});

it('turns with the practice, also after another size was chosen: AWG, feet, ohms per 1000 ft, °F', async () => {
  const { screen, press, frame } = await shown();
  await press(screen.getByRole('radio', { name: '1.5 mm²' }).element(), '{ArrowDown}');
  practice.value = 'na';
  await expect.element(screen.getByRole('radio', { name: '12 AWG' })).toBeChecked();
  await expect.element(screen.getByText(/Ω\/1000 ft/).first()).toBeVisible();
  await expect.element(screen.getByRole('textbox', { name: 'Length of the run' })).toHaveAccessibleDescription(/ft/);
  expect(frame.textContent).toContain('°F');
  practice.value = 'iec';
  await expect.element(screen.getByRole('radio', { name: '2.5 mm²' })).toBeChecked();
});

it('names what is outside the model and off the ramp', async () => {
  const hot = { ...scenarios.iec, supply: [{ kind: 'current', I_A: 40 } as const] };
  const { screen } = await shown({ scenarios: { ...scenarios, iec: hot } });
  await expect
    .element(screen.getByText(/outside the model: 0\.75 mm², 1 mm², 1\.5 mm²\. Off the ramp: 0\.75 mm²\./))
    .toBeVisible();
});

it.each<[string, Scenario]>([
  ['no current', { ...scenarios.iec, supply: [{ kind: 'current', I_A: 0 }] }],
  ['a load that melts every size', { ...scenarios.iec, supply: [{ kind: 'current', I_A: 900 }] }],
  ['a cord of own values', { ...castScenario('SUS', 10, 20), lead: { length_m: 5 } }],
  ['volts in place of a current', { ...scenarios.iec, supply: [{ kind: 'voltage', U_V: 6 }] }],
  [
    'a size that the figure does not offer',
    { ...scenarios.iec, cable: { table: 'H07RN-F', cores: 3, size_mm2: 25, loaded: 2 } },
  ],
])('draws a link with %s without a broken number', async (_name, scenario) => {
  history.replaceState(null, '', `#sizes=${scenarioToLink(scenario)}`);
  const { broken, screen } = await shown();
  await expect.element(screen.getByRole('button', { name: 'Back to the lesson’s case' })).toBeVisible();
  expect(broken()).toBeUndefined();
});

it('stands in 288 px, no circle on another', async () => {
  const { frame } = await shown({}, 288);
  expect(frame.scrollWidth).toBeLessThanOrEqual(288 + 5);
  const circles = [...frame.querySelectorAll('[data-size$="AWG"]')].map((c) => ({
    x: Number(c.getAttribute('cx')),
    r: Number(c.getAttribute('r')),
  }));
  for (let i = 1; i < circles.length; i++) {
    const [a, b] = [circles[i - 1], circles[i]];
    if (a && b) expect(b.x - a.x).toBeGreaterThan(a.r + b.r);
  }
});
