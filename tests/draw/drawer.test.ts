import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createDrawer, draw, toSvg, type View } from '../../src/draw/index.ts';
import { keepEqual } from '../../src/draw/memory.ts';
import type { Shape } from '../../src/draw/scene.ts';
import { handlesOf, moveHandle, solve, type Plan } from '../../src/model/index.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, sample, SAMPLES } from '../plans/build.ts';
import { find, flat, SHEET } from './pictures.ts';

/** A handle of the plan, by a number, and how far along its way it is dragged. */
const drags = fc.array(fc.tuple(fc.nat(40), fc.double({ min: 0, max: 1, noNaN: true })), {
  minLength: 2,
  maxLength: 6,
});
const views = fc.constantFrom<Partial<View>>(
  {},
  { width: 700 },
  { theme: 'dark', units: 'metric' },
  { sheet: 'section', width: 390, height: 620 },
  { sheet: { at: 2 }, width: 420, height: 500 },
);

function dragged(plan: Plan, [pick, share]: readonly [number, number]): { plan: Plan; handle: string; start: number } {
  const solution = solve(plan);
  const handles = handlesOf(solution).filter(({ known, locked }) => known && locked === null);
  const handle = handles[pick % Math.max(1, handles.length)];
  if (handle === undefined) return { plan, handle: 'pumpSetting', start: 0 };
  const depth = handle.min + (handle.max - handle.min) * share;
  return { plan: moveHandle(plan, solution, handle.id, depth).plan, handle: handle.id, start: handle.depth };
}

/** Draws every step of a few drags with one drawer, scales kept as on the page, and each by itself. */
function holds(first: Plan, steps: readonly (readonly [number, number])[], look: readonly Partial<View>[]): void {
  const drawer = createDrawer();
  let plan = first;
  for (const [i, step] of steps.entries()) {
    const view: View = { ...SHEET, ...look[i % look.length] };
    const before = drawer(solve(plan), view);
    const { plan: moved, handle, start } = dragged(plan, step);
    const frozen = { windows: i % 2 === 0 ? before.scales.windows : {}, chips: before.scales.chips };
    const { looks } = before.scales;
    for (const shown of [{ ...view, frozen, held: { handle, start }, looks }, { ...view, lit: 'pump', looks }, view]) {
      const solution = solve(moved);
      const scene = drawer(solution, shown);
      const anew = draw(solution, shown);
      expect(toSvg(scene)).toBe(toSvg(anew));
      for (const part of ['chips', 'marks', 'frames', 'hits', 'scales'] as const)
        expect(scene[part]).toEqual(anew[part]);
    }
    plan = moved;
  }
}

describe('what a drawer remembers never shows', () => {
  test.each(SAMPLES)(
    '%s dragged about',
    (name) => {
      fc.assert(
        fc.property(drags, fc.array(views, { minLength: 1, maxLength: 3 }), (steps, look) =>
          holds(planOf(sample(name)), steps, look),
        ),
        { seed: 41, numRuns: 8 },
      );
    },
    60_000,
  );

  test('any plan after any other', () => {
    fc.assert(
      fc.property(fc.array(anyPlan, { minLength: 2, maxLength: 4 }), views, (plans, look) => {
        const drawer = createDrawer();
        for (const plan of plans) {
          const view = { ...SHEET, ...look };
          expect(toSvg(drawer(solve(plan), view))).toBe(toSvg(draw(solve(plan), view)));
        }
      }),
      { seed: 42, numRuns: 25 },
    );
  });
});

describe('a drawer gives back what did not change', () => {
  const plan = planOf(sample('tamarack-ridge'));
  const at = (pump: number): Plan => moveHandle(plan, solve(plan), 'pumpSetting', pump).plan;
  const drawer = createDrawer();
  const rest = drawer(solve(plan), SHEET);
  const O = rest.scales.windows.O;
  const view: View = {
    ...SHEET,
    frozen: { windows: O === undefined ? {} : { O }, chips: rest.scales.chips },
    held: { handle: 'pumpSetting', start: 50 },
  };
  const before = drawer(solve(at(50)), view);
  const after = drawer(solve(at(51)), { ...view, held: { handle: 'pumpSetting', start: 50 } });

  test.each([
    'ground',
    'frost',
    'well > casing',
    'well > openHole/water',
    'house',
    'topWorks',
    'rail',
    'chips > staticLevel',
    'detail/A > ground',
    'detail/A > well > pitlessAdapter',
    'detail/A > well > insertFitting/top',
  ])('%s is the same object while the pump is dragged', (path) => {
    expect(find(after.shapes, path)).toBe(find(before.shapes, path));
  });

  test('the pump and its chip are new', () => {
    for (const path of ['string', 'chips > pumpSetting'])
      expect(find(after.shapes, path)).not.toBe(find(before.shapes, path));
  });

  test('most shapes of a sheet are passed by', () => {
    const old = new Set<Shape>(flat(before.shapes).map(({ shape }) => shape));
    const shapes = flat(after.shapes).map(({ shape }) => shape);
    expect(shapes.filter((shape) => old.has(shape)).length).toBeGreaterThan(shapes.length * 0.5);
  });
});

test('equal branches are kept, in keyed lists also where they stand elsewhere', () => {
  const before = {
    a: { b: 1 },
    list: [
      { key: 'x', at: 1 },
      { key: 'y', at: 2 },
    ],
  };
  expect(keepEqual(before, structuredClone(before))).toBe(before);
  const after = {
    a: { b: 1 },
    list: [
      { key: 'w', at: 0 },
      { key: 'x', at: 1 },
      { key: 'y', at: 3 },
    ],
  };
  const kept = keepEqual(before, after) as typeof after;
  expect(kept).toEqual(after);
  expect(kept.a).toBe(before.a);
  expect(kept.list[1]).toBe(before.list[0]);
  expect(kept.list[2]).not.toBe(before.list[1]);
  expect(keepEqual({ a: 1, b: 2 }, { a: 1 })).toEqual({ a: 1 });
  expect(keepEqual([1, 2], [1])).toEqual([1]);
});
