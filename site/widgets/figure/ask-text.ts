import type { Practice } from '../../lib/format.ts';

/** What a figure asks: words, numbers, yes or no, by name. */
export type Ask = Readonly<Record<string, string | number | boolean>>;

/** What one part of an ask may be: one of a list, or a number between two ends. */
type Accepted<V> = readonly V[] | { readonly least: number; readonly most: number };

/** What each part of an ask may be. */
export type Accepts<T extends Ask> = { readonly [Key in keyof T]: Accepted<T[Key]> };

/** An ask as text for an address: its practice, then what differs from the page's own. `na;load:18.3;family:ul489` */
export function askToText<T extends Ask>(usage: Practice, value: T, opening: T): string {
  const changed = Object.keys(value).filter((key) => value[key] !== opening[key]);
  return [usage, ...changed.map((key) => `${key}:${encodeURIComponent(String(value[key]))}`)].join(';');
}

/** An ask that was read, or why it cannot be used. */
export interface ReadAsk<T> {
  usage: Practice;
  value: T;
  faults: readonly string[];
}

/** Reads what `askToText` wrote; a part that is not accepted is told in words. */
export function askFromText<T extends Ask>(
  text: string,
  opening: Readonly<Record<Practice, T>>,
  accepts: Readonly<Record<Practice, Accepts<T>>>,
): ReadAsk<T> {
  const [practice, ...parts] = text.split(';');
  const usage: Practice = practice === 'na' ? 'na' : 'iec';
  const own = opening[usage];
  const value: Record<string, string | number | boolean> = { ...own };
  const faults: string[] = practice === usage ? [] : ['It names no practice.'];
  for (const part of parts) {
    const cut = part.indexOf(':');
    const key = part.slice(0, Math.max(0, cut));
    const was = Object.hasOwn(own, key) ? own[key] : undefined;
    const read = was === undefined ? undefined : as(typeof was, part.slice(cut + 1));
    if (read === undefined || !fits(read, accepts[usage][key])) faults.push(`${part} is not accepted.`);
    else value[key] = read;
  }
  return { usage, value: value as T, faults };
}

function as(kind: string, written: string): string | number | boolean | undefined {
  if (kind === 'boolean') return written === 'true' ? true : written === 'false' ? false : undefined;
  if (kind === 'number') return written.trim() === '' || Number.isNaN(Number(written)) ? undefined : Number(written);
  try {
    return decodeURIComponent(written);
  } catch {
    return undefined;
  }
}

function fits(value: string | number | boolean, accepted: Accepted<unknown> | undefined): boolean {
  if (!accepted) return false;
  if ('least' in accepted) return typeof value === 'number' && value >= accepted.least && value <= accepted.most;
  return accepted.includes(value);
}
