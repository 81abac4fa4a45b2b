import type { Practice } from './practice.ts';

/** The space between a number and its unit, which does not break. In the sheets' face it is thin of itself. */
export const thin = '\u00A0';

export type { Practice } from './practice.ts';

/** Decimals shown on a screen, by quantity, so that a changing figure keeps its width. */
export const decimals = {
  A: 1,
  V: 2,
  W: 1,
  'W/m': 1,
  '°C': 0,
  K: 0,
  m: 1,
  'mm²': 2,
} as const;

/** `value` with a fixed number of decimals, a true minus sign, and spaces between thousands from 10 000 on. */
export function fixed(value: number, places: number): string {
  if (!Number.isFinite(value)) return value > 0 ? '∞' : value < 0 ? '−∞' : '–';
  const [whole = '0', part] = Math.abs(value).toFixed(places).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, thin) : whole;
  const digits = part === undefined ? grouped : `${grouped}.${part}`;
  return value < 0 && Number(digits.replaceAll(thin, '')) !== 0 ? `−${digits}` : digits;
}

/** `value` to `figures` significant figures, in plain digits (never with an exponent). */
export function significant(value: number, figures: number): string {
  if (value === 0 || !Number.isFinite(value)) return fixed(value, 0);
  const rounded = Number(value.toPrecision(figures));
  const places = figures - 1 - Math.floor(Math.log10(Math.abs(rounded)));
  return fixed(rounded, Math.min(12, Math.max(0, places)));
}

/** A number with its unit: `quantity(17.38, 'A')` is '17.4 A'. Decimals are those of the unit unless given. */
export function quantity(value: number, unit: string, places?: number): string {
  const known: Record<string, number> = decimals;
  return `${fixed(value, places ?? known[unit] ?? 1)}${thin}${unit}`;
}

/** A resistance or voltage as the trade quotes it, three figures: '13.3 mΩ/m'. */
export function three(value: number, unit: string): string {
  return `${significant(value, 3)}${thin}${unit}`;
}

/** A temperature in words of the practice: '62 °C', or '62 °C (144 °F)'. `T_degC` in °C. */
export function temperature(T_degC: number, practice: Practice = 'iec', places = 0): string {
  const celsius = quantity(T_degC, '°C', places);
  return practice === 'na' ? `${celsius} (${quantity(fahrenheit(T_degC), '°F', 0)})` : celsius;
}

/** The same temperature on the Fahrenheit scale, which is exact by definition. */
export function fahrenheit(T_degC: number): number {
  return (T_degC * 9) / 5 + 32;
}

/** A difference of temperature, in kelvin: '34 K'. */
export function rise(dT_K: number, places = 0): string {
  return quantity(dT_K, 'K', places);
}

/** A time read as a clock: '0:42', '3:55', from an hour on '1 h 05 min'. `t_s` in seconds. */
export function clock(t_s: number): string {
  if (!Number.isFinite(t_s)) return 'never';
  const s = Math.round(t_s);
  if (s < 3600) return `${Math.floor(s / 60)}:${String(s % 60).padStart(2, '0')}`;
  const minutes = Math.round(t_s / 60);
  return `${Math.floor(minutes / 60)}${thin}h ${String(minutes % 60).padStart(2, '0')}${thin}min`;
}

/** The same time in words, for sentences and for the ear: '42 s', '3 min 55 s', '1 h 5 min'. `t_s` in seconds. */
export function timeInWords(t_s: number): string {
  if (!Number.isFinite(t_s)) return 'never';
  if (t_s > 0 && t_s < 10) return `${significant(t_s, 2)}${thin}s`;
  const s = Math.round(t_s);
  if (s < 60) return `${s}${thin}s`;
  if (s < 3600) return `${Math.floor(s / 60)}${thin}min${s % 60 ? ` ${s % 60}${thin}s` : ''}`;
  const minutes = Math.round(t_s / 60);
  return `${Math.floor(minutes / 60)}${thin}h${minutes % 60 ? ` ${minutes % 60}${thin}min` : ''}`;
}
