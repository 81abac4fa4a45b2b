import assert from 'node:assert/strict';
import { accessibilityFaults } from './support/accessibility.ts';
import type { JourneyContext } from './support/journey.ts';

export const name = 'home and lists read well in both themes and widths, lists fetch no script, and pages lead on';

const sizes = [
  { width: 360, height: 800 },
  { width: 1280, height: 900 },
] as const;

export default async function journey({ open }: JourneyContext): Promise<void> {
  for (const path of ['', 'lessons/', 'lessons/unit-2/']) {
    for (const theme of ['light', 'dark'] as const) {
      for (const size of sizes) {
        const visit = await open(path, { ...size, theme });
        assert.deepEqual(await accessibilityFaults(visit.page), [], `${path} at ${size.width} px, ${theme}`);
        assert.equal(await visit.scrollsSideways(), false, `${path} scrolls sideways at ${size.width} px`);
        if (path !== '') assert.deepEqual((await visit.scriptBytes()).files, [], `${path} fetched a script`);
        const deferral = await visit.page.getByRole('contentinfo').textContent();
        assert.match(deferral ?? '', /licensed or competent electrician decide/);
      }
    }
  }
  const { page } = await open('', { width: 1280, height: 900 });
  await page.getByRole('button', { name: /Pause|Run again/ }).waitFor();
  await page.getByRole('link', { name: 'Begin with the first lesson' }).click();
  await page.getByRole('link', { name: 'The warm-up curve' }).click();
  await page.getByRole('heading', { level: 1, name: 'The warm-up curve' }).waitFor();
  await page.getByRole('link', { name: 'Bench' }).first().click();
  await page.getByRole('heading', { level: 1, name: 'The bench' }).waitFor();

  // the theme is kept from page to page
  await page.getByText('Lamp', { exact: true }).first().click();
  await page.getByRole('link', { name: 'Lessons' }).first().click();
  await page.getByRole('heading', { level: 1, name: 'Lessons' }).waitFor();
  assert.equal(await page.locator('html').getAttribute('data-theme'), 'lamp');
}
