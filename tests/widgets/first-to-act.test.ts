import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  buildCase,
  castScenario,
  celsius,
  type Device,
  device,
  type Limit,
  raceOf,
  type Scenario,
  scenarioFromLink,
  scenarioToLink,
} from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import FirstToAct from '#site/widgets/FirstToAct.svelte';
import type { Clock } from '#site/widgets/live/clock.ts';
import { aboutTime } from '#site/widgets/plane/words.ts';
import { practice } from '#site/widgets/practice.svelte.ts';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const lead = (I: number): Scenario => ({
  ...castScenario('C150', I, 25),
  device: { family: 'bs1362', rating_A: 13 },
});
const american = (I: number): Scenario => ({
  ...castScenario('A14', I, 25),
  device: { family: 'ul489', rating_A: 20 },
});
const at = (I: number) => ({ iec: lead(I), na: american(30) });

/** A clock that the test moves on. */
function handClock(): Clock & { pass: (seconds: number) => void; ticking: () => boolean } {
  let tick: ((seconds: number) => void) | undefined;
  return {
    start(next) {
      tick = next;
      return () => {
        tick = undefined;
      };
    },
    pass: (seconds) => tick?.(seconds),
    ticking: () => tick !== undefined,
  };
}

const shown = (props: Record<string, unknown> = {}, width = 752) =>
  figureOnScreen(
    FirstToAct,
    { id: 'race', number: '4.3.2', title: 'From switch-on', scenarios: at(30), clock: handClock(), ...props },
    width,
  );
type Shown = Awaited<ReturnType<typeof shown>>;
const line = ({ screen }: Shown) => screen.getByRole('slider', { name: /Reading line/ }).element() as HTMLElement;
const sentence = ({ frame }: Shown) => frame.querySelector('.sentence')?.textContent ?? '';
const watch = ({ readings }: Shown) => readings()[0];
const now = (figure: Shown) => Number(line(figure).getAttribute('aria-valuenow'));
const button = ({ screen }: Shown, name: string) => screen.getByRole('button', { name, exact: true });

/** The engine's own answer. */
function answer(scenario: Scenario, of: Device, id = 'rating') {
  const thermal = buildCase(scenario);
  const first = scenario.supply[0] as { I_A: number };
  return raceOf(thermal, of, thermal.limits.find((limit) => limit.id === id) as Limit, first.I_A);
}
const plug = device('bs1362', 13) as Device;

beforeEach(() => {
  asNew();
  delete document.documentElement.dataset.theme;
  document.body.replaceChildren();
});

afterEach(() => {
  vi.restoreAllMocks();
});

describe('at the end it says who was first, and when', () => {
  it('below the gap: nobody', async () => {
    const settles = Math.round(celsius(answer(lead(17.4), plug).settles as number));
    expect(sentence(await shown({ scenarios: at(17.4) }))).toBe(
      `Nobody arrives. The 13\u00A0A plug fuse must hold for ever, and the conductor settles at ${settles}\u00A0°C, below its 70\u00A0°C rating.`,
    );
  });

  it('in the gap: it may be either, with the time between', async () => {
    const { conductor, band } = answer(lead(30), plug);
    expect(sentence(await shown())).toBe(
      `It may be either. The conductor passes its 70\u00A0°C rating after ${aboutTime(conductor)}. The 13\u00A0A plug fuse may open after ${band.fastest}\u00A0s, and must by ${band.slowest}\u00A0s. So the conductor can stay past it for ${aboutTime(400 - conductor)}.`,
    );
  });

  it('beyond it: the device, surely', async () => {
    const { conductor } = answer(lead(52), plug);
    expect(sentence(await shown({ scenarios: at(52) }))).toBe(
      `The 13\u00A0A plug fuse is first: it has surely opened by 20\u00A0s. The conductor would need ${aboutTime(conductor)} to its 70\u00A0°C rating.`,
    );
  });

  it('on the clad lead: the conductor, since the fuse must hold', async () => {
    const clad: Scenario = { ...castScenario('SUS', 17.4, 25), device: { family: 'bs1362', rating_A: 13 } };
    expect(sentence(await shown({ scenarios: { iec: clad, na: clad } }))).toMatch(
      /^The conductor is first: it passes its 70.°C rating after 2.min 20.s\. The 13.A plug fuse must hold for ever\.$/,
    );
  });

  it('names what rests on an assumption, and a limit that is borrowed', async () => {
    const figure = await shown({ scenarios: at(45), limit: 'shortTime' });
    expect(answer(lead(45), plug, 'shortTime')).toMatchObject({ first: 'either', assumed: 'device' });
    expect(sentence(figure)).toContain('If the curve is straight between its points, the device is surely first.');
    expect(sentence(figure)).toContain('is a limit for 5 s at most, taken here for longer');
  });
});

