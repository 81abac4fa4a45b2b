import { describe, expect, it } from 'vitest';
import { inSize, markedSize } from '#engine/cable/in-size.ts';
import { areaNeighbours, type TradeSize, tradeSize, tradeSizes } from '#engine/conductor/area-scale.ts';
import { cast } from '#engine/examples/cast.ts';

const size = (system: 'mm2' | 'AWG', of: number) => tradeSize(system, of) as TradeSize;

describe('the sizes of both systems on one scale of area', () => {
  it('stand thin to thick, each once', () => {
    const areas = tradeSizes.map(({ area }) => area);
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
    expect(new Set(tradeSizes.map(({ name }) => name)).size).toBe(tradeSizes.length);
  });

  it('have mm² areas as marked, and gauges whose area is a quarter six numbers up', () => {
    expect(size('mm2', 2.5).area).toBeCloseTo(2.5e-6, 15);
    expect(size('AWG', 10).area / size('AWG', 16).area).toBeCloseTo(92 ** (12 / 39), 12);
  });

  it.each([
    ['mm2', 1.5, '16 AWG', '14 AWG', '16 AWG'],
    ['mm2', 4, '12 AWG', '10 AWG', '12 AWG'],
    ['AWG', 14, '1.5 mm²', '2.5 mm²', '2.5 mm²'],
    ['AWG', 10, '4 mm²', '6 mm²', '6 mm²'],
  ] as const)('%s %d lies between its neighbours of the other system', (system, of, below, above, nearest) => {
    const found = areaNeighbours(size(system, of));
    expect([found.below?.name, found.above?.name, found.nearest.name]).toEqual([below, above, nearest]);
  });

  it('have no neighbour beyond the ends of the tables', () => {
    expect(areaNeighbours(size('mm2', 35)).above).toBeNull();
    expect(areaNeighbours(size('AWG', 24)).below).toBeNull();
  });
});

describe('a cable in another size', () => {
  it('is the row of its own table', () => {
    expect(inSize(cast.C150, size('mm2', 4))).toEqual({ ...cast.C150, size_mm2: 4 });
    expect(inSize(cast.A14, size('AWG', 10))).toEqual({ ...cast.A14, size_AWG: 10 });
  });

  it('is none where its table has no such row', () => {
    expect(inSize(cast.C150, size('AWG', 14))).toBeNull();
    expect(inSize(cast.C150, size('mm2', 16))).toBeNull();
  });

  it('is itself in the size that it has', () => {
    expect(inSize(cast.SUS, size('mm2', 1.5))).toBe(cast.SUS);
    expect(markedSize(cast.SUS)?.name).toBe('1.5 mm²');
  });

  it('keeps the walls and the metal of a cable by own values, and none of its strands', () => {
    const { conductor, ...walls } = cast.SUS;
    expect(inSize(cast.SUS, size('mm2', 2.5))).toEqual({
      ...walls,
      conductor: { metal: conductor.metal, size_mm2: 2.5 },
    });
  });
});
