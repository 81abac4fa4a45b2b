// Leads whose metal and size we know, and what honest instruments would read on them. Numbers are written here anew, and
// nothing of the identification is used: a lead is made first, then measured.
import type { Colour, Evidence, MagnetSeen } from '#engine';
import { type Chance, chanceOf } from './chance.ts';

/** Metals that are told apart; every clad aluminium is one, and so is every clad steel. */
export type Kind = 'copper' | 'tinnedCopper' | 'aluminium' | 'cladAluminium' | 'cladSteel' | 'steel' | 'brass';

/** A lead as it is. */
export interface Lead {
  readonly kind: Kind;
  readonly strands: number;
  /** Diameter of a strand [m]. */
  readonly d: number;
  /** Metal area of one core [m²]. */
  readonly area: number;
  /** Resistance at 20 °C of a metre of core [Ω/m], and its mass [kg/m]. */
  readonly R20: number;
  readonly mass: number;
  readonly alpha20: number;
}

const copper = 1.7241e-8; // Ω·m at 100 % IACS
const howOften: Record<Kind, number> = {
  copper: 30,
  tinnedCopper: 12,
  aluminium: 10,
  cladAluminium: 26,
  cladSteel: 10,
  steel: 7,
  brass: 5,
};

const clip = (x: number, low: number, high: number) => Math.min(high, Math.max(low, x));

/** Resistivity [Ω·m], density [kg/m³] and temperature coefficient [1/K] of a wire of this kind, as wires of commerce vary. */
function wire(kind: Kind, by: Chance): { rho: number; density: number; alpha20: number } {
  switch (kind) {
    case 'copper':
      return { rho: copper / by.even(0.985, 1.01), density: by.even(8880, 8920), alpha20: 3.93e-3 };
    case 'tinnedCopper':
      return { rho: copper * by.even(1.01, 1.045), density: by.even(8820, 8890), alpha20: 3.9e-3 };
    case 'aluminium':
      return { rho: by.even(2.77e-8, 2.87e-8), density: by.even(2700, 2712), alpha20: 4.04e-3 };
    case 'cladAluminium': {
      const share = clip(by.pick([0.105, 0.15]) + 0.008 * by.normal(), 0.08, 0.17);
      const mixed = 1 / (share / copper + (1 - share) / 2.81e-8);
      return { rho: mixed * by.even(0.995, 1.035), density: share * 8890 + (1 - share) * 2704, alpha20: 4.02e-3 };
    }
    case 'cladSteel': {
      const [iacs, density] = by.pick([
        [0.4, 8240],
        [0.3, 8150],
        [0.21, 7990],
      ] as const);
      return { rho: copper / (iacs * by.even(0.985, 1.06)), density: density + 25 * by.normal(), alpha20: 3.8e-3 };
    }
    case 'steel':
      return { rho: by.even(1.27e-7, 1.53e-7), density: by.even(7830, 7880), alpha20: 5e-3 };
    case 'brass':
      return { rho: by.even(5.9e-8, 6.6e-8), density: by.even(8490, 8560), alpha20: 1.6e-3 };
  }
}

/** Usual make-up of flexible cores: strands, and their diameter [mm]. */
const makeUps = [
  [16, 0.2],
  [24, 0.2],
  [32, 0.2],
  [30, 0.25],
  [50, 0.25],
  [56, 0.3],
  [84, 0.3],
] as const;

/** A lead of full size, or of fewer or thinner strands than it should have. */
function lead(by: Chance): Lead {
  const kind = by.weighted(howOften);
  const { rho, density, alpha20 } = wire(kind, by);
  const [count, nominal] = by.pick(makeUps);
  const strands = by.often(0.3) ? Math.round(count * by.even(0.5, 0.9)) : count;
  const d = 1e-3 * nominal * by.even(0.96, 1.01) * (by.often(0.25) ? by.even(0.75, 0.9) : 1);
  const area = (strands * Math.PI * d * d) / 4;
  const lay = by.even(1, 1.05);
  return { kind, strands, d, area, R20: (rho * lay) / area, mass: density * lay * area, alpha20 };
}

/** A reading whose error is even to ± `most`, as most data sheets promise, with its standard uncertainty. */
const within = (by: Chance, value: number, most: number) => ({
  value: value + by.even(-most, most),
  u: most / Math.sqrt(3),
});

