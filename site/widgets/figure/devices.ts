import { type Device, type DeviceFamily, device, standardRatings } from '#engine';
import type { Practice } from '../../lib/format.ts';

/** Families that protect a circuit, by practice, the usual one first. */
export const circuitDevices: Readonly<Record<Practice, readonly DeviceFamily[]>> = {
  iec: ['B', 'C', 'D', 'gG', 'bs3036'],
  na: ['ul489', 'ul248', 'ul248 delay'],
};

/** A device as a lesson names it. */
export interface NamedDevice {
  family: DeviceFamily;
  rating: number;
}

/** The rating of a family that lies nearest to another family's [A]. */
export function nearestRating(family: DeviceFamily, rating: number, greatest = Number.POSITIVE_INFINITY): number {
  const all = standardRatings(family).filter((In) => In <= greatest);
  return all.reduce((best, In) => (Math.abs(In - rating) < Math.abs(best - rating) ? In : best), all[0] ?? rating);
}

/** The device of a family at a rating, or at the one nearest to it. */
export function deviceAt(family: DeviceFamily, rating: number): Device {
  return (device(family, rating) ?? device(family, nearestRating(family, rating))) as Device;
}

/** Its name without the brackets that tell the standard: '20 A breaker'. */
export const shortName = ({ name }: Device): string => name.replace(/\s*\([^)]*\)$/, '');
