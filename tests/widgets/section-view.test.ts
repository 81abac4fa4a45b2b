import { afterEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import {
  celsius,
  hottestMoment,
  type Prediction,
  predict,
  profileAt,
  type Scenario,
  sectionField,
  temperatureAt,
} from '#engine';
import { contours, framed } from '#site/charts/section/contours.ts';
import { fieldOf, isothermStep } from '#site/charts/section/lines.ts';
import { dayTurns, lampTurns } from '#site/charts/section/on-ramp.ts';
import { fieldStep, paintSection } from '#site/charts/section/paint.ts';
import Section from '#site/charts/section/Section.svelte';
import { sceneOf } from '#site/charts/section/scene.ts';
import { sectionState } from '#site/charts/section/state.ts';
import { bundle, strandsOf } from '#site/charts/section/strands.ts';
import { sectionSentence, sectionTable } from '#site/charts/section/words.ts';
import { rampMix } from '#site/lib/ramp.ts';
import SectionView from '#site/widgets/SectionView.svelte';
import '#site/styles/base.css';

const air = { kind: 'stillAir', ambient_degC: 22 } as const;
const held = (cable: Scenario['cable'], I_A: number, duration_s = 3600, more: Partial<Scenario> = {}): Scenario => ({
  version: 1,
  cable,
  surroundings: air,
  supply: [{ kind: 'current', I_A }],
  run: { duration_s },
  ...more,
});
const cord = (cores: number, size_mm2: number, loaded: number): Scenario['cable'] => ({
  table: 'H05VV-F',
  cores,
  size_mm2,
  loaded,
});
const american: Scenario['cable'] = { table: 'SJT', cores: 3, size_AWG: 16, loaded: 2 };
const bare: Scenario['cable'] = { layout: 'single', conductor: { size_mm2: 1.5 }, insulation: null };
const flat: Scenario['cable'] = {
  layout: 'flat',
  cores: 3,
  loaded: 2,
  conductor: { size_mm2: 2.5, class: 1 },
  insulation: { material: 'pvc70', thickness_mm: 0.8 },
  sheath: { material: 'pvc70', thickness_mm: 1.1 },
};
const lagged = { kind: 'lagged', ambient_degC: 22, thickness_mm: 20, conductivity_WPerMK: 0.04 } as const;
const reel = { kind: 'coiled', ambient_degC: 20, drum_mm: 120, turns: 12 } as const;

const usual = held(cord(3, 1, 2), 40, 120);
const theme = (name: 'day' | 'lamp') => {
  document.documentElement.dataset.theme = name;
};
afterEach(() => theme('day'));

async function drawn(scenario: Scenario, props: Record<string, unknown> = {}, width = 420) {
  const frame = document.createElement('div');
  frame.style.width = `${width}px`;
  document.body.append(frame);
  const prediction = predict(scenario);
  const t = hottestMoment(prediction.run.curves).t;
  const all = { prediction, t, practice: scenario.practice ?? 'iec', ...props };
  const screen = await render(Section, { props: all }, { baseElement: frame });
  await painted(frame);
  return { screen, frame, prediction, t: all.t as number, plot: frame.querySelector('[role="slider"]') as HTMLElement };
}

const nextFrame = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));

async function painted(frame: Element): Promise<void> {
  await expect.poll(() => frame.querySelector('canvas')?.width ?? 0).toBeGreaterThan(100);
  await nextFrame();
  await nextFrame();
}

function pixelsOf(frame: Element): ImageData {
  const canvas = frame.querySelector('canvas') as HTMLCanvasElement;
  const context = canvas.getContext('2d') as CanvasRenderingContext2D;
  return context.getImageData(0, 0, canvas.width, canvas.height);
}

/** The ramp's stops as the page shows them now. */
function stopsNow(): [number, number, number][] {
  const style = getComputedStyle(document.documentElement);
  return Array.from({ length: 9 }, (_, i) => {
    const hex = Number.parseInt(style.getPropertyValue(`--t${i}`).trim().slice(1), 16);
    return [hex >> 16, (hex >> 8) & 255, hex & 255];
  });
}

