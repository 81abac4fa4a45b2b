import { ratingOf } from '../heating/limits-of.ts';
import { ratingAt } from '../heating/rating.ts';
import { buildCase, type ThermalCase } from '../heating/thermal-case.ts';
import type { Limit } from '../material/limits.ts';
import { type Cited, cite } from './cited.ts';
import type { Device } from './device.ts';
import { type HarmQuestion, type HarmSet, harmSet, spanKind } from './harm-set.ts';
import {
  type Change,
  colderPlaces,
  laidFree,
  otherDevices,
  otherSizes,
  type Standing,
  smallerLoads,
} from './mend-changes.ts';
import { isCord, type RuleQuestion, ruledMetal, ruleOfCase } from './rule-of-case.ts';
import type { RuleVerdict } from './rule-steps.ts';

/** A case judged both ways: by rule, and by temperature. */
export interface Judged {
  readonly rule: RuleVerdict;
  readonly harm: HarmSet;
  /**
   * What the harm set leaves: `nothing`; what `accepted` names; or `harm` that no rule accepts. Only the first two, with the
   * rule met, count as mended.
   */
  readonly leaves: 'nothing' | 'accepted' | 'harm';
  /** What accepts the rest, each named; empty unless `leaves` is `accepted`. */
  readonly accepted: readonly (Cited & { readonly what: string })[];
  /** Rule met, and nothing left but what it accepts. */
  readonly sound: boolean;
  /** True for a flexible cord that cord standards do not allow: not of copper, or of more resistance than its marking. */
  readonly refused: boolean;
}

/** One way to mend a case, worked through again. */
export interface Mend extends Change {
  readonly judged: Judged;
}

/** What can be done about a case. */
export interface MendAnswer {
  readonly now: Judged;
  /** One way of each kind that has one, each the smallest of its kind; empty where none is needed, or no single change does it. */
  readonly ways: readonly Mend[];
  /** In a sentence. */
  readonly words: string;
}

/** What is asked of a case to be mended. */
export type MendQuestion = HarmQuestion & Omit<RuleQuestion, 'Ib'>;

const overloadRule = {
  what: 'overload, for the time the device takes, of a cable that carries the device’s rating for ever',
  ...cite('iec60364-4-43', '433.1', 'seen'),
};
const faultRule = {
  what: 'short circuits, which the rules take an overload device to clear in time if it can break them',
  ...cite('iec60364-4-43', '435.1', 'from memory'),
};

/**
 * Judges a case by rule and by temperature. The rule of overload accepts that a cable passes its continuous rating while the
 * device takes its time, and nothing beyond the rating; it takes for granted In ≤ Iz, and that must hold by temperature here
 * too, else nothing is accepted. Short circuits are accepted on the same ground.
 */
export function judge(of: ThermalCase, device: Device, limit: Limit, question: MendQuestion): Judged {
  const { prospective, Ib } = question;
  const rule = ruleOfCase(of, device, { ...question, Ib: Ib ?? 0 });
  const harm = harmSet(of, device, limit, { prospective, ...(Ib === undefined ? {} : { Ib }) });
  const kinds = new Set(harm.spans.map((span) => spanKind(device, span)));
  const over = kinds.has('overload') || kinds.has('both');
  const short = kinds.has('fault') || kinds.has('both');
  const rated = ratingOf(of.cable);
  const carries = rated !== null && (ratingAt(of, rated) ?? 0) >= device.In;
  const accepts = !harm.loadHarms && carries && (!over || limit.kind === 'rating');
  const none = kinds.size === 0 && !harm.loadHarms;
  const leaves = none ? 'nothing' : accepts ? 'accepted' : 'harm';
  const accepted = leaves === 'accepted' ? [...(over ? [overloadRule] : []), ...(short ? [faultRule] : [])] : [];
  const refused = isCord(of) && ruledMetal(of) !== 'copper';
  return { rule, harm, leaves, accepted, sound: rule.outcome === 'met' && leaves !== 'harm', refused };
}

/**
 * The smallest single change of each kind (device, size, surroundings, load) after which the rule is met and the harm set of
 * `limit` is empty, or lies within what rules accept; each judged anew. Never a device rated below the load or outside its
 * family's ratings, never a size whose table current lies below the device's rating. Every remedy rests on the guaranteed edge.
 */
export function mend(of: ThermalCase, device: Device, limit: Limit, question: MendQuestion): MendAnswer {
  const now = judge(of, device, limit, question);
  if (now.sound && !now.refused) return { now, ways: [], words: 'Nothing needs to be mended.' };
  const standing: Standing = { of, device, Ib: question.Ib ?? 0 };
  const tried = (change: Change): Mend | null => {
    const Ib = question.Ib === undefined && change.kind !== 'load' ? {} : { Ib: change.Ib };
    const changed = change.scenario === of.scenario ? of : buildCase(change.scenario);
    const same = changed.limits.find(({ id }) => id === limit.id);
    if (!same || !carriesRating(changed, change.device)) return null;
    const judged = judge(changed, change.device, same, { ...question, ...Ib });
    if (!judged.sound) return null;
    return { ...change, words: judged.refused ? `${change.words} ${stillRefused}` : change.words, judged };
  };
  const size = () => firstOf(otherSizes(standing), tried);
  if (now.sound) return answer(now, [size()], byHeatAlone);
  const free = laidFree(standing);
  return answer(now, [
    firstOf(otherDevices(standing), tried),
    size(),
    (free && tried(free)) ?? warmest(colderPlaces(standing), tried),
    warmest(smallerLoads(standing), tried),
  ]);
}

const stillRefused = 'No cord standard allows this lead even then.';
const byHeatAlone = 'By its temperature it needs no mending. No cord standard allows this lead.';

function answer(now: Judged, found: readonly (Mend | null)[], first?: string): MendAnswer {
  const ways = found.filter((way): way is Mend => way !== null);
  const all = ways.map(({ words }) => words).join(' Or: ');
  const words = [...(first ? [first] : []), ...(all ? [all] : [])].join(' ');
  return { now, ways, words: words || 'No single change does it.' };
}

/** Whether a cable carries the device's rating for ever by temperature, without which no change is offered. */
function carriesRating(of: ThermalCase, { In }: Device): boolean {
  const rated = ratingOf(of.cable);
  return rated === null || (ratingAt(of, rated) ?? 0) >= In;
}

/** The first change that does it. */
function firstOf(changes: readonly Change[], tried: (change: Change) => Mend | null): Mend | null {
  for (const change of changes) {
    const done = tried(change);
    if (done) return done;
  }
  return null;
}

/** The first of a row of changes in which all after one that does it do it too: found by halving. */
function warmest(changes: readonly Change[], tried: (change: Change) => Mend | null): Mend | null {
  let best = changes.length > 0 ? tried(changes.at(-1) as Change) : null;
  let [low, high] = [0, changes.length - 1];
  while (best && low < high) {
    const middle = (low + high) >> 1;
    const done = tried(changes[middle] as Change);
    if (done) {
      best = done;
      high = middle;
    } else low = middle + 1;
  }
  return best;
}
