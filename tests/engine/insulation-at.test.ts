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
