import { gzipSync } from 'node:zlib';
import type { BrowserContext, Response } from 'playwright-core';

/** JavaScript files that a page fetched. */
export interface ScriptBytes {
  /** Their addresses, in the order of arrival. */
  files: string[];
  /** Together, each compressed by gzip -9 [bytes]. */
  gzip: number;
  /** Together, as they are [bytes]. */
  raw: number;
}

/** Counts every script file, worker and preloaded module of a context; call the answer to read the count. */
export function watchScripts(context: BrowserContext): () => Promise<ScriptBytes> {
  const sizes = new Map<string, Promise<{ gzip: number; raw: number }>>();
  context.on('response', (response) => {
    if (isScript(response) && !sizes.has(response.url())) sizes.set(response.url(), sizeOf(response));
  });
  return async () => {
    const all = await Promise.all(sizes.values());
    return {
      files: [...sizes.keys()],
      gzip: all.reduce((sum, { gzip }) => sum + gzip, 0),
      raw: all.reduce((sum, { raw }) => sum + raw, 0),
    };
  };
}

function isScript(response: Response): boolean {
  return response.ok() && /javascript/.test(response.headers()['content-type'] ?? '');
}

/** A body that is gone counts as nothing: its page was left before it had arrived. */
async function sizeOf(response: Response): Promise<{ gzip: number; raw: number }> {
  const body = await response.body().catch(() => Buffer.alloc(0));
  return { gzip: body.length > 0 ? gzipSync(body, { level: 9 }).length : 0, raw: body.length };
}
