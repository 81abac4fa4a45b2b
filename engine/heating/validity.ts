import { sectionField } from '../cable/section-of.ts';
import { air } from '../material/air.ts';
import { resistanceRatio } from '../material/resistivity.ts';
import { kelvin } from '../quantity.ts';
import { stillBelow } from '../surroundings/air-laws.ts';
import { adiabaticTime } from './adiabatic.ts';
import type { Run } from './run.ts';
import type { ThermalCase } from './thermal-case.ts';

/** One thing a reader must know about how far a result holds. */
export interface Statement {
  readonly id: string;
  readonly text: string;
  /** From when in the run it applies [s]; absent where it holds for all of it. */
  readonly from?: number;
  /** True where the result beyond `from` is outside the model. */
  readonly outside?: boolean;
}

/** How far a result holds: in words, and from when the curve is outside the model. */
export interface Validity {
  readonly statements: readonly Statement[];
  /** Time from which the curve is drawn on but outside the model [s]; null when it never is. */
  readonly outsideFrom: number | null;
}

const indicative = kelvin(400);

/** Time at which the conductor first reaches `T` [K] on a run's samples; null when it does not. */
function firstPast({ curves: { t, conductor } }: Run, T: number): number | null {
  const i = conductor.findIndex((value) => value >= T);
  return i < 0 ? null : (t[i] as number);
}

function shapeStatement({ cable, G, outside, h }: ThermalCase): Statement[] {
  if (cable.cores === 1) return [];
  const hotter = (100 * (sectionField(cable, outside, h)?.hotSpot ?? 0)).toFixed(0);
  const spot = {
    id: 'surface',
    text: `The surface is the mean round the cable. Its hottest spot lies about ${hotter} % of the surface rise above it.`,
  };
  if (cable.layout === 'flat') {
    const both = cable.cores === 2 && cable.loaded.length === 2;
    const how = both
      ? 'The flat cable is solved as a round one of equal perimeter; its inner resistance is within −3 to +6 % of an exact solution.'
      : 'The inner resistance of this flat cable is a numerical solution of its section.';
    return [{ id: 'flat', text: how }, spot];
  }
  const small = cable.conductor.area <= 4.01e-6 ? '1 %' : '2.1 %';
  const off = Math.round(100 * (G.lineSources / G.finiteConductors - 1));
  const books = off === 0 ? 'the same' : `${Math.abs(off)} % ${off > 0 ? 'more' : 'less'}`;
  return [
    {
      id: 'section',
      text: `The inner thermal resistance is within ${small} of an exact solution of the section. Thin line sources, as books use, would give ${books}.`,
    },
    spot,
    {
      id: 'early',
      text: 'With several cores, the rise is within −4 to +9 % in the first half minute and within 1 % after five minutes.',
    },
  ];
}

function metalStatements(of: ThermalCase, run: Run): Statement[] {
  const { metal, alpha20, beta20 } = of.cable.conductor;
  const hottest = run.curves.conductor.reduce((a, b) => Math.max(a, b), of.T0);
  const curvature = metal.curvature?.value ?? 0;
  const missing = curvature > beta20 && hottest > kelvin(100);
  const low = missing
    ? 100 * (1 - resistanceRatio(alpha20, beta20, hottest) / resistanceRatio(alpha20, curvature, hottest))
    : 0;
  const line: Statement[] =
    low >= 0.5
      ? [
          {
            id: 'straight line',
            text: `Resistance follows the standards’ straight line. At the hottest point it is about ${low.toPrecision(2)} % below measured values.`,
          },
        ]
      : [];
  const past = firstPast(run, indicative);
  if (past === null) return line;
  return [
    ...line,
    { id: 'hot metal', text: 'Above 400 °C the metal’s data are indicative.', from: past, outside: true },
  ];
}

function insulationStatements(of: ThermalCase, run: Run): Statement[] {
  const first = (kind: string) => run.events.find((event) => event.limit.kind === kind);
  const softening = first('softening');
  const fumes = first('fumes') ?? first('ignition');
  const list: Statement[] = [];
  if (softening)
    list.push({
      id: 'softened',
      text: 'Past softening, cores may touch. The model keeps them apart.',
      from: softening.t,
    });
  if (fumes)
    list.push({
      id: 'fumes',
      text: 'Past fume onset the insulation changes. The curve is drawn on, outside the model.',
      from: fumes.t,
      outside: true,
    });
  const plastics = [of.cable.insulation, of.cable.sheath];
  if (plastics.some((p) => p?.rhoT.confidence === 'from memory'))
    list.push({
      id: 'memory',
      text: 'Thermal data of the insulation are from memory of IEC 60287-2-1 and IEC 60853-2.',
    });
  return list;
}

