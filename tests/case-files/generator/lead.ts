import type { Air } from './air.ts';
import { type Section, stepSection } from './section.ts';

// A lead as a row of stations, each with its own cross-section. Heat runs along the metal from station to station; the ends sit on
// posts that stay at the temperature of the air.

export interface LeadSpec {
  readonly length: number;
  /** Metal area of a core [m²], resistance at 20 °C [Ω/m] and its coefficient [1/K], conductivity [W/(m·K)], heat capacity [J/(m³·K)]. */
  readonly area: number;
  readonly R20: number;
  readonly alpha20: number;
  readonly k: number;
  readonly rhoC: number;
  /** Loaded cores among the three. */
  readonly loaded: number;
  /** Contact resistance at each end, all loaded cores together [Ω], outside the voltage taps unless `tapped`. */
  readonly contact: number;
  readonly tapped: boolean;
  /** A weak place: where [m], how long [m], and how many times the resistance there. */
  readonly weak: { readonly at: number; readonly long: number; readonly times: number } | null;
}

const shortest = 0.01; // m, at ends and weak places
const longest = 0.6;

/** Widths of the stations [m]: fine at the ends and at a weak place, coarse between. */
export function stationsOf({ length, weak }: LeadSpec): number[] {
  const marks = weak ? [0, weak.at - weak.long / 2, weak.at + weak.long / 2, length] : [0, length];
  return marks.slice(1).flatMap((end, i) => graded(end - (marks[i] as number), weak !== null && i === 1));
}

function graded(length: number, even: boolean): number[] {
  if (even) return Array.from({ length: 2 }, () => length / 2);
  const half: number[] = [];
  let sum = 0;
  for (let width = shortest; sum + width < length / 2; width = Math.min(longest, width * 1.7)) {
    half.push(width);
    sum += width;
  }
  const rest = length - 2 * sum;
  const last = half.at(-1) ?? 0;
  if (rest < last) return [...half.slice(0, -1), rest + 2 * last, ...half.slice(0, -1).toReversed()]; // a sliver would be unstable
  return [...half, rest, ...half.toReversed()];
}

/** A lead under way. */
export interface Lead {
  step(I: number, dt: number): void;
  /** Volts across the taps [V]. */
  U(I: number): number;
  /** Mean temperature of the surface at a distance from the near end [K]. */
  surfaceAt(x: number): number;
  conductorAt(x: number): number;
}

export function leadOf(spec: LeadSpec, section: Section, air: Air): Lead {
  const widths = stationsOf(spec);
  const middles = widths.map((width, i) => widths.slice(0, i).reduce((sum, w) => sum + w, width / 2));
  const count = widths.length;
  const start = air.T();
  const cells: Float64Array[] = widths.map(() => new Float64Array(section.cells).fill(start));
  const next: Float64Array[] = widths.map(() => new Float64Array(section.cells));
  const cores = widths.map(() => new Float64Array(3).fill(start));
  const left = new Float64Array(3);
  const surface = new Float64Array(count).fill(start);
  const C = spec.area * spec.rhoC;
  const times = middles.map((x) =>
    spec.weak && Math.abs(x - spec.weak.at) < spec.weak.long / 2 ? spec.weak.times : 1,
  );
  const ohms = (i: number, core: number) =>
    spec.R20 * (times[i] as number) * (1 + spec.alpha20 * ((cores[i]?.[core] as number) - 293.15));
  const between = (i: number) => (spec.k * spec.area) / (((widths[i] as number) + (widths[i + 1] as number)) / 2);
  const nearest = (x: number) => {
    const by = middles.map((at) => Math.abs(at - x));
    return by.indexOf(Math.min(...by));
  };
  const h = (Ts: number) => air.h(Ts);

  function step(I: number, dt: number): void {
    const Ta = air.T();
    const flows = cores.map(() => new Float64Array(3));
    for (let core = 0; core < 3; core++) {
      for (let i = 0; i < count; i++) {
        const flow = flows[i] as Float64Array;
        const T = cores[i]?.[core] as number;
        if (i + 1 < count) {
          const along = between(i) * ((cores[i + 1]?.[core] as number) - T);
          flow[core] = (flow[core] as number) + along;
          (flows[i + 1] as Float64Array)[core] = ((flows[i + 1] as Float64Array)[core] as number) - along;
        }
        if (i === 0 || i === count - 1)
          flow[core] = (flow[core] as number) + ((spec.k * spec.area) / (widths[i] as number)) * 2 * (Ta - T);
        if (core < spec.loaded) {
          flow[core] = (flow[core] as number) + I * I * ohms(i, core) * (widths[i] as number);
          // half of a contact's heat goes into the metal of the lead's end, the rest into the post
          if (i === 0 || i === count - 1)
            flow[core] = (flow[core] as number) + (0.5 * I * I * spec.contact) / spec.loaded;
        }
      }
    }
    for (let i = 0; i < count; i++) {
      surface[i] = stepSection(
        section,
        cells[i] as Float64Array,
        next[i] as Float64Array,
        cores[i] as Float64Array,
        left,
        h,
        Ta,
        dt,
      );
      [cells[i], next[i]] = [next[i] as Float64Array, cells[i] as Float64Array];
      for (let core = 0; core < 3; core++) {
        const held = C * (widths[i] as number);
        const gain = (flows[i]?.[core] as number) - (left[core] as number) * (widths[i] as number);
        (cores[i] as Float64Array)[core] = (cores[i]?.[core] as number) + (dt * gain) / held;
      }
    }
  }

  return {
    step,
    U(I) {
      let R = spec.tapped ? 2 * spec.contact : 0;
      for (let i = 0; i < count; i++)
        for (let core = 0; core < spec.loaded; core++) R += ohms(i, core) * (widths[i] as number);
      return I * R;
    },
    surfaceAt: (x) => surface[nearest(x)] as number,
    conductorAt: (x) => cores[nearest(x)]?.[0] as number,
  };
}
