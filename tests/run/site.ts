import { preview } from 'astro';
import { root, runTool } from './tool.ts';

/** A finished site being served. */
export interface Served {
  /** Where it stands, with its base path, ending in a slash. */
  origin: string;
  stop(): Promise<void>;
}

/**
 * Builds the site into `outDir` (dist when not given). Returns undefined when it worked, else what the build printed.
 */
export async function buildSite(outDir?: string): Promise<string | undefined> {
  const env = outDir ? { OUT_DIR: outDir } : undefined;
  const { code, output } = await runTool('astro', 'astro', ['build'], { env });
  return code === 0 ? undefined : output;
}

/** Serves the built site on this machine alone, at `port` or the next one that is free. */
export async function serveSite(port: number, outDir?: string): Promise<Served> {
  if (outDir) process.env.OUT_DIR = outDir;
  const host = 'localhost';
  const server = await preview({ root, server: { port, host }, logLevel: 'error' });
  const base = `/${process.env.BASE_PATH ?? ''}/`.replace(/\/+/g, '/');
  return { origin: `http://${host}:${server.port}${base}`, stop: () => server.stop() };
}

/** The one line of a failed build that says what is wrong. */
export function reasonOf(output: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the colours of a terminal begin with one
  const plain = output.replace(/\u001b\[[0-9;]*m/g, '');
  const lines = plain.split('\n').map((line) => line.replace(/^.*\[ERROR\]\s*/, '').trim());
  const telling = lines.filter((line) => line !== '' && !/^\[vite\]\W*Build failed in/.test(line));
  const named = telling.find((line) => /error|failed|cannot|could not|not found|expected/i.test(line));
  return named ?? telling.at(-1) ?? 'no message was printed';
}
