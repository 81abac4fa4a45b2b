import { beforeEach, describe, expect, it, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { castScenario, celsius, momentAt, predict, type Scenario } from '#engine';
import { practice } from '#site/widgets/practice.svelte.ts';
import { lockedEvent } from '#site/widgets/prediction/names.ts';
import SketchPad from '#site/widgets/SketchPad.svelte';
import { keepPrediction, keptPrediction } from './kept-prediction.ts';
import '#site/styles/base.css';

const scenarios = { iec: castScenario('C125', 20, 25), na: castScenario('A16', 20, 25) };
const cells = { iec: [{ name: 'Cable', value: 'a metric cord' }], na: [{ name: 'Cable', value: 'a gauge cord' }] };
const axis = { end: 1800, low: 0, high: 120 };

/** The conductor of a scenario at `t` [s], as the page writes it. */
const conductorAt = (scenario: Scenario, t: number): string =>
  `${celsius(momentAt(predict(scenario).run.curves, t).conductor).toFixed(0)}\u00A0°C`;

let count = 0;
async function shown(kept?: unknown, props: Record<string, unknown> = {}, width = 720) {
  const id = `pad-${count++}`;
  if (kept !== undefined) keepPrediction(id, kept);
  const frame = document.createElement('div');
  frame.style.width = `${width}px`;
  document.body.append(frame);
  const all = { id, title: 'Draw the warm-up', scenarios, cells, axis, figure: 'figure', ...props };
  const screen = await render(SketchPad, { props: all }, { baseElement: frame });
  const press = (name: string | RegExp) => screen.getByRole('button', { name }).click();
  const lock = () => press('Lock it in');
  const points = () => [...frame.querySelectorAll<HTMLInputElement>('input[type="range"]')];
  const keptNow = () =>
    keptPrediction(id) as Record<string, { kind: string; quantity: string; knots: { t: number; value: number }[] }>;
  const said = () => screen.getByRole('status').element().textContent?.trim();
  return { id, screen, frame, press, lock, points, keptNow, said };
}

/** Draws on the pad with a pointer, through parts of its axes. */
function draw(frame: HTMLElement, through: readonly (readonly [x: number, y: number])[], pointerType = 'mouse') {
  const board = frame.querySelector('.board') as HTMLElement;
  vi.spyOn(board, 'setPointerCapture').mockImplementation(() => undefined);
  const line = board.querySelector('[data-axis="time"]')?.getBoundingClientRect() as DOMRect;
  const top = board.getBoundingClientRect().top + (board.clientWidth < 480 ? 32 : 50);
  const fire = (kind: string, [x, y]: readonly [number, number]) =>
    board.dispatchEvent(
      new PointerEvent(kind, {
        bubbles: true,
        pointerId: 1,
        pointerType,
        button: 0,
        buttons: kind === 'pointerup' ? 0 : 1,
        clientX: line.left + x * line.width,
        clientY: line.top - y * (line.top - top),
      }),
    );
  const [first, last] = [through[0], through.at(-1)];
  if (!first || !last) return;
  fire('pointerdown', first);
  for (const at of through.slice(1)) fire('pointermove', at);
  fire('pointerup', last);
}

const warmUp = Array.from({ length: 41 }, (_, i) => [i / 40, 0.2 + 0.5 * (1 - Math.exp(-i / 8))] as const);

beforeEach(() => {
  localStorage.clear();
  practice.value = 'iec';
});

describe.each([
  ['mouse', 720],
  ['touch', 328],
])('drawing by %s on a pad of %i px', (pointerType, width) => {
  it('makes five to nine points that follow the line, locks them in SI and shows the computed curve', async () => {
    const { id, frame, screen, lock, points, keptNow } = await shown(undefined, {}, width);
    const heard = vi.fn();
    document.addEventListener(lockedEvent, (event) => heard((event as CustomEvent).detail), { once: true });
    expect(frame.querySelector('[data-curve="computed"]')).toBeNull();
    draw(frame, warmUp, pointerType);
    await vi.waitFor(() => expect(points().length).toBeGreaterThanOrEqual(5));
    expect(points().length).toBeLessThanOrEqual(9);
    await lock();
    await expect.element(screen.getByText('Your sketch, locked in')).toHaveFocus();
    expect(heard).toHaveBeenCalledWith(id);
    const { kind, quantity, knots } = keptNow().iec ?? { kind: '', quantity: '', knots: [] };
    expect([kind, quantity]).toEqual(['sketch', 'temperature']);
    expect([knots[0]?.t, knots.at(-1)?.t]).toEqual([0, 1800]);
    for (const { t, value } of knots) {
      const drawn = 120 * (0.2 + 0.5 * (1 - Math.exp((-40 * t) / 1800 / 8)));
      expect(Math.abs(celsius(value) - drawn), `at ${t} s`).toBeLessThan(3);
    }
    expect(frame.querySelector('[data-curve="computed"]')).not.toBeNull();
    expect(frame.querySelector('[data-curve="yours"]')).not.toBeNull();
    expect(frame.scrollWidth).toBeLessThanOrEqual(width + 5); // the corner ticks of its sheet
  });
});

it('draws over a part, rubs out by going back, and undoes', async () => {
  const { frame, points, press } = await shown();
  draw(frame, warmUp);
  await vi.waitFor(() => expect(points().length).toBeGreaterThan(4));
  const before = points().map(({ value }) => value);
  draw(frame, [
    [0.5, 0.9],
    [0.6, 0.9],
    [0.9, 0.1],
    [0.7, 0.95],
    [1, 0.95],
  ]);
  await vi.waitFor(() => expect(points().map(({ value }) => value)).not.toEqual(before));
  expect(points()[0]?.value).toBe(before[0]);
  expect(
    Math.min(
      ...points()
        .slice(-3)
        .map(({ value }) => Number(value)),
    ),
  ).toBeGreaterThan(80);
  await press('Undo');
  expect(points().map(({ value }) => value)).toEqual(before);
  await press('Clear');
  expect(points()).toHaveLength(0);
  await press('Undo');
  expect(points()).toHaveLength(before.length);
});

it('takes points pressed one by one, at most nine, and moves one by dragging it', async () => {
  const { frame, points, screen, said } = await shown();
  for (let i = 0; i <= 8; i++) draw(frame, [[i / 8, 0.5]]);
  await vi.waitFor(() => expect(points()).toHaveLength(9));
  draw(frame, [[0.06, 0.9]]);
  await vi.waitFor(() => expect(said()).toMatch(/9 points are the most/));
  draw(frame, [
    [0.5, 0.5],
    [0.5, 0.7],
    [0.5, 0.75],
  ]);
  await expect.element(screen.getByRole('slider', { name: /Point 5/ })).toHaveAttribute('aria-valuetext', '90\u00A0°C');
});

describe('by keyboard alone', () => {
  it('places, chooses, moves, adds and removes points, and locks', async () => {
    const { frame, screen, points, lock, said, keptNow } = await shown();
    const text = () => (document.activeElement as HTMLElement).getAttribute('aria-valuetext');
    const name = () => (document.activeElement as HTMLElement).getAttribute('aria-label');
    (screen.getByRole('button', { name: 'Place points by keyboard' }).element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    await vi.waitFor(() => expect(name()).toMatch(/^Point 1 of 5, at the start$/));
    expect(text()).toBe('25\u00A0°C');
    await userEvent.keyboard('{ArrowUp}');
    expect(text()).toBe('26\u00A0°C');
    await userEvent.keyboard('{ArrowRight}');
    await vi.waitFor(() => expect(name()).toBe('Point 2 of 5, at 1\u00A0min'));
    await userEvent.keyboard('{PageUp}{PageUp}{ArrowDown}');
    expect(text()).toBe('44\u00A0°C');
    await userEvent.keyboard('{Insert}');
    await vi.waitFor(() => expect(name()).toMatch(/^Point 3 of 6/));
    expect(said()).toMatch(/^Point added at 3\smin/);
    await userEvent.keyboard('{Delete}');
    await vi.waitFor(() => expect(points()).toHaveLength(5));
    expect(said()).toMatch(/removed/);
    await userEvent.keyboard('{End}');
    await vi.waitFor(() => expect(name()).toMatch(/^Point 5 of 5, at 30/));
    await userEvent.keyboard('{PageUp}{PageUp}{PageUp}{PageUp}{PageUp}');
    await lock();
    await expect.element(screen.getByText('Your sketch, locked in')).toBeVisible();
    expect(celsius(keptNow().iec?.knots.at(-1)?.value ?? 0)).toBeCloseTo(75, 2);
    const sliders = frame.querySelectorAll('input[type="range"]');
    expect(sliders).toHaveLength(0);
  });

  it('reads both curves afterwards', async () => {
    const knots = [0, 60, 600, 1200, 1800].map((t) => ({ t, value: 323.15 }));
    const { screen } = await shown({ iec: { kind: 'sketch', quantity: 'temperature', knots } });
    const line = screen.getByRole('slider', { name: /Reading line/ });
    (line.element() as HTMLElement).focus();
    await userEvent.keyboard('{End}');
    await expect
      .element(line)
      .toHaveAttribute('aria-valuetext', `30\u00A0min: yours 50\u00A0°C, computed ${conductorAt(scenarios.iec, 1800)}`);
  });
});

it('takes a few facts in place of drawing', async () => {
  const { screen, points, press, lock, keptNow } = await shown();
  await screen.getByText('Give facts in place of drawing').click();
  const field = (name: RegExp) => screen.getByRole('textbox', { name });
  await expect.element(field(/At the start/)).toBeVisible();
  await press('Draw it from these');
  await expect.element(field(/At the start/)).toHaveFocus();
  await field(/At the start/).fill('25');
  await field(/After 1/).fill('45');
  await field(/After 30/).fill('176 F');
  await field(/Time to 63/).fill('2000 s');
  await press('Draw it from these');
  await expect.element(screen.getByText('The time must lie within the on-time.')).toBeVisible();
  await field(/Time to 63/).fill('4:00');
  await press('Draw it from these');
  await vi.waitFor(() => expect(points()).toHaveLength(5));
  await lock();
  const { knots } = keptNow().iec ?? { kind: '', quantity: '', knots: [] };
  const at = (t: number) => knots.find((knot) => knot.t === t)?.value ?? 0;
  expect(celsius(at(60))).toBeCloseTo(45, 2);
  expect(celsius(at(240))).toBeCloseTo(25 + 0.63 * 55, 2);
  expect(celsius(at(1800))).toBeCloseTo(80, 2);
});

describe('locking', () => {
  it.each<[string, readonly (readonly [number, number])[], RegExp]>([
    ['nothing', [], /Draw a line from the left edge/],
    ['a line that begins late', warmUp.slice(12), /Your line begins at 9\smin.* Draw it from the left edge/],
    ['a line that ends early', warmUp.slice(0, 30), /Your line ends at .* Draw it on to the right edge/],
  ])('refuses %s, and says so', async (_name, stroke, says) => {
    const { frame, lock, said, keptNow } = await shown();
    draw(frame, stroke);
    await lock();
    await vi.waitFor(() => expect(said()).toMatch(says));
    expect(keptNow()).toBeUndefined();
  });

  it('says what both are at the start, after a minute and at the end, and marks nothing', async () => {
    const knots = [0, 60, 600, 1200, 1800].map((t, i) => ({ t, value: 298.15 + 10 * i }));
    const { frame } = await shown({ iec: { kind: 'sketch', quantity: 'temperature', knots } });
    const sentence = frame.querySelector('.sentence')?.textContent ?? '';
    expect(sentence).toContain('At the start both are at 25\u00A0°C.');
    expect(sentence).toContain(
      `After 1\u00A0min yours is at 35\u00A0°C, the computed at ${conductorAt(scenarios.iec, 60)}`,
    );
    expect(sentence).toContain(`the computed at ${conductorAt(scenarios.iec, 1800)}`);
    expect(sentence).toMatch(/Yours makes 63\s% of its change by \d+:\d\d, the computed by \d+:\d\d\.$/);
    expect(sentence).not.toMatch(/right|wrong|mark/i);
  });

  it('keeps one sketch for each practice, and can be done again', async () => {
    const knots = [0, 60, 600, 1200, 1800].map((t) => ({ t, value: 323.15 }));
    const { screen, press, keptNow } = await shown({ iec: { kind: 'sketch', quantity: 'temperature', knots } });
    await expect.element(screen.getByText('Your sketch, locked in')).toBeVisible();
    practice.value = 'na';
    await expect.element(screen.getByText('a gauge cord')).toBeVisible();
    await expect.element(screen.getByRole('button', { name: 'Lock it in' })).toBeVisible();
    practice.value = 'iec';
    await press('Sketch again');
    await expect.element(screen.getByRole('button', { name: 'Lock it in' })).toBeVisible();
    expect(keptNow()).toBeUndefined();
  });

  it.each<[string, unknown]>([
    ['of another kind', { iec: { kind: 'facts', facts: { start: 1, minute: 2, end: 3, share: 4 } } }],
    [
      'out of order',
      {
        iec: {
          kind: 'sketch',
          quantity: 'temperature',
          knots: [
            { t: 9, value: 1 },
            { t: 3, value: 2 },
          ],
        },
      },
    ],
    [
      'of another quantity',
      {
        iec: {
          kind: 'sketch',
          quantity: 'current',
          knots: [
            { t: 0, value: 1 },
            { t: 3, value: 2 },
          ],
        },
      },
    ],
    ['that is no sketch', [1, 2, 3]],
  ])('leaves alone what was kept %s', async (_name, kept) => {
    const { screen } = await shown(kept);
    await expect.element(screen.getByRole('button', { name: 'Lock it in' })).toBeVisible();
  });

  it('works on in a browser that keeps nothing, and says so', async () => {
    const refuse = vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new DOMException('refused', 'SecurityError');
    });
    try {
      const { frame, screen, lock } = await shown();
      draw(frame, warmUp);
      await lock();
      await expect.element(screen.getByText(/This browser keeps nothing/)).toBeVisible();
    } finally {
      refuse.mockRestore();
    }
  });
});

