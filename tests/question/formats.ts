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
  if (kind === 'current') {
    const I = as(value);
    return [
      `${I} A`,
      `${comma(I)}A`,
      `${as(value * 1e3)} mA`,
      `${comma(as(value / 1e3))} kA`,
      `${I} amps`,
      `I = ${value.toExponential(figures - 1)} A`,
    ];
  }
  throw new Error(`no formats for ${kind}`);
}
