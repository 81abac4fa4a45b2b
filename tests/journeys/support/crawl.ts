import type { Page } from 'playwright-core';

/** Every page that can be reached from home by links of the same site, as paths within it, '' for home, in the order they are met. */
export async function everyPage(page: Page, origin: string): Promise<string[]> {
  return page.evaluate(async (home) => {
    const found = [home];
    for (const address of found) {
      const answer = await fetch(address);
      if (!answer.ok) throw new Error(`${address} answers ${answer.status}`);
      const text = new DOMParser().parseFromString(await answer.text(), 'text/html');
      for (const link of text.querySelectorAll('a[href]')) {
        const url = new URL(link.getAttribute('href') ?? '', address);
        url.hash = '';
        url.search = '';
        if (url.href.startsWith(home) && !found.includes(url.href)) found.push(url.href);
      }
    }
    return found.map((address) => address.slice(home.length));
  }, origin);
}
