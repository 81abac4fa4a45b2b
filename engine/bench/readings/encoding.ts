/** Encodings in which loggers write. */
export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** The decoder that browsers and Node have in common; the language itself has none. */
export interface Decoder {
  decode(bytes?: Uint8Array, options?: { stream?: boolean }): string;
}
const { TextDecoder: Decoders } = globalThis as unknown as { TextDecoder: new (encoding: string) => Decoder };

/** A decoder to be fed piece by piece; a byte order mark is left out, bytes that mean nothing become U+FFFD. */
export const decoderOf = (encoding: Encoding): Decoder => new Decoders(encoding);

/** The encoding of a whole file. */
export function encodingOf(bytes: Uint8Array): Encoding {
  const sniffer = encodingSniffer();
  sniffer.push(bytes);
  return sniffer.end();
}

/** Finds the encoding of a file that comes in pieces. */
export interface EncodingSniffer {
  push(bytes: Uint8Array): void;
  end(): Encoding;
}

/**
 * A byte order mark decides; then zeros at every other place (UTF-16). Else the bytes beyond ASCII decide: UTF-8 where more of
 * them make its sequences than break them, so that one spoilt byte does not change the file, else Windows-1252.
 */
export function encodingSniffer(): EncodingSniffer {
  let first: Encoding | null | undefined;
  const utf8 = utf8Count();
  return {
    push(bytes) {
      if (bytes.length === 0) return;
      first ??= byHead(bytes);
      if (first === null) utf8.push(bytes);
    },
    end: () => first ?? (utf8.good() >= utf8.bad() ? 'utf-8' : 'windows-1252'),
  };
}

function byHead(bytes: Uint8Array): Encoding | null {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return 'utf-8';
  if (a === 0xff && b === 0xfe) return 'utf-16le';
  if (a === 0xfe && b === 0xff) return 'utf-16be';
  const zeros = [0, 0];
  const end = Math.min(bytes.length, 4096);
  for (let i = 0; i < end; i++) if (bytes[i] === 0) zeros[i % 2] = (zeros[i % 2] as number) + 1;
  const [even, odd] = zeros as [number, number];
  if (odd > 0.3 * end && even < 0.1 * odd) return 'utf-16le';
  return even > 0.3 * end && odd < 0.1 * even ? 'utf-16be' : null;
}

/** Counts sequences of UTF-8 that hold and bytes that break them; one that the end cuts off counts for neither. */
function utf8Count() {
  let good = 0;
  let bad = 0;
  let due = 0; // continuation bytes still to come
  return {
    good: () => good,
    bad: () => bad,
    push(bytes: Uint8Array) {
      for (let i = 0; i < bytes.length; i++) {
        const byte = bytes[i] as number;
        if (byte < 0x80 && due === 0) continue;
        if (due > 0 && byte >= 0x80 && byte < 0xc0) {
          due -= 1;
          if (due === 0) good += 1;
          continue;
        }
        if (due > 0) bad += 1;
        due = byte < 0xc2 || byte > 0xf4 ? 0 : byte < 0xe0 ? 1 : byte < 0xf0 ? 2 : 3;
        if (due === 0 && byte >= 0x80) bad += 1;
      }
    },
  };
}
