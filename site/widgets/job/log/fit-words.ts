import type { FitParameterId, Fitted, HeldBack, LogFit, NotJudged, OneChange } from '#engine';
import type { TableTwin } from '../../../charts/sheet.ts';
import { clock, fixed, significant, thin } from '../../../lib/format.ts';
import type { FitStage } from '../../../workers/fit-work.ts';

/** What may be freed, in words of the trade. */
export const parameterNames: Readonly<Record<FitParameterId, readonly [name: string, what: string]>> = {
  R20: ['Resistance at 20 °C', 'of one core: metal, size and strands together'],
  contact: ['Contact resistance', 'in series, inside the voltage taps'],
  surface: ['Surface factor', 'how much heat the surface sheds, 1 as computed'],
  ambientOffset: ['Ambient offset', 'air that the lead feels, less what was read'],
  probeOffset: ['Probe offset', 'what the sheath probes say too much'],
  probeLag: ['Probe lag', 'how slowly the sheath probes follow'],
  area: ['Metal area', 'of one core; resistance and heat held follow'],
};

/** Parameters in the order they are offered. */
export const offered = [
  'R20',
  'contact',
  'surface',
  'ambientOffset',
  'probeOffset',
  'probeLag',
  'area',
] as const satisfies FitParameterId[];

const inTrade: Readonly<Record<FitParameterId, readonly [unit: string, times: number]>> = {
  R20: ['mΩ/m', 1e3],
  contact: ['mΩ', 1e3],
  surface: ['', 1],
  ambientOffset: ['K', 1],
  probeOffset: ['K', 1],
  probeLag: ['s', 1],
  area: ['mm²', 1e6],
};

/** A parameter's value in the trade's unit, with its unit. */
export function tradeValue(id: FitParameterId, value: number): string {
  const [unit, times] = inTrade[id];
  return `${figure(id, value)}${unit ? `${thin}${unit}` : ''}`;

  function figure(of: FitParameterId, SI: number): string {
    return of === 'ambientOffset' || of === 'probeOffset' ? fixed(SI, 1) : significant(SI * times, 4);
  }
}

const range = (id: FitParameterId, ends: readonly [number, number] | null): string =>
  ends === null ? '–' : `${tradeValue(id, ends[0])} to ${tradeValue(id, ends[1])}`;

const states: Readonly<Record<Fitted['state'], string>> = {
  fitted: 'fitted',
  'at bound': 'at the end of what is allowed',
  held: 'held: this log does not tell it',
};

/** What a fit found, in the trade's units. */
export function fitTable({ parameters }: LogFit): TableTwin {
  return {
    caption: 'Values with 95 % intervals, by the readings alone and with what is not known of the plastics',
    columns: ['', 'Began at', 'Found', 'By the readings', 'With the plastics', 'State'],
    rows: parameters.map(({ id, start, value, interval, wide, state }) => [
      parameterNames[id][0],
      tradeValue(id, start),
      tradeValue(id, value),
      range(id, interval),
      range(id, wide),
      states[state],
    ]),
  };
}

/** Correlation from which it is worth a word. */
const tight = 0.8;

/** Parameters that move together, in words. */
export function correlationWords({ of, correlation }: LogFit): string[] {
  return of.flatMap((a, i) =>
    of.slice(i + 1).flatMap((b, k) => {
      const r = correlation[i]?.[i + 1 + k] ?? 0;
      if (Math.abs(r) < tight) return [];
      const [first, second] = [parameterNames[a][0].toLowerCase(), parameterNames[b][0].toLowerCase()];
      const how = r > 0 ? 'a greater one goes with a greater other' : 'a greater one goes with a smaller other';
      return [`This log ties ${first} and ${second} together (correlation ${fixed(r, 2)}): ${how}.`];
    }),
  );
}

/** How the fit stands on the step it had not seen. */
export function heldBackWords(heldBack: HeldBack | NotJudged, steps: number): string {
  if (heldBack.kind === 'not judged')
    return heldBack.why === 'fewer than two steps'
      ? 'The log has fewer than two steps, so none can be held back to judge the fit.'
      : 'The early steps cannot be fitted by themselves, so the fit is not judged on the last.';
  const early = Math.max(1, steps - 1);
  const { step, inside } = heldBack;
  const share = `${fixed(100 * inside, 0)}${thin}%`;
  const verdict =
    inside >= 0.95 ? 'A right model gives 95 % or more: it holds.' : 'A right model gives 95 %: it does not hold.';
  return `Fitted on the first ${early === 1 ? 'step' : `${early} steps`}, foretold the last (${clock(step.from)} to ${clock(step.to)}): ${share} of its readings lie inside the band. ${verdict}`;
}

/** The single changes, the best first. */
export function changesTable(changes: readonly OneChange[]): TableTwin {
  return {
    caption: 'Which one change explains the log best; each alone, all else as predicted',
    columns: ['Change', 'To', 'Explains of the misfit', 'Worth making'],
    rows: changes.map(({ id, fit, explains, pays }) => [
      parameterNames[id][0],
      tradeValue(id, fit.values[id]),
      `${fixed(100 * Math.max(0, explains), 1)}${thin}%`,
      pays ? 'yes' : 'no',
    ]),
  };
}

/** What the single changes say, in a sentence. */
export function changesWords(changes: readonly OneChange[]): string {
  const best = changes.find(({ pays }) => pays);
  if (!best) return 'No single change explains the log better than the case as it is.';
  const { id, fit, explains } = best;
  return `Of single changes, ${parameterNames[id][0].toLowerCase()} ${tradeValue(id, fit.values[id])} explains the log best: ${fixed(100 * explains, 0)}${thin}% of the misfit.`;
}

const parts: Readonly<Record<FitStage['part'], string>> = {
  fit: 'Fitting',
  'held back': 'Judging it on the last step',
  changes: 'Trying single changes',
  compare: 'Setting it beside the log',
};

/** Where a fit is, in words. */
export const stageWords = ({ part, steps }: FitStage): string =>
  part === 'fit' ? `${parts.fit}, step ${steps}` : parts[part];

/** About how far a fit is, 0 to 1; its search ends when it has settled, so nobody knows exactly. */
export function stageShare({ part, steps }: FitStage): number {
  if (part === 'fit') return (0.6 * steps) / (steps + 6);
  if (part === 'held back') return 0.65;
  return part === 'changes' ? 0.7 + 0.06 * steps : 0.95;
}
