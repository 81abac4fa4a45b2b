import { evidenceOf } from '../bench/evidence-of.ts';
import { identifiedCable } from '../bench/identified-cable.ts';
import { identify } from '../bench/identify/identify.ts';
import { type BenchJob, emptyJob, type FoundOnLead } from '../bench/job-schema.ts';
import type { Correction } from '../bench/readings/guess.ts';
import type { CableSpec, DeviceSpec, Scenario } from '../scenario/schema.ts';

/** An invented lead with its story, what was found on it, and the log of its bench run. */
export interface CaseFile {
  /** Name of the log among the case files. */
  readonly file: string;
  readonly title: string;
  readonly practice: 'iec' | 'na';
  /** Three sentences. */
  readonly story: string;
  /** The marking as it stands on the sheath. */
  readonly marking: string;
  readonly found: FoundOnLead;
  /** The lead as its construction was measured, with the conductor that its marking claims. */
  readonly claimed: Exclude<CableSpec, { table: string }>;
  readonly length_m: number;
  readonly ambient_degC: number;
  /** What it was loaded with [A], each step for so long [s]. */
  readonly steps_A: readonly number[];
  readonly dwell_s: number;
  /** The device that stood before it in use. */
  readonly device: DeviceSpec;
  /** What the note beside the log says of its columns, by their headers. */
  readonly said: Readonly<Record<string, Correction>>;
}

const pvc = 'pvc70';
const walls = (insulation_mm: number, sheath_mm: number) => ({
  ...({ layout: 'round', cores: 3, loaded: 2 } as const),
  insulation: { material: pvc, thickness_mm: insulation_mm } as const,
  sheath: { material: pvc, thickness_mm: sheath_mm } as const,
});

/** The three of them. What is true of each lead stands nowhere in the product. */
export const caseFiles: readonly CaseFile[] = [
  {
    ...{ file: 'sander.csv', title: 'The sander’s lead', practice: 'iec', marking: '3 × 1.5 mm², no more' },
    story:
      'Ngozi runs a disc sander in a furniture workshop. Its new lead gets soft by noon, and the plug’s fuse has never gone. She has put the lead aside, tagged it, and wants to know what it is.',
    found: {
      resistance: {
        ...{ R_ohm: 0.576, length_m: 8, T_degC: 20.4, cores: 2, method: 'four-terminal' },
        instrument: 'milliohmmeter M2',
      },
      strands: { count: 24, diameter_mm: 0.2 },
      mass: { mass_g: 2.55, length_m: 1 },
      ...{ magnet: 'does not', skin: 'copper-red', under: 'silvery' },
      marking: { size_mm2: 1.5 },
    },
    claimed: { ...walls(0.85, 0.9), conductor: { size_mm2: 1.5 } },
    ...{ length_m: 8, ambient_degC: 20, steps_A: [4, 6, 8, 10, 12], dwell_s: 900 },
    device: { family: 'bs1362', rating_A: 13 },
    said: {
      theta_probe_1_degC: { name: 'sheath, middle', place: 'surface' },
      theta_probe_2_degC: { name: 'sheath, at the plug', place: 'plug' },
    },
  },
  {
    ...{ file: 'polisher.csv', title: 'The polisher’s lead', practice: 'iec', marking: 'H05VV-F 3G1.5, copper' },
    story:
      'In a boatyard Piotr polishes hulls for hours. The lead of his polisher gets warm where the grip bends it, and nowhere else. He asks whether the whole lead is bad, or one place.',
    found: {
      resistance: {
        ...{ U_V: 0.157, I_A: 1, length_m: 6, T_degC: 17.8, cores: 2, method: 'four-terminal' },
        instrument: 'bench supply and voltmeter V1',
      },
      strands: { count: 30, diameter_mm: 0.25 },
      ...{ magnet: 'does not', skin: 'copper-red', under: 'copper-red' },
      marking: { size_mm2: 1.5, material: 'copper' },
    },
    claimed: { ...walls(0.7, 0.9), conductor: { size_mm2: 1.5 } },
    ...{ length_m: 6, ambient_degC: 18, steps_A: [6, 9, 12], dwell_s: 1200 },
    device: { family: 'bs1362', rating_A: 13 },
    said: {
      'Sheath middle [°C]': { place: 'surface' },
      'Sheath at grip [°C]': { place: 'other' },
    },
  },
  {
    ...{ file: 'worklight.tsv', title: 'The worklight cord', practice: 'na', marking: '18 AWG, 3 conductors' },
    story:
      'Rosa sells pumpkins from a farm stand and hangs worklights on a long cord. The lights are dim at its end, and the cord is warm. She found it in the barn and knows nothing of it.',
    found: {
      resistance: {
        ...{ R_ohm: 0.729, length_m: 7.62, T_degC: 24, cores: 2, method: 'four-terminal' },
        instrument: 'milliohmmeter M2',
      },
      strands: { count: 20, diameter_mm: 0.2 },
      mass: { mass_g: 3.4, length_m: 2 },
      ...{ magnet: 'does not', skin: 'silvery', under: 'silvery' },
      marking: { size_AWG: 18 },
    },
    claimed: { ...walls(0.76, 0.76), conductor: { size_AWG: 18 } },
    ...{ length_m: 7.62, ambient_degC: 24, steps_A: [3, 5, 7, 9], dwell_s: 900 },
    device: { family: 'ul489', rating_A: 20 },
    said: {},
  },
];

/** The case of a case file: the lead as it is identified from what was found; as it is marked where nothing tells. */
export function caseScenario(of: CaseFile): Scenario {
  const { claimed, found, practice, title, length_m, ambient_degC, steps_A, dwell_s, device } = of;
  return {
    ...{ version: 1, title, practice, cable: identifiedCable(claimed, found, identify(evidenceOf(found))) ?? claimed },
    lead: { length_m },
    surroundings: { kind: 'stillAir', ambient_degC },
    supply: steps_A.map((I_A) => ({ kind: 'current', I_A, compliance_V: 15, duration_s: dwell_s })),
    device,
  };
}

/** A job begun with a case file: what was found and the case; its log is to be fetched. */
export function jobOfCase(of: CaseFile): BenchJob {
  return { ...emptyJob(of.practice), name: of.title, found: of.found, scenario: caseScenario(of) };
}
