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

/** Attributes that are no finite number, and rectangles turned inside out. */
function faultsOf(shapes: readonly Shape[]): string[] {
  const faults: string[] = [];
  for (const { key, tag, attrs, children } of shapes) {
    for (const [name, value] of Object.entries(attrs)) {
      const wrong = typeof value === 'number' ? !Number.isFinite(value) : /NaN|Infinity|undefined/.test(value);
      if (wrong) faults.push(`${key} ${name}="${value}"`);
    }
    if (tag === 'rect' && (Number(attrs['width']) < 0 || Number(attrs['height']) < 0))
      faults.push(`${key} is inside out`);
    if (children !== undefined) faults.push(...faultsOf(children));
  }
  return faults;
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
        expect(faultsOf(scene.shapes)).toEqual([]);
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
          expect(faultsOf(scene.shapes)).toEqual([]);
          const boxes = scene.shapes.find(({ key }) => key === 'boxes')?.children ?? [];
          const inside = (x: number, y: number): boolean =>
            x > box.x && x < box.x + box.width && y >= box.y && y <= box.y + box.height;
          const corners = boxes.flatMap((shape) => pathPoints(shape.d ?? ''));
          expect(corners.filter(([x, y]) => !inside(x, y))).toEqual([]);
          expect(scene.marks.filter(({ x, y }) => !inside(x, y))).toEqual([]);
        }
      }),
      { seed: 7, numRuns: 100 },
    );
  });
});
