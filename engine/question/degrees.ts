import { fahrenheit, kelvin, zeroCelsius } from '../quantity.ts';
import type { Practice, WrongValue } from './types.ts';

/** Absolute temperature [K] of a Fahrenheit temperature [°F]. */
export const kelvinOfF = (T_degF: number): number => (T_degF - 32) / 1.8 + zeroCelsius;

/** Whole degrees Fahrenheit, as they are told beside whole degrees Celsius. */
export const wholeF = (T_degC: number): number => Math.round(fahrenheit(kelvin(T_degC)));

/**
 * A slip whose value depends on the scale it is worked in, as when a rise is told as a temperature. `work` computes with the
 * temperatures as told, `told(T_degC)`, and gives a number on that scale. In `na` a second value stands for work in °F.
 */
export function inTheScale(
  practice: Practice,
  slip: Omit<WrongValue, 'value' | 'onlyIn'>,
  work: (told: (T_degC: number) => number) => number,
): WrongValue[] {
  const inC: WrongValue = { ...slip, value: kelvin(work((T_degC) => T_degC)) };
  return practice === 'na' ? [inC, { ...slip, value: kelvinOfF(work(wholeF)), onlyIn: '°F' }] : [inC];
}
