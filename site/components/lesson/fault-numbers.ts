import {
  allowedTime,
  cableOf,
  clearsInTime,
  coldReadingShare,
  deviceEnergy,
  disconnectionTime,
  gGRatio,
  kelvin,
  kOf,
  type Loop,
  leastVoltageFactor,
  loopOf,
  meltingEnergy,
  metals,
  nominalVolts,
  partOf,
  plastics,
  type Scenario,
  slowest,
  withstand,
} from '#engine';
import { fixed, type Practice, quantity, significant, thin, timeInWords } from '../../lib/format.ts';
import { energy } from '../../widgets/i2t-scale/words.ts';
import { type LoopCase, loopCase } from '../../widgets/loop-trace/loop-case.ts';
import { ohms } from '../../widgets/loop-trace/words.ts';
import { caseOf } from './case-of.ts';
import { lessonDevice } from './device-numbers.ts';
import type {
  CoreNumber,
  EnergyNumber,
  FaultNumber,
  LoopLimit,
  LoopNumber,
  LoopSpot,
  ShortNumber,
} from './fault-props.ts';

/** A number of a fault: its value in SI, its kind, and how it is told. */
export interface FaultValue {
  readonly kind: 'current' | 'time' | 'resistance' | 'energy' | 'k' | 'ratio';
  readonly value: number;
  readonly told: string;
}

const needed = <T>(value: T | null | undefined, otherwise: string): T => {
  if (value === null || value === undefined) throw new Error(otherwise);
  return value;
};

const current = (value: number): FaultValue => ({
  kind: 'current',
  value,
  told: `${significant(value, 3).replace(/\.0+$/, '')}${thin}A`,
});
const resistance = (value: number): FaultValue => ({ kind: 'resistance', value, told: ohms(value) });
const energyOf = (value: number): FaultValue => ({ kind: 'energy', value, told: energy(value) });
const ratio = (value: number, told: string): FaultValue => ({ kind: 'ratio', value, told });
const times = (value: number): FaultValue => ratio(value, `${significant(value, 2)}${thin}times`);
const time = (value: number): FaultValue => {
  if (!Number.isFinite(value) || value <= 0) throw new Error('no time is stated at this current');
  return { kind: 'time', value, told: timeInWords(value) };
};

/** The number asked for; throws where there is none, so that a page never prints one that is not there. */
export function faultValue(spec: FaultNumber, practice: Practice): FaultValue {
  switch (spec.of) {
    case 'fault current':
    case 'lead loop':
    case 'allowed time':
    case 'opens in':
      return shortValue(spec, practice);
    case 'k':
    case 'withstand':
    case 'stands times':
      return coreValue(spec);
    case 'let-through':
    case 'starts to melt':
    case 'melts by':
    case 'rating ratio':
    case 'selective ratio':
      return energyValue(spec);
    case 'loop':
    case 'cold loop':
    case 'lead in loop':
    case 'loop current':
    case 'loop opens in':
      return loopValue(spec, practice);
    default:
      return limitValue(spec);
  }
}

type Cord = Pick<ShortNumber, 'cast' | 'metal' | 'size'>;
const cordOf = (of: Cord) => cableOf(caseOf({ ...of, amps: 1, ambient: 20 }).cable);

/** The conductor's k and area, of a cord of the cast. */
function coreOf(of: Cord) {
  const { conductor, insulation } = cordOf(of);
  const found = insulation && kOf(conductor.metal, insulation, conductor.area);
  return { k: needed(found, 'this insulation has no limit for a short circuit').k, area: conductor.area };
}

/** Line to neutral, with everything cold, so that the most current flows. */
function shortLoop({ source, length, ...of }: ShortNumber, practice: Practice): Loop {
  const part = partOf('conductor', cordOf(of).conductor, length ?? 0);
  return loopOf({ U0: nominalVolts[practice].value, Ze: source, parts: [part, part], T: kelvin(20), Cmin: 1 });
}

function shortValue(spec: ShortNumber, practice: Practice): FaultValue {
  const { greatest: I, parts } = shortLoop(spec, practice);
  switch (spec.of) {
    case 'fault current':
      return current(I);
    case 'lead loop':
      return resistance(parts.reduce((sum, { cold }) => sum + cold, 0));
    case 'allowed time': {
      const { k, area } = coreOf(spec);
      return time(allowedTime(k, area, I).value);
    }
    case 'opens in': {
      const of = lessonDevice({ device: needed(spec.device, 'a device is needed'), rating: spec.rating ?? 0 });
      return time(needed(slowest(of, I, spec.assumed ? 'assumed' : 'guaranteed'), 'no time is stated at this current'));
    }
  }
}

