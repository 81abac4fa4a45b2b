import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { plainText, templates } from '#engine';
import { listedLessons, openGates, walkDown } from './support/course.ts';
import type { JourneyContext } from './support/journey.ts';

export const name =
  'on a phone the menu turns words, figures, questions and benches to North America, and a link hands it over';

const phone = { width: 360, height: 740 };
const kept = 'ampere-and-ember:practice';

export default async function journey({ open, url }: JourneyContext): Promise<void> {
  const { page, context } = await open('lessons/', phone);
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const [lesson] = await listedLessons(page);
  assert.ok(lesson);
  await page.goto(url(lesson.path), { waitUntil: 'networkidle' });
  await openGates(page);
  await walkDown(page);
  const british = await shown(page);
  await choose(page, 'N. America');
  await walkDown(page);
  const american = await shown(page);
  turned(british, american);
  await asksIn(page, 'na');

  for (const bench of ['bench/', 'bench/live/']) {
    await page.goto(url(bench), { waitUntil: 'networkidle' });
    await page.locator('main dd', { hasText: 'AWG' }).first().waitFor();
  }

  // a link opened where nothing is kept, or where the other practice is kept, shows what was sent and keeps nothing
  await page.goto(url(lesson.path), { waitUntil: 'networkidle' });
  const link = await copied(page);
  assert.match(link, /[#&]practice=na(&|$)/);
  for (const own of [null, 'iec']) {
    const other = await open('lessons/', phone);
    if (own) await other.page.evaluate(([key, value]) => localStorage.setItem(key, value), [kept, own] as const);
    await other.page.goto(link, { waitUntil: 'networkidle' });
    await openGates(other.page);
    await walkDown(other.page);
    assert.deepEqual(await shown(other.page), american, 'the link shows another page');
    await asksIn(other.page, 'na');
    assert.equal(await other.page.evaluate((key) => localStorage.getItem(key), kept), own, 'what the device keeps');
    await other.page.goto(url(lesson.path), { waitUntil: 'networkidle' });
    await openGates(other.page);
    await walkDown(other.page);
    assert.deepEqual(await shown(other.page), british, 'without the link the device stays in its own practice');
  }

  // and back again, kept from page to page
  await choose(page, 'UK, IEC');
  await page.goto(url('bench/'), { waitUntil: 'networkidle' });
  await page.locator('main dd', { hasText: 'mm²' }).first().waitFor();
  assert.equal(await page.locator('main dd', { hasText: 'AWG' }).count(), 0, 'the bench is back in mm²');
}

/** Opens the menu of the header and presses the practice. */
async function choose(page: Page, practice: string): Promise<void> {
  await page.evaluate(() => scrollTo(0, 0));
  await page.locator('summary', { hasText: 'Menu' }).click();
  const button = page.locator('details.menu').getByRole('button', { name: practice });
  await button.click();
  assert.equal(await button.getAttribute('aria-pressed'), 'true');
  await page.keyboard.press('Escape');
}

/** What the page shows of a practice: words and numbers of the prose, and each figure's title block, readings and table. */
interface Shown {
  prose: string;
  figures: string[];
}

async function shown(page: Page): Promise<Shown> {
  const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
  await page.waitForTimeout(400); // the words of a figure follow once it is at rest
  const prose = await page.locator('main article .prose > p, main article .after > p').allInnerTexts();
  const figures = await page
    .locator('main figure.sheet')
    .evaluateAll((all) =>
      all.map((figure) =>
        [...figure.querySelectorAll('dl, .reading, table')].map((part) => part.textContent ?? '').join(' '),
      ),
    );
  return { prose: plain(prose.join(' ')), figures: figures.map(plain) };
}

function turned(british: Shown, american: Shown): void {
  assert.match(british.prose, /mm²/);
  assert.doesNotMatch(british.prose, /AWG|°F/);
  assert.match(american.prose, /AWG/);
  assert.match(american.prose, /°F/);
  assert.ok(american.figures.length > 0);
  for (const [i, figure] of american.figures.entries()) {
    assert.match(figure, /AWG/, `figure ${i + 1} is not told in AWG`);
    assert.notEqual(figure, british.figures[i], `figure ${i + 1} did not follow`);
  }
}

/** Every question of the page asks what the engine asks in that practice. */
async function asksIn(page: Page, practice: 'iec' | 'na'): Promise<void> {
  const plain = (text: string) => text.replace(/\s+/g, '');
  const asked = await page
    .locator('astro-island:has([data-item^="question:"])')
    .evaluateAll((all) =>
      all.map((island) => [island.getAttribute('props') ?? '{}', island.querySelector('.stem')?.textContent ?? '']),
    );
  assert.ok(asked.length > 0, 'the page asks nothing');
  for (const [props = '', stem = ''] of asked) {
    const { template, seed } = JSON.parse(props) as Record<'template' | 'seed', [0, string]>;
    const question = templates[template[1]]?.question(seed[1], practice);
    const opening = question?.stem[0]?.filter(({ kind }) => kind !== 'formula') ?? [];
    assert.ok(plain(stem).includes(plain(plainText(opening))), `${template[1]} asks “${stem}”, not in ${practice}`);
  }
}

/** The link that the first figure of the page copies. */
async function copied(page: Page): Promise<string> {
  await openGates(page);
  const button = page.getByRole('button', { name: 'Copy link to this case' }).first();
  await button.scrollIntoViewIfNeeded();
  await page.locator('astro-island:not([ssr]):has(figure)').first().waitFor();
  await button.click();
  await page.getByRole('button', { name: 'Link copied' }).waitFor();
  return page.evaluate(() => navigator.clipboard.readText());
}
