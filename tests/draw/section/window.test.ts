import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { A4, createDrawer, draw, toSvg, type DepthSpan, type Scene, type View } from '../../../src/draw/index.ts';
import type { Shape } from '../../../src/draw/scene.ts';
import { sectionWindow, widestRadius } from '../../../src/draw/section/frame.ts';
import { leastSpan, LEAST_SPAN, spanWithin } from '../../../src/draw/section/window.ts';
import { solve, type Solution } from '../../../src/model/index.ts';
import { handlesOf } from '../../../src/model/handles.ts';
import { feet, toFeet } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';
import { extentOf } from '../parts/extent.ts';
import { covered, find, flat, number, picture, SHEET, textBoxes } from '../pictures.ts';

const span = (from: number, to: number): DepthSpan => ({ topDepth: feet(from), bottomDepth: feet(to) });

function frameOf(scene: Scene) {
  const frame = scene.frames.find((each) => each.view === 'O');
  if (frame === undefined) throw new Error('no section on this sheet');
  const k = frame.height / (frame.bottomDepth - frame.topDepth);
  return {
    ...frame,
    k,
    foot: frame.y + frame.height,
    at: (depth: number) => frame.y + k * (depth - frame.topDepth),
  };
}

const SHEETS: readonly Partial<View>[] = [
  { sheet: 'section', width: 320, height: 560 },
  { sheet: 'section', width: 390, height: 640 },
  { sheet: 'all', width: 1000, height: 960 },
  { sheet: 'all', width: 1400, height: 900 },
];

/** A stretch of the well, by two shares of it; sometimes wild. */
const shares = fc.tuple(
  fc.double({ min: -0.2, max: 1.2, noNaN: true }),
  fc.double({ min: 0, max: 0.7, noNaN: true }).map((share) => share ** 3),
);

function windowOf(solution: Solution, [start, length]: readonly [number, number]): DepthSpan {
  const { topDepth, bottomDepth } = sectionWindow(solution);
  const whole = bottomDepth - topDepth;
  return { topDepth: topDepth + start * whole, bottomDepth: topDepth + (start + length) * whole };
}

/** Lowest and highest y that a shape names; places in paths are the second of each pair after a capital letter. */
function heights(shape: Shape): number[] {
  const { attrs, d } = shape;
  const known = (['y', 'y1', 'y2', 'cy'] as const).flatMap((name) => {
    const value = attrs[name];
    return typeof value === 'number' ? [value] : [];
  });
  if (typeof attrs['height'] === 'number' && known[0] !== undefined) known.push(known[0] + attrs['height']);
  const pairs = [...(d ?? '').matchAll(/[ML](-?[\d.]+)[ ,]?(-?[\d.]+)/g)];
  return [...known, ...pairs.map((pair) => Number(pair[2]))];
}

const ofSection = (scene: Scene): Shape[] =>
  scene.shapes.filter(({ key }) => !/^(paper|heading|detail|mat|frame|link|lit)/.test(key));

