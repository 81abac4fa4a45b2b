// npm test: engine, published tables, house rules and widgets by vitest, then the journeys over the finished site.
// npm test -- heating speed: only test files and journeys whose path holds one of the words.
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserAnswer, findBrowser, handedOver } from './browser.ts';
import { type Count, journeyFiles, runJourneys } from './journeys.ts';
import { runTool } from './tool.ts';

process.env.ASTRO_TELEMETRY_DISABLED = '1';
const words = process.argv.slice(2);
const browser = await findBrowser();
console.log('found' in browser ? `browser: ${browser.found.executablePath}` : `no browser: ${browser.reason}`);

const counts = [await runVitest(browser), await walkJourneys(browser)];
const passed = counts.reduce((sum, count) => sum + count.passed, 0);
const failed = counts.reduce((sum, count) => sum + count.failed, 0);
console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed > 0 || passed === 0 ? 1 : 0);

/** Runs the vitest projects; a run that breaks outside any test counts as one failure. */
async function runVitest(answer: BrowserAnswer): Promise<Count> {
  const folder = await mkdtemp(join(tmpdir(), 'ampere-ember-'));
  const file = join(folder, 'vitest.json');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const filter = words.length > 0 ? ['--passWithNoTests', ...words] : [];
  const env = { [handedOver]: JSON.stringify(answer) };
  try {
    const args = ['run', '--config', 'tests/vitest.config.ts', ...reporters, ...filter];
    const { code } = await runTool('vitest', 'vitest', args, { env, show: true });
    const { numPassedTests: passed, numFailedTests: failed } = await totals(file);
    return { passed, failed: code === 0 ? failed : Math.max(failed, 1) };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

interface Totals {
  numPassedTests: number;
  numFailedTests: number;
}

async function totals(file: string): Promise<Totals> {
  const text = await readFile(file, 'utf8').catch(() => '{"numPassedTests":0,"numFailedTests":0}');
  return JSON.parse(text) as Totals;
}

/** Without a browser the journeys are left out, and that is a failure where CI must run them. */
async function walkJourneys(answer: BrowserAnswer): Promise<Count> {
  const files = await journeyFiles(words);
  if (files.length === 0) return { passed: 0, failed: 0 };
  console.log(`\nJourneys (${files.length})`);
  if ('found' in answer) return await runJourneys(files, answer.found);
  const failed = process.env.CI ? files.length : 0;
  console.log(`${failed ? 'FAILED' : 'left out'}: widget tests and journeys need a browser, but ${answer.reason}`);
  return { passed: 0, failed };
}
