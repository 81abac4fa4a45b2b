import { celsius, type HeatEvent, type Limit, type Prediction } from '#engine';
import { clock, type Practice, temperature, timeInWords } from './format.ts';

const places = { conductor: 'the conductor', surface: 'the surface', outside: 'the outside' } as const;

/** What a limit is called in an event or a label; a range names the end it speaks of. */
function limitName(limit: Limit, end: 'low' | 'high'): string {
  if (limit.high === limit.low) return limit.name;
  return `${limit.name}, ${end === 'low' ? 'lower' : 'upper'} end`;
}

/** A short name of what happened: 'conductor passes its rating'. */
export function eventWords({ limit, end, already }: HeatEvent): string {
  const place = limit.place === 'outside' ? 'outside' : limit.place;
  if (limit.kind === 'melting') return already ? `${limit.name}: from the start` : limit.name;
  const verb = already ? 'is past' : 'passes';
  return `${place} ${verb} ${limit.kind === 'rating' ? 'its rating' : limitName(limit, end)}`;
}

function ending({ steady, run }: Prediction, practice: Practice): string {
  const last = run.curves.t.length - 1;
  const at = (T: number | undefined) => temperature(celsius(T ?? Number.NaN), practice);
  if (run.outcome === 'melted') return `The metal begins to melt after ${timeInWords(run.end)}.`;
  if (run.outcome === 'supply has no solution')
    return `After ${timeInWords(run.end)} the lead takes so many volts that the load cannot get its power.`;
  const now = `After ${timeInWords(run.end)} the conductor is at ${at(run.curves.conductor[last])} and the surface at ${at(run.curves.surface[last])}.`;
  if (steady.kind === 'no steady state') return `${now} Held for ever, it would not settle.`;
  return `${now} Held, the conductor settles at ${at(steady.chain.conductor)}.`;
}

/** What a prediction says, in two or three sentences made from its data. */
export function sentenceOf(prediction: Prediction, practice: Practice = 'iec'): string {
  const { run, validity, rating } = prediction;
  const first = run.events.find((event) => event.limit.kind === 'rating');
  const passes = first
    ? first.already
      ? ' The conductor is past the rating of its insulation from the start.'
      : ` ${places[first.limit.place][0]?.toUpperCase()}${places[first.limit.place].slice(1)} passes its rating at ${clock(first.t)}.`
    : rating === null
      ? ''
      : ' It stays below the rating of its insulation.';
  const beyond =
    validity.outsideFrom === null ? '' : ` From ${clock(validity.outsideFrom)} on the curve is outside the model.`;
  return `${ending(prediction, practice)}${passes}${beyond}`;
}
