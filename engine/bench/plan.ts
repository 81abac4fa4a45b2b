import { markedSize } from '../cable/in-size.ts';
import { tableResistance } from '../conductor/iec60228.ts';
import { buildCase, type ThermalCase } from '../heating/thermal-case.ts';
import { celsius, kelvin } from '../quantity.ts';
import { leastSample, mostBenchVolts, mostConductor, mostSheath, mostSheathPractised } from './limits.ts';
import type { TestPlan } from './plan-schema.ts';
import { checkOutcome, type PowerCheck, powerChecks } from './power-checks.ts';
import { type CaseDoubt, type PredictedEvent, type PredictedMoment, predictedBand } from './predicted-band.ts';

/** Why a plan may not be powered, in a sentence that says what would be right. */
export interface Refusal {
  readonly id: string;
  readonly words: string;
}

/** A precaution to be taken before power. */
export interface Precaution {
  readonly id: string;
  readonly words: string;
}

/** What every bench asks for: ours, common practice, no source. */
export const precautions: readonly Precaution[] = [
  { id: 'dead', words: 'The lead is dead, unplugged at both ends, before anything is connected.' },
  { id: 'surface', words: 'It lies on a surface that does not burn, with nothing stored near.' },
  { id: 'air', words: 'There is ventilation or extraction. Nobody sniffs at it.' },
  { id: 'stop', words: 'The stop button is in reach of whoever stands there.' },
  { id: 'eyes', words: 'Eyes are protected.' },
  { id: 'straight', words: 'It is laid straight, unless winding is the question.' },
  { id: 'fire', words: 'An extinguisher and a burns kit are at hand.' },
  { id: 'cool', words: 'It is not handled until it is below 40 °C.' },
];

/** One step of a plan with what it is expected to show at its end. */
export interface PlannedStep {
  /** Which step of the supply, from 1. */
  readonly number: number;
  /** Current set [A], and how long it is held [s]. */
  readonly I: number;
  readonly dwell: number;
  readonly end: PredictedMoment;
}

/** What a plan predicts. */
export interface PlanPrediction {
  readonly steps: readonly PlannedStep[];
  /** Limits crossed on the way, in order of time. */
  readonly events: readonly PredictedEvent[];
  /** Abort limits in force [K]: never looser than the bench's own. */
  readonly abort: { readonly conductor: number; readonly sheath: number };
  /** First moment at which an abort limit is expected [s], by the middle of the band; null where none is. */
  readonly stopsAt: number | null;
  /** Greatest volts and amperes the supply and the meters must reach: the band's upper end, two standard uncertainties up. */
  readonly ranges: { readonly U: number; readonly I: number };
}

/** Predicts a plan's steps, one after the other. Throws `ScenarioFault` where its parts do not fit (parse first). */
export function predictPlan(plan: TestPlan, doubt?: CaseDoubt): PlanPrediction {
  const { supply } = plan.scenario;
  const ends = supply.map((_, i) => supply.slice(0, i + 1).reduce((sum, { duration_s = 0 }) => sum + duration_s, 0));
  const { moments, events, run } = predictedBand(plan.scenario, ends, doubt);
  const steps = supply.flatMap((step, i): PlannedStep[] =>
    step.kind === 'current'
      ? [{ number: i + 1, I: step.I_A, dwell: step.duration_s ?? 0, end: moments[i] as PredictedMoment }]
      : [],
  );
  const abort = abortOf(plan, buildCase(plan.scenario));
  const { t, conductor, surface } = run.curves;
  const at = t.findIndex(
    (_, i) => (conductor[i] as number) >= abort.conductor || (surface[i] as number) >= abort.sheath,
  );
  return {
    ...{ steps, events, abort, stopsAt: at < 0 ? null : (t[at] as number) },
    ranges: {
      U: Math.max(0, ...moments.map(({ U }) => U.value + 2 * U.u)),
      I: Math.max(0, ...steps.map(({ I }) => I)),
    },
  };
}

/** Abort limits in force [K]: the plan's, or the bench's own where those are lower. */
export function abortOf({ abort, bench }: TestPlan, of: ThermalCase): PlanPrediction['abort'] {
  const most = bench === 'teaching' ? mostSheath : mostSheathPractised;
  return {
    conductor: Math.min(kelvin(abort.conductor_degC), mostConductor(of)),
    sheath: Math.min(kelvin(abort.sheath_degC), most),
  };
}

