import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { listedLessons, openGates, walkDown } from './support/course.ts';
import type { JourneyContext } from './support/journey.ts';
import type { Visit } from './support/visit.ts';

export const name = 'no lesson fetches a script before a figure is near, and none weighs more than its ceiling';

const goal = 95; // kB, gzip, all JavaScript files of a lesson together
const ceiling = 165; // kB, what is allowed until the goal is reached
const near = 200; // px below the window where a figure may begin to load
const window = { width: 360, height: 480 }; // low, so that the first figure of a short opening is below it

/** Prints what each lesson weighs once it has been scrolled through. */
export default async function journey({ open }: JourneyContext): Promise<void> {
  const list = await open('lessons/', window);
  const lessons = await listedLessons(list.page);
  assert.deepEqual((await list.scriptBytes()).files, [], 'the list fetched a script');
  const tooHeavy: string[] = [];
  console.log(`        kB of JavaScript, gzip; the goal is ${goal}, the ceiling ${ceiling}`);
  for (const { number, title, path } of lessons) {
    const visit = await open(path, window);
    await nothingFetchedEarly(visit, number);
    await openGates(visit.page);
    await walkDown(visit.page);
    const { files, gzip, raw } = await visit.scriptBytes();
    const told = `${number} ${title}: ${kB(gzip)} (${files.length} files, ${kB(raw)} raw)`;
    console.log(`        ${told}${gzip > goal * 1000 ? `, ${kB(gzip - goal * 1000)} over the goal` : ''}`);
    assert.ok(gzip > 0, `${number} fetched no script`);
    if (gzip > ceiling * 1000) tooHeavy.push(told);
    await visit.close();
  }
  assert.deepEqual(tooHeavy, [], `more than ${ceiling} kB`);
  for (const unit of new Set(lessons.map((lesson) => lesson.unit)))
    for (const walk of ['course', 'every-lesson'])
      assert.ok(
        existsSync(new URL(`./${walk}-${unit}.journey.ts`, import.meta.url)),
        `unit ${unit} wants a ${walk}-${unit}.journey.ts of its own, like those of the units before it`,
      );
}

async function nothingFetchedEarly({ page, scriptBytes }: Visit, number: string): Promise<void> {
  const first = await page.locator('astro-island').first().boundingBox();
  assert.ok(
    first && first.y > window.height + near,
    `${number}: the first figure begins at ${first?.y} px: too near to show that scripts wait`,
  );
  assert.deepEqual((await scriptBytes()).files, [], `${number}: a script is fetched before a figure is near`);
}

const kB = (bytes: number): string => (bytes / 1000).toFixed(1);
