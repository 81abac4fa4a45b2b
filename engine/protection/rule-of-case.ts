import { cableOf } from '../cable/cable.ts';
import { markedSize } from '../cable/in-size.ts';
import type { TradeSize } from '../conductor/area-scale.ts';
import { OutOfRange } from '../errors.ts';
import { ratingOf } from '../heating/limits-of.ts';
import { ratingAt } from '../heating/rating.ts';
import type { ThermalCase } from '../heating/thermal-case.ts';
import type { CableSpec } from '../scenario/schema.ts';
import { ambientFactor } from './ambient-factor.ts';
import { branchCordRule, type CordMake } from './branch-cord-rule.ts';
import { cite } from './cited.ts';
import { actingShare, coordination } from './coordination.ts';
import type { RuledCord } from './cord-rule.ts';
import { cordRatings } from './cord-table.ts';
import type { Device } from './device.ts';
import type { Factor } from './factors.ts';
import { plugFuseRule } from './plug-fuse-rule.ts';
import { type RuleVerdict, testStep, valueStep, verdictOf } from './rule-steps.ts';
import { methodRatings, type TableRating } from './table-rating.ts';

/** What a rule asks of a case beside cable and device. */
export interface RuleQuestion {
  /** Load current [A]; 0 where none was told. */
  readonly Ib: number;
  /** One appliance, or outlets into which anything may be plugged; `block` unless given, the harder case. */
  readonly feeds?: RuledCord['feeds'];
  /** How an American cord came to be; `assembled on site` unless given, the harder case. */
  readonly make?: CordMake;
}

/** Share of a table's greatest resistance beyond which a conductor is not what its marking says [1] (own choice: a meter's doubt). */
const asMarked = 1.03;

/** The same cable as its marking promises: copper to the standard's table. */
export function soundCable(spec: CableSpec): CableSpec {
  const keep = ({
    class: kind,
    finish,
  }: {
    class?: 1 | 2 | 5 | 6 | undefined;
    finish?: 'plain' | 'tinned' | undefined;
  }) => ({
    ...(kind === undefined ? {} : { class: kind }),
    ...(finish === undefined ? {} : { finish }),
  });
  const { size_mm2, size_AWG } = 'table' in spec ? spec : spec.conductor;
  const size = size_AWG !== undefined ? { size_AWG } : size_mm2 !== undefined ? { size_mm2 } : null;
  if ('table' in spec) {
    const { conductor, ...rest } = spec;
    return conductor ? { ...rest, conductor: keep(conductor) } : spec;
  }
  return size ? { ...spec, conductor: { ...keep(spec.conductor), ...size } } : spec;
}

/** The metal that rules may take a conductor for: its own, or 'not as marked' where it resists more than its marking allows. */
export function ruledMetal({ cable, scenario }: ThermalCase): string {
  const { metal, R20 } = cable.conductor;
  if (metal.id !== 'copper' || !markedSize(scenario.cable)) return metal.id;
  return R20 <= asMarked * cableOf(soundCable(scenario.cable)).conductor.R20 ? 'copper' : 'not as marked';
}

/** Whether a cable is a flexible cord with a sheath, which the rules of cords are for. */
export const isCord = ({ cable, scenario }: ThermalCase): boolean =>
  cable.sheath !== null && (scenario.cable.conductor?.class ?? 5) >= 5;

/**
 * The rule that covers a case, worked through: BS 1363-1 Table 2 for a cord behind a plug fuse, NFPA 70 240.5(B) for a cord
 * behind an American branch device, else coordination with a table's current. Where no table has the cable, coordination with
 * the steady current that its own limit allows it in its place, and the steps say so.
 */
export function ruleOfCase(of: ThermalCase, device: Device, question: RuleQuestion): RuleVerdict {
  const { Ib, feeds = 'block', make = 'assembled on site' } = question;
  const size = markedSize(of.scenario.cable);
  const cord = size && isCord(of) ? { size, metal: ruledMetal(of), Ib, feeds } : null;
  const american = device.family === 'ul489' || device.family.startsWith('ul248');
  const own = cord && device.family === 'bs1362' ? plugFuseRule(cord, device) : null;
  const branch = cord && american ? branchCordRule(cord, device, make) : null;
  const first = own ?? branch;
  if (first && first.outcome !== 'no rule') return first;
  const table = size && !first ? tableOf(of, size) : null;
  const factors = table ? factorsOf(of, table) : null;
  if (table && factors) return coordination({ Ib, device, table, factors });
  return byHeat(of, device, Ib, first?.statements ?? []);
}

/** The table's current for a cable in its place, where a table has both. */
function tableOf(of: ThermalCase, size: TradeSize): TableRating | null {
  const { kind } = of.scenario.surroundings;
  const metal = ruledMetal(of);
  const same = (one: TableRating) => one.size.size === size.size && one.size.system === size.system;
  if (of.cable.loaded.length !== 2) return null;
  if (isCord(of)) return (metal === 'copper' && kind === 'stillAir' && cordRatings(size.system).find(same)) || null;
  if (of.cable.insulation?.id !== 'pvc70' || (metal !== 'copper' && metal !== 'aluminium')) return null;
  if (kind !== 'clipped' && kind !== 'stillAir') return null;
  return methodRatings(kind === 'clipped' ? 'C' : 'E', metal).find(same) ?? null;
}

/** The factors of a table for a case; null where the table does not reach to its ambient. */
function factorsOf({ scenario }: ThermalCase, table: TableRating): Factor[] | null {
  try {
    const practice = table.source === 'nfpa70' ? 'na' : 'iec';
    return [ambientFactor(practice, table.limit_degC, scenario.surroundings.ambient_degC)];
  } catch (error) {
    if (error instanceof OutOfRange) return null;
    throw error;
  }
}

/** Coordination with Iz by temperature, for a cable that no table has. */
function byHeat(of: ThermalCase, { In, I2 }: Device, Ib: number, statements: RuleVerdict['statements']): RuleVerdict {
  const limit = ratingOf(of.cable);
  const Iz = limit === null ? null : ratingAt(of, limit);
  const rule = cite('iec60364-4-43', '433.1', 'seen');
  const heat = cite('own', 'steady current at the insulation’s rating in this place', 'computed');
  return verdictOf(
    { name: 'Ib ≤ In ≤ Iz and I2 ≤ 1.45 Iz, with Iz by temperature', ...rule },
    [
      valueStep('load', 'Ib', 'what the load takes', Ib, cite('user', 'the load', 'our choice')),
      valueStep('device', 'In', 'what the device is rated for', In, cite('user', 'the device', 'our choice')),
      ...(Iz === null ? [] : [valueStep('in place', 'Iz', 'what the cable may carry here, by temperature', Iz, heat)]),
      testStep('carries', 'the device carries the load', ['Ib', Ib], ['In', In], rule),
      testStep('rating', 'the cable carries what the device is rated for', ['In', In], ['Iz', Iz], rule),
      testStep(
        'acting',
        'the device acts before 1.45 times what the cable may carry',
        ['I2', I2],
        ['1.45 Iz', Iz === null ? null : actingShare * Iz],
        rule,
      ),
    ],
    [
      ...statements,
      {
        id: 'no table',
        text: 'No table has this cable in this place. Its current is worked out from its temperature.',
      },
    ],
  );
}
