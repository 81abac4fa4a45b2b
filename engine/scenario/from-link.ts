import lz from 'lz-string';
import { type Parsed, parseScenario } from './parse.ts';

/** Longest link text read; anything longer is refused before it is unpacked. */
const longest = 20_000;

/** The scenario of a link's text, checked like any other input. */
export function scenarioFromLink(text: string): Parsed {
  const unreadable = {
    faults: [{ path: '', message: 'could not be read from this link; it may have been cut short' }],
  };
  if (text.length === 0 || text.length > longest) return unreadable;
  try {
    const json = lz.decompressFromEncodedURIComponent(text);
    return json ? parseScenario(JSON.parse(json)) : unreadable;
  } catch {
    return unreadable;
  }
}
