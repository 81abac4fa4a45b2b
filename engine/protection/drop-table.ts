import type { SizeSystem } from '../conductor/area-scale.ts';
import { foot } from '../quantity.ts';
import { type Cited, type CitedValue, cite } from './cited.ts';

/** Which printed figure of voltage drop: cords warm to 60 °C, fixed two-core PVC cable at 70 °C, bare conductors at 75 °C. */
export type DropTable = 'cord' | 'fixed' | 'conductor';

interface Values extends Cited {
  readonly system: SizeSystem;
  /** Single phase, out and back, by size: mV for each ampere and metre of run, which is mΩ/m. */
  readonly values: Readonly<Record<number, number>>;
}

/** Ohms of one conductor in 1000 ft as mΩ/m of run, out and back. */
const perThousandFeet = (ohms: number) => (2 * ohms) / foot;

const tables: Readonly<Record<DropTable, Values>> = {
  cord: {
    system: 'mm2',
    values: { 0.5: 93, 0.75: 62, 1: 46, 1.25: 37, 1.5: 32, 2.5: 19, 4: 12 },
    ...cite('bs7671', 'Table 4F3B, single phase, 60 °C', 'seen'),
  },
  fixed: {
    system: 'mm2',
    values: { 1: 44, 1.5: 29, 2.5: 18, 4: 11, 6: 7.3, 10: 4.4 },
    ...cite('bs7671', 'Tables 4D2B and 4D5, single phase, 70 °C', 'from memory'),
  },
  conductor: {
    system: 'AWG',
    values: { 14: perThousandFeet(3.14), 12: perThousandFeet(1.98), 10: perThousandFeet(1.24) },
    ...cite('nfpa70', 'Chapter 9 Table 8, stranded copper at 75 °C, out and back', 'seen'),
  },
};

/** Printed voltage drop of a size, single phase, out and back [V/(A·m)]; null where no value is held. */
export function printedDrop(
  table: DropTable,
  { system, size }: { system: SizeSystem; size: number },
): CitedValue | null {
  const { values, system: own, source, where, confidence } = tables[table];
  const value = own === system ? values[size] : undefined;
  return value === undefined ? null : { value: value * 1e-3, source, where, confidence };
}
