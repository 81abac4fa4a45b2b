import { ScenarioFault } from '../scenario/fault.ts';
import type { OwnDevice } from '../scenario/schema.ts';
import { fastest, slowest } from './band.ts';
import type { Device, Gate } from './device.ts';
import { hour } from './gates.ts';

const points = (rows: readonly (readonly [number, number])[] = []): Gate[] =>
  rows.map(([I, t]) => ({ I, t, confidence: 'our choice' as const }));

/** Where a curve's points do not run down to the right, or begin at or below what is held. */
function check(path: string, gates: readonly Gate[], hold: number): void {
  const before = (i: number) => gates[i - 1] as Gate;
  const rises = gates.findIndex((gate, i) => i > 0 && !(gate.I > before(i).I && gate.t <= before(i).t));
  if (rises >= 0)
    throw new ScenarioFault(
      `device.${path}.${rises}`,
      'is out of order; currents must rise and times must not, from one point to the next',
    );
  if (gates[0] && gates[0].I <= hold)
    throw new ScenarioFault(`device.${path}.0`, `is at ${gates[0].I} A, but the device holds ${hold} A for ever`);
}

/** Refuses a band whose edges cross. On log–log both are straight between points, so it is enough to look at the points. */
function checkBand(of: Device): void {
  for (const { I } of [...of.notBefore, ...of.by]) {
    const fast = fastest(of, I, 'assumed') ?? 0;
    const slow = slowest(of, I, 'assumed') ?? Number.POSITIVE_INFINITY;
    if (fast > slow * (1 + 1e-9) || fastest(of, I, 'guaranteed') > slowest(of, I, 'guaranteed'))
      throw new ScenarioFault('device.fast', `lies above the slow curve at ${I} A; it must stay below it`);
  }
}

/** A device by a maker's curve: points of its slowest and, where there is one, its fastest time. */
export function ownCurve({ name, rating_A: In, hold_A, breaker, slow, fast }: OwnDevice): Device {
  const hold = hold_A ?? In;
  const by = points(slow);
  const notBefore = points(fast);
  check('slow', by, hold);
  check('fast', notBefore, hold);
  const own: Device = {
    family: 'own',
    kind: breaker ? 'breaker' : 'fuse',
    In,
    name: name ?? `${In}\u00A0A device by its maker’s curve`,
    hold: { I: hold, t: by[0] ? Math.max(hour, by[0].t) : hour, confidence: 'our choice' },
    notBefore,
    by,
    agreed: false,
    I2: null,
    source: 'user',
    where: 'points of the maker’s curve, as entered',
    silent: `The curve as entered has no point above ${by.at(-1)?.I} A.`,
  };
  checkBand(own);
  return own;
}
