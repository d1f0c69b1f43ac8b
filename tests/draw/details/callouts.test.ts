import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawCallouts, layOut, leaderPoints } from '../../../src/draw/details/callouts.ts';
import type { Callout, Laid, Track } from '../../../src/draw/details/callouts.ts';
import { drawPumpEnd } from '../../../src/draw/details/pumpEnd.ts';
import { drawWellTop } from '../../../src/draw/details/wellTop.ts';
import { forgetful } from '../../../src/draw/memory.ts';
import { THEMES } from '../../../src/draw/theme.ts';
import { measureWith } from '../../../src/draw/type/measure.ts';
import { short } from '../../../src/words/en/short.ts';
import { extentOf, find, pathPoints } from '../parts/extent.ts';
import { frame, well, WELLS } from './wells.ts';

const HAND = { words: short, ink: THEMES.light, type: measureWith(1) };
const track: Track = { left: 840, right: 980, top: 78, bottom: 460, elbow: 822 };

const callout: fc.Arbitrary<Omit<Callout, 'key'>> = fc.record({
  x: fc.double({ min: 680, max: 818, noNaN: true }),
  y: fc.double({ min: 80, max: 458, noNaN: true }),
  name: fc.constant('Check valve'),
  note: fc.constantFrom('', 'spring type, arrow up'),
  weight: fc.double({ min: 0.5, max: 8, noNaN: true }),
});
const callouts = fc
  .array(callout, { minLength: 1, maxLength: 18 })
  .map((some) => some.map((each, i): Callout => ({ ...each, key: `part/${i}` })));

type Segment = readonly [number, number, number, number];
const segmentsOf = (laid: Laid): Segment[] => {
  const points = leaderPoints(laid, track);
  return points.slice(1).map((point, i): Segment => [points[i]![0], points[i]![1], point[0], point[1]]);
};

/** Do two segments cross at an inner point? By the signs of the four triangles they span. */
function cross([ax, ay, bx, by]: Segment, [cx, cy, dx, dy]: Segment): boolean {
  const side = (px: number, py: number, qx: number, qy: number, rx: number, ry: number): number =>
    Math.sign((qx - px) * (ry - py) - (qy - py) * (rx - px));
  return (
    side(ax, ay, bx, by, cx, cy) * side(ax, ay, bx, by, dx, dy) < 0 &&
    side(cx, cy, dx, dy, ax, ay) * side(cx, cy, dx, dy, bx, by) < 0
  );
}

describe('labels of any set of parts', () => {
  test('do not overlap and stay in the track', () => {
    fc.assert(
      fc.property(callouts, (some) => {
        const laid = layOut(some, track);
        for (let i = 0; i < laid.length; i++) {
          expect(laid[i]!.top).toBeGreaterThanOrEqual(track.top - 1e-6);
          expect(laid[i]!.bottom).toBeLessThanOrEqual(track.bottom + 1e-6);
          if (i > 0) expect(laid[i]!.top).toBeGreaterThanOrEqual(laid[i - 1]!.bottom);
        }
      }),
      { seed: 20, numRuns: 400 },
    );
  });

  test('have leaders that do not cross', () => {
    fc.assert(
      fc.property(callouts, (some) => {
        const segments = layOut(some, track).map(segmentsOf);
        segments.forEach((mine, i) =>
          segments
            .slice(i + 1)
            .forEach((others) =>
              mine.forEach((one) => others.forEach((other) => expect(cross(one, other)).toBe(false))),
            ),
        );
      }),
      { seed: 21, numRuns: 400 },
    );
  });

  test('give way by weight: the heaviest is never the one left out', () => {
    fc.assert(
      fc.property(callouts, (some) => {
        const heaviest = some.reduce((most, each) => (each.weight > most.weight ? each : most));
        expect(layOut(some, track).map(({ callout: { key } }) => key)).toContain(heaviest.key);
      }),
      { seed: 22, numRuns: 200 },
    );
  });
});

describe('labels as drawn', () => {
  for (const name of WELLS) {
    test(`${name}: boxes keep clear of one another`, () => {
      const solution = well(name);
      for (const scene of [drawWellTop(solution, frame('A')), drawPumpEnd(solution, frame('B'))]) {
        const boxes = (find(scene.shapes, 'boxes').children ?? [])
          .flatMap((shape) =>
            (shape.d ?? '')
              .split('z')
              .filter((d) => d !== '')
              .map((d) => {
                const ys = pathPoints(d).map(([, y]) => y);
                return { top: Math.min(...ys), bottom: Math.max(...ys) };
              }),
          )
          .sort((a, b) => a.top - b.top);
        expect(boxes.length).toBeGreaterThan(4);
        for (let i = 1; i < boxes.length; i++) expect(boxes[i]!.top).toBeGreaterThanOrEqual(boxes[i - 1]!.bottom);
      }
    });
  }

  test('a part in danger bears the number of its finding at the part and in its label', () => {
    const solution = well('tamarack-ridge', { 'top.depth': '3 ft' });
    const scene = drawWellTop(solution, frame('A'));
    const number = solution.findings.findIndex(({ part }) => part === 'pitlessAdapter') + 1;
    expect(solution.findings[number - 1]!.severity).toBe('danger');
    const mark = scene.marks.find((each) => each.number === number)!;
    const adapter = extentOf(find(scene.shapes, 'pitlessAdapter'));
    expect(mark.y).toBeGreaterThan(adapter.top - 12);
    expect(mark.y).toBeLessThan(adapter.bottom + 12);
    expect(find(scene.shapes, 'pitlessAdapter/sign', 'number').text).toBe(String(number));
  });
});

test('what finds no room is counted and named below, and nothing lies over that line', () => {
  const small: Track = { left: 100, right: 260, top: 0, bottom: 100, elbow: 80 };
  const many = Array.from({ length: 9 }, (_, i) => ({
    key: `part${i}`,
    x: 20,
    y: 10 * i,
    name: `Part ${i}`,
    note: 'a note',
    weight: i === 0 ? 9 : 1,
  }));
  const laid = layOut(many, small);
  expect(laid.length).toBeLessThan(many.length);
  expect(laid.map(({ callout }) => callout.key)).toContain('part0');
  const more = drawCallouts({ callouts: many, laid: layOut(many, small) }, small, HAND, forgetful).find(
    ({ key }) => key === 'more',
  );
  const words = more?.children?.find(({ key }) => key === 'words');
  expect(words?.text).toMatch(new RegExp(`^${many.length - laid.length} more: part `));
  for (const { bottom } of laid) expect(bottom).toBeLessThanOrEqual(small.bottom - 19);
});
