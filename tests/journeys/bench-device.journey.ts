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
const plain = (text: string | null): string => (text ?? '').replace(/\s+/g, ' ');
const textOf = async (visit: Visit): Promise<string> => plain(await verdictOf(visit).textContent());

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
    const address = url(`bench/${href}`);
    const ways = await judged(await open(address, phone), link, device);
    for (const way of ways) await mended(await open(address, phone), link, way);
  }

  // pressed on the page itself, the link opens the same case
  await bench.page.getByRole('link', { name: cases[1]?.link ?? '' }).click();
  await verdictOf(bench).waitFor();
  assert.match(await textOf(bench), /20 A breaker .* may still hold/);
}

/** Reads the verdict of an opened case; the ways to mend it, as their buttons say them. */
async function judged(visit: Visit, link: string, device: RegExp): Promise<string[]> {
  const { page } = visit;
  const verdict = verdictOf(visit);
  await verdict.waitFor();
  const text = await textOf(visit);
  assert.match(text, harmSet, `${link}: no harm set in ${text}`);
  if (/From [\d.]+ A up/.test(text)) assert.match(text, /The upper end was not found\./);
  assert.match((await page.getByRole('figure', { name: /^Behind the/ }).textContent()) ?? '', device);
  assert.equal(await visit.scrollsSideways(), false, `${link}: scrolls sideways at 360 px`);
  assert.deepEqual(await accessibilityFaults(page), []);
  const ways = (await verdict.getByRole('button').allTextContents()).map((words) => words.trim());
  assert.ok(ways.length >= 2, `${link}: ${ways.length} ways to mend it`);
  return ways;
}

/** Presses one way to mend an opened case, and reads that nothing is left to mend, there and at the address it gives. */
async function mended(visit: Visit, link: string, way: string): Promise<void> {
  const { page } = visit;
  const opened = new URL(page.url()).hash;
  await verdictOf(visit).getByRole('button', { name: way }).click();
  await page.waitForFunction((old) => location.hash !== old, opened);
  for (const one of [visit, await visit.context.newPage().then(async (again) => ({ ...visit, page: again }))]) {
    if (one.page !== page) await one.page.goto(page.url(), { waitUntil: 'networkidle' });
    await verdictOf(one)
      .getByText(/protects this lead|What is left, the rules accept/)
      .waitFor();
    // a way says so itself where no standard allows the lead even then: its heat is mended, the lead stays refused
    const says = / even then\./.test(way) ? 'No cord standard allows this lead.' : 'Nothing needs to be mended.';
    await verdictOf(one).getByText(says).waitFor();
  }
  assert.ok(
    (await textOf(visit)).includes(`On the bench now: ${plain(way)}`),
    `${link}: ${way}: the change is not said`,
  );
}
