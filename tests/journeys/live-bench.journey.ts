import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { accessibilityFaults } from './support/accessibility.ts';
import type { JourneyContext } from './support/journey.ts';
import type { Visit } from './support/visit.ts';

export const name =
  'a lead is loaded on the live bench until its abort contact opens, cools, and its log is noted and taken away';

const button = ({ page }: Visit, label: string) => page.getByRole('button', { name: label, exact: true });
const knob = ({ page }: Visit) => page.getByRole('slider', { name: 'Supply current' });

/** Loads the lead with 29 A at 60× until the contact opens. */
async function untilItOpens(visit: Visit): Promise<void> {
  const { page } = visit;
  await knob(visit).focus();
  await page.keyboard.press('PageUp');
  await page.keyboard.press('PageUp');
  await page.keyboard.press('ArrowUp');
  assert.equal(await knob(visit).getAttribute('aria-valuenow'), '29');
  await page.getByRole('radio', { name: '60×' }).click();
  await button(visit, 'Run').click();
  await page.locator('[data-contact="open"]:visible').waitFor();
  await page.getByText(/^Abort limit passed at \d+:\d\d$/).waitFor();
}

/** Writes a reading down, notes something beside it and saves the log; returns the file. */
async function takeLogAway(visit: Visit): Promise<string> {
  const { page } = visit;
  await button(visit, 'Record reading').click();
  await page
    .getByRole('textbox', { name: /^Note at/ })
    .first()
    .fill('cooling, contact open');
  const download = page.waitForEvent('download');
  await button(visit, 'Export CSV').click();
  const file = await download;
  assert.equal(file.suggestedFilename(), 'live-bench-log.csv');
  return readFile(await file.path(), 'utf8');
}

export default async function journey({ open }: JourneyContext): Promise<void> {
  const plain = await open('bench/live/', { width: 1280, height: 900, scripts: false });
  assert.match((await plain.page.locator('.circuit dl').first().textContent()) ?? '', /18\.00/);
  assert.ok(
    await plain.page.locator('[data-lead]:visible').first().isVisible(),
    'the circuit is drawn without scripts',
  );

  for (const [width, theme] of [
    [360, 'light'],
    [360, 'dark'],
    [1280, 'light'],
    [1280, 'dark'],
  ] as const) {
    const visit = await open('bench/live/', { width, height: 800, theme });
    const at = `at ${width} px, ${theme}`;
    await untilItOpens(visit);
    const csv = await takeLogAway(visit);
    assert.match(csv, /^time_ISO,elapsed_s,step,I_set_A,/);
    assert.match(csv, /abort limit passed: conductor 70 °C/);
    assert.match(csv, /cooling, contact open/);
    assert.equal(await visit.scrollsSideways(), false, `scrolls sideways with a log ${at}`);
    assert.deepEqual(await accessibilityFaults(visit.page), [], `tripped, ${at}`);
  }

  // on a phone Pause and Supply off stay in sight wherever the page is
  const phone = await open('bench/live/', { width: 360, height: 740 });
  await button(phone, 'Run').click();
  for (const y of [0, 900, 1800]) {
    await phone.page.evaluate((top) => scrollTo(0, top), y);
    for (const label of ['Pause', 'Supply off']) {
      const box = await button(phone, label).boundingBox();
      assert.ok(box && box.y >= 0 && box.y + box.height <= 740, `${label} is out of sight at ${y}`);
      assert.ok(box.height >= 44, `${label} is ${box.height} px high`);
    }
  }
  await button(phone, 'Supply off').click();
  assert.equal(await knob(phone).getAttribute('aria-valuenow'), '0');

  // the same case on both pages
  const bench = await open('bench/', { width: 1280, height: 900 });
  const field = bench.page.getByRole('textbox', { name: 'Current', exact: true });
  await field.fill('12');
  await field.press('Enter');
  await bench.page.waitForFunction(() => location.hash.startsWith('#bench='));
  const live = await open(`bench/live/${new URL(bench.page.url()).hash}`, { width: 1280, height: 900 });
  assert.equal(await knob(live).getAttribute('aria-valuenow'), '12');
  await live.page.getByRole('link', { name: 'Change the case' }).click();
  await live.page.waitForURL(/\/bench\/#bench=/);
  await live.page.waitForLoadState('networkidle'); // a link is read by a script of its own
  const current = live.page.getByRole('textbox', { name: 'Current', exact: true });
  assert.equal(await current.inputValue(), '12.0');

  // and the bench's own link leads to the live one with its case
  await bench.page.getByRole('link', { name: 'Load it live' }).click();
  await bench.page.waitForURL(/\/bench\/live\/#bench=/);
  await bench.page.waitForLoadState('networkidle');
  assert.equal(await knob(bench).getAttribute('aria-valuenow'), '12');
}
