import { expect, it } from 'vitest';
import { offTheRamp, rampColour, rampGradient, rampPosition, rampStops, rampTemperature } from '#site/lib/ramp.ts';
import '#site/styles/base.css';

const stops_degC = [20, 37, 59, 87, 122, 168, 227, 303, 400];

it('puts its nine even stops at the temperatures the design names, to the degree', () => {
  expect(Array.from({ length: rampStops }, (_, i) => Math.round(rampTemperature(i / 8)))).toEqual(stops_degC);
});

it('turns a temperature into a place and back', () => {
  for (const T of [20, 21, 70, 160, 399, 400]) expect(rampTemperature(rampPosition(T))).toBeCloseTo(T, 9);
});

it('stays at its ends outside 20 to 400 °C, and says when words must take over', () => {
  expect([rampPosition(-40), rampPosition(1000)]).toEqual([0, 1]);
  expect([offTheRamp(400), offTheRamp(401)]).toEqual([false, true]);
});

it('mixes the colours of the theme, not colours of its own', () => {
  const swatch = document.createElement('i');
  document.body.append(swatch);
  for (const [T, token] of [
    [20, '--t0'],
    [400, '--t8'],
    [900, '--t8'],
  ] as const) {
    swatch.style.color = rampColour(T);
    const mixed = getComputedStyle(swatch).color;
    swatch.style.color = `var(${token})`;
    expect(mixed).toBe(getComputedStyle(swatch).color);
  }
  swatch.style.color = rampColour(70);
  expect(getComputedStyle(swatch).color).toMatch(/^color\(srgb 0\.\d+ 0\.\d+ 0\.\d+\)$/);
});

it('gives a gradient whose offsets rise from 0 to 1', () => {
  const offsets = rampGradient(0, 160).map(({ offset }) => offset);
  expect([offsets[0], offsets.at(-1)]).toEqual([0, 1]);
  expect(offsets).toEqual([...offsets].sort((a, b) => a - b));
});
