import {
  bandAt,
  type Device,
  deviceConfidence,
  deviceOf,
  type HarmEdge,
  type HarmSet,
  type HarmSpan,
  harmText,
  judge,
  mend,
  type Prediction,
  prospectiveOf,
  type RuleVerdict,
} from '#engine';
import { figures } from './figures.ts';

const edge = ({ I, evidence, t }: HarmEdge) => ({ I_A: figures(I), evidence, conductor_s: figures(t) });
const span = ({ from, to }: HarmSpan) => ({ from: edge(from), to: edge(to) });

/** The points that pin a device, and its band at each of their currents; null is for ever. */
function bandReport(device: Device) {
  const { name, family, In, hold, notBefore, by, I2, source, where, silent } = device;
  const currents = [...new Set([hold, ...notBefore, ...by].map(({ I }) => I))].sort((a, b) => a - b);
  return {
    name,
    family,
    rating_A: In,
    holds_A: figures(hold.I),
    acts_A: I2 === null ? null : figures(I2),
    source,
    where,
    confidence: deviceConfidence(device),
    notFound: silent,
    band: currents.map((I) => {
      const { fastest, slowest, assumed } = bandAt(device, I);
      const time = (t: number | null) => (t === null ? null : figures(t));
      return {
        I_A: figures(I),
        notBefore_s: time(fastest),
        by_s: time(slowest),
        ifStraight: { notBefore_s: time(assumed.fastest), by_s: time(assumed.slowest) },
      };
    }),
  };
}

function harmReport(set: HarmSet, practice: 'iec' | 'na') {
  const { Iz, Ib, loadHarms, cold, loaded, spans, assumed, silentAbove, borrowed } = set;
  return {
    Iz_A: figures(Iz),
    Ib_A: Ib === null ? null : figures(Ib),
    upTo_A: figures(set.prospective),
    loadHarms,
    intervals: spans.map(span),
    ifStraight: assumed.map(span),
    fromCold: cold.guaranteed.map(span),
    fromLoad: loaded ? loaded.guaranteed.map(span) : null,
    silentAbove_A: silentAbove === null ? null : figures(silentAbove),
    borrowedLimit: borrowed,
    words: harmText(set, practice),
  };
}

const ruleReport = ({ rule, outcome, steps, statements }: RuleVerdict) => ({
  rule: rule.name,
  source: rule.source,
  where: rule.where,
  outcome,
  steps: steps.map((step) =>
    step.kind === 'value'
      ? { id: step.id, symbol: step.symbol, value: figures(step.value), unit: step.unit, source: step.source }
      : {
          id: step.id,
          asks: step.words,
          left: { symbol: step.left.symbol, value: figures(step.left.value) },
          right: { symbol: step.right.symbol, value: figures(step.right.value) },
          unit: step.unit,
          holds: step.holds,
          ...(step.aside ? { aside: true } : {}),
          source: step.source,
        },
  ),
  statements: statements.map(({ text }) => text),
});

/** The case's device: band, rule, harm set of each limit of the conductor's insulation, and ways to mend it; null where it has none. */
export function deviceReport({ scenario, thermal, run }: Prediction) {
  if (!scenario.device) return null;
  const device = deviceOf(scenario.device);
  const practice = scenario.practice ?? 'iec';
  const upTo = prospectiveOf(scenario);
  const question = { prospective: upTo.I, Ib: Math.max(...run.curves.I) };
  const limits = thermal.limits.filter(({ kind }) => kind === 'rating' || kind === 'shortTime');
  const { device: acted } = run;
  return {
    ...bandReport(device),
    prospective: { I_A: figures(upTo.I), from: upTo.from },
    inThisRun: acted
      ? {
          mayFrom_s: acted.mayFrom === null ? null : figures(acted.mayFrom),
          surelyBy_s: acted.surelyBy === null ? null : figures(acted.surelyBy),
        }
      : null,
    byRule: limits[0] ? ruleReport(judge(thermal, device, limits[0], question).rule) : null,
    byTemperature: limits.map((limit) => {
      const { now, ways, words } = mend(thermal, device, limit, question);
      return {
        limit: limit.name,
        confidence: limit.confidence,
        ...harmReport(now.harm, practice),
        leaves: now.leaves,
        protected: now.sound && !now.refused,
        mend: { words, ways: ways.map(({ kind, words: how }) => ({ kind, words: how })) },
      };
    }),
  };
}
