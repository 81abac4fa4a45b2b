import type { Load } from '#engine';

/** A load as one would set it: ohms to a tenth, watts to ten, amps as they are. */
export function tidyLoad({ kind, value }: Load): Load {
  if (kind === 'amps') return { kind, value };
  const tidy = kind === 'watts' ? Math.round(value / 10) * 10 : Math.round(value * 10) / 10;
  return { kind, value: Number.isFinite(tidy) ? tidy : value };
}
