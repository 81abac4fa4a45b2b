import assert from 'node:assert/strict';
import { accessibilityFaults } from './support/accessibility.ts';
import type { JourneyContext } from './support/journey.ts';

export const name =
  'every lesson can be practised, in both practices, by keyboard, and where the browser keeps nothing';

export default async function journey({ open }: JourneyContext): Promise<void> {
  const visit = await open('practice/', { width: 360, height: 740 });
  const { page } = visit;
  const lessons = await page
    .locator('.start li a')
    .evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
  assert.ok(lessons.length >= 16, `the page lists ${lessons.length} lessons`);
  for (const [i, href] of lessons.entries()) {
    await page.evaluate((to) => location.assign(to), href);
    await page.getByRole('heading', { name: `Lesson ${href.split('=')[1]}` }).waitFor();
    await page.evaluate(
      (to) => document.querySelector<HTMLButtonElement>(`[data-set-practice="${to}"]`)?.click(),
      i % 2 === 0 ? 'iec' : 'na',
    );
    await page.getByRole('button', { name: 'Begin' }).focus();
    await page.keyboard.press('Enter');
    await page.getByText('Question 1 of 8').waitFor();
    // from the head of the room the next stop is how sure one is
    await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowRight');
    assert.equal(await page.getByRole('radio', { name: 'Think so' }).isChecked(), true, href);
    assert.equal(await visit.scrollsSideways(), false, `${href} scrolls sideways`);
    if (i % 5 === 0) assert.deepEqual(await accessibilityFaults(page), [], href);
  }
  const { files, gzip } = await visit.scriptBytes();
  console.log(
    `        all lessons practised: ${(gzip / 1000).toFixed(0)} kB of JavaScript, gzip, ${files.length} files`,
  );
  await withoutKeeping(await open('lessons/'));
}

async function withoutKeeping({ page }: Awaited<ReturnType<JourneyContext['open']>>): Promise<void> {
  await page.addInitScript(() => {
    Storage.prototype.getItem = Storage.prototype.setItem = () => {
      throw new DOMException('blocked', 'SecurityError');
    };
  });
  await page.goto(new URL('../practice/#lesson=1.2', page.url()).href, { waitUntil: 'networkidle' });
  await page.getByText('This browser keeps nothing.').waitFor();
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.getByText('Question 1 of 8').waitFor();
  await page.goto(new URL('mine/', page.url()).href, { waitUntil: 'networkidle' });
  await page.getByText('This browser keeps nothing').waitFor();
}
