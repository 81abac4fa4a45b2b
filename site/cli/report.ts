import { cordRating, type HeatEvent, type LeadReading, type Prediction, type Steady, supplyWords } from '#engine';
import { degrees, figures } from './figures.ts';
import { contactsReport, loopReport } from './report-circuit.ts';
import { deviceReport } from './report-device.ts';

const event = ({ t, limit, end, T, already }: HeatEvent) => ({
  t_s: figures(t),
  limit: limit.name,
  ...(limit.high > limit.low ? { end } : {}),
  place: limit.place,
  T_degC: degrees(T),
  ...(already ? { already } : {}),
});

const reading = ({ I, U, heat, contactHeat, R }: LeadReading) => ({
  I_A: figures(I),
  U_V: figures(U),
  R_ohm: figures(R),
  heat_W: figures(heat),
  contactHeat_W: figures(contactHeat),
});

const steadyReport = (steady: Steady) =>
  steady.kind === 'steady'
    ? {
        kind: steady.kind,
        conductor_degC: degrees(steady.chain.conductor),
        surface_degC: degrees(steady.chain.surface),
        outside_degC: degrees(steady.chain.outside),
        heat_WPerM: figures(steady.chain.flow),
        I_A: figures(steady.I),
      }
    : { kind: steady.kind, reason: steady.reason };

/** A prediction as plain JSON; every key carries its unit. */
export function report(prediction: Prediction) {
  const { scenario, thermal, run, steady, ratings, rating, threshold, lead, validity } = prediction;
  const device = deviceReport(prediction);
  const contacts = contactsReport(prediction);
  const loop = loopReport(prediction);
  const { cable, outside, G, n, rings } = thermal;
  const { conductor } = cable;
  const rated = cordRating(cable);
  const curve = (values: Float64Array, write: (x: number) => number | null) => Array.from(values, write);
  return {
    title: scenario.title ?? cable.name,
    cable: {
      name: cable.name,
      loadedCores: n,
      metal: conductor.metal.name,
      area_mm2: figures(conductor.area * 1e6),
      R20_ohmPerKm: figures(conductor.R20 * 1e3),
      R20_basis: conductor.basis,
      bundle_mm: figures(conductor.rc * 2e3),
      overall_mm: figures(cable.outerRadius * 2e3),
      shapeFactor: { lineSources: figures(G.lineSources), finiteConductors: figures(G.finiteConductors) },
      rings: rings.map((ring) => ({
        name: ring.name,
        inner_mm: figures(ring.r0 * 1e3),
        outer_mm: figures(ring.r1 * 1e3),
        conductivity_WPerMK: figures(ring.k),
        heatCapacity_MJPerM3K: figures(ring.rhoC / 1e6),
      })),
    },
    surroundings: outside.words,
    supply: scenario.supply.map(supplyWords),
    outcome: run.outcome,
    end_s: figures(run.end),
    steady: steadyReport(steady),
    rating_A: rating === null ? null : figures(rating),
    ...(rated ? { ratedCurrent: { I_A: rated.I, source: rated.source, where: rated.where } } : {}),
    ratings: ratings.map(({ limit, T, I }) => ({
      limit: limit.name,
      place: limit.place,
      T_degC: degrees(T),
      I_A: I === null ? null : figures(I),
      source: limit.source,
      confidence: limit.confidence,
    })),
    threshold: { I_A: figures(threshold.I), T_degC: degrees(threshold.T), kind: threshold.kind },
    lead: { start: reading(lead.start), end: reading(lead.end) },
    ...(contacts ? { contacts } : {}),
    ...(device ? { device } : {}),
    ...(loop ? { loop } : {}),
    events: run.events.map(event),
    lifeUsed: run.lifeUsed === null ? null : figures(run.lifeUsed),
    energy_JPerM: {
      made: figures(run.energy.made),
      lost: figures(run.energy.lost),
      stored: figures(run.energy.stored),
      imbalance: run.energy.imbalance,
    },
    validity: {
      outsideFrom_s: validity.outsideFrom === null ? null : figures(validity.outsideFrom),
      statements: validity.statements.map(({ text, from, outside: beyond }) => ({
        text,
        ...(from === undefined ? {} : { from_s: figures(from) }),
        ...(beyond ? { outside: true } : {}),
      })),
    },
    solver: { cells: run.cells, steps: run.steps, rejected: run.rejected },
    curve: {
      t_s: curve(run.curves.t, figures),
      conductor_degC: curve(run.curves.conductor, degrees),
      surface_degC: curve(run.curves.surface, degrees),
      outside_degC: curve(run.curves.outside, degrees),
      I_A: curve(run.curves.I, figures),
      U_V: curve(run.curves.U, figures),
      heat_WPerM: curve(run.curves.heat, figures),
    },
  };
}