/** The temperature [°C] of a point of the picture [m], from the engine's field and profile alone. */
function byEngine({ thermal }: Prediction, t: number): (x: number, y: number) => number {
  const { cable, outside, h } = thermal;
  const field = sectionField(cable, outside, h);
  const profile = profileAt(thermal, t);
  const turned = cable.layout === 'flat' || cable.cores < 3 ? 0 : Math.PI / 2 + Math.PI / cable.cores;
  const back = turned === 0 ? 0 : Math.atan2(cable.y[0] ?? 0, cable.x[0] ?? 0) - turned;
  const [c, s] = [Math.cos(back), Math.sin(back)];
  return (x, y) => celsius(temperatureAt(profile, field ? field.at(c * x - s * y, s * x + c * y) : 1));
}

const cables: [string, Scenario][] = [
  ['three cores', usual],
  ['an American cord', held(american, 18)],
  ['five cores, all loaded', held(cord(5, 2.5, 5), 20)],
  ['two cores', held(cord(2, 0.75, 2), 13)],
  ['a flat cable', held(flat, 32)],
  ['a bare wire', held(bare, 30)],
  ['a lagged cord', held(cord(4, 1.5, 1), 20, 3600, { surroundings: lagged })],
];

it.each(cables.flatMap(([name, scenario]) => (['day', 'lamp'] as const).map((at) => [name, at, scenario] as const)))(
  'the painted field of %s is the engine’s, by %s',
  async (_name, at, scenario) => {
    theme(at);
    const { frame, prediction, t } = await drawn(scenario);
    const state = sectionState(prediction, t);
    const { shape } = state;
    const scene = sceneOf(shape, 400, 'full');
    const truth = byEngine(prediction, t);
    const stops = stopsNow();
    const image = pixelsOf(frame);
    const metres = (2 * scene.halfWidth) / scene.scale / image.width;
    let looked = 0;
    for (let py = 7; py < image.height; py += 11) {
      for (let px = 5; px < image.width; px += 11) {
        const [x, y] = [(px + 0.5 - image.width / 2) * metres, (image.height / 2 - py - 0.5) * metres];
        if (shape.distance(x, y) > -2 / scene.scale) continue;
        looked++;
        const T = truth(x, y);
        const wanted = rampMix(stops, T);
        const got = [...image.data.subarray(4 * (py * image.width + px), 4 * (py * image.width + px) + 4)];
        const off = Math.max(...wanted.map((value, i) => Math.abs(value - (got[i] ?? 0))));
        expect(off, `at pixel ${px}, ${py}: ${wanted} is painted ${got}`).toBeLessThanOrEqual(2);
        expect(got[3]).toBe(255);
        expect(Math.abs(state.atPoint(x, y) - T), `${x}, ${y}`).toBeLessThan(0.2);
      }
    }
    expect(looked).toBeGreaterThan(150);
  },
);

it.each(cables)('the isotherms of %s lie where the engine has their temperature', async (_name, scenario) => {
  const { frame, prediction, t } = await drawn(scenario);
  const { shape } = sectionState(prediction, t);
  const scene = sceneOf(shape, 400, 'full');
  const truth = byEngine(prediction, t);
  const steep = celsius(prediction.run.curves.conductor.at(-1) as number) / scene.radius;
  for (const line of frame.querySelectorAll('path[data-isotherm]')) {
    const T = Number(line.getAttribute('data-isotherm'));
    const points = [...(line.getAttribute('d') ?? '').matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)];
    for (const [, px, py] of points) {
      const [x, y] = [(Number(px) - scene.cx) / scene.scale, (scene.cy - Number(py)) / scene.scale];
      if (shape.distance(x, y) > 0) continue; // where the line is clipped
      const here = truth(x, y);
      expect(Math.abs(here - T), `${T} °C at ${px}, ${py}`).toBeLessThan(0.2 + steep);
    }
  }
});

