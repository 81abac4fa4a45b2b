import type { Browser } from 'playwright-core';
import { openVisit, type Visit, type VisitOptions } from './visit.ts';

/** What a journey is given. */
export interface JourneyContext {
  /** For a second browser context of one's own; `open` is the usual way in. */
  browser: Browser;
  /** Where the site under test stands, ending in a slash. */
  origin: string;
  /** The whole address of a page: `url('lessons/')`. A whole address passes through. */
  url(path?: string): string;
  /** Opens a page in a new browser context: nothing is stored yet, and nothing is shared with other visits. */
  open(path: string, options?: VisitOptions): Promise<Visit>;
}

/** What a file tests/journeys/*.journey.ts exports: its `name`, a sentence, and the walk itself as default. */
export interface Journey {
  name: string;
  default: (context: JourneyContext) => Promise<void>;
}

/** What came of a journey: the fault that ended it, and pictures of the pages open at that moment. */
export interface JourneyEnding {
  fault?: Error;
  pictures: Buffer[];
}

/**
 * Walks one journey and closes all it opened. A page that logged an error, missed a file or asked another host for
 * anything is a fault, too, unless the visit allowed it. A walk longer than `limit` [ms] is given up.
 */
export async function walk(journey: Journey, browser: Browser, origin: string, limit: number): Promise<JourneyEnding> {
  const visits: Visit[] = [];
  const url = (path = '') => new URL(path.replace(/^\/+/, ''), origin).href;
  const open = async (path: string, options?: VisitOptions) => {
    const visit = await openVisit(browser, url(path), origin, options);
    visits.push(visit);
    return visit;
  };
  try {
    await within(limit, journey.default({ browser, origin, url, open }));
    const faults = visits.flatMap((visit) => visit.faults());
    if (faults.length > 0) throw new Error(`a page complained:\n${faults.join('\n')}`);
    return { pictures: [] };
  } catch (thrown) {
    const fault = thrown instanceof Error ? thrown : new Error(String(thrown));
    return { fault, pictures: await picturesOf(visits) };
  } finally {
    await Promise.all(visits.map((visit) => visit.close()));
  }
}

async function within(limit: number, work: Promise<void>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`not finished after ${limit / 1000} s`)), limit);
  });
  await Promise.race([work, late]).finally(() => clearTimeout(timer));
}

/** A page that cannot be drawn any more must not hide the fault itself. */
async function picturesOf(visits: Visit[]): Promise<Buffer[]> {
  const shots = await Promise.allSettled(visits.map(({ page }) => page.screenshot({ timeout: 5000 })));
  return shots.flatMap((shot) => (shot.status === 'fulfilled' ? [shot.value] : []));
}
