// Ageing at one temperature and along a run, and the law turned about.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type Ageing,
  ageingMeasuredTo,
  ageingRate,
  castScenario,
  halvingStep,
  kelvin,
  lifeAt,
  lifeShare,
  type Plastic,
  plastics,
  predict,
  temperatureForLife,
} from '#engine';

const ageing = ageingOf(plastics.pvc70);
const rating = ageing.refTemperature.value;

function ageingOf({ name, ageing: held }: Plastic): Ageing {
  if (!held) throw new Error(`${name} has no ageing data`);
  return held;
}

it('at its reference it lasts as long as its record says, and ages at the rate of one', () => {
  expect(lifeAt(ageing, rating)).toBeCloseTo(ageing.lifeAtRef.value, 3);
  expect(ageingRate(ageing, rating)).toBeCloseTo(1, 12);
  expect(lifeShare(ageing, rating, ageing.lifeAtRef.value)).toBeCloseTo(1, 12);
});

it('hotter is shorter, and the temperature for a life is the law turned about', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 250, max: 430, noNaN: true }),
      fc.double({ min: 0.1, max: 40, noNaN: true }),
      (T, d) => {
        expect(lifeAt(ageing, T + d)).toBeLessThan(lifeAt(ageing, T));
        expect(temperatureForLife(ageing, lifeAt(ageing, T))).toBeCloseTo(T, 6);
        expect(ageingRate(ageing, T) * lifeAt(ageing, T)).toBeCloseTo(ageing.lifeAtRef.value, 0);
      },
    ),
  );
});

it('the step that halves the life halves it; it is less than the trade’s ten kelvins for this PVC, and more when hotter', () => {
  const step = halvingStep(ageing, rating);
  expect(lifeAt(ageing, rating + step) / lifeAt(ageing, rating)).toBeCloseTo(0.5, 9);
  expect(step).toBeGreaterThan(6.5);
  expect(step).toBeLessThan(7.5);
  expect(halvingStep(ageing, ageingMeasuredTo)).toBeGreaterThan(step);
});

it('a run held at one temperature uses the share that the law gives', () => {
  const hours = 200;
  const I_A = 15;
  const held = { ...castScenario('C100', I_A, 30, hours * 3600), start: { steadyAt_A: I_A } };
  const { run, steady } = predict(held);
  if (steady.kind !== 'steady') throw new Error('it settles');
  const share = lifeShare(ageing, steady.chain.conductor, hours * 3600);
  expect((run.lifeUsed as number) / share).toBeCloseTo(1, 4);
  expect(steady.chain.conductor).toBeLessThan(kelvin(100));
});
