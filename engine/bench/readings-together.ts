import { within } from '../errors.ts';
import { type Reading, readingFrom } from './instruments/meter.ts';
import type { Measured } from './measured.ts';

// What is computed from readings of the same two meters: their lasting errors do not average out, their steps do.

/** The lasting part of a measured value's uncertainty; all of it where the value does not tell its parts, as when nothing is known. */
export const lastingPart = (of: Measured & Partial<Reading>): number => Math.min(of.u, of.systematic ?? of.u);

/** Correlation of two readings by one instrument on one range: their lasting parts are the same error. */
export function sameInstrument(a: Measured & Partial<Reading>, b: Measured & Partial<Reading>): number {
  return a.u > 0 && b.u > 0 ? (lastingPart(a) * lastingPart(b)) / (a.u * b.u) : 0;
}

/** Relative lasting and random parts of a product or quotient of two readings by different meters. */
function joined(a: Reading, b: Reading, value: number): Reading {
  const lasting = Math.hypot(a.systematic / a.value, b.systematic / b.value);
  const random = Math.hypot(a.random / a.value, b.random / b.value);
  return readingFrom(value, lasting * Math.abs(value), random * Math.abs(value));
}

/** Refuses readings whose parts cannot be told as shares: there is no share of nothing. */
function checkPair(U: Reading, I: Reading): void {
  within('size of the voltage', Math.abs(U.value), [1e-9, 1e6], 'V');
  within('size of the current', Math.abs(I.value), [1e-9, 1e6], 'A');
}

/** Resistance U/I [Ω] of a voltmeter's and an ammeter's reading, neither of them 0 (1 nV and 1 nA at least). */
export function resistanceOf(U: Reading, I: Reading): Reading {
  checkPair(U, I);
  return joined(U, I, U.value / I.value);
}

/** Power U·I [W] of a voltmeter's and an ammeter's reading, neither of them 0 (1 nV and 1 nA at least); DC, or AC into pure resistance. */
export function powerOf(U: Reading, I: Reading): Reading {
  checkPair(U, I);
  return joined(U, I, U.value * I.value);
}

/** Weights [s] of the trapezium rule at the times `t` [s]: half of the spans on both sides. */
const weightsOf = (t: readonly number[]): number[] => t.map((at, i) => ((t[i + 1] ?? at) - (t[i - 1] ?? at)) / 2);

/**
 * Energy ∫ U·I dt [J] of readings by one voltmeter and one ammeter at rising times `t` [s], by trapezia. Lasting errors of
 * each meter add up over all rows, as one error does; steps of the displays add as squares. How the power went between
 * two rows, and the clock, are taken as exact.
 */
export function energyOf(t: readonly number[], U: readonly Reading[], I: readonly Reading[]): Reading {
  within('number of rows', t.length, [2, Number.POSITIVE_INFINITY], '');
  within('number of readings of the voltage', U.length, [t.length, t.length], '');
  within('number of readings of the current', I.length, [t.length, t.length], '');
  t.forEach((at, i) => {
    if (i > 0) within(`time of row ${i + 1}`, at, [t[i - 1] as number, Number.MAX_VALUE], 's');
  });
  let [energy, ofVolts, ofAmps, square] = [0, 0, 0, 0];
  weightsOf(t).forEach((w, k) => {
    const [u, i] = [U[k] as Reading, I[k] as Reading];
    energy += w * u.value * i.value;
    ofVolts += w * i.value * u.systematic;
    ofAmps += w * u.value * i.systematic;
    square += (w * i.value * u.random) ** 2 + (w * u.value * i.random) ** 2;
  });
  return readingFrom(energy, Math.hypot(ofVolts, ofAmps), Math.sqrt(square));
}
