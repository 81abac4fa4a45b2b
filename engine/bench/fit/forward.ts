import type { Cable } from '../../cable/cable.ts';
import { marchOf } from '../../heating/march.ts';
import type { Mesh } from '../../heating/mesh.ts';
import { radialOf } from '../../heating/radial.ts';
import { loadedStart, type Start, startProfile } from '../../heating/start.ts';
import { buildCase, conductorResistance, type ThermalCase } from '../../heating/thermal-case.ts';
import { celsius } from '../../quantity.ts';
import type { Scenario, SurroundingsSpec } from '../../scenario/schema.ts';
import { behindResistance, type SurfaceLaw } from '../../surroundings/law.ts';
import { outsideOf, type Ring } from '../../surroundings/outside.ts';
import type { Drive } from './drive.ts';
import { type FitValues, fitParametersOf, valuesOf } from './parameters.ts';

/** Temperatures of the model at the nodes of a drive [K]. */
export interface Trace {
  readonly conductor: Float64Array;
  readonly surface: Float64Array;
  readonly outside: Float64Array;
}

/** What the model says that the instruments read, at the groups of a drive. */
export interface Readings {
  /** Volts [V], and each probe's temperature [K]. */
  readonly U: Float64Array;
  readonly probes: readonly Float64Array[];
}

/** The heat model driven by a log. */
export interface Forward {
  readonly of: ThermalCase;
  readonly drive: Drive;
  /** False where the case's own values melt the metal on this current: nothing can be fitted from there. */
  readonly sound: boolean;
  /** Temperatures for some values of the parameters; not numbers where they melt the metal. Same step sizes for all values. */
  trace(p: FitValues): Trace;
  /** Readings for some values of the parameters. */
  readings(p: FitValues): Readings;
}

/** Kelvins between the air temperatures at which the surface law is laid down. */
const airStep = 10;

/**
 * Heat that the outside sheds at a rise over the air at `Ta` [W/m]: between laws laid down every 10 K of air, straight, which
 * is within 0.1 % of the law itself.
 */
function airLaw(
  spec: SurroundingsSpec,
  cable: Cable,
  length: number,
  [least, most]: readonly [number, number],
): (rise: number, Ta: number) => number {
  const first = Math.floor(least / airStep);
  const last = Math.max(first + 1, Math.ceil(most / airStep));
  const laws = Array.from({ length: last - first + 1 }, (_, i) => {
    const Ta = (first + i) * airStep;
    const { law } = outsideOf({ ...spec, ambient_degC: celsius(Ta) }, cable, length);
    return (rise: number) => law(Ta + rise);
  });
  return (rise, Ta) => {
    const x = Ta / airStep - first;
    const i = Math.min(laws.length - 2, Math.max(0, Math.floor(x)));
    const low = (laws[i] as SurfaceLaw)(rise);
    return low + (x - i) * ((laws[i + 1] as SurfaceLaw)(rise) - low);
  };
}

/**
 * What may be varied of a case beside the parameters: factor on the outer diameter, the emissivity, and factors on the thermal
 * resistivity and the heat capacity of the cable's plastics.
 */
export interface CaseChange {
  readonly diameter?: number;
  readonly emissivity?: number;
  readonly rhoT?: number;
  readonly rhoC?: number;
}

