import { expect, it } from 'vitest';
import { heldAt, kelvin, plastics } from '#engine';

const standings = (T_degC: number, t = 3600) =>
  Object.fromEntries(
    heldAt(plastics.pvc70, kelvin(T_degC), t).limits.map(({ limit, standing }) => [limit.kind, standing]),
  );

it('tells below, within and past apart, limit by limit', () => {
  expect(standings(60)).toMatchObject({ touch: 'below', rating: 'below', softening: 'below' });
  expect(standings(85)).toMatchObject({ touch: 'past', rating: 'past', softening: 'within', shortTime: 'below' });
  expect(standings(170)).toMatchObject({ softening: 'past', shortTime: 'past', fumes: 'below' });
});

it('lets a short circuit have its five seconds above the rating, and no more', () => {
  expect(heldAt(plastics.pvc70, kelvin(150), 5).tooLong).toBe(false);
  expect(heldAt(plastics.pvc70, kelvin(150), 6).tooLong).toBe(true);
  expect(heldAt(plastics.pvc70, kelvin(70), 1e6).tooLong).toBe(false);
});

it('ages at its own pace at the rating, faster above, and says where the law leaves its data', () => {
  const at = (T_degC: number) => heldAt(plastics.pvc70, kelvin(T_degC), 3600).ageing;
  expect(at(70)?.rate).toBeCloseTo(1, 9);
  expect(at(70)?.share).toBeCloseTo(3600 / (at(70)?.life ?? 0), 12);
  expect(at(80)?.rate).toBeGreaterThan(2);
  expect([at(99)?.beyondData, at(101)?.beyondData]).toEqual([false, true]);
  expect(heldAt(plastics.silicone, kelvin(100), 3600).ageing).toBeNull();
});

// Babrauskas 2005: PVC char conducts after about 10 h near 160 °C, wires fail after about a month at 110 °C
it('tells what PVC held hot for long has come to, once it is as hot and as long', () => {
  const slow = (T_degC: number, hours: number) =>
    heldAt(plastics.pvc70, kelvin(T_degC), hours * 3600).slow.map(({ reached }) => reached);
  expect(slow(160, 10)).toEqual([false, true]);
  expect(slow(160, 9)).toEqual([false, false]);
  expect(slow(110, 720)).toEqual([true, false]);
  expect(slow(109, 8760)).toEqual([false, false]);
  expect(heldAt(plastics.xlpe, kelvin(200), 1e9).slow).toEqual([]);
});

it('doubles the pace per 10 K by the round rule, near the rating alone', () => {
  expect(heldAt(plastics.silicone, kelvin(190), 1).roundRate).toBeCloseTo(2, 9);
  expect(heldAt(plastics.pvc70, kelvin(50), 1).roundRate).toBeCloseTo(0.25, 9);
  expect(heldAt(plastics.pvc70, kelvin(101), 1).roundRate).toBeNull();
});

it('leaves ageing behind past the top of softening', () => {
  const overtaken = (T_degC: number) => heldAt(plastics.pvc70, kelvin(T_degC), 1).ageing?.overtaken;
  expect([overtaken(120), overtaken(121)]).toEqual([false, true]);
});
