import Papa from 'papaparse';
import type { BenchRow } from './bench.ts';

// Logs as three different instruments would write them.

const digits = (value: number, places: number): string => value.toFixed(places);
const two = (n: number): string => String(n).padStart(2, '0');

/** One header row with units, ISO times, decimal points. */
export function plainLog(rows: readonly BenchRow[], startedAt: string): Uint8Array {
  const start = Date.parse(startedAt);
  const fields = [
    ...['time_ISO', 'elapsed_s', 'step', 'I_set_A', 'I_A', 'U_lead_V'],
    ...['theta_probe_1_degC', 'theta_probe_2_degC', 'theta_ambient_1_degC', 'event_remark'],
  ];
  const data = rows.map((row, i) => [
    new Date(start + 1000 * row.t).toISOString(),
    ...[digits(row.t, 0), row.step, row.set_A, digits(row.I, 2), digits(row.U, 3)],
    ...row.probes.map((T) => digits(T, 1)),
    digits(row.ambient, 1),
    row.step !== rows[i - 1]?.step ? `step ${row.step}, ${row.set_A} A` : '',
  ]);
  return new TextEncoder().encode(Papa.unparse({ fields, data }, { newline: '\n' }));
}

/** Lines before the header, semicolons, decimal commas, clock times that pass midnight, a probe that lets go for a while, gaps. */
export function clockLog(rows: readonly BenchRow[], startSecond: number): Uint8Array {
  const lines = [
    'Bench record;;;;;',
    'Lead on the table;polisher, 6 m;;;;',
    'Taps at the near posts;;;;;',
    '',
    'Clock;Current [A];Across lead [V];Sheath middle [°C];Sheath at grip [°C];Air [°C]',
  ];
  for (const [i, row] of rows.entries()) {
    const second = (startSecond + row.t) % 86_400;
    const clock = [Math.floor(second / 3600), Math.floor((second % 3600) / 60), Math.floor(second % 60)]
      .map(two)
      .join(':');
    const lost = i >= 300 && i < 306;
    const temperatures = [
      lost ? 'OL' : digits(row.probes[0] as number, 1),
      digits(row.probes[1] as number, 1),
      digits(row.ambient, 1),
    ];
    if (i === 101) continue; // one row that was never written
    lines.push([clock, digits(row.I, 2), digits(row.U, 3), ...temperatures].join(';').replaceAll('.', ','));
  }
  return new TextEncoder().encode(`\uFEFF${lines.join('\r\n')}\r\n`);
}

/** Tabs, UTF-16, milliamperes and millivolts, °F, elapsed hours, minutes and seconds, a closing line. */
export function wideLog(rows: readonly BenchRow[]): Uint8Array {
  const elapsed = (t: number) =>
    `${Math.floor(t / 3600)}:${two(Math.floor((t % 3600) / 60))}:${two(Math.floor(t % 60))}`;
  const fahrenheit = (T: number) => digits(T * 1.8 + 32, 1);
  const lines = [
    ['Elapsed', 'Lead mA', 'Lead mV', 'Jacket °F', 'Room °F'],
    ...rows.map(({ t, I, U, probes, ambient }) => {
      return [elapsed(t), digits(1e3 * I, 0), digits(1e3 * U, 0), fahrenheit(probes[0] as number), fahrenheit(ambient)];
    }),
    [`End of record, ${rows.length} rows`],
  ];
  const text = `\uFEFF${lines.map((cells) => cells.join('\t')).join('\r\n')}\r\n`;
  const bytes = new Uint8Array(2 * text.length);
  for (let i = 0; i < text.length; i++) {
    bytes[2 * i] = text.charCodeAt(i) & 0xff;
    bytes[2 * i + 1] = text.charCodeAt(i) >> 8;
  }
  return bytes;
}
