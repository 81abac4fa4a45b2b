import { toldSpans } from '../protection/harm-words.ts';
import { celsius } from '../quantity.ts';
import { copperOfSameResistance, type VerdictFacts } from './verdict-words.ts';

/** How a claim stands beside what was shown. */
export type ClaimStanding = 'too much' | 'too little' | 'rightly';

/** One sentence of a verdict that somebody wrote, judged by the facts. */
export interface JudgedClaim {
  readonly id: string;
  readonly text: string;
  readonly standing: ClaimStanding;
  /** Why, in one or two sentences. */
  readonly why: string;
}

/** A verdict that needs mending. */
export interface FaultyVerdict {
  readonly id: 'bold' | 'timid';
  readonly claims: readonly JudgedClaim[];
}

/** Probability from which a metal is named [1], as in a verdict. */
const likely = 0.95;

const figures = (value: number, count: number) => String(Number(value.toPrecision(count)));
const amps = (I: number) => `${figures(I, 3)}\u00A0A`;
const degrees = (T: number) => `${Math.round(celsius(T))}\u00A0°C`;

/** What the facts must hold for two whole verdicts to be written of them. */
export type WholeFacts = VerdictFacts & {
  readonly [Key in 'R20' | 'metal' | 'reached' | 'device']: NonNullable<VerdictFacts[Key]>;
};

/**
 * Two verdicts on the same facts that want mending: one too bold, one too timid, each with sentences that are right. How each
 * sentence stands is worked out from the facts: other facts, another standing.
 */
export function faultyVerdicts(facts: WholeFacts): FaultyVerdict[] {
  return [
    { id: 'bold', claims: [batch(facts), equal(facts), anywhere(facts), wouldOpen(facts), madeSo()] },
    { id: 'timid', claims: [noMetal(facts), reachedThere(facts), somewhat(facts), untested(facts), open()] },
  ];
}

const batch = ({ metal }: WholeFacts): JudgedClaim => ({
  ...{ id: 'batch', text: `All leads of this batch are of ${metal.name}.`, standing: 'too much' },
  why: 'One sample was measured. Of its batch nothing is established.',
});

function equal({ R20 }: WholeFacts): JudgedClaim {
  const { value, u } = copperOfSameResistance(R20);
  const text = `By resistance it is equal to ${figures(value * 1e6, 2)}\u00A0mm² of copper, ± ${figures(2e6 * u, 1)}\u00A0mm².`;
  return {
    ...{ id: 'equal', text, standing: 'rightly' },
    why: 'It says ‘by resistance’, and its band is two standard uncertainties. That is what was measured, and no more.',
  };
}

function anywhere({ reached: { I, T, rating } }: WholeFacts): JudgedClaim {
  const below = rating !== null && T.value + 2 * T.u < rating;
  const seen = below ? `It stayed below its rating at ${amps(I)}` : `It was loaded with ${amps(I)}`;
  return {
    ...{ id: 'anywhere', text: `It may be used at ${amps(I)} anywhere.`, standing: 'too much' },
    why: `${seen}, straight and in free air. Wound, covered or in a warm place it runs hotter.`,
  };
}

function wouldOpen({ device: { harm } }: WholeFacts): JudgedClaim {
  const [gap] = toldSpans(harm.spans);
  const limit = degrees(harm.limit.low);
  const text = `The ${harm.device.name} opens before this lead gets too hot.`;
  if (!gap)
    return {
      ...{ id: 'would open', text, standing: 'rightly' },
      why: `Up to ${amps(harm.prospective)} no current takes it past ${limit} before the device must have acted.`,
    };
  const where = gap.to === null ? `from ${amps(gap.from)} up` : `from ${amps(gap.from)} to ${amps(gap.to)}`;
  return {
    ...{ id: 'would open', text, standing: 'too much' },
    why: `That is so outside the gap alone. In it, ${where}, the lead can pass ${limit} while the device may still hold.`,
  };
}

const madeSo = (): JudgedClaim => ({
  ...{ id: 'made so', text: 'Whoever made it wanted to save copper.', standing: 'too much' },
  why: 'The log shows how the sample behaves. Why it is so, and by whom, no reading tells. Leave maker and person out.',
});

function noMetal({ metal }: WholeFacts): JudgedClaim {
  const known = metal.probability >= likely;
  return {
    ...{ id: 'no metal', text: 'Which metal it is cannot be said.', standing: known ? 'too little' : 'rightly' },
    why: known
      ? `Ohms and grams together name ${metal.name}, with a probability of ${metal.probability > 0.99 ? 'over 99' : Math.round(100 * metal.probability)}\u00A0%.`
      : 'No metal is probable enough to be named.',
  };
}

function reachedThere({ reached: { I, place, T } }: WholeFacts): JudgedClaim {
  const text = `At ${amps(I)}, ${place}, its conductor reached ${degrees(T.value)}, ± ${figures(2 * T.u, 1)}\u00A0K.`;
  return {
    ...{ id: 'reached', text, standing: 'rightly' },
    why: 'Current, place, temperature and band all stand in the log.',
  };
}

function somewhat({ reached: { I, T, rating } }: WholeFacts): JudgedClaim {
  const far = rating === null ? '' : `, ${Math.round(Math.abs(rating - T.value))}\u00A0K from its rating`;
  return {
    ...{ id: 'somewhat', text: `Under load it may get somewhat warm.`, standing: 'too little' },
    why: `It was measured: ${degrees(T.value)} at ${amps(I)}${far}. Give the figure and its band.`,
  };
}

function untested({ device: { harm } }: WholeFacts): JudgedClaim {
  const text = `What the ${harm.device.name} does is not known, since none was tested.`;
  return {
    ...{ id: 'untested', text, standing: 'too little' },
    why: `Its standard says what it must hold: ${amps(harm.device.hold.I)} for ever. That and the lead’s own curve give the gap.`,
  };
}

const open = (): JudgedClaim => ({
  ...{
    id: 'open',
    text: 'Not established: other samples, and other places than that of the test.',
    standing: 'rightly',
  },
  why: 'Neither was tested. A report that says so is the better for it.',
});
