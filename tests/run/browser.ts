// Finds a Chromium that starts here. Run by itself it says which one, and exits with 1 when there is none.
import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, rename, rm } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';
import { isMain, root } from './tool.ts';

/** What Playwright needs to start the browser that was found. */
export interface FoundBrowser {
  executablePath: string;
  args: string[];
  /** The whole environment of the browser's process, when it needs another than ours. */
  env?: Record<string, string>;
}

/** A browser, or in words why there is none. */
export type BrowserAnswer = { found: FoundBrowser } | { reason: string };

/** The variable by which a run hands the answer to the processes it starts, so that the search is not made again. */
export const handedOver = 'AMPERE_BROWSER_ANSWER';

/** The answer of the run that started this process, if there is one. */
export function answerHandedOver(): BrowserAnswer | undefined {
  const text = process.env[handedOver];
  return text ? (JSON.parse(text) as BrowserAnswer) : undefined;
}

type Environment = Record<string, string | undefined>;

/** No request but the page's own, and no look at the machine's graphics. */
const args = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Finds a browser and starts it once as proof. In this order: the path in AMPERE_CHROMIUM or CHROME_PATH and no other
 * (the word `none` wants no browser, `carried` the one of the packages), an installed Chrome or Chromium, the one that the packages carry (Linux, x64).
 */
export async function findBrowser(env: Environment = process.env): Promise<BrowserAnswer> {
  const wished = env.AMPERE_CHROMIUM ?? env.CHROME_PATH;
  if (wished === 'none') return { reason: 'AMPERE_CHROMIUM is none: no browser is wanted' };
  if (wished === 'carried') return await carriedBrowser();
  if (wished) return await firstThatStarts(waysToStart(wished));
  const installed = await firstThatStarts(installedBrowsers(env).map((executablePath) => ({ executablePath, args })));
  if ('found' in installed) return installed;
  const carried = await carriedBrowser();
  if ('found' in carried) return carried;
  return { reason: [installed.reason, carried.reason].filter(Boolean).join('; ') };
}

async function firstThatStarts(candidates: FoundBrowser[]): Promise<BrowserAnswer> {
  const reasons: string[] = [];
  for (const found of candidates) {
    const fault = await faultOnStart(found);
    if (fault === undefined) return { found };
    reasons.push(`${found.executablePath} does not start (${fault})`);
  }
  return { reason: reasons.join('; ') || 'no Chrome or Chromium is installed' };
}

/** Starts the browser, computes a sum in a page and closes it; returns what went wrong, in one line. */
async function faultOnStart(found: FoundBrowser): Promise<string | undefined> {
  if (!existsSync(found.executablePath)) return 'there is no such file';
  try {
    const browser = await chromium.launch({ ...found, timeout: 30_000 });
    try {
      const page = await browser.newPage();
      const sum = await page.evaluate('6 * 7');
      return sum === 42 ? undefined : 'its page does not run scripts';
    } finally {
      await browser.close();
    }
  } catch (fault) {
    return shortReason(String(fault));
  }
}

/** The telling line of Playwright's long message. */
function shortReason(message: string): string {
  const lines = message.split('\n').map((line) => line.trim());
  const telling = lines.find((line) => /error while loading|shared librar|cannot|No usable|ENOENT|EACCES/i.test(line));
  return (telling ?? lines[0] ?? message).replace(/^- (\[pid=\d+\])?(\[err\])?\s*/, '').slice(0, 200);
}

/** The usual places of Chrome and Chromium that exist on this machine. */
function installedBrowsers(env: Environment): string[] {
  if (process.platform === 'darwin') {
    const apps = ['Google Chrome', 'Chromium'].map((app) => `Applications/${app}.app/Contents/MacOS/${app}`);
    return ['/', env.HOME ?? '/'].flatMap((top) => apps.map((app) => join(top, app))).filter(existsSync);
  }
  if (process.platform === 'win32') {
    const tops = [env.ProgramFiles, env['ProgramFiles(x86)'], env.LOCALAPPDATA].filter((top) => top !== undefined);
    const apps = ['Google/Chrome/Application/chrome.exe', 'Chromium/Application/chrome.exe'];
    return tops.flatMap((top) => apps.map((app) => join(top, app))).filter(existsSync);
  }
  const names = ['google-chrome-stable', 'google-chrome', 'chromium', 'chromium-browser'];
  const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).filter(existsSync);
}

const unpacked = join(root, 'node_modules', '.cache', 'chromium');

/** The browser that the packages carry, unpacked once; with its own libraries where the system lacks them. */
async function carriedBrowser(): Promise<BrowserAnswer> {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    return { reason: `the packages carry no browser for ${process.platform} ${process.arch}` };
  }
  const executablePath = join(unpacked, 'chromium');
  try {
    if (!existsSync(executablePath)) await unpack();
  } catch (fault) {
    return { reason: `the carried Chromium cannot be unpacked (${shortReason(String(fault))})` };
  }
  return await firstThatStarts(waysToStart(executablePath));
}

/**
 * Unpacks the carried browser and its libraries beside the final folder, then moves it there in one step, so that two
 * runs at a time never meet half a browser. The package unpacks into the temporary folder, hence the changed TMPDIR.
 */
async function unpack(): Promise<void> {
  await mkdir(join(unpacked, '..'), { recursive: true });
  const folder = await mkdtemp(`${unpacked}-`);
  const before = { TMPDIR: process.env.TMPDIR, AWS_EXECUTION_ENV: process.env.AWS_EXECUTION_ENV };
  try {
    const { default: carried } = await import('@sparticuz/chromium');
    // the package adds its libraries only where it takes the machine for a bare one by this name
    Object.assign(process.env, { TMPDIR: folder, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs24.x' });
    await carried.executablePath();
  } finally {
    for (const [name, value] of Object.entries(before)) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
  await rename(folder, unpacked).catch((fault: unknown) => {
    if (!existsSync(unpacked)) throw fault;
  });
  await rm(folder, { recursive: true, force: true });
}

/** Our environment with the carried libraries and fonts. */
function environmentWithLibraries(): Record<string, string> {
  const libraries = [join(unpacked, 'al2023', 'lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(delimiter);
  const env: Environment = { FONTCONFIG_PATH: join(unpacked, 'fonts'), ...process.env, LD_LIBRARY_PATH: libraries };
  return Object.fromEntries(Object.entries(env).filter((pair): pair is [string, string] => pair[1] !== undefined));
}

/** As it is; and for the carried browser, second, with the carried libraries. */
function waysToStart(executablePath: string): FoundBrowser[] {
  const plain = { executablePath, args };
  return executablePath.startsWith(unpacked) ? [plain, { ...plain, env: environmentWithLibraries() }] : [plain];
}

if (isMain(import.meta.url)) {
  const answer = await findBrowser();
  console.log('found' in answer ? `browser: ${answer.found.executablePath}` : `no browser: ${answer.reason}`);
  process.exitCode = 'found' in answer ? 0 : 1;
}
