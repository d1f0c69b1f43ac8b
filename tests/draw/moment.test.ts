/** A well at a moment: what a pump, a valve and a winter change in the drawing, and what they leave alone. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { A4, createDrawer, draw, THEMES, toSvg, type Moment, type Scene, type View } from '../../src/draw/index.ts';
import { solve, type Solution } from '../../src/model/index.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../plans/build.ts';
import { chevrons, strokesOf } from './chevrons.ts';
import { contrast, sixDigits } from './colour.ts';
import { extentOf } from './parts/extent.ts';
import { find, flat, number, ownShapes, SHEET } from './pictures.ts';

const WELLS = new Map(SAMPLES.map((name): [string, Solution] => [name, solve(planOf(sample(name)))]));
function well(name: string): Solution {
  const found = WELLS.get(name);
  if (found === undefined) throw new Error(`well: there is no sample "${name}"`);
  return found;
}
const TAMARACK = well('tamarack-ridge');
const at = (moment: Moment, solution = TAMARACK, view: Partial<View> = {}): Scene =>
  draw(solution, { ...SHEET, ...view, moment });
const usual = (solution = TAMARACK, view: Partial<View> = {}): Scene => draw(solution, { ...SHEET, ...view });

/** Shapes of a scene by their whole path, as text. */
function written({ shapes }: Scene): Map<string, string> {
  return new Map(
    flat(shapes).map(({ path, shape: { tag, d, attrs, text } }) => [path, JSON.stringify({ tag, d, attrs, text })]),
  );
}

/** Paths of what is not alike in two scenes. */
function differences(one: Scene, other: Scene): string[] {
  const [a, b] = [written(one), written(other)];
  return [...new Set([...a.keys(), ...b.keys()])].filter((path) => a.get(path) !== b.get(path));
}

const ways = (scene: Scene, name: string) =>
  flat(scene.shapes).filter(({ path }) => path === `flow > ${name}` || path.endsWith(` > flow > ${name}`));

/** Height at which the water in the section begins [px]. */
function surfaceOf(scene: Scene): number {
  const water = flat(ownShapes(scene)).filter(({ path }) => /^well > .*\/water$/.test(path));
  return Math.min(...water.map(({ shape }) => extentOf(shape).top));
}

function depthToY(scene: Scene, depth: number): number {
  const frame = scene.frames.find(({ view }) => view === 'O');
  if (frame === undefined) throw new Error('depthToY: there is no section');
  return frame.y + ((depth - frame.topDepth) * frame.height) / (frame.bottomDepth - frame.topDepth);
}

describe('a moment of which nothing is told', () => {
  test.each(SAMPLES)('draws %s as ever', (name) => {
    expect(toSvg(at({}, well(name)))).toBe(toSvg(usual(well(name))));
  });
});

describe('the check valve', () => {
  test('lifts its poppet and squeezes its spring, and nothing else stirs', () => {
    expect(differences(at({ valveOpen: 1 }), usual()).map((path) => path.split(' > ').slice(-2).join(' > '))).toEqual([
      'checkValve > spring',
      'checkValve > poppet',
    ]);
  });
  test('has the poppet on its seat while the pump is off, half lifted on the way, whole while it is on', () => {
    const lifted = (moment: Moment): number => {
      const moved = find(at(moment).shapes, 'checkValve > poppet').attrs['transform'];
      return moved === undefined ? 0 : Number(/^translate\(0 (-?[\d.]+)\)$/.exec(String(moved))?.[1]);
    };
    expect(lifted({ pumping: false })).toBe(0);
    expect(lifted({ pumping: true })).toBeLessThan(-1);
    expect(lifted({ pumping: true, valveOpen: 0.5 })).toBeCloseTo(lifted({ pumping: true }) / 2, 1);
  });
  test('that points down stays shut, and nothing flows', () => {
    const plan = planOf({
      ...sample('tamarack-ridge'),
      string: { ...(sample('tamarack-ridge')['string'] as object), arrow: 'down' },
    });
    const shut = at({ pumping: true, flow: 0.5 }, solve(plan));
    expect(solve(plan).facts.string.arrow).toBe('down');
    expect(find(shut.shapes, 'checkValve > poppet').attrs['transform']).toBeUndefined();
    expect(ways(shut, 'up')).toHaveLength(0);
  });
});

