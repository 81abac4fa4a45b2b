import { expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { limitLines } from '#site/charts/limit-line.ts';
import TemperatureTime from '#site/charts/TemperatureTime.svelte';
import type { Curve, Limit, LimitStyle } from '#site/charts/types.ts';
import '#site/styles/base.css';

const t = [0, 60, 120, 300, 600];
const conductor: Curve = { id: 'c', name: 'conductor', t, T: [20, 50, 70, 90, 100], weight: 'conductor' };
const surface: Curve = { id: 's', name: 'surface', t, T: [20, 25, 40, 60, 70], weight: 'surface' };
const styles = Object.keys(limitLines) as LimitStyle[];
const limits: Limit[] = styles.map((style, i) => ({ id: style, name: style, T: 40 + 10 * i, style }));

async function drawn(props: Record<string, unknown> = {}, width = 700) {
  const frame = document.createElement('div');
  frame.style.width = `${width}px`;
  document.body.append(frame);
  const screen = await render(
    TemperatureTime,
    { props: { curves: [conductor, surface], limits, ...props } },
    { baseElement: frame },
  );
  const plot = screen.getByRole('slider');
  await expect.element(plot).toBeVisible();
  return { screen, frame, plot: plot.element() as HTMLElement };
}

it('is read by the arrow, page, Home and End keys, both curves in words', async () => {
  const { plot } = await drawn();
  plot.focus();
  await userEvent.keyboard('{Home}');
  expect(plot.getAttribute('aria-valuenow')).toBe('0');
  await userEvent.keyboard('{ArrowRight}');
  expect(plot.getAttribute('aria-valuenow')).toBe('5');
  await userEvent.keyboard('{PageUp}{ArrowRight}');
  expect(plot.getAttribute('aria-valuetext')).toBe(
    '1 min: conductor 50 °C; surface 25 °C'.replaceAll(/(?<=\d) /g, '\u00A0'),
  );
  await userEvent.keyboard('{End}{ArrowRight}');
  expect(plot.getAttribute('aria-valuenow')).toBe('600');
  await userEvent.keyboard('{Escape}');
  expect(plot.getAttribute('aria-valuetext')).toBe('not set');
});

it('draws each limit at the width that the tokens give it', async () => {
  const { frame } = await drawn();
  const root = getComputedStyle(document.documentElement);
  for (const style of styles) {
    const line = frame.querySelector(`[data-limit="${style}"]`);
    expect(line, style).not.toBeNull();
    const token = root.getPropertyValue(limitLines[style].width).trim();
    expect(getComputedStyle(line as Element).strokeWidth, style).toBe(token);
  }
});

it('gives no two kinds of limit the same line', async () => {
  const { frame } = await drawn();
  const looks = styles.map((style) => {
    const line = frame.querySelector(`[data-limit="${style}"]`) as Element;
    return [limitLines[style].form, getComputedStyle(line).strokeWidth].join(' ');
  });
  expect(new Set(looks).size).toBe(styles.length);
});

it('draws what is outside the model as dots, beginning where it begins', async () => {
  const { frame, screen } = await drawn({ curves: [{ ...conductor, past: 300 }, surface] });
  const dots = frame.querySelector('[data-outside="c"]') as SVGGraphicsElement;
  expect(getComputedStyle(dots).strokeDasharray).not.toBe('none');
  await expect.element(screen.getByText('past here: outside the model')).toBeInTheDocument();
  expect(frame.querySelector('[data-outside="s"]')).toBeNull();
});

it('flies pennants on a wide sheet, and numbers its events with a list on a narrow one', async () => {
  const events = [
    { id: 'b', t: 300, T: 60, text: 'surface passes the touch limit' },
    { id: 'a', t: 120, T: 70, text: 'conductor passes its rating' },
  ];
  const wide = await drawn({ events }, 700);
  expect(wide.frame.querySelectorAll('svg .pennant')).toHaveLength(2);
  expect(getComputedStyle(wide.frame.querySelector('ol') as Element).display).toBe('none');
  const narrow = await drawn({ events }, 328);
  expect(narrow.frame.querySelectorAll('svg .disc')).toHaveLength(2);
  const list = [...narrow.frame.querySelectorAll('ol li')].map((item) => item.textContent?.trim());
  expect(list).toEqual(['2:00 conductor passes its rating', '5:00 surface passes the touch limit']);
});

it('keeps numbered discs 25 px apart however close the events are', async () => {
  const events = [120, 121, 122, 123].map((at, i) => ({ id: String(i), t: at, T: 70, text: 'something' }));
  const { frame } = await drawn({ events }, 328);
  const at = [...frame.querySelectorAll('svg .disc')].map((disc) => Number(disc.getAttribute('cx')));
  for (let i = 1; i < at.length; i++) expect((at[i] ?? 0) - (at[i - 1] ?? 0)).toBeGreaterThanOrEqual(25 - 1e-6);
});

it('keeps its height whatever the width and however much happens', async () => {
  const events = Array.from({ length: 9 }, (_, i) => ({
    id: String(i),
    t: 60 * i,
    T: 50,
    text: 'something happens here',
  }));
  const none = await drawn({}, 700);
  const many = await drawn({ events }, 700);
  expect(many.plot.getBoundingClientRect().height).toBe(none.plot.getBoundingClientRect().height);
});

it.each<[string, Partial<Curve>, number | undefined]>([
  ['a straight line at ambient', { T: [20, 20, 20, 20, 20] }, undefined],
  ['a lead far off the ramp', { T: [20, 900, 1500, 1900, 2000] }, undefined],
  ['a cold start', { T: [-40, -38, -30, -20, -20] }, undefined],
  ['a single point', { t: [0], T: [20] }, 10],
  ['no point at all', { t: [], T: [] }, 10],
  ['figures that are not numbers', { T: [20, Number.NaN, Number.POSITIVE_INFINITY, 30, 30] }, undefined],
  ['everything outside the model', { past: 0 }, undefined],
  ['a fault of a hundredth of a second', { t: [0, 0.001, 0.002, 0.005, 0.01] }, undefined],
  ['a day', { t: [0, 3600, 7200, 43200, 86400] }, undefined],
])('draws %s without a broken number', async (_name, part, tMax) => {
  const { frame } = await drawn({ curves: [{ ...conductor, ...part }], tMax, reading: 0 }, 420);
  expect(frame.innerHTML.match(/.{30}(NaN|Infinity|undefined)/)?.[0]).toBeUndefined();
});

it('draws four cases of two curves, each named', async () => {
  const curves = [10, 13, 16, 20].flatMap((I, i) =>
    [conductor, surface].map((curve) => ({
      ...curve,
      id: `${curve.id}${I}`,
      case: `${I} A`,
      T: Array.from(curve.T, (T) => T + 12 * i),
    })),
  );
  const { frame } = await drawn({ curves }, 900);
  const words = frame.querySelector('svg')?.textContent ?? '';
  for (const { case: of, name } of curves) expect(words).toContain(`${of}, ${name}`);
});
