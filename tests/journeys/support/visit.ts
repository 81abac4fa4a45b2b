import type { Browser, BrowserContext, Page } from 'playwright-core';
import { type ScriptBytes, watchScripts } from './scripts.ts';

export interface VisitOptions {
  /** Of the window [CSS px]; 1280 by 800 when not given. */
  width?: number;
  height?: number;
  /** The colour scheme the system asks for; light when not given. */
  theme?: 'light' | 'dark';
  /** Ask for less motion, as the system setting does. On when not given, so that pictures stand still. */
  reducedMotion?: boolean;
  /** Run no script at all: what a page says before any script. */
  scripts?: boolean;
}

/** One page in a browser context of its own, with what it did behind the scenes. */
export interface Visit {
  page: Page;
  context: BrowserContext;
  /** Errors in the console or thrown, files that failed, and requests to other hosts, one line each. */
  faults(): string[];
  /** Takes faults that match out of the account: for a journey that provokes one. */
  allow(pattern: RegExp): void;
  /** The JavaScript files fetched up to now. */
  scriptBytes(): Promise<ScriptBytes>;
  /** True when the page is wider than its window, so that it scrolls sideways. */
  scrollsSideways(): Promise<boolean>;
  close(): Promise<void>;
}

/** Opens `url` and waits until it is loaded and the network is quiet. */
export async function openVisit(
  browser: Browser,
  url: string,
  origin: string,
  options: VisitOptions = {},
): Promise<Visit> {
  const context = await browser.newContext({
    viewport: { width: options.width ?? 1280, height: options.height ?? 800 },
    colorScheme: options.theme ?? 'light',
    reducedMotion: (options.reducedMotion ?? true) ? 'reduce' : 'no-preference',
    javaScriptEnabled: options.scripts ?? true,
    acceptDownloads: true,
  });
  context.setDefaultTimeout(10_000);
  const faults = await watchFaults(context, new URL(origin).host);
  const scriptBytes = watchScripts(context);
  const page = await context.newPage();
  await page.goto(url, { waitUntil: 'networkidle', timeout: 30_000 });
  const allowed: RegExp[] = [];
  return {
    page,
    context,
    faults: () => faults.filter((fault) => !allowed.some((pattern) => pattern.test(fault))),
    allow: (pattern) => void allowed.push(pattern),
    scriptBytes,
    scrollsSideways: () =>
      page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth),
    close: () => context.close(),
  };
}

/** Writes down what goes wrong in any page or worker of the context. A request to another host never leaves. */
async function watchFaults(context: BrowserContext, host: string): Promise<string[]> {
  const faults: string[] = [];
  context.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  context.on('weberror', (error) => faults.push(`thrown: ${error.error().message}`));
  context.on('response', (response) => {
    if (response.status() >= 400) faults.push(`answer ${response.status()}: ${response.url()}`);
  });
  context.on('requestfailed', (request) => {
    const reason = request.failure()?.errorText ?? 'failed';
    // a request that a navigation cut short is no fault
    if (reason !== 'net::ERR_ABORTED') faults.push(`request ${reason}: ${request.url()}`);
  });
  await context.route(
    (url) => /^(https?|wss?):$/.test(url.protocol) && url.host !== host,
    async (route) => {
      faults.push(`request to another host: ${route.request().url()}`);
      await route.abort('blockedbyclient');
    },
  );
  return faults;
}