describe('the water', () => {
  test('stands at its pumping level while the pump runs, at rest while it does not, and else where it is said to', () => {
    const { pumping, static: rest } = TAMARACK.levels;
    if (pumping === null || rest === null) throw new Error('the sample has both levels');
    for (const [moment, depth] of [
      [{ pumping: true }, pumping],
      [{ pumping: false }, rest],
      [{ pumping: false, water: 25 }, 25],
    ] as const) {
      const scene = at(moment);
      expect(Math.abs(surfaceOf(scene) - depthToY(scene, depth))).toBeLessThan(0.2);
    }
  });
  test('at rest has no cone of depression round it', () => {
    expect(differences(at({ pumping: false }), at({ pumping: true })).filter((path) => /cone/i.test(path))).not.toEqual(
      [],
    );
  });
  test('leaves every level line, chip and mark where it was', () => {
    for (const moment of [{ pumping: false }, { pumping: true, flow: 0.3, frostShare: 0.4 }]) {
      const [scene, before] = [at(moment), usual()];
      for (const part of ['chips', 'marks', 'frames', 'hits', 'scales'] as const)
        expect(scene[part]).toEqual(before[part]);
    }
  });
});

describe('the flow', () => {
  test('is marked in the section and in both details while the pump runs, up the pipe and then to the house', () => {
    const drawn = ways(at({ pumping: true, flow: 0.4 }), 'up').map(({ shape }) => chevrons(shape));
    expect(drawn).toHaveLength(3);
    for (const marks of drawn) {
      expect(marks.length).toBeGreaterThan(2);
      for (const { towards } of marks) expect(towards[1] < -0.7 || towards[0] > 0.7).toBe(true);
    }
    expect(drawn.slice(0, 2).every((marks) => marks.some(({ towards }) => towards[0] > 0.9))).toBe(true);
  });
  test('is not marked without a phase, nor in the pipe while the pump is off', () => {
    expect(ways(at({ pumping: true }), 'up')).toHaveLength(0);
    expect(ways(at({ pumping: false, flow: 0.4 }), 'up')).toHaveLength(0);
  });
  test('comes out of the ground in large marks while pumping, in small ones as the water rises, in none at rest', () => {
    const reach = (moment: Moment): number => {
      const [marked] = ways(at({ ...moment, flow: 0.4 }), 'in');
      if (marked === undefined) return 0;
      const [mark] = strokesOf(marked.shape.d ?? '');
      return Math.abs((mark?.[0]?.[1] ?? 0) - (mark?.[2]?.[1] ?? 0));
    };
    expect(reach({ pumping: true })).toBeGreaterThan(reach({ pumping: false, water: 30 }));
    expect(reach({ pumping: false, water: 30 })).toBeGreaterThan(0);
    expect(reach({ pumping: false })).toBe(0);
  });
  test('comes in from both sides of the hole', () => {
    const frame = at({ pumping: true, flow: 0.4 }).frames[0];
    const [marked] = ways(at({ pumping: true, flow: 0.4 }), 'in');
    const marks = marked === undefined ? [] : chevrons(marked.shape);
    const middle = frame === undefined ? 0 : frame.x + frame.width * 0.52;
    expect(new Set(marks.map(({ tip, towards }) => Math.sign(tip[0] - middle) * towards[0]))).toEqual(new Set([-1]));
  });
  test('rewrites only its own marks as it moves', () => {
    const moved = differences(at({ pumping: true, flow: 0.2 }), at({ pumping: true, flow: 0.6 }));
    expect(moved.length).toBeGreaterThan(3);
    for (const path of moved) expect(path).toMatch(/(^|> )flow > (in|up)$/);
  });
  // WCAG 2.2, success criterion 1.4.11: what is needed to understand a picture has a contrast of 3 to 1.
  test.each(['light', 'dark', 'contrast'] as const)('is told from what it lies on in the %s theme', (theme) => {
    const ink = THEMES[theme];
    const { water } = ink.tones;
    for (const name of SAMPLES) {
      const scene = at({ pumping: true, flow: 0.4 }, well(name), { theme });
      const [section, ...details] = ways(scene, 'up').map(({ shape }) => String(shape.attrs['stroke']));
      const { material } = well(name).facts.dropPipe;
      const body = material === 'PE' ? ink.tones.pipe.base : ink.tones.steel.base;
      expect(contrast(sixDigits(section ?? ''), sixDigits(body))).toBeGreaterThanOrEqual(3);
      for (const stroke of details) expect(contrast(stroke, sixDigits(water))).toBeGreaterThanOrEqual(3);
    }
  });
});

