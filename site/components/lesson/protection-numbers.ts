import {
  alongRun,
  ampacity,
  buildCase,
  celsius,
  continuousShare,
  device,
  dropOf,
  fixedCable,
  flatTwinRatings,
  foot,
  loadAs,
  longestForDrop,
  nominalVolts,
  printedDrop,
  ratingAt,
  ratingOf,
  type SettledRun,
  smallConductorCap,
  steadyState,
  stepOfLoad,
  supplyOf,
  type TradeSize,
  tradeSize,
  usualSurroundings,
} from '#engine';
import { type Practice, quantity, significant, temperature, thin, three, timeInWords } from '../../lib/format.ts';
import { tidyLoad } from '../../widgets/volts-along/tidy-load.ts';
import { caseOf } from './case-of.ts';
import type {
  DeviceNumber,
  FixedNumber,
  LoadCurrentNumber,
  ProtectionNumber,
  RunNumber,
  TableDropNumber,
} from './protection-props.ts';

/**
 * A number of a circuit in words: volts to a tenth, a share in per cent to a tenth, currents to three figures. Throws where a
 * table has no such size, or the run does not settle, so that a page never prints a number that is not there.
 */
export function protectionWords(spec: ProtectionNumber, practice: Practice): string {
  switch (spec.of) {
    case 'drop rate':
    case 'table drop':
    case 'table drop share':
    case 'longest run':
      return tableDropWords(spec, practice);
    case 'at the load':
    case 'lost':
    case 'lost share':
    case 'run current':
    case 'delivered':
    case 'run conductor':
      return runWords(spec, practice);
    case 'hold current':
    case 'hold time':
    case 'acting current':
    case 'acting time':
      return deviceWords(spec);
    case 'load current':
      return three(loadCurrent(spec), 'A');
    case 'fixed table':
    case 'small conductor cap':
    case 'fixed conductor':
    case 'fixed rating current':
      return fixedWords(spec, practice);
  }
}

const needed = <T>(value: T | null | undefined, otherwise: string): T => {
  if (value === null || value === undefined) throw new Error(otherwise);
  return value;
};

const amps = (I: number): string => `${significant(I, 3).replace(/\.0+$/, '')}${thin}A`;
const percent = (share: number): string => quantity(100 * share, '%', 1);

const sizeOf = (size: number, practice: Practice): TradeSize =>
  needed(tradeSize(practice === 'na' ? 'AWG' : 'mm2', size), `there is no size ${size} (${practice})`);

function tableDropWords({ of, size, amps: I = 0, length = 0, share = 0 }: TableDropNumber, practice: Practice): string {
  const table = practice === 'na' ? 'conductor' : 'cord';
  const rate = needed(printedDrop(table, sizeOf(size, practice)), `no drop is held for ${size} (${practice})`).value;
  const U0 = nominalVolts[practice].value;
  if (of === 'drop rate')
    return practice === 'na'
      ? three(onePerThousandFeet(rate), 'Ω/kft')
      : quantity(1e3 * rate, 'mV/A/m', rate < 0.01 ? 1 : 0);
  if (of === 'longest run') {
    const metres = longestForDrop(rate, I, share / 100, U0);
    return practice === 'na' ? quantity(metres / foot, 'ft', 0) : quantity(metres, 'm', 0);
  }
  const drop = dropOf(rate, I, length, U0);
  return of === 'table drop' ? quantity(drop.U, 'V', 1) : percent(drop.share);
}

/** Ohms of one conductor in a thousand feet, of a drop out and back [V/(A·m)]. */
const onePerThousandFeet = (rate: number): number => (1e3 * foot * rate) / 2;

function runWords(spec: RunNumber, practice: Practice): string {
  const run = settledRun(spec, practice);
  switch (spec.of) {
    case 'at the load':
      return quantity(run.atLoad, 'V', 1);
    case 'lost':
      return quantity(run.lost, 'V', 1);
    case 'lost share':
      return percent(run.share);
    case 'run current':
      return three(run.I, 'A');
    case 'delivered':
      return three(run.delivered, 'W');
    case 'run conductor':
      return temperature(celsius(run.chain.conductor), practice);
  }
}

function settledRun({ amps: I, load = 'amps', ...of }: RunNumber, practice: Practice): SettledRun {
  const U0 = nominalVolts[practice].value;
  const step = stepOfLoad(tidyLoad(loadAs(load, { kind: 'amps', value: I }, U0)), U0);
  const run = alongRun({ ...caseOf({ ...of, amps: I }), practice, supply: [step] });
  if (run.kind !== 'settled') throw new Error(`this run does not settle: ${run.kind}`);
  return run;
}

function deviceWords({ of, device: family, rating }: DeviceNumber): string {
  const { hold, by, agreed } = needed(device(family, rating), `${rating} A is no rating of ${family}`);
  if (of === 'hold current') return amps(hold.I);
  if (of === 'hold time') return timeInWords(hold.t);
  const acting = needed(agreed ? by[0] : null, `no standard states the acting current of ${family}`);
  return of === 'acting current' ? amps(acting.I) : timeInWords(acting.t);
}

const loadCurrent = ({ watts, volts, counted }: LoadCurrentNumber): number =>
  (watts / volts) * (counted ? continuousShare : 1);

function fixedWords(spec: FixedNumber, practice: Practice): string {
  const { of, size: named, column = 90 } = spec;
  const size = sizeOf(named, practice);
  const none = `no table of ours has ${size.name}`;
  if (of === 'small conductor cap') return amps(needed(smallConductorCap(named, 'copper'), none).value);
  if (of !== 'fixed table') return inItsPlace(spec, size, practice);
  if (practice === 'na') return amps(needed(ampacity(named, 'copper', column), none).value);
  return amps(
    needed(
      flatTwinRatings().find((one) => one.size.size === named),
      none,
    ).I,
  );
}

/** What heat says of one such cable by itself: clipped, or in still air for a gauge. */
function inItsPlace({ of, amps: I = 0, ambient = 30 }: FixedNumber, size: TradeSize, practice: Practice): string {
  const cable = needed(fixedCable(size), `no walls are held of a fixed cable of ${size.name}`);
  const surroundings = usualSurroundings(practice === 'na' ? 'stillAir' : 'clipped', ambient, 1);
  const thermal = buildCase({ cable, practice, surroundings, supply: [{ kind: 'current', I_A: I }] });
  if (of === 'fixed rating current') {
    const limit = needed(ratingOf(thermal.cable), 'this cable has no rating');
    return amps(needed(ratingAt(thermal, limit), 'this cable has no rating'));
  }
  const steady = steadyState(thermal, supplyOf(thermal, { kind: 'current', I_A: I }), thermal.Ta);
  if (steady.kind !== 'steady') throw new Error('this cable does not settle');
  return temperature(celsius(steady.chain.conductor), practice, 0);
}
