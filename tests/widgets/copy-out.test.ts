// A figure taken along as a picture: one file that needs nothing else, by Day on white whatever the theme.
import type { Component } from 'svelte';
import { beforeEach, describe, expect, it } from 'vitest';
import { castScenario, predict } from '#engine';
import { fileName } from '#site/charts/copy-out/copy-out.ts';
import { sheetSvg } from '#site/charts/copy-out/sheet-svg.ts';
import { toPng } from '#site/charts/copy-out/to-png.ts';
import CoreSection from '#site/widgets/CoreSection.svelte';
import EmberTrace from '#site/widgets/EmberTrace.svelte';
import HeatLedger from '#site/widgets/HeatLedger.svelte';
import LimitStrip from '#site/widgets/LimitStrip.svelte';
import { stripCase } from '#site/widgets/limit-strip/strip-case.ts';
import MetalQuartet from '#site/widgets/MetalQuartet.svelte';
import SectionView from '#site/widgets/SectionView.svelte';
import SizeLadder from '#site/widgets/SizeLadder.svelte';
import VoltsAlong from '#site/widgets/VoltsAlong.svelte';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const scenarios = {
  iec: { ...castScenario('C150', 20, 25), lead: { length_m: 30 } },
  na: { ...castScenario('A14', 20, 25), lead: { length_m: 30.48 } },
};
const figure = { id: 'a', number: '2.2.1', title: 'A lead & its heat', scenarios };
const words = {
  number: '2.2.1',
  title: 'A lead & its heat',
  sentence: 'It warms < 70 °C.',
  cells: [{ name: 'Supply', value: '20 A held' }],
};
const strip = { iec: stripCase('C125', 'iec', 'pvc70', 85, 36_000), na: stripCase('A16', 'na', 'pvc70', 85, 36_000) };
const section = { prediction: predict(scenarios.iec), t: 120, title: words.title };

const figures: readonly [string, unknown, Record<string, unknown>][] = [
  ['temperature over time', EmberTrace, figure],
  ['heat ledger', HeatLedger, figure],
  ['sizes', SizeLadder, figure],
  ['metals', MetalQuartet, figure],
  ['volts along', VoltsAlong, figure],
  ['section', SectionView, section],
  ['section of a lesson', CoreSection, figure],
  ['limits', LimitStrip, { ...figure, scenarios: strip }],
];

beforeEach(() => {
  asNew();
  document.body.replaceChildren();
  delete document.documentElement.dataset.theme;
});

async function sheetOf(widget: unknown, props: Record<string, unknown>, width = 752) {
  const shown = await figureOnScreen(widget as Component<never>, props, width);
  await expect.poll(() => shown.frame.querySelector('.copy-out')).not.toBeNull();
  await new Promise((resolve) => setTimeout(resolve, 100));
  return { ...shown, sheet: shown.frame.querySelector('figure') as HTMLElement };
}

const parsed = (svg: string) => new DOMParser().parseFromString(svg, 'image/svg+xml');

