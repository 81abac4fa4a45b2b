import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { accessibilityFaults } from './support/accessibility.ts';
import type { JourneyContext } from './support/journey.ts';
import type { Visit } from './support/visit.ts';

export const name =
  'on a phone all leads are tried behind all devices, a second run is stopped, and one case opens on the bench';

const whole = /^Of 2880 cases, \d+ have no gap/;
const done = ({ page }: Visit) => page.getByRole('status').filter({ hasText: whole }).waitFor();

/** Presses Stop in the very frame in which it shows: a run takes about a second. */
async function stopAtOnce({ page }: Visit): Promise<void> {
  await page.evaluate(() => {
    const stop = () =>
      [...document.querySelectorAll('button')].find(({ textContent }) => textContent?.trim() === 'Stop');
    const look = () => {
      const button = stop();
      if (button) button.click();
      else requestAnimationFrame(look);
    };
    look();
  });
}

export default async function journey({ open }: JourneyContext): Promise<void> {
  const plain = await open('bench/gaps/', { width: 1280, height: 900, scripts: false });
  const cells = plain.page.locator('[data-cell]');
  assert.equal(await cells.count(), 144, 'the first table stands without scripts');

  const phone = await open('bench/gaps/', { width: 360, height: 740 });
  await done(phone);
  assert.equal(await phone.scrollsSideways(), false);
  const download = phone.page.waitForEvent('download');
  await phone.page.getByRole('button', { name: 'Save all as CSV' }).click();
  const csv = await readFile(await (await download).path(), 'utf8');
  assert.equal(csv.split('\r\n').length, 1 + 2880, 'the file has every case');

  await phone.page.getByRole('radio', { name: /short circuit/ }).click();
  await stopAtOnce(phone);
  const stopped = phone.page.getByRole('status').filter({ hasText: /^Stopped at \d+ of 2880 cases/ });
  await stopped.waitFor();
  await phone.page.waitForTimeout(1000);
  assert.equal(await stopped.count(), 1, 'it stays stopped');

  await phone.page.getByRole('radio', { name: /rating/ }).click();
  await done(phone);
  await phone.page.getByRole('button', { name: /^1\.5\smm²/ }).click();
  const gap = /20\.5 to 50\sA/;
  assert.match((await phone.page.getByRole('region', { name: 'The case that is picked' }).textContent()) ?? '', gap);
  assert.deepEqual(await accessibilityFaults(phone.page), []);
  await phone.page.getByRole('link', { name: 'Open this case on the bench' }).click();
  await phone.page.waitForURL(/\/bench\/#.*bench=/);
  // the bench tells the same gap of the same case
  const verdict = phone.page.getByRole('region', { name: 'Verdict' });
  await verdict.getByText(/from 20\.5\sA to 50\sA/i).waitFor();

  const wide = await open('bench/gaps/', { width: 1280, height: 900, theme: 'dark' });
  await done(wide);
  await cells.first().waitFor();
  await wide.page.locator('[data-cell="4 1"]').click();
  assert.deepEqual(await accessibilityFaults(wide.page), []);
}
