/** A room of the site, as the header lists it. `path` is under the site's base, with its closing slash. */
export interface Room {
  id: string;
  name: string;
  path: string;
}

/** The rooms that exist. */
export const rooms: readonly Room[] = [
  { id: 'lessons', name: 'Lessons', path: 'lessons/' },
  { id: 'practice', name: 'Practice', path: 'practice/' },
  { id: 'bench', name: 'Bench', path: 'bench/' },
];

/** An address under the site's base, wherever the site is served from. */
export function under(path: string): string {
  return `${import.meta.env.BASE_URL.replace(/\/*$/, '/')}${path}`;
}
