import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';

/** What has the keyboard, as much of it as a journey must know. */
export interface Stop {
  kind: 'nothing' | 'link' | 'button' | 'submit' | 'text' | 'lines' | 'radio' | 'range' | 'reading line' | 'other';
  /** Its name, as a reader hears it, shortened. */
  label: string;
  /** What of the notebook it belongs to: 'prediction:doubled', 'question:q02', 'words:why-squared'. */
  item?: string;
  /** The figure it stands in, by its id. */
  figure?: string;
  /** 'next' and 'prev' of the ways to other lessons. */
  way?: string;
  /** For a button that moves a thing in a list: 'copper -1'. */
  moves?: string;
  /** What a field holds, or a radio button stands for. */
  value: string;
  /** A group of radio buttons of which one is chosen. */
  chosen: boolean;
  /** Its island has not come alive yet. */
  waiting: boolean;
  /** Some of it is inside the window. */
  inWindow: boolean;
  /** It, or a frame close around it, is outlined. */
  outlined: boolean;
  /** Alike for controls that look alike, so that one of each is looked at closely. */
  look: string;
}

/** A reader who has a keyboard and nothing else. Each key is followed by a look at where the focus has gone. */
export interface Hands {
  page: Page;
  /** What has the keyboard now. */
  stop(): Promise<Stop>;
  /** To the next stop, or back to the one before; it must be there to be seen. */
  tab(back?: boolean): Promise<Stop>;
  /** Presses a key (so many times), and sees that the focus is still somewhere. */
  press(key: string, times?: number): Promise<Stop>;
  type(text: string): Promise<Stop>;
  /** Tabs until `wanted` has the keyboard. */
  tabTo(what: string, wanted: (stop: Stop) => boolean, back?: boolean): Promise<Stop>;
}

const most = 400; // stops on the way to one thing

/** Hands on the keys of a page. */
export function handsOn(page: Page): Hands {
  const looked = new Set<string>();

  async function tab(back = false): Promise<Stop> {
    await page.keyboard.press(back ? 'Shift+Tab' : 'Tab');
    const stop = await stopOf(page);
    if (stop.kind !== 'nothing') await seen(page, stop, looked);
    return stop;
  }

  async function after(did: string): Promise<Stop> {
    await frames(page);
    const stop = await stopOf(page);
    assert.notEqual(stop.kind, 'nothing', `the focus is lost after ${did} (${new URL(page.url()).pathname})`);
    return stop;
  }

  return {
    page,
    stop: () => stopOf(page),
    tab,
    async press(key, times = 1) {
      const { label } = await stopOf(page);
      for (let i = 0; i < times; i++) await page.keyboard.press(key);
      return after(`${key} on “${label}”`);
    },
    async type(text) {
      await page.keyboard.type(text);
      return after(`typing ${text}`);
    },
    async tabTo(what, wanted, back) {
      for (let i = 0; i < most; i++) {
        const stop = await tab(back);
        if (wanted(stop)) return stop;
      }
      throw new Error(`${what} is not reached by ${most} presses of Tab`);
    },
  };
}

/** Two frames: what a key set off has been drawn. */
async function frames(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

/** A stop must be in the window, and must show that it has the keyboard. */
async function seen(page: Page, stop: Stop, looked: Set<string>): Promise<void> {
  const where = `“${stop.label}” (${stop.look}, ${new URL(page.url()).pathname})`;
  assert.ok(stop.inWindow, `${where} has the keyboard out of sight`);
  if (stop.outlined || looked.has(stop.look)) return;
  looked.add(stop.look);
  assert.ok(await looksFocused(page), `${where} does not show that it has the keyboard`);
}

/** Whether the picture around the focused element changes when the focus leaves it. */
async function looksFocused(page: Page): Promise<boolean> {
  const element = (await page.evaluateHandle(() => document.activeElement)).asElement();
  const box = await element?.boundingBox();
  const size = page.viewportSize();
  if (!element || !box || !size) return false;
  const [left, top] = [Math.max(0, box.x - 24), Math.max(0, box.y - 24)];
  const width = Math.min(size.width, box.x + box.width + 24) - left;
  const height = Math.min(size.height, box.y + box.height + 24) - top;
  const shot = () => page.screenshot({ clip: { x: left, y: top, width, height } });
  const held = await shot();
  await element.evaluate((node) => (node as HTMLElement).blur());
  await frames(page);
  const left_ = await shot();
  await element.evaluate((node) => (node as HTMLElement).focus({ preventScroll: true }));
  await frames(page);
  return !held.equals(left_);
}

/** Runs in the page: reads what has the keyboard. */
async function stopOf(page: Page): Promise<Stop> {
  return page.evaluate(() => {
    const node = document.activeElement as HTMLElement | null;
    if (!node || node === document.body || node === document.documentElement)
      return {
        kind: 'nothing',
        label: '',
        value: '',
        chosen: false,
        waiting: false,
        inWindow: false,
        outlined: false,
        look: '',
      };
    const input = node instanceof HTMLInputElement ? node : undefined;
    const button = node instanceof HTMLButtonElement ? node : undefined;
    const byType: Record<string, Stop['kind']> = { radio: 'radio', range: 'range', text: 'text' };
    const kind: Stop['kind'] = input
      ? (byType[input.type] ?? 'other')
      : button
        ? button.type === 'submit'
          ? 'submit'
          : 'button'
        : node instanceof HTMLAnchorElement
          ? 'link'
          : node instanceof HTMLTextAreaElement
            ? 'lines'
            : node.getAttribute('role') === 'slider'
              ? 'reading line'
              : 'other';
    const words =
      node.getAttribute('aria-label') ??
      input?.labels?.[0]?.textContent ??
      // biome-ignore lint/performance/useDomNodeTextContent: what is shown, without what the style sheet hides
      (node as HTMLElement).innerText ??
      node.textContent ??
      '';
    const figure = node.closest('figure');
    const item =
      node.closest<HTMLElement>('[data-item]')?.dataset.item ??
      figure?.querySelector<HTMLElement>('[data-item]')?.dataset.item;
    const box = node.getBoundingClientRect();
    const shell = kind === 'radio' ? (node.closest('label') ?? node).getBoundingClientRect() : box;
    const outlined = (element: Element | null, levels: number): boolean => {
      if (!element) return false;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      if (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) > 0) return true;
      return levels > 0 && outlined(element.parentElement, levels - 1);
    };
    const group = input?.type === 'radio' ? [...document.getElementsByName(input.name)] : [];
    return {
      kind,
      label: words.replace(/\s+/g, ' ').trim().slice(0, 80),
      ...(item !== undefined && { item }),
      ...(figure && { figure: figure.id }),
      ...(node instanceof HTMLAnchorElement && node.rel !== '' && { way: node.rel }),
      ...(node.dataset.move !== undefined && { moves: node.dataset.move }),
      value: input?.value ?? (node instanceof HTMLTextAreaElement ? node.value : ''),
      chosen: group.some((one) => (one as HTMLInputElement).checked),
      waiting: node.closest('astro-island[ssr]') !== null,
      inWindow: shell.bottom > 0 && shell.top < innerHeight && shell.right > 0 && shell.left < innerWidth,
      outlined: outlined(node, 3),
      look: `${node.localName} ${input?.type ?? ''} ${node.className}`.trim(),
    };
  });
}
