import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import {
  castScenario,
  celsius,
  type PlaceKind,
  placeKinds,
  type Scenario,
  type SurroundingsSpec,
  scenarioFromLink,
  scenarioToLink,
  surroundingsCompared,
  timeToRating,
  usualSurroundings,
} from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import WrapAndWind from '#site/widgets/WrapAndWind.svelte';
import '#site/styles/base.css';

/** Both practices' leads of 25 m at a current, in all surroundings. */
function casesAt(I_A: number) {
  const one = (key: 'C125' | 'A16') => ({
    scenario: { ...castScenario(key, I_A, 20), lead: { length_m: 25 } } as Scenario,
    surroundings: placeKinds.map((kind) => usualSurroundings(kind, 20, 25)),
  });
  return { iec: one('C125'), na: one('A16') };
}

async function shown(props: Record<string, unknown> = {}, width = 752) {
  const frame = document.createElement('div');
  frame.style.width = `${width}px`;
  document.body.append(frame);
  const all = { id: 'wind', number: '2.4.1', title: 'One lead, six places', cases: casesAt(13), ...props };
  const screen = await render(WrapAndWind, { props: all }, { baseElement: frame });
  const push = async (name: string, keys: string) => {
    (screen.getByRole('slider', { name: `${name}, slider` }).element() as HTMLElement).focus();
    await userEvent.keyboard(keys);
  };
  const radio = (name: RegExp) => screen.getByRole('radio', { name });
  const readings = () => [...frame.querySelectorAll('.reading .figure')].map((one) => one.textContent?.trim() ?? '');
  const row = (kind: PlaceKind) => frame.querySelector(`[data-row="${kind}"]`)?.textContent ?? '';
  const kept = () => scenarioFromLink(readFragment(location.hash, 'wind') ?? '').scenario?.surroundings;
  return { screen, frame, push, radio, readings, row, kept };
}

const compared = (scenario: Scenario, spec: SurroundingsSpec) => {
  const [one] = surroundingsCompared(scenario, [spec]);
  if (!one) throw new Error('nothing to compare');
  return one;
};
const settles = (scenario: Scenario, spec: SurroundingsSpec): string =>
  celsius(compared(scenario, spec).settled?.conductor ?? Number.NaN).toFixed(0);

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
  delete document.documentElement.dataset.theme;
  document.body.replaceChildren();
  history.replaceState(null, '', location.pathname + location.search);
});

it('shows each place with its drawing and where the engine settles it', async () => {
  const { frame, row } = await shown();
  const { scenario, surroundings } = casesAt(13).iec;
  expect(frame.querySelectorAll('[data-place]')).toHaveLength(6);
  for (const [i, kind] of placeKinds.entries()) {
    if (kind === 'coiled') continue;
    expect(row(kind)).toContain(`${settles(scenario, surroundings[i] as SurroundingsSpec)}\u00A0°C`);
  }
});

it('gives a reel that never settles no figure, but the time to its rating, in the row and in the sentence', async () => {
  const { row, frame, screen } = await shown();
  const reel = compared(casesAt(13).iec.scenario, usualSurroundings('coiled', 20, 25));
  const minutes = Math.round((timeToRating(reel) as number) / 60);
  expect(row('coiled')).toContain('no credible steady state');
  expect(row('coiled')).toContain(`about ${minutes}\u00A0min`);
  expect(row('coiled')).not.toMatch(/settles|1\d\d\u00A0°C/);
  expect(frame.querySelector('[data-bar="coiled"]')).toBeNull();
  expect(frame.querySelector('[data-outside="coiled"]')).not.toBeNull();
  await expect.element(screen.getByText(/The reel is an estimate/).first()).toBeVisible();
});

it('draws the range of a reel that settles, and says about', async () => {
  const { row, frame } = await shown({ cases: casesAt(4) });
  expect(row('coiled')).toMatch(/about \d+\u00A0°C, \d+ to \d+/);
  expect(frame.querySelector('[data-estimate="coiled"]')).not.toBeNull();
  expect(frame.querySelectorAll('[data-estimate]')).toHaveLength(1);
});

it('is picked from by arrow keys, and states the picked one in title block, readings and link', async () => {
  const { radio, frame, readings, kept, screen } = await shown();
  (radio(/free in still air/).element() as HTMLElement).focus();
  await userEvent.keyboard('{ArrowDown}');
  await expect.element(radio(/in a draught/)).toBeChecked();
  await expect.element(screen.getByText('draught of 1 m/s, 20 °C')).toBeVisible();
  const { scenario } = casesAt(13).iec;
  expect(readings()[0]).toMatch(new RegExp(`^${settles(scenario, usualSurroundings('draught', 20, 25))}\\s*°C`));
  await expect.poll(() => kept()?.kind).toBe('draught');
  await radio(/touching/).click({ force: true });
  await expect.element(radio(/touching/)).toBeChecked();
  await expect.poll(kept).toMatchObject({ kind: 'clipped', arrangement: 'threeTouching' });
  expect(frame.querySelectorAll('.chosen')).toHaveLength(1);
});

it('puts the time to the rating back once a changed case has come to rest', async () => {
  const { push, row } = await shown();
  await push('Current', '{PageUp}');
  await expect.poll(() => row('coiled')).toMatch(/past 70\u00A0°C after about/);
  await push('Current', '{PageDown}');
  await expect.poll(() => row('coiled')).toMatch(/past 70\u00A0°C after about/);
});

