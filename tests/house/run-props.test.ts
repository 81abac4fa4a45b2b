// What the figures of a lead with a length accept from a lesson, and the cases they make of it.
import { expect, it } from 'vitest';
import { alongRun, metalsCompared } from '#engine';
import { type LessonComponent, propFaults } from '#site/components/lesson/props.ts';
import { heldCases, loadedCases, runCases } from '#site/components/lesson/run-case.ts';

const figure = { id: 'run', number: '1.2.1', title: 'A run', cast: { iec: 'C150', na: 'A14' }, ambient: 20 };
const pump = { ...figure, amps: 12, length_m: { iec: 60, na: 30.48 } };

it.each<[LessonComponent, Record<string, unknown>]>([
  ['SizeLadder', { ...pump, sizes: { iec: [1.5, 2.5, 4], na: [14, 12, 10] }, controls: ['size', 'length'] }],
  ['VoltsAlong', { ...pump, load: 'watts', controls: ['load', 'current'] }],
  ['MetalQuartet', { ...figure, amps: 10, held: 'volts', controls: ['held', 'copper share'] }],
  ['MetalQuartet', { ...figure, volts: 6, length_m: 3 }],
])('%s accepts its props', (name, props) => {
  expect(propFaults(name, props)).toEqual([]);
});

it.each<[LessonComponent, Record<string, unknown>, RegExp]>([
  ['SizeLadder', { ...pump, sizes: { iec: [1.4, 2.5], na: [14, 12] } }, /1\.4 is no size in mm²/],
  ['VoltsAlong', { ...pump, length_m: 0 }, /is at least 0\.5 m/],
  ['VoltsAlong', { ...pump, load: 'horses' }, /horses.* is none of amps, ohms, watts/],
  ['MetalQuartet', { ...figure, amps: 10, volts: 6 }, /has amps, or volts alone/],
])('%s refuses what does not fit, in plain words', (name, props, says) => {
  expect(propFaults(name, props).join('\n')).toMatch(says);
});

it('makes the lead of each practice with its own length', () => {
  const cases = runCases({ cast: { iec: 'C150', na: 'A14' }, ambient: 20, amps: 12, length_m: { iec: 60, na: 30.48 } });
  expect([cases.iec.lead?.length_m, cases.na.lead?.length_m]).toEqual([60, 30.48]);
});

it('tells the same load in amps, ohms or watts of its own volts', () => {
  const of = { cast: { iec: 'C150', na: 'A14' }, ambient: 20, amps: 12, length_m: 30 } as const;
  expect(loadedCases(of, 'watts').iec.supply[0]).toEqual({ kind: 'power', U_V: 230, load_W: 2760 });
  expect(loadedCases(of, 'watts').na.supply[0]).toEqual({ kind: 'power', U_V: 120, load_W: 1440 });
  expect(alongRun(loadedCases(of, 'ohms').na).kind).toBe('settled');
});

it('holds the volts that copper takes at these amps, or those given', () => {
  const of = { cast: { iec: 'C150', na: 'A14' }, ambient: 20 } as const;
  const derived = heldCases({ ...of, amps: 10 }, 'volts').iec;
  expect(metalsCompared(derived)[0]?.settled?.I).toBeCloseTo(10, 0);
  expect(heldCases({ ...of, volts: 6, length_m: 3 }).iec.supply[0]).toMatchObject({ kind: 'voltage', U_V: 6 });
});
