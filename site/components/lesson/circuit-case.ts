import type * as v from 'valibot';
import {
  type CableSpec,
  cast,
  type FixedWiring,
  inMetal,
  type MetalId,
  markedSize,
  metalOf,
  nominalVolts,
  type Scenario,
} from '#engine';
import type { Practice } from '../../lib/format.ts';
import { cordSizes } from '../../widgets/figure/carry.ts';
import type { EnergyAsk } from '../../widgets/i2t-scale/energy-case.ts';
import type { ChooserAsk } from '../../widgets/size-chooser/ask.ts';
import { forPractice } from './by-practice.ts';
import type { i2tScaleProps, loopTraceProps, sizeChooserProps } from './circuit-props.ts';

type Props<T extends v.GenericSchema> = v.InferOutput<T>;
/** A prop as one practice has it. */
type OneOf<V> = V extends { iec: infer Own; na: unknown } ? Own : V;
/** Props as one practice has them. */
type One<T> = { [Key in keyof T]: OneOf<T[Key]> };

const each = <T extends object, R>(of: T, make: (one: One<T>, practice: Practice) => R): Record<Practice, R> => ({
  iec: make(forPractice(of, 'iec') as One<T>, 'iec'),
  na: make(forPractice(of, 'na') as One<T>, 'na'),
});

/** Circuits, or conductors, that lie together where a lesson does not say. */
const alone: Readonly<Record<Practice, number>> = { iec: 1, na: 2 };

/** The parts of a chooser's props that make its case. */
type Circuit = Omit<Props<typeof sizeChooserProps>, 'id' | 'number' | 'title' | 'all' | 'controls'>;

/** What a size is chosen for, as a lesson writes it. */
export function chooserAsks(of: Circuit): Record<Practice, ChooserAsk> {
  return each(of, (one, practice) => ({
    told: one.watts === undefined ? 'amps' : 'watts',
    load: Number(one.watts ?? one.amps),
    volts: Number(one.volts ?? nominalVolts[practice].value),
    continuous: one.continuous ?? false,
    family: one.device.family,
    rating: one.device.rating,
    laid: one.laid ?? 'flat twin',
    metal: (one.metal ?? 'copper') as ChooserAsk['metal'],
    ambient: Number(one.ambient),
    together: Number(one.together ?? alone[practice]),
    lagged: one.lagged_mm ?? 0,
    column: one.column ?? 90,
    terminals: one.terminals ?? 60,
    leave: false,
  }));
}

/** A lead at the end of its wiring, its far end bridged by a fault. */
export function loopCases(of: Props<typeof loopTraceProps>): Record<Practice, Scenario> {
  return each(of, (one, practice) => ({
    cable: cast[one.cast],
    practice,
    surroundings: { kind: 'stillAir', ambient_degC: 20 },
    lead: { length_m: Number(one.length_m) },
    supply: [{ kind: 'voltage', U_V: nominalVolts[practice].value, source_ohm: Number(one.origin) }],
    device: { family: one.device.family, rating_A: one.device.rating },
    ...(one.warm === undefined ? {} : { start: { T_degC: one.warm } }),
  }));
}

/** The fixed wiring before the lead, by practice. */
export function fixedWiringOf({ fixed }: Props<typeof loopTraceProps>): Record<Practice, FixedWiring | null> {
  const one = (practice: Practice) => (forPractice({ fixed }, practice).fixed as FixedWiring | undefined) ?? null;
  return { iec: one('iec'), na: one('na') };
}

/** The cable of each practice on a scale of I²t. */
export function energyCables({ cast: pair, metal }: Props<typeof i2tScaleProps>): Record<Practice, CableSpec> {
  const one = (spec: CableSpec): CableSpec => (metal === undefined ? spec : inMetal(spec, metal));
  return { iec: one(cast[pair.iec]), na: one(cast[pair.na]) };
}

/** What is asked of it. */
export function energyAsks(of: Props<typeof i2tScaleProps>): Record<Practice, EnergyAsk> {
  const cables = energyCables(of);
  return each(of, (one, practice) => ({
    amps: Number(one.amps),
    metal: metalOf(cables[practice].conductor?.metal).id as MetalId,
    size: markedSize(cables[practice])?.size ?? cordSizes[practice][0] ?? 0,
    down: one.down.family,
    downRating: one.down.rating,
    up: one.up.family,
    upRating: one.up.rating,
    downMaker: 0,
    upMaker: 0,
  }));
}
