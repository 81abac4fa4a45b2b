import type { BenchSpec } from './bench.ts';

// Three invented leads, as they truly are. What a reader is given stands beside the logs; this is the answer.

const celsius = (T: number) => T + 273.15;
const aluminium = { alpha20: 0.00403, k: 234, rhoC: 2.5e6 };
const clad = { alpha20: 0.00402, k: 250, rhoC: 2.54e6 };
const copper = { alpha20: 0.00393, k: 390, rhoC: 3.45e6 };
const pvc = { k: 0.19, rhoC: 1.75e6, across: 30 };
const handheld = {
  volts: { gain: 0.002, noise: 0.0006, digit: 0.001 },
  amps: { gain: 0.004, noise: 0.003, digit: 0.01 },
};
const still = { speed: 0.02, gusts: 0.02, emissivity: 0.91 };

/** The sander lead of a furniture workshop: marked 3 × 1.5 mm², 24 strands of 0.20 mm, clad aluminium. */
export const sander: BenchSpec = {
  seed: 5201,
  lead: {
    ...{ length: 8, area: 0.754e-6, R20: 35.8e-3, ...clad, loaded: 2, contact: 0.006, tapped: true },
    weak: null,
  },
  section: { bundleRadius: 0.553e-3, insulation: 0.85e-3, sheath: 0.9e-3, ...pvc },
  air: { T: celsius(20.4), wanders: 0.35, ...still },
  steps: [4, 6, 8, 10, 12].map((I) => [I, 900] as const),
  every: 10,
  probes: [
    { at: 4, lag: 18, off: 0.5 },
    { at: 0.03, lag: 18, off: 0.5 },
  ],
  ...handheld,
};

/** The polisher lead of a boatyard: honest copper, 1.5 mm², a few strands broken where the grip bends it. */
export const polisher: BenchSpec = {
  seed: 5302,
  lead: {
    ...{ length: 6, area: 1.473e-6, R20: 12.6e-3, ...copper, loaded: 2, contact: 0.002, tapped: false },
    weak: { at: 0.4, long: 0.02, times: 14 },
  },
  section: { bundleRadius: 0.774e-3, insulation: 0.7e-3, sheath: 0.9e-3, ...pvc },
  air: { T: celsius(17.8), wanders: 0.5, speed: 0.06, gusts: 0.05, emissivity: 0.9 },
  steps: [6, 9, 12].map((I) => [I, 1200] as const),
  every: 5,
  probes: [
    { at: 3, lag: 25, off: 0.7 },
    { at: 0.4, lag: 25, off: 0.7 },
  ],
  ...handheld,
};

/** A worklight cord from a farm stand, marked 18 AWG: aluminium strands, thinner than the mark. */
export const worklight: BenchSpec = {
  seed: 5403,
  lead: {
    ...{ length: 7.62, area: 0.62e-6, R20: 46.9e-3, ...aluminium, loaded: 2, contact: 0.02, tapped: true },
    weak: null,
  },
  section: { bundleRadius: 0.502e-3, insulation: 0.76e-3, sheath: 0.76e-3, ...pvc },
  air: { T: celsius(24.1), wanders: 0.3, ...still },
  steps: [3, 5, 7, 9].map((I) => [I, 900] as const),
  every: 15,
  probes: [{ at: 3.8, lag: 30, off: 1 }],
  volts: { gain: 0.003, noise: 0.002, digit: 0.001 },
  amps: { gain: 0.01, noise: 0.006, digit: 0.01 },
};

/** What the metal of a lead truly is. */
export function trueMetal({ lead }: BenchSpec): 'cladAluminium' | 'copper' | 'aluminium' {
  if (lead.rhoC === clad.rhoC) return 'cladAluminium';
  return lead.rhoC === copper.rhoC ? 'copper' : 'aluminium';
}