it('has a current in amperes where the volts are held', async () => {
  const held = (key: 'C075' | 'A18'): Scenario => ({
    ...castScenario(key, 0, 20),
    lead: { length_m: 3 },
    supply: [{ kind: 'voltage', U_V: 1 }],
  });
  const cases = { iec: held('C075'), na: held('A18') };
  const { screen, press, lock, frame, keptNow } = await shown(undefined, {
    scenarios: cases,
    quantity: 'current',
    axis: { end: 1800, low: 0, high: 12 },
  });
  await press('Place points by keyboard');
  await expect
    .element(screen.getByRole('slider', { name: /Point 1 of 5/ }))
    .toHaveAttribute('aria-valuetext', '6.0\u00A0A');
  await userEvent.keyboard('{ArrowUp}');
  await expect
    .element(screen.getByRole('slider', { name: /Point 1 of 5/ }))
    .toHaveAttribute('aria-valuetext', '6.1\u00A0A');
  await lock();
  expect(keptNow().iec?.knots[0]).toEqual({ t: 0, value: 6.1 });
  const cold = predict(cases.iec).run.curves.I[0] as number;
  expect(frame.querySelector('.sentence')?.textContent).toContain(
    `At the start yours is at 6.1\u00A0A, the computed at ${cold.toFixed(1)}\u00A0A.`,
  );
});

it('stops the page from scrolling only on the pad itself, and only until it is locked', async () => {
  await page.viewport(360, 740);
  const { frame, lock } = await shown(undefined, {}, 328);
  expect(getComputedStyle(frame.querySelector('.board') as Element).touchAction).toBe('none');
  expect(getComputedStyle(frame.querySelector('figure') as Element).touchAction).toBe('auto');
  draw(frame, warmUp, 'touch');
  await lock();
  expect(getComputedStyle(frame.querySelector('.plot') as Element).touchAction).toContain('pan-y');
  await page.viewport(1280, 800);
});
