import { describe, expect, it } from 'vitest';
import {
  buildCase,
  castScenario,
  kelvin,
  type PlaceKind,
  placeKindOf,
  placeKinds,
  predict,
  type Scenario,
  steadyState,
  supplyOf,
  surroundingsCompared,
  timeToRating,
  usualSurroundings,
} from '#engine';

const reelLead = (I_A: number): Scenario => ({ ...castScenario('C125', I_A, 20), lead: { length_m: 25 } });
const inPlace = (scenario: Scenario, kind: PlaceKind) => {
  const [one] = surroundingsCompared(scenario, [usualSurroundings(kind, 20, 25)]);
  if (!one) throw new Error(kind);
  return one;
};

describe.each(placeKinds)('a lead, %s', (kind) => {
  it('is known again by its surroundings, and settles as the engine settles it alone', () => {
    const surroundings = usualSurroundings(kind, 20, 25);
    expect(placeKindOf(surroundings)).toBe(kind);
    const of = buildCase({ ...reelLead(3), surroundings });
    expect(inPlace(reelLead(3), kind).steady).toEqual(steadyState(of, supplyOf(of, { kind: 'current', I_A: 3 })));
  });

  it('at its rating current settles at its rating, and passes it at a little more', () => {
    const { rating, ratedT } = inPlace(reelLead(3), kind);
    const at = inPlace(reelLead(rating as number), kind);
    expect(at.settled?.conductor).toBeCloseTo(ratedT as number, 6);
    expect(timeToRating(inPlace(reelLead(0.9 * (rating as number)), kind))).toBeNull();
    expect(timeToRating(inPlace(reelLead(1.3 * (rating as number)), kind))).toBeGreaterThan(60);
  });
});

it('is coolest in a draught, and hotter clipped, touching, lagged and on a reel, in that order', () => {
  const settled = (['draught', 'stillAir', 'clipped', 'touching', 'lagged', 'coiled'] as const).map(
    (kind) => inPlace(reelLead(5), kind).settled?.conductor as number,
  );
  expect(settled).toEqual(settled.toSorted((a, b) => a - b));
});

it('on a reel gives the range that the coil’s conductivity leaves, about its own answer', () => {
  const { estimate, settled } = inPlace(reelLead(5), 'coiled');
  const [coolest, hottest] = estimate as [number, number];
  expect(coolest).toBeLessThan((settled?.conductor as number) - 10);
  expect(hottest).toBeGreaterThan((settled?.conductor as number) + 10);
  expect(inPlace(reelLead(5), 'lagged').estimate).toBeNull();
});

it('gives no settled temperature past the model’s end, with a steady state there or none', () => {
  for (const I of [10, 13]) {
    const reel = inPlace(reelLead(I), 'coiled');
    expect(reel.settled).toBeNull();
    expect(reel.overRating).toBe(true);
    expect(reel.estimate?.[1]).toBeNull();
  }
  expect(inPlace(reelLead(13), 'stillAir').settled?.conductor).toBeLessThan(kelvin(70));
});

it('tells the time to the rating as a whole run has it', () => {
  const scenario: Scenario = { ...reelLead(10), surroundings: usualSurroundings('coiled', 20, 25) };
  const event = predict({ ...scenario, run: { duration_s: 7200 } }).run.events.find(
    ({ limit }) => limit.kind === 'rating',
  );
  expect(timeToRating(inPlace(reelLead(10), 'coiled'))).toBeCloseTo(event?.t as number, 0);
});
