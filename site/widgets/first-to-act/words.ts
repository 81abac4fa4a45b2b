import { celsius, deviceConfidence, type Race, type RaceFirst, shareUsed, sources } from '#engine';
import type { Cell, TableTwin } from '../../charts/sheet.ts';
import { clock, fixed, type Practice, temperature } from '../../lib/format.ts';
import { besideLimit } from '../../lib/words-of.ts';
import { shortName } from '../figure/devices.ts';
import { aboutTime, ampereWords, deviceSource, limitWords, standardTime } from '../plane/words.ts';
import { type Moment, momentsOf, opened, paceOf, standingAt, stopped } from './view.ts';

const never = Number.POSITIVE_INFINITY;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Simulated time as a stop watch shows it, as fine as the race is short; in seconds where the axis is. */
export const watch = (t: number, end: number): string => (end < 20 ? `${fixed(t, end < 2 ? 3 : 1)}\u00A0s` : clock(t));

/** What the device may do, to follow its name. */
function deviceDoes({ band: { fastest, slowest } }: Race): string {
  if (fastest === never) return 'must hold for ever';
  const from = fastest > 0 ? `after ${standardTime(fastest)}` : 'at once';
  return slowest === never
    ? `may open ${from}, or hold for ever`
    : `may open ${from}, and must by ${standardTime(slowest)}`;
}

/** What becomes of the conductor, to follow its name: 'passes its 70 °C rating after 2 min 40 s'. */
function conductorDoes({ conductor, limit, settles }: Race, practice: Practice): string {
  const goal = limitWords(limit, practice);
  if (conductor === 0) return `is past ${goal} from the start`;
  if (conductor < never) return `passes ${goal} after ${aboutTime(conductor)}`;
  if (settles !== null && settles < limit.low)
    return `settles at ${temperature(celsius(settles), practice)}, below ${goal}`;
  return `is not at ${goal} within a day`;
}

/** Who was first, on what the standard promises. */
const verdicts: Record<RaceFirst, (race: Race, practice: Practice) => string> = {
  neither: (race, practice) =>
    `Nobody arrives. The ${shortName(race.device)} must hold for ever, and the conductor ${conductorDoes(race, practice)}.`,
  'device or neither': (race, practice) =>
    `The conductor does not arrive: it ${conductorDoes(race, practice)}. The ${shortName(race.device)} ${deviceDoes(race)}.`,
  device: (race, practice) => {
    const { device, conductor, band, limit } = race;
    const other =
      conductor < never
        ? `would need ${aboutTime(conductor)} to ${limitWords(limit, practice)}`
        : conductorDoes(race, practice);
    return `The ${shortName(device)} is first: it has surely ${opened(device)} by ${standardTime(band.slowest)}. The conductor ${other}.`;
  },
  conductor: (race, practice) =>
    `The conductor is first: it ${conductorDoes(race, practice)}. The ${shortName(race.device)} ${race.band.fastest === never ? 'must hold for ever' : `must not open before ${standardTime(race.band.fastest)}`}.`,
  either: (race, practice) => {
    const { device, band, conductor } = race;
    const late =
      band.slowest === never ? '' : ` So the conductor can stay past it for ${aboutTime(band.slowest - conductor)}.`;
    return `It may be either. The conductor ${conductorDoes(race, practice)}. The ${shortName(device)} ${deviceDoes(race)}.${late}`;
  },
  together: (race, practice) =>
    `Too near to tell. The conductor ${conductorDoes(race, practice)}, and the ${shortName(race.device)} has surely ${opened(race.device)} by ${standardTime(race.band.slowest)}.`,
};

const straight: Record<RaceFirst, string> = {
  neither: 'nobody arrives',
  'device or neither': 'the device may act, and the conductor does not arrive',
  device: 'the device is surely first',
  conductor: 'the conductor is surely first',
  either: 'it may be either',
  together: 'it is too near to tell',
};

/** The end of a race in a few sentences: who was first and when, what an assumption would make of it, and a limit borrowed. */
export function verdictWords(race: Race, practice: Practice): string {
  const { first, assumed, limit, conductor } = race;
  const borrowed = limit.kind === 'shortTime' && conductor > borrowedFrom && conductor < never;
  return [
    verdicts[first](race, practice),
    assumed ? `If the curve is straight between its points, ${straight[assumed]}.` : '',
    borrowed
      ? `${temperature(celsius(limit.low), practice)} is a limit for ${limit.duration}, taken here for longer.`
      : '',
  ]
    .filter(Boolean)
    .join(' ');
}
const borrowedFrom = 5; // s, what a limit of short circuits is meant for

