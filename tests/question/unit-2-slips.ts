import type { Slip } from './slips.ts';
import { celsius, fahrenheit, number, numbers, ofC, ofF, type Works } from './stem.ts';

// Right and wrong answers to the numeric questions of unit 2, worked out from the words of the stem alone.

const seconds = (text: string) => {
  const [, min, s] = /(?:(\d+) min)? ?(?:(\d+) s)?\./.exec(text) ?? [];
  return 60 * Number(min ?? 0) + Number(s ?? 0);
};

/** One slip worked in °C and, where the stem gives °F as well, in °F. */
function inBoth(id: string, stem: string, work: (T: readonly number[], degree: number) => number): Slip[] {
  const inC: Slip = { id, value: ofC(work(celsius(stem), 1)) };
  const F = fahrenheit(stem);
  return F.length === 0 ? [inC] : [inC, { id, value: ofF(work(F, 1.8)), inF: true }];
}

type Temperatures = readonly [number, number, number];

/** How each of them is worked out. */
export const works2: Works = {
  Q20(stem) {
    const [, surface] = celsius(stem) as unknown as Temperatures;
    const heat = number(stem, /sheds ([\d.]+) W/);
    const rhoT = number(stem, /([\d.]+) K·m\/W/);
    const [core, outer] = numbers(stem, /([\d.]+) mm across/g) as [number, number];
    const drop = (heat * rhoT * Math.log(outer / core)) / (2 * Math.PI);
    const slips = [{ id: 'M22', value: ofC(surface) }, ...inBoth('M17', stem, (_, degree) => drop * degree)];
    return { right: ofC(surface + drop), slips };
  },
  Q21(stem) {
    const [air, settled, other] = celsius(stem) as unknown as Temperatures;
    const slips = [
      { id: 'M25', value: ofC(settled) },
      ...inBoth('M17', stem, ([a, end]) => (end as number) - (a as number)),
      ...inBoth('M17', stem, ([, end, b]) => (end as number) + (b as number)),
    ];
    return { right: ofC(other + settled - air), slips };
  },
  Q21b(stem) {
    const [air, surface] = celsius(stem) as unknown as Temperatures;
    const times = number(stem, /sheds ([\d.]+) times/);
    const slips = [
      ...inBoth('M17', stem, ([a, end]) => ((end as number) - (a as number)) / times),
      ...inBoth('M17', stem, ([, end]) => (end as number) / times),
    ];
    return { right: ofC(air + (surface - air) / times), slips };
  },
  Q33(stem) {
    const [T, rating] = celsius(stem) as unknown as Temperatures;
    const [hours, life] = numbers(stem, /(\d+) h\b/g) as [number, number];
    const energy = 1e3 * number(stem, /(\d+) kJ/);
    const R = number(stem, /([\d.]+) J\/\(/);
    const lasts = life * Math.exp((energy / R) * (1 / ofC(T) - 1 / ofC(rating)));
    return { right: hours / lasts, slips: [{ id: 'M24', value: 1 }] };
  },
  Q34(stem) {
    const [air, end, rating] = celsius(stem) as unknown as Temperatures;
    const level = celsius(stem).at(-1) as number;
    const tau = seconds(/of that rise in ([^.]*\.)/.exec(stem)?.[1] as string);
    const part = (T: number) => (T - air) / (end - air);
    const slips = [
      { id: 'M18', value: (tau * part(level)) / (1 - Math.exp(-1)) },
      { id: 'M24', value: -tau * Math.log(1 - part(rating)) },
    ];
    return { right: -tau * Math.log(1 - part(level)), slips };
  },
  Q36(stem) {
    const It = number(stem, /one such circuit (\d+) A/);
    const [Ca, ...others] = numbers(stem, /C[agi] = (\d\.\d+)/g) as [number, ...number[]];
    const product = others.reduce((all, one) => all * one, 1);
    const lost = [Ca, ...others].reduce((sum, one) => sum + 1 - one, 0);
    const slips = [
      { id: 'M25', value: It * product },
      { id: 'M26', value: It * (1 - lost) },
    ];
    return { right: It * Ca * product, slips };
  },
  Q37(stem) {
    const [air, limit] = celsius(stem) as unknown as Temperatures;
    const [wound, free] = numbers(stem, /([\d.]+) K·m\/W/g) as [number, number];
    const R = number(stem, /([\d.]+) mΩ\/m/) / 1e3;
    const through = (path: number) => Math.sqrt((limit - air) / (path * 2 * R));
    return { right: through(wound), slips: [{ id: 'M28', value: through(free) }] };
  },
  Q37b(stem) {
    const [air, free] = celsius(stem) as unknown as Temperatures;
    const times = number(stem, /now ([\d.]+) times/) * (1 + number(stem, /makes (\d+) %/) / 100);
    const slips = [{ id: 'M29', value: ofC(free) }, ...inBoth('M17', stem, ([, end]) => (end as number) * times)];
    return { right: ofC(air + (free - air) * times), slips };
  },
};
