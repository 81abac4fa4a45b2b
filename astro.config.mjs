import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import svelte from '@astrojs/svelte';
import { defineConfig } from 'astro/config';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';

/** A formula that cannot be set stops the build: rehype-katex itself only records the error and prints the source in red. */
function failOnMath() {
  return (_tree, file) => {
    const bad = file.messages.filter((message) => message.source === 'rehype-katex');
    if (bad.length === 0) return;
    const places = bad.map(({ line, column, cause, reason }) => `${line}:${column} ${cause?.message ?? reason}`);
    throw new Error(`${file.path}: ${places.join('; ')}`);
  };
}

/** MDX files carry a directive that the bundler does not know and reports once a file; it means nothing here. */
function onLog(level, log, next) {
  if (log.code !== 'MODULE_LEVEL_DIRECTIVE') next(level, log);
}

// BASE_PATH: the folder of the web server the site is to stand in. OUT_DIR: where the finished site is written.
export default defineConfig({
  srcDir: './site',
  publicDir: './site/public',
  outDir: process.env.OUT_DIR ?? './dist',
  base: process.env.BASE_PATH ?? '/',
  trailingSlash: 'always',
  build: { format: 'directory' },
  devToolbar: { enabled: false },
  markdown: {
    processor: unified({
      remarkPlugins: [remarkMath],
      rehypePlugins: [[rehypeKatex, { strict: 'error' }], failOnMath],
    }),
  },
  integrations: [svelte({ configFile: false }), mdx({ optimize: true })],
  vite: {
    worker: { format: 'es' },
    build: {
      rolldownOptions: {
        onLog,
        output: {
          codeSplitting: {
            groups: [
              {
                name: 'engine',
                test: /engine\/(errors|quantity|material\/|surroundings\/(?!places)|scenario\/fault|conductor\/(?!area-scale)|cable\/(?!picture|cord|in-)|heating\/(?!live|by-resistance|profile|along-run|drop-guides|nominal-load|metals-compared|sizes-compared|surroundings-compared|model-end|ledger|ageing|adiabatic|places))/,
                priority: 2,
              },
              {
                name: 'devices',
                test: /engine\/protection\/(band|device|devices|gates|gg-fuse|iec-breaker|miniature-fuse|own-curve|plug-fuse|rewirable-fuse|ul-breaker|ul-fuse)\.ts/,
                priority: 3,
              },
              { name: 'schema', test: /valibot|engine\/scenario\/(schema|fields|parse|from-link)\.ts/, priority: 1 },
            ],
          },
        },
      },
    },
  },
});
