import { type Correction, cast, planStart, type Scenario } from '#engine';

/** A log of an invented lead that a reader may try, with the lead as it was found. */
export interface CaseFile {
  readonly file: string;
  readonly name: string;
  /** What the lead is and what was asked, a line. */
  readonly line: string;
  readonly scenario: Scenario;
  /** What the note beside the log says of its columns, by their headers. */
  readonly said: Readonly<Record<string, Correction>>;
}

/** The three of them. What is true of each lead is not told. */
export const caseFiles: readonly CaseFile[] = [
  {
    file: 'sander.csv',
    name: 'The sander’s lead',
    line: 'Marked 3 × 1.5 mm², 8 m, 24 strands that may be clad aluminium. Does it run as planned, 4 A to 12 A?',
    scenario: planStart.iec,
    said: {
      theta_probe_1_degC: { name: 'sheath, middle', place: 'surface' },
      theta_probe_2_degC: { name: 'sheath, at the plug', place: 'plug' },
    },
  },
  {
    file: 'polisher.csv',
    name: 'The polisher’s lead',
    line: 'H05VV-F, 3 × 1.5 mm² copper, 6 m. It gets warm where the grip bends it. Why?',
    scenario: {
      ...planStart.iec,
      cable: cast.C150,
      lead: { length_m: 6 },
      supply: [6, 9, 12].map((I_A) => ({ kind: 'current', I_A, duration_s: 1200 })),
    },
    said: {},
  },
  {
    file: 'worklight.tsv',
    name: 'The worklight cord',
    line: 'Marked 18 AWG, 25 ft, its metal not known. The case begins with copper. Can it be?',
    scenario: {
      ...planStart.na,
      cable: cast.A18,
      lead: { length_m: 7.62 },
      supply: [3, 5, 7, 9].map((I_A) => ({ kind: 'current', I_A, duration_s: 900 })),
    },
    said: {},
  },
];
