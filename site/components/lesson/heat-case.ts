import {
  type CastKey,
  type MetalId,
  type PlaceKind,
  type Scenario,
  type SurroundingsSpec,
  usualSurroundings,
} from '#engine';
import type { Practice } from '../../lib/format.ts';
import { withDraught } from '../../widgets/figure/draught.ts';
import { type ByPractice, forPractice } from './by-practice.ts';
import { caseOf } from './case-of.ts';

interface Lead {
  cast: Readonly<Record<Practice, CastKey>>;
  ambient: ByPractice<number>;
  amps: ByPractice<number>;
}

interface OneLead {
  cast: CastKey;
  ambient: number;
  amps: number;
}

/** A lead of which heat made and heat lost are shown. */
export interface LedgerCase extends Lead {
  metal?: MetalId | undefined;
  /** Draught across it [m/s]; still air unless given. */
  draught?: ByPractice<number> | undefined;
}

/** The case of each practice. */
export function ledgerCases(of: LedgerCase): Record<Practice, Scenario> {
  const one = (practice: Practice): Scenario => {
    const { metal, ...each } = of;
    const { draught = 0, ...lead } = forPractice(each, practice) as unknown as OneLead & { draught?: number };
    return withDraught(caseOf({ ...lead, metal }), draught);
  };
  return { iec: one('iec'), na: one('na') };
}

/** Currents beside a ledger, for each practice. */
export function besideCases(beside: ByPractice<number[]> = []): Record<Practice, readonly number[]> {
  return Array.isArray(beside) ? { iec: beside, na: beside } : beside;
}

/** A lead that is shown in several surroundings. */
export interface PlacesCase extends Lead {
  length_m: ByPractice<number>;
  wound_m?: ByPractice<number> | undefined;
  thickness_mm?: number | undefined;
  conductivity?: number | undefined;
  drum_mm?: number | undefined;
  turns?: number | undefined;
  draught?: number | undefined;
}

/** The surroundings of each kind, as the lesson has them, for one practice. */
function placeOf(
  kind: PlaceKind,
  of: PlacesCase,
  one: OneLead & { length_m: number; wound_m?: number },
): SurroundingsSpec {
  const usual = usualSurroundings(kind, one.ambient, one.wound_m ?? one.length_m);
  switch (usual.kind) {
    case 'lagged':
      return {
        ...usual,
        thickness_mm: of.thickness_mm ?? usual.thickness_mm,
        conductivity_WPerMK: of.conductivity ?? usual.conductivity_WPerMK,
      };
    case 'coiled':
      return { ...usual, drum_mm: of.drum_mm ?? usual.drum_mm, turns: of.turns ?? usual.turns };
    case 'draught':
      return { ...usual, speed_mPerS: of.draught ?? usual.speed_mPerS };
    default:
      return usual;
  }
}

/** The lead of each practice in the surroundings that its figure opens with, and the surroundings it is shown in. */
export function placesCases(
  of: PlacesCase,
  kinds: readonly PlaceKind[],
  pick: PlaceKind,
): Record<Practice, { scenario: Scenario; surroundings: SurroundingsSpec[] }> {
  const one = (practice: Practice) => {
    const lead = forPractice(of, practice) as unknown as OneLead & { length_m: number; wound_m?: number };
    const { cast, amps, ambient, length_m } = lead;
    const base = caseOf({ cast, amps, ambient, length: length_m });
    return {
      scenario: { ...base, surroundings: placeOf(pick, of, lead) },
      surroundings: kinds.map((kind) => placeOf(kind, of, lead)),
    };
  };
  return { iec: one('iec'), na: one('na') };
}
