/** What a typed figure was read as. */
export type TypedNumber = { kind: 'empty' } | { kind: 'unreadable' } | { kind: 'number'; value: number };

/** Reads a typed figure: decimal comma or point, spaces between thousands, a true minus, the field's own unit behind it. */
export function readNumber(typed: string, unit = ''): TypedNumber {
  let text = typed.trim().replaceAll('−', '-');
  if (unit && text.toLowerCase().endsWith(unit.toLowerCase())) text = text.slice(0, -unit.length);
  text = text.replace(/[\s\u202F\u00A0']/g, '').replace(',', '.');
  if (text === '') return { kind: 'empty' };
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text)) return { kind: 'unreadable' };
  const value = Number(text);
  return Number.isFinite(value) ? { kind: 'number', value } : { kind: 'unreadable' };
}
