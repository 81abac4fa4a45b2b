import type * as v from 'valibot';
import type { Scenario } from '#engine';
import type { Practice } from '../../lib/format.ts';
import type { HoldAsk } from '../../widgets/hold-or-open/rows.ts';
import { forPractice } from './by-practice.ts';
import { caseOf, type LessonCase } from './case-of.ts';
import type { firstToActProps, holdOrOpenProps } from './plane-props.ts';

type CordProps = Omit<v.InferOutput<typeof firstToActProps>, 'most'>;
type HoldProps = v.InferOutput<typeof holdOrOpenProps>;

/** The cord behind its device, for each practice. */
export function planeCases(of: CordProps): Record<Practice, Scenario> {
  const one = (practice: Practice): Scenario => {
    const { cast, amps, ambient, before, metal, length, surroundings, device } = of;
    const parts = forPractice({ cast, amps, ambient, before, metal, length }, practice) as unknown as LessonCase & {
      before?: number;
    };
    const { before: carried, ...lead } = parts;
    const { family, rating } = device[practice];
    return {
      ...caseOf({ ...lead, surroundings }),
      practice,
      device: { family, rating_A: rating },
      ...(carried === undefined ? {} : { start: { steadyAt_A: carried } }),
    };
  };
  return { iec: one('iec'), na: one('na') };
}

/** What a line of current opens with, for each practice. */
export function holdAsks({ device, amps }: HoldProps): Record<Practice, HoldAsk> {
  const one = (practice: Practice): HoldAsk => ({
    ...device[practice],
    amps: forPractice({ amps }, practice).amps as number,
  });
  return { iec: one('iec'), na: one('na') };
}