it('is painted anew when the theme changes', async () => {
  const { frame } = await drawn(usual);
  const day = pixelsOf(frame).data.slice();
  theme('lamp');
  await expect.poll(() => pixelsOf(frame).data.some((value, i) => Math.abs(value - (day[i] ?? 0)) > 40)).toBe(true);
});

it('has black and white on the ramp change places where the tokens have them stand out equally', () => {
  const channel = (value: number) =>
    value <= 0.04045 * 255 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
  for (const [name, turns] of [
    ['day', dayTurns],
    ['lamp', lampTurns],
  ] as const) {
    theme(name);
    const stops = stopsNow();
    for (let T = 20; T <= 400; T += 2) {
      if (Math.abs(T - turns) < 3) continue;
      const [r, g, b] = rampMix(stops, T).map(channel) as [number, number, number];
      const light = 0.2126 * r + 0.7152 * g + 0.0722 * b > 0.179;
      expect(light, `${name}, ${T} °C`).toBe(name === 'day' ? T < turns : T > turns);
    }
  }
});

it('is read along the cut by arrow, page, Home and End keys, and says where and how hot', async () => {
  const { plot, prediction, t } = await drawn(usual);
  expect(plot.getAttribute('aria-valuetext')).toBe('not set');
  plot.focus();
  await userEvent.keyboard('{ArrowRight}');
  expect(plot.getAttribute('aria-valuetext')).toMatch(
    /^in the middle, (filling|insulation of [LN]|plastic between the cores): \d+\s°C$/,
  );
  await userEvent.keyboard('{End}');
  const end = Number(plot.getAttribute('aria-valuenow'));
  expect(end).toBe(Number(plot.getAttribute('aria-valuemax')));
  await userEvent.keyboard('{ArrowRight}');
  expect(Number(plot.getAttribute('aria-valuenow'))).toBe(end);
  expect(plot.getAttribute('aria-valuetext')).toContain('sheath');
  await userEvent.keyboard('{Home}');
  expect(Number(plot.getAttribute('aria-valuenow'))).toBe(-end);
  let heard = '';
  for (let i = 0; i < 30 && !heard.includes('conductor L'); i++) {
    await userEvent.keyboard('{ArrowRight}');
    heard = plot.getAttribute('aria-valuetext') ?? '';
  }
  expect(heard).toContain('left of the middle, conductor L');
  expect(Number.parseFloat(heard.split(': ')[1] ?? '')).toBe(Math.round(sectionState(prediction, t).conductor));
  await userEvent.keyboard('{Escape}');
  expect(plot.getAttribute('aria-valuetext')).toBe('not set');
});

it('is read by the pointer where it points', async () => {
  const { plot, prediction, t } = await drawn(usual);
  const box = plot.getBoundingClientRect();
  const { shape } = sectionState(prediction, t);
  const x = shape.x[1] as number;
  const clientX = box.left + 200 + x * sceneOf(shape, 400, 'full').scale;
  plot.dispatchEvent(new PointerEvent('pointerdown', { clientX, clientY: box.top + 50, bubbles: true }));
  await expect.poll(() => plot.getAttribute('aria-valuetext')).toContain('right of the middle, conductor N');
});

it('names conductors after the practice, and what carries nothing', async () => {
  const words = (frame: Element) =>
    [...frame.querySelectorAll('.picture text')].map((text) => text.textContent?.trim());
  expect(words((await drawn(usual)).frame)).toEqual(expect.arrayContaining(['L', 'N', 'PE, idle', 'sheath', 'A']));
  const us = await drawn(held(american, 18, 600, { practice: 'na' }));
  expect(words(us.frame)).toEqual(expect.arrayContaining(['L', 'N', 'G, idle']));
  const ring = us.frame.querySelector('[data-core="1"] circle:nth-child(2)') as Element;
  const white = getComputedStyle(document.documentElement).getPropertyValue('--cond-white').trim();
  const probe = document.createElement('i');
  probe.style.color = white;
  document.body.append(probe);
  expect(getComputedStyle(ring).stroke).toBe(getComputedStyle(probe).color);
});