describe('a window of the section', () => {
  test('of any plan is cropped by one viewport: nothing of the ground or the well is drawn outside it', () => {
    fc.assert(
      fc.property(anyPlan, shares, fc.constantFrom(...SHEETS), (plan, share, sheet) => {
        const solution = solve(plan);
        const scene = draw(solution, { ...SHEET, ...sheet, window: windowOf(solution, share) });
        const frame = frameOf(scene);
        const crop = scene.shapes.find(({ key }) => key === 'window');
        if (crop === undefined) return;
        expect(crop.tag).toBe('svg');
        expect(crop.attrs['overflow']).toBe('hidden');
        expect(number(crop, 'x')).toBe(frame.x);
        expect(number(crop, 'width')).toBe(frame.width);
        expect(number(crop, 'y') + number(crop, 'height')).toBeCloseTo(frame.foot, 6);
        expect(number(crop, 'y')).toBeGreaterThanOrEqual(frame.y - 50 - 1e-6);
        // Labels, chips, marks and rail stand outside that viewport, and still beside the section.
        const outside = flat(ofSection(scene).filter((each) => each !== crop)).flatMap(({ path, shape }) =>
          heights(shape).flatMap((y) => (y >= frame.y - 32 && y <= frame.foot + 32 ? [] : [`${path} at ${y}`])),
        );
        expect(outside).toEqual([]);
        for (const { x, y, width, height, view } of scene.hits.filter((hit) => hit.view === 'O')) {
          expect(view).toBe('O');
          expect(Math.min(x - frame.x, y - frame.y)).toBeGreaterThanOrEqual(-1e-6);
          expect(x + width).toBeLessThanOrEqual(frame.x + frame.width + 1e-6);
          expect(y + height).toBeLessThanOrEqual(frame.foot + 1e-6);
        }
      }),
      { seed: 307, numRuns: 400 },
    );
  }, 60_000);

  test('keeps depths linear and within the well, shows at least four feet, and draws no width narrower than it is', () => {
    fc.assert(
      fc.property(anyPlan, shares, fc.constantFrom(...SHEETS), (plan, share, sheet) => {
        const solution = solve(plan);
        const scene = draw(solution, { ...SHEET, ...sheet, window: windowOf(solution, share) });
        const frame = frameOf(scene);
        const whole = sectionWindow(solution);
        expect(frame.topDepth).toBeGreaterThanOrEqual(whole.topDepth - 1e-9);
        expect(frame.bottomDepth).toBeLessThanOrEqual(whole.bottomDepth + 1e-9);
        if (!scene.shapes.some(({ key }) => key === 'window')) return;
        expect(frame.bottomDepth - frame.topDepth).toBeGreaterThanOrEqual(LEAST_SPAN - 1e-9);
        expect(frame.widthFactor).toBeGreaterThanOrEqual(1);
        for (const { shape } of flat([find(scene.shapes, 'rail > figures')]).slice(1)) {
          const depth = Number(shape.text) * (SHEET.units === 'us' ? feet(1) : 1);
          expect(number(shape, 'y') - 4).toBeCloseTo(frame.at(depth), 6);
        }
      }),
      { seed: 308, numRuns: 400 },
    );
  }, 60_000);

  test('tells every known level: inside at its depth, outside by a chip at the edge with an arrow to it', () => {
    fc.assert(
      fc.property(anyPlan, shares, fc.constantFrom(...SHEETS), (plan, share, sheet) => {
        const solution = solve(plan);
        const view = { ...SHEET, ...sheet };
        const scene = draw(solution, { ...view, window: windowOf(solution, share) });
        const frame = frameOf(scene);
        const depths = new Map(handlesOf(solution).map(({ id, depth, known }) => [id, known ? depth : null]));
        const whole = sectionWindow(solution);
        const cutAbove = frame.topDepth > whole.topDepth + 1e-6;
        const cutBelow = frame.bottomDepth < whole.bottomDepth - 1e-6;
        for (const chip of scene.chips) {
          const depth = depths.get(chip.handle) ?? null;
          // A level under the well's own bottom is told at its foot, in any window.
          if (depth === null || depth > whole.bottomDepth) continue;
          const where =
            cutAbove && depth < frame.topDepth ? 'above' : cutBelow && depth > frame.bottomDepth ? 'below' : undefined;
          expect(chip.beyond, chip.handle).toBe(where);
          if (where === undefined) {
            expect(chip.lineY).toBeCloseTo(frame.at(depth), 6);
          } else {
            find(scene.shapes, `beyond > ${chip.handle} > arrow/${where}`);
            expect(find(scene.shapes, `beyond > ${chip.handle} > value`).text).not.toBe('');
            expect(flat(scene.shapes).some(({ path }) => path === `leaders > ${chip.handle}`)).toBe(false);
          }
        }
        // Every level that the whole section has a chip for has one here, or is counted.
        const told = new Set(scene.scales.chips.map(({ handle }) => handle));
        for (const { handle } of draw(solution, view).chips) expect(told.has(handle)).toBe(true);
      }),
      { seed: 309, numRuns: 400 },
    );
  }, 60_000);

  test('keeps chips apart, in the column and in the two stacks at its ends', () => {
    fc.assert(
      fc.property(anyPlan, shares, fc.constantFrom(...SHEETS), (plan, share, sheet) => {
        const solution = solve(plan);
        const { chips, height } = draw(solution, { ...SHEET, ...sheet, window: windowOf(solution, share) });
        const column = [...chips].sort((a, b) => a.y - b.y);
        column.forEach((chip, i) => {
          const above = column[i - 1];
          if (above !== undefined) expect(chip.y).toBeGreaterThanOrEqual(above.y + above.height - 1e-6);
          expect(chip.y + chip.height).toBeLessThanOrEqual(height);
        });
      }),
      { seed: 310, numRuns: 400 },
    );
  }, 60_000);

  test('has a mark for what is wrong in it, under the finding’s own number, and none for what is elsewhere', () => {
    const solution = solve(planOf(sample('slate-hollow')));
    const { topDepth, bottomDepth } = sectionWindow(solution);
    let shown = 0;
    for (let part = 0; part < 6; part++) {
      const from = topDepth + ((bottomDepth - topDepth) * part) / 6;
      const window = { topDepth: from, bottomDepth: from + (bottomDepth - topDepth) / 6 };
      const scene = draw(solution, { ...SHEET, window });
      const frame = frameOf(scene);
      const inside = solution.findings.flatMap(({ depth }, i) =>
        depth !== null && depth >= frame.topDepth - 1e-9 && depth <= frame.bottomDepth + 1e-9 ? [i + 1] : [],
      );
      const marks = scene.marks.filter(({ view }) => view === 'O').map((mark) => mark.number);
      expect(marks.sort((a, b) => a - b)).toEqual(inside);
      shown += marks.length;
    }
    expect(shown).toBeGreaterThan(0);
  });

  test('names no end of the allowed band that it does not show', () => {
    const plan = planOf(sample('tamarack-ridge'));
    const { bands } = solve(plan);
    const band = bands.find(({ setting }) => setting === 'pump.setting');
    if (band?.from == null || band.to === null) throw new Error('this well has a band');
    const middle = toFeet((band.from + band.to) / 2);
    const paths = (window: DepthSpan): string[] => flat(picture(plan, { window }).scene.shapes).map(({ path }) => path);
    const inBand = paths(span(middle - 8, middle + 8));
    expect(inBand.some((path) => path.endsWith('pump.setting > bar'))).toBe(true);
    expect(inBand.some((path) => path.endsWith('pump.setting/from') || path.endsWith('pump.setting/to'))).toBe(false);
    const atFrom = paths(span(toFeet(band.from) - 8, middle));
    expect(atFrom.some((path) => path.endsWith('bands > pump.setting/from'))).toBe(true);
  });

  test('has its words clear of each other', () => {
    for (const name of SAMPLES) {
      const solution = solve(planOf(sample(name)));
      const { topDepth, bottomDepth } = sectionWindow(solution);
      for (const sheet of SHEETS)
        for (let part = 0; part < 8; part++) {
          const from = topDepth + ((bottomDepth - topDepth) * part) / 9;
          const window = { topDepth: from, bottomDepth: from + (bottomDepth - topDepth) / 5 };
          const scene = draw(solution, { ...SHEET, ...sheet, window });
          const frame = frameOf(scene);
          const boxes = textBoxes(
            ofSection(scene).flatMap((each) => (each.key === 'window' ? (each.children ?? []) : [each])),
          ).filter(({ top, bottom }) => bottom > frame.y - 30 && top < frame.foot + 24);
          boxes.forEach((a, i) => {
            for (const b of boxes.slice(i + 1))
              expect(covered(a, b), `${name} ${part}: "${a.words}" ${a.path} over "${b.words}" ${b.path}`).toBeLessThan(
                1.01,
              );
          });
        }
    }
  }, 60_000);
});

