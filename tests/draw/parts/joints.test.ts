import { describe, expect, test } from 'vitest';
import { drawPumpEnd } from '../../../src/draw/details/pumpEnd.ts';
import { drawWellTop } from '../../../src/draw/details/wellTop.ts';
import { frame, well, yIn } from '../details/wells.ts';
import { extentOf, find, has, pathPoints } from './extent.ts';

const LARGE = { width: 760, height: 800 };

describe('the splice under the cap', () => {
  const solution = well('tamarack-ridge');
  const box = frame('A', LARGE);
  const scene = drawWellTop(solution, box);
  const y = yIn(box, scene);
  const tubes = extentOf(find(scene.shapes, 'capSplice', 'tubes'));
  const casing = solution.facts.well.casings[0]!;

  test('hangs in the casing under its rim, above the ground', () => {
    expect(tubes.top).toBeGreaterThan(y(-solution.facts.well.casingHeight));
    expect(tubes.bottom).toBeLessThan(y(0));
    const wall = pathPoints(find(scene.shapes, 'casing', 'walls').d!).map(([x]) => x);
    const middle = (Math.min(...wall) + Math.max(...wall)) / 2;
    const inside = (casing.insideDiameter / 2) * scene.k * scene.widthFactor;
    expect(tubes.right).toBeLessThan(middle + inside);
  });

  test('has a joint for each wire and the ground', () => {
    for (const [wires, joints] of [
      [2, 3],
      [3, 4],
    ]) {
      const drawn = drawWellTop(well('tamarack-ridge', { 'pump.wires': wires }), box);
      expect(find(drawn.shapes, 'capSplice', 'tubes').d!.match(/M/g)).toHaveLength(joints!);
    }
  });

  test('joins the end of the spare loop to the cable that leaves for the house', () => {
    const loop = pathPoints(find(scene.shapes, 'spareLoop', 'jacket').d!).at(-1)!;
    const house = pathPoints(find(scene.shapes, 'spareLoop', 'houseCable').d!);
    const part = solution.parts.find(({ kind }) => kind === 'capSplice')!;
    expect(loop[1]).toBeCloseTo(y(part.bottom), 0);
    expect(Math.abs(house[0]![1] - y(part.top))).toBeLessThan(3);
    expect(house[0]![0]).toBeCloseTo(loop[0], 0);
    const conduit = extentOf(find(scene.shapes, 'conduit', 'nut'));
    expect(house.at(-1)![0]).toBeGreaterThan(conduit.left - 3);
  });
});

describe('a flow-limiting valve', () => {
  const planned = (limiter: unknown) => well('tamarack-ridge', { 'pump.flowLimiter': limiter });
  const drawn = (limiter: unknown) => drawPumpEnd(planned(limiter), frame('B', LARGE));

  test('stands on the pump’s outlet, under the check valve', () => {
    const scene = drawn('6 gpm');
    const body = extentOf(find(scene.shapes, 'flowLimiter', 'body'));
    expect(body.bottom).toBeLessThanOrEqual(extentOf(find(scene.shapes, 'pump', 'shell')).top);
    expect(body.top).toBeGreaterThanOrEqual(extentOf(find(scene.shapes, 'checkValve', 'body')).bottom);
  });

  test('is named with the flow that it holds, where somebody said it', () => {
    const words = (limiter: unknown) =>
      find(drawn(limiter).shapes, 'labels', 'flowLimiter').text + ', ' + noteUnder(drawn(limiter).shapes);
    expect(words('6 gpm')).toContain('Flow-limiting valve');
    expect(words('6 gpm')).toContain('holds 6 gpm');
    expect(words(true)).toContain('flow not known');
  });

  test('is not there where none is planned', () => {
    for (const limiter of [undefined, false]) expect(has(drawn(limiter).shapes, 'flowLimiter')).toBe(false);
  });

  test('takes nothing from the pipe: its length is the nipple’s', () => {
    expect(planned('6 gpm').values.dropPipeToCut).toBe(planned(undefined).values.dropPipeToCut);
  });
});

function noteUnder(shapes: Parameters<typeof find>[0]): string {
  return JSON.stringify(shapes).replaceAll('\u00A0', ' ');
}
