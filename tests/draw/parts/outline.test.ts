import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { block, curveDown, straight, stroke, strokes } from '../../../src/draw/parts/outline.ts';
import { pathPoints } from './extent.ts';

const px = fc.double({ min: -2000, max: 2000, noNaN: true });
const point = fc.tuple(px, px);

describe('path text', () => {
  test('of straight lines passes through every corner, to a twentieth of a pixel', () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 2, maxLength: 30 }), (points) => {
        const read = pathPoints(straight(points, false));
        const last = read[read.length - 1]!;
        expect(Math.abs(last[0] - points[points.length - 1]![0])).toBeLessThanOrEqual(0.0501);
        expect(Math.abs(last[1] - points[points.length - 1]![1])).toBeLessThanOrEqual(0.0501);
      }),
      { seed: 3, numRuns: 200 },
    );
  });

  test('does not drift, however many steps it takes', () => {
    const points = Array.from({ length: 500 }, (_, i): [number, number] => [i * 0.333, i * 0.777]);
    const last = pathPoints(straight(points, false)).pop()!;
    expect(last[0]).toBeCloseTo(499 * 0.333, 1);
    expect(last[1]).toBeCloseTo(499 * 0.777, 1);
  });

  test('of a block has its four corners', () => {
    const read = pathPoints(block(10.04, 20, 30, 45.5));
    expect(Math.min(...read.map(([x]) => x))).toBeCloseTo(10, 6);
    expect(Math.max(...read.map(([, y]) => y))).toBeCloseTo(45.5, 6);
  });

  test('writes tenths without a leading zero and joins what a minus sign separates', () => {
    expect(stroke(0.5, -0.5, 1.2, -1.5)).toBe('M.5-.5l.7-1');
  });

  test('of repeated strokes starts each where it is asked', () => {
    const read = pathPoints(
      strokes(
        [
          [0, 0],
          [10, 0],
          [0, 10],
        ],
        3,
        -2,
      ),
    );
    expect(read).toEqual([
      [0, 0],
      [3, -2],
      [10, 0],
      [13, -2],
      [0, 10],
      [3, 8],
    ]);
  });

  // A cubic's slope at the joints and values at both ends: the smoothstep 3t^2 - 2t^3 is a cubic, so one piece is exact.
  test('of a curve follows a cubic exactly', () => {
    const ease = (y: number): number => 100 * (3 * (y / 200) ** 2 - 2 * (y / 200) ** 3);
    for (const [x, y] of pathPoints(curveDown(ease, 0, 200, 1))) expect(Math.abs(x - ease(y))).toBeLessThan(0.3);
  });
});
