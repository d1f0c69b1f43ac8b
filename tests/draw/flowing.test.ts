/** A well that flows by itself is drawn without a vent and without a band that calls a depth right. */
import { describe, expect, test } from 'vitest';
import { solve } from '../../src/model/index.ts';
import { rockWell } from '../plans/build.ts';
import { extentOf } from './parts/extent.ts';
import { find, picture, textBoxes } from './pictures.ts';

const flowing = { water: { staticLevel: '-6 ft', pumping: { kind: 'test', flow: '15 gpm', drawdown: '25 ft' } } };
const TOP = { sheet: 'top', width: 520, height: 700 } as const;
const words = (plan: ReturnType<typeof rockWell>) =>
  textBoxes(picture(plan, TOP).scene.shapes).map((each) => each.words.replaceAll('\u00A0', ' '));
const drawn = (plan: ReturnType<typeof rockWell>) => JSON.stringify(picture(plan, TOP).scene);

describe.each([
  ['a pitless adapter', {}],
  ['a seal', { top: { kind: 'seal' } }],
])('the top of a well with %s', (_, top) => {
  test('has no vent where the water stands over the ground, and is the contractor’s', () => {
    const plan = rockWell({ ...flowing, ...top });
    expect(drawn(plan)).not.toMatch(/"ventScreen"/);
    expect(words(plan)).toContain('Top: for the contractor');
    expect(words(plan).join(' ')).not.toMatch(/vent\b/);
  });
  test('has one elsewhere', () => {
    const plan = rockWell({ ...top });
    expect(drawn(plan)).toMatch(/"ventScreen"/);
    expect(words(plan)).not.toContain('Top: for the contractor');
  });
});

test('no depth is right for the pump of a flowing well, nor for its adapter', () => {
  expect(solve(rockWell(flowing)).bands).toEqual([]);
  expect(solve(rockWell({ ...flowing, well: { ...rockWell().well, flowControl: true } })).bands).toEqual([]);
  expect(solve(rockWell()).bands).not.toEqual([]);
});

describe('the cone of a well that flows by itself', () => {
  const heights = (staticLevel: string) => {
    const plan = rockWell({ ...flowing, water: { ...flowing.water, staticLevel } });
    const { scene } = picture(plan, { sheet: 'section', width: 900, height: 900 });
    const cone = find(scene.shapes, 'cone/line');
    const frame = scene.frames.find(({ view }) => view === 'O')!;
    const y = (depth: number) =>
      frame.y + ((depth - frame.topDepth) / (frame.bottomDepth - frame.topDepth)) * frame.height;
    return { highest: extentOf(cone).top, lowest: extentOf(cone).bottom, y };
  };

  test('ends at the ground: no water stands in the sky beside the well', () => {
    const { highest, lowest, y } = heights('-6 ft');
    expect(highest).toBeGreaterThanOrEqual(y(0) - 1);
    expect(highest).toBeLessThan(y(0) + 1);
    expect(lowest).toBeGreaterThan(y(0) + 10);
  });

  test('reaches the level at rest where that is in the ground', () => {
    const { highest, y } = heights('40 ft');
    expect(Math.abs(highest - y(40 * 0.3048))).toBeLessThan(12);
  });
});
