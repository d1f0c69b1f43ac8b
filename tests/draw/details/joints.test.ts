import { describe, expect, test } from 'vitest';
import { drawLens } from '../../../src/draw/details/lens.ts';
import { drawPumpEnd } from '../../../src/draw/details/pumpEnd.ts';
import { drawWellTop } from '../../../src/draw/details/wellTop.ts';
import { stringAxisOf } from '../../../src/draw/parts/stringAxis.ts';
import type { DetailScene } from '../../../src/draw/view.ts';
import { extentOf, find, pathPoints } from '../parts/extent.ts';
import { frame, well } from './wells.ts';

const foot = 0.3048;
const inch = 0.0254;

const strapsOf = ({ hits }: DetailScene) =>
  hits
    .filter(({ kind }) => kind === 'tie' || kind === 'insertFitting')
    .map(({ y, height }) => ({ top: y, bottom: y + height }));

const top = drawWellTop(well('tamarack-ridge'), frame('A'));
const end = drawPumpEnd(well('tamarack-ridge'), frame('B'));

describe('the drop pipe', () => {
  test('ends at the pump where the shoulder of the insert fitting begins', () => {
    const pipe = extentOf(find(end.shapes, 'dropPipe', 'wall'));
    const shoulder = extentOf(find(end.shapes, 'insertFitting/pump', 'hexagon'));
    expect(pipe.bottom).toBeCloseTo(shoulder.top, 0);
  });

  test('begins at the top where the shoulder of the upper fitting ends', () => {
    const pipe = extentOf(find(top.shapes, 'dropPipe', 'wall'));
    const shoulder = extentOf(find(top.shapes, 'insertFitting/top', 'hexagon'));
    expect(pipe.top).toBeCloseTo(shoulder.bottom, 0);
  });

  // Common practice, no source: the spool hugs the wall, so the pipe hangs 1 to 2 in off it and drifts to the middle.
  test('hangs 1 to 2 in off the adapter’s wall and in the middle lower down', () => {
    const solution = well('tamarack-ridge');
    const axis = stringAxisOf(solution);
    const adapter = solution.parts.find(({ kind }) => kind === 'pitlessAdapter')!;
    const pipeRadius = solution.facts.dropPipe.outsideDiameter / 2;
    const gap = solution.facts.well.casings[0]!.insideDiameter / 2 - (axis.pipe(adapter.bottom) + pipeRadius);
    expect(gap).toBeGreaterThanOrEqual(1 * inch);
    expect(gap).toBeLessThanOrEqual(2 * inch);
    expect(axis.pipe(60 * foot)).toBe(0);
  });

  test('drifts one way only, and the cable keeps to the far side of it', () => {
    const axis = stringAxisOf(well('tamarack-ridge'));
    for (let depth = 6.3 * foot; depth < 170 * foot; depth += 0.5 * foot) {
      expect(axis.pipe(depth + 0.5 * foot)).toBeLessThanOrEqual(axis.pipe(depth) + 1e-12);
      expect(axis.cable(depth)).toBeLessThan(axis.pipe(depth));
    }
  });
});

describe('clamps', () => {
  test('sit over the barb at true proportion', () => {
    const scene = drawLens(well('tamarack-ridge'), 177.9 * foot, frame('C'));
    const barb = extentOf(find(scene.shapes, 'insertFitting/pump', 'barb'));
    for (const key of ['clamp/pump/1', 'clamp/pump/2']) {
      const clamp = extentOf(find(scene.shapes, key, 'slot'));
      expect(clamp.top).toBeGreaterThanOrEqual(barb.top - 2);
      expect(clamp.bottom).toBeLessThanOrEqual(barb.bottom + 2);
    }
  });

  test('too thin to be told apart they are spread about the middle of the pair', () => {
    const solution = well('tamarack-ridge');
    const pair = solution.parts.filter(({ key }) => key.startsWith('clamp/pump/'));
    const middle =
      72 +
      ((Math.min(...pair.map((each) => each.top)) + Math.max(...pair.map((each) => each.bottom))) / 2 - end.topDepth) *
        end.k;
    const slots = pair.map(({ key }) => extentOf(find(end.shapes, key, 'slot')));
    const drawn = (Math.min(...slots.map((each) => each.top)) + Math.max(...slots.map((each) => each.bottom))) / 2;
    expect(Math.abs(drawn - middle)).toBeLessThanOrEqual(0.5);
  });

  test('have their screws on opposite sides', () => {
    const pipe = extentOf(find(end.shapes, 'dropPipe', 'wall'));
    const middle = (pipe.left + pipe.right) / 2;
    const sides = ['clamp/pump/1', 'clamp/pump/2'].map((key) =>
      Math.sign(extentOf(find(end.shapes, key, 'slot')).left - middle),
    );
    expect(sides[0]! * sides[1]!).toBe(-1);
  });
});