describe('ticks', () => {
  const figures = (depth: number, window: DepthSpan, units: View['units']): number[] => {
    const plan = rockWell({
      well: {
        depth: `${depth} ft`,
        casing: { material: 'steel', size: '6 in', bottom: `${depth / 2} ft`, height: '12 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
      },
      water: { staticLevel: `${depth * 0.3} ft` },
      pump: { setting: `${depth * 0.7} ft`, power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } },
    });
    const { scene } = picture(plan, { window, units });
    return flat([find(scene.shapes, 'rail > figures')])
      .slice(1)
      .map(({ shape }) => Number(shape.text));
  };

  test.each([15, 80, 220, 1000])('of a %d ft well come to feet and decimetres in a window of a few feet', (depth) => {
    const middle = depth / 2;
    const window = span(middle - 2.5, middle + 2.5);
    for (const [units, finest] of [
      ['us', 0.5],
      ['metric', 0.1],
    ] as const) {
      const all = figures(depth, window, units);
      const steps = all.slice(1).map((figure, i) => figure - all[i]!);
      expect(all.length).toBeGreaterThanOrEqual(5);
      for (const step of steps) {
        expect(step).toBeCloseTo(steps[0]!, 6);
        expect(step).toBeGreaterThanOrEqual(finest - 1e-9);
        expect(step).toBeLessThanOrEqual(units === 'us' ? 1 : 0.2 + 1e-9);
      }
    }
  });

  test('with a figure are a 1, 2 or 5 apart, all of them named, at every length of window', () => {
    for (let length = 4; length < 900; length *= 1.13) {
      const all = figures(1000, span(50, 50 + length), 'us');
      const step = all[1]! - all[0]!;
      const lead = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
      expect(
        [1, 2, 5].some((each) => Math.abs(each - lead) < 1e-6),
        `${length} ft: every ${step}`,
      ).toBe(true);
      all.slice(1).forEach((figure, i) => expect(figure - all[i]!).toBeCloseTo(step, 6));
      expect(all.length).toBeGreaterThan(3);
    }
  });
});