it('puts the time to the rating back after another practice', async () => {
  const { row } = await shown();
  practice.value = 'na';
  await expect.poll(() => row('coiled')).toMatch(/past 70\u00A0°C \(158\u00A0°F\) after about/);
});

it('has the times of its own practice where the page opens in the other one', async () => {
  practice.value = 'na';
  const { row, readings } = await shown({ cases: casesAt(5) });
  await expect.poll(() => row('coiled')).toMatch(/past 70\u00A0°C \(158\u00A0°F\) after about/);
  expect(readings()[1]).not.toBe('–');
});

it('changes the lagging, which picks it, and keeps it while another is picked', async () => {
  const { push, radio, row, kept, screen } = await shown();
  const { scenario } = casesAt(13).iec;
  await push('Lagging', '{PageUp}');
  const thicker: SurroundingsSpec = { kind: 'lagged', ambient_degC: 20, thickness_mm: 35, conductivity_WPerMK: 0.05 };
  await expect.element(radio(/lagged/)).toBeChecked();
  const now = compared(scenario, thicker).settled?.conductor as number;
  expect(row('lagged')).toContain(`${celsius(now).toFixed(0)}\u00A0°C`);
  await expect.poll(kept).toMatchObject({ thickness_mm: 35 });
  await radio(/clipped/).click({ force: true });
  expect(row('lagged')).toContain('35\u00A0mm');
  await screen.getByRole('button', { name: 'Back to the lesson’s case' }).click();
  await expect.poll(() => row('lagged')).toContain('25\u00A0mm');
});

it('unwinds the reel: fewer metres, fewer layers, cooler', async () => {
  const { push, row, kept } = await shown({ cases: casesAt(5) });
  const hot = Number(/about (\d+)/.exec(row('coiled'))?.[1]);
  await push('Left on the reel', '{PageDown}');
  await expect.poll(kept).toMatchObject({ kind: 'coiled', wound_m: 15 });
  expect(row('coiled')).toMatch(/15\u00A0m in \d\.\d layers/);
  expect(Number(/about (\d+)/.exec(row('coiled'))?.[1])).toBeLessThan(hot - 5);
});

it('moves all places with the ambient', async () => {
  const { push, row } = await shown();
  await push('Ambient', '{PageUp}');
  const { scenario } = casesAt(13).iec;
  for (const kind of ['stillAir', 'clipped', 'touching', 'draught'] as const)
    expect(row(kind)).toContain(`${settles(scenario, usualSurroundings(kind, 30, 25))}\u00A0°C`);
});

it('turns with the practice: the other lead, feet and °F', async () => {
  const { screen, row } = await shown();
  practice.value = 'na';
  await expect.element(screen.getByText(/16 AWG/).first()).toBeVisible();
  expect(row('stillAir')).toContain('°F');
  expect(row('coiled')).toContain('82\u00A0ft');
});

it('opens a link’s surroundings that the page does not show beside the page’s own', async () => {
  const { scenario } = casesAt(5).iec;
  const link: Scenario = { ...scenario, surroundings: { kind: 'draught', ambient_degC: 10, speed_mPerS: 3 } };
  history.replaceState(null, '', `#wind=${scenarioToLink(link)}`);
  const two = casesAt(5);
  const kinds: PlaceKind[] = ['stillAir', 'lagged'];
  const few = (of: typeof two.iec) => ({ ...of, surroundings: kinds.map((kind) => usualSurroundings(kind, 20, 25)) });
  const { frame } = await shown({ cases: { iec: few(two.iec), na: few(two.na) } });
  await expect.poll(() => frame.querySelectorAll('[data-row]').length).toBe(3);
});

const edits: [string, (scenario: Scenario) => Scenario][] = [
  ['no current', (scenario) => ({ ...scenario, supply: [{ kind: 'current', I_A: 0 }] })],
  ['a load that melts copper', (scenario) => ({ ...scenario, supply: [{ kind: 'current', I_A: 400 }] })],
  ['deep cold', (scenario) => ({ ...scenario, surroundings: { kind: 'stillAir', ambient_degC: -60 } })],
  [
    'an ambient past the rating',
    (scenario) => ({ ...scenario, surroundings: { kind: 'stillAir', ambient_degC: 120 } }),
  ],
  ['an ambient past the model', (scenario) => ({ ...scenario, surroundings: { kind: 'stillAir', ambient_degC: 200 } })],
  ['volts held', (scenario) => ({ ...scenario, supply: [{ kind: 'voltage', U_V: 6 }] })],
];

describe.each([752, 288])('at %i px', (width) => {
  it.each(edits)('draws a link with %s without a broken number', async (_name, edit) => {
    history.replaceState(null, '', `#wind=${scenarioToLink(edit(casesAt(13).iec.scenario))}`);
    const { frame } = await shown({}, width);
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(frame.innerHTML.match(/.{40}(NaN|Infinity|undefined)/)?.[0]).toBeUndefined();
    expect(frame.scrollWidth).toBeLessThanOrEqual(width + 5);
  });
});

it('fills its bars from the ramp of the theme, by day and by lamp', async () => {
  const { frame } = await shown();
  const bar = frame.querySelector('[data-bar="lagged"]') as Element;
  const day = getComputedStyle(bar).fill;
  document.documentElement.dataset.theme = 'lamp';
  expect(getComputedStyle(bar).fill).not.toBe(day);
});
