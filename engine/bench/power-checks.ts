import { type Cited, cite } from '../protection/cited.ts';

// What is checked on a lead that lies dead, unplugged at both ends, before anything is powered.

/** A check before power. */
export type CheckId = 'visual' | 'earth continuity' | 'continuity' | 'polarity' | 'insulation';

/** What a check's reading is compared with. */
export interface CheckLimit extends Cited {
  readonly sense: 'at most' | 'at least';
  /** In the check's unit. */
  readonly value: number;
}

/** One check as it is asked for. */
export interface PowerCheck {
  readonly id: CheckId;
  readonly name: string;
  /** What to do and what counts as a pass. */
  readonly words: string;
  /** Unit of its reading; null where it is seen, not measured. */
  readonly unit: 'Ω' | 'Ω (insulation)' | null;
  readonly limit: CheckLimit | null;
  /** What rules in service ask, where that differs: told, never decisive for the bench. */
  readonly inService: CheckLimit | null;
}

/** What was found. */
export interface CheckRecord {
  readonly id: CheckId;
  readonly found: 'pass' | 'fail' | 'not done';
  /** The reading, where the check has one, in its unit. */
  readonly value?: number | undefined;
  readonly note?: string | undefined;
}

/** What a lead is, as far as its checks ask. */
export interface CheckedLead {
  readonly practice: 'iec' | 'na';
  /** Cores, the earth core among them. */
  readonly cores: number;
  /** Length [m]. */
  readonly length: number;
  /** Resistance of a core at 20 °C as the plan predicts it, and as the marked size allows at most [Ω/m]; null where none is known. */
  readonly R20: number;
  readonly tableR20: number | null;
}

/** Contacts and test leads that a continuity reading may hold [Ω]: the 0.1 Ω of in-service practice. */
const contactAllowance = 0.1;
/** Least insulation resistance at 500 V DC [Ω]. */
const leastInsulation = 1e6;

/**
 * The checks of a lead. A core must read what the plan predicts for it within the usual allowance, or it is broken or not the lead
 * of the plan; that the resistance is too high for its marked size is what the test is about, and does not stop it.
 */
export function powerChecks({ practice, cores, length, R20, tableR20 }: CheckedLead): readonly PowerCheck[] {
  const american = practice === 'na';
  const earth = american ? 'equipment grounding conductor' : 'earth core';
  const expected: CheckLimit = {
    ...{ sense: 'at most', value: R20 * length + contactAllowance },
    ...cite('own', 'resistance predicted for the core, and 0.1 Ω for contacts and test leads', 'our choice'),
  };
  const inService: CheckLimit | null =
    tableR20 === null || american
      ? null
      : {
          ...{ sense: 'at most', value: tableR20 * length + contactAllowance },
          ...cite('common practice', 'in-service inspection: 0.1 Ω and the cord’s own resistance', 'from memory'),
        };
  const ohms = { unit: 'Ω', limit: expected } as const;
  return [
    {
      ...{ id: 'visual', name: 'Visual', unit: null, limit: null, inService: null },
      words: 'No cut, melt, bare metal, taped repair or loose fitting. Both ends unplugged, nothing connected.',
    },
    ...(cores > 2
      ? [
          {
            ...({ id: 'earth continuity', name: `Continuity of the ${earth}`, ...ohms, inService } as const),
            words: `End to end on the ${earth}, while the lead is bent along its length. The reading stays steady.`,
          },
        ]
      : []),
    {
      ...{ id: 'continuity', name: 'Continuity of each other core', ...ohms, inService: null },
      words: 'End to end on each core, the highest reading counts. The readings agree with each other.',
    },
    {
      ...{ id: 'polarity', name: 'Polarity', unit: null, limit: null, inService: null },
      words: american
        ? 'Hot, neutral and ground come out where they go in.'
        : 'Line, neutral and earth come out where they go in.',
    },
    {
      ...{ id: 'insulation', name: 'Insulation resistance', unit: 'Ω (insulation)', inService: null },
      words: 'At 500 V DC, between all cores in turn. Keep clear while the test is on, and discharge afterwards.',
      limit: {
        ...{ sense: 'at least', value: leastInsulation },
        ...cite('common practice', 'in-service inspection at 500 V DC', 'from memory'),
      },
    },
  ];
}

/** How a check stands: a reading beyond its limit is a fail whatever was ticked. */
export function checkOutcome({ limit }: PowerCheck, record: CheckRecord | undefined): 'pass' | 'fail' | 'open' {
  if (!record || record.found === 'not done') return 'open';
  if (record.found === 'fail') return 'fail';
  if (!limit) return 'pass';
  if (record.value === undefined || !Number.isFinite(record.value)) return 'open';
  const beyond = limit.sense === 'at most' ? record.value > limit.value : record.value < limit.value;
  return beyond ? 'fail' : 'pass';
}
