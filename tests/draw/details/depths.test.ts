import { describe, expect, test } from 'vitest';
import { drawLens } from '../../../src/draw/details/lens.ts';
import { drawPumpEnd } from '../../../src/draw/details/pumpEnd.ts';
import { drawWellTop } from '../../../src/draw/details/wellTop.ts';
import { extentOf, find, has } from '../parts/extent.ts';
import { frame, well, WELLS, yIn } from './wells.ts';

const foot = 0.3048;
const inch = 0.0254;

describe('every part of the pump end stands at its depth, to half a pixel', () => {
  for (const name of WELLS) {
    const solution = well(name);
    const box = frame('B');
    const scene = drawPumpEnd(solution, box);
    const y = yIn(box, scene);
    const shown = solution.parts.filter(
      ({ kind, top, bottom }) =>
        ['motor', 'pump', 'nipple', 'checkValve', 'torqueArrestor', 'splice'].includes(kind) &&
        top > scene.topDepth &&
        bottom < scene.bottomDepth,
    );
    // The arrestor's arms, the valve's and the pump's bodies: what is added to them (ring, arrow, jackets) may stand out.
    const bodies: Readonly<Record<string, string>> = {
      motor: 'body',
      pump: 'shell',
      nipple: 'body',
      checkValve: 'body',
      torqueArrestor: 'arms',
      splice: 'lead',
    };
    test.each(shown.map((part) => [part.key, part] as const))(`${name}: %s`, (key, part) => {
      const body = bodies[part.kind] === 'lead' ? 'leadBlack' : (bodies[part.kind] ?? 'body');
      const extent = extentOf(find(scene.shapes, key, body));
      expect(Math.abs(extent.top - y(part.top))).toBeLessThanOrEqual(0.5);
      expect(Math.abs(extent.bottom - y(part.bottom))).toBeLessThanOrEqual(0.5);
    });
  }
});

describe('the outlet of the pitless adapter', () => {
  test.each(['3 ft', '6 ft', '9 ft'])('at %s has the top of its pipe at that depth', (depth) => {
    const solution = well('tamarack-ridge', { 'top.depth': depth });
    const box = frame('A');
    const scene = drawWellTop(solution, box);
    const wall = extentOf(find(scene.shapes, 'buriedLine', 'wall'));
    expect(wall.top).toBeCloseTo(yIn(box, scene)(Number.parseFloat(depth) * foot), 0);
  });
});

test('the frost line is drawn at the frost depth', () => {
  const box = frame('A');
  const scene = drawWellTop(well('tamarack-ridge'), box);
  const line = extentOf(find(scene.shapes, 'frost', 'line'));
  expect(Math.abs(line.top - yIn(box, scene)(48 * inch))).toBeLessThanOrEqual(0.5);
});

test('the clearance to frost is dimensioned from the frost line to the top of the outlet', () => {
  const box = frame('A');
  const scene = drawWellTop(well('tamarack-ridge'), box);
  const y = yIn(box, scene);
  const shaft = extentOf(find(scene.shapes, 'frostClearance', 'shaft'));
  expect(shaft.top).toBeCloseTo(y(48 * inch), 0);
  expect(shaft.bottom).toBeCloseTo(y(6 * foot), 0);
  expect(find(scene.shapes, 'frostClearance', 'figure').text).toBe('24 in');
});

test('a motor near the bottom has its clearance dimensioned, with the floor of the well in the frame', () => {
  const box = frame('B');
  const scene = drawPumpEnd(well('tamarack-ridge', { 'pump.setting': '214 ft' }), box);
  const y = yIn(box, scene);
  const shaft = extentOf(find(scene.shapes, 'bottomClearance', 'shaft'));
  expect(shaft.bottom).toBeCloseTo(y(220 * foot), 0);
  expect(find(scene.shapes, 'bottomClearance', 'figure').text).toBe('4.5 ft');
  expect(has(scene.shapes, 'break')).toBe(false);
});

test('a bottom out of the frame is told in words, over a break', () => {
  const scene = drawPumpEnd(well('tamarack-ridge'), frame('B'));
  expect(has(scene.shapes, 'break')).toBe(true);
  expect(find(scene.shapes, 'labels', 'toBottom').text).toBe('38.5 ft to the bottom');
});

describe('windows', () => {
  test('the well top reaches from a foot over the casing to 1.5 ft below the adapter, and grows with it', () => {
    for (const depth of [6, 9, 14]) {
      const solution = well('tamarack-ridge', { 'top.depth': `${depth} ft` });
      const scene = drawWellTop(solution, frame('A'));
      const adapter = solution.parts.find(({ kind }) => kind === 'pitlessAdapter')!;
      expect(scene.topDepth).toBeCloseTo(-(16 * inch + foot), 6);
      expect(scene.bottomDepth).toBeCloseTo(adapter.bottom + 1.5 * foot, 6);
    }
  });

  test('frost deeper than the adapter is still in the frame', () => {
    const scene = drawWellTop(well('tamarack-ridge', { 'site.frostDepth': '100 in' }), frame('A'));
    expect(scene.bottomDepth).toBeCloseTo(100 * inch + 1.5 * foot, 6);
  });

  test('the pump end is never taller than 14 ft and always holds motor and pump', () => {
    for (const setting of ['100 ft', '180 ft', '209 ft', '214 ft', '218 ft']) {
      const solution = well('tamarack-ridge', { 'pump.setting': setting });
      const scene = drawPumpEnd(solution, frame('B'));
      expect(scene.bottomDepth - scene.topDepth).toBeLessThanOrEqual(14 * foot + 1e-9);
      expect(scene.topDepth).toBeLessThan(solution.parts.find(({ kind }) => kind === 'pump')!.top);
      expect(scene.bottomDepth).toBeGreaterThan(solution.parts.find(({ kind }) => kind === 'motor')!.bottom);
    }
  });

  test('the lens has one scale both ways', () => {
    const solution = well('tamarack-ridge');
    const scene = drawLens(solution, 180 * foot, frame('C'));
    const motor = solution.parts.find(({ kind }) => kind === 'motor')!;
    const drawn = extentOf(find(scene.shapes, 'motor', 'body'));
    expect(scene.widthFactor).toBe(1);
    expect(drawn.right - drawn.left).toBeCloseTo(2 * motor.radius * scene.k, 0);
  });

  test('widths are enlarged by the factor that is stated, six at most', () => {
    for (const name of WELLS) {
      const solution = well(name);
      const motor = solution.parts.find(({ kind }) => kind === 'motor')!;
      const scene = drawPumpEnd(solution, frame('B'));
      const drawn = extentOf(find(scene.shapes, 'motor', 'body'));
      expect(scene.widthFactor).toBeLessThanOrEqual(6);
      expect(drawn.right - drawn.left).toBeCloseTo(2 * motor.radius * scene.k * scene.widthFactor, 0);
    }
  });

  test('a window that is held while dragging stays as it was', () => {
    const before = drawPumpEnd(well('tamarack-ridge'), frame('B'));
    const { topDepth, bottomDepth, widthFactor } = before;
    const held = drawPumpEnd(
      well('tamarack-ridge', { 'pump.setting': '183 ft' }),
      frame('B', { frozen: { topDepth, bottomDepth, widthFactor } }),
    );
    expect([held.topDepth, held.bottomDepth, held.widthFactor]).toEqual([topDepth, bottomDepth, widthFactor]);
  });
});
