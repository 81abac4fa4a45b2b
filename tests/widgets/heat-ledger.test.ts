import { beforeEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import {
  cast,
  castScenario,
  celsius,
  heatLedger,
  inMetal,
  kelvin,
  ledgerAt,
  type Scenario,
  scenarioFromLink,
  scenarioToLink,
} from '#engine';
import { readFragment } from '#site/lib/fragment.ts';
import HeatLedger from '#site/widgets/HeatLedger.svelte';
import { practice } from '#site/widgets/practice.svelte.ts';
import '#site/styles/base.css';

const scenarios = { iec: castScenario('C150', 20, 20), na: castScenario('A14', 20, 20) };
const steel: Scenario = { ...castScenario('C075', 12, 20), cable: inMetal(cast.C075, 'steel') };

async function shown(props: Record<string, unknown> = {}, width = 752) {
  const frame = document.createElement('div');
  frame.style.width = `${width}px`;
  document.body.append(frame);
  const all = { id: 'ledger', number: '2.1.1', title: 'Heat made and lost', scenarios, ...props };
  const screen = await render(HeatLedger, { props: all }, { baseElement: frame });
  const push = async (name: string, keys: string) => {
    (screen.getByRole('slider', { name: `${name}, slider` }).element() as HTMLElement).focus();
    await userEvent.keyboard(keys);
  };
  const line = () => screen.getByRole('slider', { name: /Reading line/ });
  const readings = () => [...frame.querySelectorAll('.reading .figure')].map((one) => one.textContent?.trim() ?? '');
  const picture = () => frame.querySelector('svg')?.textContent ?? '';
  return { screen, frame, push, line, readings, picture };
}

const settles = (scenario: Scenario, fixedResistance = false): number => {
  const { steady } = heatLedger(scenario, { fixedResistance });
  if (steady.kind !== 'steady') throw new Error('no steady state');
  return celsius(steady.chain.conductor);
};

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
  delete document.documentElement.dataset.theme;
  document.body.replaceChildren();
  history.replaceState(null, '', location.pathname + location.search);
});

it('reads where it settles, the heat there and the share of the air, as the engine has them', async () => {
  const { readings, frame, picture } = await shown();
  const ledger = heatLedger(scenarios.iec);
  const line = ledgerAt(ledger, kelvin(settles(scenarios.iec)));
  expect(readings()[0]).toMatch(new RegExp(`^${settles(scenarios.iec).toFixed(0)}\\s*°C`));
  expect(readings()[1]).toMatch(new RegExp(`^${line.made.toPrecision(3)}\\s*W/m`));
  expect(readings()[2]).toMatch(new RegExp(`^${((100 * (line.shed?.convection ?? 0)) / line.lost).toFixed(0)}\\s*%`));
  expect(frame.querySelectorAll('[data-crossing]')).toHaveLength(1);
  expect(picture()).toContain(`settles at ${settles(scenarios.iec).toFixed(0)}`);
});

it('puts the crossing where both curves are, in the picture', async () => {
  const { frame } = await shown();
  const dot = frame.querySelector('[data-crossing]') as SVGCircleElement;
  const [x, y] = [Number(dot.getAttribute('cx')), Number(dot.getAttribute('cy'))];
  for (const name of ['made', 'lost']) {
    const curve = frame.querySelector(`[data-curve="${name}"]`) as SVGPathElement;
    const length = curve.getTotalLength();
    const near = Array.from({ length: 800 }, (_, i) => curve.getPointAtLength((length * i) / 799)).map((p) =>
      Math.hypot(p.x - x, p.y - y),
    );
    expect(Math.min(...near)).toBeLessThan(1);
  }
});

it('is read by arrow keys: made, lost, and where each watt goes', async () => {
  const { line, frame } = await shown();
  (line().element() as HTMLElement).focus();
  await userEvent.keyboard('{Home}{PageUp}');
  const at30 = ledgerAt(heatLedger(scenarios.iec), kelvin(30));
  await expect.element(line()).toHaveAttribute('aria-valuenow', '30');
  const says = () => line().element().getAttribute('aria-valuetext') ?? '';
  expect(says()).toContain(`${at30.made.toPrecision(3)}\u00A0W/m made`);
  expect(says()).toContain(`${(at30.shed?.radiation ?? 0).toPrecision(2)}\u00A0W/m radiated`);
  expect(says()).toContain('warms the lead');
  expect(frame.querySelector('[data-share="stored"]')).not.toBeNull();
  await userEvent.keyboard('{End}');
  expect(says()).toContain('cools');
  expect(frame.querySelector('[data-share="given"]')).not.toBeNull();
  await userEvent.keyboard('{Escape}');
  expect(says()).toBe('not set');
});

