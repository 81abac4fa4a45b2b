import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { accessibilityFaults } from './accessibility.ts';
import { openGates, walkDown } from './course.ts';
import type { JourneyContext } from './journey.ts';
import type { Visit } from './visit.ts';

/** How a page is looked at. */
export interface Sight {
  width: number;
  height: number;
  theme: 'light' | 'dark';
}

const phone = { width: 360, height: 740 };
const desk = { width: 1280, height: 800 };
/** Every page by day on a phone and by lamp on a desk; every other page one way more, by turns. */
const sights = (turn: number): Sight[] => [
  { ...phone, theme: 'light' },
  { ...desk, theme: 'dark' },
  ...(turn % 4 === 0 ? [{ ...phone, theme: 'dark' } as const] : []),
  ...(turn % 4 === 2 ? [{ ...desk, theme: 'light' } as const] : []),
];
/** As WCAG 1.4.12 wants text to be set apart without loss; not in drawings, where text is measured for its place. */
const spacedText = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }
  p { margin-block-end: 2em !important }
  svg, svg * { letter-spacing: normal !important; word-spacing: normal !important }`;

/**
 * Opens pages with all their answers unfolded and every figure alive: WCAG 2.2 AA by axe, nothing wider than the window (at
 * 320 px, at 200 % and with text set apart, too), the deferral at the foot, and a caution where something can be overloaded.
 */
export async function readsWell({ open }: JourneyContext, paths: readonly string[]): Promise<void> {
  const faults: string[] = [];
  for (const [turn, path] of paths.entries()) {
    const started = performance.now();
    for (const sight of sights(turn)) {
      const visit = await open(path, sight);
      await openGates(visit.page);
      await walkDown(visit.page);
      const at = `${path || 'home'} at ${sight.width} px, ${sight.theme}`;
      faults.push(...(await accessibilityFaults(visit.page)).map((fault) => `${at}: ${fault}`));
      await saysWhatItMust(visit.page, at);
      faults.push(...(await sideways(visit, at)));
      if (sight.width === phone.width && sight.theme === 'light') faults.push(...(await whenTighter(visit, path)));
      assert.deepEqual(visit.faults(), [], at);
      await visit.close();
    }
    console.log(`        ${path || 'home'} (${((performance.now() - started) / 1000).toFixed(1)} s)`);
  }
  assert.deepEqual(faults, []);
}

/** Where there is a figure, something can be overloaded. */
async function saysWhatItMust(page: Page, at: string): Promise<void> {
  const foot = ((await page.getByRole('contentinfo').textContent()) ?? '').replace(/\s+/g, ' ');
  assert.match(foot, /licensed or competent electrician decide/, `${at}: no deferral at the foot`);
  if ((await page.locator('main astro-island').count()) === 0) return;
  const cautions = page.getByRole('complementary', { name: /^Caution/ }).filter({ visible: true });
  assert.ok((await cautions.count()) > 0, `${at}: a figure, but no caution`);
}

/** Nothing, or what makes the page wider than its window. */
async function sideways(visit: Visit, at: string): Promise<string[]> {
  return (await visit.scrollsSideways()) ? [`${at}: scrolls sideways: ${(await tooWide(visit.page)).join('; ')}`] : [];
}

/** A desk at 200 %, which leaves half its width; a phone of 320 px; one of 360 px with its text set apart. */
async function whenTighter(visit: Visit, path: string): Promise<string[]> {
  const { page } = visit;
  const at = async (width: number, how = '') => {
    await page.setViewportSize({ width, height: 740 });
    await page.waitForTimeout(150);
    return sideways(visit, `${path || 'home'} at ${width} px${how}`);
  };
  const bare = [...(await at(640)), ...(await at(320))];
  await page.addStyleTag({ content: spacedText });
  return [...bare, ...(await at(360, ', text set apart'))];
}

/** What reaches over the right edge, the innermost of it; what scrolls in a frame of its own is left out. */
const tooWide = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const framed = (one: Element | null): boolean =>
      one !== null && (getComputedStyle(one).overflowX !== 'visible' || framed(one.parentElement));
    const over = [...document.querySelectorAll('body *')].filter(
      (one) =>
        one.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5 && !framed(one.parentElement),
    );
    return over
      .filter((one) => !over.some((other) => other !== one && one.contains(other)))
      .slice(0, 5)
      .map((one) => `${one.outerHTML.slice(0, 120)} in ${one.closest('[id]')?.id}`);
  });
