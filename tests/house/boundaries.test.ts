import { expect, it } from 'vitest';
import { root } from '../run/tool.ts';
import { boundaryFaults } from './boundaries.ts';
import { faultLine, findings } from './tree.ts';

/** What the rules say about a file of this path and text, without the path. */
function faults(path: string, text: string): string[] {
  return boundaryFaults({ path, text }).map(({ line, message }) => `${line} ${message}`);
}

it('the rooms of the house keep their boundaries', async () => {
  const { boundaries, files } = await findings(root);
  expect(files).toBeGreaterThan(10);
  expect(boundaries.map(faultLine)).toEqual([]);
});

it.each([
  ["import { x } from '../../site/lib/format.ts';", "the engine imports '../../site/lib/format.ts'"],
  ["import { readFile } from 'node:fs/promises';", "the engine imports 'node:fs/promises'"],
  ["export { sum } from 'd3-array';", "the engine imports 'd3-array'"],
  ["const later = await import('svelte');", "the engine imports 'svelte'"],
  ["type Site = import('#site/lib/format.ts').Format;", "the engine imports '#site/lib/format.ts'"],
  ['const t = Date.now();', 'the engine uses Date.now'],
  ['const t = new Date();', 'the engine uses new Date()'],
  ['const x = Math.random();', 'the engine uses Math.random'],
  ['const w = window.innerWidth;', 'the engine uses window'],
  ["document.querySelector('p');", 'the engine uses document'],
  ["localStorage.setItem('a', 'b');", 'the engine uses localStorage'],
])('the engine may not hold: %s', (text, message) => {
  expect(faults('engine/heating/step.ts', `\n${text}`)).toEqual([`2 ${message}`]);
});

it('the engine may use itself, its packages, and names of its own', () => {
  const text = `
    import * as v from 'valibot';
    import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
    import { kelvin } from '../quantity.ts';
    // Date.now and window.innerWidth in a comment
    export const first = (document: Notebook) => document.entries[0] + 'Math.random()' + Math.exp(273.15);`;
  expect(faults('engine/heating/step.ts', text)).toEqual([]);
});

it('the public face of the engine only re-exports', () => {
  expect(faults('engine/index.ts', "/** Kelvin inside. */\nexport { kelvin } from './quantity.ts';")).toEqual([]);
  expect(faults('engine/index.ts', 'export const x = 1;')).toEqual(['1 engine/index.ts only re-exports']);
});

it.each(['site/widgets/WarmUp.svelte', 'site/pages/index.astro', 'lessons/2.2-warm-up-curve/index.mdx'])(
  'only the public face of the engine is open to %s',
  (path) => {
    const past = wrapped(path, "import { step } from '#engine/heating/step.ts';");
    const around = wrapped(path, "import { step } from '../../engine/heating/step.ts';");
    const tests = wrapped(path, "import { rows } from '../../tests/published/rows.ts';");
    const good = wrapped(path, "import { predict } from '#engine';");
    expect(faults(path, past)).toEqual(["2 '#engine/heating/step.ts' enters the engine past '#engine'"]);
    expect(faults(path, around)).toEqual(["2 '../../engine/heating/step.ts' enters the engine past '#engine'"]);
    expect(faults(path, tests)).toEqual(["2 '../../tests/published/rows.ts' belongs to the tests"]);
    expect(faults(path, good)).toEqual([]);
  },
);

it.each([
  ['const T = T_degC + 273.15;', 'the constant 273.15'],
  ['const q = 5.67e-8 * (T - Ta);', 'the constant 5.67e-8'],
  ['const R = (1.7241e-8 * l) / A;', 'the constant 1.7241e-8'],
  ['const T = Ta + rise * Math.exp(-t / tau);', 'Math.exp'],
  ['const d = Math.sqrt(A);', 'Math.sqrt'],
  ['const q = k * T ** 4;', 'the power T ** 4'],
  ['const P = R * (I * I);', 'the square I * I'],
])('the site may not compute: %s', (text, sign) => {
  const message = `${sign}: physics belongs to the engine`;
  expect(faults('site/lib/curve.ts', text).length).toBe(/Math|\*\*/.test(text) ? 0 : 1);
  expect(faults('site/pages/index.astro', `---\n${text}\n---\n<p>text</p>`)).toEqual([`2 ${message}`]);
  expect(faults('site/widgets/WarmUp.svelte', `<script lang="ts">\n${text}\n</script>`)).toEqual([`2 ${message}`]);
});

it('an expression in the markup of a widget or a lesson counts as well', () => {
  const widget =
    '<script lang="ts">let t = 1;</script>\n{#if t}<b title={t}>{t + 273.15} K</b>{/if}\n<style>b { x: 9.81 }</style>';
  expect(faults('site/widgets/Warm.svelte', widget)).toEqual(['2 the constant 273.15: physics belongs to the engine']);
  const lesson = '---\ntitle: a 273.15\n---\nAt 273.15 K, $T^{273.15}$ and `{9.81}`.\n\n<Bar T={20 + 273.15} />';
  expect(faults('lessons/1-a/index.mdx', lesson)).toEqual(['6 the constant 273.15: physics belongs to the engine']);
});

it('the geometry of a picture may be computed where the line says so', () => {
  expect(
    faults('site/widgets/Section.svelte', wrapped('a.svelte', 'const r = Math.sqrt(A); // drawing: radius')),
  ).toEqual([]);
});

it.each(['engine/a.ts', 'site/a.ts', 'tests/engine/a.test.ts'])(
  'an import in %s is written with its ending',
  (path) => {
    const fault = "1 the import './b' is written without its file ending";
    expect(faults(path, "import type { B } from './b';")).toEqual([fault]);
    expect(faults(path, "import type { B } from './b.ts';")).toEqual([]);
  },
);

/** A line of code as the second line of a file of that kind. */
function wrapped(path: string, line: string): string {
  if (path.endsWith('.svelte')) return `<script lang="ts">\n${line}\n</script>\n<p>{1}</p>`;
  if (path.endsWith('.astro')) return `---\n${line}\n---\n<p>{1}</p>`;
  return `\n${line}\n\nWords.`;
}