it('is small without strands, letters and profile, and says in words what it shows', async () => {
  const { frame } = await drawn(usual, { small: true });
  expect(frame.querySelectorAll('text, use')).toHaveLength(0);
  expect(frame.querySelectorAll('svg')).toHaveLength(1);
  expect(frame.querySelector('[role="img"]')?.getAttribute('aria-label')).toMatch(/hottest conductor .* is at \d+/);
  expect((frame.querySelector('svg') as SVGElement).getBoundingClientRect().width).toBeLessThan(215);
});

it('stands as filled bands before any pixel is painted, and on paper', async () => {
  const { frame } = await drawn(usual);
  expect(frame.querySelectorAll('path.band')).toHaveLength(0);
  dispatchEvent(new Event('beforeprint'));
  expect(frame.querySelectorAll('path.band').length).toBeGreaterThan(8);
  dispatchEvent(new Event('afterprint'));
  await expect.poll(() => frame.querySelectorAll('path.band').length).toBe(0);
});

it.each<[string, Scenario]>([
  ...cables,
  ['no current', held(cord(3, 1, 2), 0)],
  [
    'all loaded, seven cores',
    held(
      {
        layout: 'round',
        cores: 7,
        loaded: 7,
        conductor: { size_mm2: 1 },
        insulation: { material: 'pvc70', thickness_mm: 0.6 },
      },
      8,
    ),
  ],
  ['copper that melts', held(cord(3, 0.75, 2), 300, 10)],
  ['a deep frost', held(cord(3, 1, 2), 5, 600, { surroundings: { ...air, ambient_degC: -60 } })],
  ['a hot start that cools', held(cord(3, 1, 2), 0, 600, { start: { T_degC: 180 } })],
  ['a reel', held(cord(3, 1.5, 2), 10, 3600, { surroundings: reel, lead: { length_m: 25 } })],
  ['a hair', held({ layout: 'single', conductor: { size_AWG: 40 }, insulation: null }, 0.3)],
  [
    'a thick cable',
    held(
      {
        layout: 'round',
        cores: 4,
        loaded: 3,
        conductor: { size_mm2: 35, class: 2 },
        insulation: { material: 'xlpe', thickness_mm: 1.2 },
        sheath: { material: 'pvc70', thickness_mm: 2 },
      },
      120,
    ),
  ],
])('draws %s without a broken number, in both practices and at 294 px', async (_name, scenario) => {
  for (const practice of ['iec', 'na'] as const) {
    for (const when of [0, 3, 1e9]) {
      const { frame, prediction } = await drawn(scenario, { practice, t: when, reading: 0 }, 294);
      expect(frame.innerHTML.match(/.{40}(NaN|Infinity|undefined)/)?.[0]).toBeUndefined();
      expect(frame.scrollWidth).toBeLessThanOrEqual(294);
      const table = sectionTable(prediction, when, practice);
      expect(JSON.stringify(table.rows) + sectionSentence(prediction, when, practice)).not.toMatch(
        /NaN|∞|undefined|null/,
      );
    }
  }
});

it('says when a conductor is off the ramp', async () => {
  const hot = held(cord(3, 0.75, 2), 300, 10);
  const { frame, prediction, t } = await drawn(hot);
  expect(frame.querySelector('.picture')?.textContent).toContain('L, off the ramp');
  expect(sectionSentence(prediction, t, 'iec')).toContain('off the ramp');
});

it('has a table of the cut: every wall and every middle, hottest in the loaded conductors', () => {
  const prediction = predict(usual);
  const { columns, rows } = sectionTable(prediction, 50, 'na');
  expect(columns).toHaveLength(4);
  const where = rows.map(([, place]) => place);
  expect(where[0]).toBe('surface, left');
  expect(where.at(-1)).toBe('surface, right');
  for (const place of ['sheath', 'conductor L', 'conductor N', 'between insulation of N and conductor N'])
    expect(where).toContain(place);
  const T = rows.map((row) => Number(row[2]));
  expect(where[T.indexOf(Math.max(...T))]).toMatch(/conductor [LN]/);
  const along = rows.map(([x]) => Number(String(x).replace('−', '-')));
  expect(along).toEqual([...along].sort((a, b) => a - b));
});

