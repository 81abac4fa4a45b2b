import { type Air, type AirSpec, airOf } from './air.ts';
import { chanceOf } from './chance.ts';
import { type Meter, meterOf, probeOf, shown } from './instruments.ts';
import { type LeadSpec, leadOf } from './lead.ts';
import { type SectionSpec, sectionOf } from './section.ts';

/** One case: a lead in its air, steps of held current, instruments, a seed. */
export interface BenchSpec {
  readonly seed: number;
  readonly lead: LeadSpec;
  readonly section: SectionSpec;
  readonly air: AirSpec;
  /** Current [A] and how long it is held [s]. */
  readonly steps: readonly (readonly [I: number, duration: number])[];
  /** A row each so many seconds. */
  readonly every: number;
  /** Sheath probes: where along the lead [m], lag [s], and error of its class that stays, drawn up to this [K]. */
  readonly probes: readonly { readonly at: number; readonly lag: number; readonly off: number }[];
  /** Greatest error of gain of volts and amperes [1], and their digits. */
  readonly volts: { readonly gain: number; readonly noise: number; readonly digit: number };
  readonly amps: { readonly gain: number; readonly noise: number; readonly digit: number };
}

/** One row as the instruments show it; temperatures in °C. */
export interface BenchRow {
  readonly t: number;
  readonly step: number;
  readonly set_A: number;
  readonly I: number;
  readonly U: number;
  readonly probes: readonly number[];
  readonly ambient: number;
  /** What is true and nobody reads: conductor halfway and at the weak place [°C]. */
  readonly conductor: number;
  readonly weakest: number;
}

const zero = 273.15;

/** Runs a case for `most` seconds at the most. */
export function runBench(spec: BenchSpec, most = Number.POSITIVE_INFINITY): BenchRow[] {
  const chance = chanceOf(spec.seed);
  const section = sectionOf(spec.section);
  const air: Air = airOf(spec.air, 2 * section.radius, chance);
  const lead = leadOf(spec.lead, section, air);
  const amps = meterOf(chance, spec.amps.gain, spec.amps.noise, spec.amps.digit);
  const volts = meterOf(chance, spec.volts.gain, spec.volts.noise, spec.volts.digit);
  const thermometer: Meter = { gain: 1, offset: 0, noise: 0.05, digit: 0.1 };
  const probes = spec.probes.map(({ at, lag, off }) => {
    return { at, off: off * (2 * chance.even() - 1), probe: probeOf(lag, air.T()) };
  });
  const dt = spec.every / Math.ceil(spec.every / section.longestStep);
  const rows: BenchRow[] = [];
  let t = 0;
  let next = 0;
  for (const [index, [set_A, duration]] of spec.steps.entries()) {
    const end = t + duration;
    while (t < end - dt / 2 && t < most) {
      if (t >= next - dt / 2) {
        rows.push(row(index + 1, set_A));
        next += spec.every;
      }
      air.step(dt);
      lead.step(set_A, dt);
      for (const { at, probe } of probes) probe.step(lead.surfaceAt(at), dt);
      t += dt;
    }
  }
  return rows;

  function row(step: number, set_A: number): BenchRow {
    return {
      ...{ t: Math.round(t * 100) / 100, step, set_A },
      I: shown(amps, set_A, chance),
      U: shown(volts, lead.U(set_A), chance),
      probes: probes.map(({ probe, off }) => shown({ ...thermometer, offset: off }, probe.T() - zero, chance)),
      ambient: shown(thermometer, air.T() - zero, chance),
      conductor: lead.conductorAt(spec.lead.length / 2) - zero,
      weakest: lead.conductorAt(spec.lead.weak?.at ?? spec.lead.length / 2) - zero,
    };
  }
}
