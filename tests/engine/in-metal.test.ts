import { expect, it } from 'vitest';
import { cableOf, cast, inMetal, metals } from '#engine';

it('leaves copper as it was, table resistance and all', () => {
  expect(cableOf(inMetal(cast.C150, 'copper')).conductor.R20).toBeCloseTo(cableOf(cast.C150).conductor.R20, 12);
});

it('keeps strands, bundle and walls, and scales the resistance by the metals alone', () => {
  const copper = cableOf(cast.C125);
  const steel = cableOf(inMetal(cast.C125, 'steel'));
  expect(steel.conductor.R20 / copper.conductor.R20).toBeCloseTo(
    metals.steel.rho20.value / metals.copper.rho20.value,
    9,
  );
  expect(steel.conductor.rc).toBe(copper.conductor.rc);
  expect(steel.outerRadius).toBe(copper.outerRadius);
  expect(steel.conductor.metal.magnetic).toBe(true);
});

it('goes back again: the suspect in copper has the resistance of its own strands in copper', () => {
  const suspect = cableOf(cast.SUS);
  const back = cableOf(inMetal(inMetal(cast.SUS, 'copper'), 'cca10'));
  expect(back.conductor.R20).toBeCloseTo(suspect.conductor.R20, 12);
});
