import type * as v from 'valibot';
import { type FoundOnLead, type Scenario, usualBenchVolts } from '#engine';
import type { Practice } from '../../lib/format.ts';
import type { KnownCopper, WireAsk } from '../../widgets/four-wire/lead-case.ts';
import { forPractice } from './by-practice.ts';
import { caseOf } from './case-of.ts';
import type { fourWireProps, liveBenchProps, metalFinderProps } from './suspect-props.ts';

type Props<T extends v.GenericSchema> = v.InferOutput<T>;
type OneOf<V> = V extends { iec: infer Own; na: unknown } ? Own : V;
type One<T> = { [Key in keyof T]: OneOf<T[Key]> };

const each = <T extends object, R>(of: T, make: (one: One<T>, practice: Practice) => R): Record<Practice, R> => ({
  iec: make(forPractice(of, 'iec') as One<T>, 'iec'),
  na: make(forPractice(of, 'na') as One<T>, 'na'),
});

/** The known lead of each practice. */
export const knownLeads = (of: Props<typeof fourWireProps>): Record<Practice, KnownCopper> =>
  each(of, ({ truth, size }) => ({ R20: Number(truth) * 1e-3, size: Number(size) }));

/** What the two circuits open with. */
export const wireAsks = (of: Props<typeof fourWireProps>): Record<Practice, WireAsk> =>
  each(of, ({ amps, leads, length, at }) => ({ amps, leads, length: Number(length), T: at, instruments: 'limits' }));

/** All that is to be found on a suspect lead, by practice. */
export const foundLeads = (of: Props<typeof metalFinderProps>): Record<Practice, FoundOnLead> =>
  each(of, (one, practice) => {
    const mass = one.mass as { grams: number; length: number };
    return {
      marking: practice === 'na' ? { size_AWG: Number(one.size) } : { size_mm2: Number(one.size) },
      ...(one.magnet && { magnet: one.magnet }),
      ...(one.skin && { skin: one.skin }),
      resistance: {
        ...{ U_V: Number(one.volts), I_A: one.amps, length_m: Number(one.length), T_degC: one.at },
        ...{ cores: 2, method: 'four-terminal' },
      },
      strands: { count: one.strands.count, diameter_mm: one.strands.diameter },
      mass: { mass_g: mass.grams, length_m: mass.length },
      ...(one.under && { under: one.under }),
    };
  });

/** A lead of the cast on the live bench, on its own low supply. */
export const benchCases = (of: Props<typeof liveBenchProps>): Record<Practice, Scenario> =>
  each(of, ({ cast, length, ambient, amps }, practice) => {
    const scenario = caseOf({ cast, amps: Number(amps), ambient, length: Number(length) });
    const supply: Scenario['supply'] = [{ kind: 'current', I_A: Number(amps), compliance_V: usualBenchVolts }];
    return { ...scenario, version: 1, practice, supply };
  });
