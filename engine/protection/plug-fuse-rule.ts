import type { Statement } from '../heating/validity.ts';
import type { Confidence } from '../material/property.ts';
import { type Cited, cite } from './cited.ts';
import { cordStep, outsideCordRules, overloadAside, type RuledCord, whyTheyDiffer } from './cord-rule.ts';
import type { Guard } from './guard.ts';
import { noRule, type RuleStep, type RuleVerdict, testStep, valueStep, verdictOf } from './rule-steps.ts';

/** One row of the plug's table: cord size [mm²], rated current of plug and cord together, greatest fuse [A]. */
interface PlugRow {
  readonly size: number;
  readonly rated: number;
  readonly mostFuse: number;
  readonly confidence: Confidence;
}

const table: readonly PlugRow[] = [
  { size: 0.5, rated: 3, mostFuse: 3, confidence: 'seen' },
  { size: 0.75, rated: 6, mostFuse: 13, confidence: 'seen' },
  { size: 1, rated: 10, mostFuse: 13, confidence: 'seen' },
  { size: 1.25, rated: 13, mostFuse: 13, confidence: 'seen' },
  { size: 1.5, rated: 13, mostFuse: 13, confidence: 'seen' },
];
/** The plug itself takes no larger fuse, so thicker cords keep the last row; the table stops at 1.5 mm². */
const thicker: PlugRow = { size: 2.5, rated: 13, mostFuse: 13, confidence: 'our choice' };

/** Least size of a lead with outlets behind a 13 A fuse [mm²]: a practice of guides to BS 1363-2. */
const leastBlock = 1.25;

const rule = { name: 'cord and plug fuse', ...cite('bs1363', 'Table 2', 'seen') };
const cited = ({ confidence }: PlugRow): Cited => cite('bs1363', 'Table 2', confidence);
const block = cite('bs1363', 'practice of guides for leads with outlets', 'from memory');

/** The plug table's row for a cord size [mm²]; null below 0.5 mm² and between sizes. */
export function plugRow(size: number): PlugRow | null {
  return table.find((row) => row.size === size) ?? (size >= thicker.size ? thicker : null);
}

/**
 * Whether a plug fuse suits a cord: fuse at most that of BS 1363-1 Table 2 for the cord's size, load at most the rated current
 * of plug and cord and at most the fuse. Currents in A. A lead with outlets wants 1.25 mm² or more behind 13 A. The test
 * I2 ≤ 1.45 Iz stands beside it as information. No rule for metals other than copper, or for sizes that the table lacks.
 */
export function plugFuseRule(cord: RuledCord, fuse: Guard): RuleVerdict {
  const outside = outsideCordRules(cord);
  const row = cord.size.system === 'mm2' ? plugRow(cord.size.size) : null;
  if (outside) return noRule(rule, row ? [outside, byMarking(row, fuse)] : [outside]);
  const rated = cordStep(cord.size);
  if (!row || !rated) return noRule(rule, [noSize]);
  const blocky = cord.feeds === 'block';
  const steps: RuleStep[] = [
    ...tableTests(row, cord.Ib, fuse.In),
    ...(blocky && fuse.In > 10 ? [blockTest(cord.size.size)] : []),
    rated,
    overloadAside(fuse, rated),
  ];
  return verdictOf(rule, steps, [...(blocky ? [grows] : []), whyTheyDiffer, ...ends(row)]);
}

/** Load and fuse against the table's row, all in A. */
function tableTests(row: PlugRow, Ib: number, In: number): RuleStep[] {
  const table = cited(row);
  return [
    valueStep('load', 'Ib', 'what the load takes', Ib, cite('user', 'the load', 'our choice')),
    valueStep('fuse rating', 'In', 'what the fuse is rated for', In, cite('user', 'the fuse', 'our choice')),
    testStep('carries', 'the fuse carries the load', ['Ib', Ib], ['In', In], table),
    valueStep('most fuse', 'In,max', 'greatest fuse for this cord', row.mostFuse, table),
    testStep('fuse', 'the fuse is not too large for the cord', ['In', In], ['In,max', row.mostFuse], table),
    valueStep('rated', 'Iplug', 'rated current of plug and cord', row.rated, table),
    testStep('load fits', 'the load is not too large for plug and cord', ['Ib', Ib], ['Iplug', row.rated], table),
  ];
}

function blockTest(size: number): RuleStep {
  const words = 'a lead with outlets is thick enough for a 13 A fuse';
  return testStep('block size', words, ['least size', leastBlock], ['size', size], block, { unit: 'mm²' });
}

const noSize: Statement = { id: 'size', text: 'The plug’s table has no row for this cord.' };
const grows: Statement = {
  id: 'load can grow',
  text: 'A lead with outlets carries whatever is plugged in. The fuse need not open below its non-acting current.',
};
const beyond: Statement = {
  id: 'beyond the table',
  text: 'The table stops at 1.5 mm². For thicker cords we keep its last row.',
};
const threeAmp: Statement = {
  id: 'note',
  text: 'A 5 A fuse is allowed on 0.5 mm² for some appliances that draw much at the start.',
};
const short: Statement = {
  id: 'note',
  text: 'A cord of 0.75 mm² no longer than 2 m may be rated 10 A where tested so.',
};

/** What the table's own notes add to a row. */
function ends(row: PlugRow): Statement[] {
  if (row === thicker) return [beyond];
  if (row.size === 0.5) return [threeAmp];
  return row.size === 0.75 ? [short] : [];
}

const byMarking = ({ mostFuse }: PlugRow, { In }: Guard): Statement => ({
  id: 'by marking',
  text:
    In <= mostFuse
      ? 'Judged by its marking alone, the table would accept this fuse. That holds for copper only.'
      : 'Even judged by its marking, the table would refuse this fuse.',
});
