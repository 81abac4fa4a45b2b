import { beforeEach, describe, expect, it } from 'vitest';
import {
  bandAt,
  buildCase,
  castScenario,
  type Device,
  type DeviceFamily,
  device,
  harmSet,
  harmText,
  type Limit,
  type Scenario,
  scenarioFromLink,
  scenarioToLink,
  timeToLimit,
  toldSpans,
} from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import TimeCurrentPlane from '#site/widgets/TimeCurrentPlane.svelte';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const behind = (scenario: Scenario, family: DeviceFamily, rating_A: number): Scenario => ({
  ...scenario,
  device: { family, rating_A },
});
const scenarios = {
  iec: behind(castScenario('C150', 30, 20), 'bs1362', 13),
  na: { ...behind(castScenario('A16', 30, 20), 'ul489', 20) },
};

const shown = (props: Record<string, unknown> = {}, width = 752) =>
  figureOnScreen(
    TimeCurrentPlane,
    { id: 'plane', number: '4.3.1', title: 'Where nothing protects', scenarios, ...props },
    width,
  );
type Shown = Awaited<ReturnType<typeof shown>>;
const point = ({ screen }: Shown) => screen.getByRole('slider', { name: /Operating point/ }).element() as HTMLElement;
const says = (figure: Shown) => point(figure).getAttribute('aria-valuetext') ?? '';
const picture = ({ frame }: Shown) => frame.querySelector('svg')?.textContent ?? '';

/** The engine's own answer for a case, a device and a limit. */
function answer(scenario: Scenario, of: Device, id = 'rating') {
  const thermal = buildCase(scenario);
  const limit = thermal.limits.find((one) => one.id === id) as Limit;
  const set = harmSet(thermal, of, limit, { prospective: 1000 });
  return { thermal, limit, set, time: timeToLimit(thermal, limit, { T: thermal.Ta, flow: 0 }, 1e5) };
}
const plug = device('bs1362', 13) as Device;
const breaker = device('ul489', 20) as Device;
const amperes = (I: number) => `${I}\u00A0A`;

beforeEach(() => {
  asNew();
  delete document.documentElement.dataset.theme;
  document.body.replaceChildren();
});

it('tells the ends of each interval and the verdict as the engine has them', async () => {
  const figure = await shown();
  const { set } = answer(scenarios.iec, plug);
  const told = toldSpans(set.spans);
  expect(told.length).toBeGreaterThan(1);
  for (const { from, to } of told) {
    expect(picture(figure)).toContain(amperes(from));
    expect(picture(figure)).toContain(to === null ? 'not found' : amperes(to));
  }
  expect(figure.frame.querySelectorAll('[data-bar]')).toHaveLength(told.length);
  expect(figure.frame.querySelector('.sentence')?.textContent).toBe(harmText(set, 'iec'));
});

it('has the current it opens with in sight, however few points the device has', async () => {
  const far = behind(castScenario('A16', 84, 20), 'ul248', 15);
  const figure = await shown({ scenarios: { iec: far, na: far }, controls: ['current'] });
  expect(says(figure)).toContain(amperes(84));
  expect(Number(point(figure).getAttribute('aria-valuemax'))).toBeGreaterThan(84);
});

it('reads both times at the operating point, and says whether harm can come first', async () => {
  const figure = await shown();
  const { time, set } = answer(scenarios.iec, plug);
  const band = bandAt(plug, 30);
  expect(set.spans.some(({ from, to }) => 30 > from.I && 30 < to.I)).toBe(true);
  const t = Number(time(30).toPrecision(2));
  expect(says(figure)).toContain(`between ${band.fastest}\u00A0s and ${band.slowest}\u00A0s`);
  expect(says(figure)).toContain(t < 60 ? `${t}\u00A0s` : `${Math.floor(t / 60)}\u00A0min`);
  expect(says(figure)).toContain('Harm can come first');
  expect(figure.frame.querySelectorAll('[data-read]')).toHaveLength(3);
});

