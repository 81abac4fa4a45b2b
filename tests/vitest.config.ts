import { join } from 'node:path';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig, type TestProjectConfiguration } from 'vitest/config';
import { answerHandedOver, type FoundBrowser, findBrowser } from './run/browser.ts';
import { root } from './run/tool.ts';

/** Everything that needs no screen, in Node. */
const engine: TestProjectConfiguration = {
  root,
  test: {
    name: 'engine',
    environment: 'node',
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/widgets/**'],
    testTimeout: 60_000,
  },
};

/** Widgets and controls, in a real browser. */
function widgets(found: FoundBrowser): TestProjectConfiguration {
  return {
    root,
    plugins: [svelte({ configFile: false })],
    // all packages that a widget may reach are prepared at the start: one found later would reload the page in mid-test
    optimizeDeps: {
      entries: ['tests/widgets/**/*.test.ts', 'site/**/*.svelte', 'engine/index.ts'],
      include: ['svelte', 'vitest-browser-svelte'],
    },
    test: {
      name: 'widgets',
      include: ['tests/widgets/**/*.test.ts'],
      testTimeout: 30_000,
      browser: {
        enabled: true,
        headless: true,
        screenshotFailures: false,
        provider: playwright({ launchOptions: found }),
        instances: [{ browser: 'chromium' }],
        expect: {
          toMatchScreenshot: {
            comparatorName: 'pixelmatch',
            // another version of the browser sets its letters a shade otherwise
            comparatorOptions: { threshold: 0.2, allowedMismatchedPixelRatio: 0.002 },
            resolveScreenshotPath: ({ arg, ext, root }) =>
              join(root, 'tests', 'widgets', 'baselines', `${arg.replaceAll(' ', '-')}${ext}`),
            resolveDiffPath: ({ arg, ext, root }) =>
              join(root, 'node_modules', '.cache', 'pictures', `${arg.replaceAll(' ', '-')}${ext}`),
          },
        },
      },
    },
  };
}

export default defineConfig(async () => {
  const answer = answerHandedOver() ?? (await findBrowser());
  if ('found' in answer) return { root, test: { projects: [engine, widgets(answer.found)] } };
  if (process.env.CI) throw new Error(`the widget tests need a browser: ${answer.reason}`);
  console.warn(`Widget tests are left out, because there is no browser: ${answer.reason}`);
  return { root, test: { projects: [engine] } };
});
