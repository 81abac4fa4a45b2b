import { type CableSpec, inSize, markedSize, type Scenario, type SizeSystem, tradeSize } from '#engine';
import type { Practice } from '../../lib/format.ts';
import { currentOf, withCurrent } from './edit.ts';

/** Sizes that a figure offers, by practice: mm² and AWG. */
export type SizesByPractice = Readonly<Record<Practice, readonly number[]>>;

/** The sizes that cords of the standing cast are made in. */
export const cordSizes: SizesByPractice = { iec: [0.75, 1, 1.5, 2.5, 4], na: [18, 16, 14, 12, 10] };

/** The system each practice tells sizes in. */
export const systemOf: Readonly<Record<Practice, SizeSystem>> = { iec: 'mm2', na: 'AWG' };

/** How that system writes its unit. */
export const sizeUnit: Readonly<Record<Practice, string>> = { iec: 'mm²', na: 'AWG' };

/** The cable in the size `size` of a practice; as it was where its table has no such row. */
export function withSize(cable: CableSpec, practice: Practice, size: number): CableSpec {
  const to = tradeSize(systemOf[practice], size);
  return (to && inSize(cable, to)) ?? cable;
}

/** True where two cables are of one kind, whatever their size and metal: of one table, or with the same walls. */
export function sameKind(a: CableSpec, b: CableSpec): boolean {
  const kind = (cable: CableSpec) =>
    'table' in cable
      ? [cable.table, cable.cores, cable.loaded]
      : [cable.layout, cable.cores, cable.loaded, cable.insulation, cable.sheath, cable.body_mm2];
  return JSON.stringify(kind(a)) === JSON.stringify(kind(b));
}

/** The other practice's own case with its cable in the size that stands in the same place of its list. */
export function carriedSize(from: Scenario, to: Scenario, sizes: SizesByPractice): Scenario {
  const [here, there] = [from.practice ?? 'iec', to.practice ?? 'iec'] as const;
  const place = sizes[here].indexOf(markedSize(from.cable)?.size ?? Number.NaN);
  const size = sizes[there][place];
  return size === undefined ? to : { ...to, cable: withSize(to.cable, there, size) };
}

/**
 * `carried`, which went over from `from`, with the current that the page gives there, if this one's page's current was never
 * changed; `opening` is the page's own case of each practice.
 */
export function withOwnCurrent(
  carried: Scenario,
  from: Scenario,
  opening: Readonly<Record<Practice, Scenario>>,
): Scenario {
  const own = currentOf(opening[from.practice ?? 'iec']);
  const there = currentOf(opening[carried.practice ?? 'iec']);
  return own === there || there === undefined || currentOf(from) !== own ? carried : withCurrent(carried, there);
}
