import { type Property, property } from '../material/property.ts';
import type { Scenario, SupplyStep } from '../scenario/schema.ts';

/** Nominal voltage to earth of a circuit that cords are plugged into, by usage of the trade [V]. */
export const nominalVolts: Readonly<Record<'iec' | 'na', Property>> = {
  iec: property('V', 230, 0, 'bs7671', 'from memory', 'Appendix 2, nominal voltage of low-voltage supplies'),
  na: property('V', 120, 0, 'nfpa70', 'from memory', '220.5(A), nominal voltages for calculations'),
};

/** How a load at the end of a run is told: amperes it takes at any voltage, its ohms, or watts it takes at any voltage. */
export type LoadKind = 'amps' | 'ohms' | 'watts';

/** A load at the end of a run: `value` in A, Ω or W by its kind. */
export interface Load {
  readonly kind: LoadKind;
  readonly value: number;
}

/** The volts at the start of a run [V]: those of its first supply step, else the nominal ones of its usage. */
export function sourceVolts({ supply, practice = 'iec' }: Scenario): number {
  const first = supply[0];
  return first && 'U_V' in first ? first.U_V : nominalVolts[practice].value;
}

/** The load of a scenario's first supply step; null where that step feeds none (volts held across the lead, or off). */
export function loadOf({ supply }: Scenario): Load | null {
  const first = supply[0];
  switch (first?.kind) {
    case 'current':
      return { kind: 'amps', value: first.I_A };
    case 'mains':
      return { kind: 'ohms', value: (first.rated_V ?? first.U_V) ** 2 / first.load_W };
    case 'power':
      return { kind: 'watts', value: first.load_W };
    default:
      return null;
  }
}

/** The supply step in which `U` [V] feed a load: amps held, a resistance R = U²/P, or watts P at any voltage. */
export function stepOfLoad({ kind, value }: Load, U: number): SupplyStep {
  switch (kind) {
    case 'amps':
      return { kind: 'current', I_A: value };
    case 'ohms':
      return { kind: 'mains', U_V: U, load_W: U ** 2 / value };
    case 'watts':
      return { kind: 'power', U_V: U, load_W: value };
  }
}

/** The same load told in another way: alike at its full volts `U` [V], and there only. */
export function loadAs(kind: LoadKind, load: Load, U: number): Load {
  const I = load.kind === 'amps' ? load.value : load.kind === 'ohms' ? U / load.value : load.value / U;
  return { kind, value: kind === 'amps' ? I : kind === 'ohms' ? U / I : U * I };
}