describe('the whole well', () => {
  test.each(SAMPLES)('of %s is the same picture with a window round it as without one', (name) => {
    const solution = solve(planOf(sample(name)));
    for (const sheet of SHEETS) {
      const without = toSvg(draw(solution, { ...SHEET, ...sheet }));
      for (const window of [sectionWindow(solution), span(-100, 5000)])
        expect(toSvg(draw(solution, { ...SHEET, ...sheet, window }))).toBe(without);
    }
  });

  test('is what paper shows, whatever the window', () => {
    const solution = solve(planOf(sample('tamarack-ridge')));
    const view: View = { ...SHEET, theme: 'print', caption: true, paper: A4 };
    expect(toSvg(draw(solution, { ...view, window: span(100, 140) }))).toBe(toSvg(draw(solution, view)));
  });
});

describe('from near', () => {
  test('the section shows the parts themselves, no symbols: valve, splice and arrestor as in the details', () => {
    const plan = planOf(sample('tamarack-ridge'));
    const near = flat(picture(plan, { window: span(165, 190) }).scene.shapes).map(({ path }) => path);
    const far = flat(picture(plan).scene.shapes).map(({ path }) => path);
    for (const part of ['checkValve', 'splice', 'torqueArrestor', 'motor'])
      expect(near.filter((path) => path.startsWith(`window > well > ${part}`)).length, part).toBeGreaterThan(0);
    expect(near.some((path) => path.includes('string > pumpBody'))).toBe(false);
    expect(far.some((path) => path.endsWith('pumpBody > outline'))).toBe(true);
  });

  test('the pump stands at its depth, and the pointer finds it there', () => {
    const { scene, solution } = picture(planOf(sample('tamarack-ridge')), { window: span(165, 190) });
    const frame = frameOf(scene);
    const motor = scene.hits.find((hit) => hit.view === 'O' && hit.kind === 'motor');
    expect(motor).toBeDefined();
    expect(motor!.y + motor!.height).toBeCloseTo(frame.at(solution.values.motorBottomDepth ?? NaN), 4);
  });

  test('a letter for each detail stands at what it shows, or points to it', () => {
    const plan = planOf(sample('tamarack-ridge'));
    const { shapes } = picture(plan, { window: span(100, 140) }).scene;
    find(shapes, 'bracket/A > arrow/above');
    find(shapes, 'bracket/B > arrow/below');
    expect(shapes.some(({ key }) => key.startsWith('link/'))).toBe(false);
    const atPump = picture(plan, { window: span(165, 190) }).scene.shapes;
    find(atPump, 'bracket/B > bracket');
    expect(atPump.filter(({ key }) => key.startsWith('link/')).map(({ key }) => key)).toEqual(['link/B']);
  });

  describe('what a lens shows', () => {
    const plan = planOf(sample('tamarack-ridge'));
    const bracketOf = (view: Partial<View>) => find(picture(plan, view).scene.shapes, 'bracket/C > bracket');

    test('has a bracket of its own, as long as what it shows, and no link: it lies over the sheet', () => {
      const view = { window: span(100, 140), lens: span(119, 122) };
      const { scene } = picture(plan, view);
      const frame = frameOf(scene);
      const extent = extentOf(bracketOf(view));
      expect(extent.top).toBeCloseTo(frame.at(feet(119)), 0);
      expect(extent.bottom).toBeCloseTo(frame.at(feet(122)), 0);
      expect(scene.shapes.some(({ key }) => key === 'link/C')).toBe(false);
      expect(bracketOf({ lens: span(119, 122) })).toBeDefined();
    });

    test('is pointed to where the window leaves it out, beyond the letters of the details', () => {
      const { shapes } = picture(plan, { window: span(100, 140), lens: span(60, 63) }).scene;
      find(shapes, 'bracket/C > arrow/above');
      const letter = (view: string) => number(find(shapes, `bracket/${view} > letter`), 'y');
      expect(letter('A') - letter('C')).toBeGreaterThanOrEqual(14);
      find(picture(plan, { window: span(100, 140), lens: span(180, 183) }).scene.shapes, 'bracket/C > arrow/below');
    });

    test('is not told of without a lens, nor on a sheet whose details have no brackets', () => {
      const keys = (view: Partial<View>) => flat(picture(plan, view).scene.shapes).map(({ path }) => path);
      expect(keys({}).filter((path) => path.includes('bracket/C'))).toEqual([]);
      expect(
        keys({ sheet: 'section', width: 390, lens: span(60, 63) }).filter((path) => path.includes('bracket')),
      ).toEqual([]);
    });

    test('letters stay apart, wherever it looks and whatever the section shows', () => {
      const at = fc.double({ min: -2, max: 1000, noNaN: true });
      fc.assert(
        fc.property(anyPlan, shares, at, fc.boolean(), (some, share, depth, isZoomed) => {
          const solution = solve(some);
          const window = isZoomed ? { window: windowOf(solution, share) } : {};
          const lens = span(Math.min(depth, toFeet(solution.facts.well.bottom)) - 1, depth + 1);
          const { shapes } = draw(solution, { ...SHEET, ...window, lens });
          const ys = flat(shapes)
            .filter(({ path }) => /^bracket\/. > letter$/.test(path))
            .map(({ shape }) => ({ x: number(shape, 'x'), y: number(shape, 'y') }));
          const lensLetter = ys[2];
          expect(ys).toHaveLength(3);
          for (const { y } of ys.slice(0, 2)) expect(Math.abs(y - lensLetter!.y)).toBeGreaterThanOrEqual(13.9);
        }),
        { seed: 77, numRuns: 300 },
      );
    }, 60_000);
  });

  test('a strip by the rail marks what part of the whole is seen', () => {
    const { scene, solution } = picture(planOf(sample('tamarack-ridge')), { window: span(100, 140) });
    const strip = find(scene.shapes, 'overview > whole');
    const seen = find(scene.shapes, 'overview > seen');
    const { topDepth, bottomDepth } = sectionWindow(solution);
    const at = (depth: number): number =>
      number(strip, 'y') + ((depth - topDepth) / (bottomDepth - topDepth)) * number(strip, 'height');
    expect(number(seen, 'y')).toBeCloseTo(at(feet(100)), 6);
    expect(number(seen, 'y') + number(seen, 'height')).toBeCloseTo(at(feet(140)), 6);
  });
});

