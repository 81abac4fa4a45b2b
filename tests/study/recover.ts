// How often the identification finds the metal of leads that we made, and how often its intervals hold the truth.
import { type Evidence, type Identification, type IdentifiedMetal, type Interval, identify } from '#engine';
import { type Kind, measuredLead } from './leads.ts';

/** What became of the leads of one kind: counts. */
export interface KindRecovery {
  readonly leads: number;
  readonly first: number;
  readonly areaHeld: number;
}

/** What became of a number of leads. */
export interface Recovery {
  readonly leads: number;
  /** Shares of the leads. */
  readonly metalFirst: number;
  readonly areaHeld: number;
  readonly R20Held: number;
  readonly noneFits: number;
  /** Median of the distance of the median R'20 from the true one, relative. */
  readonly R20Error: number;
  /** Mean of what was given to the true metal. */
  readonly trust: number;
  readonly byKind: ReadonlyMap<Kind, KindRecovery>;
}

const kindOf = (metal: IdentifiedMetal): Kind | 'other' =>
  metal === 'ccs40' || metal === 'ccs30' || metal === 'ccs21' ? 'cladSteel' : metal;

/** Probability of each kind. */
function kinds({ candidates }: Identification): Map<Kind | 'other', number> {
  const found = new Map<Kind | 'other', number>();
  for (const { metal, probability } of candidates)
    found.set(kindOf(metal), (found.get(kindOf(metal)) ?? 0) + probability);
  return found;
}

const holds = (interval: Interval | null, value: number) =>
  interval !== null && interval.low <= value && value <= interval.high;

function median(of: number[]): number {
  const sorted = of.sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Identifies `count` leads, with their mass or without; `blind` leaves out pieces of evidence. */
export function recover(count: number, seed: string, withMass: boolean, blind: (keyof Evidence)[] = []): Recovery {
  const errors: number[] = [];
  const byKind = new Map<Kind, KindRecovery>();
  const sum = { first: 0, area: 0, R20: 0, none: 0, trust: 0 };
  for (let i = 0; i < count; i++) {
    const { truth, evidence, mass } = measuredLead(`${seed}-${i}`);
    const given = { ...evidence, ...(withMass ? { mass } : {}) };
    for (const piece of blind) delete (given as Record<string, unknown>)[piece];
    const found = identify(given);
    const by = kinds(found);
    const first = [...by].reduce((best, one) => (one[1] > best[1] ? one : best))[0] === truth.kind;
    const kind = byKind.get(truth.kind) ?? { leads: 0, first: 0, areaHeld: 0 };
    const areaHeld = +holds(found.area, truth.area);
    byKind.set(truth.kind, {
      leads: kind.leads + 1,
      first: kind.first + +first,
      areaHeld: kind.areaHeld + areaHeld,
    });
    sum.first += +first;
    sum.area += areaHeld;
    sum.R20 += +holds(found.R20, truth.R20);
    sum.none += +found.fit.none;
    sum.trust += by.get(truth.kind) ?? 0;
    errors.push(Math.abs((found.R20?.median ?? Number.NaN) / truth.R20 - 1));
  }
  return {
    leads: count,
    metalFirst: sum.first / count,
    areaHeld: sum.area / count,
    R20Held: sum.R20 / count,
    noneFits: sum.none / count,
    trust: sum.trust / count,
    R20Error: median(errors),
    byKind,
  };
}