function coreValue({ of, cast, metal, size, insulation = 'pvc70', ...through }: CoreNumber): FaultValue {
  const core = cast === undefined ? null : coreOf({ cast, metal, size });
  if (of === 'k') {
    const smallest = 1e-6; // m²: any area up to 300 mm² has the same k
    const found = core?.k ?? kOf(metals[needed(metal, 'a metal is needed')], plastics[insulation], smallest)?.k;
    const k = needed(found, `${insulation} has no limit for a short circuit`);
    return { kind: 'k', value: k, told: fixed(k / 1e6, 0) };
  }
  const { k, area } = needed(core, 'this number needs a cord of the cast');
  const stands = withstand(k, area);
  return of === 'withstand' ? energyOf(stands) : times(stands / (through.through ?? mostThrough(through)));
}

function mostThrough({ device, rating = 0, amps = 0 }: Pick<EnergyNumber, 'device' | 'rating' | 'amps'>): number {
  const of = lessonDevice({ device: needed(device, 'a device is needed'), rating });
  return needed(deviceEnergy(of, amps).atMost, `no standard tells what ${of.name} lets through at ${amps} A`).I2t;
}

function energyValue(spec: EnergyNumber): FaultValue {
  const { of, rating = 0, upper = 0 } = spec;
  const melting = () => needed(meltingEnergy(rating), `no table of ours tells what melts a gG fuse of ${rating} A`);
  switch (of) {
    case 'let-through':
      return energyOf(mostThrough(spec));
    case 'starts to melt':
      return energyOf(melting().least.value);
    case 'melts by':
      return energyOf(melting().greatest.value);
    case 'rating ratio':
      return ratio(upper / rating, significant(upper / rating, 3));
    case 'selective ratio':
      return ratio(gGRatio.value, String(gGRatio.value));
  }
}

/** The loop as its figure has it: source, fixed wiring of copper, the lead out and back. */
export function lessonLoop(spot: LoopSpot, practice: Practice): LoopCase {
  const { cast, metal, size, length, origin, line, earth, warm, device, rating } = spot;
  const scenario: Scenario = {
    ...caseOf({ cast, metal, size, length, amps: 1, ambient: 20 }),
    practice,
    supply: [{ kind: 'voltage', U_V: nominalVolts[practice].value, source_ohm: origin }],
    device: { family: device, rating_A: rating },
    ...(warm === undefined ? {} : { start: { T_degC: warm } }),
  };
  return loopCase(scenario, line === undefined ? null : { line, earth: earth ?? line });
}

function loopValue(spec: LoopNumber, practice: Practice): FaultValue {
  const { loop, clearing } = lessonLoop(spec, practice);
  switch (spec.of) {
    case 'loop':
      return resistance(loop.Zs);
    case 'cold loop':
      return resistance(loop.cold);
    case 'lead in loop':
      return resistance(
        loop.parts.filter(({ name }) => name.endsWith('lead')).reduce((sum, { warm }) => sum + warm, 0),
      );
    case 'loop current':
      return current(loop.least);
    case 'loop opens in':
      return time(needed(clearing.t, 'no time is stated at this current'));
  }
}

/** Ohms and seconds are those of UK and IEC practice, whoever reads: the North American code sets none. */
function limitValue({ of, device, rating = 0 }: LoopLimit): FaultValue {
  const U0 = nominalVolts.iec.value;
  if (of === 'least volts') return ratio(leastVoltageFactor.value, quantity(100 * leastVoltageFactor.value, '%', 0));
  const limit = needed(disconnectionTime(U0), 'no time is set at this voltage');
  if (of === 'disconnection time') return time(limit.t);
  const asked = lessonDevice({ device: needed(device, 'a device is needed'), rating });
  const bare = loopOf({ U0, Ze: 1, parts: [], T: kelvin(20) });
  const { Ia, greatestLoop } = clearsInTime(bare, (I) => slowest(asked, I, 'guaranteed'), limit);
  const most = needed(greatestLoop, `no current surely opens ${asked.name} in time`);
  if (of === 'needed current') return current(needed(Ia, `no current surely opens ${asked.name} in time`));
  return resistance(of === 'greatest loop' ? most : coldReadingShare * most);
}
