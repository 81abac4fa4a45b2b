import { awgArea } from '../../conductor/awg.ts';
import { metals } from '../../material/metals.ts';
import { plastics } from '../../material/plastics.ts';
import { adiabaticConstant, kOf } from '../../protection/adiabatic-k.ts';
import { celsius, kelvin, squareMetres } from '../../quantity.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { amount, given } from '../figures.ts';
import type { NamedScenario, Practice } from '../types.ts';
import { unitSpace } from '../words.ts';

// Cores that questions about short circuits ask for: a metal, its insulation and a size.

/** A metal in an insulation, whose k the standard prints. */
export interface Core {
  readonly metal: 'copper' | 'aluminium';
  readonly plastic: 'pvc70' | 'pvc90' | 'xlpe' | 'rubber60';
}

/** The pairs that are asked for. */
export const cores: readonly Core[] = [
  { metal: 'copper', plastic: 'pvc70' },
  { metal: 'copper', plastic: 'pvc90' },
  { metal: 'copper', plastic: 'xlpe' },
  { metal: 'copper', plastic: 'rubber60' },
  { metal: 'aluminium', plastic: 'pvc70' },
  { metal: 'aluminium', plastic: 'pvc90' },
];

const insulations = {
  pvc70: 'PVC',
  pvc90: 'heat-resisting PVC',
  xlpe: 'cross-linked polyethylene',
  rubber60: 'rubber',
} as const;

/** A core in words: 'copper in PVC'. */
export const coreText = ({ metal, plastic }: Core): string => `${metal} in ${insulations[plastic]}`;

/** k of a core from its rating to its short-circuit limit, whole as tables print it [A·s^½/mm²]. */
export function kTold({ metal, plastic }: Core, area: number): number {
  const found = kOf(metals[metal], plastics[plastic], area);
  if (!found) throw new Error(`${plastic} has no short-circuit limit`);
  return Math.round(found.k / 1e6);
}

/** k that those take who know one k only: copper in PVC [A·s^½/mm²]. */
export const kOfCopperInPvc = kTold({ metal: 'copper', plastic: 'pvc70' }, squareMetres(2.5));

/** Temperatures between which k is meant [°C]. */
export function spanOf({ metal, plastic }: Core): readonly [from: number, to: number] {
  const found = kOf(metals[metal], plastics[plastic], squareMetres(2.5));
  if (!found) throw new Error(`${plastic} has no short-circuit limit`);
  return [Math.round(celsius(found.from)), Math.round(celsius(found.to))];
}

/** Sizes of a practice, thin to thick: mm², or AWG. Aluminium is not drawn as thin as copper. */
export function coreSizes({ metal }: Core, practice: Practice): readonly number[] {
  if (metal === 'copper') return practice === 'iec' ? [1, 1.5, 2.5, 4, 6, 10, 16] : [18, 16, 14, 12, 10, 8, 6];
  return practice === 'iec' ? [10, 16, 25, 35, 50] : [12, 10, 8, 6, 4];
}

/** Area of a size as it is told, to three figures [m²]. */
export const areaTold = (size: number, practice: Practice): number =>
  practice === 'iec' ? squareMetres(size) : squareMetres(Number((awgArea(size) * 1e6).toPrecision(3)));

/** A size with its area: '1.5 mm²', '14 AWG (2.08 mm²)'. */
export function sizeWithArea(size: number, practice: Practice): string {
  const area = given(Number((areaTold(size, practice) * 1e6).toPrecision(3)), 'mm²');
  return practice === 'iec' ? area : `${size}${unitSpace}AWG (${area})`;
}

/** Hottest that a case may be opened at [K]. */
const mostOpened = kelvin(158);

/**
 * One core that starts at its rating and carries `I` [A] for `t` [s], as a case to open; none where it would end above the
 * bench's range of questions. The core has the resistivity alone: no lay, no allowance of a table.
 */
export function shortScenario(core: Core, area: number, I: number, t: number, practice: Practice): NamedScenario[] {
  const [from] = spanOf(core);
  const metal = metals[core.metal];
  const k = adiabaticConstant(metal, kelvin(from), mostOpened);
  if (k === 0 || I ** 2 * t > (k * area) ** 2) return [];
  const area_mm2 = Number((area * 1e6).toPrecision(4));
  const scenario: Scenario = {
    practice,
    cable: {
      layout: 'single',
      conductor: {
        metal: core.metal,
        class: 1,
        area_mm2,
        R20_ohmPerKm: (metal.rho20.value / (area_mm2 * 1e-6)) * 1e3,
      },
      insulation: { material: core.plastic, thickness_mm: 0.8 },
    },
    surroundings: { kind: 'stillAir', ambient_degC: 30 },
    start: { T_degC: from },
    supply: [{ kind: 'current', I_A: I }],
    run: { duration_s: t },
  };
  return [{ name: `${amount(I, 3, 'A')} for ${amount(t, 2, 's')}`, scenario }];
}
