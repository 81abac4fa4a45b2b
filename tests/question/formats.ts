import type { AnswerKind } from '#engine/question/answer.ts';

// Six ways in which people type one amount, each rounded to the same number of figures in its own unit.

const plain = (value: number, figures: number): string => {
  const rounded = Number(value.toPrecision(figures));
  const places = rounded === 0 ? 0 : Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(rounded))));
  return rounded.toFixed(places);
};
const comma = (text: string) => text.replace('.', ',');

/** `value` [SI] typed in six formats with `figures` figures. */
export function typedInSixFormats(kind: AnswerKind, value: number, figures: number): string[] {
  const as = (number: number) => plain(number, figures);
  if (kind === 'temperature') {
    const [C, F] = [value - 273.15, (value - 273.15) * 1.8 + 32];
    return [
      `${as(C)} °C`,
      `${as(C)}°C`,
      `${comma(as(C))} degC`,
      `${as(F)} F`,
      `about ${as(F)}\u202F°F`,
      `${as(C).replace('-', '−')} deg c`,
    ];
  }
  if (kind === 'time' && value < 10) {
    return [
      `${as(value)} s`,
      `${comma(as(value))}sec`,
      `${as(value * 1e3)} ms`,
      `t = ${as(value)} seconds`,
      `about ${comma(as(value * 1e3))} milliseconds`,
      `${as(value)} s.`,
    ];
  }
  if (kind === 'time') {
    const s = Math.round(Number(as(value)));
    const clock = `${Math.floor(s / 60)}:${String(s % 60).padStart(2, '0')}`;
    return [
      `${as(value)} s`,
      `${comma(as(value))}sec`,
      `${as(value / 60)} min`,
      clock,
      `${Math.floor(s / 60)} min ${s % 60} s`,
      `${as(value / 3600)} h`,
    ];
  }
  if (kind === 'ratio') {
    const [percent, part] = [as(100 * value), as(value)];
    const signed = [`${percent} %`, `${comma(percent)} percent`, `about ${percent} per cent`];
    return value < 1
      ? [...signed, `${percent}%`, part, comma(part)]
      : [...signed, part, `${comma(part)} times`, `${part}×`];
  }
  const ways = waysOf[kind];
  if (!ways) throw new Error(`no formats for ${kind}`);
  return ways(value, as);
}

type Ways = (value: number, as: (number: number) => string) => string[];

const foot = 0.3048;
const circularMil = (Math.PI / 4) * 0.0254e-3 ** 2;

const waysOf: Partial<Record<AnswerKind, Ways>> = {
  current: (I, as) => [
    `${as(I)} A`,
    `${comma(as(I))}A`,
    `${as(I * 1e3)} mA`,
    `${comma(as(I / 1e3))} kA`,
    `${as(I)} amps`,
    `I = ${Number(as(I)).toExponential()} A`,
  ],
  'temperature rise': (rise, as) => [
    `${as(rise)} K`,
    `${as(rise)}K`,
    `${comma(as(rise))} kelvin`,
    `Δθ = ${as(rise)} K`,
    `about ${as(rise)} °C`,
    `${as(rise * 1.8)}\u202F°F`,
  ],
  'heat per metre': (heat, as) => [
    `${as(heat)} W/m`,
    `${comma(as(heat))}W/m`,
    `${as(heat * 1e3)} mW/m`,
    `${as(heat * foot)} W/ft`,
    `${comma(as(heat * foot))} watts per foot`,
    `about ${as(heat)} watts per metre`,
  ],
  'resistance per metre': (R, as) => [
    `${as(R * 1e3)} mΩ/m`,
    `${comma(as(R * 1e3))} mohm/m`,
    `${as(R * 1e3)} Ω/km`,
    `${as(R * foot * 1e3)} mΩ/ft`,
    `${comma(as(R * foot * 1e3))} mohm per foot`,
    `${as(R * foot * 1e3)} Ω/kft`,
  ],
  resistance: (R, as) => [
    `${as(R)} Ω`,
    `${comma(as(R))}Ω`,
    `${as(R * 1e3)} mΩ`,
    `${comma(as(R * 1e3))} milliohms`,
    `R = ${as(R)} ohm`,
    `about ${as(R * 1e3)} mohm`,
  ],
  voltage: (U, as) => [
    `${as(U)} V`,
    `${comma(as(U))}V`,
    `${as(U * 1e3)} mV`,
    `${comma(as(U / 1e3))} kV`,
    `${as(U)} volts`,
    `U = ${as(U)} V`,
  ],
  length: (L, as) => [
    `${as(L)} m`,
    `${comma(as(L))}m`,
    `${as(L / foot)} ft`,
    `about ${as(L / foot)} feet`,
    `L = ${as(L * 1e2)} cm`,
    `${comma(as(L))} metres`,
  ],
  resistivity: (rho, as) => [
    `${as(rho * 1e9)} nΩ·m`,
    `${comma(as(rho * 1e9))} nΩm`,
    `${as(rho * 1e9)} nohm m`,
    `${comma(as(rho * 1e6))} μΩ·m`,
    `${as(rho * 1e8)} × 10^-8 Ω·m`,
    `${as(rho * 1e6)} Ω mm²/m`,
  ],
  'resistance times mass': (product, as) => [
    `${as(product * 1e6)} mΩ·g/m²`,
    `${comma(as(product * 1e6))} mohm g/m2`,
    `${as(product * 1e6)} mΩ g per m²`,
    `${as(product * 1e6 * foot ** 2)} mΩ·g/ft²`,
    `about ${as(product)} Ω·kg/m²`,
    `${as(product * 1e3)} Ω·g/m^2`,
  ],
  power: (P, as) => [
    `${as(P)} W`,
    `${comma(as(P))}W`,
    `${as(P * 1e3)} mW`,
    `${comma(as(P / 1e3))} kW`,
    `${as(P)} watts`,
    `P = ${as(P)} W`,
  ],
  area: (A, as) => [
    `${as(A * 1e6)} mm²`,
    `${comma(as(A * 1e6))}mm2`,
    `${as(A * 1e6)} sq mm`,
    `${as(A * 1e6)} mm^2`,
    `A = ${comma(as(A * 1e6))} square mm`,
    `${as(A / circularMil / 1e3)} kcmil`,
  ],
};
