import { listedLessons } from './support/course.ts';
import type { JourneyContext } from './support/journey.ts';
import { readsWell } from './support/reads-well.ts';

export const name = 'every lesson of unit 5, unfolded, reads well on a phone and on a desk, by day and by lamp';

export default async function journey(context: JourneyContext): Promise<void> {
  const { page } = await context.open('lessons/');
  const lessons = (await listedLessons(page)).filter(({ unit }) => unit === 5);
  await readsWell(
    context,
    lessons.map(({ path }) => path),
  );
}
