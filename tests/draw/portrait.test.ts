/** A well in a picture of a hand's breadth: what the section draws of it, and nothing to read. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawPortrait, THEMES, type View } from '../../src/draw/index.ts';
import { forgetful } from '../../src/draw/memory.ts';
import { boxOf } from '../../src/draw/portrait.ts';
import { drawSection } from '../../src/draw/section/drawSection.ts';
import { solve, type Plan } from '../../src/model/index.ts';
import { short } from '../../src/words/en/short.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../plans/build.ts';
import { flat } from './pictures.ts';

const SIZE = { width: 112, height: 144 };
const portrait = (plan: Plan, theme: View['theme'] = 'light') => drawPortrait(solve(plan), { ...SIZE, theme });
const paths = (plan: Plan): string[] => flat(portrait(plan).shapes).map(({ path }) => path);

/** The section with all that is written on it, in the same room. */
function labelled(plan: Plan) {
  const view = { sheet: 'section', ...SIZE, units: 'us', theme: 'light', words: short } as const;
  const chips = { x: SIZE.width + 18, width: 120, top: 8, bottom: SIZE.height };
  return drawSection(solve(plan), view, { box: boxOf({ ...SIZE, theme: 'light' }), chips, bracketX: null }, forgetful);
}

describe.each(SAMPLES)('%s', (name) => {
  const plan = planOf(sample(name));

  test('is drawn in the very shapes of the section', () => {
    const section = labelled(plan);
    const { shapes } = portrait(plan);
    const [paper, ...drawn] = shapes;
    expect(paper).toMatchObject({ key: 'paper', attrs: SIZE });
    const keys = drawn.map(({ key }) => key);
    expect(keys).toEqual(expect.arrayContaining(['ground', 'groundSurface', 'well']));
    expect(drawn).toEqual(section.shapes.filter(({ key }) => keys.includes(key)));
    expect(flat(section.shapes).some(({ shape }) => shape.tag === 'text')).toBe(true);
  });

  test('is small enough for thirty of them on a page', () => {
    expect(flat(portrait(plan).shapes).length).toBeLessThan(100);
  });
});

test('ground, casing, water, pump, pipe, adapter and cap are in it', () => {
  const all = paths(rockWell());
  for (const part of ['ground', 'casing/air', 'casing/water', 'dropPipe', 'pumpBody', 'pitlessAdapter', 'cap'])
    expect(
      all.some((path) => path.split(' > ').includes(part)),
      part,
    ).toBe(true);
  expect(all.some((path) => /casing/.test(path))).toBe(true);
});

test('what nobody knows is left out of it, and the well is drawn all the same', () => {
  const plan = rockWell({ water: { staticLevel: 'unknown' } });
  expect(paths(plan).some((path) => path.includes('/water'))).toBe(false);
  expect(paths(plan)).toContain('well > string > pumpBody');
});

test('of any well whatever it holds no word, no level’s line and no mark, and every number is one', () => {
  const themes = Object.keys(THEMES) as View['theme'][];
  fc.assert(
    fc.property(anyPlan, fc.constantFrom(...themes), (plan, theme) => {
      const { shapes, width, height } = portrait({ ...plan, title: 'Birch Hollow', place: 'Old Mill Lane' }, theme);
      expect([width, height]).toEqual([SIZE.width, SIZE.height]);
      for (const { shape, path } of flat(shapes)) {
        expect(['g', 'path', 'rect', 'line', 'circle'], path).toContain(shape.tag);
        expect(shape.text ?? '', path).toBe('');
      }
      const written = JSON.stringify(shapes);
      expect(written).not.toMatch(/null|NaN|Infinity|undefined|Birch|Mill Lane/);
      expect(shapes.map(({ key }) => key)).not.toEqual(
        expect.arrayContaining([expect.stringMatching(/chip|level|mark|rail|band|label|frost|house/i)]),
      );
    }),
    { numRuns: 150, seed: 11 },
  );
});

test('wears the theme that it is asked for', () => {
  const fills = (theme: View['theme']) => portrait(rockWell(), theme).shapes[0]?.attrs['fill'];
  expect([fills('light'), fills('dark')]).toEqual([THEMES.light.paper, THEMES.dark.paper]);
});
