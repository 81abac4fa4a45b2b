import { metals } from '../material/metals.ts';
import type { HarmSet } from '../protection/harm-set.ts';
import { toldSpans } from '../protection/harm-words.ts';
import type { RuleVerdict } from '../protection/rule-steps.ts';
import { celsius, fahrenheit } from '../quantity.ts';
import type { Measured } from './measured.ts';

/** What a report's verdict may rest on; each part is null where it was not found out. */
export interface VerdictFacts {
  readonly practice: 'iec' | 'na';
  /** Resistance of a conductor per metre at 20 °C [Ω/m]. */
  readonly R20: Measured | null;
  /** What its metal was identified as, 'clad aluminium', and how probable that is [1]. */
  readonly metal: { readonly name: string; readonly probability: number } | null;
  /** Hottest plateau: current [A], where it lay, conductor by resistance [K], rating of the insulation [K]. */
  readonly reached: {
    readonly I: number;
    readonly place: string;
    readonly T: Measured;
    readonly rating: number | null;
  } | null;
  /** The device upstream: what it lets happen to this lead, and the verdict of the rule. */
  readonly device: { readonly harm: HarmSet; readonly rule: RuleVerdict; readonly instead: string } | null;
  /** Whether readings and prediction agree at the plateaus; null where they were not compared. */
  readonly agrees: boolean | null;
}

/** One sentence of a verdict. */
export interface VerdictSentence {
  readonly id: 'behaves as' | 'reaches' | 'device' | 'suitable' | 'agreement' | 'not established';
  readonly text: string;
}

/** Probability from which a metal is named [1], own choice. */
const likely = 0.95;

const figures = (value: number, count: number) => String(Number(value.toPrecision(count)));
const amperes = (I: number) => `${figures(I, 3)}\u00A0A`;
const degrees = (T: number, practice: 'iec' | 'na') => {
  const C = `${Math.round(celsius(T))}\u00A0°C`;
  return practice === 'na' ? `${C} (${Math.round(fahrenheit(T))}\u00A0°F)` : C;
};

/** Copper of the same resistance [m²], with its uncertainty. */
export function copperOfSameResistance({ value, u }: Measured): Measured {
  const area = metals.copper.rho20.value / value;
  return { value: area, u: (area * u) / value };
}

/**
 * The verdict of a bench test in sentences that claim what was shown and no more. Never that a lead is safe, and never why or by
 * whom it is as it is; what was not found out is said to be so.
 */
export function verdictWords(facts: VerdictFacts): VerdictSentence[] {
  return [
    ...behavesAs(facts),
    ...reaches(facts),
    ...deviceSays(facts),
    ...suitable(facts),
    ...agreement(facts),
    { id: 'not established', text: notEstablished(facts) },
  ];
}

function behavesAs({ R20, metal }: VerdictFacts): VerdictSentence[] {
  if (!R20) return [];
  const { value, u } = copperOfSameResistance(R20);
  const equal = `equal to ${figures(value * 1e6, 2)}\u00A0mm² copper by resistance, ± ${figures(2e6 * u, 1)}\u00A0mm²`;
  const named = metal && metal.probability >= likely ? `${metal.name} (${equal})` : `a conductor ${equal}`;
  return [{ id: 'behaves as', text: `This sample behaves as ${named}.` }];
}

function reaches({ reached, practice }: VerdictFacts): VerdictSentence[] {
  if (!reached) return [];
  const { I, place, T, rating } = reached;
  const got = `At ${amperes(I)}, ${place}, its conductor reached ${degrees(T.value, practice)}, ± ${figures(2 * T.u, 1)}\u00A0K`;
  return [
    {
      id: 'reaches',
      text: rating === null ? `${got}.` : `${got}; its insulation is rated ${degrees(rating, practice)}.`,
    },
  ];
}

function deviceSays({ device, practice }: VerdictFacts): VerdictSentence[] {
  if (!device) return [];
  const { harm } = device;
  const { device: of, limit } = harm;
  const T = degrees(limit.low, practice);
  const gaps = toldSpans(harm.spans);
  if (gaps.length === 0)
    return [
      {
        id: 'device',
        text: `A ${of.name} surely acts before this lead passes ${T}, up to ${amperes(harm.prospective)}, by its standard’s points.`,
      },
    ];
  const between = gaps.map(({ from, to }) =>
    to === null ? `from ${amperes(from)} up` : `between ${amperes(from)} and ${amperes(to)}`,
  );
  const inside = harm.Iz < of.hold.I ? `; in that time this lead passes ${T}` : '';
  return [
    {
      id: 'device',
      text: `A ${of.name} may carry ${amperes(of.hold.I)} for ever${inside}. It does not protect this lead ${between.join(' and ')}.`,
    },
  ];
}

const outcomes: Readonly<Record<RuleVerdict['outcome'], string>> = {
  met: 'Suitable by the rule',
  'not met': 'Not suitable by the rule',
  'not shown': 'Not shown to be suitable by the rule',
  'no rule': 'Does not meet the standard for a lead of this kind, by its conductor: not suitable',
};

function suitable({ device }: VerdictFacts): VerdictSentence[] {
  if (!device) return [];
  const { harm, rule, instead } = device;
  const what = `${outcomes[rule.outcome]} for use behind a ${harm.device.name}`;
  const text = rule.outcome === 'met' || instead === '' ? `${what}.` : `${what}. Instead: ${instead}`;
  return [{ id: 'suitable', text }];
}

function agreement({ agrees }: VerdictFacts): VerdictSentence[] {
  if (agrees === null) return [];
  const text = agrees
    ? 'Readings and locked prediction agree at the plateaus, within their uncertainties.'
    : 'Readings and locked prediction do not agree at the plateaus. The prediction is not used above.';
  return [{ id: 'agreement', text }];
}

function notEstablished({ R20, metal, reached, device }: VerdictFacts): string {
  const open = [
    ...(R20 ? [] : ['its resistance per metre']),
    ...(metal && metal.probability >= likely ? [] : ['its metal']),
    ...(reached ? [] : ['the temperature it reaches']),
    ...(device ? [] : ['what the device upstream does']),
    'other samples of its batch',
    'its joints and fittings beyond what was measured',
  ];
  return `Not established: ${open.join('; ')}.`;
}
