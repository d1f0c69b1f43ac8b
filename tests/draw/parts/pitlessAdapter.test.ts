import { describe, expect, test } from 'vitest';
import { drawLens } from '../../../src/draw/details/lens.ts';
import { drawWellTop } from '../../../src/draw/details/wellTop.ts';
import { THEMES } from '../../../src/draw/theme.ts';
import { frame, well, type Well } from '../details/wells.ts';
import { extentOf, find, pathPoints, type Extent } from './extent.ts';

const foot = 0.3048;
const inch = 0.0254;
const fourInch = {
  'well.casing': { material: 'PVC', size: '4 in', bottom: '90 ft', height: '16 in' },
  'well.intake.diameter': '4 in',
};
const steel = { dropPipe: { material: 'galvanized steel', size: '1 in' } };

const of = (name: Well, changes: Readonly<Record<string, unknown>>, view: 'large' | 'small' | 'close') => {
  const solution = well(name, changes);
  return view === 'close'
    ? drawLens(solution, 6 * foot, frame('C', { width: 760, height: 800 }))
    : drawWellTop(solution, frame('A', view === 'large' ? { width: 760, height: 800 } : {}));
};

describe.each([
  ['in a 6 in steel casing, large', {}, 'large'],
  ['in a 6 in steel casing, small', {}, 'small'],
  ['in a 4 in PVC casing', fourInch, 'large'],
  ['over steel pipe', steel, 'large'],
  ['in the close-up', {}, 'close'],
] as const)('a pitless adapter %s', (_, changes, view) => {
  const scene = of('tamarack-ridge', changes, view);
  const piece = (key: string): Extent => extentOf(find(scene.shapes, 'pitlessAdapter', key));
  const solution = well('tamarack-ridge', changes);
  const casing = solution.facts.well.casings[0]!;
  const across = scene.k * scene.widthFactor;
  const hole = piece('hole');
  const body = piece('body');
  const slidingHalf = piece('slidingHalf');

  test('goes through a hole that is seen to cut the wall, wider than the neck', () => {
    expect(hole.right - hole.left).toBeGreaterThan(((casing.outsideDiameter - casing.insideDiameter) / 2) * across);
    const [first, ...rest] = neckOf(scene.shapes, hole);
    expect(first).toBeDefined();
    for (const y of [first!, ...rest]) {
      expect(y).toBeGreaterThan(hole.top + 1);
      expect(y).toBeLessThan(hole.bottom - 1);
    }
  });

  test('is fixed by a nut outside, with a gasket inside and one outside the wall', () => {
    const nut = piece('nut');
    expect(nut.left).toBeGreaterThanOrEqual(hole.right - 1);
    expect(body.left).toBeLessThan(hole.left);
    expect(body.right).toBeGreaterThan(nut.right);
    const gaskets = piece('gaskets');
    expect(gaskets.left).toBeLessThan(hole.left);
    expect(gaskets.right).toBeGreaterThan(hole.right);
    expect(gaskets.right).toBeLessThanOrEqual(nut.left + 0.1);
  });

  test('holds the sliding half by a tongue that stands down in the body’s slot', () => {
    // The lip rises between the sliding half and the tongue, and the plate stands behind it.
    const tongue = pathPoints(find(scene.shapes, 'pitlessAdapter', 'slidingHalf').d!).filter(([x]) => x > body.left);
    const slot = pathPoints(find(scene.shapes, 'pitlessAdapter', 'body').d!);
    const foot = Math.max(...tongue.filter(([x]) => x === slidingHalf.right).map(([, y]) => y));
    const lipTop = Math.min(...slot.filter(([x]) => x < slidingHalf.right - 2).map(([, y]) => y));
    expect(foot - lipTop).toBeGreaterThan(3);
    expect(body.top).toBeLessThan(foot);
    const floor = slot.filter(([x, y]) => x <= slidingHalf.right && y > lipTop + 1).map(([, y]) => y);
    expect(Math.min(...floor.map((y) => Math.abs(y - foot)))).toBeLessThan(1.5);
    // It can be lifted straight out: nothing of the body stands over it.
    expect(Math.min(...tongue.map(([, y]) => y))).toBeLessThan(body.top + 0.1);
  });

  test('seals the two halves with a ring where they meet', () => {
    const ring = piece('ring');
    expect(ring.left).toBeLessThan(body.left);
    expect(ring.right).toBeGreaterThan(body.left);
    const water = piece('waterway');
    expect(ring.top).toBeLessThan(water.top);
  });

  test('takes the lift-out pipe in a tapped hole, and nothing stands up from it', () => {
    const thread = piece('liftThread');
    expect(thread.top).toBeCloseTo(slidingHalf.top, 0);
    expect(thread.left).toBeGreaterThan(slidingHalf.left);
    expect(thread.right).toBeLessThan(slidingHalf.right);
    expect(piece('waterway').top).toBeGreaterThan(thread.bottom);
    const all = extentOf(find(scene.shapes, 'pitlessAdapter'));
    expect(all.top).toBeCloseTo(slidingHalf.top, 1);
  });

  test('leaves a wrench room beside the nut: the conduit passes it an inch and a half away', () => {
    const conduit = find(scene.shapes, 'conduit', 'edge');
    const wide = Number(conduit.attrs['stroke-width']);
    const nut = piece('nut');
    const beside = pathPoints(conduit.d!).filter(
      ([, y]) => y > extentOf(find(scene.shapes, 'conduit', 'nut')).bottom + 30,
    );
    expect(beside.length).toBeGreaterThan(0);
    for (const [x] of beside) expect(x - wide / 2 - nut.right).toBeGreaterThanOrEqual(1.5 * inch * across - 0.2);
  });
});

