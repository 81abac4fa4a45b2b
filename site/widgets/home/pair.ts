import { type CastKey, castScenario, celsius, momentAt, predict } from '#engine';
import type { ChartEvent, Curve, Limit } from '../../charts/types.ts';
import { clock, type Practice, quantity, temperature } from '../../lib/format.ts';
import { flagsOf, shownLimits } from '../../lib/view-of.ts';

/** What the opening figure shows for one practice: worked out when the page is built, so that it brings no engine. */
export interface Pair {
  readonly curves: readonly Curve[];
  readonly limits: readonly Limit[];
  readonly events: readonly ChartEvent[];
  readonly sentence: string;
  readonly supply: string;
  readonly end: number;
}

const ambient = 20; // °C
const end = 1800; // s

// one heater too many on an ordinary lead, and on the suspect that is marked the same
const loads: Readonly<Record<Practice, { marked: CastKey; amps: number; size: string }>> = {
  iec: { marked: 'C150', amps: 17.4, size: '1.5\u00A0mm²' },
  na: { marked: 'A16', amps: 20, size: '16\u00A0AWG' },
};

/** The opening figure's two leads: marked alike, loaded alike. */
export function pairOf(practice: Practice): Pair {
  const { marked, amps, size } = loads[practice];
  const leads = [
    { name: 'copper', prediction: predict(castScenario(marked, amps, ambient, end)) },
    { name: 'suspect', prediction: predict(castScenario('SUS', amps, ambient, end)) },
  ];
  // close together where the curves bend most
  const times = Array.from({ length: 61 }, (_, i) => Math.round(end * (i / 60) ** 2)); // drawing: sampling of a curve
  const curves = leads.map(({ name, prediction }): Curve => {
    const T = times.map((t) => Number(celsius(momentAt(prediction.run.curves, t).conductor).toFixed(1)));
    return { id: name, name, weight: 'conductor', t: times, T };
  });
  const [copper, suspect] = leads.map(({ prediction }) => prediction);
  if (!copper || !suspect) throw new Error('the opening figure needs two leads');
  const ends = [copper, suspect].map(({ run }) => temperature(celsius(momentAt(run.curves, end).conductor), practice));
  const passed = suspect.run.events.find(({ limit }) => limit.kind === 'rating');
  const when = passed ? ` It passes the rating of its insulation at ${clock(passed.t)}.` : '';
  return {
    curves,
    limits: shownLimits(suspect.thermal.limits, 90),
    events: flagsOf(suspect).filter(({ id }) => id === passed?.limit.id),
    sentence: `Both are marked ${size} and carry the same current. After half an hour copper is at ${ends[0]}, the suspect at ${ends[1]}.${when}`,
    supply: `${quantity(amps, 'A', 1)} in both`,
    end,
  };
}