describe('the pump', () => {
  test.each([
    [true, /^pump( on)?$/],
    [false, /^pump( off)?$/],
  ])('is told in words, in the section and on the motor: %s', (pumping, words) => {
    const told = flat(at({ pumping }).shapes).filter(({ path }) => path.endsWith('pumpWord/first'));
    expect(told).toHaveLength(2);
    for (const { shape } of told) expect(shape.text).toMatch(words);
  });
});

describe('the frost', () => {
  test('reaches as far as the winter has come; the line stays at the depth that is planned for', () => {
    const [half, whole] = [at({ frostShare: 0.5 }), usual()];
    const tall = (scene: Scene, path: string) => number(find(scene.shapes, path), 'height');
    expect(tall(half, 'frost > frost/band')).toBeCloseTo(tall(whole, 'frost > frost/band') / 2, 5);
    expect(find(half.shapes, 'frost > frost/line')).toEqual(find(whole.shapes, 'frost > frost/line'));
    for (const path of differences(half, whole)) expect(path).toMatch(/frost > (frost\/)?(band|front)$/);
  });
  test('is not there in autumn, nor is snow', () => {
    const autumn = at({ frostShare: 0 });
    expect(number(find(autumn.shapes, 'frost > frost/band'), 'height')).toBe(0);
    expect(flat(usual().shapes).some(({ path }) => /snow/.test(path))).toBe(true);
    expect(flat(autumn.shapes).some(({ path }) => /snow/.test(path))).toBe(false);
  });
  test('thaws from the surface down: the snow is gone first, and the foot of the band stays', () => {
    const [part, none, whole] = [at({ thawShare: 0.25 }), at({ thawShare: 1 }), usual()];
    const band = (scene: Scene, name: 'y' | 'height') => number(find(scene.shapes, 'frost > frost/band'), name);
    expect(band(part, 'height')).toBeCloseTo(band(whole, 'height') * 0.75, 5);
    expect(band(part, 'y') + band(part, 'height')).toBeCloseTo(band(whole, 'y') + band(whole, 'height'), 5);
    expect(flat(part.shapes).some(({ path }) => /snow/.test(path))).toBe(false);
    expect(band(none, 'height')).toBe(0);
    const heights = flat(none.shapes).filter(({ path }) => path.endsWith('frost > band'));
    expect(heights.length).toBeGreaterThan(0);
    for (const { shape } of heights) expect(number(shape, 'height')).toBe(0);
  });
  test('at the end of the freezing season is the frost of the plan', () => {
    expect(toSvg(at({ frostShare: 1 }))).toBe(toSvg(usual()));
  });
});

const MOVING: Moment = { pumping: true, flow: 0.4, valveOpen: 0.5, frostShare: 0.3, thawShare: 0.2, water: 22 };

describe('what is kept or printed', () => {
  test.each<[string, Partial<View>]>([
    ['in the theme for print', { theme: 'print' }],
    ['with a title block, as exports have', { caption: true }],
    ['on a sheet of paper', { theme: 'light', paper: A4 }],
  ])('shows the well as planned: %s', (_, view) => {
    expect(toSvg(at(MOVING, TAMARACK, view))).toBe(toSvg(usual(TAMARACK, view)));
  });
});

const ratio = fc.double({ min: 0, max: 1, noNaN: true });
const moments = fc.record<Moment>(
  {
    pumping: fc.boolean(),
    water: fc.double({ min: 0, max: 60, noNaN: true }),
    valveOpen: ratio,
    flow: ratio,
    frostShare: ratio,
    thawShare: ratio,
  },
  { requiredKeys: [] },
);
const views = fc.constantFrom<Partial<View>>(
  {},
  { theme: 'dark', width: 700 },
  { theme: 'contrast', sheet: 'section', width: 390, height: 620 },
  { sheet: 'pump', width: 420, height: 500 },
  { sheet: { at: 2 }, width: 420, height: 500 },
);

