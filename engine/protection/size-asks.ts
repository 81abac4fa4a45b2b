import type { TradeSize } from '../conductor/area-scale.ts';
import { ampacityMetal, ampacitySizes } from './ampacity.ts';
import { ampacityChain, type BranchCircuit } from './ampacity-chain.ts';
import type { SizeAsk } from './choose-size.ts';
import { type Circuit, coordination } from './coordination.ts';
import type { RuledCord } from './cord-rule.ts';
import { cordRatings } from './cord-table.ts';
import { type DropTable, printedDrop } from './drop-table.ts';
import type { Guard } from './guard.ts';
import { plugFuseRule } from './plug-fuse-rule.ts';
import type { TableRating } from './table-rating.ts';

/** What `chooseSize` tries, for one kind of cable: its sizes and its rule. Add a limit on drop or a short circuit as needed. */
export type SizesAndRule = Pick<SizeAsk, 'sizes' | 'rule'>;

/** Sizes of a fixed cable with tabled currents, by coordination with its device. */
export function fixedSizes(ratings: readonly TableRating[], circuit: Omit<Circuit, 'table'>): SizesAndRule {
  const tableOf = (size: TradeSize) => ratings.find((one) => one.size.size === size.size) as TableRating;
  return { sizes: ratings.map(({ size }) => size), rule: (size) => coordination({ ...circuit, table: tableOf(size) }) };
}

/** Gauges of a metal that the ampacity table has at the terminals' temperature, by the North American chain of caps. None for a metal without a column. */
export function branchSizes(circuit: Omit<BranchCircuit, 'size'>): SizesAndRule {
  const metal = ampacityMetal(circuit.metal);
  const sizes = metal ? ampacitySizes(metal, circuit.terminal_degC) : [];
  return { sizes, rule: (size) => ampacityChain({ ...circuit, size }) };
}

type CordLoad = Omit<RuledCord, 'size'>;

/** Copper cord sizes in mm², by the rule of cord and plug fuse. */
export const plugCordSizes = (load: CordLoad, fuse: Guard): SizesAndRule => ({
  sizes: cordRatings('mm2').map(({ size }) => size),
  rule: (size) => plugFuseRule({ ...load, size }, fuse),
});

/** The printed voltage drop of a size, as `chooseSize` asks for it [V/(A·m)]. */
export const dropFrom =
  (table: DropTable) =>
  (size: TradeSize): number | null =>
    printedDrop(table, size)?.value ?? null;
