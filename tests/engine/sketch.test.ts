import { curveMonotoneX, line } from 'd3-shape';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { castScenario, curveFacts, predict, type SketchKnot, sketchAt, sketchFacts, timeToShare } from '#engine';

const minutes = (values: readonly number[]): SketchKnot[] => values.map((value, i) => ({ t: 60 * i, value }));
const sketches = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 900 }), fc.double({ min: 0, max: 400, noNaN: true })), {
    minLength: 2,
    maxLength: 9,
  })
  .map((steps) => {
    const times = steps.map((_, i) => steps.slice(1, i + 1).reduce((sum, [step]) => sum + step, 0));
    return steps.map(([, value], i) => ({ t: times[i] as number, value }));
  });

describe('a curve through knots', () => {
  it('goes through every knot and is held at both ends', () => {
    fc.assert(
      fc.property(sketches, (knots) => {
        for (const { t, value } of knots) expect(sketchAt(knots, t)).toBeCloseTo(value, 6);
        expect(sketchAt(knots, -5)).toBe(knots[0]?.value);
        expect(sketchAt(knots, 1e6)).toBe(knots.at(-1)?.value);
      }),
    );
  });

  it('never overshoots two neighbouring knots', () => {
    fc.assert(
      fc.property(sketches, fc.double({ min: 0, max: 1, noNaN: true }), (knots, part) => {
        for (const [i, a] of knots.slice(0, -1).entries()) {
          const b = knots[i + 1] as SketchKnot;
          const value = sketchAt(knots, a.t + part * (b.t - a.t));
          expect(value).toBeGreaterThanOrEqual(Math.min(a.value, b.value) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(a.value, b.value) + 1e-9);
        }
      }),
    );
  });

  it('is the very curve that the pad draws', () => {
    const knots = [
      { t: 0, value: 20 },
      { t: 60, value: 45 },
      { t: 200, value: 70 },
      { t: 900, value: 80 },
      { t: 1800, value: 60 },
    ];
    const drawn = line<SketchKnot>(
      ({ t }) => t,
      ({ value }) => value,
    ).curve(curveMonotoneX)(knots);
    // Bézier pieces: at a half, y = (y0 + 3·y1 + 3·y2 + y3)/8 and x stands halfway
    const numbers = (drawn ?? '').match(/-?[\d.]+/g)?.map(Number) ?? [];
    for (let i = 0; i + 7 < numbers.length; i += 6) {
      const [x0 = 0, y0 = 0, , y1 = 0, , y2 = 0, x3 = 0, y3 = 0] = numbers.slice(i, i + 8);
      expect(sketchAt(knots, (x0 + x3) / 2)).toBeCloseTo((y0 + 3 * y1 + 3 * y2 + y3) / 8, 1);
    }
    expect(numbers.length).toBe(2 + 6 * (knots.length - 1));
  });
});

describe('the facts of a curve', () => {
  it('are those of the run they are read from', () => {
    const { curves } = predict(castScenario('C125', 20, 25)).run;
    const facts = curveFacts(curves.t, curves.conductor, 1800);
    expect(facts.start).toBe(curves.conductor[0]);
    expect(facts.end).toBeCloseTo(curves.conductor.at(-1) as number, 9);
    expect(facts.share).toBeCloseTo(timeToShare(curves, 0.63, facts.end) as number, 6);
  });

  it('end before the supply changes, not after', () => {
    const facts = curveFacts([0, 100, 100, 200], [5, 4, 0, 0], 100);
    expect(facts.end).toBe(4);
    expect(facts.minute).toBeCloseTo(4.4, 12);
  });

  it('have no time to a share where nothing changes, and the right one for a straight line', () => {
    expect(sketchFacts(minutes([300, 300, 300]), 120).share).toBeNull();
    expect(sketchFacts(minutes([300, 310, 320, 330]), 180).share).toBeCloseTo(0.63 * 180, 6);
    expect(sketchFacts(minutes([6, 5, 4, 3]), 180)).toMatchObject({ start: 6, minute: 5, end: 3 });
  });
});
