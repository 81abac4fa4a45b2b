import {
  decoderOf,
  type Encoding,
  encodingSniffer,
  type GuessOptions,
  guessMapping,
  type LogMapping,
  logReader,
  type ReadLog,
  thinned,
  writeLog,
} from '#engine';
import type { Pause } from '../lib/work.ts';
import type { LogAnswer, LogJob, TakenLog } from './readings.ts';

/** What is read: a file as the browser hands it over, or bytes. */
export type LogSource = Blob | ArrayBuffer;

type Share = Pause<number>;

/** Bytes of a file from one place to another; `size` is all there are. */
interface Bytes {
  readonly size: number;
  slice(from: number, to: number): Promise<Uint8Array>;
}

function bytesOf(source: LogSource): Bytes {
  if (source instanceof ArrayBuffer)
    return {
      size: source.byteLength,
      slice: async (from, to) => new Uint8Array(source, from, Math.min(to, source.byteLength) - from),
    };
  return { size: source.size, slice: async (from, to) => new Uint8Array(await source.slice(from, to).arrayBuffer()) };
}

/** Does a job in pieces of `chunk` bytes; `pause` hears how far it is, 0 to 1. */
export async function logWork(job: LogJob, chunk: number, pause: Share): Promise<LogAnswer> {
  if (job.kind === 'guess') return { mapping: await guessFile(job.source, job.options, chunk, pause) };
  const result = await readFile(job.source, job.mapping, chunk, pause);
  return job.kind === 'read' ? { result } : { taken: takenOf(result, job.most) };
}

function takenOf(result: ReadLog, most: number): TakenLog {
  const { log, every } = thinned(result.log, most);
  return { result: { ...result, log }, csv: writeLog(log), rows: result.log.t.length, every };
}

const headBytes = 1 << 18;

/** What a file seems to be. Its encoding is told by all its bytes, the rest by its head, or by the whole where that leaves doubts. */
async function guessFile(source: LogSource, options: GuessOptions, chunk: number, pause: Share): Promise<LogMapping> {
  const bytes = bytesOf(source);
  const encoding = await encodingOfAll(bytes, chunk, pause);
  const guess = async (to: number) => guessMapping(await bytes.slice(0, to), { ...options, encoding });
  const mapping = await guess(Math.min(headBytes, bytes.size));
  const inDoubt = mapping.notes.some((note) => note.includes('ambiguous'));
  return inDoubt && bytes.size > headBytes ? await guess(bytes.size) : mapping;
}

async function encodingOfAll(bytes: Bytes, chunk: number, pause: Share): Promise<Encoding> {
  const sniffer = encodingSniffer();
  for (let at = 0; at < bytes.size; at += chunk) {
    sniffer.push(await bytes.slice(at, at + chunk));
    await pause((0.2 * at) / bytes.size);
  }
  return sniffer.end();
}

/** Reads a file piece by piece. */
async function readFile(source: LogSource, mapping: LogMapping, chunk: number, pause: Share): Promise<ReadLog> {
  const bytes = bytesOf(source);
  const reader = logReader(mapping);
  const decoder = decoderOf(mapping.dialect.encoding);
  for (let at = 0; at < bytes.size; at += chunk) {
    reader.push(decoder.decode(await bytes.slice(at, at + chunk), { stream: true }));
    await pause(Math.min(1, (at + chunk) / bytes.size));
  }
  reader.push(decoder.decode());
  return reader.end();
}

/** The arrays of a log, to be handed over instead of copied. */
export function arraysOf({ log }: ReadLog): ArrayBuffer[] {
  const { t, I, U, set, step, R, P, ambient, probes } = log;
  const arrays = [t, I, U, set, step, R, P, ambient, ...probes.map(({ T }) => T)].filter((array) => array != null);
  return [...new Set(arrays.map(({ buffer }) => buffer as ArrayBuffer))];
}
