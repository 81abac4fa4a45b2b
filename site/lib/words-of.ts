import { celsius, type HeatEvent, hottestMoment, type Limit, type Prediction } from '#engine';
import { clock, type Practice, temperature, timeInWords } from './format.ts';

const places = { conductor: 'the conductor', surface: 'the surface', outside: 'the outside' } as const;

/** What a limit is called in an event or a label; a range names the end it speaks of. */
function limitName(limit: Limit, end: 'low' | 'high'): string {
  if (limit.high === limit.low) return limit.name;
  return `${limit.name}, ${end === 'low' ? 'lower' : 'upper'} end`;
}

/** A short name of what happened: 'conductor passes its rating'. On a lead that nothing covers, the outside is its surface. */
export function eventWords({ limit, end, already }: HeatEvent, covered = false): string {
  const place = limit.place === 'outside' && !covered ? 'surface' : limit.place;
  if (limit.kind === 'melting') return already ? `${limit.name}: from the start` : limit.name;
  const verb = already ? 'is past' : 'passes';
  return `${place} ${verb} ${limit.kind === 'rating' ? 'its rating' : `the ${limitName(limit, end)}`}`;
}

function ending({ steady, run, scenario }: Prediction, practice: Practice): string {
  const at = (T: number) => temperature(celsius(T), practice);
  if (run.outcome === 'melted') return `The metal begins to melt after ${timeInWords(run.end)}.`;
  if (run.outcome === 'supply has no solution')
    return `After ${timeInWords(run.end)} the lead takes so many volts that the load cannot get its power.`;
  const peak = hottestMoment(run.curves);
  const lead = peak.t < run.end ? 'At its hottest, after' : 'After';
  const now = `${lead} ${timeInWords(peak.t)}, the conductor is at ${at(peak.conductor)} and the surface at ${at(peak.surface)}.`;
  if (scenario.supply.at(-1)?.kind === 'off') return now;
  if (steady.kind === 'no steady state') return `${now} Held for ever, it would not settle.`;
  return `${now} Held for ever, the conductor would settle at ${at(steady.chain.conductor)}.`;
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
