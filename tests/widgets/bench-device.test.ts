import { beforeEach, expect, it } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import {
  benchStart,
  castScenario,
  deviceOf,
  harmText,
  type Limit,
  mend,
  predictWithDevice,
  type Scenario,
  scenarioFromLink,
} from '#engine';
import Bench from '#site/widgets/bench/Bench.svelte';
import { asNew } from './figure-on-screen.ts';
import '#site/styles/base.css';

const suspect: Scenario = { ...castScenario('SUS', 10, 20), device: { family: 'bs1362', rating_A: 13 } };
const american: Scenario = { ...castScenario('A18', 10, 20), device: { family: 'ul489', rating_A: 20 } };
const verdict = () => page.getByRole('region', { name: 'Verdict' });

/** The engine's verdict on a case of the bench. */
function judged(scenario: Scenario) {
  const { thermal, run } = predictWithDevice(scenario);
  const limit = thermal.limits.find(({ id }) => id === 'rating') as Limit;
  const device = deviceOf(scenario.device as NonNullable<Scenario['device']>);
  return mend(thermal, device, limit, { prospective: 1000, Ib: Math.max(...run.curves.I), make: 'listed set' });
}

beforeEach(asNew);

it.each([
  ['a suspect lead behind a plug fuse', suspect],
  ['an 18 AWG cord behind a breaker', american],
])('judges %s by rule and by temperature, with ways to mend it', async (_name, scenario) => {
  await render(Bench, { id: 'bench', scenarios: { iec: scenario, na: scenario } });
  await expect.element(verdict()).toBeVisible();
  const { now, ways } = judged(scenario);
  const text = () => verdict().element().textContent?.replace(/\s+/g, ' ') ?? '';
  expect(text()).toContain(harmText(now.harm, scenario.practice).replace(/\s+/g, ' '));
  expect(text()).toContain(now.rule.rule.name);
  expect(ways.length).toBeGreaterThanOrEqual(2);
  for (const { words } of ways) await expect.element(verdict().getByRole('button', { name: words })).toBeVisible();
  expect(document.body.innerHTML.match(/.{40}(NaN|Infinity|undefined)/)?.[0]).toBeUndefined();
});

it('a way to mend it, pressed, puts that change on the bench', async () => {
  await render(Bench, { id: 'bench', scenarios: { iec: suspect, na: suspect } });
  await expect.element(verdict()).toBeVisible();
  const way = judged(suspect).ways.find(({ kind }) => kind === 'size');
  await verdict()
    .getByRole('button', { name: way?.words ?? '' })
    .click();
  await expect.poll(() => location.hash).toMatch(/^#bench=/);
  const kept = scenarioFromLink(location.hash.slice('#bench='.length)).scenario;
  expect(kept?.cable).toEqual(way?.scenario.cable);
  expect(kept?.device).toEqual(suspect.device);
  await expect.poll(() => verdict().element().textContent).toContain('Nothing needs to be mended');
});

it('a device is put on and taken off by the form', async () => {
  await render(Bench, { id: 'bench', scenarios: benchStart });
  expect(verdict().query()).toBeNull();
  await page.getByLabelText('Protected by').selectOptions('one');
  await expect.element(verdict()).toBeVisible();
  await page.getByLabelText('Its rating').selectOptions('3');
  await expect.element(page.getByText(/3\s*A plug fuse must have opened/).first()).toBeVisible();
  await page.getByLabelText('Protected by').selectOptions('none');
  await expect.poll(() => verdict().query()).toBeNull();
});
