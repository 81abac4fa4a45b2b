import { celsius, type FaultCleared, type FaultLoop } from '#engine';
import type { TableTwin } from '../../charts/sheet.ts';
import { fixed, significant } from '../../lib/format.ts';
import { amps, coldWords, opensWithin, verdictWords } from './words.ts';

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
