/** Where a well is stands under its name in the title block, and nowhere else. */
import { describe, expect, test } from 'vitest';
import { draw, LETTER } from '../../src/draw/index.ts';
import { textWidth } from '../../src/draw/type/width.ts';
import { solve } from '../../src/model/index.ts';
import { rockWell } from '../plans/build.ts';
import { flat } from './pictures.ts';

const PLACE = 'Old Mill Lane, lot 7';

describe('on paper', () => {
  const block = (change: object, view: object = {}) => {
    const sheet = { sheet: 'all', width: 1000, height: 920, units: 'us', theme: 'print', caption: true } as const;
    const scene = draw(solve(rockWell({ title: 'Birch Hollow', ...change })), { ...sheet, ...view });
    const shapes = flat(scene.shapes).filter(({ path }) => path.includes('titleBlock > '));
    return shapes.map(({ shape }) => ({
      words: shape.text ?? '',
      y: Number(shape.attrs['y']),
      left: Number(shape.attrs['x']),
      right: Number(shape.attrs['x']) + textWidth(shape.text ?? '', 11),
      bottom: scene.height,
    }));
  };
  const views = [
    { paper: LETTER, width: 0, height: 0 },
    { paper: LETTER, width: 0, height: 0, sheet: 'section' },
  ];

  test.each(views)('stands under the name: %j', (view) => {
    const [name, place, ...others] = block({ place: PLACE }, view);
    expect([name?.words, place?.words]).toEqual(['Birch Hollow', PLACE]);
    expect(place?.y).toBeGreaterThan(name?.y ?? Infinity);
    // A line more on a small sheet is a little less room for the drawing, and another scale.
    const said = (lines: readonly { words: string }[]) => lines.map(({ words }) => words.replaceAll(/×\d+/g, '×'));
    expect(said(others)).toEqual(said(block({}, view).slice(1)));
  });

  test('is in no picture without a sheet of paper, which goes into guides and letters', () => {
    for (const view of [{}, { sheet: 'section', width: 320, height: 560 }])
      expect(JSON.stringify(block({ place: PLACE }, view))).not.toContain(PLACE);
  });

  test('is nowhere else on the sheet, and not in a drawing without a title block', () => {
    const solution = solve(rockWell({ title: 'Birch Hollow', place: PLACE }));
    const scene = draw(solution, { sheet: 'all', width: 1000, height: 920, units: 'us', theme: 'light' });
    expect(JSON.stringify([scene.shapes, scene.title, scene.describe()])).not.toContain(PLACE);
  });

  test.each(views)('takes two lines at most, and runs off no edge: %j', (view) => {
    const rest = block({}, view).length;
    for (const place of ['long road '.repeat(60).trim(), 'W'.repeat(4000), `near ${'W'.repeat(300)} mill`]) {
      const lines = block({ place }, view);
      const own = lines.slice(1, lines.length - rest + 1);
      expect([1, 2]).toContain(own.length);
      expect(own.at(-1)?.words).toMatch(/…$/);
      for (const { y, bottom } of lines) expect(y).toBeLessThan(bottom);
      for (const each of own) expect(each.right - each.left).toBeLessThanOrEqual(305);
    }
  });
});
