// The signature figures as pictures, compared with baselines that somebody looked at. A figure that is changed on purpose gets
// its baseline anew: `npm test -- pictures --update`, then look at what changed under tests/widgets/baselines before it is kept.
import type { Component } from 'svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { page } from 'vitest/browser';
import { castScenario, inMetal, predict, type Scenario, templates, usualSurroundings } from '#engine';
import CoreSection from '#site/widgets/CoreSection.svelte';
import EmberTrace from '#site/widgets/EmberTrace.svelte';
import FirstToAct from '#site/widgets/FirstToAct.svelte';
import HeatLedger from '#site/widgets/HeatLedger.svelte';
import { pairOf } from '#site/widgets/home/pair.ts';
import RunningPair from '#site/widgets/home/RunningPair.svelte';
import LimitStrip from '#site/widgets/LimitStrip.svelte';
import { stripCase } from '#site/widgets/limit-strip/strip-case.ts';
import MetalQuartet from '#site/widgets/MetalQuartet.svelte';
import QuestionBlock from '#site/widgets/QuestionBlock.svelte';
import SectionView from '#site/widgets/SectionView.svelte';
import SizeLadder from '#site/widgets/SizeLadder.svelte';
import SketchPad from '#site/widgets/SketchPad.svelte';
import VoltsAlong from '#site/widgets/VoltsAlong.svelte';
import WrapAndWind from '#site/widgets/WrapAndWind.svelte';
import { asNew, figureOnScreen } from './figure-on-screen.ts';
import '#site/styles/base.css';

const pair = (amps: number): Record<'iec' | 'na', Scenario> => ({
  iec: { ...castScenario('C125', amps, 25), lead: { length_m: 30 } },
  na: { ...castScenario('A16', amps, 25), lead: { length_m: 30.48 } },
});
const onThenOff = (scenario: Scenario): Scenario => ({
  ...scenario,
  run: { duration_s: 3600 },
  supply: [
    { kind: 'current', I_A: 26, duration_s: 1800 },
    { kind: 'off', duration_s: 1800 },
  ],
});
const hot = { iec: onThenOff(pair(26).iec), na: onThenOff(pair(26).na) };
const steel = (scenario: Scenario): Scenario => ({ ...scenario, cable: inMetal(scenario.cable, 'steel') });

const fused = (scenario: Scenario): Scenario => ({ ...scenario, device: { family: 'bs1362', rating_A: 13 } });

const around = (['stillAir', 'clipped', 'lagged', 'coiled', 'draught'] as const).map((kind) =>
  usualSurroundings(kind, 25, 30),
);
const places = {
  iec: { scenario: pair(13).iec, surroundings: around },
  na: { scenario: pair(13).na, surroundings: around },
};

/** What is drawn: a figure with its props. */
const figures: readonly [name: string, figure: unknown, props: Record<string, unknown>][] = [
  ['temperature over time', EmberTrace, { id: 'a', number: '0.0.1', title: 'On, then off', scenarios: hot }],
  ['heat ledger', HeatLedger, { id: 'a', number: '0.0.1', title: 'Heat made and heat lost', scenarios: pair(20) }],
  [
    'heat ledger without a crossing',
    HeatLedger,
    {
      id: 'a',
      number: '0.0.1',
      title: 'No crossing',
      scenarios: { iec: steel(pair(40).iec), na: steel(pair(40).na) },
    },
  ],
  ['section', SectionView, { prediction: predict(pair(20).iec), t: 1800, practice: 'iec', title: 'Through the cord' }],
  [
    'cord cut across',
    CoreSection,
    { id: 'a', number: '0.0.1', title: 'Through the cord', scenarios: pair(20), at: 300 },
  ],
  [
    'limits',
    LimitStrip,
    {
      id: 'a',
      number: '0.0.1',
      title: 'What PVC stands',
      scenarios: { iec: stripCase('C125', 'iec', 'pvc70', 85, 3600), na: stripCase('A16', 'na', 'pvc70', 85, 3600) },
    },
  ],
  [
    'blank pad',
    SketchPad,
    {
      id: 'a',
      title: 'The conductor, over half an hour',
      quantity: 'temperature',
      scenarios: pair(20),
      cells: { iec: [], na: [] },
      axis: { end: 1800, low: 0, high: 120 },
    },
  ],
  ['places', WrapAndWind, { id: 'a', number: '0.0.1', title: 'One lead, many places', cases: places }],
  ['sizes', SizeLadder, { id: 'a', number: '0.0.1', title: 'Sizes side by side', scenarios: pair(12) }],
  ['volts along', VoltsAlong, { id: 'a', number: '0.0.1', title: 'Volts along the run', scenarios: pair(12) }],
  [
    'race',
    FirstToAct,
    {
      id: 'a',
      number: '0.0.1',
      title: 'Who is first',
      scenarios: { iec: fused(pair(27).iec), na: fused(pair(27).na) },
    },
  ],
  ['metals', MetalQuartet, { id: 'a', number: '0.0.1', title: 'Four metals', scenarios: pair(12) }],
  [
    'question',
    QuestionBlock,
    {
      id: 'q',
      template: 'Q13',
      seed: 'picture',
      number: 1,
      of: 3,
      bench: '/bench/',
      among: Object.values(templates),
    },
  ],
  ['opening figure', RunningPair, { pairs: { iec: pairOf('iec'), na: pairOf('na') } }],
];

beforeEach(async () => {
  asNew();
  await page.viewport(900, 2600);
  // the opening figure stands at its end where motion is unwelcome
  vi.spyOn(window, 'matchMedia').mockImplementation(
    (media) => Object.assign(new EventTarget(), { media, matches: true }) as never,
  );
});

afterEach(() => {
  vi.restoreAllMocks();
});

/** As a desk shows it by day, and as a phone does by lamp. */
const screens = [
  { name: 'desk', theme: 'day', width: 752 },
  { name: 'phone', theme: 'lamp', width: 328 },
] as const;

describe.each(screens)('on a $name by $theme', ({ name: screenName, theme, width }) => {
  it.each(figures)('%s looks as its baseline does', async (name, figure, props) => {
    document.documentElement.dataset.theme = theme;
    const { frame } = await figureOnScreen(figure as Component<never>, props, width);
    await document.fonts.ready;
    await expect.element(page.elementLocator(frame)).toMatchScreenshot(`${name} ${screenName}`);
  });
});
