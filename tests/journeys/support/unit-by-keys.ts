import assert from 'node:assert/strict';
import { accessibilityFaults } from './accessibility.ts';
import { type Listed, listedLessons } from './course.ts';
import type { JourneyContext } from './journey.ts';
import { type Hands, handsOn } from './keyboard.ts';
import { type Done, throughLesson } from './lesson-by-keys.ts';

/**
 * Goes through all lessons of a unit by keyboard alone, on a desk: from home to the list, into the first, on by 'Next' to the
 * last; after that the list tells what was done in each, and a lesson that is opened again says where to go on.
 */
export async function throughUnit({ open }: JourneyContext, unit: number): Promise<void> {
  const { page } = await open('', { width: 1280, height: 800 });
  const hands = handsOn(page);
  await hands.tabTo('Begin with the first lesson', ({ label }) => label.startsWith('Begin with the first lesson'));
  await follow(hands, 'lessons/');
  const lessons = (await listedLessons(page)).filter((lesson) => lesson.unit === unit);
  const [first] = lessons;
  assert.ok(first, `unit ${unit} has no lesson`);
  await hands.tabTo(first.title, ({ label, kind }) => kind === 'link' && label === first.title);
  const done = new Map<Listed, Done>();
  for (const [i, lesson] of lessons.entries()) {
    const started = performance.now();
    await follow(hands, lesson.path);
    await pastTheHead(hands);
    const did = await throughLesson(hands);
    done.set(lesson, did);
    assert.deepEqual(await accessibilityFaults(page), [], `${lesson.number}, with everything answered`);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    console.log(`        ${lesson.number}: ${did.items.length} of ${did.of}, ${did.moved.join(', ')} (${seconds} s)`);
    assert.ok(did.right > 0 && did.wrong > 0, `${lesson.number}: answered rightly ${did.right}, wrongly ${did.wrong}`);
    if (i < lessons.length - 1) assert.equal((await hands.stop()).way, 'next');
  }
  await goOnAfterReload(hands);
  await hands.tabTo('Lessons', ({ label, kind }) => kind === 'link' && label === 'Lessons', true);
  await follow(hands, 'lessons/');
  for (const [lesson, { items, of }] of done) {
    const said = await page.locator(`[data-progress-of="${lesson.number}"]`).textContent();
    assert.equal(said, `${items.length} of ${of} done`, `the list on ${lesson.number}`);
  }
}

/** Opens the link that has the focus. */
async function follow({ page }: Hands, path: string): Promise<void> {
  await page.keyboard.press('Enter');
  await page.waitForURL((url) => url.pathname.endsWith(`/${path}`));
  await page.waitForLoadState('networkidle');
}

/** Takes the link past the head of the page, which is the first stop. */
async function pastTheHead(hands: Hands): Promise<void> {
  const { label } = await hands.tab();
  assert.equal(label, 'Skip to the page');
  await hands.press('Enter');
}

/** The last lesson, opened again: it says where the reader stopped, and leads there. */
async function goOnAfterReload(hands: Hands): Promise<void> {
  const { page } = hands;
  await page.waitForTimeout(1000); // the place is kept a moment after the page stands still
  await page.reload({ waitUntil: 'networkidle' });
  const { label } = await hands.tabTo('the way on', (stop) => stop.label.startsWith('Go on at'));
  await page.keyboard.press('Enter');
  const heading = label.replace(/^Go on at “|”$/g, '');
  const at = await page.getByRole('heading', { level: 2, name: heading, exact: true }).boundingBox();
  assert.ok(at && at.y >= 0 && at.y < 800, `“${label}” does not lead there`);
}