it('moves the operating point by arrow keys, Home and End, and keeps it in the link', async () => {
  const figure = await shown();
  await figure.press(point(figure), '{ArrowRight}');
  expect(point(figure).getAttribute('aria-valuenow')).toBe('30.5');
  await expect
    .poll(() => scenarioFromLink(readFragment(location.hash, 'plane') ?? '').scenario?.supply[0])
    .toMatchObject({ I_A: 30.5 });
  await figure.press(point(figure), '{PageDown}');
  expect(point(figure).getAttribute('aria-valuenow')).toBe('25.5');
  await figure.press(point(figure), '{Home}');
  expect(says(figure)).toContain('must hold');
  expect(says(figure)).toContain('never reaches');
  await figure.press(point(figure), '{End}');
  expect(point(figure).getAttribute('aria-valuenow')).toBe(point(figure).getAttribute('aria-valuemax'));
});

it('moves the operating point to where a pointer presses', async () => {
  const figure = await shown();
  const axis = figure.frame.querySelector('[data-currents]')?.getBoundingClientRect() as DOMRect;
  const [low, high] = ['min', 'max'].map((end) => Number(point(figure).getAttribute(`aria-value${end}`))) as [
    number,
    number,
  ];
  const box = point(figure).getBoundingClientRect();
  const position = { x: axis.left + axis.width / 2 - box.left, y: axis.top - 40 - box.top };
  await figure.screen.getByRole('slider', { name: /Operating point/ }).click({ position });
  await expect
    .poll(() => Math.abs(Number(point(figure).getAttribute('aria-valuenow')) / Math.sqrt(low * high) - 1))
    .toBeLessThan(0.03);
});

it('has no bar and no hatching where the device surely acts first, and says so', async () => {
  const big = behind({ ...castScenario('C150', 13, 20) }, 'bs1362', 3);
  const figure = await shown({ scenarios: { iec: big, na: scenarios.na }, limit: 'shortTime' });
  const { set } = answer(big, device('bs1362', 3) as Device, 'shortTime');
  const overload = set.spans.filter(({ from }) => from.I < 100);
  expect(overload).toEqual([]);
  const inSight = toldSpans(set.spans);
  expect(figure.frame.querySelectorAll('[data-bar]')).toHaveLength(inSight.length);
  if (inSight.length === 0) expect(picture(figure)).toContain('surely acts first');
});

it('draws an end that was not found open to the right', async () => {
  const figure = await shown();
  practice.value = 'na';
  await expect.element(figure.screen.getByText(/AWG/).first()).toBeVisible();
  const { set } = answer(scenarios.na, breaker);
  expect(toldSpans(set.spans).at(-1)?.to).toBeNull();
  expect(picture(figure)).toContain('not found');
  expect(figure.frame.querySelector('[data-bar-open]')).not.toBeNull();
  expect(figure.frame.querySelector('[data-bar-open]')?.getAttribute('d')).not.toContain('Z');
  await expect.element(figure.screen.getByText(/upper end not found/i).first()).toBeVisible();
});

it('takes another size, device, limit and place', async () => {
  const figure = await shown();
  const text = () => figure.frame.querySelector('.sentence')?.textContent ?? '';
  const expects = (scenario: Scenario, of: Device, id = 'rating') =>
    expect.poll(text).toBe(harmText(answer(scenario, of, id).set, 'iec'));
  await figure.screen.getByRole('radio', { name: '0.75', exact: true }).click();
  const thin: Scenario = { ...scenarios.iec, cable: { ...castScenario('C075', 1, 20).cable } };
  await expects(thin, plug);
  await figure.screen.getByRole('radio', { name: /short circuit/ }).click();
  await expects(thin, plug, 'shortTime');
  expect(location.hash).toContain('plane-limit=shortTime');
  await figure.screen.getByLabelText('Device', { exact: true }).selectOptions('B');
  await expects(thin, device('B', 13) as Device, 'shortTime');
  await figure.screen.getByLabelText('The cord lies').selectOptions('lagged');
  const lagged: Scenario = {
    ...thin,
    surroundings: { kind: 'lagged', ambient_degC: 20, thickness_mm: 25, conductivity_WPerMK: 0.05 },
  };
  await expects(lagged, device('B', 13) as Device, 'shortTime');
  await figure.screen.getByRole('button', { name: 'Back to the lesson’s case' }).click();
  await expects(scenarios.iec, plug);
  expect(location.hash).not.toContain('plane-limit');
});

