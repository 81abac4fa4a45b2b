import { keepsFor, lessonOf, type MemoryState, type Standing } from '#engine';

/** A lesson as pages of practice know it. */
export interface LessonWay {
  number: string;
  title: string;
  href: string;
}

/** An objective as it is told, without the number of its lesson: 'Find Zs at working temperature'. */
export function objectiveWords(objective: string): string {
  const words = objective.slice(lessonOf(objective).length + 1);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** '1 day', '3 days'. */
export const days = (count: number): string => `${count} ${count === 1 ? 'day' : 'days'}`;

/** 'keeps for about 12 days'. */
export const keepsWords = (memory: MemoryState): string => `keeps for about ${days(keepsFor(memory))}`;

/** When a day comes, seen from today: 'today', 'tomorrow', 'in 5 days'. */
export function whenWords(day: number, today: number): string {
  if (day <= today) return 'today';
  return day === today + 1 ? 'tomorrow' : `in ${days(day - today)}`;
}

/** What is still wanted before an objective is mastered, in a few words. */
export function wantingWords(standing: Standing): string {
  const { rightDays, sorts, sortsWanted, hardEnough, keeps, clear } = standing;
  if (!clear) return 'a mistake came up of late';
  if (rightDays < 3) return `right on ${rightDays} of 3 days`;
  if (sorts < sortsWanted) return 'one more sort of question to get right';
  if (!hardEnough) return 'a harder question to get right';
  return keeps ? '' : 'not yet kept for 21 days';
}
