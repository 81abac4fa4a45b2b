// What this folder holds: the README lists its rows by source and by how sure we are, and this keeps the list true.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { allowed, bibliography, confidences, halfUnit, type Row, readTable, tableNames } from './table.ts';

const rows = tableNames().flatMap(readTable);
const readme = readFileSync(new URL('README.md', import.meta.url), 'utf8');

function line(name: string, of: readonly Row[]): string {
  const by = confidences.map((wanted) => of.filter(({ confidence }) => confidence === wanted).length);
  return `| ${[name, ...by, of.length].join(' | ')} |`;
}

/** The table of the README. */
function summary(): string {
  const cited = [...new Set(rows.map(({ source }) => source))].sort((a, b) => a.localeCompare(b, 'en'));
  return [
    `| source | ${confidences.join(' | ')} | rows |`,
    '|---|---|---|---|---|',
    ...cited.map((source) =>
      line(
        bibliography[source].title,
        rows.filter((row) => row.source === source),
      ),
    ),
    line(`all ${cited.length} sources`, rows),
  ].join('\n');
}

describe('the tables together', () => {
  it('hold at least 150 rows of at least 12 sources', () => {
    expect(rows.length).toBeGreaterThanOrEqual(150);
    expect(new Set(rows.map(({ source }) => source)).size).toBeGreaterThanOrEqual(12);
  });

  it('are counted rightly in the README', () => expect(readme).toContain(summary()));

  it('are each described in the README', () => {
    for (const name of tableNames()) expect(readme).toContain(`\`${name}\``);
  });
});

describe('a tolerance', () => {
  const row = (published: string, tolerance: string) => allowed({ ...rows[0], published, tolerance });

  it('takes half a unit of the last printed place', () => {
    expect(halfUnit('36.0')).toBeCloseTo(0.05, 12);
    expect(halfUnit('120')).toBe(0.5);
    expect(halfUnit('5.073e6')).toBeCloseTo(500, 9);
    expect(() => halfUnit('about 5')).toThrow(/no|not/);
  });

  it('adds its terms, and keeps bands and ranges as they are', () => {
    expect(row('2.00', 'print + 1 % + 0.005')[1]).toBeCloseTo(2.03, 9);
    const [low, high] = row('50', '-6 % to 9 %');
    expect(low).toBeCloseTo(47, 9);
    expect(high).toBeCloseTo(54.5, 9);
    expect(row('4.6 to 5.9', 'inside')[0]).toBeCloseTo(4.6, 9);
    expect(() => row('2.00', 'roughly')).toThrow(/term 'roughly'/);
    expect(() => row('some', 'print')).toThrow(/no printed number/);
  });
});
