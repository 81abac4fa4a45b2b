// Burn thresholds of skin. Between two printed times a threshold is straight over the logarithm of time, our assumption.
import { expect, it } from 'vitest';
import { burnThresholds, celsius, kelvin, type TouchedSurface, timeToBurn } from '#engine';
import { checkTable, num, type Row, text } from './table.ts';

const surface = (row: Row) => text(row, 'surface') as TouchedSurface;

/** The lower edge, once both edges are seen to be the printed ones and to be met by a contact of that very time. */
function threshold(row: Row): number {
  const t = num(row, 't_s');
  const [low, high = low] = row.published.split(' to ').map(Number);
  const held = burnThresholds[surface(row)].find((one) => one.t === t);
  if (!held) throw new Error(`${row.id}: no threshold is held for ${t} s`);
  expect(celsius(held.high)).toBeCloseTo(high, 9);
  expect(timeToBurn(surface(row), held.low).from).toBeCloseTo(t, 6);
  expect(timeToBurn(surface(row), held.high).to).toBeCloseTo(t, 6);
  return celsius(held.low);
}

/** The lower edge's time, once the upper edge's is seen to lie in the row's range too. */
function time(row: Row): number {
  const { from, to } = timeToBurn(surface(row), kelvin(num(row, 'T_degC')));
  const [least, most] = row.published.split(' to ').map(Number);
  expect(to).toBeGreaterThanOrEqual(least);
  expect(to).toBeLessThanOrEqual(most);
  return from;
}

checkTable('skin-burn.csv', { 'burn threshold': threshold, 'time to burn': time });

it('burns sooner on what is hotter, never on what is cool, and says where it may be sooner still', () => {
  expect(timeToBurn('plastic', kelvin(42)).from).toBe(Number.POSITIVE_INFINITY);
  const times = [50, 60, 70, 80, 90].map((T_degC) => timeToBurn('plastic', kelvin(T_degC)));
  for (let i = 1; i < times.length; i++) expect(times[i].to).toBeLessThan(times[i - 1].to);
  expect(timeToBurn('metal', kelvin(66.9)).orLess).toBe(false);
  expect(timeToBurn('metal', kelvin(67)).orLess).toBe(true);
  expect(() => timeToBurn('metal', -5)).toThrow(/surface temperature/);
});