describe('while a level is dragged in a window', () => {
  test('its scale stands still, whatever becomes of the well', () => {
    const window = span(100, 145);
    const before = picture(rockWell(), { window }).scene;
    const kept = before.scales.windows.O;
    if (kept === undefined) throw new Error('no section');
    const deeper = rockWell({
      well: {
        depth: '260 ft',
        casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '12 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
      },
    });
    const { scene } = picture(deeper, {
      window,
      frozen: { windows: { O: kept }, chips: before.scales.chips },
      held: { handle: 'wellBottom', start: feet(200) },
    });
    expect(scene.scales.windows.O).toEqual(kept);
  });
});

describe('a drawer', () => {
  test('remembers nothing of another window that would show', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SAMPLES),
        fc.array(fc.option(shares, { nil: null }), { minLength: 2, maxLength: 6 }),
        fc.constantFrom(...SHEETS),
        (name, steps, sheet) => {
          const drawer = createDrawer();
          const plan = planOf(sample(name));
          for (const step of steps) {
            const solution = solve(plan);
            const view: View = {
              ...SHEET,
              ...sheet,
              ...(step === null ? {} : { window: windowOf(solution, step) }),
            };
            expect(toSvg(drawer(solution, view))).toBe(toSvg(draw(solution, view)));
          }
        },
      ),
      { seed: 311, numRuns: 60 },
    );
  }, 60_000);
});

