import {
  type Adiabatic,
  type AdiabaticK,
  adiabaticFrom,
  adiabaticTo,
  allowedTime,
  type CableSpec,
  cableOf,
  type Device,
  type DeviceEnergy,
  type DeviceFamily,
  deviceEnergy,
  energyOver,
  kOf,
  type MetalId,
  outlasts,
  type Selectivity,
  selectiveByCurves,
  selectiveGG,
  standardRatings,
  tradeSize,
  withstand,
} from '#engine';
import type { Practice } from '../../lib/format.ts';
import type { Accepts } from '../figure/ask-text.ts';
import { type SizesByPractice, systemOf, withSize } from '../figure/carry.ts';
import { circuitDevices, deviceAt } from '../figure/devices.ts';
import { withMetal } from '../figure/metal.ts';

/** What the scale is asked for. A type, not an interface, so that it is an ask as every figure's is. */
export type EnergyAsk = {
  /** Prospective fault current [A]. */
  amps: number;
  metal: MetalId;
  /** As marked, in mm² or AWG. */
  size: number;
  /** The device nearer the fault, and the one nearer the source; ratings in A. */
  down: DeviceFamily;
  downRating: number;
  up: DeviceFamily;
  upRating: number;
  /** The maker's let-through of the one, and pre-arcing I²t of the other [A²s]; 0 where none was given. */
  downMaker: number;
  upMaker: number;
};

/** Families that a pair may be made of: those of circuits, and the plug fuse. */
export const pairFamilies: Readonly<Record<Practice, readonly DeviceFamily[]>> = {
  iec: ['bs1362', ...circuitDevices.iec],
  na: circuitDevices.na,
};

/** Ends of the fault current [A], and of a maker's figure [A²s]. */
export const ends = { amps: { least: 20, most: 10_000 }, maker: { least: 0, most: 1e7 } } as const;

/** The metals to choose from. */
export const wireMetals = ['copper', 'cca10', 'aluminium', 'steel'] as const;

/** What each part of an ask may be, by practice. */
export function acceptedEnergy(sizes: SizesByPractice): Readonly<Record<Practice, Accepts<EnergyAsk>>> {
  const of = (practice: Practice): Accepts<EnergyAsk> => {
    const families = pairFamilies[practice];
    const ratings = [...new Set(families.flatMap((family) => standardRatings(family)))];
    return {
      amps: ends.amps,
      metal: wireMetals,
      size: sizes[practice],
      down: families,
      downRating: ratings,
      up: families,
      upRating: ratings,
      downMaker: ends.maker,
      upMaker: ends.maker,
    };
  };
  return { iec: of('iec'), na: of('na') };
}

/** What a conductor stands. */
export interface Standing {
  readonly name: string;
  /** Metal area [m²]. */
  readonly area: number;
  readonly k: AdiabaticK;
  /** k²S² [A²s]. */
  readonly I2t: number;
  /** How long it stands the fault current. */
  readonly lasts: Adiabatic;
}

/** Conductor and two devices on one scale of A²s, all of it computed by the engine. */
export interface EnergyCase {
  readonly ask: EnergyAsk;
  readonly usage: Practice;
  readonly conductor: Standing;
  /** The protective conductor, where it has another size. */
  readonly earth: Standing | null;
  readonly down: Device;
  readonly up: Device;
  readonly downEnergy: DeviceEnergy;
  readonly upEnergy: DeviceEnergy;
  /** What becomes of the thinner of the conductors; null where the device's standard does not tell enough. */
  readonly survives: boolean | null;
  readonly selectivity: Selectivity | null;
  /** I²t of this current over 0.1 s and over 5 s [A²s]: between them the formula decides. */
  readonly range: readonly [from: number, to: number];
}

/** The scale of an ask. `opening` is the cable the page gives, with its own size and metal; `earth` another size of its protective conductor. */
export function energyCase(
  ask: EnergyAsk,
  usage: Practice,
  opening: { cable: CableSpec; metal: MetalId; size: number },
  earth: number | null,
): EnergyCase {
  const sized = ask.size === opening.size ? opening.cable : withSize(opening.cable, usage, ask.size);
  const spec = ask.metal === opening.metal && sized === opening.cable ? sized : withMetal(sized, ask.metal);
  const { conductor, insulation } = cableOf(spec);
  const standing = (name: string, area: number): Standing => {
    const k = insulation && kOf(conductor.metal, insulation, area);
    if (!k) throw new Error('the conductor’s insulation has no limit for a short circuit');
    return { name, area, k, I2t: withstand(k.k, area), lasts: allowedTime(k.k, area, ask.amps) };
  };
  const own = standing('conductor', conductor.area);
  const earthSize = earth === null ? undefined : tradeSize(systemOf[usage], earth);
  const thin = earthSize && ask.size === opening.size ? standing('earth', earthSize.area) : null;
  const [down, up] = [deviceAt(ask.down, ask.downRating), deviceAt(ask.up, ask.upRating)];
  const downEnergy = deviceEnergy(down, ask.amps, { letThrough: ask.downMaker });
  const upEnergy = deviceEnergy(up, ask.amps, { preArcing: ask.upMaker });
  const weakest = thin && thin.I2t < own.I2t ? thin : own;
  return {
    ...{ ask, usage, conductor: own, earth: thin, down, up, downEnergy, upEnergy },
    survives: outlasts(weakest.k.k, weakest.area, ask.amps, downEnergy),
    selectivity: selectivityOf(up, down, upEnergy, downEnergy),
    range: [energyOver(ask.amps, adiabaticFrom), energyOver(ask.amps, adiabaticTo)],
  };
}

function selectivityOf(up: Device, down: Device, above: DeviceEnergy, below: DeviceEnergy): Selectivity | null {
  const byMaker = above.atLeast?.source === 'user' || below.atMost?.source === 'user';
  if (up.family === 'gG' && down.family === 'gG' && !byMaker) return selectiveGG(up.In, down.In);
  if (!above.atLeast || !below.atMost) return null;
  return selectiveByCurves({ upstream: above.atLeast.I2t, downstream: below.atMost.I2t });
}
