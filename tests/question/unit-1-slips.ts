import type { Slip } from './slips.ts';
import { celsius, fahrenheit, number, numbers, ofC, ofF, type Works } from './stem.ts';

// Right and wrong answers to the numeric questions of unit 1, worked out from the words of the stem alone.

const foot = 0.3048;

/** A resistance by the length [Ω/m]: in mΩ/m, or in mΩ/ft. */
const byLength = (stem: string) => {
  const [, told, unit] = /([\d.]+) mΩ\/(m|ft)\b/.exec(stem) as unknown as [string, string, string];
  return Number(told) / 1e3 / (unit === 'ft' ? foot : 1);
};
/** The length of a lead [m]: in m, or in ft. */
const lengthOf = (stem: string) => {
  const [, told, unit] = /is ([\d.]+) (m|ft)\b.{0,20} long/.exec(stem) as unknown as [string, string, string];
  return Number(told) * (unit === 'ft' ? foot : 1);
};
/** Two readings in mΩ [Ω]. */
const readings = (stem: string) => numbers(stem, /([\d.]+) mΩ(?!\/)/g).map((told) => told / 1e3);
const alphaOf = (stem: string) => number(stem, /coefficient is ([\d.]+) for each kelvin/);
/** Resistivities [Ω·m]. */
const rhos = (stem: string) => numbers(stem, /([\d.]+) nΩ·m/g).map((told) => told * 1e-9);
const amps = (stem: string) => numbers(stem, /([\d.]+) A\b(?!W)/g) as [number, number];

/** How each of them is worked out. */
export const works1: Works = {
  Q01(stem) {
    const [I] = amps(stem);
    const R = byLength(stem);
    const slips = [
      { id: 'M01', value: 2 * I * R },
      { id: 'M02', value: I * I * R },
    ];
    return { right: I * I * R + I * I * R, slips };
  },
  Q02(stem) {
    const [before, now] = amps(stem);
    const [heat, more] = [before * before, now * now];
    return { right: more / heat, slips: [{ id: 'M01', value: now / before }] };
  },
  Q03(stem) {
    const [I1, I2] = amps(stem);
    const first = number(stem, /settles (\d+) K above/);
    const [air] = celsius(stem) as [number];
    const [airF] = fahrenheit(stem);
    const rise = first * (I2 / I1) ** 2;
    const slips: Slip[] = [
      { id: 'M03', value: first * (I2 / I1) },
      { id: 'M17', value: air + rise },
    ];
    // in °F the settled temperature is read as if all of it were rise
    if (airF !== undefined) slips.push({ id: 'M17', value: (airF + 1.8 * rise) / 1.8, inF: true });
    return { right: rise, slips };
  },
  Q06(stem) {
    const once = lengthOf(stem) * byLength(stem);
    return { right: 2 * once, slips: [{ id: 'M09', value: once }] };
  },
  Q08(stem) {
    const [from, to] = numbers(stem, /(\d+) AWG/g) as [number, number];
    const R = byLength(stem);
    // the thirty-nine steps from 36 to 0000 make the diameter 92 times as much
    const thinner = 92 ** ((to - from) / 39);
    const slips = [
      { id: 'M07', value: R * thinner },
      { id: 'M08', value: R / thinner ** 2 },
    ];
    return { right: R * thinner ** 2, slips };
  },
  Q10(stem) {
    const count = number(stem, /has (\d+) thin wires/);
    const d = number(stem, /is ([\d.]+) mm across/) / 1e3;
    const slips = [
      { id: 'M06', value: count * d * 1e-3 },
      { id: 'M07', value: (count * Math.PI * d * 1e-3) / 4 },
    ];
    return { right: count * Math.PI * (d / 2) ** 2, slips };
  },
  Q11(stem) {
    const f = number(stem, /takes ([\d.]+) %/) / 100;
    const [skin, inside] = rhos(stem) as [number, number];
    const slips = [
      { id: 'M10', value: skin },
      { id: 'M11', value: f * skin + (1 - f) * inside },
    ];
    return { right: (skin * inside) / (f * inside + (1 - f) * skin), slips };
  },
  Q12(stem) {
    const [R] = readings(stem) as [number];
    const [rho] = rhos(stem) as [number];
    const once = (rho * lengthOf(stem)) / R;
    const marked = number(stem, /([\d.]+) mm²/) * 1e-6;
    const slips = [
      { id: 'M09', value: once },
      { id: 'M10', value: marked },
    ];
    return { right: 2 * once, slips };
  },
  Q15(stem) {
    const [cold] = readings(stem) as [number];
    const [table, hot] = celsius(stem) as [number, number];
    const hotF = fahrenheit(stem)[1];
    const alpha = alphaOf(stem);
    const slips: Slip[] = [
      { id: 'M13', value: cold - cold * alpha * (hot - table) },
      { id: 'M14', value: cold + cold * alpha * hot },
    ];
    if (hotF !== undefined) slips.push({ id: 'M14', value: cold + cold * alpha * hotF });
    return { right: cold + cold * alpha * (hot - table), slips };
  },
  Q16(stem) {
    const [cold, warm] = readings(stem) as [number, number];
    const [table] = celsius(stem) as [number];
    const above = (warm - cold) / (cold * alphaOf(stem));
    const slips: Slip[] = [
      { id: 'M13', value: ofC(table - above) },
      { id: 'M15', value: ofC(above) },
    ];
    if (fahrenheit(stem).length > 0) slips.push({ id: 'M15', value: ofF(1.8 * above), inF: true });
    return { right: ofC(table + above), slips };
  },
};
