import { celsius, number, numbers, type Works } from './stem.ts';

// Right and wrong answers to the numeric questions of unit 4, worked out from the words of the stem alone.

const foot = 0.3048;

/** A conductor's resistance by the length [Ω/m], told in mΩ/m or mΩ/ft. */
const byLength = (stem: string): number => {
  const [, told, unit] = /([\d.]+) mΩ\/(m|ft)\b/.exec(stem) as unknown as [string, string, string];
  return Number(told) / 1e3 / (unit === 'ft' ? foot : 1);
};
/** Copper's resistance at a temperature over that at 20 °C. */
const hotter = (stem: string, T_degC: number) =>
  1 + number(stem, /coefficient is ([\d.]+) for each kelvin/) * (T_degC - 20);
const ofTwo = (I: number, R: number) => 2 * I * I * R;
const ohms = (stem: string) => numbers(stem, /([\d.]+) Ω/g);

/** How each of them is worked out. */
export const works4: Works = {
  Q52(stem) {
    const In = number(stem, /^An? (\d+) A/);
    const I = In * number(stem, /must hold ([\d.]+) times its rating/);
    const R = byLength(stem);
    const hot = hotter(stem, number(stem, /settle at (\d+) °C/));
    const slips = [
      { id: 'M31', value: ofTwo(In, R * hot) },
      { id: 'M16', value: ofTwo(I, R) },
    ];
    return { right: ofTwo(I, R * hot), slips };
  },
  Q55(stem) {
    const [, each, told] = /each (metre|foot) sheds ([\d.]+) W/.exec(stem) as unknown as [string, string, string];
    const heat = Number(told) / (each === 'foot' ? foot : 1);
    const R = byLength(stem);
    const I = (resistance: number) => Math.sqrt(heat / (2 * resistance));
    const right = I(R * hotter(stem, number(stem, /rated (\d+) °C/)));
    const slips = [
      { id: 'M37', value: 1.45 * right },
      { id: 'M16', value: I(R) },
    ];
    return { right, slips };
  },
  Q58(stem) {
    const I = number(stem, /drives ([\d.]+) A/);
    const S = number(stem, /([\d.]+) mm²/);
    const k = number(stem, /a k of (\d+)/);
    const slips = [{ id: 'M38', value: (k * S) / I }];
    if (k !== 115) slips.push({ id: 'M40', value: ((115 * S) / I) ** 2 });
    return { right: ((k * S) / I) ** 2, slips };
  },
  Q59(stem) {
    const [, count, unit] = /is ([\d.]+) (m|ft) long/.exec(stem) as unknown as [string, string, string];
    const L = Number(count) * (unit === 'ft' ? foot : 1);
    const U = number(stem, /has (\d+) V behind/);
    const source = number(stem, /behind ([\d.]+) Ω/);
    const times = Number(/resists ([\d.]+) times/.exec(stem)?.[1] ?? 1);
    const core = byLength(stem) * L;
    const slips = [{ id: 'M09', value: U / (source + core * times) }];
    if (times !== 1) slips.push({ id: 'M10', value: U / (source + 2 * core) });
    return { right: U / (source + 2 * core * times), slips };
  },
  Q63(stem) {
    const [Ze, R1, R2] = ohms(stem) as [number, number, number];
    const warm = 1 + number(stem, /resists (\d+) % more/) / 100;
    const slips = [
      { id: 'M41', value: Ze + R1 * warm },
      { id: 'M16', value: Ze + R1 + R2 },
    ];
    if (celsius(stem).length < 2) throw new Error('the stem tells both temperatures');
    return { right: Ze + (R1 + R2) * warm, slips };
  },
};