/** Loop resistance by a milliohm meter, or by volts and amperes, four terminals. */
function resistance(by: Chance, { R20, alpha20 }: Lead, length: number): NonNullable<Evidence['resistance']> {
  const T = by.even(288, 301);
  const R = 2 * length * R20 * (1 + alpha20 * (T - 293.15));
  const tape = within(by, length, 0.01 + 0.004 * length);
  const temperature = within(by, T, 1);
  const common = { length: tape, temperature, inSeries: 2, method: 'four-terminal' } as const;
  if (by.often(0.5)) return { ...common, R: within(by, R, 0.005 * R + 2e-4) };
  const volts = within(by, 1, 0.002);
  const amperes = within(by, 1, 0.005);
  const read = (R * volts.value) / amperes.value;
  return { ...common, R: { value: read, u: read * Math.hypot(volts.u, amperes.u) } };
}

/** Strand diameter by calliper: five strands, each a little off, and the calliper itself within 0.01 mm. */
function strandDiameter(by: Chance, d: number): { value: number; u: number; dof: number } {
  const offset = by.even(-1e-5, 1e-5);
  const read = Array.from({ length: 5 }, () => d + offset + 4e-6 * by.normal());
  const mean = read.reduce((sum, one) => sum + one, 0) / 5;
  const scatter = read.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (4 * 5);
  const calliper = 1e-10 / 3;
  const u2 = scatter + calliper;
  return { value: mean, u: Math.sqrt(u2), dof: (4 * u2 * u2) / (scatter * scatter) };
}

const looks: Record<Kind, { skin: Partial<Record<Colour, number>>; under: Partial<Record<Colour, number>> }> = {
  copper: { skin: { 'copper-red': 1 }, under: { 'copper-red': 1 } },
  tinnedCopper: { skin: { silvery: 0.9, grey: 0.1 }, under: { 'copper-red': 1 } },
  aluminium: { skin: { silvery: 0.85, grey: 0.15 }, under: { silvery: 0.97, grey: 0.03 } },
  cladAluminium: { skin: { 'copper-red': 1 }, under: { silvery: 0.95, grey: 0.05 } },
  cladSteel: { skin: { 'copper-red': 1 }, under: { grey: 0.6, silvery: 0.4 } },
  steel: { skin: { grey: 0.5, silvery: 0.5 }, under: { grey: 0.6, silvery: 0.4 } },
  brass: { skin: { yellowish: 0.93, 'copper-red': 0.07 }, under: { yellowish: 0.98, 'copper-red': 0.02 } },
};

const misnamed = 0.02;
const anyColour: readonly Colour[] = ['copper-red', 'silvery', 'yellowish', 'grey'];

function look(by: Chance, colours: Partial<Record<Colour, number>>): { colour: Colour } {
  if (by.often(misnamed)) return { colour: by.pick(anyColour) };
  return { colour: by.weighted(colours as Record<Colour, number>) };
}

function magnetAt(by: Chance, kind: Kind): MagnetSeen {
  const drawn = kind === 'steel' || kind === 'cladSteel';
  return by.often(0.03) ? 'weakly' : drawn ? 'clings' : 'does not';
}

/** One lead with what was read on it; `mass` is kept apart. */
export interface Measured {
  readonly truth: Lead;
  readonly evidence: Evidence;
  readonly mass: NonNullable<Evidence['mass']>;
}

/** The lead of a seed, measured: diameter of the strands in two of three, of the whole bundle in the third. */
export function measuredLead(seed: string): Measured {
  const by = chanceOf(seed);
  const truth = lead(by);
  const length = by.even(3, 25);
  const fill = clip(0.75 + 0.05 * by.normal(), 0.6, 0.88);
  const D = Math.sqrt((4 * truth.area) / (Math.PI * fill));
  const weighed = Math.min(length, 10);
  const diameter = by.often(2 / 3)
    ? { strands: { count: { value: truth.strands, u: 0 }, diameter: strandDiameter(by, truth.d) } }
    : { bundle: within(by, D, 3e-5) };
  return {
    truth,
    evidence: {
      resistance: resistance(by, truth, length),
      ...diameter,
      magnet: magnetAt(by, truth.kind),
      skin: look(by, looks[truth.kind].skin),
      under: look(by, looks[truth.kind].under),
    },
    mass: { mass: within(by, truth.mass * weighed, 1.2e-3), length: within(by, weighed, 0.01) },
  };
}
