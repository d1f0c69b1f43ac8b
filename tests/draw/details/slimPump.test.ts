/** Beside the widened well of detail B: pipe, pump and motor as slim as they are, at the same depths. */
import { describe, expect, test } from 'vitest';
import { drawPumpEnd } from '../../../src/draw/details/pumpEnd.ts';
import type { DetailFrame } from '../../../src/draw/details/contract.ts';
import { RAIL_PX } from '../../../src/draw/details/rail.ts';
import type { DetailScene } from '../../../src/draw/view.ts';
import { extentOf } from '../parts/extent.ts';
import { flat } from '../pictures.ts';
import { frame, well, WELLS, yIn } from './wells.ts';

/** As the page has it on windows of 1440 and 1024 px. */
const WIDE = frame('B', { width: 355, height: 340 });
const NARROW = frame('B', { width: 288, height: 420 });

const stripOf = (scene: DetailScene) => flat(scene.shapes).find(({ path }) => path === 'slimPump')?.shape;

function inStrip(scene: DetailScene, key: string) {
  const found = stripOf(scene)?.children?.find((each) => each.key === key);
  if (found === undefined) throw new Error(`no ${key} in the strip`);
  return extentOf(found);
}

describe.each([
  ['of 355 px', WIDE, WELLS],
  // Two wells are drilled so wide that there the strip would leave them no room.
  ['of 288 px', NARROW, WELLS.filter((name) => name !== 'willow-dale' && name !== 'palo-amargo')],
] as const)('in a frame %s', (_, at: DetailFrame, wells) => {
  test.each(wells)('pump and motor of %s are as many times taller than wide as they are', (name) => {
    const solution = well(name);
    const scene = drawPumpEnd(solution, at);
    const { top, radius } = solution.parts.find(({ kind }) => kind === 'pump')!;
    const { bottom } = solution.parts.find(({ kind }) => kind === 'motor')!;
    const drawn = inStrip(scene, 'pumpBody');
    const y = yIn(at, scene);
    expect(drawn.top).toBeCloseTo(y(top), 0);
    expect(drawn.bottom).toBeCloseTo(y(bottom), 0);
    expect(drawn.right - drawn.left).toBeCloseTo(2 * radius * scene.k, 0);
    expect(scene.widthFactor).toBeGreaterThanOrEqual(2);
  });

  test('the strip stands between the rail and what is drawn wide, and is named', () => {
    const scene = drawPumpEnd(well('tamarack-ridge'), at);
    const strip = extentOf(stripOf(scene)!.children![0]!);
    expect(strip.left).toBeCloseTo(at.x + RAIL_PX, 6);
    for (const { x, kind } of scene.hits) {
      if (kind !== 'grout' && kind !== 'openHole' && kind !== 'casing') expect(x, kind).toBeGreaterThan(strip.right);
    }
    expect(stripOf(scene)!.children!.flatMap(({ text }) => text ?? [])).toEqual(['true', 'width']);
  });
});

test('a frame too narrow for both, and a dug well, which is drawn no wider than it is, have none', () => {
  expect(stripOf(drawPumpEnd(well('tamarack-ridge'), frame('B', { width: 252, height: 400 })))).toBeUndefined();
  const dug = well('tamarack-ridge', {
    well: {
      depth: '25 ft',
      casing: { material: 'concrete', size: '36 in', insideDiameter: '36 in', bottom: '25 ft' },
      intake: { kind: 'dug', diameter: '36 in' },
    },
    'pump.setting': '20 ft',
  });
  expect(stripOf(drawPumpEnd(dug, WIDE))).toBeUndefined();
});
