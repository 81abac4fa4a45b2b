import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of package.json: every command of the project runs there. */
export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** How a command ended, with all it printed. */
export interface Ending {
  code: number;
  output: string;
}

export interface ToolOptions {
  /** Variables added to the environment. */
  env?: Record<string, string>;
  /** Print as it comes instead of keeping the output. */
  show?: boolean;
}

/**
 * Runs the command `bin` of an installed package with the Node that runs this file, in the project's folder.
 * The answer carries the exit code (1 when it was ended by a signal) and, unless shown, what it printed.
 */
export async function runTool(name: string, bin: string, args: string[], options: ToolOptions = {}): Promise<Ending> {
  const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...options.env };
  const stdio = options.show ? 'inherit' : 'pipe';
  const child = spawn(process.execPath, [commandFile(name, bin), ...args], { cwd: root, env, stdio });
  const pieces: string[] = [];
  child.stdout?.on('data', (piece: Buffer) => pieces.push(piece.toString()));
  child.stderr?.on('data', (piece: Buffer) => pieces.push(piece.toString()));
  return await new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => resolve({ code: code ?? 1, output: pieces.join('') }));
  });
}

/** The file behind a package's command, as its package.json names it. */
function commandFile(name: string, bin: string): string {
  const require = createRequire(import.meta.url);
  const file = join(root, 'node_modules', name, 'package.json');
  const { bin: commands } = require(file) as { bin: string | Record<string, string> };
  const path = typeof commands === 'string' ? commands : commands[bin];
  if (!path) throw new Error(`the package ${name} has no command ${bin}`);
  return join(dirname(file), path);
}

/** Whether this file is the one that Node was asked to run. */
export function isMain(url: string): boolean {
  return process.argv[1] === fileURLToPath(url);
}
