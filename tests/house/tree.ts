import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { boundaryFaults } from './boundaries.ts';
import { hygieneFaults, lengthWarning } from './hygiene.ts';
import type { Fault, SourceFile } from './source.ts';

const made = new Set(['node_modules', 'dist', '.git', '.astro', 'package-lock.json']);
const readable = /\.(ts|mjs|js|svelte|astro|mdx|md|css|json|csv|html|txt|svg|yml|yaml)$|(^|\/)(\.[\w-]+|run)$/;

/** What the rules say about all files of the project. */
export interface Findings {
  files: number;
  boundaries: Fault[];
  hygiene: Fault[];
  warnings: Fault[];
}

/** Reads every text file that is written by hand under `root` and holds it against each rule. */
export async function findings(root: string): Promise<Findings> {
  const files = await filesUnder(root);
  return {
    files: files.length,
    boundaries: files.flatMap(boundaryFaults),
    hygiene: files.flatMap(hygieneFaults),
    warnings: files.map(lengthWarning).filter((warning) => warning !== undefined),
  };
}

/** One line a fault, as an editor can follow it. */
export function faultLine({ path, line, message }: Fault): string {
  return `${path}:${line} ${message}`;
}

async function filesUnder(root: string, folder = ''): Promise<SourceFile[]> {
  const entries = await readdir(join(root, folder), { withFileTypes: true });
  const found = entries
    .filter((entry) => !made.has(entry.name))
    .map(async (entry): Promise<SourceFile[]> => {
      const path = folder ? `${folder}/${entry.name}` : entry.name;
      if (entry.isDirectory()) return await filesUnder(root, path);
      return readable.test(path) ? [{ path, text: await readFile(join(root, path), 'utf8') }] : [];
    });
  return (await Promise.all(found)).flat();
}
