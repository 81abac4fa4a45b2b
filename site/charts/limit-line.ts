import type { LimitStyle } from './types.ts';

/** How a limit is drawn: which token holds its width, and whether it is waved, dotted or doubled. */
export const limitLines: Record<
  LimitStyle,
  { width: `--limit-${LimitStyle}`; form: 'line' | 'wave' | 'dots' | 'double' | 'dashes' }
> = {
  touch: { width: '--limit-touch', form: 'line' },
  rating: { width: '--limit-rating', form: 'line' },
  softening: { width: '--limit-softening', form: 'wave' },
  fumes: { width: '--limit-fumes', form: 'dots' },
  ignition: { width: '--limit-ignition', form: 'double' },
  other: { width: '--limit-other', form: 'dashes' },
};

const wavelength = 8; // px
const swing = 2.2; // px

/** SVG path of a limit at height `y` from `x0` to `x1` [px]. */
export function limitPath(style: LimitStyle, x0: number, x1: number, y: number): string {
  const { form } = limitLines[style];
  if (form === 'double') return `M${r(x0)} ${r(y - 1.75)}H${r(x1)}M${r(x0)} ${r(y + 1.75)}H${r(x1)}`;
  if (form !== 'wave') return `M${r(x0)} ${r(y)}H${r(x1)}`;
  const halves = Math.max(1, Math.floor((x1 - x0) / (wavelength / 2)));
  const first = `M${r(x0)} ${r(y)}q${wavelength / 4} ${-2 * swing} ${wavelength / 2} 0`;
  return first + `t${wavelength / 2} 0`.repeat(halves - 1);
}

/** Dash pattern of the form: round dots, dashes, or a full line. */
export function limitDashes(style: LimitStyle): string | undefined {
  const { form } = limitLines[style];
  return form === 'dots' ? '0.1 5.5' : form === 'dashes' ? '6 4' : undefined;
}

const r = (value: number): number => Math.round(value * 10) / 10;