it('stands on a sheet with its words and case', async () => {
  const frame = document.createElement('div');
  frame.style.width = '752px';
  document.body.append(frame);
  const props = {
    prediction: predict(usual),
    t: 50,
    practice: 'iec',
    title: 'Through the flex',
  } as const;
  const screen = await render(SectionView, { props }, { baseElement: frame });
  await expect.element(screen.getByRole('figure', { name: 'Through the flex' })).toBeVisible();
  await expect.element(screen.getByText('steady field, scaled to 0:50')).toBeVisible();
});

it('draws isotherms every ten kelvins, more where they crowd, less where hardly one would show', () => {
  expect(isothermStep(60, 0.5, 9)).toBe(10);
  expect(isothermStep(300, 3, 9)).toBe(50);
  expect(isothermStep(13, 0.1, 9)).toBe(5);
  expect(isothermStep(0, 0, 9)).toBe(10);
});

it('follows a level round a hill, closed, and cuts saddles apart', () => {
  const size = 21;
  const values = Float64Array.from(
    { length: size * size },
    (_, i) => -Math.hypot((i % size) - 10, Math.floor(i / size) - 10),
  );
  const lines = contours({ columns: size, rows: size, values }, [-9, -6.3])[1] ?? [];
  expect(lines).toHaveLength(1);
  const line = lines[0] as number[];
  expect(line.slice(0, 2)).toEqual(line.slice(-2));
  for (let i = 0; i < line.length; i += 2)
    expect(Math.abs(Math.hypot((line[i] ?? 0) - 10, (line[i + 1] ?? 0) - 10) - 6.3)).toBeLessThan(0.05);
  const saddle = { columns: 2, rows: 2, values: [1, 0, 0, 1] };
  expect(contours(saddle, [0.6])[0]).toHaveLength(2);
  expect(contours(framed(saddle, -9), [0.6])[0]?.every((l) => l[0] === l.at(-2) && l[1] === l.at(-1))).toBe(true);
});

it('bunches wires that do not overlap, as many as the cord has', () => {
  expect(strandsOf(usual, 1e-6)).toEqual({ count: 32, diameter: 0.2e-3 });
  expect(strandsOf(held(american, 10), 1.31e-6).count).toBe(26);
  for (const count of [1, 2, 3, 7, 16, 24, 26, 32, 41, 84, 126]) {
    const { places, radius } = bundle(count);
    expect(places).toHaveLength(count);
    places.forEach(([x, y], i) => {
      expect(Math.hypot(x, y) + radius).toBeLessThanOrEqual(1 + 1e-6);
      for (const [ox, oy] of places.slice(0, i))
        expect(Math.hypot(x - ox, y - oy)).toBeGreaterThan(2 * radius * (1 - 1e-6));
    });
  }
});

it('paints 300 × 300 px in a small part of a frame', () => {
  const prediction = predict(usual);
  const state = sectionState(prediction, 50);
  const scene = sceneOf(state.shape, 302, 'small');
  const pixels = new Uint32Array(300 * 300);
  const stops = stopsNow();
  const times = Array.from({ length: 12 }, (_, i) => {
    const next = sectionState(prediction, 40 + i);
    const from = performance.now();
    paintSection(pixels, 300, 300, next, scene, fieldOf(next, scene, fieldStep), stops);
    return performance.now() - from;
  }).sort((a, b) => a - b);
  console.info(`painting 300 × 300 px: median ${times[6]?.toFixed(1)} ms, most ${times[11]?.toFixed(1)} ms`);
  expect(pixels.some((value) => value !== 0)).toBe(true);
});