/** Heights of the body's outline where it is in the wall. */
function neckOf(shapes: Parameters<typeof find>[0], hole: Extent): number[] {
  const points = pathPoints(find(shapes, 'pitlessAdapter', 'body').d!);
  const end = Math.max(...points.map(([x]) => x));
  return points
    .filter(([x]) => x === end)
    .map(([, y]) => y)
    .filter((y) => y > hole.top - 30);
}

test.each(['light', 'dark', 'print'] as const)('its two halves have two tones in %s', (theme) => {
  const scene = drawWellTop(well('tamarack-ridge'), frame('A', { theme, ink: THEMES[theme] }));
  const fill = (key: string) => find(scene.shapes, 'pitlessAdapter', key).attrs['fill'];
  expect(fill('body')).not.toBe(fill('slidingHalf'));
});

test('both halves are named where there is room', () => {
  const scene = drawWellTop(well('tamarack-ridge'), frame('A', { width: 760, height: 800 }));
  const words = (key: string) => find(scene.shapes, 'labels', key).text;
  expect(words('pitlessAdapter')).toBe('Pitless adapter, body');
  expect(words('pitlessAdapter/slidingHalf')).toBe('Pitless sliding half');
});

test('the labels point at the half that they name', () => {
  const scene = drawWellTop(well('tamarack-ridge'), frame('A', { width: 760, height: 800 }));
  const dots = pathPoints(find(scene.shapes, 'leaders', 'dots').d ?? '');
  const plate = extentOf(find(scene.shapes, 'pitlessAdapter', 'bodyHatch'));
  const thread = extentOf(find(scene.shapes, 'pitlessAdapter', 'liftThread'));
  const water = extentOf(find(scene.shapes, 'pitlessAdapter', 'waterway'));
  expect(dots.some(([x, y]) => x > plate.left && x < plate.right && y > water.top && y < plate.bottom + 2)).toBe(true);
  expect(dots.some(([x, y]) => x > thread.left && x < thread.right && y > thread.bottom && y < water.top)).toBe(true);
});