it('stands at its end until it is run, runs from zero, and keeps what is to come to itself', async () => {
  const clock = handClock();
  const figure = await shown({ clock });
  const { end } = answer(lead(30), plug);
  expect(now(figure)).toBeCloseTo(end, 6);
  expect(figure.frame.querySelectorAll('[data-passed]')).toHaveLength(2);
  await button(figure, 'Run').click();
  await expect.poll(() => watch(figure)).toBe('0:00');
  expect(figure.frame.querySelectorAll('[data-passed], [data-stop]')).toHaveLength(0);
  await expect.poll(() => sentence(figure)).not.toContain('either');
  clock.pass(3); // 40 times as fast
  await expect.poll(() => watch(figure)).toBe('2:00');
  await expect.poll(() => sentence(figure)).toContain('The conductor is below its 70\u00A0°C rating');
  clock.pass(2);
  await expect.poll(() => sentence(figure)).toContain('The conductor is past its 70\u00A0°C rating');
  expect(figure.frame.querySelector('[data-passed="rating"]')).not.toBeNull();
  await button(figure, 'Pause').click();
  expect(clock.ticking()).toBe(false);
  await button(figure, 'Go on').click();
  clock.pass(100);
  await expect.poll(() => sentence(figure)).toContain('It may be either');
  expect(clock.ticking()).toBe(false);
  expect(figure.frame.querySelector('[data-stop]')).not.toBeNull();
});

it('lasts about as long whatever the race', async () => {
  for (const I of [17.4, 21, 30, 52, 95]) {
    const clock = handClock();
    document.body.replaceChildren();
    const figure = await shown({ clock, scenarios: at(I) });
    await button(figure, 'Run').click();
    await expect.poll(clock.ticking).toBe(true);
    clock.pass(9);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(clock.ticking(), `${I} A is over too soon`).toBe(true);
    clock.pass(5.01);
    await expect.poll(clock.ticking, { message: `${I} A lasts too long` }).toBe(false);
  }
});

it('is moved by arrow keys, Home and End, which stop it', async () => {
  const clock = handClock();
  const figure = await shown({ clock });
  await button(figure, 'Run').click();
  await figure.press(line(figure), '{Home}');
  expect(clock.ticking()).toBe(false);
  await figure.press(line(figure), '{ArrowRight}{ArrowRight}');
  expect(now(figure)).toBeCloseTo(20, 6);
  expect(line(figure).getAttribute('aria-valuetext')).toContain('At 0:20: The conductor is at');
  expect(line(figure).getAttribute('aria-valuetext')).toContain('may be open, 5 to 100\u00A0% used');
  await figure.press(line(figure), '{PageUp}');
  expect(now(figure)).toBeCloseTo(120, 6);
  await figure.press(line(figure), '{End}');
  expect(line(figure).getAttribute('aria-valuetext')).toContain('When the current stopped, the conductor was at');
  await button(figure, 'Back to start').click();
  expect(now(figure)).toBe(0);
});

it('jumps from moment to moment where less motion is wished', async () => {
  vi.spyOn(window, 'matchMedia').mockImplementation(
    (media) => Object.assign(new EventTarget(), { media, matches: true }) as never,
  );
  const clock = handClock();
  const figure = await shown({ clock });
  await expect.element(button(figure, 'Step from the start')).toBeVisible();
  expect(figure.screen.getByRole('button', { name: 'Run' }).query()).toBeNull();
  await button(figure, 'Step from the start').click();
  expect(now(figure)).toBe(0);
  const { conductor, band, run } = answer(lead(30), plug);
  const softens = run.events.find(({ limit, end }) => limit.id === 'softening' && end === 'low');
  for (const t of [band.fastest, conductor, softens?.t as number, band.slowest]) {
    await button(figure, 'Step').click();
    expect(now(figure)).toBeCloseTo(t, 6);
  }
  expect(clock.ticking()).toBe(false);
});

