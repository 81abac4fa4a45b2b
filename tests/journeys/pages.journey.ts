import assert from 'node:assert/strict';
import { everyPage } from './support/crawl.ts';
import type { JourneyContext } from './support/journey.ts';

export const name = 'lists fetch no script, pages lead on, and the theme is kept from page to page';

export default async function journey({ open, origin }: JourneyContext): Promise<void> {
  const home = await open('', { width: 1280, height: 900 });
  const lists = (await everyPage(home.page, origin)).filter((path) => /^lessons\/(unit-\d+\/)?$/.test(path));
  assert.ok(lists.length > 1, `lists: ${lists.join(', ')}`);
  for (const path of lists) {
    const list = await open(path);
    assert.deepEqual((await list.scriptBytes()).files, [], `${path} fetched a script`);
    await list.close();
  }
  const { page } = home;
  await page.getByRole('button', { name: /Pause|Run again/ }).waitFor();
  await page.getByRole('link', { name: 'Begin with the first lesson' }).click();
  await page.getByRole('link', { name: 'The warm-up curve' }).click();
  await page.getByRole('heading', { level: 1, name: 'The warm-up curve' }).waitFor();
  await page.getByRole('link', { name: 'Bench' }).first().click();
  await page.getByRole('heading', { level: 1, name: 'The bench' }).waitFor();

  await page.getByText('Lamp', { exact: true }).first().click();
  await page.getByRole('link', { name: 'Lessons' }).first().click();
  await page.getByRole('heading', { level: 1, name: 'Lessons' }).waitFor();
  assert.equal(await page.locator('html').getAttribute('data-theme'), 'lamp');
}
