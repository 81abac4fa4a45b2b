import type { Conductor } from '../conductor/conductor.ts';
import { type AlongRun, alongRun } from '../heating/along-run.ts';
import { type DropGuide, dropGuides } from '../heating/drop-guides.ts';
import { nominalVolts } from '../heating/nominal-load.ts';
import type { Statement } from '../heating/validity.ts';
import { resistanceRatio } from '../material/resistivity.ts';
import { celsius } from '../quantity.ts';
import type { Scenario } from '../scenario/schema.ts';
import { type CitedValue, cite } from './cited.ts';
import { type DropTable, printedDrop } from './drop-table.ts';

/**
 * Voltage drop for each ampere and metre of run [V/(A·m)] of a conductor at `T` [K]: 2 R' single phase, √3 R' three phase (per
 * line voltage). Reactance is left out; the trade prints a thousand times this, in mV/(A·m).
 */
export const dropPerAmpereMetre = ({ R20, alpha20, beta20 }: Conductor, T: number, phases: 1 | 3 = 1): number =>
  (phases === 1 ? 2 : Math.sqrt(3)) * R20 * resistanceRatio(alpha20, beta20, T);

/** A voltage drop, and as a share of the nominal volts. */
export interface Drop {
  /** [V] */
  readonly U: number;
  /** [1] */
  readonly share: number;
}

/** Drop of `I` [A] over a run of `length` [m] at `perAmpereMetre` [V/(A·m)], on `U0` [V]: ΔU = z I L. */
export function dropOf(perAmpereMetre: number, I: number, length: number, U0: number): Drop {
  const U = perAmpereMetre * I * length;
  return { U, share: U / U0 };
}

/** Longest run [m] that keeps the drop of `I` [A] to `share` [1] of `U0` [V]. */
export const longestForDrop = (perAmpereMetre: number, I: number, share: number, U0: number): number =>
  (share * U0) / (perAmpereMetre * I);

/** One guide on voltage drop held against a drop. */
export interface GuideTest {
  readonly guide: DropGuide;
  readonly holds: boolean;
}

/** Every guide of a usage of the trade held against a drop's share of the nominal volts, the stricter first. */
export const againstGuides = (share: number, practice: 'iec' | 'na'): GuideTest[] =>
  dropGuides[practice].map((guide) => ({ guide, holds: share <= guide.share * (1 + 1e-9) }));

/** A drop found both ways. */
export interface DropBothWays {
  /** By the printed figure, or by the conductor's own resistance at its limit where none is printed. */
  readonly byTable: Drop & { readonly perAmpereMetre: CitedValue };
  /** With the conductor as warm as its current makes it. */
  readonly exact: AlongRun;
  readonly statements: readonly Statement[];
}

/**
 * Voltage drop of a scenario's first supply step by mV/A/m, and exactly: the table takes the conductor at its limit, the exact
 * answer at the temperature it settles at. `limit` [K] is the table's conductor temperature. Both for the current that flows;
 * null for the table where nothing settles.
 */
export function dropBothWays(scenario: Scenario, table: DropTable, limit: number): DropBothWays | null {
  const exact = alongRun(scenario);
  if (exact.kind !== 'settled') return null;
  const { cable, lead } = exact.thermal;
  const { size_mm2, size_AWG } = 'table' in scenario.cable ? scenario.cable : scenario.cable.conductor;
  const size = size_AWG !== undefined ? { system: 'AWG', size: size_AWG } : { system: 'mm2', size: size_mm2 ?? 0 };
  const standard = cable.conductor.metal.id === 'copper' && lead.inSeries === 2;
  const printed = standard ? printedDrop(table, size as { system: 'AWG' | 'mm2'; size: number }) : null;
  const own = (lead.inSeries / 2) * dropPerAmpereMetre(cable.conductor, limit);
  const perAmpereMetre = printed ?? { value: own, ...cite('own', '2 R′ at the limit', 'computed') };
  const U0 = nominalVolts[scenario.practice ?? 'iec'].value;
  const byTable = { ...dropOf(perAmpereMetre.value, exact.I, exact.length, U0), perAmpereMetre };
  return { byTable, exact, statements: [whyDropsDiffer(limit, exact.chain.conductor)] };
}

function whyDropsDiffer(limit: number, T: number): Statement {
  const [table, own] = [Math.round(celsius(limit)), Math.round(celsius(T))];
  const text = `The table takes the conductor at ${table} °C. In this run it settles at ${own} °C, and resistance follows.`;
  return { id: 'temperature', text };
}
