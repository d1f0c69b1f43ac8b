/** A scale that wanders about a threshold: the look of a part must not change with every step. */
import { describe, expect, test } from 'vitest';
import { draw, type Looks, type Scene, type View, type ViewName } from '../../src/draw/index.ts';
import { widthFactor } from '../../src/draw/details/windows.ts';
import { isFine, partLooks, sectionLooks, SYMBOL, TIE_PITCH } from '../../src/draw/looks.ts';
import { solve, withValue, type Plan, type Solution } from '../../src/model/index.ts';
import type { PlacedPart } from '../../src/model/solution.ts';
import { planOf, sample } from '../plans/build.ts';
import { flat } from './pictures.ts';

test('a finer look is taken 7.5 % above its threshold and left 7.5 % below it; without a history the threshold counts', () => {
  expect([99.9, 100].map((size) => isFine(size, 100, undefined))).toEqual([false, true]);
  expect([107.4, 107.5].map((size) => isFine(size, 100, false))).toEqual([false, true]);
  expect([92.4, 92.5].map((size) => isFine(size, 100, true))).toEqual([false, true]);
});

test('between the two every look stays as it was', () => {
  const pump = part('pump', 'pump', 0, 1);
  for (const down of [31.5, 34, 36.5])
    for (const pumpOpen of [true, false])
      expect(partLooks([pump], down, { pumpOpen, bands: false }).pumpOpen).toBe(pumpOpen);
});

test('of ties as many are left out as keep two bands apart, and as many as before while that nearly does', () => {
  const ties = [10, 9, 8].map((depth) => part(`tie/${depth}`, 'tie', depth, depth));
  const at = (k: number, before?: ReturnType<typeof sectionLooks>) =>
    sectionLooks(ties, 1, { k, widthFactor: 1, isCut: false }, before);
  const third = at(TIE_PITCH / 2.9);
  expect(third.tieStep).toBe(3);
  expect(at(TIE_PITCH / 3.1).tieStep).toBe(4);
  expect(at(TIE_PITCH / 3.1, third).tieStep).toBe(3);
  expect(at(TIE_PITCH / 1.95, third).tieStep).toBe(3);
  expect(at(TIE_PITCH / 1.8, third).tieStep).toBe(2);
  expect(at(TIE_PITCH / 4.5, third).tieStep).toBe(5);
});

function part(key: string, kind: PlacedPart['kind'], top: number, bottom: number): PlacedPart {
  return { key, kind, top, bottom, radius: 0.05 };
}

function solved(changes: Readonly<Record<string, unknown>> = {}): Solution {
  const plan = Object.entries(changes).reduce<Plan>(
    (made, [path, to]) => withValue(made, path, to),
    planOf(sample('tamarack-ridge')),
  );
  return solve(planOf(JSON.parse(JSON.stringify(plan))));
}

const whole: View = { sheet: 'section', width: 700, height: 900, units: 'us', theme: 'light' };
const rope = solved();
const rigid = solved({ 'well.depth': '800 ft', dropPipe: { material: 'galvanized steel', size: '1-1/4 in' } });

interface Case {
  readonly name: string;
  readonly solution: Solution;
  /** A view whose scale grows with the number. */
  readonly at: (scale: number) => View;
  readonly lookOf: (scene: Scene) => boolean | undefined;
  /** Where the look is coarse, and where it is fine. */
  readonly between: readonly [number, number];
}

/** Sheets on which a frame has the height that is asked for: it grows evenly with the sheet's. */
const taller = (sheet: View['sheet'], solution: Solution, view: ViewName = 'O'): ((scale: number) => View) => {
  const asked = { ...whole, width: 1000, sheet };
  const heightAt = (height: number): number => {
    const frames = draw(solution, { ...asked, height }).frames;
    return (frames.find((frame) => frame.view === view) ?? frames[0]!).height;
  };
  const [low, high] = [heightAt(600), heightAt(1600)];
  return (scale) => ({ ...asked, height: 600 + ((scale - low) / (high - low)) * 1000 });
};

const window = (scale: number): View => ({ ...whole, window: { topDepth: 20, bottomDepth: 20 + 1000 / scale } });

