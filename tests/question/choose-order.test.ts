import { expect, it } from 'vitest';
import { dealt, dealtOrder } from '#engine/question/deal.ts';
import type { TemplateSpec } from '#engine/question/types.ts';
import { ampsOrVoltsHeldSpec } from '#engine/question/unit-1/amps-or-volts-held.ts';
import { coolEnoughSpec } from '#engine/question/unit-1/cool-enough.ts';
import { halfTheHeatSpec } from '#engine/question/unit-1/half-the-heat.ts';
import { longerLeadSpec } from '#engine/question/unit-1/longer-lead.ts';
import { metalsInOrderSpec } from '#engine/question/unit-1/metals-in-order.ts';
import { riseAfterMoreSpec } from '#engine/question/unit-1/rise-after-more.ts';
import { sizesInOrderSpec } from '#engine/question/unit-1/sizes-in-order.ts';
import { limitsInOrderSpec } from '#engine/question/unit-2/limits-in-order.ts';
import { placesInOrderSpec } from '#engine/question/unit-2/places-in-order.ts';
import { stageReelSpec } from '#engine/question/unit-2/stage-reel.ts';
import { thickerWallSpec } from '#engine/question/unit-2/thicker-wall.ts';
import { whichInsulationSpec } from '#engine/question/unit-2/which-insulation.ts';
import { testChosen } from './chosen-templates.ts';

const specs = [
  riseAfterMoreSpec,
  halfTheHeatSpec,
  sizesInOrderSpec,
  longerLeadSpec,
  metalsInOrderSpec,
  coolEnoughSpec,
  ampsOrVoltsHeldSpec,
  thickerWallSpec,
  limitsInOrderSpec,
  whichInsulationSpec,
  placesInOrderSpec,
  stageReelSpec,
] as unknown as TemplateSpec<object>[];

testChosen(specs, { Q14: { iec: ['M10'] } });

it('deals the same hand for the same number, and all items', () => {
  const items = ['a', 'b', 'c', 'd', 'e'];
  expect(dealt(items, 7)).toEqual(dealt(items, 7));
  expect([...dealt(items, 7)].sort()).toEqual(items);
  const hands = new Set(Array.from({ length: 400 }, (_, i) => dealt(items, i).join('')));
  expect(hands.size).toBeGreaterThan(100);
});

it('never deals an order that tells something, not even of three items', () => {
  for (let deal = 0; deal < 200; deal++) {
    const shown = dealtOrder(['a', 'b', 'c'], [['b', 'a', 'c']], deal).join('');
    expect(['abc', 'cba', 'bac']).not.toContain(shown);
  }
});
