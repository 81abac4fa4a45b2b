import { type TradeSize, tradeSize } from '../conductor/area-scale.ts';
import type { CableSpec } from '../scenario/schema.ts';
import { construction } from './constructions.ts';

/** The size a cable is marked with, or undefined where it is told by its strands or area alone. */
export function markedSize(spec: CableSpec): TradeSize | undefined {
  const { size_mm2, size_AWG } = 'table' in spec ? spec : spec.conductor;
  if (size_AWG !== undefined) return tradeSize('AWG', size_AWG);
  return size_mm2 === undefined ? undefined : tradeSize('mm2', size_mm2);
}

/**
 * The same cable in another size: the row of its own table, with that row's walls, or, for a cable by own values, the same
 * walls about a conductor of that size. What was known of the old conductor's strands, area and resistance goes; metal and
 * class stay. Null where the cable's table has no such row.
 */
export function inSize(spec: CableSpec, to: TradeSize): CableSpec | null {
  const now = markedSize(spec);
  if (now && now.system === to.system && now.size === to.size) return spec;
  const size = to.system === 'AWG' ? { size_AWG: to.size } : { size_mm2: to.size };
  if ('table' in spec) {
    if (!construction(spec.table, spec.cores, to.size, to.system === 'AWG')) return null;
    const { size_mm2: _, size_AWG: __, conductor, ...rest } = spec;
    return { ...rest, ...size, ...(conductor ? { conductor: ofAnySize(conductor) } : {}) };
  }
  return { ...spec, conductor: { ...ofAnySize(spec.conductor), ...size } };
}

type ConductorPart = Extract<CableSpec, { layout: string }>['conductor'];

/** What of a conductor does not go with its size. */
function ofAnySize({ metal, law, class: kind, finish, lay }: Omit<ConductorPart, 'size_mm2' | 'size_AWG'>) {
  return {
    ...(metal === undefined ? {} : { metal }),
    ...(law === undefined ? {} : { law }),
    ...(kind === undefined ? {} : { class: kind }),
    ...(finish === undefined ? {} : { finish }),
    ...(lay === undefined ? {} : { lay }),
  };
}
