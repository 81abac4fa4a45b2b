import { celsius } from '#engine';

/**
 * Six significant figures: more than any of the data deserve, enough to compare runs. Null for what is no number, or for
 * ever.
 */
export const figures = (x: number) => (Number.isFinite(x) ? Number(x.toPrecision(6)) : null);

/** A temperature [K] in °C, to a thousandth. */
export const degrees = (T: number) => Number(celsius(T).toFixed(3));
