import assert from 'node:assert/strict';
import { accessibilityFaults } from './support/accessibility.ts';
import type { JourneyContext } from './support/journey.ts';
import type { Visit } from './support/visit.ts';

export const name =
  'from a link on the bench, a suspect lead and a thin cord behind their devices are judged on a phone, and mended by a press';

const phone = { width: 360, height: 800 };

/** What a case's link opens, and what must then be read. */
const cases = [
  { link: 'A suspect lead, marked 1.5 mm², behind a 13 A plug fuse', device: /13\sA plug fuse/ },
  { link: 'An AWG 18 cord behind a 20 A breaker', device: /20\sA breaker/ },
];

const verdictOf = ({ page }: Visit) => page.getByRole('region', { name: 'Verdict', exact: true });
const textOf = async (visit: Visit): Promise<string> =>
  ((await verdictOf(visit).textContent()) ?? '').replace(/\s+/g, ' ');

/** The harm set in words: an interval in amperes, with its upper end or with the honest word that it was not found. */
const harmSet = /From [\d.]+ A (up|to [\d.]+ A), the conductor can pass \d+ °C.* while the .* may still hold\./;

export default async function journey({ open, url }: JourneyContext): Promise<void> {
  const bench = await open('bench/', phone);
  for (const { link, device } of cases) {
    const anchor = bench.page.getByRole('link', { name: link });
    const box = await anchor.boundingBox();
    assert.ok(box && box.height >= 44, `${link}: the link is ${box?.height} px high`);
    const href = (await anchor.getAttribute('href')) ?? '';
    assert.match(href, /^#bench=/);
    await judgedAndMended(open, await open(url(`bench/${href}`), phone), link, device);
  }

  // pressed on the page itself, the link opens the same case
  await bench.page.getByRole('link', { name: cases[1]?.link ?? '' }).click();
  await verdictOf(bench).waitFor();
  assert.match(await textOf(bench), /20 A breaker may still hold/);
}

/** Reads the verdict of an opened case, presses one way to mend it, and reads that nothing is left to mend. */
async function judgedAndMended(
  open: JourneyContext['open'],
  visit: Visit,
  link: string,
  device: RegExp,
): Promise<void> {
  const { page } = visit;
  const verdict = verdictOf(visit);
  await verdict.waitFor();
  const before = await textOf(visit);
  assert.match(before, harmSet, `${link}: no harm set in ${before}`);
  if (/From [\d.]+ A up/.test(before)) assert.match(before, /The upper end was not found\./);
  assert.match((await page.getByRole('figure', { name: /^Behind the/ }).textContent()) ?? '', device);
  assert.equal(await visit.scrollsSideways(), false, `${link}: scrolls sideways at 360 px`);
  assert.deepEqual(await accessibilityFaults(page), []);

  const ways = verdict.getByRole('button');
  await ways.nth(1).waitFor();
  const many = await ways.count();
  assert.ok(many >= 2, `${link}: ${many} ways to mend it`);
  const chosen = (await ways.first().textContent())?.trim() ?? '';
  const opened = new URL(page.url()).hash;
  await ways.first().click();
  await page.waitForFunction(() => document.body.textContent?.includes('Nothing needs to be mended.'));
  const after = await textOf(visit);
  assert.ok(after.includes(`On the bench now: ${chosen}`), `${link}: the change is not said: ${after}`);
  assert.match(after, /protects this lead|the rules accept/, `${link}: ${chosen} did not mend it: ${after}`);

  // the mended case is what the address now hands over
  await page.waitForFunction((old) => location.hash !== old, opened);
  const other = await open(page.url(), phone);
  await verdictOf(other).getByText('Nothing needs to be mended.').waitFor();
}
