import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** Pages of a printed file. */
export const pdfPages = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

/** The text of a printed file, its lines joined; undefined where this machine has no pdftotext. */
export async function pdfText(pdf: Buffer): Promise<string | undefined> {
  const folder = await mkdtemp(join(tmpdir(), 'printed-'));
  try {
    const path = join(folder, 'printed.pdf');
    await writeFile(path, pdf);
    const { stdout } = await run('pdftotext', [path, '-']);
    return stdout.replace(/\s+/g, ' ');
  } catch (error) {
    if ((error as { code?: string }).code === 'ENOENT') return undefined;
    throw error;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
