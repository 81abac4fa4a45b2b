import {
  contactsAt,
  deviceOf,
  type FaultCleared,
  type FaultWithstand,
  faultCleared,
  faultOf,
  faultStatements,
  faultWithstand,
  hottestMoment,
  type Prediction,
  type WithstandAt,
} from '#engine';
import { degrees, figures } from './figures.ts';

/**
 * Heat of each contact when the conductor is at its hottest, beside the lead's own; null where the case has no contacts.
 */
export function contactsReport({ thermal, run }: Prediction) {
  const { I, conductor, t } = hottestMoment(run.curves);
  const beside = contactsAt(thermal, I, conductor);
  if (!beside) return null;
  const { contacts, W, leadPerMetre } = beside;
  const sum = (of: 'R' | 'asMetres') => contacts.reduce((total, contact) => total + contact[of], 0);
  return {
    at: { t_s: figures(t), I_A: figures(I) },
    each: contacts.map(({ name, kind, R, W: heat, asMetres }) => ({
      ...{ name, kind, R_ohm: figures(R), heat_W: figures(heat), asMetres_m: figures(asMetres) },
    })),
    total: { R_ohm: figures(sum('R')), heat_W: figures(W), asMetres_m: figures(sum('asMetres')) },
    lead_WPerM: figures(leadPerMetre),
    caution: 'No contact temperature is claimed. A poor contact can burn where the cable is cool.',
  };
}

/**
 * The loop of the case's fault, whether its device clears it, and what the conductor stands; null where no fault path is
 * told.
 */
export function loopReport({ scenario, thermal }: Prediction) {
  const of = faultOf(thermal);
  if (!of) return null;
  const device = scenario.device ? deviceOf(scenario.device) : null;
  const cleared = device && faultCleared(of, device);
  const { loop, T, nearEnd } = of;
  const stands = faultWithstand(thermal.cable, of, device);
  return {
    U0_V: loop.U0,
    Cmin: loop.Cmin,
    T_degC: degrees(T),
    Ze_ohm: loop.Ze,
    parts: loop.parts.map(({ name, cold, warm }) => ({ name, cold_ohm: figures(cold), warm_ohm: figures(warm) })),
    cold_ohm: figures(loop.cold),
    Zs_ohm: figures(loop.Zs),
    nearEnd_A: figures(nearEnd),
    greatest_A: figures(loop.greatest),
    least_A: figures(loop.least),
    clearing: cleared && clearingReport(cleared),
    adiabatic: stands && withstandReport(stands),
    statements: faultStatements(thermal, of).map(({ text }) => text),
  };
}

function clearingReport({ limit, clearing }: FaultCleared) {
  const { Ia, greatestLoop, t, outcome, rule, statements } = clearing;
  const told = (x: number | null) => (x === null ? null : figures(x));
  return {
    outcome,
    rule: rule.name,
    source: rule.source,
    where: rule.where,
    surelyOpens_A: told(Ia),
    greatestLoop_ohm: told(greatestLoop),
    opensWithin_s: told(t),
    allowed: limit && {
      t_s: limit.t,
      for: limit.words,
      source: limit.source,
      where: limit.where,
      confidence: limit.confidence,
    },
    statements: statements.map(({ text }) => text),
  };
}

function withstandReport({ k, stands, each, survives }: FaultWithstand) {
  const one = ({ at, I, lasts, energy, survives: does }: WithstandAt) => ({
    at,
    I_A: figures(I),
    allowed_s: figures(lasts.value),
    range: lasts.range,
    says: lasts.statement.text,
    device: energy && {
      takes_s: figures(energy.t),
      atLeast_A2s: energy.atLeast && figures(energy.atLeast.I2t),
      atMost_A2s: energy.atMost && figures(energy.atMost.I2t),
      statements: energy.statements.map(({ text }) => text),
    },
    survives: does,
  });
  return {
    k_As05PerMm2: figures(k.k / 1e6),
    from_degC: degrees(k.from),
    to_degC: degrees(k.to),
    k2S2_A2s: figures(stands),
    source: k.source,
    where: k.where,
    confidence: k.confidence,
    statements: k.statements.map(({ text }) => text),
    each: each.map(one),
    survives,
  };
}