describe('the arithmetic of a window', () => {
  const whole = span(-2, 220);

  test('a window is moved into the well at its own length', () => {
    const lower = spanWithin(span(210, 240), whole)!;
    expect(toFeet(lower.bottomDepth)).toBeCloseTo(220, 9);
    expect(toFeet(lower.topDepth)).toBeCloseTo(190, 9);
    const upper = spanWithin(span(-30, 10), whole)!;
    expect(toFeet(upper.topDepth)).toBeCloseTo(-2, 9);
    expect(toFeet(upper.bottomDepth)).toBeCloseTo(38, 9);
  });

  test('one that is too short grows about its middle, and one as long as the well is the whole', () => {
    const short = spanWithin(span(99, 101), whole)!;
    expect(toFeet(short.topDepth)).toBeCloseTo(98, 9);
    expect(toFeet(short.bottomDepth)).toBeCloseTo(102, 9);
    expect(spanWithin(span(0, 222), whole)).toBeNull();
    expect(spanWithin(span(0, 3), span(-1, 2.5))).toBeNull();
  });

  test('a wide hole is never asked to be narrower than it is: the window stays as long as that takes', () => {
    const widest = widestRadius(solve(planOf(sample('tamarack-ridge'))));
    expect(leastSpan(widest, 400, 800)).toBe(LEAST_SPAN);
    const dug = 0.5;
    const least = leastSpan(dug, 400, 800);
    expect(((2 * dug) / least) * 800).toBeLessThan(400);
  });
});