describe('any well at any moment', () => {
  test('has every key once among its siblings, no id, and no mark of the flow outside its window', () => {
    fc.assert(
      fc.property(anyPlan, moments, views, (plan, moment, look) => {
        const scene = at(moment, solve(plan), look);
        const paths = flat(scene.shapes).map(({ path }) => path);
        expect(new Set(paths).size).toBe(paths.length);
        expect(toSvg(scene)).not.toMatch(/ (id|class|style)=|NaN|Infinity/);
        const frames = [...scene.frames];
        for (const name of ['up', 'in']) {
          for (const { shape } of ways(scene, name)) {
            const corners = strokesOf(shape.d ?? '').flat();
            const fits = frames.some(({ x, y, width, height }) =>
              corners.every(([px, py]) => px >= x && px <= x + width && py >= y && py <= y + height),
            );
            expect(fits).toBe(true);
          }
        }
      }),
      { seed: 7, numRuns: 40 },
    );
  }, 60_000);
  test('is drawn alike by one who remembers the moment before', () => {
    const drawer = createDrawer();
    fc.assert(
      fc.property(fc.constantFrom(...SAMPLES), moments, views, (name, moment, look) => {
        const view: View = { ...SHEET, ...look, moment };
        expect(toSvg(drawer(well(name), view))).toBe(toSvg(draw(well(name), view)));
      }),
      { seed: 11, numRuns: 40 },
    );
  }, 60_000);
  test('without a known frost depth or drawdown takes a moment as well', () => {
    const plan = rockWell({
      site: {},
      water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } },
    });
    expect(() => at(MOVING, solve(plan))).not.toThrow();
  });
});

describe('what a drawer remembers never shows while water falls and rises', () => {
  /** Levels from above the well's top to below its bottom, so that they pass both details' windows. */
  const levels = fc.array(fc.double({ min: -0.05, max: 1.1, noNaN: true }), { minLength: 3, maxLength: 8 });
  const sheets = fc.constantFrom<Partial<View>>(
    {},
    { sheet: 'section', width: 390, height: 620 },
    { sheet: 'pump', width: 420, height: 460, theme: 'dark', units: 'metric' },
    { sheet: { at: 2 }, width: 420, height: 500 },
  );
  /** The well with its water at a share of its depth, as a curve of level against time sets it. */
  function withWater(solution: Solution, share: number): Solution {
    const pumping = solution.facts.well.bottom * share;
    const { intakeDepth } = solution.values;
    return {
      ...solution,
      levels: { ...solution.levels, pumping, pumpingDry: null },
      values: {
        ...solution.values,
        pumpingWaterLevel: pumping,
        submergence: intakeDepth === null ? null : intakeDepth - pumping,
      },
    };
  }
  function holds(solution: Solution, shares: readonly number[], look: Partial<View>): void {
    const drawer = createDrawer();
    shares.forEach((share, i) => {
      const stands = withWater(solution, share);
      const moment = { pumping: i % 3 !== 2, flow: (i * 0.3) % 1, water: stands.levels.pumping ?? 0 };
      const view: View = { ...SHEET, ...look, moment };
      const scene = drawer(stands, view);
      const anew = draw(stands, view);
      expect(toSvg(scene)).toBe(toSvg(anew));
      for (const part of ['chips', 'marks', 'frames', 'hits', 'scales'] as const)
        expect(scene[part]).toEqual(anew[part]);
    });
  }
  test.each(SAMPLES)('%s', (name) => {
    fc.assert(
      fc.property(levels, sheets, (shares, look) => holds(well(name), shares, look)),
      { seed: 43, numRuns: 8 },
    );
  });
  test('any plan', () => {
    fc.assert(
      fc.property(anyPlan, levels, sheets, (plan, shares, look) => holds(solve(plan), shares, look)),
      { seed: 44, numRuns: 25 },
    );
  });
});

test('water that falls in the section leaves alone what it does not touch', () => {
  const drawer = createDrawer();
  const fallen = (water: number): Scene => {
    const levels = { ...TAMARACK.levels, pumping: water };
    return drawer({ ...TAMARACK, levels }, { ...SHEET, moment: { pumping: true, flow: 0.5, water } });
  };
  const { static: rest } = TAMARACK.levels;
  if (rest === null) throw new Error('the sample has a level at rest');
  const before = fallen(rest + 6);
  const after = fallen(rest + 7);
  for (const path of [
    'ground',
    'house',
    'tails',
    'string',
    'levels > staticLevel',
    'levels > staticLevel/sign',
    'detail/A > well',
    'detail/A > leaders',
    'detail/B > well',
    'detail/B > leaders',
    'detail/B > boxes',
  ])
    expect(find(after.shapes, path), path).toBe(find(before.shapes, path));
  for (const path of ['well > openHole/water', 'levels > pumpingLevel', 'chips > pumpingLevel'])
    expect(find(after.shapes, path), path).not.toBe(find(before.shapes, path));
});
