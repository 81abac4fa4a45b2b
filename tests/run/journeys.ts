import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { basename, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { type Journey, type JourneyEnding, walk } from '../journeys/support/journey.ts';
import type { FoundBrowser } from './browser.ts';
import { buildSite, serveSite } from './site.ts';
import { root } from './tool.ts';

/** How many tests of a kind held and how many did not. */
export interface Count {
  passed: number;
  failed: number;
}

const cache = join(root, 'node_modules', '.cache');
const pictures = join(cache, 'journeys');
const limit = 240_000; // of one journey [ms]
const lanes = Math.min(2, availableParallelism()); // journeys walked side by side

/** The journeys whose file names hold one of the words; all of them when there are no words. */
export async function journeyFiles(words: string[]): Promise<string[]> {
  const folder = join(root, 'tests', 'journeys');
  const names = (await readdir(folder)).filter((name) => name.endsWith('.journey.ts')).sort();
  const files = names.map((name) => join(folder, name));
  return files.filter((file) => words.length === 0 || words.some((word) => relative(root, file).includes(word)));
}

/** Builds the site into a folder of its own, serves it on a free port and walks each journey; a line each. */
export async function runJourneys(files: string[], found: FoundBrowser): Promise<Count> {
  await mkdir(cache, { recursive: true });
  const outDir = await mkdtemp(join(cache, 'site-'));
  try {
    const fault = await buildSite(outDir);
    if (fault !== undefined) {
      console.error(`${fault}\nthe site could not be built: no journey could be walked`);
      return { passed: 0, failed: files.length };
    }
    return await walkAll(files, found, outDir);
  } finally {
    await rm(outDir, { recursive: true, force: true });
  }
}

async function walkAll(files: string[], found: FoundBrowser, outDir: string): Promise<Count> {
  const served = await serveSite(4400, outDir);
  const browser = await chromium.launch(found);
  await rm(pictures, { recursive: true, force: true });
  const count = { passed: 0, failed: 0 };
  try {
    const left = [...files];
    const lane = async (): Promise<void> => {
      for (let file = left.shift(); file; file = left.shift()) count[await walkOne(file, browser, served.origin)] += 1;
    };
    await Promise.all(Array.from({ length: lanes }, lane));
  } finally {
    await browser.close();
    await served.stop();
  }
  return count;
}

async function walkOne(file: string, browser: Browser, origin: string): Promise<keyof Count> {
  const started = performance.now();
  const journey = await loadJourney(file);
  const ending = await walk(journey, browser, origin, limit);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`${ending.fault ? 'FAILED' : 'passed'}  ${journey.name} (${seconds} s)`);
  await report(file, ending);
  return ending.fault ? 'failed' : 'passed';
}

/** A file that cannot be loaded becomes a journey that fails with the reason. */
async function loadJourney(file: string): Promise<Journey> {
  const name = relative(root, file);
  try {
    const journey = (await import(pathToFileURL(file).href)) as Partial<Journey>;
    if (journey.name && journey.default) return { name: journey.name, default: journey.default };
    throw new Error('a journey exports `name` and a default function');
  } catch (fault) {
    return { name, default: () => Promise.reject(fault) };
  }
}

async function report(file: string, { fault, pictures: shots }: JourneyEnding): Promise<void> {
  if (!fault) return;
  console.error((fault.stack ?? fault.message).replace(/^/gm, '    '));
  await mkdir(pictures, { recursive: true });
  for (const [index, shot] of shots.entries()) {
    const picture = join(pictures, `${basename(file, '.journey.ts')}-${index + 1}.png`);
    await writeFile(picture, shot);
    console.error(`    page ${index + 1} at that moment: ${relative(root, picture)}`);
  }
}