it('the two bars of where each watt goes are of one length', async () => {
  const { line, frame } = await shown();
  (line().element() as HTMLElement).focus();
  for (const keys of ['{Home}', '{PageUp}', '{End}']) {
    await userEvent.keyboard(keys);
    const rows = new Map<string, number>();
    for (const rect of frame.querySelectorAll('[data-share]')) {
      const y = rect.getAttribute('y') ?? '';
      rows.set(y, (rows.get(y) ?? 0) + Number(rect.getAttribute('width')));
    }
    const [a = 0, b = 0] = [...rows.values()];
    expect(Math.abs(a - b)).toBeLessThan(1);
  }
});

it('follows current, ambient and draught by keyboard, and keeps the case in the link', async () => {
  const { push, readings, screen } = await shown();
  const before = settles(scenarios.iec);
  await push('Draught', '{PageUp}');
  const draught: Scenario = { ...scenarios.iec, surroundings: { kind: 'draught', ambient_degC: 20, speed_mPerS: 1 } };
  expect(settles(draught)).toBeLessThan(before - 5);
  expect(readings()[0]).toMatch(new RegExp(`^${settles(draught).toFixed(0)}\\s*°C`));
  await expect
    .poll(() => scenarioFromLink(readFragment(location.hash, 'ledger') ?? '').scenario?.surroundings.kind)
    .toBe('draught');
  await push('Draught', '{PageDown}');
  await push('Ambient', '{PageUp}');
  const warmer: Scenario = { ...scenarios.iec, surroundings: { kind: 'stillAir', ambient_degC: 30 } };
  expect(readings()[0]).toMatch(new RegExp(`^${settles(warmer).toFixed(0)}\\s*°C`));
  await screen.getByRole('button', { name: 'Back to the lesson’s case' }).click();
  expect(readings()[0]).toMatch(new RegExp(`^${before.toFixed(0)}\\s*°C`));
});

it('takes another metal and back, and keeps it through another size', async () => {
  const { screen, readings } = await shown();
  const radio = (name: string) => screen.getByRole('radio', { name, exact: true });
  await radio('aluminium').click();
  const aluminium: Scenario = { ...scenarios.iec, cable: inMetal(cast.C150, 'aluminium') };
  expect(readings()[0]).toMatch(new RegExp(`^${settles(aluminium).toFixed(0)}\\s*°C`));
  await radio('2.5').click();
  const big = { ...scenarios.iec, cable: { ...cast.C150, size_mm2: 2.5 } } as Scenario;
  const both: Scenario = { ...big, cable: inMetal(big.cable, 'aluminium') };
  expect(readings()[0]).toMatch(new RegExp(`^${settles(both).toFixed(0)}\\s*°C`));
  await radio('copper').click();
  expect(readings()[0]).toMatch(new RegExp(`^${settles(big).toFixed(0)}\\s*°C`));
});

it('with fixed resistance draws heat made level, and other currents four and sixteen times lower', async () => {
  const { frame, readings, screen } = await shown({
    resistance: 'fixed',
    beside: { iec: [5, 10], na: [5, 10] },
    controls: ['current', 'resistance'],
  });
  const heights = (selector: string) =>
    [...(frame.querySelector(selector)?.getAttribute('d') ?? '').matchAll(/[ML][\d.]+ ([\d.]+)/g)].map((m) =>
      Number(m[1]),
    );
  expect(new Set(heights('[data-curve="made"]')).size).toBe(1);
  const foot = Number(
    / ([\d.]+)H/.exec(frame.querySelector('[data-axis="temperature"]')?.getAttribute('d') ?? '')?.[1],
  );
  const above = (selector: string) => foot - (heights(selector)[0] ?? Number.NaN);
  expect(above('[data-curve="made"]') / above('[data-other="10"]')).toBeCloseTo(4, 1);
  expect(above('[data-curve="made"]') / above('[data-other="5"]')).toBeCloseTo(16, 0);
  expect(readings()[0]).toMatch(new RegExp(`^${settles(scenarios.iec, true).toFixed(0)}\\s*°C`));
  await screen.getByRole('radio', { name: 'grows as it warms' }).click();
  expect(readings()[0]).toMatch(new RegExp(`^${settles(scenarios.iec).toFixed(0)}\\s*°C`));
});