it('draws both starts where a load was carried before', async () => {
  const warm: Scenario = { ...scenarios.iec, start: { steadyAt_A: 10 } };
  const figure = await shown({ scenarios: { iec: warm, na: scenarios.na } });
  expect(figure.frame.querySelector('[data-curve="other start"]')).not.toBeNull();
  const { thermal, limit } = answer(warm, plug);
  const set = harmSet(thermal, plug, limit, { prospective: 1000, Ib: 10 });
  expect(figure.frame.querySelector('.sentence')?.textContent).toBe(harmText(set, 'iec'));
});

it('has a table of the points with source and confidence', async () => {
  const figure = await shown();
  const table = figure.frame.querySelector('table')?.textContent ?? '';
  for (const { I } of [plug.hold, ...plug.by]) expect(table).toContain(String(I));
  expect(table).toContain('BS 1362');
  expect(table).toContain('seen');
});

it('shows harm by hatching alone: a pattern of lines in ink, at 45° and 9 px, that is not a tint', async () => {
  const { frame } = await shown();
  const pattern = frame.querySelector('pattern') as SVGPatternElement;
  expect(pattern.getAttribute('patternTransform')).toBe('rotate(45)');
  expect(pattern.getAttribute('width')).toBe('9');
  const line = getComputedStyle(pattern.firstElementChild as Element);
  expect(line.strokeWidth).toBe('2.8px');
  const band = getComputedStyle(frame.querySelector('[data-band]') as Element).fill;
  expect(line.stroke).not.toBe(band);
  for (const one of frame.querySelectorAll('[data-hatch], [data-bar]'))
    expect(one.getAttribute('fill')).toBe(`url(#${pattern.id})`);
});

it('takes its colours from the theme, by day and by lamp', async () => {
  const { frame } = await shown();
  const colours = () =>
    ['[data-curve="conductor"]', '[data-edge="slowest"]'].map(
      (one) => getComputedStyle(frame.querySelector(one) as Element).stroke,
    );
  const day = colours();
  document.documentElement.dataset.theme = 'lamp';
  expect(colours()[0]).not.toBe(day[0]);
  expect(colours()[1]).not.toBe(day[1]);
});

const at = (change: Partial<Scenario>): Scenario => ({ ...scenarios.iec, ...change });
const extremes: [string, Scenario][] = [
  ['deep cold', at({ surroundings: { kind: 'stillAir', ambient_degC: -60 } })],
  ['an ambient past the limit', at({ surroundings: { kind: 'stillAir', ambient_degC: 120 } })],
  ['a load before that is too much', at({ start: { steadyAt_A: 60 } })],
  ['a tiny fuse', at({ device: { family: 'iec60127F', rating_A: 0.05 } })],
  ['the greatest gG fuse', at({ device: { family: 'gG', rating_A: 125 } })],
  ['a curve of one point', at({ device: { rating_A: 10, slow: [[20, 100]] } })],
  ['a fuse without a zone', at({ device: { family: 'bs1362', rating_A: 7 } })],
  ['a supply that is no current', at({ supply: [{ kind: 'voltage', U_V: 6 }] })],
  ['a reel', at({ surroundings: { kind: 'coiled', ambient_degC: 20, drum_mm: 120, turns: 12, wound_m: 25 } })],
  ['no device', castScenario('C150', 10, 20)],
];

describe.each([752, 288])('at %i px', (width) => {
  it.each(extremes)('draws a link with %s without a broken number', async (_name, scenario) => {
    history.replaceState(null, '', `#plane=${scenarioToLink(scenario)}`);
    const { frame, broken } = await shown({}, width);
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(broken()).toBeUndefined();
    expect(frame.scrollWidth).toBeLessThanOrEqual(width + 5);
  });
});

it('says why a link without a device cannot be used, and shows its own case', async () => {
  history.replaceState(null, '', `#plane=${scenarioToLink(castScenario('C150', 10, 20))}`);
  const { screen } = await shown();
  await expect.element(screen.getByRole('alert')).toBeVisible();
});
