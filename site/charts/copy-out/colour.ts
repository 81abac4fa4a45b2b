/** A colour as drawings outside a browser read it: '#rrggbb', with its opacity beside it. */
export interface PlainColour {
  readonly hex: string;
  /** 0 to 1. */
  readonly alpha: number;
}

/** A computed CSS colour in plain form: from 'rgb(…)', 'rgba(…)' or 'color(srgb …)'; undefined for anything else, such as 'none'. */
export function plainColour(computed: string): PlainColour | undefined {
  const [, form = '', inner = ''] = /^(rgba?|color)\((.*)\)$/.exec(computed) ?? [];
  const numbers = inner
    .replace(/^srgb /, '')
    .split(/[\s,/]+/)
    .map(Number);
  if (numbers.length < 3 || numbers.some(Number.isNaN)) return undefined;
  const full = form === 'color' ? 255 : 1;
  const hex = numbers.slice(0, 3).map((part) => {
    const level = Math.min(255, Math.max(0, Math.round(part * full)));
    return level.toString(16).padStart(2, '0');
  });
  return { hex: `#${hex.join('')}`, alpha: numbers[3] ?? 1 };
}