it('turns with the practice, and stands at the end of the other race', async () => {
  const clock = handClock();
  const figure = await shown({ clock });
  await button(figure, 'Run').click();
  practice.value = 'na';
  await expect
    .poll(() => sentence(figure))
    .toMatch(/^It may be either.*\(158.°F\) rating.*20.A breaker may open at once, and must by 1.h/);
  expect(clock.ticking()).toBe(false);
  expect(figure.frame.querySelector('svg')?.textContent).toContain('20\u00A0A breaker');
});

it('takes another current, device and limit, and keeps them in the link', async () => {
  const figure = await shown();
  await figure.screen.getByLabelText('Its rating').selectOptions('3');
  await expect
    .poll(() => scenarioFromLink(readFragment(location.hash, 'race') ?? '').scenario?.device)
    .toEqual({ family: 'bs1362', rating_A: 3 });
  await expect.poll(() => sentence(figure)).toContain('The 3\u00A0A plug fuse is first');
  await figure.screen.getByRole('radio', { name: /short circuit/ }).click();
  await expect.poll(() => location.hash).toContain('race-limit=shortTime');
  await button(figure, 'Back to the lesson’s case').click();
  await expect.poll(() => sentence(figure)).toContain('It may be either');
});

it('has every moment in its table, with what it rests on', async () => {
  const { frame } = await shown();
  const rows = [...frame.querySelectorAll('tbody tr')].map((row) => row.textContent ?? '');
  expect(rows).toHaveLength(6);
  expect(rows[1]).toContain('may open from here on');
  expect(rows[1]).toContain('BS 1362');
  expect(rows[2]).toContain('passes its 70\u00A0°C rating');
  expect(rows[4]).toContain('has surely opened');
});

it('paints temperature with the ramp, and the device with nothing of it', async () => {
  const { frame } = await shown();
  expect(frame.querySelector('[data-heat]')?.getAttribute('fill')).toMatch(/^url\(#/);
  const stops = [...frame.querySelectorAll('linearGradient stop')].map((stop) => getComputedStyle(stop).stopColor);
  expect(new Set(stops).size).toBeGreaterThan(10);
  const band = getComputedStyle(frame.querySelector('[data-zone="may"]') as Element).fill;
  expect(stops).not.toContain(band);
});

const but = (change: Partial<Scenario>): Scenario => ({ ...lead(30), ...change });
const extremes: [string, Scenario][] = [
  ['no current', lead(0)],
  ['a short circuit', lead(100)],
  ['an ambient past the limit', but({ surroundings: { kind: 'stillAir', ambient_degC: 120 } })],
  ['a start past the limit', but({ start: { T_degC: 150 } })],
  ['deep cold', but({ surroundings: { kind: 'stillAir', ambient_degC: -60 } })],
  ['a tiny fuse', but({ device: { family: 'iec60127F', rating_A: 0.05 } })],
  ['a curve of one point', but({ device: { rating_A: 10, slow: [[20, 100]] } })],
  ['a supply that is no current', but({ supply: [{ kind: 'voltage', U_V: 6 }] })],
  ['a reel', but({ surroundings: { kind: 'coiled', ambient_degC: 20, drum_mm: 120, turns: 12, wound_m: 25 } })],
];
describe.each([752, 288])('at %i px', (width) => {
  it.each(extremes)('draws a link with %s without a broken number', async (_name, scenario) => {
    history.replaceState(null, '', `#race=${scenarioToLink(scenario)}`);
    const { frame, broken } = await shown({}, width);
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(broken()).toBeUndefined();
    expect(frame.textContent).not.toContain('never.');
    expect(frame.scrollWidth).toBeLessThanOrEqual(width + 5);
  });
});

it('says why a link without a device cannot be used, and shows its own case', async () => {
  history.replaceState(null, '', `#race=${scenarioToLink(castScenario('C150', 10, 20))}`);
  const { screen } = await shown();
  await expect.element(screen.getByRole('alert')).toBeVisible();
});
