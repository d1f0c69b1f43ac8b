/** In the section no part of the string hangs free: pipe from its spool, cable to the pump. */
import { describe, expect, test } from 'vitest';
import { lookOf } from '../../../src/draw/hatch/materials.ts';
import { planOf, sample } from '../../plans/build.ts';
import { extentOf, pathPoints } from '../parts/extent.ts';
import { find, number, picture } from '../pictures.ts';

const changed = (name: string, change: Record<string, unknown>) => planOf({ ...sample(name), ...change });

const pathOf = (scene: ReturnType<typeof picture>['scene'], path: string) =>
  pathPoints(find(scene.shapes, path).d ?? '');

describe.each(['tamarack-ridge', 'heron-flats', 'slate-hollow'] as const)('in the section of %s', (name) => {
  const { scene } = picture(planOf(sample(name)));

  test('the pipe begins at the spool that carries it', () => {
    const spool = find(scene.shapes, 'pitlessAdapter > spool');
    const [x, y] = pathOf(scene, 'string > dropPipe > wall')[0]!;
    expect(x).toBeGreaterThan(number(spool, 'x') - 1);
    expect(x).toBeLessThan(number(spool, 'x') + number(spool, 'width'));
    expect(y).toBeGreaterThan(number(spool, 'y'));
    expect(y).toBeLessThan(number(spool, 'y') + number(spool, 'height'));
  });

  test('the cable ends at the pump', () => {
    const pump = find(scene.shapes, 'string > pumpBody > outline');
    const points = pathOf(scene, 'string > cable');
    const [x, y] = points[points.length - 1]!;
    expect(x).toBeGreaterThan(number(pump, 'x') - 2);
    expect(x).toBeLessThan(number(pump, 'x') + number(pump, 'width') / 2);
    expect(y).toBeGreaterThanOrEqual(number(pump, 'y') - 1);
    expect(y).toBeLessThan(number(pump, 'y') + number(pump, 'height'));
  });
});

test.each(['light', 'contrast'] as const)('cable and pipe are two things in the %s theme', (theme) => {
  const { scene } = picture(planOf(sample('tamarack-ridge')), { theme });
  const cable = find(scene.shapes, 'string > cable');
  const wall = find(scene.shapes, 'string > dropPipe > wall');
  const lowest = (points: [number, number][]) => points.reduce((low, each) => (each[1] > low[1] ? each : low))[0];
  const between = lowest(pathPoints(wall.d ?? '')) - lowest(pathPoints(cable.d ?? ''));
  expect(between).toBeGreaterThan((number(wall, 'stroke-width') + number(cable, 'stroke-width')) / 2 + 0.5);
});

// A driven point has no drilled ring round its casing: the ground, and the water in it, begin at the steel.
test('the level in the ground meets a driven casing', () => {
  const { scene } = picture(
    changed('tamarack-ridge', {
      well: {
        depth: '15 ft',
        casing: { material: 'steel', size: '2 in', bottom: '12 ft', height: '18 in' },
        intake: { kind: 'driven point', diameter: '2 in', top: '12 ft', bottom: '15 ft' },
      },
      water: { staticLevel: '6 ft', pumping: { kind: 'test', flow: '5 gpm', drawdown: '2 ft', after: '1 h' } },
      pump: { setting: '10 ft', power: '1/2 hp', curve: { kind: 'generic', flow: '5 gpm' } },
      top: { kind: 'pitless', depth: '3 ft' },
    }),
  );
  const casing = extentOf(find(scene.shapes, 'casing > walls'));
  const nearest = Math.min(
    ...pathOf(scene, 'cone > cone/line')
      .map(([x]) => x - casing.right)
      .filter((off) => off > 0),
  );
  expect(nearest).toBeLessThan(4);
});

test('under the foot of a hole the ground is whole, in the details as in the section', () => {
  const { scene, solution } = picture(
    changed('tamarack-ridge', { pump: { ...(sample('tamarack-ridge')['pump'] as object), setting: '216 ft' } }),
  );
  const { material } = solution.facts.well.layers[solution.facts.well.layers.length - 1]!;
  expect(lookOf(material).ground).toBe('rock');
  const detail = scene.frames.find(({ view }) => view === 'B')!;
  const foot =
    detail.y +
    ((solution.facts.well.bottom - detail.topDepth) * detail.height) / (detail.bottomDepth - detail.topDepth);
  const drawing = scene.details.find(({ place }) => place.view === 'B')!.scene;
  const pump = scene.hits.find(({ view, kind }) => view === 'B' && kind === 'pump')!;
  const lines = pathPoints(find(drawing.shapes, `ground > layer/${material} > lines`).d ?? '');
  const under = lines.filter(([x, y]) => y > foot && x > pump.x && x < pump.x + pump.width);
  expect(under.length).toBeGreaterThan(0);
  const section = scene.frames.find(({ view }) => view === 'O')!;
  const k = section.height / (section.bottomDepth - section.topDepth);
  const below = section.y + (solution.facts.well.bottom - section.topDepth) * k;
  const last = solution.facts.well.layers.length;
  const axis = number(find(scene.shapes, 'string > pumpBody > outline'), 'x');
  const strokes = pathPoints(find(scene.shapes, `layer/${last - 1}/hatch`).d ?? '');
  expect(strokes.some(([x, y]) => y > below && x > axis - 14 && x < axis + 40)).toBe(true);
});
