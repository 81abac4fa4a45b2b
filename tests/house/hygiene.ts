import type { Fault, SourceFile } from './source.ts';

/** A path that only one person's machine has. Built of parts, so that the pattern is no such path itself. */
const machinePath = /(?<![\w.~-])\/(?:home|root|Users|tmp|work)\/[\w.-]+|\b[A-Z]:\\Users\\/;

const longest = 400; // lines of code in one file

/** Machine paths, unfinished marks, names against the custom, and merge marks. */
export function hygieneFaults(file: SourceFile): Fault[] {
  const faults: Fault[] = [];
  for (const [index, line] of file.text.split('\n').entries()) {
    const message = lineFault(line);
    if (message) faults.push({ path: file.path, line: index + 1, message });
  }
  const name = nameFault(file.path);
  return name ? [...faults, { path: file.path, line: 1, message: name }] : faults;
}

function lineFault(line: string): string | undefined {
  const path = line.match(machinePath)?.[0];
  if (path) return `${path} is a path of one machine`;
  if (/\b(?:TO)DO\b|\b(?:FIX)ME\b/.test(line)) return 'an unfinished mark';
  if (/^(?:<{7}|>{7}) /.test(line)) return 'a merge mark';
  return undefined;
}

/** Components are named in PascalCase, everything else in the four rooms in lower case. */
function nameFault(path: string): string | undefined {
  if (!/^(engine|site|lessons|tests)\//.test(path)) return undefined;
  const name = path.split('/').at(-1) ?? '';
  if (name.endsWith('.svelte'))
    return /^[A-Z]\w*\.svelte$/.test(name) ? undefined : 'a component is named in PascalCase';
  if (!/\.(ts|mjs|css|mdx)$/.test(name)) return undefined;
  return /^[a-z0-9.-]+$/.test(name) ? undefined : 'a file is named in kebab-case';
}

/** A code file that has grown past what one reads in one go: a warning, no fault. */
export function lengthWarning(file: SourceFile): Fault | undefined {
  if (!/\.(ts|mjs|svelte|astro|css|mdx)$/.test(file.path)) return undefined;
  const lines = file.text.split('\n').length - 1;
  if (lines <= longest) return undefined;
  return { path: file.path, line: longest, message: `${lines} lines: longer than ${longest}, split it` };
}
