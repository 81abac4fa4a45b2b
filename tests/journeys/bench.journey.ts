import assert from 'node:assert/strict';
import { accessibilityFaults } from './support/accessibility.ts';
import type { JourneyContext } from './support/journey.ts';
import type { Visit } from './support/visit.ts';

export const name =
  'a 20 m lead of a metal typed in by hand is set up on the bench, and its link shows another the same numbers';

/** The readings as they stand on the page. */
async function readings({ page }: Visit): Promise<string[]> {
  return page.locator('.readings .figure').allTextContents();
}

/** Types into the field of a control and leaves it. */
async function type({ page }: Visit, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true });
  await field.fill(text);
  await field.press('Enter');
}

export default async function journey({ open, url }: JourneyContext): Promise<void> {
  const bench = await open('bench/', { width: 360, height: 800 });
  const { page } = bench;
  const before = await readings(bench);
  assert.equal(before.length, 5, 'five readings');
  assert.equal(await bench.scrollsSideways(), false, 'the bench scrolls sideways at 360 px');

  await page.getByRole('radio', { name: 'by own values' }).click();
  await page.getByLabel('Metal', { exact: true }).selectOption({ label: 'another metal, by its values' });
  await type(bench, 'Name of the metal', 'grey wire from the shed');
  await type(bench, 'Resistivity at 20 °C', '47,5');
  await type(bench, 'Rise of resistance per kelvin', '0.0036');
  await type(bench, 'Length', '20');
  await type(bench, 'Current', '11');
  const after = await readings(bench);
  assert.notDeepEqual(after, before, 'the readings did not follow the new lead');
  assert.match((await page.locator('.facts').textContent()) ?? '', /grey wire from the shed/);

  await page.waitForFunction(() => location.hash.startsWith('#bench='));
  await page.waitForTimeout(400);
  const link = page.url();
  const other = await open(link, { width: 1280, height: 900, theme: 'dark' });
  await other.page.waitForFunction(
    (want) => document.querySelector('.readings .figure')?.textContent?.trim() === want.trim(),
    after[0] ?? '',
  );
  assert.deepEqual(await readings(other), after, 'the link shows other numbers');
  assert.equal(await other.page.getByRole('textbox', { name: 'Resistivity at 20 °C' }).inputValue(), '47.5');

  // what cannot be is said in words, and the last good picture stays
  await page.getByRole('radio', { name: 'strands' }).click();
  await type(bench, 'Strands', '2000');
  const lastGood = await readings(bench);
  await type(bench, 'Diameter of one strand', '5');
  const alert = (await page.getByRole('alert').textContent()) ?? '';
  assert.match(alert, /strands/, alert);
  assert.deepEqual(await readings(bench), lastGood, 'a case that cannot be moved the readings');

  for (const visit of [bench, other]) {
    const faults = await accessibilityFaults(visit.page);
    assert.deepEqual(faults, []);
  }

  const broken = await open(url('bench/#bench=zzzz'), { width: 768, height: 900 });
  await broken.page.getByRole('alert').waitFor();
  assert.match((await broken.page.getByRole('alert').textContent()) ?? '', /link/);
  assert.deepEqual(await readings(broken), before, 'a broken link should leave the case of the page');

  const plain = await open('bench/', { width: 1280, height: 900, scripts: false });
  assert.deepEqual(await readings(plain), before, 'without scripts the numbers should stand');
  assert.ok(await plain.page.locator('svg').first().isVisible());
}
