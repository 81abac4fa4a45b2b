// Files of readings in random dialects, then broken in random ways; rows that were not touched must be read as they were.
import { guessMapping } from '#engine/bench/readings/guess.ts';
import { readLog } from '#engine/bench/readings/reader.ts';
import { type Random, randomOf } from '#engine/question/random.ts';

/** One row of readings: what it should be read as, SI, and its text. */
interface Row {
  readonly t: number;
  readonly values: readonly number[];
  text: string;
  touched: boolean;
}

interface Dialect {
  readonly delimiter: string;
  readonly decimal: '.' | ',';
  readonly newline: string;
  readonly encoding: 'utf-8' | 'utf-8 marked' | 'utf-16le' | 'windows-1252';
  readonly quotes: boolean;
  readonly time: (typeof times)[number];
  readonly units: (typeof unitRows)[number];
  readonly decimals: number;
  readonly preamble: readonly string[];
  readonly remark: boolean;
}

const pad = (x: number): string => String(x).padStart(2, '0');
const clock = (t: number): string => `${pad(Math.floor(t / 3600) % 24)}:${pad(Math.floor(t / 60) % 60)}:${pad(t % 60)}`;

/** Header of the time, and how a time [s] is written. */
const times = [
  { header: 'Time', write: (t: number) => `2026-03-02T${clock(t + 34_200)}` },
  { header: 'Timestamp', write: (t: number) => `2026-03-02 ${clock(t + 34_200)}+01:00` },
  { header: 'Date Time', write: (t: number) => `${t + 85_000 < 86_400 ? 27 : 28}.02.2026 ${clock(t + 85_000)}` },
  { header: 'Elapsed [s]', write: (t: number) => String(t) },
  {
    header: 'Elapsed time',
    write: (t: number) => `${Math.floor(t / 3600)}:${pad(Math.floor(t / 60) % 60)}:${pad(t % 60)}`,
  },
  { header: 'Epoch', write: (t: number) => String(1_772_443_800 + t) },
  { header: 'Clock', write: (t: number) => clock(t + 86_000) },
] as const;

/** Headers of current, volts, sheath and ambient, with the figure that gives one unit of SI; temperatures are in °C. */
const unitRows = [
  { headers: ['I [A]', 'U [V]', 'Sheath [°C]', 'Ambient [°C]'], per: [1, 1] },
  { headers: ['Current (mA)', 'Voltage (mV)', 'Temp_degC', 'Room_degC'], per: [1000, 1000] },
  { headers: ['I/A', 'U/mV', 'T1/°C', 'Ambient/°C'], per: [1, 1000] },
] as const;

function dialectOf(random: Random): Dialect {
  const delimiter = random.pick([',', ';', '\t']);
  return {
    delimiter,
    decimal: delimiter === ',' ? '.' : random.pick(['.', ',']),
    newline: random.pick(['\n', '\r\n', '\r']),
    encoding: random.pick(['utf-8', 'utf-8 marked', 'utf-16le', 'windows-1252']),
    quotes: random.whole(0, 4) === 0,
    time: random.pick(times),
    units: random.pick(unitRows),
    decimals: random.pick([1, 2, 4]), // three alone are ambiguous
    preamble: ['Bench logger', `Serial${delimiter}4711`, 'Place: workshop', ''].slice(random.whole(0, 4)),
    remark: random.whole(0, 1) === 1,
  };
}

function rowsOf(random: Random, dialect: Dialect): Row[] {
  const { units, decimals, delimiter, decimal } = dialect;
  const seconds = random.whole(1, 30);
  return Array.from({ length: random.whole(12, 50) }, (_, i) => {
    const t = i * seconds;
    const figures = [
      ((3 + i / 7 + 0.11) * units.per[0]).toFixed(decimals),
      ((1 + random.whole(0, 9999) / 1000) * units.per[1]).toFixed(decimals),
      (20 + random.whole(0, 400) / 10).toFixed(decimals),
      (19 + random.whole(0, 30) / 10).toFixed(decimals),
    ] as const;
    const values = [
      Number(figures[0]) / units.per[0],
      Number(figures[1]) / units.per[1],
      Number(figures[2]) + 273.15,
      Number(figures[3]) + 273.15,
    ];
    const cells = [dialect.time.write(t), ...figures.map((figure) => figure.replace('.', decimal))];
    if (dialect.remark) cells.push(i % 5 === 0 ? 'warm to the hand' : '');
    const text = cells.map((cell) => (dialect.quotes ? `"${cell}"` : cell)).join(delimiter);
    return { t, values, text, touched: false };
  });
}

const garbage = [
  '???',
  '\u0000\u0000',
  '"',
  '""',
  "'",
  '\uFFFD',
  'abc',
  '-',
  '1.2.3',
  '1,2,3',
  ',',
  ';',
  '\t',
  '=1+1',
  'é°µ',
  '🙂',
  '99999999999999999999',
];

