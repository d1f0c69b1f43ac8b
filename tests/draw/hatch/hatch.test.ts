import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clipSegment, type Box } from '../../../src/draw/hatch/clip.ts';
import { lookOf } from '../../../src/draw/hatch/materials.ts';
import { hatch, type PatternName } from '../../../src/draw/hatch/patterns.ts';
import { PATTERN_NAMES } from './names.ts';

/** Points that path text of lines, curves and relative steps visits, control points of curves included. */
function visited(d: string): [number, number][] {
  const points: [number, number][] = [];
  let x = 0;
  let y = 0;
  for (const [, command, rest] of d.matchAll(/([MmLlHhVvQqTtZz])([^MmLlHhVvQqTtZz]*)/g)) {
    const numbers = (rest ?? '').match(/-?\d*\.?\d+/g)?.map(Number) ?? [];
    const stride = { h: 1, v: 1, q: 4, t: 2 }[command!.toLowerCase()] ?? 2;
    for (let i = 0; i < numbers.length; i += stride) {
      const [a, b] = numbers.slice(i + Math.max(0, stride - 2), i + stride);
      if (command === 'M') [x, y] = [a!, b!];
      else if (command === 'h') x += a!;
      else if (command === 'v') y += a!;
      else [x, y] = [x + a!, y + b!];
      points.push([x, y]);
    }
  }
  return points;
}

const box: fc.Arbitrary<Box> = fc
  .record({
    left: fc.integer({ min: 0, max: 200 }),
    top: fc.integer({ min: 0, max: 600 }),
    width: fc.integer({ min: 1, max: 300 }),
    height: fc.integer({ min: 1, max: 400 }),
  })
  .map(({ left, top, width, height }) => ({ left, top, right: left + width, bottom: top + height }));

describe.each(PATTERN_NAMES)('pattern %s', (name) => {
  test('stays inside the layer', () => {
    fc.assert(
      fc.property(box, (each) => {
        // Asked once for all points: a pattern has thousands.
        const outside = visited(hatch(name, [each]).d).filter(
          ([x, y]) => x < each.left - 0.11 || x > each.right + 0.11 || y < each.top - 0.11 || y > each.bottom + 0.11,
        );
        expect(outside).toEqual([]);
      }),
      { seed: 3, numRuns: 120 },
    );
  });

  test('a section filled with it alone stays under 20 kB', () => {
    expect(
      hatch(name, [
        { left: 72, right: 222, top: 110, bottom: 934 },
        { left: 298, right: 434, top: 110, bottom: 934 },
      ]).d.length,
    ).toBeLessThan(20_000);
  });

  test('dragging its lower contact moves no symbol that stands clear of it', () => {
    const at = (bottom: number) =>
      visited(hatch(name, [{ left: 100, right: 300, top: 100, bottom }]).d).filter(([, y]) => y < 250);
    expect(at(300)).toEqual(at(340));
  });
});

test.each([
  ['Sand and gravel, water-bearing', 'sandAndGravel'],
  ['weathered shale', 'weatheredShale'],
  ['Weathered granite', 'weatheredRock'],
  ['weathered bedrock, broken', 'weatheredRock'],
  ['sandy clay', 'sandyClay'],
  ['clay with some sand', 'sandyClay'],
  ['soft gray clay', 'clay'],
  ['stony clay', 'till'],
  ['fine sand', 'fineSand'],
  ['coarse sand, water', 'coarseSand'],
  ['conglomerate', 'conglomerate'],
  ['Gray clay', 'clay'],
  ['boulder clay', 'till'],
  ['fractured limestone', 'limestone'],
  ['topsoil', 'soil'],
  ['pink granite', 'granite'],
])('a driller writing "%s" gets %s', (words, pattern) => {
  expect(lookOf(words).pattern).toBe(pattern);
});

test('a word nobody knows is drawn as unknown, not as something else', () => {
  expect(lookOf('zzz').pattern).toBe('unknown');
});

test('a segment is cut at the edges of its box', () => {
  const square: Box = { left: 0, top: 0, right: 10, bottom: 10 };
  expect(clipSegment([-5, 5, 15, 5], square)).toEqual([0, 5, 10, 5]);
  expect(clipSegment([0, -10, 20, 10], square)).toEqual([10, 0, 10, 0]);
  expect(clipSegment([-5, -1, 15, -1], square)).toBeNull();
});

/** What a pattern writes where colour is gone: its figures without their places, its dashes, and its measure of ink. */
function figures(name: PatternName): string {
  const { d, dashes = '' } = hatch(name, [{ left: 0, right: 300, top: 0, bottom: 300 }]);
  const steps = d
    .split(/(?=[Mm])/)
    .map((each) => each.replace(/^[Mm]-?[\d.]+[ -]?[\d.]+/, ''))
    .filter((each) => !dashes || /^h/.test(each));
  const kinds = dashes
    ? ''
    : [...new Set(steps.map((each) => each.replace(/h\d{3}/, 'long').replace(/\d+/g, '#')))].sort().join(' ');
  return `${dashes} ${kinds}`;
}

test('no two materials are drawn alike, so that they are told apart without colour', () => {
  const drawn = new Map(PATTERN_NAMES.map((name) => [name, figures(name)]));
  for (const a of PATTERN_NAMES)
    for (const b of PATTERN_NAMES) if (a < b) expect(drawn.get(a), `${a} and ${b}`).not.toBe(drawn.get(b));
});