/** The conductor beside its limit at a time: '31 K below its rating'. */
export function besideGoal(race: Race, t: number): string {
  const { limit } = race;
  return besideLimit(
    celsius(standingAt(race, t).T),
    celsius(limit.low),
    limit.id === 'rating' ? 'its rating' : 'its limit',
  );
}

/** What is promised of the device by a time, and how much of its operation is used. */
export function deviceStands(race: Race, t: number): { does: string; used: string } {
  const { band } = race;
  const does = { holds: 'must hold', may: 'may be open', acts: 'is open' };
  const [least, most] = [band.slowest, band.fastest].map((acts) => fixed(100 * shareUsed(t, acts), 0)) as [
    string,
    string,
  ];
  return {
    does: does[standingAt(race, t).promised],
    used: least === most ? `${least}\u00A0% used` : `${least} to ${most}\u00A0% used`,
  };
}

/** Both at a time, in words. */
export function standingWords(race: Race, t: number, practice: Practice): string {
  const { does, used } = deviceStands(race, t);
  const { T } = standingAt(race, t);
  const is = stopped(race, t) ? 'When the current stopped, the conductor was' : 'The conductor is';
  return `${is} at ${temperature(celsius(T), practice)}, ${besideGoal(race, t)}. The ${shortName(race.device)} ${does}, ${used}.`;
}

/** The race while it is under way: it changes only at a moment, so that it can be said aloud. */
export function underWay(race: Race, t: number): string {
  const { conductor, limit, device } = race;
  const stands = { holds: 'must still hold', may: `may have ${opened(device)}`, acts: `has surely ${opened(device)}` };
  const where = conductor <= t ? `past ${limitWords(limit, 'iec')}` : `below ${limitWords(limit, 'iec')}`;
  return `The race is on. The conductor is ${where}. The ${shortName(device)} ${stands[standingAt(race, t).promised]}.`;
}

/** How fast the race is run, in words. */
export function paceWords(end: number): string {
  const pace = paceOf(end);
  if (pace === 1) return 'as it passes';
  return pace > 1 ? `${fixed(pace, pace % 1 ? 1 : 0)} times as fast` : `slowed down ${fixed(1 / pace, 0)} times`;
}

/** Title block: cable, surroundings, current, device, limit, how fast it runs. */
export function raceCells(race: Race, practice: Practice): Cell[] {
  const { thermal, device, limit, I, end, validity } = race;
  const { cable, n, outside } = thermal;
  return [
    { name: 'Cable', value: `${cable.name}${cable.row ? `, ${cable.conductor.metal.name}` : ''}, ${n} loaded` },
    { name: 'Surroundings', value: outside.words },
    {
      name: 'Current',
      value: `${ampereWords(I)}${stopped(race, end) ? `, until the ${device.kind} has surely ${opened(device)}` : ''}`,
    },
    { name: 'Device', value: `${device.name}, band the standard promises` },
    { name: 'Limit', value: `${temperature(celsius(limit.low), practice)}, ${limit.name}` },
    { name: 'Run', value: paceWords(end) },
    ...(validity.outsideFrom === null
      ? []
      : [{ name: 'Model', value: `holds to ${watch(validity.outsideFrom, end)}` }]),
  ];
}

function happens(race: Race, { what, name }: Moment): string {
  const { device, limit } = race;
  return {
    start: 'switched on',
    may: `the ${device.kind} may open from here on`,
    limit: `the conductor passes ${limitWords(limit, 'iec')}`,
    passes: `the conductor passes: ${name?.toLowerCase()}`,
    sure: `the ${device.kind} has surely ${opened(device)}`,
    end: 'the race ends',
  }[what];
}

function restsOn({ device, limit }: Race, { what }: Moment): string {
  if (what === 'limit')
    return `${limit.source === 'user' ? 'as entered' : sources[limit.source].title}; ${limit.confidence}`;
  return what === 'may' || what === 'sure' ? `${deviceSource(device)}; ${deviceConfidence(device)}` : '–';
}

/** The table twin: every moment, where both stand then, and what it rests on. */
export function raceTable(race: Race, title: string, practice: Practice): TableTwin {
  const { band, end } = race;
  const used = (t: number, acts: number): string => fixed(100 * shareUsed(t, acts), 0);
  const rows = momentsOf(race).map((moment) => [
    watch(moment.t, end),
    temperature(celsius(standingAt(race, moment.t).T), practice),
    used(moment.t, band.fastest),
    used(moment.t, band.slowest),
    capital(happens(race, moment)),
    restsOn(race, moment),
  ]);
  return {
    caption: `${title}: moments of the race at ${ampereWords(race.I)}`,
    columns: ['Time', 'Conductor', 'Used if fastest, %', 'Used if slowest, %', 'What happens', 'Rests on'],
    rows,
  };
}
