import { number, numbers, type Works } from './stem.ts';

// Right and wrong answers to the numeric questions of unit 3, worked out from the words of the stem alone.

const foot = 0.3048;

const amps = (stem: string) => number(stem, /takes (\d+) A\b/);
const volts = (stem: string) => number(stem, /supply has (\d+) V/);
/** The nominal volts of the other region. */
const otherVolts = (U: number) => (U === 230 ? 120 : 230);

/** Ohms of one conductor, cold and warm [Ω/m]: told in mΩ/m, or for 1000 ft. */
function ohms(stem: string): [cold: number, warm: number] {
  const told = [...stem.matchAll(/([\d.]+) (mΩ\/m|Ω\/kft)/g)].map(
    ([, figure, unit]) => Number(figure) / 1e3 / (unit === 'mΩ/m' ? 1 : foot),
  );
  return told as [number, number];
}

/** How each of them is worked out. */
export const works3: Works = {
  Q39(stem) {
    const [, figure, unit] = /marked ([\d.]+) (k?W)/.exec(stem) as unknown as [string, string, string];
    const P = Number(figure) * (unit === 'kW' ? 1000 : 1);
    const U = number(stem, /(\d+) V\b/);
    const habit = U === 120 ? 230 : 120;
    return { right: P / U, slips: [{ id: 'M49', value: P / habit }] };
  },
  Q40(stem) {
    const In = number(stem, /rated (\d+) A/);
    const factors = numbers(stem, /C[agi] = (\d(?:\.\d+)?)/g);
    const product = factors.reduce((all, one) => all * one, 1);
    const lost = factors.reduce((sum, one) => sum + 1 - one, 0);
    const slips = [
      { id: 'M26', value: In / (1 - lost) },
      { id: 'M27', value: In * product },
    ];
    return { right: In / product, slips };
  },
  Q44(stem) {
    const [, told, unit] = /end of ([\d.]+) (m|ft)\b/.exec(stem) as unknown as [string, string, string];
    const L = Number(told) * (unit === 'ft' ? foot : 1);
    const [I, U] = [amps(stem), volts(stem)];
    const asked = stem.includes('what share') ? U : 1;
    const table = stem.includes('together');
    const [first, second] = ohms(stem);
    const loop = stem.includes('mV/A/m') ? number(stem, /([\d.]+) mV\/A\/m/) / 1000 : first;
    const [cold, warm] = table ? [0, loop / 2] : [first, second];
    const right = (2 * warm * L * I) / asked;
    const slips = [
      { id: 'M43', value: right * 10 },
      // a thousand times a share is no share any more: a bare number is handed back, and asked what it is of
      ...(asked === 1 ? [{ id: 'M43', value: right * 1000 }] : [{ id: 'M49', value: (right * U) / otherVolts(U) }]),
      ...(table
        ? []
        : [
            { id: 'M09', value: right / 2 },
            { id: 'M16', value: (2 * cold * L * I) / asked },
          ]),
    ];
    return { right, slips };
  },
  Q45(stem) {
    const [cold, warm] = ohms(stem);
    const most = (number(stem, /more than (\d+) %/) / 100) * volts(stem);
    const I = amps(stem);
    const slips = [
      { id: 'M09', value: most / (warm * I) },
      { id: 'M16', value: most / (2 * cold * I) },
    ];
    return { right: most / (2 * warm * I), slips };
  },
};
