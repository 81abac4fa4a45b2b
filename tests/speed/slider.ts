// From a step of a slider to the painted picture, on a phone's screen with the processor slowed four times: the work of a
// frame, without the wait for one. The baseline is a page of the site that changes one word in the same way.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { type FoundBrowser, findBrowser } from '../run/browser.ts';
import { buildSite, serveSite } from '../run/site.ts';

const slowdown = 4;
const steps = 60;

/** A slider to move: where it stands and how it is called. */
interface Place {
  path: string;
  figure: string;
  slider: string;
}

const places: readonly Place[] = [
  { path: 'lessons/1.1-double-the-amps/', figure: 'heat ledger', slider: 'Current, slider' },
  { path: 'lessons/2.2-warm-up-curve/', figure: 'temperature over time', slider: 'Current, slider' },
  { path: 'bench/', figure: 'bench, with section', slider: 'Current, slider' },
];

/** Builds the site, moves each slider and prints a line a figure. Without a browser it says so. */
export async function slider(): Promise<void> {
  const answer = await findBrowser();
  if ('reason' in answer) {
    console.log(`slider to picture: left out, there is no browser (${answer.reason})`);
    return;
  }
  const outDir = await mkdtemp(join(tmpdir(), 'site-'));
  try {
    const fault = await buildSite(outDir);
    if (fault !== undefined) throw new Error(fault);
    await measureAll(answer.found, outDir);
  } finally {
    await rm(outDir, { recursive: true, force: true });
  }
}

async function measureAll(found: FoundBrowser, outDir: string): Promise<void> {
  const served = await serveSite(4460, outDir);
  const browser = await chromium.launch(found);
  try {
    console.log(`slider to painted picture, ${slowdown} times slowed, ms a step (${steps} steps)`);
    for (const { path, figure, slider: name } of places) {
      const page = await browser.newPage({ viewport: { width: 390, height: 844 }, deviceScaleFactor: 2 });
      const response = await page.goto(`${served.origin}${path}`);
      if (response?.ok()) console.log(lineOf(figure, await measured(page, name), await baseline(page)));
      await page.close();
    }
  } finally {
    await browser.close();
    await served.stop();
  }
}

const lineOf = (figure: string, { median, p95 }: Spread, base: Spread): string =>
  `  ${figure.padEnd(24)} median ${median.toFixed(1)}, p95 ${p95.toFixed(1)}; one word: median ${base.median.toFixed(1)}, p95 ${base.p95.toFixed(1)}`;

interface Spread {
  median: number;
  p95: number;
}

async function measured(page: Page, name: string): Promise<Spread> {
  // what is folded away until a prediction is made is shown without one
  for (const gate of await page.getByRole('button', { name: 'Show it without predicting' }).all()) await gate.click();
  const slider = page.getByRole('slider', { name }).first();
  await slider.scrollIntoViewIfNeeded();
  await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
  await page.waitForTimeout(800);
  await slider.evaluate((element) => element.setAttribute('data-moved', ''));
  return await slowed(page, () => stepSlider(page));
}

const baseline = (page: Page): Promise<Spread> => slowed(page, () => stepWord(page));

async function slowed(page: Page, run: () => Promise<number[]>): Promise<Spread> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  const times = (await run()).sort((a, b) => a - b);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const at = (share: number) => times[Math.floor((times.length - 1) * share)] ?? Number.NaN;
  return { median: at(0.5), p95: at(0.95) };
}

/** Each step begins with a frame, as the browser itself delivers a drag, and ends when that frame is painted. */
const stepSlider = (page: Page): Promise<number[]> =>
  page.evaluate(async (count) => {
    const slider = document.querySelector('[data-moved]') as HTMLElement;
    slider.focus();
    const times: number[] = [];
    for (let i = 0; i < count; i++) {
      const key = i % 20 < 10 ? 'ArrowRight' : 'ArrowLeft';
      times.push(
        await new Promise<number>((resolve) => {
          requestAnimationFrame(() => {
            const from = performance.now();
            slider.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => resolve(performance.now() - from);
            port2.postMessage(0);
          });
        }),
      );
      await new Promise((resolve) => setTimeout(resolve, 40));
    }
    return times;
  }, steps);

const stepWord = (page: Page): Promise<number[]> =>
  page.evaluate(async (count) => {
    const word = document.querySelector('h1') as HTMLElement;
    const times: number[] = [];
    for (let i = 0; i < count; i++) {
      times.push(
        await new Promise<number>((resolve) => {
          requestAnimationFrame(() => {
            const from = performance.now();
            word.textContent = String(i);
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => resolve(performance.now() - from);
            port2.postMessage(0);
          });
        }),
      );
      await new Promise((resolve) => setTimeout(resolve, 40));
    }
    return times;
  }, steps);