const cases: readonly Case[] = [
  { name: 'the well from near', solution: rope, at: window, lookOf: isNear, between: [5, 200] },
  { name: 'the pump to scale', solution: rope, at: taller('section', rope), lookOf: pumpToScale, between: [340, 9000] },
  {
    name: 'a check valve to scale',
    solution: rope,
    at: taller('section', rope),
    lookOf: ({ scales }) => scales.looks.O?.toScale.includes('checkValve'),
    between: [340, 60_000],
  },
  {
    name: 'the splice beside the valve',
    solution: rope,
    at: taller('section', rope),
    lookOf: ({ shapes }) => has(shapes, / > splice\//) || has(shapes, / > splice$/),
    between: [340, 60_000],
  },
  {
    name: 'the joints of rigid pipe',
    solution: rigid,
    at: taller('section', rigid),
    lookOf: ({ shapes }) => has(shapes, /string > coupling/),
    between: [300, 9000],
  },
  {
    name: 'every tie',
    solution: rope,
    at: taller('section', rope),
    lookOf: ({ scales }) => scales.looks.O?.tieStep === 1,
    between: [300, 9000],
  },
  {
    name: 'the pump cut open',
    solution: rope,
    at: taller('all', rope, 'B'),
    lookOf: ({ shapes }) => has(shapes, /> pump > bowls$/),
    between: [120, 2000],
  },
  {
    name: 'the bands of the clamps',
    solution: rope,
    at: taller('top', rope),
    lookOf: ({ scales }) => scales.looks.A?.bands,
    between: [200, 6000],
  },
  {
    name: 'closer ticks on a detail’s rail',
    solution: rope,
    at: taller('top', rope),
    lookOf: ({ scales }) => (scales.looks.A?.tickStep ?? 1) < 1,
    between: [200, 1500],
  },
];

function has(shapes: Scene['shapes'], pattern: RegExp): boolean {
  return flat(shapes).some(({ path }) => pattern.test(path));
}

function isNear({ shapes }: Scene): boolean {
  return !has(shapes, /(^| > )string$/);
}

/** A symbol has a dashed outline. */
function pumpToScale({ shapes }: Scene): boolean {
  const outline = flat(shapes).find(({ path }) => path.endsWith('pumpBody > outline'));
  return outline?.shape.attrs['stroke-dasharray'] === undefined;
}

/** The scale at which the look changes where nothing was shown before. */
function thresholdOf({ solution, at, lookOf, between: [coarse, fine] }: Case): number {
  let [low, high] = [coarse, fine];
  expect(lookOf(draw(solution, at(low)))).toBe(false);
  expect(lookOf(draw(solution, at(high)))).toBe(true);
  for (let i = 0; i < 24; i++) {
    const middle = (low + high) / 2;
    if (lookOf(draw(solution, at(middle))) === true) high = middle;
    else low = middle;
  }
  return high;
}

/** How often the look changes while the scale takes these sizes in turn. */
function changes({ solution, at, lookOf }: Case, scales: readonly number[], remembers: boolean): number {
  let looks: Looks | undefined;
  let last: boolean | undefined;
  let count = 0;
  for (const scale of scales) {
    const view = at(scale);
    const scene = draw(solution, remembers && looks !== undefined ? { ...view, looks } : view);
    looks = scene.scales.looks;
    const look = lookOf(scene);
    if (last !== undefined && look !== last) count++;
    last = look;
  }
  return count;
}

describe.each(cases)('$name', (each) => {
  const threshold = thresholdOf(each);
  const wandering = Array.from({ length: 20 }, (_, i) => threshold * (1 + (i % 2 === 0 ? -1 : 1) * (0.01 + i / 400)));

  test('stays as it is while the scale wanders about its threshold by less than 6 %', () => {
    expect(changes(each, wandering, false)).toBe(19);
    expect(changes(each, wandering, true)).toBe(0);
    expect(changes(each, [threshold * 1.2, ...wandering], true)).toBe(0);
  }, 60_000);

  test('changes once on the way up and once on the way down when the scale passes it by more', () => {
    const up = Array.from({ length: 21 }, (_, i) => threshold * (0.9 + i / 100));
    expect(changes(each, [...up, ...up.toReversed()], true)).toBe(2);
  }, 60_000);

  test('drawing the same view again changes nothing', () => {
    const first = draw(each.solution, each.at(threshold * 1.03));
    const again = draw(each.solution, { ...each.at(threshold * 1.03), looks: first.scales.looks });
    expect(again.shapes).toEqual(first.shapes);
  }, 60_000);
});

describe('a detail’s width factor', () => {
  const pipe = 0.0334;
  const height = 400;
  const wide = 0.25;
  // 18 px of pipe are wanted: 2.74 and 2.76 times 196 px/m lie on either side of the step from 2.5 to 3.
  const wanted = (times: number): number => 18 / pipe / times;
  const at = (times: number, before?: number): number =>
    widthFactor({ down: wanted(times), height, room: 1e4, wide, pipeDiameter: pipe, before });

  test('goes by halves, and stays while what is wanted wanders about a step', () => {
    expect([at(2.7), at(2.8)]).toEqual([2.5, 3]);
    for (const times of [2.7, 2.8, 2.74, 2.76]) {
      expect(at(times, 2.5)).toBe(2.5);
      expect(at(times, 3)).toBe(3);
    }
  });

  test('follows when more is wanted, and never takes more room than there is', () => {
    expect(at(2.9, 2.5)).toBe(3);
    expect(at(2.6, 3)).toBe(2.5);
    const down = wanted(3);
    expect(widthFactor({ down, height, room: 2.9 * down * wide, wide, pipeDiameter: pipe, before: 3 })).toBe(2.5);
  });
});

test('the threshold of the pump’s symbol is its height', () => {
  const at = (tall: number) => sectionLooks([], tall, { k: 1, widthFactor: 1, isCut: false }, undefined).pump;
  expect([at(SYMBOL - 0.01), at(SYMBOL)]).toEqual([false, true]);
});
