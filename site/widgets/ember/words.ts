import { celsius, hottestMoment, momentAt, type Prediction, type Scenario, supplyWords } from '#engine';
import { clock, type Practice, quantity, temperature, timeInWords } from '../../lib/format.ts';
import { currentOf } from '../figure/edit.ts';
import { isCycled, periodOf } from './edit.ts';
import { factsOf, onTime, shareOfRise } from './facts.ts';

/** The hottest moment of a run: when [s] and how hot the conductor is [°C]. */
export function peakOf({ run }: Prediction): { t: number; T: number } {
  const { t, conductor } = hottestMoment(run.curves);
  return { t, T: celsius(conductor) };
}

/** The supply as the title block says it: '20 A for 30 min, then off'; '20 A for 3 min in every 10 min'. */
export function supplyCell(scenario: Scenario): string {
  const I = currentOf(scenario);
  const on = onTime(scenario);
  const period = periodOf(scenario);
  if (I === undefined || !Number.isFinite(on)) return scenario.supply.map(supplyWords).join(', then ');
  const amps = quantity(I, 'A', Number.isInteger(I) ? 0 : 1);
  if (isCycled(scenario) && period !== undefined)
    return `${amps} for ${timeInWords(on)} in every ${timeInWords(period)}`;
  return `${amps} for ${timeInWords(on)}${scenario.supply.length > 1 ? ', then off' : ''}`;
}

function ratingSentence({ run, rating }: Prediction): string {
  const passed = run.events.find(({ limit }) => limit.kind === 'rating');
  if (passed?.already) return ' It is past the rating of its insulation from the start.';
  if (passed) return ` The conductor passes its rating at ${clock(passed.t)}.`;
  return rating === null ? '' : ' It stays below the rating of its insulation.';
}

function onceSentence(prediction: Prediction, practice: Practice): string {
  const { run, scenario } = prediction;
  const on = Math.min(run.end, onTime(scenario));
  const now = momentAt(run.curves, on);
  const { share } = factsOf(prediction);
  const third = Number.isFinite(share) ? ` It has made ${shareOfRise}\u00A0% of its rise at ${clock(share)}.` : '';
  return `After ${timeInWords(on)} the conductor is at ${temperature(celsius(now.conductor), practice)} and the surface at ${temperature(celsius(now.surface), practice)}.${third}`;
}

function cycledSentence(prediction: Prediction, practice: Practice): string {
  const { t, T } = peakOf(prediction);
  return `Going on and off, the conductor peaks at ${temperature(T, practice)}, ${timeInWords(t)} after the first start.`;
}

/** What an on-and-off run says, in a few sentences made from its data. */
export function emberSentence(prediction: Prediction, practice: Practice): string {
  const { run, validity, scenario } = prediction;
  if (run.outcome === 'melted') return `The metal begins to melt after ${timeInWords(run.end)}.`;
  const first = isCycled(scenario) ? cycledSentence(prediction, practice) : onceSentence(prediction, practice);
  const beyond =
    validity.outsideFrom === null ? '' : ` From ${clock(validity.outsideFrom)} on the curve is outside the model.`;
  return `${first}${ratingSentence(prediction)}${beyond}`;
}
