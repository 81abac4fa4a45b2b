import { awgSizes, type ClaimedMaterial, type FoundOnLead, standardSizes } from '#engine';
import type { Option } from '../../controls/options.ts';
import type { Practice } from '../../lib/format.ts';

/** A piece of evidence as the form asks for it. */
export type Piece = 'marking' | 'resistance' | 'strands' | 'bundle' | 'magnet' | 'skin' | 'mass' | 'under';

/** What a piece begins with once it is switched on: something to be typed over. */
export function opening(piece: Piece, practice: Practice): Partial<FoundOnLead> {
  switch (piece) {
    case 'marking':
      return { marking: practice === 'na' ? { size_AWG: 16 } : { size_mm2: 1.5 } };
    case 'resistance':
      return { resistance: { R_ohm: 0.5, length_m: 8, T_degC: 20, cores: 2, method: 'four-terminal' } };
    case 'strands':
      return { strands: { count: 24, diameter_mm: 0.2 } };
    case 'bundle':
      return { bundle_mm: 1.2 };
    case 'magnet':
      return { magnet: 'does not' };
    case 'skin':
      return { skin: 'copper-red' };
    case 'mass':
      return { mass: { mass_g: 5, length_m: 2 } };
    case 'under':
      return { under: 'silvery' };
  }
}

/** What was found without one piece. */
export function without(found: FoundOnLead, key: keyof FoundOnLead): FoundOnLead {
  const { [key]: _, ...rest } = found;
  return rest;
}

/** Sizes in mm² by value; gauges count as negative numbers, so that both fit one list. */
export const mm2Options: readonly Option<number>[] = standardSizes.map(({ area_mm2 }) => ({
  value: area_mm2,
  label: `${area_mm2} mm²`,
}));
export const awgOptions: readonly Option<number>[] = awgSizes
  .filter((size) => size >= 4 && size <= 24)
  .map((size) => ({ value: -size, label: `${size} AWG` }));

export const colourOptions = [
  { value: 'copper-red', label: 'copper-red' },
  { value: 'silvery', label: 'silvery' },
  { value: 'yellowish', label: 'yellowish' },
  { value: 'grey', label: 'grey' },
] as const;

/** Materials a marking may claim, and that it claims none. */
export const materialOptions: readonly Option<ClaimedMaterial | 'none'>[] = [
  { value: 'none', label: 'none marked' },
  ...(['copper', 'aluminium', 'clad aluminium', 'clad steel', 'steel', 'brass'] as const).map((value) => ({
    value,
    label: value,
  })),
];
