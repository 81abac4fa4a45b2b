import { stefanBoltzmann } from './law.ts';
import type { Outside } from './outside.ts';

/** The ways that heat leaves an outside surface, per metre of cable [W/m]; together they are the law of the surroundings. */
export interface Shed {
  /** Carried off by the air. */
  readonly convection: number;
  readonly radiation: number;
}

/**
 * What leaves the outside at `T` [K] by each way: radiation ε P σ (T⁴ − Ta⁴), convection the rest of the law. Null where the
 * law cannot be split: that of IEC 60287-2-1, for clipped and touching cables, holds both in one power of the rise.
 */
export function shedAt({ law, radiates, Ta }: Outside, T: number): Shed | null {
  if (radiates === null) return null;
  const radiation = radiates * stefanBoltzmann * (T ** 4 - Ta ** 4);
  return { convection: law(T) - radiation, radiation };
}
