import { evidenceOf } from '../bench/evidence-of.ts';
import { identify } from '../bench/identify/identify.ts';
import type { FoundOnLead } from '../bench/job-schema.ts';
import { predictPlan } from '../bench/plan.ts';
import { emptyPlan } from '../bench/plan-schema.ts';
import { metalOfSample, resistanceOfSample } from '../bench/report/facts.ts';
import { type FaultyVerdict, faultyVerdicts, type WholeFacts } from '../bench/verdict-faults.ts';
import { verdictOrigin } from '../bench/verdict-origins.ts';
import { type VerdictSentence, verdictWords } from '../bench/verdict-words.ts';
import { ratingOf } from '../heating/limits-of.ts';
import { buildCase } from '../heating/thermal-case.ts';
import { deviceOf } from '../protection/devices.ts';
import { mend } from '../protection/mend.ts';
import { celsius } from '../quantity.ts';
import { castScenario, planStart } from './cast.ts';

/** The suspect lead of the course as a report tells it: plain data, made when a page is built. */
export interface SuspectVerdict {
  /** What is known of it, a line each. */
  readonly facts: readonly { readonly name: string; readonly text: string }[];
  /** The verdict, with where each sentence has its numbers from. */
  readonly ours: readonly (VerdictSentence & { readonly from: string })[];
  /** Two verdicts of others, each sentence judged. */
  readonly faulty: readonly FaultyVerdict[];
  /** Why the device never opened, in three sentences. */
  readonly neverOpened: readonly string[];
}

/** Load of the hall in lesson 4.3 [A], its air [°C], and the greatest current that is looked at there [A]. */
const hall = { load: 20, ambient_degC: 25, prospective: 100 };
const devices = { iec: { family: 'bs1362', rating_A: 13 }, na: { family: 'ul489', rating_A: 20 } } as const;

/** What was found on the suspect lead in lessons 5.1 and 5.2. */
const found = (practice: 'iec' | 'na'): FoundOnLead => ({
  resistance: { R_ohm: 0.576, length_m: 8, T_degC: 20, cores: 2, method: 'four-terminal' },
  strands: { count: 24, diameter_mm: 0.2 },
  mass: { mass_g: 2.5, length_m: 1 },
  ...{ magnet: 'does not', skin: 'copper-red', under: 'silvery' },
  marking: practice === 'iec' ? { size_mm2: 1.5 } : { size_AWG: 16 },
});

/** The facts of the suspect lead: identified as in 5.2, run as in 5.3, behind the device of 4.3. */
export function suspectFacts(practice: 'iec' | 'na'): WholeFacts {
  const identified = identify(evidenceOf(found(practice)));
  const scenario = planStart[practice];
  const last = predictPlan(emptyPlan(scenario)).steps.at(-1);
  const of = buildCase(castScenario(practice === 'iec' ? 'SUS' : 'A16S', hall.load, hall.ambient_degC));
  const limit = of.limits.find(({ kind }) => kind === 'rating');
  const R20 = resistanceOfSample(identified, null);
  const metal = metalOfSample(identified);
  if (!last || !limit || !R20 || !metal) throw new Error('the suspect lead of the examples is not whole');
  const question = { prospective: hall.prospective, Ib: last.I };
  const { now, ways, words } = mend(of, deviceOf(devices[practice]), limit, question);
  return {
    ...{ practice, R20, metal },
    reached: {
      ...{ I: last.I, place: 'straight in still air at 20\u00A0°C', T: last.end.conductor },
      rating: ratingOf(of.cable),
    },
    device: { harm: now.harm, rule: now.rule, instead: ways.length > 0 ? words : '' },
    agrees: true,
  };
}

/** The suspect lead of the course as a report tells it. */
export function suspectVerdict(practice: 'iec' | 'na'): SuspectVerdict {
  const facts = suspectFacts(practice);
  return {
    facts: factLines(facts),
    ours: verdictWords(facts).map((one) => ({ ...one, from: verdictOrigin(one.id, facts) })),
    faulty: faultyVerdicts(facts),
    neverOpened: neverOpened(facts),
  };
}

const three = (value: number) => String(Number(value.toPrecision(3)));
const whole = (T: number) => `${Math.round(celsius(T))}\u00A0°C`;

function factLines({ practice, R20, metal, reached, device }: WholeFacts): SuspectVerdict['facts'] {
  const marked = practice === 'iec' ? '3 × 1.5\u00A0mm²' : '3 × 16\u00A0AWG';
  const told = metal.probability > 0.99 ? 'over 99' : Math.round(100 * metal.probability);
  const { harm } = device;
  const hold = `${three(harm.device.hold.I)}\u00A0A for ever`;
  return [
    { name: 'Marked', text: marked },
    {
      name: 'Resistance',
      text: `${(R20.value * 1e3).toPrecision(3)} ± ${Number((2e3 * R20.u).toPrecision(1))}\u00A0mΩ/m at 20\u00A0°C`,
    },
    { name: 'Metal', text: `${metal.name}, probability ${told}\u00A0%` },
    {
      name: 'Hottest step',
      text: `${three(reached.I)}\u00A0A, ${reached.place}: ${whole(reached.T.value)} ± ${Number((2 * reached.T.u).toPrecision(1))}\u00A0K`,
    },
    { name: 'Rating', text: reached.rating === null ? 'none' : whole(reached.rating) },
    { name: 'Device in the hall', text: `${harm.device.name}: may carry ${hold}` },
    { name: 'Carries to its rating', text: `${three(harm.Iz)}\u00A0A, at ${hall.ambient_degC}\u00A0°C` },
  ];
}

/** Three sentences: what flowed and what the device holds, what the lead carries, and what follows. */
function neverOpened({ device: { harm } }: WholeFacts): string[] {
  const { device, Iz, limit } = harm;
  const load = `${three(hall.load)}\u00A0A`;
  return [
    `A load of ${load} flowed, and a ${device.name} may carry ${three(device.hold.I)}\u00A0A for ever.`,
    `This lead carries ${three(Iz)}\u00A0A before its conductor passes ${whole(limit.low)}, far less than its marking promises.`,
    'So the lead overheated at a current that the device is made to carry, and nothing told the device of it.',
  ];
}
