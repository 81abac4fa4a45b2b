import { celsius, type Limit, type LimitKind, momentAt, type Prediction, supplyWords } from '#engine';
import type { Cell, TableTwin } from '../charts/sheet.ts';
import type { ChartEvent, Curve, LimitStyle, Settling, Limit as ShownLimit } from '../charts/types.ts';
import { clock, fahrenheit, fixed, type Practice, quantity, significant } from './format.ts';
import { eventWords } from './words-of.ts';

const styles: Record<LimitKind, LimitStyle> = {
  touch: 'touch',
  rating: 'rating',
  softening: 'softening',
  fumes: 'fumes',
  ignition: 'ignition',
  shortTime: 'other',
  melting: 'other',
  other: 'other',
};

const short: Partial<Record<LimitKind, string>> = {
  touch: 'Touch',
  rating: 'Rating',
  softening: 'Softens from',
  shortTime: 'Short circuit',
  fumes: 'Fumes from',
  ignition: 'Ignites from',
  melting: 'Metal melts',
};

/** A limit as a line of the chart or ladder, at the lower end of its range. */
export function shownLimit(limit: Limit): ShownLimit {
  const name = limit.kind === 'other' || limit.id.startsWith('own') ? limit.name : (short[limit.kind] ?? limit.name);
  return { id: limit.id, name, T: celsius(limit.low), style: styles[limit.kind] };
}

/** The limits worth drawing for a picture whose hottest point is `top` [°C]: rating and touch always, others when near. */
export function shownLimits(limits: readonly Limit[], top: number): ShownLimit[] {
  const near = limits.filter(({ kind, low }) => kind === 'rating' || kind === 'touch' || celsius(low) <= top * 1.15);
  return near.map(shownLimit);
}

/** Whether lagging or a coil lies between the cable's own surface and the outside. */
export function isCovered({ thermal: { outside } }: Prediction): boolean {
  return outside.rings.length > 0 || outside.series > 0;
}

/** The pictures of one prediction: its curves, in °C, marked with `name` where several stand on one sheet. */
export function curvesOf(prediction: Prediction, name?: string): Curve[] {
  const { curves } = prediction.run;
  const { outsideFrom } = prediction.validity;
  const covered = isCovered(prediction);
  const curve = (id: 'conductor' | 'surface' | 'outside', label: string): Curve => ({
    id: name ? `${name} ${id}` : id,
    name: label,
    t: curves.t,
    T: curves[id].map(celsius),
    weight: id,
    ...(name ? { case: name } : {}),
    ...(outsideFrom === null ? {} : { past: outsideFrom }),
  });
  const all = [curve('conductor', 'conductor'), curve('surface', covered ? 'cable surface' : 'surface')];
  return covered ? [...all, curve('outside', 'outside')] : all;
}

/** Events as flags; the upper ends of ranges are left to the table. */
export function flagsOf(prediction: Prediction): ChartEvent[] {
  const covered = isCovered(prediction);
  return prediction.run.events
    .filter(({ end }) => end === 'low')
    .map((event) => ({ id: event.limit.id, t: event.t, T: celsius(event.T), text: eventWords(event, covered) }));
}

/** Where the curves end if the last supply is held for ever. */
export function settlingOf({ steady }: Prediction): Settling[] {
  return steady.kind === 'steady' && steady.I > 0
    ? [{ id: 'settles', name: 'settles', T: celsius(steady.chain.conductor) }]
    : [];
}

/** Title block: cable, surroundings, supply, how far the model holds. */
export function cellsOf(prediction: Prediction): Cell[] {
  const { thermal, scenario, validity, run } = prediction;
  const { cable, n } = thermal;
  const supply =
    scenario.supply.length > 3 ? `${scenario.supply.length} steps` : scenario.supply.map(supplyWords).join(', then ');
  const metal = cable.row ? `, ${cable.conductor.metal.name}` : '';
  return [
    { name: 'Cable', value: `${cable.name}${metal}${cable.cores > 1 ? `, ${n} loaded` : ''}` },
    { name: 'Surroundings', value: thermal.outside.words },
    { name: 'Supply', value: supply },
    ...(run.device ? [{ name: 'Device', value: run.device.device.name }] : []),
    {
      name: 'Model',
      value: validity.outsideFrom === null ? 'holds throughout' : `holds to ${clock(validity.outsideFrom)}`,
    },
  ];
}

const marks = [0, 10, 20, 30, 60, 120, 180, 300, 600, 900, 1200, 1800, 2700, 3600, 5400, 7200, 14_400, 28_800, 86_400];

/** Times worth a row in a table of a run of `end` seconds. */
function rowTimes(end: number): number[] {
  if (end < 20) return Array.from({ length: 11 }, (_, i) => (end * i) / 10);
  return [...marks.filter((t) => t < end), end];
}

/** The table twin: time, temperatures, amps, volts and watts at round times and at each event. */
export function tableOf(prediction: Prediction, practice: Practice = 'iec'): TableTwin {
  const { run, thermal } = prediction;
  const covered = isCovered(prediction);
  const end = run.end;
  const times = [...new Set([...rowTimes(end), ...run.events.map(({ t }) => t)])].sort((a, b) => a - b);
  const degrees = (T: number) => fixed(celsius(T), 1);
  const also = practice === 'na' ? (T: number) => [fixed(fahrenheit(celsius(T)), 0)] : () => [];
  const rows = times.map((t) => {
    const now = momentAt(run.curves, t);
    const met = run.events.filter((event) => event.t === t).map((event) => eventWords(event, covered));
    return [
      end < 20 ? `${significant(t, 3)} s` : clock(t),
      degrees(now.conductor),
      ...also(now.conductor),
      degrees(now.surface),
      ...(covered ? [degrees(now.outside)] : []),
      fixed(now.I, 2),
      significant(now.U, 3),
      significant(now.heat, 3),
      met.join('; '),
    ];
  });
  const columns = [
    'Time',
    'Conductor, °C',
    ...(practice === 'na' ? ['Conductor, °F'] : []),
    'Surface, °C',
    ...(covered ? ['Outside, °C'] : []),
    'Current, A',
    'Volts along the lead, V',
    'Heat, W/m',
    'What happens',
  ];
  return { caption: `${thermal.cable.name}: temperatures over time`, columns, rows };
}

/** A current in amperes for a heading: '13.7 A', or why there is none. */
export function currentWords(I: number | null): string {
  if (I === null) return 'none: the metal melts first';
  return I === 0 ? 'none: ambient is there already' : quantity(I, 'A', 1);
}
