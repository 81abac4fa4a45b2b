import { beforeEach, expect, it } from 'vitest';
import {
  castScenario,
  celsius,
  copperShareOf,
  metalsCompared,
  type Scenario,
  scenarioFromLink,
  scenarioToLink,
} from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import MetalQuartet from '#site/widgets/MetalQuartet.svelte';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const scenarios: Record<'iec' | 'na', Scenario> = {
  iec: { ...castScenario('C150', 10, 20), lead: { length_m: 10 } },
  na: { ...castScenario('A14', 10, 20), lead: { length_m: 10 } },
};
const shown = async (props: Record<string, unknown> = {}, width?: number) => {
  const all = { id: 'metals', number: '1.3.1', title: 'Metals', scenarios, ...props };
  const on = await figureOnScreen(MetalQuartet, all, width);
  const column = (n: number) =>
    [...on.frame.querySelectorAll('.body table tbody tr')].map((row) =>
      row.children[n]?.textContent?.replace(/\s+/g, ' ').trim(),
    );
  return { ...on, column };
};
const degrees = (scenario: Scenario) =>
  metalsCompared(scenario).map(({ settled }) => celsius(settled?.T ?? 0).toFixed(0));

beforeEach(asNew);

it('shows the four metals as the engine has them, in picture, table and words', async () => {
  const { column, frame, screen } = await shown();
  expect(column(0)).toEqual(['copper', 'CCA 10 %', 'aluminium', 'steel']);
  expect(column(4)).toEqual(degrees(scenarios.iec));
  const widths = [...frame.querySelectorAll('[data-metal]')].map((bar) => Number(bar.getAttribute('width')));
  expect(widths).toEqual([...widths].sort((a, b) => a - b));
  await expect.element(screen.getByText(/from hottest to coolest: steel at/).first()).toBeVisible();
  await expect.element(screen.getByText(/every cord carries the same current/)).toBeVisible();
});

it('turns the order round when volts are held, and shows amps cold and settled', async () => {
  const { screen, column } = await shown();
  await screen.getByRole('radio', { name: 'volts' }).click();
  await expect.element(screen.getByText(/from hottest to coolest: copper at/).first()).toBeVisible();
  const arrows = column(2).map((text) => (text ?? '').split(' → ').map(Number));
  for (const [cold, settled] of arrows) expect(settled).toBeLessThanOrEqual(cold ?? 0);
  expect(arrows[0]?.[1]).toBeCloseTo(10, 0);
  await expect.element(screen.getByRole('textbox', { name: 'Length of the run' })).toBeVisible();
  await screen.getByRole('radio', { name: 'amps' }).click();
  await expect.element(screen.getByRole('textbox', { name: 'Current' })).toHaveValue('10.0');
});

it('sets the copper share by keyboard, and keeps it in the link through another size', async () => {
  const { screen, push, press, column } = await shown();
  const before = column(1)[1];
  await push('Copper in the CCA, by volume', '{PageUp}');
  expect(column(0)[1]).toBe('CCA 15 %');
  expect(Number(column(1)[1])).toBeLessThan(Number(before));
  await press(screen.getByRole('radio', { name: '1.5', exact: true }).element(), '{ArrowRight}');
  expect(column(0)[1]).toBe('CCA 15 %');
  const kept = () => scenarioFromLink(readFragment(location.hash, 'metals') ?? '').scenario;
  await expect.poll(() => kept()?.cable).toMatchObject({ size_mm2: 2.5 });
  expect(copperShareOf(kept() as Scenario)).toBe(0.15);
});

it('turns with the practice, with its share and what is held', async () => {
  const { screen, push, column, frame } = await shown();
  await push('Copper in the CCA, by volume', '{ArrowRight}');
  await screen.getByRole('radio', { name: 'volts' }).click();
  practice.value = 'na';
  await expect.element(screen.getByText(/3 × 14 AWG/).first()).toBeVisible();
  expect(column(0)[1]).toBe('CCA 10.5 %');
  expect(frame.textContent).toContain('°F');
  await expect.element(screen.getByRole('radio', { name: 'volts' })).toBeChecked();
});

it('is the page’s own case again when only the practice was turned', async () => {
  const { screen } = await shown();
  practice.value = 'na';
  await expect.element(screen.getByText(/3 × 14 AWG/).first()).toBeVisible();
  expect(screen.getByRole('button', { name: 'Back to the lesson’s case' }).elements()).toHaveLength(0);
});

it('says what lies outside the model, with its bar dotted from there', async () => {
  const { frame, screen } = await shown({ scenarios: { ...scenarios, iec: castScenario('SUS', 12, 20) } });
  await expect.element(screen.getByText(/ends at 160\s°C\. What is shown for steel is outside it/)).toBeVisible();
  expect(frame.querySelectorAll('[data-outside]')).toHaveLength(1);
  expect(frame.querySelector('[data-outside="steel"]')).not.toBeNull();
});

it.each<[string, Scenario]>([
  ['no current', { ...scenarios.iec, supply: [{ kind: 'current', I_A: 0 }] }],
  ['a load that melts all four', { ...scenarios.iec, supply: [{ kind: 'current', I_A: 900 }] }],
  ['volts that melt copper', { ...scenarios.iec, supply: [{ kind: 'voltage', U_V: 100 }] }],
  ['deep cold', { ...scenarios.iec, surroundings: { kind: 'stillAir', ambient_degC: -60 } }],
  ['nothing on', { ...scenarios.iec, supply: [{ kind: 'off' }] }],
  ['a bare wire', { ...scenarios.iec, cable: { layout: 'single', conductor: { size_mm2: 1.5 } } }],
])('draws a link with %s without a broken number', async (_name, scenario) => {
  history.replaceState(null, '', `#metals=${scenarioToLink(scenario)}`);
  const { broken, screen } = await shown();
  await expect.element(screen.getByRole('button', { name: 'Back to the lesson’s case' })).toBeVisible();
  expect(broken()).toBeUndefined();
});

it('stands in 288 px, with amps and with volts held', async () => {
  const { frame, screen } = await shown({}, 288);
  expect(frame.scrollWidth).toBeLessThanOrEqual(288 + 5);
  await screen.getByRole('radio', { name: 'volts' }).click();
  expect(frame.scrollWidth).toBeLessThanOrEqual(288 + 5);
});
