/** What nobody said is underlined with dots, exactly under its figure; what was said is not. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
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

/** Words that begin with a figure, or end in one, with dots under just that figure. */
function figuresUnderlined(plan: Plan, view = {}): string[] {
  const { scene } = picture(plan, view);
  const all = dots(scene.shapes, /(^| > )assumed$/);
  return textBoxes(scene.shapes)
    .filter((box) =>
      all.some(
        ({ left, right, y }) =>
          left > box.left - 1.5 &&
          right < box.right + 1.5 &&
          (Math.abs(left - box.left) < 1.5 || Math.abs(right - box.right) < 1.5) &&
          y > box.top &&
          y < box.bottom + 4,
      ),
    )
    .map(({ words }) => words.replaceAll('\u00A0', ' '));
}

describe('figures worked out from an assumed one are underlined, and from a said one not', () => {
  const SECTION = { sheet: 'section', width: 700, height: 1000 } as const;
  const pumpOf = (pump: object): Plan => ({ ...BARE, pump });
  const SAID = { setting: '178 ft', intakeToMotorBottom: '2 ft' };

  test('how far the motor hangs off the bottom, beside the well’s bottom', () => {
    expect(figuresUnderlined(BARE, SECTION).filter((each) => each.endsWith('under the motor'))).toHaveLength(1);
    expect(figuresUnderlined(pumpOf({ setting: '178 ft' }), SECTION)).toContain('20.5 ft under the motor');
    expect(figuresUnderlined(pumpOf(SAID), SECTION).join()).not.toContain('under the motor');
  });

  test('where the band ends, by the length of a motor that nobody measured', () => {
    const lower = (plan: Plan) => figuresUnderlined(plan, SECTION).filter((each) => each.startsWith('to '));
    expect(lower(pumpOf({ setting: '178 ft' }))).toEqual(['to 188 ft']);
    expect(lower(pumpOf(SAID))).toEqual([]);
  });

  test('in the detail of the pump’s end: with the bottom in the frame, and far below it', () => {
    const view = { sheet: 'pump', width: 520, height: 700 } as const;
    const near = (pump: object) => figuresUnderlined(pumpOf(pump), view);
    expect(near({ setting: '196 ft' })).toContain('2.5 ft');
    expect(near({ ...SAID, setting: '196 ft' })).not.toContain('2 ft');
    expect(near({ setting: '120 ft' })).toContain('78.5 ft to the bottom');
    expect(near({ ...SAID, setting: '120 ft' })).not.toContain('78 ft to the bottom');
  });

  test('water over the intake and the drawdown, at a flow that nobody said', () => {
    const all = figuresUnderlined(pumpOf(SAID), SECTION);
    expect(all.filter((each) => /of water over it|drawdown/.test(each))).toHaveLength(2);
    const wanted: Plan = { ...pumpOf(SAID), house: { demand: '5 gpm' } };
    expect(figuresUnderlined(wanted, SECTION).filter((each) => /of water over it|drawdown/.test(each))).toEqual([]);
  });
});
