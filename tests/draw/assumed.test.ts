/** What nobody said is underlined with dots, exactly under its figure; what was said is not. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Shape } from '../../src/draw/scene.ts';
import type { Plan } from '../../src/model/index.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { rockWell } from '../plans/build.ts';
import { pathPoints } from './parts/extent.ts';
import { flat, picture, textBoxes } from './pictures.ts';

const BARE: Plan = {
  format: 'wellcut-plan/1',
  well: {
    depth: '200 ft',
    casing: { material: 'steel', size: '6 in', bottom: '42 ft' },
    intake: { kind: 'open hole' },
  },
  water: { staticLevel: '40 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '34 ft' } },
};

/** The stretches that a view's dots run along. */
function dots(shapes: readonly Shape[], within: RegExp): { left: number; right: number; y: number }[] {
  return flat(shapes)
    .filter(({ path, shape }) => within.test(path) && shape.key === 'assumed' && shape.tag === 'path')
    .flatMap(({ shape }) => {
      const points = pathPoints(shape.d ?? '');
      return points.flatMap(([left, y], i) => (i % 2 === 0 ? [{ left, y, right: points[i + 1]?.[0] ?? left }] : []));
    });
}

/** Words with dots right under them. */
function underlined(plan: Plan, view = {}): string[] {
  const { scene } = picture(plan, view);
  const all = dots(scene.shapes, /(^| > )assumed$/);
  return textBoxes(scene.shapes)
    .filter((box) =>
      all.some(
        ({ left, right, y }) =>
          Math.abs(left - box.left) < 1.5 && Math.abs(right - box.right) < 1.5 && y > box.top && y < box.bottom + 4,
      ),
    )
    .map(({ words }) => words.replaceAll('\u00A0', ' '));
}

test('of a well with nothing said but depth and water, all that the program chose is underlined', () => {
  const chips = underlined(BARE, { sheet: 'section' });
  expect(chips).toEqual(expect.arrayContaining(['12 in up', '48 in']));
  // 200 ft, the motor's end 20 ft off the bottom, the motor 1.5 ft long: common practice, no source.
  expect(chips).toContain('178 ft');
  expect(chips).not.toContain('40 ft');
  expect(chips).not.toContain('200 ft');
});

test('what somebody said is not underlined', () => {
  const said: Plan = { ...BARE, pump: { setting: '178 ft' }, top: { kind: 'pitless', depth: '48 in' } };
  const chips = underlined(said, { sheet: 'section' });
  expect(chips).not.toContain('178 ft');
  expect(chips).not.toContain('48 in');
});

test('the dots are a line under the text and nothing else: no id, no style, finely dashed', () => {
  const { scene } = picture(BARE);
  const marks = flat(scene.shapes).filter(({ shape }) => shape.key === 'assumed' && shape.tag === 'path');
  expect(marks.length).toBeGreaterThanOrEqual(3);
  for (const { shape } of marks) {
    expect(shape.attrs['stroke-dasharray']).toBe('1.5 2');
    expect(Object.keys(shape.attrs).sort()).toEqual(['fill', 'stroke', 'stroke-dasharray', 'stroke-width']);
  }
});

test('labels of parts: the arrestor’s height and the wire where nobody chose them, and not where somebody did', () => {
  const view = { sheet: 'pump', width: 520, height: 700 } as const;
  expect(underlined(BARE, view)).toContain('2 ft above the pump');
  const chosen = rockWell({ string: { torqueArrestor: '2 ft' } });
  expect(underlined(chosen, view)).not.toContain('2 ft above the pump');
});

test('bond, conduit, line and fittings of the top where nobody said them, and not where somebody did', () => {
  const view = { sheet: 'top', width: 560, height: 900 } as const;
  const words = underlined(BARE, view);
  expect(words).toEqual(expect.arrayContaining(['Bond to the casing', 'Insert fitting, 2 clamps']));
  expect(words.some((each) => /^cable inside/.test(each))).toBe(true);
  expect(words.some((each) => /top at 4 ft$/.test(each))).toBe(true);
  const said: Plan = {
    ...BARE,
    top: { kind: 'pitless', depth: '48 in' },
    wire: { size: '12 AWG', conduitDepth: '30 in' },
  };
  const after = underlined(said, view);
  expect(after.some((each) => /^cable inside|top at 4 ft$/.test(each))).toBe(false);
});

test('in any plan and view every dotted line lies under words', () => {
  const views = [{}, { sheet: 'section', width: 320, height: 560 }, { sheet: 'top', width: 390, height: 500 }] as const;
  fc.assert(
    fc.property(anyPlan, fc.constantFrom(...views), (plan, view) => {
      const { scene } = picture(plan, view);
      const words = textBoxes(scene.shapes);
      for (const { left, right, y } of dots(scene.shapes, /(^| > )assumed$/)) {
        const above = words.filter((box) => box.left - 1.5 <= left && box.right + 1.5 >= right && y > box.top);
        expect(above.some((box) => y < box.bottom + 4)).toBe(true);
      }
    }),
    { seed: 71, numRuns: 150 },
  );
});