/** The heat model of a scenario, driven by a log. Throws `ScenarioFault` where the scenario's parts do not fit. */
export function forwardOf(scenario: Scenario, drive: Drive, change: CaseChange = {}): Forward {
  const { steadyAt_A } = scenario.start ?? {};
  const of = buildCase({ ...scenario, supply: [{ kind: 'off' }], cycles: 1 });
  const { series } = of.outside;
  const { nodes, squares, at } = drive;
  const many = nodes.length;
  const [coolest, warmest] = fitParametersOf(of).ambientOffset.bounds;
  const air = airLaw(changedSpec(scenario.surroundings, change), changedCable(of.cable, change), of.lead.length, [
    drive.air[0] + coolest,
    drive.air[1] + warmest,
  ]);
  const now = { Ta: of.Ta, factor: 1 };
  const law: SurfaceLaw = (T) => now.factor * air(T - now.Ta, now.Ta);
  const outside = (T: number) => (series > 0 ? behindResistance(law, T, series, now.Ta) : T);
  const flow: SurfaceLaw = series > 0 ? (T) => (T - outside(T)) / series : law;
  const driven: ThermalCase = { ...of, rings: changedRings(of, change), outside: { ...of.outside, flow } };
  const melt = of.cable.conductor.metal.melting.value;
  const lead = of.lead.inSeries * of.lead.length;
  let plan: readonly number[][] | null = null;
  let mesh: Mesh;

  function startOf(p: FitValues): Start {
    if (steadyAt_A !== undefined) return loadedStart(of);
    const given = scenario.start?.T_degC;
    return { T: given === undefined ? drive.ambient[0] + p.ambientOffset : of.T0, flow: 0 };
  }

  /** Step sizes between the nodes, found by the solver's own step control at the start values. */
  function planSteps(p: FitValues): number[][] | null {
    now.factor = p.surface;
    const march = marchOf(driven, drive.greatest, undefined, undefined, startOf(p));
    mesh = march.mesh;
    const steps: number[][] = [];
    for (let k = 0; k < many - 1; k++) {
      const list: number[] = [];
      now.Ta = drive.ambient[k] + p.ambientOffset;
      march.setCurrent(() => Math.sqrt(squares[k]));
      const through = march.to(nodes[k + 1] - nodes[0], (_t, h, dense) => {
        list.push(h);
        return dense[1] < melt ? 1 : 0.5;
      });
      if (!through) return null;
      steps.push(list);
    }
    return steps;
  }

  function trace(p: FitValues): Trace {
    const [conductor, surface, out] = [0, 1, 2].map(() => new Float64Array(many).fill(Number.NaN)) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    const result = { conductor, surface, outside: out };
    if (plan === null) return result;
    const changed = withConductor(driven, p);
    const own = withCapacity(mesh, changed.conductorCapacity - of.conductorCapacity);
    now.factor = p.surface;
    now.Ta = drive.ambient[0] + p.ambientOffset;
    const radial = radialOf(own, flow, startProfile(driven, own, startOf(p)));
    const last = own.r.length - 1;
    for (let k = 0; k < many; k++) {
      if (k > 0) {
        now.Ta = drive.ambient[k - 1] + p.ambientOffset;
        const square = squares[k - 1];
        radial.setHeat((T) => of.n * square * conductorResistance(changed, T));
        for (const h of plan[k - 1]) {
          radial.attempt(h);
          radial.accept();
        }
        if (!(radial.y[0] < melt)) return result;
      }
      conductor[k] = radial.y[0];
      surface[k] = radial.y[own.surface];
      out[k] = outside(radial.y[last]);
    }
    return result;
  }

  function readings(p: FitValues): Readings {
    const T = traceOf(p);
    const changed = withConductor(driven, p);
    const U = Float64Array.from(at, (k, i) => {
      return drive.I[i] * (lead * conductorResistance(changed, T.conductor[k]) + p.contact);
    });
    const probes = drive.probes.map(({ place }) => {
      const felt = lagged(nodes, T[place], p.probeLag);
      return Float64Array.from(at, (k) => felt[k] + p.probeOffset);
    });
    return { U, probes };
  }

  const traceOf = lastTwo(trace, (p) => [p.R20, p.area, p.surface, p.ambientOffset].join());
  plan = planSteps(valuesOf(of));
  return { of, drive, sound: plan !== null, trace: traceOf, readings };
}

/** The same function, with its last two answers kept by `keyOf`. */
function lastTwo<A, B>(f: (a: A) => B, keyOf: (a: A) => string): (a: A) => B {
  let kept: readonly { key: string; value: B }[] = [];
  return (a) => {
    const key = keyOf(a);
    const before = kept.find((one) => one.key === key);
    const found = before ?? { key, value: f(a) };
    kept = [found, ...kept.filter((one) => one !== found)].slice(0, 2);
    return found.value;
  };
}

/** A case whose conductor has the resistance and the heat capacity that parameters give it. */
function withConductor(of: ThermalCase, { R20, area }: FitValues): ThermalCase {
  const { conductor } = of.cable;
  const heatCapacity = (conductor.heatCapacity * area) / conductor.area;
  return {
    ...of,
    conductorCapacity: of.n * heatCapacity,
    cable: { ...of.cable, conductor: { ...conductor, area, R20, heatCapacity } },
  };
}

/** A mesh whose conductor holds `more` heat per kelvin [J/(m·K)]. */
function withCapacity(mesh: Mesh, more: number): Mesh {
  const diagonal = Float64Array.from(mesh.diagonal);
  const capacity = Float64Array.from(mesh.capacity);
  diagonal[0] += more;
  capacity[0] += more;
  return { ...mesh, diagonal, capacity };
}

function changedCable(cable: Cable, { diameter = 1, emissivity }: CaseChange): Cable {
  return { ...cable, outerRadius: cable.outerRadius * diameter, emissivity: emissivity ?? cable.emissivity };
}

function changedRings({ rings, outside }: ThermalCase, { rhoT = 1, rhoC = 1 }: CaseChange): readonly Ring[] {
  const own = rings.length - outside.rings.length;
  return rings.map((ring, i) => (i < own ? { ...ring, k: ring.k / rhoT, rhoC: ring.rhoC * rhoC } : ring));
}

function changedSpec(spec: SurroundingsSpec, { emissivity }: CaseChange): SurroundingsSpec {
  return emissivity === undefined || spec.kind === 'clipped' ? spec : { ...spec, emissivity };
}

/** What a first-order thermometer of time constant `tau` [s] reads, straight lines between the times; at rest when it begins. */
export function lagged(t: Float64Array, T: Float64Array, tau: number): Float64Array {
  if (tau <= 0) return T;
  const felt = Float64Array.from(T);
  for (let k = 1; k < T.length; k++) {
    const dt = t[k] - t[k - 1];
    const behind = (tau * (T[k] - T[k - 1])) / dt;
    felt[k] = T[k] - behind + (felt[k - 1] - T[k - 1] + behind) * Math.exp(-dt / tau);
  }
  return felt;
}