function placeStatements(of: ThermalCase): Statement[] {
  const spec = of.scenario.surroundings;
  const list: Statement[] = [];
  if (spec.kind === 'coiled')
    list.push({
      id: 'coil',
      text: 'A coil is an estimate: conductivity of the winding 0.13 to 0.28 W/(m·K) is the honest range, and the rise in time is up to 8 % low. Printed factors for ventilated drums (BS 7671) allow about one and a half times to twice this current.',
    });
  if (spec.kind === 'clipped')
    list.push({
      id: 'clipped',
      text: 'The law of IEC 60287-2-1 holds its radiation already; its constants are from memory.',
    });
  if ((spec.kind === 'stillAir' || spec.kind === 'draught') && spec.convection === 'churchillChu')
    list.push({
      id: 'correlation',
      text: 'Churchill and Chu’s law gives 10 to 20 % less convection at cord size, the hot side.',
    });
  if (spec.kind === 'draught' && spec.speed_mPerS >= stillBelow) {
    const { nu, Pr } = air(of.Ta);
    const weak = ((spec.speed_mPerS * 2 * of.cable.outerRadius) / nu) * Pr <= 0.2;
    if (weak)
      list.push({
        id: 'draught',
        text: 'Churchill and Bernstein’s law is sound for Re·Pr above 0.2; this draught is below that.',
      });
  }
  return list;
}

function supplyStatements(of: ThermalCase, run: Run): Statement[] {
  const list: Statement[] = [];
  const { T0, lead, cable } = of;
  if (lead.contact > 0)
    list.push({
      id: 'contact',
      text: 'Heat at contacts is shown beside the cable’s and does not warm it here. A poor contact can burn where the cable is cool.',
    });
  const fast = run.events.find(({ limit, already, t }) => limit.kind === 'shortTime' && !already && t <= 5);
  if (fast) {
    const none = adiabaticTime(of, run.curves.I[0] as number, run.curves.conductor[0] as number, fast.T);
    const both =
      none < fast.t
        ? ` With no heat lost it would take ${none.toPrecision(2)} s, here ${fast.t.toPrecision(2)} s.`
        : '';
    list.push({
      id: 'short circuit',
      text: `Perfect contact between metal and insulation is assumed; IEC 60949 takes a factor 0.7 on the heat lost.${both} The truth lies between.`,
    });
  }
  if (T0 < of.Ta - 0.5) list.push({ id: 'cold start', text: 'The run begins below ambient.' });
  if (cable.conductor.area > 25.01e-6)
    list.push({ id: 'ac', text: 'Alternating current is taken as direct current, within 0.1 % up to 25 mm².' });
  return list;
}

function deviceStatements({ scenario }: ThermalCase, { device, end, outcome }: Run): Statement[] {
  if (!scenario.device) return [];
  if (!device)
    return [
      {
        id: 'no device',
        text: 'The fuse or breaker of this case is left out here. The current flows as if there were none.',
      },
    ];
  const held =
    outcome === 'device opened' ? [] : [{ id: 'device holds', text: 'Nothing makes the device act within this run.' }];
  const { mayFrom } = device;
  const may: Statement[] =
    mayFrom !== null && mayFrom < end
      ? [
          {
            id: 'device may act',
            text: 'From here on the device may have acted already. The curve shows the longest it can hold.',
            from: mayFrom,
          },
        ]
      : [];
  return [...may, ...held];
}

/** How far a run's result holds. */
export function validityOf(of: ThermalCase, run: Run): Validity {
  const statements = [
    {
      id: 'uniform',
      text: 'The cable is uniform along its length; nothing is claimed within 0.3 m of an end or joint.',
    },
    {
      id: 'alone',
      text: 'One cable, out of the sun and dry; heat capacities are constant, and melting takes no heat here.',
    },
    ...shapeStatement(of),
    ...placeStatements(of),
    ...supplyStatements(of, run),
    ...deviceStatements(of, run),
    ...insulationStatements(of, run),
    ...metalStatements(of, run),
  ];
  const outside = statements.flatMap((s) => (s.outside ? [s.from as number] : []));
  return { statements, outsideFrom: outside.length > 0 ? Math.min(...outside) : null };
}
