/** Number of colour stops of the temperature ramp, `--t0` to `--t8`. */
export const rampStops = 9;

const cold = 20; // °C, first stop
const hot = 400; // °C, last stop
const bend = 60; // K, sets how the scale closes up towards the hot end

/** Position on the ramp, 0 at 20 °C to 1 at 400 °C: t = ln(1 + (θ − 20)/60) / ln(1 + 380/60), θ clamped. `T_degC` in °C. */
export function rampPosition(T_degC: number): number {
  const T = Math.min(hot, Math.max(cold, T_degC));
  return Math.log1p((T - cold) / bend) / Math.log1p((hot - cold) / bend);
}

/** The temperature [°C] at a position on the ramp, the inverse of `rampPosition`. */
export function rampTemperature(position: number): number {
  return cold + bend * Math.expm1(position * Math.log1p((hot - cold) / bend));
}

/** True above 400 °C, where the ramp ends and words must take over. */
export function offTheRamp(T_degC: number): boolean {
  return T_degC > hot;
}

/** The colour of a temperature as CSS, mixed from the theme's own stops, so that it changes with the theme and on paper. */
export function rampColour(T_degC: number): string {
  const [stop, share] = stopAndShare(T_degC);
  if (share === 0) return `var(--t${stop})`;
  return `color-mix(in srgb, var(--t${stop}) ${((1 - share) * 100).toFixed(1)}%, var(--t${stop + 1}))`;
}

/** The colour of a temperature as [r, g, b] 0…255 from nine stops read off the theme, for pictures painted per pixel. */
export function rampMix(
  stops: readonly (readonly [number, number, number])[],
  T_degC: number,
): [number, number, number] {
  const [stop, share] = stopAndShare(T_degC);
  const from = stops[stop] ?? [0, 0, 0];
  const to = stops[stop + 1] ?? from;
  return [0, 1, 2].map((i) => Math.round((from[i] ?? 0) * (1 - share) + (to[i] ?? 0) * share)) as [
    number,
    number,
    number,
  ];
}

/** Stops of a gradient that paints [low, high] °C on an even scale: offset 0…1 from the low end and the CSS colour. */
export function rampGradient(low_degC: number, high_degC: number): { offset: number; colour: string }[] {
  const inner = Array.from({ length: rampStops }, (_, i) => rampTemperature(i / (rampStops - 1)));
  const at = [low_degC, ...inner.filter((T) => T > low_degC + 1e-6 && T < high_degC - 1e-6), high_degC];
  return at.map((T) => ({ offset: (T - low_degC) / (high_degC - low_degC), colour: rampColour(T) }));
}

/** Black or white, whichever stands out more on a ramp colour of this luminance (WCAG relative luminance, 0…1). */
export function onRamp(luminance: number): 'var(--on-ramp-dark)' | 'var(--on-ramp-light)' {
  return luminance > 0.179 ? 'var(--on-ramp-dark)' : 'var(--on-ramp-light)';
}

function stopAndShare(T_degC: number): [stop: number, share: number] {
  const place = rampPosition(T_degC) * (rampStops - 1);
  const stop = Math.min(rampStops - 1, Math.floor(place + 1e-9));
  return [stop, Math.max(0, place - stop)];
}
