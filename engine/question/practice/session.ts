import type { Random } from '../random.ts';
import type { Practice } from '../types.ts';
import { type Listed, lessonOf, objectivesOf, serving } from './catalogue.ts';
import { chanceOf, dueDay } from './memory.ts';
import type { Memory, PracticeSettings } from './review.ts';

/** A question to ask now. */
export interface Ask {
  readonly objective: string;
  readonly template: string;
  readonly lesson: string;
  readonly seed: string;
  /** Why now: it is due, it was not asked before, a lesson was chosen, or a sure answer to it was wrong a moment ago. */
  readonly why: 'due' | 'new' | 'lesson' | 'again';
}

/** What a session is planned from. */
export interface SessionPlan {
  readonly catalogue: readonly Listed[];
  readonly memories: readonly Memory[];
  /** Numbers of the lessons that were begun. */
  readonly begun: readonly string[];
  readonly today: number;
  readonly settings: PracticeSettings;
  readonly practice: Practice;
  readonly random: Random;
  /** The most questions; 8 unless given. */
  readonly most?: number;
  /** Only this lesson, whatever is due, and whether or not it was begun: nothing is ever locked. */
  readonly lesson?: string | undefined;
}

/** Questions of a session. */
export const sessionLength = 8;

type Wanted = Pick<Ask, 'objective' | 'why'>;

/**
 * What to ask now. First what is due, the least likely to be right first; then what was never asked, of lessons begun. Units are mixed, no
 * template follows itself where another will do, and each question has new numbers. Of a chosen lesson every objective is asked, and again
 * by other templates until the session is full.
 */
export function session(plan: SessionPlan): Ask[] {
  return plan.lesson === undefined ? acrossLessons(plan) : ofLesson(plan);
}

function acrossLessons(plan: SessionPlan): Ask[] {
  const asks: Ask[] = [];
  for (const group of groups(plan)) {
    let left = group;
    while (left.length > 0) {
      const next = nextOf(left, asks.at(-1), plan);
      const ask = drawn(next, asks, plan);
      asks.push(ask);
      const covered = plan.catalogue.find(({ id }) => id === ask.template)?.objectives ?? [];
      left = left.filter((one) => one !== next && !covered.includes(one.objective));
    }
  }
  return asks;
}

/** Due, then new; each cut to what there is room for before it is mixed. */
function groups({
  catalogue,
  memories,
  begun,
  today,
  settings,
  practice,
  most = sessionLength,
}: SessionPlan): Wanted[][] {
  const all = objectivesOf(catalogue, practice);
  const due = memories
    .filter((memory) => all.includes(memory.objective) && dueDay(memory, settings) <= today)
    .sort((a, b) => chanceOf(a, today) - chanceOf(b, today) || a.objective.localeCompare(b.objective));
  const known = new Set(memories.map(({ objective }) => objective));
  const fresh = all.filter((objective) => begun.includes(lessonOf(objective)) && !known.has(objective));
  return [
    due.slice(0, most).map(({ objective }) => ({ objective, why: 'due' })),
    fresh.slice(0, Math.max(0, most - due.length)).map((objective) => ({ objective, why: 'new' })),
  ];
}

/** The objectives of a lesson, the least known first, as many times round as fill a session. */
function ofLesson(plan: SessionPlan): Ask[] {
  const { catalogue, memories, today, practice, lesson, most = sessionLength } = plan;
  const chance = (objective: string) => {
    const memory = memories.find((one) => one.objective === objective);
    return memory ? chanceOf(memory, today) : 0;
  };
  const all = objectivesOf(catalogue, practice).filter((objective) => lessonOf(objective) === lesson);
  const wanted = all.sort((a, b) => chance(a) - chance(b)).map((objective): Wanted => ({ objective, why: 'lesson' }));
  const asks: Ask[] = [];
  const times = (one: Wanted) => asks.filter(({ objective }) => objective === one.objective).length;
  while (wanted.length > 0 && asks.length < most) {
    const left = wanted.toSorted((a, b) => times(a) - times(b));
    asks.push(drawn(nextOf(left, asks.at(-1), plan), asks, plan));
  }
  return asks;
}

/** What is needed to choose a template. */
type Drawing = Pick<SessionPlan, 'catalogue' | 'practice' | 'random'>;

/** The first that need not repeat the last template, of another unit than the last, and of that which has most left; else what there is. */
function nextOf(left: readonly Wanted[], last: Ask | undefined, { catalogue, practice }: Drawing): Wanted {
  const other = left.filter(({ objective }) =>
    serving(catalogue, objective, practice).some(({ id }) => id !== last?.template),
  );
  const unit = ({ objective }: Pick<Ask, 'objective'>) => objective.slice(0, 1);
  const many = (one: Wanted) => left.filter((two) => unit(two) === unit(one)).length;
  const mixed = other.filter((one) => !last || unit(one) !== unit(last)).toSorted((a, b) => many(b) - many(a));
  return mixed[0] ?? other[0] ?? (left[0] as Wanted);
}

/** A question for what is wanted: of the templates that serve it, one that was asked least in this session and not just now. */
function drawn({ objective, why }: Wanted, asks: readonly Ask[], { catalogue, practice, random }: Drawing): Ask {
  const served = serving(catalogue, objective, practice);
  const other = served.filter(({ id }) => id !== asks.at(-1)?.template);
  const times = ({ id }: Listed) => asks.filter(({ template }) => template === id).length;
  const among = other.length > 0 ? other : served;
  const least = Math.min(...among.map(times));
  const { id, lesson } = random.pick(among.filter((one) => times(one) === least));
  return { objective, template: id, lesson, seed: freshSeed(random), why };
}

/** Six letters and figures: short enough to read out. */
const freshSeed = (random: Random): string => `p-${random.whole(36 ** 5, 36 ** 6 - 1).toString(36)}`;

const later = 3; // questions on: not at once, or it would only be repeated
const mostReturns = 2; // of one objective in a session

/**
 * The session with the objective of question `at` asked once more, three questions on or at its end: for a wrong answer by one who was sure.
 * It comes back with new numbers, by another template where there is one, at most twice.
 */
export function comesBack(asks: readonly Ask[], at: number, drawing: Drawing): readonly Ask[] {
  const wrong = asks[at];
  if (!wrong) return asks;
  const returns = asks.filter(({ objective, why }) => why === 'again' && objective === wrong.objective).length;
  if (returns >= mostReturns) return asks;
  const place = Math.min(at + later, asks.length);
  const ask = drawn({ objective: wrong.objective, why: 'again' }, asks.slice(0, place), drawing);
  return [...asks.slice(0, place), ask, ...asks.slice(place)];
}