/** The checks that a plan asks for before power. */
export function checksOf({ scenario }: TestPlan): readonly PowerCheck[] {
  const { cable, lead } = buildCase(scenario);
  const marked = markedSize(scenario.cable);
  const table = marked?.system === 'mm2' ? tableResistance(marked.size, 5) : undefined;
  return powerChecks({
    practice: scenario.practice ?? 'iec',
    cores: cable.cores,
    length: lead.length,
    R20: cable.conductor.R20,
    tableR20: table ? table.R20_ohmPerKm * 1e-3 : null,
  });
}

/**
 * Why a plan may not be powered, all reasons at once; empty when it may be locked. Limits of the bench are ours, may only be made stricter, and are not a licence.
 */
export function refusals(plan: TestPlan): Refusal[] {
  return [...supplyRefusals(plan), ...sampleRefusals(plan), ...peopleRefusals(plan), ...checkRefusals(plan)];
}

function supplyRefusals(plan: TestPlan): Refusal[] {
  const { supply, scenario } = plan;
  const most = mostBenchVolts[supply.current];
  const found: Refusal[] = [];
  if (supply.kind === 'mains')
    found.push({
      id: 'mains',
      words: 'A lead is never loaded from the mains here. Take an isolated supply of extra-low voltage.',
    });
  if (supply.most_V > most)
    found.push({
      id: 'volts',
      words: `The supply is set to ${supply.most_V} V; ${most} V ${supply.current === 'ac' ? 'AC' : 'ripple-free DC'} are the most.`,
    });
  const steps = scenario.supply;
  if (!steps.some(({ kind }) => kind === 'current') || steps.some(({ kind }) => kind !== 'current' && kind !== 'off'))
    found.push({ id: 'steps', words: 'A plan is made of steps of held current, with rests between them if wanted.' });
  if (steps.some(({ duration_s }) => !duration_s))
    found.push({ id: 'dwell', words: 'Each step needs the time for which it is held.' });
  return found;
}

function sampleRefusals(plan: TestPlan): Refusal[] {
  const of = buildCase(plan.scenario);
  const { surroundings } = plan.scenario;
  const found: Refusal[] = [];
  if (of.lead.length < leastSample)
    found.push({
      id: 'length',
      words: `The sample is ${of.lead.length} m; ${leastSample} m is the least, since 0.3 m from each end says nothing.`,
    });
  const hidden = surroundings.kind === 'coiled' || surroundings.kind === 'lagged';
  if (hidden && !plan.probes.some(({ place }) => place === 'hottest place'))
    found.push({ id: 'hottest', words: 'A lead that is wound or covered needs a probe at its hottest place.' });
  if (!plan.probes.some(({ place }) => place !== 'ambient'))
    found.push({ id: 'probe', words: 'There is no probe on the lead. It needs one at least.' });
  if (!plan.probes.some(({ place }) => place === 'ambient'))
    found.push({ id: 'ambient', words: 'There is no probe in the air beside the lead. It needs one.' });
  const { conductor, sheath } = abortOf(plan, of);
  if (kelvin(plan.abort.conductor_degC) > conductor + 1e-6 || kelvin(plan.abort.sheath_degC) > sheath + 1e-6)
    found.push({
      id: 'abort',
      words: `The abort limits are ${Math.round(celsius(conductor))} °C for the conductor and ${Math.round(celsius(sheath))} °C for the sheath at most. They may only be lowered.`,
    });
  return found;
}

function peopleRefusals({ people, taken, approvedBy }: TestPlan): Refusal[] {
  const found: Refusal[] = [];
  if (people.filter((name) => name.trim()).length < 2)
    found.push({ id: 'people', words: 'Two people are needed at the bench. Name both.' });
  for (const { id, words } of precautions)
    if (!taken.includes(id)) found.push({ id, words: `Not confirmed: ${words}` });
  if (!approvedBy.trim()) found.push({ id: 'approval', words: 'Nobody has approved the plan yet.' });
  return found;
}

function checkRefusals(plan: TestPlan): Refusal[] {
  return checksOf(plan).flatMap((check): Refusal[] => {
    const outcome = checkOutcome(
      check,
      plan.checks.find(({ id }) => id === check.id),
    );
    if (outcome === 'pass') return [];
    const words =
      outcome === 'fail' ? 'failed. A fail stops the plan.' : 'has not been done, or its reading is missing.';
    return [{ id: `check ${check.id}`, words: `${check.name} ${words}` }];
  });
}
