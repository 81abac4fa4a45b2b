import { ticks as evenTicks } from 'd3-array';

/** How a value stands on a slider: evenly, or by its logarithm (`min` above 0). */
export interface SliderScale {
  /** Ends and step of the slider's own positions. */
  min: number;
  max: number;
  step: number;
  toPosition: (value: number) => number;
  toValue: (position: number) => number;
}

const logSteps = 400;

/** The scale of a slider from `min` to `max` by `step`. On a logarithmic one each position gives three significant figures. */
export function sliderScale(min: number, max: number, step: number, log: boolean): SliderScale {
  if (!log || min <= 0) {
    const places = decimalsOf(step);
    return { min, max, step, toPosition: (value) => value, toValue: (position) => Number(position.toFixed(places)) };
  }
  const span = Math.log(max / min);
  return {
    min: 0,
    max: logSteps,
    step: 1,
    toPosition: (value) => (logSteps * Math.log(Math.max(min, value) / min)) / span,
    toValue: (position) => {
      if (position >= logSteps) return max;
      return position <= 0 ? min : Number((min * Math.exp((span * position) / logSteps)).toPrecision(3));
    },
  };
}

/** Figures under a slider: about `count` round values, 1–2–5 in each decade on a logarithmic one. */
export function sliderFigures(min: number, max: number, log: boolean, count: number): number[] {
  if (!log || min <= 0) return evenTicks(min, max, count);
  const decades = Array.from(
    { length: Math.ceil(Math.log10(max / min)) + 2 },
    (_, i) => 10 ** (Math.floor(Math.log10(min)) + i),
  );
  const fine = decades.length > count ? [1] : [1, 2, 5];
  return decades
    .flatMap((decade) => fine.map((part) => Number((part * decade).toPrecision(1))))
    .filter((value) => value >= min * 0.999 && value <= max * 1.001);
}

/** Decimals that a step needs: 0.25 → 2. */
export function decimalsOf(step: number): number {
  return Math.max(0, Math.min(6, (String(step).split('.')[1] ?? '').length));
}
