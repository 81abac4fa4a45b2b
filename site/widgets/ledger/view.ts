import { celsius, type HeatLedger, kelvin, ledgerAt, ledgerCurves, madeCurve, ratingOf } from '#engine';
import { heatEnd, type LedgerAxes, temperatureEnds } from '../../charts/ledger/axes.ts';
import type { LedgerLines, OtherCurrent, Point, Watts } from '../../charts/ledger/types.ts';
import type { TableTwin } from '../../charts/sheet.ts';
import { fahrenheit, fixed, type Practice } from '../../lib/format.ts';
import { heatFigure } from './words.ts';

/** A ledger as the picture takes it. */
export interface LedgerView {
  readonly lines: LedgerLines;
  readonly axes: LedgerAxes;
  readonly others: readonly OtherCurrent[];
  /** Where it settles. */
  readonly crossing: Point | null;
  /** A crossing that it does not come back to. */
  readonly leaving: Point | null;
}

/** A ledger beside the one shown, by the name of its current. */
export interface NamedLedger {
  readonly id: string;
  readonly name: string;
  readonly ledger: HeatLedger;
}

const settling = (ledger: HeatLedger): Point | null => {
  const { steady } = ledger;
  if (steady.kind !== 'steady') return null;
  return { T: celsius(steady.chain.conductor), heat: steady.chain.flow };
};

/** The curves, axes and crossings of a ledger and of those beside it. */
export function ledgerView(ledger: HeatLedger, beside: readonly NamedLedger[]): LedgerView {
  const { thermal } = ledger;
  const ambient = celsius(thermal.Ta);
  const crossing = settling(ledger);
  const all = [crossing, ...beside.map(({ ledger: other }) => settling(other))];
  const hottest = all.flatMap((one) => one ?? []).reduce<Point | null>((a, b) => (a && a.T > b.T ? a : b), null);
  const rating = ratingOf(thermal.cable);
  const [low, high] = temperatureEnds({
    ambient,
    crossing: crossing ? (hottest?.T ?? null) : null,
    melting: celsius(thermal.cable.conductor.metal.melting.value),
    rating: rating === null ? null : celsius(rating),
  });
  const from = Math.max(low, ambient);
  const curves = ledgerCurves(ledger, kelvin(from), kelvin(high));
  const others = beside.map(({ id, name, ledger: other }) => ({
    id,
    name,
    made: madeCurve(other, curves.T),
    crossing: settling(other),
  }));
  const madeAtEnd = Math.max(...[curves.made, ...others.map(({ made }) => made)].map((made) => made.at(-1) ?? 0));
  const most = heatEnd(crossing ? (hottest?.heat ?? null) : null, madeAtEnd, curves.lost.at(-1) ?? 0);
  const left = ledger.crossings.find(({ kind, T }) => kind === 'leaves' && crossing && celsius(T) > crossing.T);
  return {
    lines: { T: curves.T.map(celsius), made: curves.made, lost: curves.lost },
    axes: { low, high, most },
    others,
    crossing,
    leaving: left ? { T: celsius(left.T), heat: left.flow } : null,
  };
}

/** Where the heat goes with the conductor at `T` [K]. */
export function wattsAt(ledger: HeatLedger, T: number): Watts {
  const { made, lost, shed } = ledgerAt(ledger, T);
  return { made, lost, ways: shed && { air: shed.convection, radiated: shed.radiation } };
}

/** Round temperatures about a dozen rows apart from ambient to `high` [°C], and the crossing. */
function rowTemperatures(ambient: number, high: number, crossing: number | null): number[] {
  const span = high - ambient;
  const step = [5, 10, 20, 50, 100, 200].find((each) => span / each <= 12) ?? 500;
  const first = Math.ceil(ambient / step) * step;
  const round = Array.from({ length: Math.floor((high - first) / step + 1e-9) + 1 }, (_, i) => first + i * step);
  return [...new Set([ambient, ...round, ...(crossing === null ? [] : [crossing])])].sort((a, b) => a - b);
}

/** The table twin of a ledger over its own axis. */
export function ledgerTable(ledger: HeatLedger, view: LedgerView, caption: string, practice: Practice): TableTwin {
  const also = practice === 'na';
  const crossing = view.crossing?.T ?? null;
  const split = ledger.thermal.outside.radiates !== null;
  const rows = rowTemperatures(celsius(ledger.thermal.Ta), view.axes.high, crossing).map((T) => {
    const line = ledgerAt(ledger, kelvin(T));
    const notes = [
      ...(T === crossing ? ['settles'] : []),
      ...(kelvin(T) > ledger.modelEnd ? ['outside the model'] : []),
    ];
    return [
      fixed(T, T === crossing && kelvin(T) <= ledger.modelEnd ? 1 : 0),
      ...(also ? [fixed(fahrenheit(T), 0)] : []),
      fixed(celsius(line.surface), 0),
      heatFigure(line.made),
      heatFigure(line.lost),
      ...(split ? [heatFigure(line.shed?.convection ?? 0), heatFigure(line.shed?.radiation ?? 0)] : []),
      T === crossing ? '0' : heatFigure(line.stored),
      notes.join(', '),
    ];
  });
  const columns = [
    'Conductor, °C',
    ...(also ? ['Conductor, °F'] : []),
    'Surface, °C',
    'Heat made, W/m',
    'Heat lost, W/m',
    ...(split ? ['Into the air, W/m', 'Radiated, W/m'] : []),
    'Warms the lead, W/m',
    'Note',
  ];
  return { caption, columns, rows };
}
