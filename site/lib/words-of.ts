import { celsius, type HeatEvent, hottestMoment, type LimitKind, type Prediction } from '#engine';
import { clock, fixed, type Practice, temperature, timeInWords } from './format.ts';

const places = { conductor: 'the conductor', surface: 'the surface', outside: 'the outside' } as const;

/** What happens when an end of a limit is passed; where sources give a range, its low end is when it may begin. */
const happenings: Partial<Record<LimitKind, readonly [low: string, high: string]>> = {
  softening: ['insulation begins to soften', 'insulation past the top of its softening range'],
  fumes: ['fumes begin', 'past the top of the range of fume onset'],
  ignition: ['ignition becomes possible', 'past the top of its ignition range'],
};

/** A short name of what happened: 'conductor passes its rating'. On a lead that nothing covers, the outside is its surface. */
export function eventWords({ limit, end, already }: HeatEvent, covered = false): string {
  const happening = limit.id.startsWith('own') ? undefined : happenings[limit.kind];
  if (happening) return `${happening[end === 'low' ? 0 : 1]}${already ? ', from the start' : ''}`;
  if (limit.kind === 'melting') return already ? `${limit.name}: from the start` : limit.name;
  const place = limit.place === 'outside' && !covered ? 'surface' : limit.place;
  const what =
    limit.id === 'rating' ? 'its rating' : limit.id.startsWith('own') ? `“${limit.name}”` : `the ${limit.name}`;
  return `${place} ${already ? 'is past' : 'passes'} ${what}`;
}

function ending({ steady, run, scenario }: Prediction, practice: Practice): string {
  const at = (T: number) => temperature(celsius(T), practice);
  if (run.outcome === 'melted') return `The metal begins to melt after ${timeInWords(run.end)}.`;
  if (run.outcome === 'supply has no solution')
    return `After ${timeInWords(run.end)} the lead takes so many volts that the load cannot get its power.`;
  const peak = hottestMoment(run.curves);
  const lead = peak.t < run.end ? 'At its hottest, after' : 'After';
  const now = `${lead} ${timeInWords(peak.t)}, the conductor is at ${at(peak.conductor)} and the surface at ${at(peak.surface)}.`;
  if (run.outcome === 'device opened' && run.device)
    return `${now} By ${timeInWords(run.end)} the ${run.device.device.name} must have opened.`;
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

/** How far a temperature [°C] is from a limit: '16 K below its rating', '1 K over its rating'. */
export function besideLimit(T: number, limit: number, name: string): string {
  const off = Math.round(T) - Math.round(limit);
  if (off === 0) return `at ${name}`;
  return `${fixed(Math.abs(off), 0)}\u00A0K ${off > 0 ? 'over' : 'below'} ${name}`;
}
