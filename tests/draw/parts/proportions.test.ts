/** At true proportion a part is as tall as its kind is. Generic lengths: common practice, no source. */
import { describe, expect, test } from 'vitest';
import { drawLens } from '../../../src/draw/details/lens.ts';
import type { Solution } from '../../../src/model/solution.ts';
import { frame, well } from '../details/wells.ts';
import { extentOf, find } from './extent.ts';

const inch = 0.0254;
const SEAL = { top: { kind: 'seal' } };
const steel = { dropPipe: { material: 'galvanized steel', size: '1 in', sectionLength: '20 ft' } };

/** Height of a drawn piece [in], in the close-up of its part. */
function tall(solution: Solution, key: string, piece: string): number {
  const part = solution.parts.find((each) => each.key === key)!;
  const scene = drawLens(solution, (part.top + part.bottom) / 2, frame('C', { width: 760, height: 800 }));
  const { top, bottom } = extentOf(find(scene.shapes, key, piece));
  return (bottom - top) / scene.k / inch;
}

describe('in a close-up', () => {
  const rock = well('tamarack-ridge');
  const sealed = well('tamarack-ridge', SEAL);
  const limited = well('tamarack-ridge', { 'pump.flowLimiter': '6 gpm' });
  const rigid = well('tamarack-ridge', steel);

  test.each([
    ['the check valve', rock, 'checkValve', 'body', 4],
    ['the nipple on the pump', rock, 'nipple', 'body', 2],
    ['what shows of an insert fitting', rock, 'insertFitting/pump', 'hexagon', 2],
    ['its barb', rock, 'insertFitting/pump', 'barb', 2],
    ['a torque arrestor', rock, 'torqueArrestor', 'arms', 12],
    ['a tie', rock, 'tie/3', 'strap', 1],
    ['the intake', rock, 'intake', 'ring', 3],
    ['the body of a pitless adapter', rock, 'pitlessAdapter', 'body', 4],
    ['a cap', rock, 'cap', 'dome', 4],
    ['a tee', sealed, 'tee', 'run', 4],
    ['a plug', sealed, 'plug', 'head', 1],
    ['a seal', sealed, 'seal', 'plates', 3],
    ['a collar', sealed, 'coupling/top', 'body', 2],
    ['the nipple under a tee', sealed, 'nipple/top', 'body', 2],
    ['a coupling', rigid, 'coupling/3', 'body', 2],
    ['a flow-limiting valve, less what shows of its nipple', limited, 'flowLimiter', 'body', 1.6],
    ['a pump', rock, 'pump', 'shell', 16.5],
  ] as const)('%s is as tall as one is', (_, solution, key, piece, inches) => {
    expect(tall(solution, key, piece)).toBeCloseTo(inches, 0.5);
  });

  test('two clamps are half an inch wide and half an inch apart', () => {
    const part = rock.parts.find(({ key }) => key === 'clamp/pump/1')!;
    const scene = drawLens(rock, part.top, frame('C', { width: 760, height: 800 }));
    const [first, second] = ['clamp/pump/1', 'clamp/pump/2']
      .map((key) => extentOf(find(scene.shapes, key, 'shine')))
      .toSorted((a, b) => a.top - b.top);
    const inches = (px: number) => px / scene.k / inch;
    expect(inches(first!.bottom - first!.top)).toBeCloseTo(0.5, 1);
    expect(inches(second!.top - first!.bottom)).toBeCloseTo(0.5, 1);
  });

  test('joints of a splice stand one above the other, none beside the next, within eight inches', () => {
    const two = well('tamarack-ridge', { 'pump.wires': 2 });
    expect(tall(two, 'splice', 'tubes')).toBeGreaterThan(6);
    expect(tall(two, 'splice', 'tubes')).toBeLessThan(8);
    const part = two.parts.find(({ key }) => key === 'splice')!;
    const scene = drawLens(two, (part.top + part.bottom) / 2, frame('C', { width: 760, height: 800 }));
    const starts = [...find(scene.shapes, 'splice', 'tubes').d!.matchAll(/M-?[\d.]+ ([\d.]+)l[^v]*v([\d.]+)/g)];
    const tubes = starts.map(([, top, long]) => [Number(top), Number(top) + Number(long)] as const);
    expect(tubes).toHaveLength(3);
    for (let i = 1; i < tubes.length; i++) expect(tubes[i]![0]).toBeGreaterThan(tubes[i - 1]![1]);
  });
});
