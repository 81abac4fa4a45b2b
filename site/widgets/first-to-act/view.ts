import {
  buildCase,
  celsius,
  type Device,
  deviceOf,
  momentAt,
  promised,
  type Race,
  raceOf,
  type Scenario,
  ScenarioFault,
} from '#engine';
import { roundOff } from '../../charts/log-scale.ts';
import type { DrawnRace, RaceLimit } from '../../charts/race/types.ts';
import { shownLimit } from '../../lib/view-of.ts';
import { shortName } from '../figure/devices.ts';
import { currentOf } from '../figure/edit.ts';
import { limitOf, type PlaneLimit } from '../plane/view.ts';
import { aboutTime, standardTime } from '../plane/words.ts';

/** The race of a case with a device, at its current, or at the device's rated one where it holds no current. */
export function raceIn(scenario: Scenario, limit: PlaneLimit): Race {
  if (!scenario.device) throw new ScenarioFault('device', 'is missing; this figure is about one');
  const thermal = buildCase(scenario);
  const device = deviceOf(scenario.device);
  return raceOf(thermal, device, limitOf(thermal, limit), currentOf(scenario) ?? device.In);
}

/** What the device did when it acted. */
export const opened = ({ kind }: Device): string => (kind === 'fuse' ? 'opened' : 'tripped');

/** Where both stand at a time [s]: conductor [K], and what is promised of the device. */
export function standingAt({ run, device, I }: Race, t: number) {
  return { T: momentAt(run.curves, t).conductor, promised: promised(device, I, t) };
}

/** True from the moment at which the device has surely stopped the current: the conductor is not followed further. */
export const stopped = ({ run }: Race, t: number): boolean => run.outcome === 'device opened' && t > run.end;

/** Something that comes to pass in a race. */
export interface Moment {
  readonly t: number;
  readonly what: 'start' | 'may' | 'limit' | 'passes' | 'sure' | 'end';
  /** Name of the limit that is passed. */
  readonly name?: string;
}

/** Limits of the conductor that its run passes, in order, without the race's own. */
const passings = ({ run, limit }: Race) =>
  run.events.filter((event) => event.end === 'low' && event.limit.place === 'conductor' && event.limit.id !== limit.id);

/** The moments of a race, by time; what is not within its end is left out. */
export function momentsOf(race: Race): Moment[] {
  const { band, conductor, end } = race;
  const all: Moment[] = [
    { t: 0, what: 'start' },
    { t: band.fastest, what: 'may' },
    ...(conductor <= band.slowest ? [{ t: conductor, what: 'limit' as const }] : []),
    ...passings(race).map(({ t, limit }) => ({ t, what: 'passes' as const, name: shownLimit(limit).name })),
    { t: band.slowest, what: 'sure' },
    { t: end, what: 'end' },
  ];
  return all.filter(({ t }) => t <= end).sort((a, b) => a.t - b.t);
}

function limitSays({ conductor, band }: Race): string {
  if (conductor === Number.POSITIVE_INFINITY) return 'not reached';
  return conductor <= band.slowest ? passedAt(conductor) : `not before ${aboutTime(conductor)}`;
}

const passedAt = (t: number): string => (t === 0 ? 'passed from the start' : `passed at ${aboutTime(t)}`);

/** A race as its two lanes draw it. */
export function drawnRace(race: Race): DrawnRace {
  const { device, limit, band, conductor, run, thermal, end } = race;
  const { fastest, slowest } = band;
  const passed = new Map(passings(race).map((event) => [event.limit.id, event.t]));
  const limits = thermal.limits
    .filter(({ place, kind, id }) => id === limit.id || (place === 'conductor' && kind !== 'melting'))
    .map((one): RaceLimit => {
      const goal = one.id === limit.id;
      const t = goal ? (conductor <= slowest ? conductor : Number.POSITIVE_INFINITY) : passed.get(one.id);
      return {
        ...shownLimit(one),
        goal,
        passed: t ?? Number.POSITIVE_INFINITY,
        said: goal ? limitSays(race) : t === undefined ? '' : passedAt(t),
      };
    });
  return {
    curve: { t: run.curves.t, T: run.curves.conductor.map(celsius) },
    limits,
    fastest,
    slowest,
    end,
    names: { conductor: 'Conductor, °C', device: `${shortName(device)}: operation used, %` },
    says: {
      hold: 'must hold',
      may: `may have ${opened(device)}${fastest > 0 ? `, from ${standardTime(fastest)} on` : ''}`,
      sure: `${slowest <= end ? `${opened(device)} for sure` : `must have ${opened(device)}`} by ${standardTime(slowest)}`,
    },
  };
}

const showing = 14; // s of the reader's at most: long enough to watch, short enough to run again

/** How many seconds of a race of `end` [s] pass in one of the reader's: a round number. */
export const paceOf = (end: number): number => roundOff(end / showing, 'up');

/** Step of an arrow key [s]: a round part of the whole. */
export const stepOf = (end: number): number => paceOf(end) / 4;
