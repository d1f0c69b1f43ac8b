import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawLens } from '../../../src/draw/details/lens.ts';
import { drawPumpEnd } from '../../../src/draw/details/pumpEnd.ts';
import { drawWellTop } from '../../../src/draw/details/wellTop.ts';
import type { Shape } from '../../../src/draw/scene.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { solve } from '../../../src/model/solve.ts';
import type { Solution } from '../../../src/model/solution.ts';
import { pathPoints } from '../parts/extent.ts';
import { frame } from './wells.ts';

function solved(plan: unknown): Solution {
  const reading = readPlan(plan);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return solve(reading.plan);
}

/** Every number in every attribute is finite, and no path is empty of sense. */
function expectFinite(shapes: readonly Shape[]): void {
  for (const shape of shapes) {
    for (const [name, value] of Object.entries(shape.attrs)) {
      if (typeof value === 'number') expect(Number.isFinite(value), `${shape.key} ${name}`).toBe(true);
      else expect(value, `${shape.key} ${name}`).not.toMatch(/NaN|Infinity|undefined/);
    }
    if (shape.tag === 'rect') {
      expect(Number(shape.attrs['width'] ?? 0)).toBeGreaterThanOrEqual(0);
      expect(Number(shape.attrs['height'] ?? 0)).toBeGreaterThanOrEqual(0);
    }
    expectFinite(shape.children ?? []);
  }
}

const bare = (intake: object, casing: object, depth: string, setting: string, top: object): object => ({
  format: 'wellcut-plan/1',
  title: 'An invented well',
  units: 'us',
  well: { depth, casing, intake },
  water: { staticLevel: '4 ft' },
  house: { demand: '3 gpm' },
  top,
  pump: { setting, curve: { kind: 'generic', flow: '5 gpm' } },
  dropPipe: { material: 'PE', size: '1 in', rating: '160 psi' },
  wire: { size: '12 AWG' },
});

describe('wells at the ends of the range', () => {
  const wells: readonly (readonly [string, object])[] = [
    [
      'a driven point of 12 ft',
      bare(
        { kind: 'driven point', top: '9 ft', bottom: '12 ft' },
        { material: 'steel', size: '2 in', bottom: '9 ft' },
        '12 ft',
        '8 ft',
        { kind: 'seal' },
      ),
    ],
    [
      'a dug well of 25 ft, a yard wide',
      bare(
        { kind: 'dug', diameter: '36 in' },
        { material: 'concrete', size: '36 in', insideDiameter: '36 in', bottom: '25 ft' },
        '25 ft',
        '22 ft',
        { kind: 'pitless', depth: '5 ft' },
      ),
    ],
    [
      'a rock well of 1,000 ft',
      bare(
        { kind: 'open hole', diameter: '6 in' },
        { material: 'steel', size: '6 in', bottom: '60 ft' },
        '1000 ft',
        '960 ft',
        { kind: 'pitless', depth: '5 ft' },
      ),
    ],
    [
      'a casing whose end nobody knows',
      bare({ kind: 'open hole' }, { material: 'steel', size: '6 in' }, '300 ft', '200 ft', {
        kind: 'pitless',
        depth: '5 ft',
      }),
    ],
  ];
  test.each(wells)('%s is drawn', (_, plan) => {
    const solution = solved(plan);
    for (const width of [240, 345, 700]) {
      const look = { width, height: width * 1.1 };
      for (const scene of [
        drawWellTop(solution, frame('A', look)),
        drawPumpEnd(solution, frame('B', look)),
        drawLens(solution, 5, frame('C', look)),
      ]) {
        expectFinite(scene.shapes);
        expect(scene.widthFactor).toBeGreaterThan(0);
        expect(scene.shapes.length).toBeGreaterThan(4);
      }
    }
  });
});

describe('any rock well', () => {
  const feet = (min: number, max: number): fc.Arbitrary<number> =>
    fc.double({ min, max, noNaN: true }).map((value) => Math.round(value * 10) / 10);
  const plans = fc
    .record({
      depth: feet(60, 1000),
      share: fc.double({ min: 0.1, max: 0.99, noNaN: true }),
      pitless: feet(0.5, 14),
      frost: feet(0, 9),
      casing: feet(18, 200),
      height: feet(0.1, 4),
      arrestor: feet(0.5, 6),
      splice: feet(0.5, 12),
      size: fc.constantFrom('4 in', '5 in', '6 in', '8 in'),
      width: fc.integer({ min: 240, max: 720 }),
      tall: fc.integer({ min: 260, max: 800 }),
    })
    .map(({ depth, share, pitless, frost, casing, height, arrestor, splice, size, width, tall }) => ({
      look: { width, height: tall },
      plan: {
        ...bare(
          { kind: 'open hole', diameter: size },
          { material: 'steel', size, bottom: `${Math.min(casing, depth - 20)} ft`, height: `${height} ft` },
          `${depth} ft`,
          `${Math.round(depth * share)} ft`,
          { kind: 'pitless', depth: `${pitless} ft` },
        ),
        site: { frostDepth: `${frost} ft`, frostFrom: 'local code' },
        string: { checkValves: ['0 ft'], torqueArrestor: `${arrestor} ft`, splices: [`${splice} ft`] },
      },
    }));

  test('gives finite shapes, labels inside the frame, and marks where the frame is', () => {
    fc.assert(
      fc.property(plans, ({ plan, look }) => {
        const reading = readPlan(plan);
        fc.pre(reading.ok);
        if (!reading.ok) return;
        const solution = solve(reading.plan);
        for (const [view, draw] of [
          ['A', drawWellTop],
          ['B', drawPumpEnd],
        ] as const) {
          const box = frame(view, look);
          const scene = draw(solution, box);
          expectFinite(scene.shapes);
          const boxes = scene.shapes.find(({ key }) => key === 'boxes')?.children ?? [];
          for (const shape of boxes) {
            for (const [x, y] of pathPoints(String(shape.attrs['d']))) {
              expect(x).toBeGreaterThan(box.x);
              expect(x).toBeLessThan(box.x + box.width);
              expect(y).toBeGreaterThanOrEqual(box.y);
              expect(y).toBeLessThanOrEqual(box.y + box.height);
            }
          }
          for (const mark of scene.marks) {
            expect(mark.x).toBeGreaterThan(box.x);
            expect(mark.x).toBeLessThan(box.x + box.width);
            expect(mark.y).toBeGreaterThan(box.y);
            expect(mark.y).toBeLessThan(box.y + box.height);
          }
        }
      }),
      { seed: 7, numRuns: 150 },
    );
  });
});
