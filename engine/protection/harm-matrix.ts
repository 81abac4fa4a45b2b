import { cordCurrent } from '../cable/cord-ratings.ts';
import { markedSize } from '../cable/in-size.ts';
import { OutOfRange } from '../errors.ts';
import { type PlaceKind, usualSurroundings } from '../heating/surroundings-compared.ts';
import { buildCase, type ThermalCase } from '../heating/thermal-case.ts';
import type { MetalId } from '../material/metals.ts';
import type { Scenario } from '../scenario/schema.ts';
import type { Device, DeviceFamily } from './device.ts';
import { deviceOf } from './devices.ts';
import type { HarmSet } from './harm-set.ts';
import { harmSets } from './harm-sets.ts';
import { type ToldSpan, toldBelow, toldSpans } from './harm-words.ts';
import { matrixLead, matrixMetals, matrixSizes } from './matrix-leads.ts';
import { ruledMetal, ruleOfCase } from './rule-of-case.ts';

/**
 * What the rules say of a lead behind a device. `met`: by a table's current, or by the table of plugs. `no table`: met only
 * with a current worked out from temperature, which is no permission. `not met`: a test fails or has no answer, or no cord
 * standard allows the lead.
 */
export type RuleStanding = 'met' | 'no table' | 'not met';

/** What a matrix of harm sets is asked for: every size in every metal in every place, behind every device. Plain data. */
export interface MatrixAsk {
  readonly practice: 'iec' | 'na';
  /** In mm², or gauges where the practice is `na`; thin to thick. */
  readonly sizes: readonly number[];
  readonly metals: readonly MetalId[];
  readonly places: readonly PlaceKind[];
  readonly devices: readonly { readonly family: DeviceFamily; readonly rating_A: number }[];
  readonly limit: 'rating' | 'shortTime';
  readonly ambient_degC: number;
  /** Greatest current looked at [A]. */
  readonly prospective: number;
}

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
}

/** One lead in one place, behind every device of the ask, in its order. Plain data. */
export interface MatrixRow {
  readonly metal: MetalId;
  readonly place: PlaceKind;
  readonly size: number;
  /** Steady current at the limit [A], rounded down to what is told: no harm set begins below it. */
  readonly Iz: number;
  /** What a table allows a copper cord of the size at 30 °C [A]; null where none does. */
  readonly tabled: number | null;
  readonly cells: readonly MatrixCell[];
}

const places = ['stillAir', 'draught', 'clipped', 'lagged', 'coiled'] as const satisfies readonly PlaceKind[];

/** Twelve of each practice, those whose points were found (own choice). */
const devices: Readonly<Record<MatrixAsk['practice'], readonly (readonly [DeviceFamily, number])[]>> = {
  iec: [
    ['bs1362', 3],
    ['bs1362', 13],
    ['gG', 6],
    ['gG', 10],
    ['gG', 16],
    ['gG', 32],
    ['B', 6],
    ['B', 16],
    ['B', 32],
    ['C', 20],
    ['D', 32],
    ['bs3036', 30],
  ],
  na: [
    ['ul489', 15],
    ['ul489', 20],
    ['ul489', 30],
    ['ul489', 50],
    ['ul248', 15],
    ['ul248', 20],
    ['ul248', 30],
    ['ul248 delay', 15],
    ['ul248 delay', 20],
    ['ul248 delay', 30],
    ['ul248 CC', 10],
    ['ul248-14', 10],
  ],
};

/** What a socket far from its transformer can give [A] (own choice). */
const usualProspective = 1000;

/** The matrix of a practice: its sizes, four metals, five places as lessons meet them, and twelve usual devices. */
export function usualMatrix(practice: 'iec' | 'na', limit: MatrixAsk['limit'], ambient_degC: number): MatrixAsk {
  return {
    practice,
    sizes: matrixSizes[practice],
    metals: matrixMetals,
    places,
    devices: devices[practice].map(([family, rating_A]) => ({ family, rating_A })),
    limit,
    ambient_degC,
    prospective: usualProspective,
  };
}

/** How many harm sets an ask has. */
export const matrixCases = ({ sizes, metals, places: where, devices: behind }: MatrixAsk): number =>
  sizes.length * metals.length * where.length * behind.length;

/** Metres on the reel, where the place is one (own choice, the lead of lesson 2.4). */
const reelMetres = 25;

/**
 * The very case of a cell, with nothing flowing yet, so that it starts from cold as the matrix does. Throws `OutOfRange` for a
 * size whose walls we do not hold.
 */
export function matrixScenario(
  { practice, ambient_degC }: MatrixAsk,
  { metal, place, size }: Pick<MatrixRow, 'metal' | 'place' | 'size'>,
  device?: MatrixAsk['devices'][number],
): Scenario {
  const cable = matrixLead(size, metal, practice);
  if (!cable) {
    const all: readonly number[] = matrixSizes[practice];
    throw new OutOfRange(
      'size of a lead',
      size,
      [Math.min(...all), Math.max(...all)],
      practice === 'na' ? 'AWG' : 'mm²',
    );
  }
  return {
    practice,
    cable,
    lead: { length_m: reelMetres },
    surroundings: usualSurroundings(place, ambient_degC, reelMetres),
    supply: [{ kind: 'off', duration_s: 1800 }],
    ...(device ? { device: { family: device.family, rating_A: device.rating_A } } : {}),
  };
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

function rowOf(ask: MatrixAsk, at: Pick<MatrixRow, 'metal' | 'place' | 'size'>, behind: readonly Device[]): MatrixRow {
  const of = buildCase(matrixScenario(ask, at));
  const limit = of.limits.find(({ id }) => id === ask.limit);
  if (!limit) throw new OutOfRange(`limit ${ask.limit} of the insulation`, Number.NaN, [0, 0], 'K');
  const sets = harmSets(of, behind, limit, { prospective: ask.prospective });
  const marked = markedSize(of.scenario.cable);
  const tabled = at.metal === 'copper' && marked ? (cordCurrent(marked)?.I ?? null) : null;
  const cells = sets.map((set) => cellOf(of, set, tabled));
  return { ...at, Iz: toldBelow(sets[0]?.Iz ?? 0), tabled, cells };
}

function cellOf(of: ThermalCase, { device, spans }: HarmSet, tabled: number | null): MatrixCell {
  const gaps = toldSpans(spans);
  return {
    outcome: gaps.length === 0 ? 'none' : gaps.at(-1)?.to === null ? 'no upper end found' : 'gap',
    gaps,
    ...standingOf(of, device),
    aboveTable: tabled === null ? null : device.In > tabled,
  };
}

function standingOf(of: ThermalCase, device: Device): Pick<MatrixCell, 'standing' | 'why'> {
  if (ruledMetal(of) !== 'copper') return { standing: 'not met', why: 'No cord standard allows a lead of this metal.' };
  const { outcome, open, statements } = ruleOfCase(of, device, { Ib: 0 });
  const noTable = statements.find(({ id }) => id === 'no table');
  if (outcome === 'met') return { standing: noTable ? 'no table' : 'met', why: noTable?.text ?? '' };
  const [first] = open;
  return { standing: 'not met', why: first ? `It fails a test: ${first.words}.` : (statements[0]?.text ?? '') };
}
