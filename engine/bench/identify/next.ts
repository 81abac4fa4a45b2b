import type { Evidence } from './evidence.ts';
import {
  information,
  meanings,
  measuredTable,
  type OutcomeMeaning,
  type ReadQuantity,
  seenTable,
  type Table,
} from './outcomes.ts';
import type { Prior, Priors } from './priors.ts';
import type { Weighed } from './weigh.ts';

/** A measurement that may be made next. */
export type MeasurementId = 'magnet' | 'skin' | 'under' | 'resistance' | 'strands' | 'bundle' | 'mass';

/** A measurement with what is to be expected of it. */
export interface NextMeasurement {
  readonly measurement: MeasurementId;
  /** A second one that is to be made with it: the outcome is that of both. */
  readonly also: MeasurementId | null;
  /** What the readings of the outcomes are of; null for what is seen. */
  readonly quantity: ReadQuantity | null;
  /** Expected gain of information about which metal it is [nats]. */
  readonly gain: number;
  /** That gain over all the doubt that is left. */
  readonly share: number;
  /** Ends the sample as it was found: photograph first. */
  readonly destructive: boolean;
  readonly outcomes: readonly OutcomeMeaning[];
}

/** How each measurement is usually made. */
interface Instrument {
  readonly destructive: boolean;
  /** Relative standard uncertainty of the quantity; null for what is seen. */
  readonly u: number | null;
}

/** Measurements with typical instruments: our choices. */
export const instruments: Prior<Readonly<Record<MeasurementId, Instrument>>> = {
  value: {
    magnet: { destructive: false, u: null },
    skin: { destructive: false, u: null },
    resistance: { destructive: false, u: 0.008 },
    strands: { destructive: false, u: 0.05 },
    bundle: { destructive: false, u: 0.03 },
    under: { destructive: true, u: null },
    mass: { destructive: true, u: 0.02 },
  },
  unit: '1',
  source: 'own',
  confidence: 'our choice',
  why: 'four terminals with volts 0.2 %, amperes 0.5 %, tape 0.5 % and 1 K; strands of 0.2 to 0.4 mm counted and gauged to 0.006 mm; a soft bundle gauged to 3 %; some metres of core on a kitchen scale. Strands and bundle are gauged at an end that is bare already; scraping and stripping are not undone',
};

/** A measurement is worth while that is expected to take away this share of the doubt: our choice. */
export const worthWhile = 0.1;
/** Doubt that needs no further measurement [nats]: about one metal at 99 in 100. */
export const settled = 0.056;

const entropyOf = (shares: readonly number[]) => -shares.reduce((sum, p) => (p > 0 ? sum + p * Math.log(p) : sum), 0);

/** Whether a measurement is still to be made; a two-terminal resistance leaves the better one open. */
function isOpen(id: MeasurementId, evidence: Evidence): boolean {
  if (id === 'resistance') return evidence.resistance?.method !== 'four-terminal';
  if (id === 'strands') return !(evidence.strands?.count && evidence.strands.diameter);
  return evidence[id] === undefined;
}

/** What a measurement is worth by the table of its outcomes; `quantity` null for what is seen. */
function worth(
  id: MeasurementId,
  table: Table,
  quantity: ReadQuantity | null,
  weighed: readonly Weighed[],
  also: MeasurementId | null = null,
): NextMeasurement {
  const shares = weighed.map(({ probability }) => probability);
  const gain = information(shares, table.rows);
  const { destructive } = instruments.value[id];
  const doubt = entropyOf(shares);
  const outcomes = meanings(table, weighed, quantity === null);
  return { measurement: id, also, quantity, gain, share: doubt > 0 ? gain / doubt : 0, destructive, outcomes };
}

/** Every measurement not yet made, with its expected gain, greatest first. */
export function openMeasurements(weighed: readonly Weighed[], evidence: Evidence, priors: Priors): NextMeasurement[] {
  return (Object.keys(instruments.value) as MeasurementId[])
    .filter((id) => isOpen(id, evidence))
    .map((id) => {
      if (id === 'magnet' || id === 'skin' || id === 'under')
        return worth(id, seenTable(id, weighed, priors), null, weighed);
      return worth(id, measuredTable(id, instruments.value[id].u ?? 1, weighed, priors), id, weighed);
    })
    .sort((a, b) => b.gain - a.gain);
}

/** Resistance and strands together, where neither is known: either alone tells nothing of the metal, their product does. */
function together(weighed: readonly Weighed[], evidence: Evidence, priors: Priors): NextMeasurement | null {
  const { resistance, strands, bundle, mass } = evidence;
  if (resistance || bundle || mass || (strands?.count && strands.diameter)) return null;
  const u = Math.hypot(instruments.value.resistance.u ?? 0, instruments.value.strands.u ?? 0);
  return worth('resistance', measuredTable('resistivity', u, weighed, priors), 'resistivity', weighed, 'strands');
}

/**
 * The measurement that is expected to tell most. One that leaves the sample as it is comes first if it is worth while,
 * then two such together, and only then one that does not. Null where the metal is settled, or where nothing that is left
 * is worth while.
 */
export function nextMeasurement(
  weighed: readonly Weighed[],
  evidence: Evidence,
  priors: Priors,
): NextMeasurement | null {
  if (entropyOf(weighed.map(({ probability }) => probability)) < settled) return null;
  const open = openMeasurements(weighed, evidence, priors).filter(({ share }) => share >= worthWhile);
  const harmless = open.find(({ destructive }) => !destructive);
  if (harmless) return harmless;
  const pair = together(weighed, evidence, priors);
  return pair && pair.share >= worthWhile ? pair : (open[0] ?? null);
}
