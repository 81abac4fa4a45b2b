import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { castScenario, celsius, momentAt, predict, type Scenario, scenarioFromLink, scenarioToLink } from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import EmberTrace from '#site/widgets/EmberTrace.svelte';
import { practice } from '#site/widgets/practice.svelte.ts';

import { keepPrediction } from './kept-prediction.ts';
import '#site/styles/base.css';

/** On for half an hour, then off for half an hour, as the lesson has it. */
function onThenOff(key: 'C125' | 'A16'): Scenario {
  const I_A = 20;
  return {
    ...castScenario(key, I_A, 25, 3600),
    supply: [
      { kind: 'current', I_A, duration_s: 1800 },
      { kind: 'off', duration_s: 1800 },
    ],
  };
}
const scenarios = { iec: onThenOff('C125'), na: onThenOff('A16') };
const rounds = (scenario: Scenario): Scenario => ({
  ...scenario,
  supply: [
    { kind: 'current', I_A: 20, duration_s: 180 },
    { kind: 'off', duration_s: 420 },
  ],
  cycles: 6,
});

/** The conductor of a scenario at `t` [s], as the page writes it. */
function conductorAt(scenario: Scenario, t: number): string {
  return celsius(momentAt(predict(scenario).run.curves, t).conductor).toFixed(0);
}

async function shown(props: Record<string, unknown> = {}, width = 752) {
  const frame = document.createElement('div');
  frame.style.width = `${width}px`;
  document.body.append(frame);
  const all = { id: 'warm', number: '2.2.1', title: 'A lead warms up', scenarios, ...props };
  const screen = await render(EmberTrace, { props: all }, { baseElement: frame });
  const slider = (name: string) => screen.getByRole('slider', { name: `${name}, slider` });
  const push = async (name: string, keys: string) => {
    (slider(name).element() as HTMLElement).focus();
    await userEvent.keyboard(keys);
  };
  const readings = () => [...frame.querySelectorAll('.reading .figure')].map((figure) => figure.textContent?.trim());
  return { screen, frame, slider, push, readings };
}

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
  history.replaceState(null, '', location.pathname + location.search);
});

it('reads conductor and surface at the end of the on-time, as the engine has them', async () => {
  const { readings, screen } = await shown();
  const now = momentAt(predict(scenarios.iec).run.curves, 1800);
  expect(readings()[0]).toMatch(new RegExp(`^${celsius(now.conductor).toFixed(0)}\\s*°C`));
  expect(readings()[1]).toMatch(new RegExp(`^${celsius(now.surface).toFixed(0)}\\s*°C`));
  await expect.element(screen.getByText(/After 30\smin the conductor is at/)).toBeVisible();
});

it('follows the current by keyboard in picture, readings, sentence and table', async () => {
  const { screen, frame, push, readings } = await shown();
  const before = frame.querySelector('[data-curve="conductor"]')?.getAttribute('d');
  await push('Current', '{PageUp}');
  const supply = scenarios.iec.supply.map((step) => (step.kind === 'current' ? { ...step, I_A: 25 } : step));
  const now = conductorAt({ ...scenarios.iec, supply }, 1800);
  expect(readings()[0]).toMatch(new RegExp(`^${now}\\s*°C`));
  expect(frame.querySelector('[data-curve="conductor"]')?.getAttribute('d')).not.toBe(before);
  await expect.element(screen.getByText(new RegExp(`conductor is at ${now}\\s°C`))).toBeVisible();
  await expect.poll(() => frame.querySelector('table')?.textContent).toContain('25.00');
});

it('writes the case into the fragment, and opens it again from there', async () => {
  const first = await shown();
  await first.push('Current', '{PageDown}');
  await first.push('Ambient', '{PageUp}');
  const readings = first.readings();
  const kept = () => scenarioFromLink(readFragment(location.hash, 'warm') ?? '').scenario;
  await expect.poll(() => kept()?.surroundings.ambient_degC).toBe(35);
  first.screen.unmount();
  const second = await shown();
  await expect.poll(second.readings).toEqual(readings);
  await second.screen.getByRole('button', { name: 'Back to the lesson’s case' }).click();
  await expect.poll(() => readFragment(location.hash, 'warm')).toBeUndefined();
});

it('lengthens the on-time and the run with it', async () => {
  const { push, screen } = await shown();
  await push('On-time', '{PageUp}');
  await expect.element(screen.getByText(/After 40\smin the conductor/)).toBeVisible();
  await expect.element(screen.getByText('20\u00A0A for 40\u00A0min, then off')).toBeVisible();
});

