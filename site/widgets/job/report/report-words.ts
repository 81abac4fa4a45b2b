import {
  type Agreement,
  type BenchJob,
  celsius,
  checkOutcome,
  checksOf,
  type Fitted,
  type LogFit,
  type OneChange,
  type PlateauMeans,
  type ReportLock,
  sources,
  type TestPlan,
  type VerdictSentence,
} from '#engine';
import type { TableTwin } from '../../../charts/sheet.ts';
import { clock, fixed, quantity, significant, thin } from '../../../lib/format.ts';

/** What each sentence of a verdict is about. */
export const verdictNames: Readonly<Record<VerdictSentence['id'], string>> = {
  'behaves as': 'What it behaves as',
  reaches: 'What it reached',
  device: 'What the device does',
  suitable: 'What it is suitable for',
  agreement: 'Whether the prediction held',
  'not established': 'What is not established',
};

/** A moment as the reader writes it, its month in letters: figures alone would be read in two ways. */
export const when = (iso: string): string =>
  new Date(iso).toLocaleString(undefined, { dateStyle: 'long', timeStyle: 'short' });

/** How the prediction was locked in, in a sentence or two. */
export function lockWords({ state, at, before }: ReportLock): string {
  if (state === 'none') return 'There is no plan.';
  if (state === 'open' || !at) return 'The prediction below was never locked in.';
  if (state === 'changed since')
    return `Locked in on ${when(at)}, and the plan was changed after that. What is below is not what was locked in.`;
  const after = { true: 'The readings began after that.', false: 'The readings had begun before that.', null: '' };
  return `Locked in on ${when(at)}, unchanged since. ${after[`${before}`]}`.trim();
}

/** What was found on the lead besides metals and sizes: the marking, whole. */
export const markingOf = ({ plan, found }: BenchJob): string =>
  plan?.marking || (found.marking?.size_mm2 ? `${found.marking.size_mm2}${thin}mm²` : '');

const degrees = (T: number) => (Number.isFinite(T) ? quantity(celsius(T), '°C', 1) : '–');

/** Means over the plateaus. */
export function plateauTable(means: readonly PlateauMeans[]): TableTwin {
  return {
    caption: 'Means over the last fifth of each step',
    columns: ['Step', 'From', 'Current', 'Volts', 'Power', 'Resistance', 'Air'],
    rows: means.map(({ span, I, U, P, R, ambient }, i) => [
      String(i + 1),
      clock(span.from),
      quantity(I, 'A', 2),
      quantity(U, 'V', 3),
      quantity(P, 'W', 1),
      `${significant(R, 4)}${thin}Ω`,
      degrees(ambient),
    ]),
  };
}

/** Readings and prediction of one thermometer at the plateaus. */
export function agreementTable({ thermometer, plateaus }: Agreement): TableTwin {
  return {
    caption: `${thermometer}: readings less prediction`,
    columns: ['Current', 'Read', 'Predicted', 'Difference', 'Two uncertainties', 'Agrees'],
    rows: plateaus.map(({ I, measured, predicted, difference, u, agrees }) => [
      quantity(I, 'A', 1),
      degrees(measured),
      degrees(predicted),
      quantity(difference, 'K', 1),
      quantity(2 * u, 'K', 1),
      agrees ? 'yes' : 'no',
    ]),
  };
}

/** A comparison as a sentence of its own. */
export function agreementSentence(of: Agreement): string {
  const words = agreementWords(of);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A comparison in words, to begin with or to follow 'With that, '. */
export function agreementWords({ thermometer, bias, rms, agrees, plateaus }: Agreement): string {
  if (plateaus.length === 0) return `${thermometer}: no plateau to compare.`;
  const so = agrees ? 'agrees with the prediction' : 'does not agree with the prediction';
  return `${thermometer} ${so}: ${quantity(bias, 'K', 1)} off on average at the plateaus, ${quantity(rms, 'K', 1)} root mean square over all rows.`;
}

const shown = (value: number, unit: string): string => {
  if (unit === 'Ω/m') return `${significant(value * 1e3, 3)}${thin}mΩ/m`;
  if (unit === 'm²') return `${significant(value * 1e6, 3)}${thin}mm²`;
  if (unit === 'Ω') return `${significant(value * 1e3, 3)}${thin}mΩ`;
  return `${significant(value, 3)}${unit ? thin + unit : ''}`;
};

/** What a fit found, a row a parameter. */
export function fitTable({ parameters }: LogFit): TableTwin {
  const interval = ({ wide, unit }: Fitted) =>
    wide ? `${shown(wide[0], unit)} to ${shown(wide[1], unit)}` : 'not told';
  return {
    caption: 'What was refitted, with its interval; the plastics’ doubt is in it',
    columns: ['Parameter', 'Case', 'Fitted', '95 in 100', 'State'],
    rows: parameters.map((one) => [
      one.name,
      shown(one.start, one.unit),
      shown(one.value, one.unit),
      interval(one),
      one.state,
    ]),
  };
}

/** What each single change would explain. */
export function changesTable(changes: readonly OneChange[]): TableTwin {
  return {
    caption: 'Single changes, the one that explains most first',
    columns: ['Refitted alone', 'Explains', 'Value', 'Pays'],
    rows: changes.flatMap(({ fit, explains, pays }) =>
      fit.parameters.map((one) => [
        one.name,
        `${fixed(100 * Math.max(0, explains), 0)}${thin}%`,
        shown(one.value, one.unit),
        pays ? 'yes' : 'no',
      ]),
    ),
  };
}

const outcome = { pass: 'passed', fail: 'failed', open: 'not done' } as const;

/** Checks before power, as they were found. */
export function checksTable(plan: TestPlan): TableTwin {
  return {
    caption: 'Checks before power',
    columns: ['Check', 'Limit', 'Read', 'Found'],
    rows: checksOf(plan).map((check) => {
      const record = plan.checks.find(({ id }) => id === check.id);
      const ohms = (value: number) =>
        check.unit === 'Ω' ? `${fixed(value, 3)}${thin}Ω` : `${fixed(value * 1e-6, 1)}${thin}MΩ`;
      const limit = check.limit
        ? `${check.limit.sense} ${ohms(check.limit.value)} (${sources[check.limit.source].title})`
        : 'seen';
      return [
        check.name,
        limit,
        record?.value === undefined ? '–' : ohms(record.value),
        outcome[checkOutcome(check, record)],
      ];
    }),
  };
}
