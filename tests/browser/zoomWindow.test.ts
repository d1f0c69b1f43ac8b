import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { broughtTo, pannedBy, pinched, shownOf, zoomedAbout } from '../../src/app/drawing/zoomWindow.ts';
import { LEAST_SPAN, type DepthSpan, type WindowRoom } from '../../src/draw/index.ts';

const room: WindowRoom = { whole: { topDepth: -0.6, bottomDepth: 70 }, least: LEAST_SPAN };

/** Any window that a well of this room may have, or none. */
const windows = fc.option(
  fc
    .tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0.02, max: 0.95, noNaN: true }))
    .map(([place, share]): DepthSpan => {
      const length = 70.6 * share;
      const topDepth = -0.6 + place * (70.6 - length);
      return { topDepth, bottomDepth: topDepth + length };
    }),
  { nil: null },
);
const lengthOf = ({ topDepth, bottomDepth }: DepthSpan): number => bottomDepth - topDepth;
const shareOf = ({ topDepth, bottomDepth }: DepthSpan, depth: number): number =>
  (depth - topDepth) / (bottomDepth - topDepth);

describe('zooming about a depth', () => {
  test('in keeps that depth under the pointer, to a thousandth of a pixel of a tall screen', () => {
    fc.assert(
      fc.property(
        windows,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 8, noNaN: true }),
        (window, place, times) => {
          const before = shownOf(window, room);
          const depth = before.topDepth + place * lengthOf(before);
          const after = shownOf(zoomedAbout(window, depth, times, room), room);
          expect(Math.abs(shareOf(after, depth) - place) * 2000).toBeLessThan(1e-3);
          expect(lengthOf(after)).toBeCloseTo(Math.max(LEAST_SPAN, lengthOf(before) / times), 4);
        },
      ),
      { seed: 17 },
    );
  });

  test('out stays in the well, and comes to the whole of it', () => {
    fc.assert(
      fc.property(
        windows,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (window, place, times) => {
          const before = shownOf(window, room);
          const next = zoomedAbout(window, before.topDepth + place * lengthOf(before), times, room);
          const after = shownOf(next, room);
          expect(after.topDepth).toBeGreaterThanOrEqual(room.whole.topDepth - 1e-9);
          expect(after.bottomDepth).toBeLessThanOrEqual(room.whole.bottomDepth + 1e-9);
          expect(next === null).toBe(lengthOf(before) / times >= 70.6 - 1e-5);
        },
      ),
      { seed: 18 },
    );
  });

  test('in and out again about one depth is where it began', () => {
    const window = { topDepth: 20, bottomDepth: 40 };
    const there = zoomedAbout(window, 31, 2, room);
    const back = zoomedAbout(there, 31, 0.5, room);
    expect(back?.topDepth).toBeCloseTo(20, 9);
    expect(back?.bottomDepth).toBeCloseTo(40, 9);
  });
});

describe('panning', () => {
  const window = { topDepth: 20, bottomDepth: 40 };

  test('keeps the length, and stops at both ends of the well', () => {
    expect(pannedBy(window, 5, room)).toEqual({ topDepth: 25, bottomDepth: 45 });
    expect(pannedBy(window, 500, room)).toEqual({ topDepth: 50, bottomDepth: 70 });
    expect(pannedBy(window, -500, room)?.topDepth).toBeCloseTo(-0.6, 9);
    const end = pannedBy(window, 500, room);
    expect(pannedBy(end, 1, room)).toEqual(end);
  });

  test('does nothing to a whole well', () => {
    expect(pannedBy(null, 5, room)).toBeNull();
    expect(broughtTo(null, 60, room)).toBeNull();
  });

  test('to a level brings it to the middle, or as near as the well goes', () => {
    expect(broughtTo(window, 55, room)).toEqual({ topDepth: 45, bottomDepth: 65 });
    expect(broughtTo(window, 69, room)).toEqual({ topDepth: 50, bottomDepth: 70 });
  });
});

describe('two fingers', () => {
  test('twice as far apart show half as much, with what was between them between them still', () => {
    const window = { topDepth: 20, bottomDepth: 40 };
    const next = pinched({ window, depth: 30, apart: 100 }, { share: 0.25, apart: 200 }, room);
    expect(lengthOf(next!)).toBeCloseTo(10, 9);
    expect(shareOf(next!, 30)).toBeCloseTo(0.25, 9);
  });

  test('that only move pan', () => {
    const window = { topDepth: 20, bottomDepth: 40 };
    const next = pinched({ window, depth: 30, apart: 100 }, { share: 0.7, apart: 100 }, room);
    expect(next?.topDepth).toBeCloseTo(16, 9);
    expect(next?.bottomDepth).toBeCloseTo(36, 9);
  });
});

test('a window that an edit left outside the well is brought back into it', () => {
  const shallow: WindowRoom = { whole: { topDepth: -0.6, bottomDepth: 30 }, least: LEAST_SPAN };
  expect(shownOf({ topDepth: 40, bottomDepth: 50 }, shallow)).toEqual({ topDepth: 20, bottomDepth: 30 });
  expect(shownOf({ topDepth: 10, bottomDepth: 60 }, shallow)).toEqual(shallow.whole);
});