it('keeps the round while its on-time changes, and reads the peak', async () => {
  const both = { iec: rounds(scenarios.iec), na: rounds(scenarios.na) };
  const { push, screen, readings } = await shown({ id: 'rounds', scenarios: both });
  await expect.element(screen.getByText('20\u00A0A for 3\u00A0min in every 10\u00A0min')).toBeVisible();
  const peak = readings()[2];
  await push('On-time in each round', '{ArrowRight}{ArrowRight}');
  await expect.element(screen.getByText('20\u00A0A for 4\u00A0min in every 10\u00A0min')).toBeVisible();
  expect(Number.parseFloat(readings()[2] ?? '')).toBeGreaterThan(Number.parseFloat(peak ?? ''));
});

it('turns to the cord of the other practice with the same load, °F beside °C', async () => {
  const { push, screen } = await shown();
  await push('Current', '{ArrowRight}');
  practice.value = 'na';
  await expect.element(screen.getByText(/16 AWG/).first()).toBeVisible();
  await expect.element(screen.getByText(/°F/).first()).toBeVisible();
  await expect.element(screen.getByRole('textbox', { name: 'Current' })).toHaveValue('20.5');
});

it('turns with a choice of practice made elsewhere on the page, and back', async () => {
  const { screen } = await shown();
  practice.value = 'na';
  await expect.element(screen.getByText(/16 AWG/).first()).toBeVisible();
  practice.value = 'iec';
  await expect.element(screen.getByText(/1\.25 mm²/).first()).toBeVisible();
});

it('sets a locked prediction beside the computed facts and marks it in the picture, as long as the case is the lesson’s', async () => {
  const facts = { start: 25, minute: 60, end: 90, share: 120 };
  keepPrediction('shown', { iec: { kind: 'facts', facts } });
  const { screen, frame, push } = await shown({ prediction: 'shown' });
  const table = screen.getByRole('table', { name: 'Your prediction beside the computed curve' });
  await expect.element(table).toBeVisible();
  const rows = [...table.element().querySelectorAll('tbody tr')].map((row) =>
    [...row.children].map((c) => c.textContent),
  );
  expect(rows[0]?.at(-1)).toBe('the same');
  expect(rows[2]?.[1]).toBe('90\u00A0°C');
  expect(rows[2]?.[2]).toBe(`${conductorAt(scenarios.iec, 1800)}\u00A0°C`);
  expect(frame.querySelectorAll('svg .mark')).toHaveLength(4);
  await push('Current', '{ArrowRight}');
  expect(frame.querySelectorAll('svg .mark')).toHaveLength(0);
  await expect.element(screen.getByText(/Go back to it to see them/)).toBeVisible();
});

it('keeps its marks to itself until a prediction is locked in', async () => {
  const { frame } = await shown({ prediction: 'nobody' });
  expect(frame.querySelectorAll('svg .mark')).toHaveLength(0);
});

it('says in words when a link cannot be read, and shows the lesson’s own case', async () => {
  history.replaceState(null, '', '#warm=nonsense');
  const { screen, readings } = await shown();
  await expect.element(screen.getByRole('alert')).toMatchTextContent(/could not be used/);
  expect(readings()[0]).toMatch(new RegExp(`^${conductorAt(scenarios.iec, 1800)}\\s*°C`));
});

it.each<[string, (scenario: Scenario) => Scenario]>([
  [
    'no current',
    (scenario) => ({
      ...scenario,
      supply: [
        { kind: 'current', I_A: 0, duration_s: 60 },
        { kind: 'off', duration_s: 60 },
      ],
    }),
  ],
  [
    'a load that melts copper',
    (scenario) => ({
      ...scenario,
      supply: [
        { kind: 'current', I_A: 900, duration_s: 600 },
        { kind: 'off', duration_s: 60 },
      ],
    }),
  ],
  ['deep cold', (scenario) => ({ ...scenario, surroundings: { kind: 'stillAir', ambient_degC: -60 } })],
  ['a supply that is no current', (scenario) => ({ ...scenario, supply: [{ kind: 'voltage', U_V: 6 }] })],
])('draws a link with %s without a broken number', async (_name, edit) => {
  history.replaceState(null, '', `#warm=${scenarioToLink(edit(scenarios.iec))}`);
  const { frame } = await shown();
  expect(frame.innerHTML.match(/.{40}(NaN|Infinity|undefined)/)?.[0]).toBeUndefined();
});

it('stands in 328 px: only its corner tick reaches into the gutter', async () => {
  const { frame } = await shown({}, 328);
  expect(frame.scrollWidth).toBeLessThanOrEqual(328 + 5);
});

it('draws up to four cases, each named', async () => {
  const beside = (['C075', 'C100', 'C150'] as const).map((key) => ({ name: key, scenario: castScenario(key, 20, 25) }));
  const { frame } = await shown({ beside, name: 'C125' });
  const words = frame.querySelector('svg')?.textContent ?? '';
  for (const name of ['C075', 'C100', 'C150', 'C125']) expect(words).toContain(`${name}, conductor`);
});
