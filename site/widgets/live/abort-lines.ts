import type { Limit } from '../../charts/types.ts';
import type { LiveSession } from './session.svelte.ts';

/** The abort limit as a line of its own, where it was lowered; else it lies on the limit it comes from. */
export function abortLines({ conductorLimit_degC: T, most }: LiveSession): Limit[] {
  return T < most.conductor_degC ? [{ id: 'abort', name: 'Abort', T, style: 'other' }] : [];
}
