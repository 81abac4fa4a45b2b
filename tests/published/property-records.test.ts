// Every physical number of the engine's materials is a record with a source, a unit and an uncertainty; what is from memory
// stays marked so. The counts change only together with the reason for it.
import { describe, expect, it } from 'vitest';
import {
  type Limit,
  type Metal,
  metals,
  type Plastic,
  type Property,
  plastics,
  sources,
  tin,
  tinnedCopper,
  touchLimit,
} from '#engine';

const materials: readonly (Metal | Plastic)[] = [
  ...Object.values(metals),
  tin,
  tinnedCopper,
  ...Object.values(plastics),
];

function isProperty(value: unknown): value is Property {
  return typeof value === 'object' && value !== null && 'value' in value && 'confidence' in value;
}

/** Every property below a material, ageing data included, with its path. */
function propertiesOf(of: object, path: string): [string, Property][] {
  return Object.entries(of).flatMap(([key, value]): [string, Property][] => {
    const at = `${path}.${key}`;
    if (isProperty(value)) return [[at, value]];
    return value && typeof value === 'object' && !Array.isArray(value) ? propertiesOf(value, at) : [];
  });
}

const properties = materials.flatMap((material) => propertiesOf(material, material.id));
const limits: readonly Limit[] = [touchLimit, ...Object.values(plastics).flatMap((plastic: Plastic) => plastic.limits)];

function counts(records: readonly { confidence: string }[]): Record<string, number> {
  const found: Record<string, number> = {};
  for (const { confidence } of records) found[confidence] = (found[confidence] ?? 0) + 1;
  return found;
}

describe('property records', () => {
  it.each(properties)('%s has a value, a unit, an uncertainty and a source', (_, { value, unit, u, source }) => {
    expect(Number.isFinite(value)).toBe(true);
    expect(unit).not.toBe('');
    expect(u).toBeGreaterThanOrEqual(0);
    expect(Object.keys(sources)).toContain(source);
  });

  it('says of every limit its test, its duration and its source, low end first', () => {
    for (const limit of limits) {
      expect(limit.low).toBeLessThanOrEqual(limit.high);
      expect(limit.test && limit.duration && limit.name).not.toBe('');
      expect(Object.keys(sources)).toContain(limit.source);
    }
  });

  it('keeps its marks of how sure each value is', () => {
    expect(counts(properties.map(([, property]) => property))).toMatchInlineSnapshot(`
      {
        "computed": 19,
        "from memory": 65,
        "our choice": 4,
        "seen": 41,
      }
    `);
    expect(counts(limits)).toMatchInlineSnapshot(`
      {
        "from memory": 12,
        "seen": 14,
      }
    `);
  });

  it('calls nothing seen in a source of our own', () => {
    for (const [path, { source, confidence }] of properties)
      if (source === 'own') expect([path, confidence]).not.toEqual([path, 'seen']);
  });
});