/** Ways to break a row of a file; whatever a row's text becomes, that row no longer counts. */
const breaks: readonly ((random: Random, rows: Row[], at: number, dialect: Dialect) => void)[] = [
  (random, rows, at) => spoil(rows, at, (text) => text.slice(0, random.whole(0, text.length))),
  (random, rows, at) => {
    const letter = random.pick(garbage);
    spoil(rows, at, (text) => splice(text, random.whole(0, text.length), letter, 0));
  },
  (random, rows, at) => {
    const letter = random.pick(garbage);
    spoil(rows, at, (text) => splice(text, random.whole(0, text.length), letter, random.whole(1, 6)));
  },
  (random, rows, at, { delimiter }) =>
    spoil(rows, at, (text) => replaced(text, delimiter, random.whole(0, 4), random.pick(garbage))),
  (random, rows, at, { delimiter }) =>
    spoil(rows, at, (text) => text.split(delimiter).toSpliced(random.whole(0, 4), 1).join(delimiter)),
  (_, rows, at, { delimiter }) => spoil(rows, at, (text) => `${text}${delimiter}7${delimiter}7`),
  (random, rows, at) =>
    add(rows, at, random.pick(['', '   ', 'logging paused', '----------', '"', 'Average 3 of 5', 'x'.repeat(3000)])),
  (random, rows, at, dialect) => add(rows, at, headerText(dialect) + (random.whole(0, 1) ? dialect.delimiter : '')),
  (_, rows, at) => rows.splice(at, 2, ...rows.slice(at, at + 2).reverse()),
  (_, rows, at) => rows.splice(at, 0, { ...(rows[at] as Row) }),
  (_, rows, at, { delimiter }) => {
    const row = rows[at] as Row;
    if (!row.touched) row.text += delimiter.repeat(3); // trailing delimiters break nothing
  },
  (random, rows, at, { delimiter }) =>
    spoil(rows, at, (text) =>
      replaced(text, delimiter, random.whole(1, 4), random.pick(['OL', '----', 'NaN', '#N/A', 'overload', ''])),
    ),
];

/** A row with one of its cells replaced. */
const replaced = (text: string, delimiter: string, at: number, cell: string): string =>
  text
    .split(delimiter)
    .map((old, i) => (i === at ? cell : old))
    .join(delimiter);

const splice = (text: string, at: number, letters: string, remove: number): string =>
  text.slice(0, at) + letters + text.slice(at + remove);

function spoil(rows: Row[], at: number, change: (text: string) => string): void {
  const row = rows[at] as Row;
  rows[at] = { ...row, text: change(row.text), touched: true };
}

const add = (rows: Row[], at: number, text: string): Row[] =>
  rows.splice(at, 0, { t: Number.NaN, values: [], text, touched: true });

const headerText = ({ time, units, delimiter, remark }: Dialect): string =>
  [time.header, ...units.headers, ...(remark ? ['Remark'] : [])].join(delimiter);

function encoded(text: string, encoding: Dialect['encoding']): Uint8Array {
  const utf8 = new TextEncoder().encode(text);
  if (encoding === 'utf-8') return utf8;
  if (encoding === 'utf-8 marked') return Uint8Array.from([0xef, 0xbb, 0xbf, ...utf8]);
  if (encoding === 'utf-16le') return Uint8Array.from(Buffer.from(`\uFEFF${text}`, 'utf16le'));
  return Uint8Array.from(Array.from(text, (letter) => (letter.charCodeAt(0) < 256 ? letter.charCodeAt(0) : 63)));
}

/** A broken file by its seed, with the rows that nothing touched. */
export function malformedFile(seed: number): { bytes: Uint8Array; rows: readonly Row[]; lines: number; wild: boolean } {
  const random = randomOf(`malformed ${seed}`);
  const dialect = dialectOf(random);
  const rows = rowsOf(random, dialect);
  const most = Math.floor(rows.length / 4);
  for (let k = random.whole(0, most); k > 0; k--)
    random.pick(breaks)(random, rows, random.whole(0, rows.length - 2), dialect);
  const text = [...dialect.preamble, headerText(dialect), ...rows.map((row) => row.text), ''].join(dialect.newline);
  const bytes = encoded(text, dialect.encoding);
  const wild = random.whole(0, 9) === 0;
  // wild files are spoilt anywhere, header and byte order mark among it: nothing is promised but an answer
  if (wild)
    for (let k = random.whole(1, 40); k > 0; k--) bytes[random.whole(0, bytes.length - 1)] = random.whole(0, 255);
  return { bytes, rows, lines: text.split(/\r\n|\r|\n/).length, wild };
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));

/** What is wrong with the reading of the file of this seed; null where nothing is. */
export function faultOfSeed(seed: number): string | null {
  const { bytes, rows, lines, wild } = malformedFile(seed);
  const mapping = guessMapping(bytes);
  const { log, counts, faults } = readLog(bytes, mapping);
  const placed = counts.head + counts.blank + counts.read + counts.remarks + counts.setAside;
  if (placed !== counts.rows) return `${counts.rows} rows, but ${placed} are accounted for`;
  if (faults.filter(({ kept }) => !kept).length !== counts.setAside) return 'a row set aside has no fault';
  if (counts.looked > 50 * (lines + bytes.length / 1000 + 50)) return `${counts.looked} looks at ${lines} lines`;
  if (wild) return null;
  const good = rows.filter(({ touched }) => !touched);
  const columns = [log.I, log.U, log.probes[0]?.T ?? log.I, log.ambient ?? log.I];
  const found = good.map((row) =>
    Array.from(log.t.keys()).filter((i) => row.values.every((value, k) => near(columns[k]?.[i] as number, value))),
  );
  const missing = found.findIndex((at) => at.length === 0);
  if (missing >= 0) return `'${good[missing]?.text}' is not read`;
  const [first] = found as [number[]];
  const zero = (first ?? []).map((i) => (log.t[i] as number) - (good[0]?.t ?? 0));
  const late = good.findIndex(
    (row, k) => !found[k]?.some((i) => zero.some((from) => near((log.t[i] as number) - from, row.t))),
  );
  return late < 0 ? null : `'${good[late]?.text}' is read at another time`;
}
