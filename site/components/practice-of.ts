import { getCollection } from 'astro:content';
import { catalogueOf, type Listed, templates } from '#engine';
import type { LessonWay } from '../widgets/spaced/words.ts';
import { under } from './rooms.ts';

/** What pages of practice are given: what can be asked, and the lessons it belongs to. */
export async function practiceOf(): Promise<{ catalogue: readonly Listed[]; lessons: readonly LessonWay[] }> {
  const catalogue = catalogueOf(Object.values(templates));
  const lessons = (await getCollection('lessons'))
    .filter(({ data }) => catalogue.some(({ lesson }) => lesson === data.number))
    .toSorted((a, b) => a.data.order - b.data.order)
    .map(({ id, data }) => ({ number: data.number, title: data.title, href: under(`lessons/${id}/`) }));
  return { catalogue, lessons };
}
