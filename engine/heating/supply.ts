import type { SupplyStep } from '../scenario/schema.ts';
import { leadResistance, type ThermalCase } from './thermal-case.ts';

/** Current [A] that a supply drives at conductor temperature `T` [K]. */
export type CurrentLaw = (T: number) => number;

/** One supply step as the solver takes it. */
export interface Supply {
  readonly step: SupplyStep;
  readonly current: CurrentLaw;
  /** Whether the supply has a solution at `T` [K]; only a constant-power load may have none (4PR > U²). */
  readonly possible: (T: number) => boolean;
}

const always = () => true;

/**
 * A supply step's current as a function of conductor temperature:
 * held current min(I, U_max/(R_lead + R_contact)); held voltage U/(R_lead + R_contact + R_source); mains through a resistive
 * load U/(R_load + …) with R_load = U_rated²/P; a constant-power load (U − √(U² − 4PR))/2R; off, 0.
 */
export function supplyOf(of: ThermalCase, step: SupplyStep): Supply {
  const contact = of.lead.contact;
  const loop = (T: number) => leadResistance(of, T) + contact;
  switch (step.kind) {
    case 'off':
      return { step, current: () => 0, possible: always };
    case 'current': {
      const { I_A: I, compliance_V: limit } = step;
      if (limit === undefined) return { step, current: () => I, possible: always };
      return { step, current: (T) => Math.min(I, limit / loop(T)), possible: always };
    }
    case 'voltage': {
      const { U_V: U, source_ohm: inner = 0 } = step;
      return { step, current: (T) => U / (loop(T) + inner), possible: always };
    }
    case 'mains': {
      const { U_V: U, load_W: P, source_ohm: inner = 0 } = step;
      const load = (step.rated_V ?? U) ** 2 / P;
      return { step, current: (T) => U / (load + loop(T) + inner), possible: always };
    }
    case 'power': {
      const { U_V: U, load_W: P, source_ohm: inner = 0 } = step;
      const gap = (T: number) => U * U - 4 * P * (loop(T) + inner);
      return {
        step,
        current: (T) => (U > 0 ? (2 * P) / (U + Math.sqrt(Math.max(0, gap(T)))) : 0),
        possible: (T) => gap(T) >= 0,
      };
    }
  }
}

/** The supply in words: '13 A held', '12 V held', 'off'. */
export function supplyWords(step: SupplyStep): string {
  switch (step.kind) {
    case 'off':
      return 'off';
    case 'current':
      return step.compliance_V === undefined
        ? `${step.I_A} A held`
        : `${step.I_A} A held, at most ${step.compliance_V} V`;
    case 'voltage':
      return `${step.U_V} V held`;
    case 'mains':
      return `${step.U_V} V mains, ${step.load_W} W heater`;
    case 'power':
      return `${step.U_V} V mains, ${step.load_W} W at any voltage`;
  }
}
