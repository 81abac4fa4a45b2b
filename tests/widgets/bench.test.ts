import { beforeEach, describe, expect, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import {
  benchStart,
  celsius,
  hottestMoment,
  parseScenario,
  predict,
  type Scenario,
  scenarioFromLink,
  scenarioToLink,
} from '#engine';
import Bench from '#site/widgets/bench/Bench.svelte';
import { csvOf } from '#site/widgets/bench/csv.ts';
import { isTabled, ownLike, withRow } from '#site/widgets/bench/edit.ts';
import { practice } from '#site/widgets/practice.svelte.ts';

const scenario = benchStart.iec;
const figures = () => Array.from(document.querySelectorAll('.readings .figure'), (node) => node.textContent?.trim());

/** The conductor of a scenario at its hottest, as the bench writes it. */
const peak = (of: Scenario) => `${celsius(hottestMoment(predict(of).run.curves).conductor).toFixed(1)}°C`;

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
  history.replaceState(null, '', location.pathname + location.search);
});

describe('the bench', () => {
  it('shows what the engine says of its case at the hottest moment', async () => {
    await render(Bench, { id: 'bench', scenarios: benchStart });
    const hottest = Math.max(...predict(scenario).run.curves.conductor) - 273.15;
    expect(figures()[0]).toBe(`${hottest.toFixed(1)}°C`);
  });

  it('follows the keyboard on a slider and writes the case into the address', async () => {
    await render(Bench, { id: 'bench', scenarios: benchStart });
    const before = figures();
    await page.getByRole('slider', { name: 'Current, slider' }).element().focus();
    await userEvent.keyboard('{PageUp}');
    expect(figures()).not.toEqual(before);
    await expect.poll(() => location.hash).toMatch(/^#bench=/);
    const kept = scenarioFromLink(location.hash.slice('#bench='.length)).scenario;
    expect(kept?.supply[0]).toMatchObject({ kind: 'current', I_A: 19 });
  });

  it.each([
    ['draught', 'Speed of the draught'],
    ['lagged', 'Thickness of the lagging'],
    ['on a wall', 'Arrangement'],
    ['on a reel', 'Diameter of the drum'],
  ])('offers what surroundings of the kind "%s" need', async (kind, control) => {
    await render(Bench, { id: 'bench', scenarios: benchStart });
    const before = figures();
    await page.getByLabelText('It lies').selectOptions(kind);
    await expect.element(page.getByLabelText(control, { exact: true })).toBeVisible();
    expect(figures()).not.toEqual(before);
  });

  it('takes every kind of supply, more steps and fewer', async () => {
    await render(Bench, { id: 'bench', scenarios: benchStart });
    await page
      .getByRole('button', { name: /^Remove/ })
      .nth(1)
      .click();
    for (const kind of ['voltage held', 'mains and heater', 'constant-power load', 'off', 'current held']) {
      await page.getByLabelText('Supply', { exact: true }).selectOptions(kind);
      expect(figures().join()).not.toMatch(/NaN|undefined|–/);
    }
    await page.getByRole('button', { name: 'Add a step' }).click();
    await expect.element(page.getByText('Step 2', { exact: true })).toBeVisible();
  });

  it('puts the rated current of the cord beside the free-air figures, with the reason', async () => {
    await render(Bench, { id: 'bench', scenarios: benchStart });
    await expect.element(page.getByText(/rated current is 6.A/)).toBeVisible();
    await expect.element(page.getByText(/coiled, covered, gripped/)).toBeVisible();
  });

  it('shows Fahrenheit beside Celsius in North American practice', async () => {
    await render(Bench, { id: 'bench', scenarios: benchStart });
    practice.value = 'na';
    await expect.element(page.getByText('(68 °F)')).toBeVisible();
    expect(figures()[0]).toBe(peak(benchStart.na));
  });

  it('keeps the reader’s own lead when the practice turns', async () => {
    const own = { ...scenario, supply: [{ kind: 'current' as const, I_A: 9, duration_s: 600 }] };
    history.replaceState(null, '', `#bench=${scenarioToLink(own)}`);
    await render(Bench, { id: 'bench', scenarios: benchStart });
    await expect.poll(() => figures()[0]).toBe(peak(own));
    practice.value = 'na';
    await expect.element(page.getByText('(68 °F)')).toBeVisible();
    expect(figures()[0]).toBe(peak(own));
  });

  it('keeps up to three cases beside its own, in the link too, and lets them go', async () => {
    const { unmount } = await render(Bench, { id: 'bench', scenarios: benchStart });
    const keep = page.getByRole('button', { name: 'Keep beside, to compare' });
    await keep.click();
    (page.getByRole('slider', { name: 'Current, slider' }).element() as HTMLElement).focus();
    await userEvent.keyboard('{PageUp}');
    await keep.click();
    const cases = page.getByRole('list', { name: 'Cases on this sheet' });
    await expect.poll(() => cases.getByRole('listitem').elements().length).toBe(3);
    expect(cases.getByRole('listitem').nth(1).element().textContent).toContain(peak(scenario).replace(/\..*/, ''));
    const hash = location.hash;
    await unmount();
    history.replaceState(null, '', hash);
    await render(Bench, { id: 'bench', scenarios: benchStart });
    await expect.poll(() => cases.getByRole('listitem').elements().length).toBe(3);
    await page.getByRole('button', { name: /Let it go.*case B/ }).click();
    await page.getByRole('button', { name: /Let it go.*case C/ }).click();
    await expect.element(cases).not.toBeInTheDocument();
    expect(location.hash).not.toMatch(/bench-[bcd]=/);
  });
});

describe('the bench’s edits', () => {
  it('keep a cable a row of the table whatever designation is picked', () => {
    const cable = scenario.cable;
    if (!isTabled(cable)) throw new Error('the example is a row of the table');
    for (const table of ['SJT', 'H05V-K', 'H03VH-H', 'H07RN-F']) {
      const moved = { ...scenario, cable: withRow(cable, table) };
      expect(parseScenario(moved).faults, table).toBeUndefined();
    }
  });

  it('give the same temperatures when a row is taken over as own values', () => {
    const own = { ...scenario, cable: ownLike(scenario.cable) };
    const end = (s: Scenario) => predict(s).run.curves.conductor.at(-1) ?? 0;
    expect(end(own)).toBeCloseTo(end(scenario), 9);
  });

  it('write one CSV row a sample under a header with units', async () => {
    const prediction = predict(scenario);
    const rows = (await csvOf(prediction)).trim().split('\r\n');
    expect(rows[0]).toBe('time_s,conductor_degC,surface_degC,outside_degC,current_A,lead_V,lead_W,heat_W_per_m');
    expect(rows).toHaveLength(prediction.run.curves.t.length + 1);
    expect(rows.at(1)).toMatch(/^0\.000,20\.000,20\.000,20\.000,18\.0000,9\.36/);
  });
});
