import { number, numbers, type Works } from './stem.ts';

// Right and wrong answers to the numeric questions of unit 5, worked out from the words of the stem alone.

const foot = 0.3048;

/** A figure told by the metre or by the foot: [SI times the thousand it was told in]. */
const byLength = (stem: string, unit: 'mΩ' | 'g'): number => {
  const [, told, length] = new RegExp(String.raw`([\d.]+) ${unit}/(m|ft)\b`).exec(stem) as unknown as [
    string,
    string,
    string,
  ];
  return Number(told) / (length === 'ft' ? foot : 1);
};
/** The length of a lead [m]. */
const long = (stem: string): number => {
  const [, count, unit] = /is ([\d.]+) (m|ft) long/.exec(stem) as unknown as [string, string, string];
  return Number(count) * (unit === 'ft' ? foot : 1);
};
const first = (all: readonly number[]): number => all[0] as number;

/** Volts and ohms of a lead on the bench, as warm as it settles and cold. */
function onTheBench(stem: string) {
  const I = number(stem, /V holds ([\d.]+) A/);
  const T = number(stem, /settle at (\d+) °C/);
  const alpha = number(stem, /and ([\d.]+) more of that for each kelvin/);
  const cold = 2 * long(stem) * (byLength(stem, 'mΩ') / 1e3);
  const warm = cold * (1 + alpha * (T - 20));
  return { I, cold, warm, supply: number(stem, /supply of (\d+) V/), use: number(stem, /hangs on (\d+) V/) };
}

/** How each of them is worked out. */
export const works5: Works = {
  Q65(stem) {
    const I = number(stem, /sends ([\d.]+) A/);
    const [own, clips] = numbers(stem, /reads ([\d.]+) mV/g) as [number, number];
    const T = first(numbers(stem, /lies at (\d+) °C/g));
    const alpha = number(stem, /Take ([\d.]+) for each kelvin/);
    const of = (U: number, times: number, above: number) => U / 1e3 / I / (times * long(stem)) / (1 + alpha * above);
    const slips = [
      { id: 'M09', value: of(own, 1, T - 20) },
      { id: 'M14', value: of(own, 2, T) },
      { id: 'M45', value: of(clips, 2, T - 20) },
    ];
    return { right: of(own, 2, T - 20), slips };
  },
  Q65b(stem) {
    const own = number(stem, /touched together it shows ([\d.]+) mΩ/);
    const loop = number(stem, /and it shows ([\d.]+) mΩ/);
    const of = (R: number, times: number) => R / 1e3 / (times * long(stem));
    const slips = [
      { id: 'M45', value: of(loop, 2) },
      { id: 'M09', value: of(loop - own, 1) },
    ];
    return { right: of(loop - own, 2), slips };
  },
  Q66(stem) {
    const parts = ['Volts have', 'amps', 'and length'].map((of) => number(stem, new RegExp(`${of} ([\\d.]+) %`)) / 100);
    const fourth = number(stem, /with ([\d.]+) for each kelvin/) * number(stem, /known to ([\d.]+) K/);
    return { right: Math.sqrt([...parts, fourth].reduce((sum, one) => sum + one * one, 0)), slips: [] };
  },
  Q67(stem) {
    const R = number(stem, /find ([\d.]+) mΩ/) / 1e3 / long(stem);
    const [, count, unit] = /core, ([\d.]+) (cm|in) long/.exec(stem) as unknown as [string, string, string];
    const mass = number(stem, /weighs ([\d.]+) g/) / 1e3 / (Number(count) * (unit === 'in' ? 0.0254 : 0.01));
    const copper = number(stem, /Copper has ([\d.]+) nΩ·m/) * 1e-9 * number(stem, /([\d.]+) kg\/m³/);
    const slips = [
      { id: 'M09', value: R * mass },
      { id: 'M50', value: copper },
    ];
    return { right: (R / 2) * mass, slips };
  },
  Q67c(stem) {
    const f = number(stem, /([\d.]+) % of its volume/) / 100;
    const [copper, aluminium] = numbers(stem, /([\d.]+) kg\/m³/g) as [number, number];
    const mass = byLength(stem, 'g') / 1e3;
    const slips = [
      { id: 'M12', value: mass * (f / copper + (1 - f) / aluminium) },
      { id: 'M50', value: (number(stem, /([\d.]+) nΩ·m/) * 1e-9) / (byLength(stem, 'mΩ') / 1e3) },
    ];
    return { right: mass / (f * copper + (1 - f) * aluminium), slips };
  },
  Q68(stem) {
    const { I, cold, warm } = onTheBench(stem);
    const slips = [
      { id: 'M16', value: I * cold },
      { id: 'M09', value: (I * warm) / 2 },
    ];
    return { right: I * warm, slips };
  },
  Q68b(stem) {
    const { I, cold, warm, supply, use } = onTheBench(stem);
    const slips = [
      { id: 'M16', value: I * I * cold },
      { id: 'M09', value: (I * I * warm) / 2 },
      { id: 'M46', value: (I * I * warm * supply) / use },
    ];
    return { right: I * I * warm, slips };
  },
};
