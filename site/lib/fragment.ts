// What a picture shows stands in the address's fragment, one `name=text` a figure, so that a link hands over exactly what is
// on the screen and nothing of it reaches a server.

/** The text kept under `name` in a fragment such as '#bench=…&wire=…'; undefined where there is none. */
export function readFragment(hash: string, name: string): string | undefined {
  for (const part of hash.replace(/^#/, '').split('&')) {
    const cut = part.indexOf('=');
    if (cut > 0 && part.slice(0, cut) === name) return part.slice(cut + 1);
  }
  return undefined;
}

/** The fragment with `name` set to `text`, or without it; other parts stay as they are. */
export function withFragment(hash: string, name: string, text: string | undefined): string {
  const kept = hash
    .replace(/^#/, '')
    .split('&')
    .filter((part) => part !== '' && !part.startsWith(`${name}=`));
  const parts = text === undefined ? kept : [...kept, `${name}=${text}`];
  return parts.length > 0 ? `#${parts.join('&')}` : '';
}