it('names it in the drawing and in words where the curves do not cross', async () => {
  const both = { iec: { ...steel, supply: [{ kind: 'current', I_A: 28 }] } as Scenario, na: scenarios.na };
  const { picture, screen, frame } = await shown({ scenarios: both });
  expect(picture()).toContain('no crossing');
  expect(frame.querySelector('[data-crossing]')).toBeNull();
  expect(frame.querySelector('[data-outside="made"]')).not.toBeNull();
  await expect.element(screen.getByText(/No crossing: the lead never settles/).first()).toBeVisible();
});

it('gives no precise figure of a crossing outside the model', async () => {
  const both = { iec: steel, na: scenarios.na };
  const exact = settles(steel);
  expect(exact).toBeGreaterThan(160);
  const { frame, screen, picture } = await shown({ scenarios: both });
  expect(picture()).toContain('outside');
  await expect.element(screen.getByText(/That is outside the model/).first()).toBeVisible();
  const words = frame.querySelector('.sentence')?.textContent ?? '';
  expect(words).toContain(`about ${Number(exact.toPrecision(2)).toFixed(0)}`);
});

it('says that one law holds both where the lead is clipped', async () => {
  const clipped = { ...scenarios.iec, surroundings: { kind: 'clipped', ambient_degC: 20 } } as Scenario;
  const { frame, screen } = await shown({ scenarios: { iec: clipped, na: scenarios.na } });
  expect(frame.querySelector('[data-share="both"]')).not.toBeNull();
  await expect.element(screen.getByText(/does not tell them apart/).first()).toBeVisible();
});

it('turns with the practice: the other cord, °F beside °C', async () => {
  const { screen, readings } = await shown();
  practice.value = 'na';
  await expect.element(screen.getByText(/14 AWG/).first()).toBeVisible();
  await expect.element(screen.getByText(/°F/).first()).toBeVisible();
  expect(readings()[0]).toMatch(new RegExp(`^${settles(scenarios.na).toFixed(0)}\\s*°C`));
  practice.value = 'iec';
  await expect.element(screen.getByText(/1\.5 mm²/).first()).toBeVisible();
});

it('has the table of its own practice where the page opens in the other one', async () => {
  practice.value = 'na';
  const { frame } = await shown();
  await expect.poll(() => frame.querySelector('table')?.textContent).toContain('Conductor, °F');
});

it('has a table with the crossing among its rows', async () => {
  const { frame } = await shown();
  expect(frame.querySelector('table')?.textContent).toContain('settles');
});

const withCurrent = (I_A: number): Scenario => ({ ...scenarios.iec, supply: [{ kind: 'current', I_A }] });
const extremes: [string, Scenario][] = [
  ['no current', withCurrent(0)],
  ['a thousandth of an ampere', withCurrent(0.001)],
  ['a load that melts copper', withCurrent(900)],
  ['deep cold', { ...scenarios.iec, surroundings: { kind: 'stillAir', ambient_degC: -60 } }],
  ['great heat', { ...scenarios.iec, surroundings: { kind: 'stillAir', ambient_degC: 200 } }],
  ['a start above ambient', { ...scenarios.iec, start: { T_degC: 150 } }],
  ['a voltage held', { ...scenarios.iec, supply: [{ kind: 'voltage', U_V: 6 }] }],
  [
    'a reel',
    { ...scenarios.iec, surroundings: { kind: 'coiled', ambient_degC: 20, drum_mm: 120, turns: 12, wound_m: 20 } },
  ],
];

describe.each([752, 288])('at %i px', (width) => {
  it.each(extremes)('draws a link with %s without a broken number', async (_name, scenario) => {
    history.replaceState(null, '', `#ledger=${scenarioToLink(scenario)}`);
    const { frame } = await shown({}, width);
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(frame.innerHTML.match(/.{40}(NaN|Infinity|undefined)/)?.[0]).toBeUndefined();
    expect(frame.scrollWidth).toBeLessThanOrEqual(width + 5);
  });
});

it('paints its ribbon and curves from the theme’s own colours, by day and by lamp', async () => {
  const { frame } = await shown();
  const curve = frame.querySelector('[data-curve="made"]') as Element;
  const stop = frame.querySelector('linearGradient stop') as Element;
  const colours = () => [getComputedStyle(curve).stroke, getComputedStyle(stop).stopColor];
  const day = colours();
  document.documentElement.dataset.theme = 'lamp';
  const lamp = colours();
  expect(lamp[0]).not.toBe(day[0]);
  expect(lamp[1]).not.toBe(day[1]);
});