describe('the rope', () => {
  const ropeTop = (tied: string) =>
    extentOf(find(drawWellTop(well('tamarack-ridge', { 'rope.tied': tied }), frame('A')).shapes, 'rope', 'rope')).top;
  const cap = extentOf(find(top.shapes, 'cap', 'dome'));

  test('through the cap comes out over it and is held by a knot', () => {
    expect(ropeTop('through cap')).toBeLessThan(cap.top - 2);
    const scene = drawWellTop(well('tamarack-ridge', { 'rope.tied': 'through cap' }), frame('A'));
    expect(extentOf(find(scene.shapes, 'rope', 'stopper')).bottom).toBeLessThanOrEqual(cap.top);
  });

  test('tied under the cap reaches it, on a hook ends below it', () => {
    expect(ropeTop('cap')).toBeLessThanOrEqual(cap.bottom + 1);
    expect(ropeTop('casing hook')).toBeGreaterThan(cap.bottom);
  });
});

describe('labels point at what they name', () => {
  const dotsOf = (scene: typeof top) => pathPoints(find(scene.shapes, 'leaders', 'dots').d ?? '');

  test('the drop pipe’s at no tie and no fitting', () => {
    for (const changes of [{}, { 'string.torqueArrestor': 'none' }, { 'string.checkValves': [] }]) {
      const scene = drawPumpEnd(well('tamarack-ridge', changes), frame('B'));
      const pipe = extentOf(find(scene.shapes, 'dropPipe', 'wall'));
      const straps = strapsOf(scene);
      const middle = (pipe.left + pipe.right) / 2;
      const dots = dotsOf(scene).filter(([x]) => Math.abs(x - middle) < 2);
      expect(straps.length).toBeGreaterThan(0);
      for (const [, y] of dots) for (const strap of straps) expect(y < strap.top || y > strap.bottom).toBe(true);
    }
  });

  test('the cable’s under a seal at the cable, where the pipe does not hide it', () => {
    const scene = drawWellTop(well('palo-amargo'), frame('A', { units: 'metric' }));
    const pipe = extentOf(find(scene.shapes, 'dropPipe', 'wall'));
    const axis = stringAxisOf(well('palo-amargo'));
    const cables = dotsOf(scene).filter(([x, y]) => {
      const depth = scene.topDepth + (y - frame('A').y) / scene.k;
      return Math.abs(x - ((pipe.left + pipe.right) / 2 + axis.cable(depth) * scene.k * scene.widthFactor)) < 1.5;
    });
    expect(cables.some(([x]) => x > pipe.right)).toBe(true);
  });

  test('a liner, a sump and blank pipe are not called the casing', () => {
    const words = (shapes: Parameters<typeof find>[0]) => find(shapes, 'labels', 'casing').text;
    const lined = well('tamarack-ridge', {
      'well.casings': [
        { material: 'steel', size: '6 in', bottom: '90 ft', height: '16 in' },
        { material: 'PVC', size: '4 in', top: '80 ft', bottom: '215 ft' },
      ],
    });
    expect(words(drawPumpEnd(lined, frame('B')).shapes)).toBe('Liner, 4 in PVC');
    expect(words(drawWellTop(lined, frame('A')).shapes)).toBe('Casing, 6 in steel');
    expect(words(drawLens(well('heron-flats'), 37.3, frame('C')).shapes)).toBe('Sump');
  });
});

test('the arms of the torque arrestor touch the bore on both sides', () => {
  for (const name of ['tamarack-ridge', 'heron-flats'] as const) {
    const solution = well(name);
    const scene = drawPumpEnd(solution, frame('B'));
    const arrestor = solution.parts.find(({ kind }) => kind === 'torqueArrestor')!;
    const arms = extentOf(find(scene.shapes, 'torqueArrestor', 'arms'));
    expect((arms.right - arms.left) / 2).toBeCloseTo(arrestor.radius * scene.k * scene.widthFactor, 0);
  }
});

test('the arrow of the check valve points the way the plan says', () => {
  const tip = (arrow: string): number => {
    const scene = drawPumpEnd(well('tamarack-ridge', { 'string.arrow': arrow }), frame('B'));
    const d = String(find(scene.shapes, 'checkValve', 'arrow').d);
    const extent = extentOf(find(scene.shapes, 'checkValve', 'arrow'));
    // The outline begins at the tip.
    return Number(/M-?[\d.]+ ([\d.]+)/.exec(d)![1]) - (extent.top + extent.bottom) / 2;
  };
  expect(tip('up')).toBeLessThan(0);
  expect(tip('down')).toBeGreaterThan(0);
});

test('the splice shows one tube for each conductor, staggered', () => {
  const tubes = String(find(end.shapes, 'splice', 'tubes').d)
    .match(/M-?[\d.]+ [\d.]+/g)!
    .map((start) => Number(start.split(' ')[1]));
  expect(tubes).toHaveLength(4);
  for (let i = 1; i < tubes.length; i++) expect(tubes[i]).toBeGreaterThan(tubes[i - 1]!);
});

test('a metal casing has its bond, a plastic one has none to draw', () => {
  expect(() => find(top.shapes, 'bond')).not.toThrow();
  const plastic = drawWellTop(well('heron-flats'), frame('A'));
  expect(() => find(plastic.shapes, 'bond')).toThrow();
});
