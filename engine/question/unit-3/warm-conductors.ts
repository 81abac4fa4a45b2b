import { cableOf } from '../../cable/cable.ts';
import { fixedCable } from '../../cable/fixed-cable.ts';
import { tradeSize } from '../../conductor/area-scale.ts';
import type { Cited } from '../../protection/cited.ts';
import { printedDrop } from '../../protection/drop-table.ts';
import { dropPerAmpereMetre } from '../../protection/volt-drop.ts';
import { foot, kelvin } from '../../quantity.ts';
import type { CableSpec, Scenario } from '../../scenario/schema.ts';
import { carrying } from '../carrying.ts';
import { amount, given, rounded } from '../figures.ts';
import type { Practice } from '../types.ts';
import { unitSpace } from '../words.ts';

// Copper conductors whose volts are lost along a run: cold, and as warm as the trade's tables take them.

/** One cable that a run is made of. */
export interface RunCable {
  readonly size: number;
  /** 'a two-core 1.5 mm² cord', 'a cable of 14 AWG copper'. */
  readonly words: string;
  readonly cable: CableSpec;
  /** The greatest steady current that questions put through it [A]: a cord's table rating, or 80 % of a branch breaker. */
  readonly most: number;
  /** Temperature the table takes the conductor at [°C]. */
  readonly table_degC: number;
}

const cordOf = (size: number, most: number): RunCable => ({
  size,
  words: `a two-core ${given(size, 'mm²')} cord`,
  cable: { table: 'H05VV-F', cores: 2, size_mm2: size, loaded: 2 },
  most,
  table_degC: 60,
});

function branchOf(size: number, most: number): RunCable {
  const of = tradeSize('AWG', size);
  const cable = of ? fixedCable(of) : null;
  if (!cable) throw new Error(`no walls of ${size} AWG are held`);
  return { size, words: `a cable of ${size}${unitSpace}AWG copper`, cable, most, table_degC: 75 };
}

// greatest currents: BS 7671 Table 4F3A for cords; four fifths of a 15, 20 and 30 A breaker for branch cables
const cables: Readonly<Record<Practice, readonly RunCable[]>> = {
  iec: [cordOf(0.75, 6), cordOf(1, 10), cordOf(1.5, 16), cordOf(2.5, 25), cordOf(4, 32)],
  na: [branchOf(14, 12), branchOf(12, 16), branchOf(10, 24)],
};

/** The cables of a practice, thin to thick. */
export const runCables = (practice: Practice): readonly RunCable[] => cables[practice];

/** The cable of a size. */
export function runCable(size: number, practice: Practice): RunCable {
  const found = cables[practice].find((one) => one.size === size);
  if (!found) throw new Error(`no run has a cable of ${size}`);
  return found;
}

/** A resistance of one conductor as it is told, by the metre or by 1000 ft, to three figures: SI [Ω/m] and in words. */
export function toldOhms(R: number, practice: Practice): { readonly R: number; readonly text: string } {
  const per = practice === 'iec' ? 1 : foot;
  const number = rounded(R * per * 1e3, 3);
  return { R: number / per / 1e3, text: amount(number, 3, practice === 'iec' ? 'mΩ/m' : 'Ω/kft') };
}

/** Ohms of one conductor cold at 20 °C, and as warm as the table takes it, both as told. */
export function ohmsOf({ cable, table_degC }: RunCable, practice: Practice) {
  const { conductor } = cableOf(cable);
  const warm = dropPerAmpereMetre(conductor, kelvin(table_degC)) / 2;
  return { cold: toldOhms(conductor.R20, practice), warm: toldOhms(warm, practice) };
}

/** The printed drop of a size for each ampere and metre, out and back [V/(A·m)], with where it stands. */
export function tableDrop({ size }: RunCable, practice: Practice): Cited & { readonly value: number } {
  const system = practice === 'iec' ? 'mm2' : 'AWG';
  const found = printedDrop(practice === 'iec' ? 'cord' : 'conductor', { system, size });
  if (!found) throw new Error(`no printed drop of ${size} is held`);
  return found;
}

/** A run of so many metres, its current held. */
export const runScenario = ({ cable }: RunCable, L: number, I: number, practice: Practice): Scenario => ({
  ...carrying(cable, 25, I, practice, 3600),
  lead: { length_m: L },
});
