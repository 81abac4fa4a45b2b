import { loadAs, nominalVolts } from '../../heating/nominal-load.ts';
import { given } from '../figures.ts';
import type { Practice } from '../types.ts';

/** Current that a load of `P` [W] takes at its full volts `U` [V], by the engine [A]. */
export const ampsOf = (P: number, U: number): number => loadAs('amps', { kind: 'watts', value: P }, U).value;

/** The nominal volts of a plug or circuit of a practice [V]. */
export const voltsOf = (practice: Practice): number => nominalVolts[practice].value;

/** The nominal volts of the other practice [V]: what a learner takes from habit, or from a page of the other region. */
export const otherVolts = (practice: Practice): number => voltsOf(practice === 'iec' ? 'na' : 'iec');

/** Watts as a rating plate tells them: '900 W', '2.4 kW'. */
export const wattsText = (P: number): string => (P < 1000 ? given(P, 'W') : given(P / 1000, 'kW'));
