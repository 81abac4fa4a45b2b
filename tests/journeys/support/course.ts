import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';

/** A lesson as the list of lessons shows it. */
export interface Listed {
  /** '2.4'. */
  number: string;
  title: string;
  unit: number;
  /** Its path within the site: 'lessons/2.4-wound-wrapped-bundled/'. */
  path: string;
}

/** The lessons of the list that `page` shows, in its order. */
export async function listedLessons(page: Page): Promise<Listed[]> {
  const found = await page.locator('.lessons li').evaluateAll((items) =>
    items.map((item) => ({
      number: item.querySelector<HTMLElement>('[data-progress-of]')?.dataset.progressOf ?? '',
      title: item.querySelector('a')?.textContent?.trim() ?? '',
      path: (item.querySelector('a')?.pathname ?? '').replace(/^.*(?=lessons\/)/, ''),
    })),
  );
  assert.ok(found.length > 0, 'the list has no lesson');
  return found.map((lesson) => ({ ...lesson, unit: Number.parseInt(lesson.number, 10) }));
}

/** Opens every answer that is folded away until a prediction is made. */
export async function openGates(page: Page): Promise<void> {
  const gates = page.getByRole('button', { name: 'Show it without predicting' });
  while ((await gates.count()) > 0) await gates.first().click();
}

/** Brings every part of the page near the window once, and waits until each island that is shown has come alive. */
export async function walkDown(page: Page): Promise<void> {
  for (let y = 0; y < (await page.evaluate(() => document.documentElement.scrollHeight)); y += 500) {
    await page.evaluate((top) => scrollTo(0, top), y);
    await page.waitForTimeout(20);
  }
  // what belongs to the other practice is not shown, and sleeps
  await page.waitForFunction(() =>
    [...document.querySelectorAll('astro-island[ssr]')].every((island) =>
      [...island.children].every((child) => child.getClientRects().length === 0),
    ),
  );
  await page.waitForLoadState('networkidle');
}
