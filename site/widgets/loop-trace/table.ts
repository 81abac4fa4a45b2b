import { celsius, type FaultCleared, type FaultLoop } from '#engine';
import type { Cell, TableTwin } from '../../charts/sheet.ts';
import { fixed, quantity, significant, temperature } from '../../lib/format.ts';
import { sourceWords } from '../../lib/source-words.ts';
import { amps, coldWords, leadWords, ohms, opensWithin, verdictWords } from './words.ts';

/** The title block of a loop: what it is worked out for. `cable` in words. */
export function loopCells(of: FaultLoop, cleared: FaultCleared | null, cable: string): Cell[] {
  const { loop, T, usage, limit } = of;
  return [
    { name: 'Source', value: `${quantity(loop.U0, 'V', 0)}, ${ohms(loop.Ze)} up to the origin` },
    { name: 'Lead', value: leadWords(of, cable) },
    { name: 'Conductors', value: `${temperature(celsius(T), usage)}, the fault itself 0 Ω` },
    ...(cleared ? [{ name: 'Device', value: cleared.device.name }] : []),
    ...(limit ? [{ name: 'Time allowed', value: `${fixed(limit.t, 1)} s, ${sourceWords(limit)}` }] : []),
  ];
}

/** The table twin of a loop: every ohm cold and warm, the currents, and what the device makes of them. */
export function loopTable({ loop, T }: FaultLoop, cleared: FaultCleared | null, title: string): TableTwin {
  return {
    caption: `${title}: every ohm`,
    columns: ['Part of the loop', 'At 20 °C, Ω', `At ${fixed(celsius(T), 0)} °C, Ω`],
    rows: [
      ['up to the origin, Ze', significant(loop.Ze, 3), significant(loop.Ze, 3)],
      ...loop.parts.map(({ name, cold, warm }) => [name, significant(cold, 3), significant(warm, 3)]),
      ['all the way round', significant(loop.cold, 3), significant(loop.Zs, 3)],
      ['fault current', `${amps(loop.greatest)} at most`, amps(loop.least)],
      ...(cleared ? clearingRows(cleared) : []),
    ],
  };
}

function clearingRows(of: FaultCleared): string[][] {
  const { Ia, greatestLoop, t } = of.clearing;
  return [
    ['current that surely opens it in time', '', Ia === null ? '–' : amps(Ia)],
    ['greatest loop', coldWords(of), greatestLoop === null ? '–' : significant(greatestLoop, 3)],
    ['the device opens', '', opensWithin(t)],
    ['verdict', '', verdictWords(of)],
  ];
}
