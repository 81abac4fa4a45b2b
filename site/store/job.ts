import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { type BenchJob, parseJob } from '#engine';

// The bench job of this device, in IndexedDB: there is one at a time, which can be saved as a file and opened again. It never leaves
// the device by itself.

interface Kept extends DBSchema {
  jobs: { key: string; value: unknown };
  pictures: { key: string; value: Blob };
}

const current = 'current';
let opened: Promise<IDBPDatabase<Kept> | undefined> | undefined;

/** The database; undefined where the browser keeps nothing (a private window, blocked storage). */
function database(): Promise<IDBPDatabase<Kept> | undefined> {
  opened ??= openDB<Kept>('ampere-and-ember', 1, {
    upgrade(db) {
      db.createObjectStore('jobs');
      db.createObjectStore('pictures');
    },
    terminated() {
      opened = undefined;
    },
  }).catch(() => undefined);
  return opened;
}

/** The job as it was kept; undefined where there is none, or none that can be read. */
export async function keptJob(): Promise<BenchJob | undefined> {
  const db = await database();
  const found = await db?.get('jobs', current).catch(() => undefined);
  return found === undefined ? undefined : parseJob(found).job;
}

/** Keeps the job in the place of the one before. False where this browser keeps nothing. */
export async function keepJob(job: BenchJob): Promise<boolean> {
  const db = await database();
  if (!db) return false;
  return db.put('jobs', job, current).then(
    () => true,
    () => false,
  );
}

/** Puts a picture beside the job, under its id. */
export async function keepPicture(id: string, picture: Blob): Promise<boolean> {
  const db = await database();
  if (!db) return false;
  return db.put('pictures', picture, id).then(
    () => true,
    () => false,
  );
}

/** A picture by its id; undefined where it is not kept. */
export async function keptPicture(id: string): Promise<Blob | undefined> {
  const db = await database();
  return db?.get('pictures', id).catch(() => undefined);
}

/** Forgets the job and its pictures. */
export async function forgetJob(): Promise<void> {
  const db = await database();
  await Promise.all([db?.clear('jobs'), db?.clear('pictures')]);
}
