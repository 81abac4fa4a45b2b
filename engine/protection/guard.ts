import type { Device } from './device.ts';

/** What the rules of coordination ask of a protective device: its family, rated current In and acting current I2 [A]. */
export type Guard = Pick<Device, 'family' | 'In' | 'I2'>;

/**
 * The longest a device may take at prospective current `I` [A] [s]: infinite where it need not act, null where the standard is
 * silent. `(I) => slowest(device, I, 'guaranteed')` for a device of the standards.
 */
export type Slowest = (I: number) => number | null;
