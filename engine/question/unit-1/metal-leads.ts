import { inMetal } from '../../cable/in-metal.ts';
import { cast } from '../../examples/cast.ts';
import type { MetalId } from '../../material/metals.ts';
import type { CableSpec } from '../../scenario/schema.ts';
import { given } from '../figures.ts';
import type { Practice } from '../types.ts';

/** Metals as questions call them. */
export const metalNames = {
  copper: 'copper',
  cca10: 'copper-clad aluminium',
  aluminium: 'aluminium',
  brass: 'brass',
  ccs30: 'copper-clad steel',
  steel: 'steel',
} as const satisfies Partial<Record<MetalId, string>>;

/** A metal that questions are about. */
export type AskedMetal = keyof typeof metalNames;

/** Sizes of a practice, thin to thick: mm², or AWG. */
export const sizesOf = (practice: Practice): readonly number[] =>
  practice === 'iec' ? [0.75, 1, 1.5, 2.5, 4] : [18, 16, 14, 12, 10];

const copperCords: Readonly<Record<Practice, Readonly<Record<number, CableSpec>>>> = {
  iec: { 0.75: cast.C075, 1: cast.C100, 1.5: cast.C150, 2.5: tabled(2.5), 4: tabled(4) },
  na: { 18: cast.A18, 16: cast.A16, 14: cast.A14, 12: gauge(12), 10: gauge(10) },
};

function tabled(size_mm2: number): CableSpec {
  return { table: 'H05VV-F', cores: 3, size_mm2, loaded: 2 };
}

function gauge(size_AWG: number): CableSpec {
  return { table: 'SJT', cores: 3, size_AWG, loaded: 2 };
}

/** A three-core cord of a standard size, two cores loaded, its conductors drawn from `metal`. */
export function leadOf(size: number, metal: AskedMetal, practice: Practice): CableSpec {
  const copper = copperCords[practice][size] as CableSpec;
  return metal === 'copper' ? copper : inMetal(copper, metal);
}

/** A size as it is marked: '1.5 mm²', '14 AWG'. */
export const sizeText = (size: number, practice: Practice): string => given(size, practice === 'iec' ? 'mm²' : 'AWG');

/** Hazard, what it does, what to do, where a question is about cords of other metals than copper. */
export const otherMetals =
  'Aluminium and clad wire fail at terminals made for copper, and such cords meet no standard. Simulate only; never put one to use.';
