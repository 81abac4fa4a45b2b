// What the figures of a circuit accept from a lesson, and the asks and cases they make of it.
import { expect, it } from 'vitest';
import { chooserAsks, energyAsks, fixedWiringOf, loopCases } from '#site/components/lesson/circuit-case.ts';
import { type LessonComponent, propFaults } from '#site/components/lesson/props.ts';

const figure = { id: 'circuit', number: '3.1.1', title: 'A circuit' };
const breakers = { iec: { family: 'B', rating: 20 }, na: { family: 'ul489', rating: 25 } } as const;
const heater = { ...figure, watts: 4400, volts: { iec: 230, na: 240 }, device: breakers, ambient: { iec: 35, na: 45 } };
const cast = { iec: 'C150', na: 'A14' } as const;
const tunnel = { ...figure, cast, length_m: 30, origin: { iec: 0.35, na: 0.12 }, device: breakers };
const boat = { ...figure, cast, amps: 302, down: breakers, up: breakers };

it.each<[LessonComponent, Record<string, unknown>]>([
  ['SizeChooser', { ...heater, together: { iec: 3, na: 8 }, continuous: true, column: 90, terminals: 75, all: true }],
  ['SizeChooser', { ...figure, amps: 16, device: breakers, ambient: 30, laid: 'C', controls: ['load', 'method'] }],
  ['LoopTrace', { ...tunnel, fixed: { line: 0.15, earth: 0.25 }, warm: 70, controls: ['length', 'device'] }],
  ['I2tScale', { ...boat, earth: { iec: 1, na: 16 }, metal: 'aluminium', controls: ['current', 'maker'] }],
])('%s accepts its props', (name, props) => {
  expect(propFaults(name, props)).toEqual([]);
});

it.each<[LessonComponent, Record<string, unknown>, RegExp]>([
  ['SizeChooser', { ...heater, amps: 19 }, /has watts or amps, one of the two/],
  ['SizeChooser', { ...heater, device: { ...breakers, iec: { family: 'B', rating: 21 } } }, /21 A is no rating of B/],
  ['SizeChooser', { ...heater, together: 2.5 }, /is a whole number/],
  ['LoopTrace', { ...tunnel, origin: -1 }, /is at least 0 Ω/],
  ['LoopTrace', { ...tunnel, fixed: { line: 0.1 } }, /fixed/],
  ['I2tScale', { ...boat, amps: 1 }, /is at least 20 A/],
  ['I2tScale', { ...boat, earth: { iec: 1.1, na: 16 } }, /is a size in mm²/],
])('%s refuses what does not fit, in plain words', (name, props, says) => {
  expect(propFaults(name, props).join('\n')).toMatch(says);
});

it('makes an ask of each practice with its own volts, device and company', () => {
  const asks = chooserAsks({ ...heater, together: { iec: 3, na: 8 } });
  expect(asks.iec).toMatchObject({ told: 'watts', load: 4400, volts: 230, family: 'B', rating: 20, together: 3 });
  expect(asks.na).toMatchObject({ volts: 240, family: 'ul489', rating: 25, ambient: 45, together: 8 });
});

it('makes the loop of each practice, its fixed wiring the same where it is written once', () => {
  const of = { ...tunnel, fixed: { line: 0.15, earth: 0.25 } };
  expect(loopCases(of).na.supply[0]).toEqual({ kind: 'voltage', U_V: 120, source_ohm: 0.12 });
  expect(fixedWiringOf(of)).toEqual({ iec: { line: 0.15, earth: 0.25 }, na: { line: 0.15, earth: 0.25 } });
  expect(fixedWiringOf(tunnel)).toEqual({ iec: null, na: null });
});

it('asks of a clad lead with its own metal and its marking', () => {
  expect(energyAsks({ ...boat, cast: { iec: 'SUS', na: 'A16S' } }).iec).toMatchObject({ metal: 'cca10', size: 1.5 });
});
