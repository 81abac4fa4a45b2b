import { cordCurrent } from '../cable/cord-ratings.ts';
import type { TradeSize } from '../conductor/area-scale.ts';
import type { Statement } from '../heating/validity.ts';
import type { Cited } from './cited.ts';
import { actingShare } from './coordination.ts';
import type { Guard } from './guard.ts';
import { type RuleStep, testStep, type ValueStep, valueStep } from './rule-steps.ts';

/** A flexible cord as its rules ask of it. */
export interface RuledCord {
  /** As marked. */
  readonly size: TradeSize;
  /** Id of the conductor's metal. */
  readonly metal: string;
  /** What the load takes, Ib [A]. */
  readonly Ib: number;
  /**
   * What it feeds: `appliance`, whose load is its own and cannot grow; `block`, a lead with outlets, whose load is whatever
   * is plugged in.
   */
  readonly feeds: 'appliance' | 'block';
}

/** Tabled current of the cord as a step; undefined where no table has its size. */
export function cordStep(size: TradeSize): ValueStep | undefined {
  const rated = cordCurrent(size);
  if (!rated) return undefined;
  const cited: Cited = { source: rated.source, where: rated.where, confidence: 'seen' };
  return valueStep('cord', 'Icord', 'what the table allows the cord', rated.I, cited);
}

/** The test I2 ≤ 1.45 Iz beside a cord's own rule: information, no part of the verdict. */
export function overloadAside({ I2 }: Guard, cord: ValueStep): RuleStep {
  return testStep(
    'overload aside',
    'beside it: would the rule of fixed wiring be met?',
    ['I2', I2],
    ['1.45 Icord', actingShare * cord.value],
    { source: 'iec60364-4-43', where: '433.1', confidence: 'seen' },
    { aside: true },
  );
}

/** Why the two rules differ, in words. */
export const whyTheyDiffer: Statement = {
  id: 'why they differ',
  text: 'The cord rule trusts the load: one appliance cannot overload its own lead. The 1.45 rule asks what happens when the load grows. A block of outlets can grow.',
};

/** What keeps a cord outside its rules: its metal. Undefined where they cover it. */
export function outsideCordRules({ metal }: RuledCord): Statement | undefined {
  if (metal === 'copper') return undefined;
  return {
    id: 'copper only',
    text: 'Cord standards allow copper only. No table rates this lead, whatever its marking says.',
  };
}
