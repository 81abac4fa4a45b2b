import { cordCurrent } from '../cable/cord-ratings.ts';
import { markedSize } from '../cable/in-size.ts';
import { OutOfRange } from '../errors.ts';
import { ratingOf } from '../heating/limits-of.ts';
import { ratingAt } from '../heating/rating.ts';
import { buildCase, type ThermalCase } from '../heating/thermal-case.ts';
import type { Device } from './device.ts';
import { deviceOf } from './devices.ts';
import type { HarmSet } from './harm-set.ts';
import { harmSets } from './harm-sets.ts';
import { type ToldSpan, toldBelow, toldSpans } from './harm-words.ts';
import { type MatrixAsk, type MatrixLead, matrixScenario } from './matrix-ask.ts';
import { ruledMetal, ruleOfCase } from './rule-of-case.ts';

/**
 * What the rules say of a lead behind a device. `met`: by a table's current, or by the table of plugs. `no table`: met only
 * with a current worked out from temperature, which is no permission. `not met`: a test fails or has no answer, or no cord
 * standard allows the lead.
 */
export type RuleStanding = 'met' | 'no table' | 'not met';

/**
 * What a lead behind one device comes to, from cold. `none`: no current harms it while the device may hold. `no upper end
 * found`: some do, and where they end only a maker's curve can say.
 */
export interface MatrixCell {
  readonly outcome: 'none' | 'gap' | 'no upper end found';
  /** Currents [A] on the guaranteed edge, rounded outward to what is told; `to` null where no end is found. */
  readonly gaps: readonly ToldSpan[];
  /** What the rules say of it, for a lead that feeds outlets and was put together on site. */
  readonly standing: RuleStanding;
  /** What is against it, in the rule's words; '' where the rule is met. */
  readonly why: string;
  /** Whether the device is rated above what the table allows the cord; null where no table has it. */
  readonly aboveTable: boolean | null;
  /**
   * Whether the lead carries the device's rating for ever in its place, by the rating of its insulation. Tables of cords do not
   * see a reel or a cover, so that a rule may be met where this fails.
   */
  readonly carries: boolean;
}

/** One lead in one place, behind every device of the ask, in its order. Plain data. */
export interface MatrixRow extends MatrixLead {
  /** Steady current at the limit [A], rounded down to what is told: no harm set begins below it. */
  readonly Iz: number;
  /** What a table allows a copper cord of the size at 30 °C [A]; null where none does. */
  readonly tabled: number | null;
  readonly cells: readonly MatrixCell[];
}

/**
 * The matrix, one row at a time: all sizes of the first metal in its first place, then its next place, then the next metal.
 * Whoever steps it may stop at any row; no row depends on another. Gaps are within three parts in a thousand of single harm
 * sets before they are rounded. Throws `ScenarioFault` for a rating that a family has not.
 */
export function* harmMatrix(ask: MatrixAsk): Generator<MatrixRow, void> {
  const behind = ask.devices.map(deviceOf);
  for (const metal of ask.metals) {
    for (const place of ask.places) {
      for (const size of ask.sizes) yield rowOf(ask, { metal, place, size }, behind);
    }
  }
}

function rowOf(ask: MatrixAsk, at: MatrixLead, behind: readonly Device[]): MatrixRow {
  const of = buildCase(matrixScenario(ask, at));
  const limit = of.limits.find(({ id }) => id === ask.limit);
  if (!limit) throw new OutOfRange(`limit ${ask.limit} of the insulation`, Number.NaN, [0, 0], 'K');
  const sets = harmSets(of, behind, limit, { prospective: ask.prospective });
  const marked = markedSize(of.scenario.cable);
  const tabled = at.metal === 'copper' && marked ? (cordCurrent(marked)?.I ?? null) : null;
  const rated = ratingOf(of.cable);
  const most = rated === null ? 0 : (ratingAt(of, rated) ?? 0);
  const cells = sets.map((set) => cellOf(of, set, tabled, most));
  return { ...at, Iz: toldBelow(sets[0]?.Iz ?? 0), tabled, cells };
}

function cellOf(of: ThermalCase, { device, spans }: HarmSet, tabled: number | null, most: number): MatrixCell {
  const gaps = toldSpans(spans);
  return {
    outcome: gaps.length === 0 ? 'none' : gaps.at(-1)?.to === null ? 'no upper end found' : 'gap',
    gaps,
    ...standingOf(of, device),
    aboveTable: tabled === null ? null : device.In > tabled,
    carries: device.In <= most,
  };
}

function standingOf(of: ThermalCase, device: Device): Pick<MatrixCell, 'standing' | 'why'> {
  if (ruledMetal(of) !== 'copper') return { standing: 'not met', why: 'No cord standard allows a lead of this metal.' };
  const { outcome, open, statements } = ruleOfCase(of, device, { Ib: 0 });
  const noTable = statements.find(({ id }) => id === 'no table');
  if (outcome === 'met') return { standing: noTable ? 'no table' : 'met', why: noTable?.text ?? '' };
  const failed = open.find(({ holds }) => holds === false);
  if (failed) return { standing: 'not met', why: `Test failed: ${failed.words}.` };
  const [first] = open;
  return { standing: 'not met', why: first ? `Test without an answer: ${first.words}.` : (statements[0]?.text ?? '') };
}