describe.each(figures)('%s', (_name, widget, props) => {
  it.each(['day', 'lamp'])(
    'goes out by %s as SVG that parses, says what it is, and refers to nothing outside',
    async (theme) => {
      document.documentElement.dataset.theme = theme;
      const { sheet } = await sheetOf(widget, props);
      const { svg, width, height } = sheetSvg(sheet, words);
      const page = parsed(svg);
      expect(page.querySelector('parsererror')).toBeNull();
      expect(page.querySelector('title')?.textContent).toBe('Fig. 2.2.1 A lead & its heat');
      const said = [...page.querySelectorAll('text')].map((one) => one.textContent?.trim());
      for (const one of ['Fig. 2.2.1', 'A lead & its heat', 'It warms < 70 °C.', 'Supply', '20 A held'])
        expect(said).toContain(one);
      const bare = svg.replace(/data:image[^"]*/g, '');
      expect(
        /.{0,40}(var\(|color\(|color-mix|\s(class|style)=|aria-|NaN|undefined).{0,20}/.exec(bare)?.[0],
      ).toBeUndefined();
      for (const [, to] of svg.matchAll(/\s(?:href|src)="(.*?)"/g)) expect(to).toMatch(/^(#|data:image\/png)/);
      for (const [, id] of svg.matchAll(/url\(#(.*?)\)/g)) expect(page.getElementById(id ?? '')).not.toBeNull();
      for (const [, id] of svg.matchAll(/href="#(.*?)"/g)) expect(page.getElementById(id ?? '')).not.toBeNull();
      expect(width).toBeGreaterThanOrEqual(440);
      expect(height).toBeGreaterThan(200);
      expect(document.documentElement.dataset.theme).toBe(theme);
      expect(document.documentElement.getAttribute('style')).toBeNull();
    },
  );
});

it('looks the same whatever theme it was taken in', async () => {
  const { sheet } = await sheetOf(EmberTrace, figure);
  const day = sheetSvg(sheet, words).svg;
  document.documentElement.dataset.theme = 'lamp';
  expect(sheetSvg(sheet, words).svg).toBe(day);
});

it('has the painted field of a section as an image, by Day in the lamp’s theme too', async () => {
  document.documentElement.dataset.theme = 'lamp';
  const { sheet } = await sheetOf(SectionView, section);
  const [, inside] = /<image [^>]*href="(data:image\/png[^"]*)"/.exec(sheetSvg(sheet, words).svg) ?? [];
  const image = new Image();
  image.src = inside ?? '';
  await image.decode();
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight];
  const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
  pen.drawImage(image, 0, 0);
  const [r = 0, g = 0, b = 0, a = 0] = pen.getImageData(canvas.width / 2, canvas.height / 2, 1, 1).data;
  expect(a).toBe(255);
  expect(Math.min(r, g)).toBeGreaterThan(180); // the ramp of the day is pale where it is cool
  expect(b).toBeGreaterThan(60);
});

it('leaves signs of controls and readings out', async () => {
  const { sheet } = await sheetOf(EmberTrace, figure);
  const drawings = parsed(sheetSvg(sheet, words).svg).querySelectorAll('svg > g > svg');
  expect(drawings).toHaveLength(1);
  expect(sheet.querySelectorAll('.body svg').length).toBeGreaterThan(1);
});

it('is drawn to pixels, twice as fine as the screen, and not blank', async () => {
  const { sheet } = await sheetOf(EmberTrace, figure);
  const file = sheetSvg(sheet, words);
  const blob = await toPng(file);
  expect(blob.type).toBe('image/png');
  const bitmap = await createImageBitmap(blob);
  expect([bitmap.width, bitmap.height]).toEqual([2 * file.width, 2 * file.height]);
  expect(blob.size).toBeGreaterThan(20_000);
  expect(blob.size).toBeLessThan(1_500_000);
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const pen = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
  pen.drawImage(bitmap, 0, 0);
  const { data } = pen.getImageData(0, 0, bitmap.width, bitmap.height);
  let dark = 0;
  for (let i = 0; i < data.length; i += 4) if ((data[i] ?? 255) < 90) dark += 1;
  expect(dark / (data.length / 4)).toBeGreaterThan(0.003);
  expect([...data.slice(0, 4)]).toEqual([255, 255, 255, 255]);
});

it('is taken from the sheet by keyboard, as a file with the figure’s name', async () => {
  const { screen, frame, press } = await sheetOf(EmberTrace, figure);
  const saved: string[] = [];
  const click = HTMLAnchorElement.prototype.click;
  HTMLAnchorElement.prototype.click = function save() {
    saved.push(this.download);
  };
  try {
    await press(frame.querySelector('.copy-out > summary') as Element, '{Enter}');
    await press(screen.getByRole('button', { name: 'Save as SVG' }).element(), '{Enter}');
    await expect.poll(() => saved).toEqual(['fig-2.2.1-a-lead-its-heat.svg']);
    await expect.element(screen.getByText('Saved as fig-2.2.1-a-lead-its-heat.svg.')).toBeVisible();
  } finally {
    HTMLAnchorElement.prototype.click = click;
  }
});

it('is saved where the browser keeps its clipboard to itself', async () => {
  const { screen, frame, press } = await sheetOf(EmberTrace, figure);
  const saved: string[] = [];
  const click = HTMLAnchorElement.prototype.click;
  const write = navigator.clipboard.write;
  HTMLAnchorElement.prototype.click = function save() {
    saved.push(this.download);
  };
  navigator.clipboard.write = () => Promise.reject(new Error('not allowed'));
  try {
    await press(frame.querySelector('.copy-out > summary') as Element, '{Enter}');
    await screen.getByRole('button', { name: 'Copy as PNG' }).click();
    await expect.poll(() => saved, { timeout: 10_000 }).toEqual(['fig-2.2.1-a-lead-its-heat.png']);
  } finally {
    HTMLAnchorElement.prototype.click = click;
    navigator.clipboard.write = write;
  }
});

it('names its file without letters that a disk may refuse', () => {
  expect(fileName({ title: 'Twice the amps: how much heat?', cells: [] })).toBe('twice-the-amps-how-much-heat');
  expect(fileName({ number: '1.1.2', title: 'Ω/m at 20 °C', cells: [] })).toBe('fig-1.1.2-m-at-20-c');
});
