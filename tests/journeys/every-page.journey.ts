import assert from 'node:assert/strict';
import { everyPage } from './support/crawl.ts';
import type { JourneyContext } from './support/journey.ts';
import { readsWell } from './support/reads-well.ts';

export const name = 'every page that links lead to reads well on a phone and on a desk, by day and by lamp';

/** The lessons have journeys of their own, a unit each. */
export default async function journey(context: JourneyContext): Promise<void> {
  const { page } = await context.open('');
  const pages = await everyPage(page, context.origin);
  const others = pages.filter((path) => !/^lessons\/\d/.test(path));
  assert.ok(others.includes('lessons/') && others.includes('bench/live/'), `links lead to ${pages.join(', ')}`);
  await readsWell(context, others);
}
