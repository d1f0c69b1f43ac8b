import { describe, expect, test } from 'vitest';
import { drawWellTop } from '../../../src/draw/details/wellTop.ts';
import { frame, well, yIn } from '../details/wells.ts';
import { extentOf, find, has, pathPoints } from './extent.ts';

const SEAL = { top: { kind: 'seal' } };
const fourInch = {
  'well.casing': { material: 'PVC', size: '4 in', bottom: '90 ft', height: '16 in' },
  'well.intake.diameter': '4 in',
};
const pvc = { dropPipe: { material: 'PVC', size: '1 in', ratio: 'schedule 80' } };
const LARGE = { width: 760, height: 800 };

describe.each([
  ['on a 6 in steel casing', SEAL, LARGE],
  ['in a small frame', SEAL, {}],
  ['on a 4 in PVC casing', { ...SEAL, ...fourInch }, LARGE],
  ['over PVC pipe', { ...SEAL, ...pvc }, LARGE],
])('a seal %s', (_, changes, size) => {
  const solution = well('tamarack-ridge', changes);
  const box = frame('A', size);
  const scene = drawWellTop(solution, box);
  const y = yIn(box, scene);
  const piece = (...keys: string[]) => extentOf(find(scene.shapes, ...keys));
  const part = (kind: string) => solution.parts.find((each) => each.kind === kind)!;

  test('has an eye under its lower plate, and the rope ends there: nothing pierces the casing', () => {
    const eye = piece('seal', 'eye');
    const rope = pathPoints(find(scene.shapes, 'rope', 'rope').d!);
    expect(eye.bottom).toBeGreaterThan(y(part('seal').bottom));
    const [x, top] = rope[0]!;
    expect(x).toBeGreaterThan(eye.left - 1);
    expect(x).toBeLessThan(eye.right + 1);
    expect(top).toBeGreaterThan(eye.top - 1);
    expect(top).toBeLessThan(eye.bottom + 1);
    expect(has(scene.shapes, 'hook')).toBe(false);
    const walls = pathPoints(find(scene.shapes, 'casing', 'walls').d!).map(([at]) => at);
    const inside = walls.filter((at) => at < eye.left).toSorted((a, b) => b - a)[0]!;
    for (const [at] of rope) expect(at).toBeGreaterThan(inside);
  });

  test('has a union beside the tee and a tap after it, both on the line', () => {
    const tee = piece('tee', 'branch');
    const union = piece('union', 'body');
    const tap = piece('tap', 'saddle');
    const wall = piece('buriedLine', 'wall');
    expect(union.left).toBeCloseTo(tee.right, 0);
    expect(tap.left).toBeCloseTo(union.right, 0);
    expect(wall.left).toBeGreaterThanOrEqual(tap.right - 0.1);
    for (const each of [union, tap]) {
      expect((each.top + each.bottom) / 2).toBeCloseTo((wall.top + wall.bottom) / 2, 0);
      expect(each.bottom - each.top).toBeGreaterThan(wall.bottom - wall.top);
    }
    // What leaves the tap falls clear of its own line's fittings: the spout opens downwards over the line.
    const spout = piece('tap', 'spout');
    expect(spout.bottom).toBeLessThan(wall.top);
    expect(piece('tap').top).toBeCloseTo(y(part('tap').top), 0);
  });

  test('rests its line on a support that stands on the ground, clear of the conduit', () => {
    const support = piece('support');
    const conduit = find(scene.shapes, 'conduit', 'edge');
    const wide = Number(conduit.attrs['stroke-width']);
    const plumb = pathPoints(conduit.d!).filter(([, at]) => at > y(0) - 5 && at < y(0) + 5);
    expect(support.bottom).toBeCloseTo(y(0), 0);
    // Its cradle reaches up round the line's underside.
    const line = piece('buriedLine', 'wall');
    expect(support.top).toBeLessThan(line.bottom);
    expect(support.top).toBeGreaterThan((line.top + line.bottom) / 2);
    for (const [x] of plumb) expect(support.left).toBeGreaterThan(x + wide / 2);
    expect(scene.hits.some(({ kind }) => kind === 'support')).toBe(true);
  });
});

test('a rope that is tied to nothing, or a well without one, has no eye drawn for it', () => {
  for (const tied of [{ 'rope.tied': 'loose' }, { rope: undefined }])
    expect(has(drawWellTop(well('tamarack-ridge', { ...SEAL, ...tied }), frame('A')).shapes, 'eyeShank')).toBe(false);
  expect(has(drawWellTop(well('tamarack-ridge', SEAL), frame('A')).shapes, 'eyeShank')).toBe(true);
});

test('tied to the seal it ends under the plate, led through it it comes out over it', () => {
  const box = frame('A');
  const ropeTop = (tied: string) => {
    const solution = well('tamarack-ridge', { ...SEAL, 'rope.tied': tied });
    const scene = drawWellTop(solution, box);
    const seal = solution.parts.find(({ kind }) => kind === 'seal')!;
    const y = yIn(box, scene);
    return { rope: extentOf(find(scene.shapes, 'rope', 'rope')).top, top: y(seal.top), bottom: y(seal.bottom) };
  };
  const on = ropeTop('cap');
  expect(on.rope).toBeCloseTo(on.bottom, 0);
  const through = ropeTop('through cap');
  expect(through.rope).toBeLessThan(through.top);
});

test('the labels name union, tap and support, and say that nobody asked for them', () => {
  const scene = drawWellTop(well('palo-amargo'), frame('A', { ...LARGE, units: 'metric' }));
  const words = (key: string) => find(scene.shapes, 'labels', key).text;
  expect([words('union'), words('tap'), words('support')]).toEqual(['Union', 'Sample tap', 'Pipe support']);
  expect(words('rope')).toBe('Rope on the seal’s eye');
});

test('a line that leaves in the ground needs no support', () => {
  const pit = well('tamarack-ridge', { ...SEAL, 'well.casing.height': '-3 ft' });
  expect(pit.parts.some(({ kind }) => kind === 'support')).toBe(false);
});
