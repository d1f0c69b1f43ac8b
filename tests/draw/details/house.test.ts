/** Detail D: what stands in the house, at one scale both ways, its heights counted from the floor. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawAtHouse } from '../../../src/draw/details/house/atHouse.ts';
import { A3, draw, LETTER, TABLOID } from '../../../src/draw/index.ts';
import { forgetful } from '../../../src/draw/memory.ts';
import type { DetailScene } from '../../../src/draw/view.ts';
import type { HitPlace, Scene } from '../../../src/draw/index.ts';
import { airShare } from '../../../src/model/formulas/tank.ts';
import { atmosphericPressure } from '../../../src/model/formulas/water.ts';
import { isInHouse } from '../../../src/model/string/houseKinds.ts';
import type { Solution } from '../../../src/model/solution.ts';
import { inches } from '../../../src/model/units.ts';
import { pathPoints } from '../parts/extent.ts';
import { flat } from '../pictures.ts';
import { frame, well, yIn } from './wells.ts';

const LARGE = frame('D', { width: 560, height: 600 });
const house = (solution: Solution, at = LARGE): DetailScene => drawAtHouse(solution, at, forgetful);

const hit = ({ hits }: DetailScene, key: string): HitPlace => {
  const found = hits.find(({ part }) => part === key);
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
};

const words = ({ shapes }: DetailScene): string[] => flat(shapes).flatMap(({ shape }) => shape.text ?? []);
const shapeAt = ({ shapes }: DetailScene, end: string) => flat(shapes).find(({ path }) => path.endsWith(end))?.shape;

describe('true heights over the floor', () => {
  test.each([
    ['the middle of the tank tee', 'tankTee', 8],
    ['the open end of the relief valve’s pipe', 'reliefPipe', 4],
    ['the foot of the disconnect', 'disconnect', 56],
  ] as const)('%s', (_, key, height) => {
    const scene = house(well('tamarack-ridge'));
    const { y, height: tall } = hit(scene, key);
    const at = key === 'tankTee' ? y + tall / 2 : y + tall;
    expect(at).toBeCloseTo(yIn(LARGE, scene)(-inches(height)), 6);
  });

  test('widths are drawn as heights are: a 44 gal tank is 19 in wide and twice as tall, without its ring', () => {
    const scene = house(well('tamarack-ridge'));
    const { width, height } = hit(scene, 'tank');
    expect(scene.widthFactor).toBe(1);
    expect(width / scene.k / inches(1)).toBeCloseTo(19.2, 1);
    expect((height / scene.k - inches(10)) / (width / scene.k)).toBeCloseTo(2, 6);
  });

  test('its rail counts them upward from the floor', () => {
    const scene = house(well('tamarack-ridge'));
    const five = flat(scene.shapes).find(({ shape }) => shape.text === '5')?.shape.attrs['y'];
    expect(Number(five)).toBeCloseTo(yIn(LARGE, scene)(-inches(60)) + 4, 6);
  });
});

/** Volume of what a closed outline encloses, turned about its middle, between two heights. */
function turnedVolume(d: string): number {
  const points = pathPoints(d);
  const xs = points.map(([x]) => x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const side = points.filter(([x]) => x >= middle - 1e-6).sort(([, a], [, b]) => a - b);
  let volume = 0;
  for (let i = 1; i < side.length; i++) {
    const [[x1, y1], [x2, y2]] = [side[i - 1]!, side[i]!];
    const [a, b] = [x1 - middle, x2 - middle];
    volume += ((y2 - y1) * (a * a + a * b + b * b)) / 3;
  }
  return volume;
}

describe('the tank', () => {
  test.each([
    ['40 psi', '60 psi', '38 psi'],
    ['20 psi', '40 psi', '18 psi'],
    ['50 psi', '70 psi', '20 psi'],
  ])('set to %s and %s over %s of air holds that share of water', (cutIn, cutOut, precharge) => {
    const solution = well('tamarack-ridge', {
      'house.cutIn': cutIn,
      'house.cutOut': cutOut,
      'house.precharge': precharge,
    });
    const scene = house(solution);
    const { facts } = solution;
    const atmosphere = atmosphericPressure(facts.site.altitude);
    const wanted = 1 - airShare(facts.house.cutOut, { precharge: facts.house.precharge, atmosphere });
    const drawn = turnedVolume(shapeAt(scene, 'tank > water')!.d!) / turnedVolume(shapeAt(scene, 'tank > body')!.d!);
    // Heads are drawn with corners, in tenths of a pixel.
    expect(drawn).toBeGreaterThan(wanted - 0.006);
    expect(drawn).toBeLessThan(wanted + 0.006);
  });

  test('between both levels lies the water that it gives at a start', () => {
    const solution = well('tamarack-ridge');
    const { precharge, cutIn, cutOut, tank } = solution.facts.house;
    const air = { precharge, atmosphere: atmosphericPressure(solution.facts.site.altitude) };
    expect((airShare(cutIn, air) - airShare(cutOut, air)) * tank!).toBeCloseTo(solution.values.tankDrawdown!, 12);
  });

  test('charged over the cut-out it takes no water, and none is drawn', () => {
    const scene = house(well('tamarack-ridge', { 'house.precharge': '80 psi' }));
    expect(shapeAt(scene, 'tank > water')).toBeUndefined();
  });

  test('open to the air it has a float on the water, and neither switch nor relief valve', () => {
    const scene = house(well('tamarack-ridge', { 'house.kind': 'open tank', 'house.tank': '500 gal' }));
    const kinds = scene.hits.map(({ kind }) => kind);
    expect(kinds).toContain('float');
    for (const none of ['switch', 'reliefValve', 'tankTee'] as const) expect(kinds).not.toContain(none);
    const ball = shapeAt(scene, 'float > ball')!;
    const surface = pathPoints(shapeAt(scene, 'tank > surface')!.d!)[0]!;
    expect(Number(ball.attrs['cy'])).toBeCloseTo(surface[1], 1);
  });
});

describe('what guards the tank', () => {
  test('the shut-off stands past the tee, and nothing that closes between the pump and switch or relief valve', () => {
    const scene = house(well('tamarack-ridge'));
    const tee = hit(scene, 'tankTee');
    const shutOff = hit(scene, 'shutOff');
    expect(shutOff.y + shutOff.height).toBeLessThan(tee.y);
    for (const key of ['switch', 'gauge', 'reliefValve']) {
      const port = hit(scene, key);
      expect(port.y + port.height).toBeCloseTo(tee.y, 6);
      expect(port.x).toBeGreaterThan(tee.x);
      expect(port.x + port.width).toBeLessThan(tee.x + tee.width);
    }
    const riser = hit(scene, 'riser');
    const riserFoot = riser.y + riser.height;
    const between = scene.hits.filter(
      ({ kind, x, y, width, height }) =>
        !['riser', 'tankTee', 'buriedLine'].includes(kind) &&
        x < riser.x + riser.width &&
        x + width > riser.x &&
        y + height > tee.y + tee.height &&
        y < riserFoot,
    );
    expect(between).toEqual([]);
  });

  test('the relief valve’s pipe ends open: no higher over the floor than 6 in, no lower than twice its width', () => {
    const scene = house(well('tamarack-ridge'));
    const { y, height, width } = hit(scene, 'reliefPipe');
    const over = (yIn(LARGE, scene)(0) - y - height) / scene.k;
    expect(over).toBeLessThanOrEqual(inches(6));
    expect(over).toBeGreaterThanOrEqual((2 * width) / scene.k);
    expect(words(scene)).toContain('Relief pipe, open end');
  });

  test.each([
    [true, 'Relief valve'],
    [false, 'No relief valve'],
    [undefined, 'Relief valve? Not said'],
  ])('a relief valve that the plan gives as %s is told as "%s"', (reliefValve, said) => {
    const scene = house(well('tamarack-ridge', { 'house.reliefValve': reliefValve }));
    expect(words(scene)).toContain(said);
    expect(scene.hits.some(({ kind }) => kind === 'reliefValve')).toBe(reliefValve === true);
  });

  test.each([
    [{ 'pump.wires': 3 }, 'controlBox'],
    [{ 'pump.wires': 2 }, null],
    [{ 'house.control': 'variable speed' }, 'drive'],
  ] as const)('beside the disconnect, %j hangs %s', (changes, box) => {
    const kinds = house(well('tamarack-ridge', changes)).hits.map(({ kind }) => kind);
    expect(kinds).toContain('disconnect');
    expect(kinds.filter((kind) => kind === 'controlBox' || kind === 'drive')).toEqual(box === null ? [] : [box]);
  });
});

test('nobody is told that the rise holds against frost: it is asked for, unless the ground never freezes', () => {
  const asked = (changes: Readonly<Record<string, unknown>>): string[] => words(house(well('tamarack-ridge', changes)));
  for (const depth of ['48 in', 'unknown', '1 in'])
    expect(asked({ 'site.frostDepth': depth }).some((each) => each.startsWith('Frost'))).toBe(true);
  expect(asked({ 'site.frostDepth': '0 in' }).some((each) => each.startsWith('Frost'))).toBe(false);
});

test('a fault of the tank stands beside it, with its number in the label', () => {
  const solution = well('tamarack-ridge', { 'house.reliefValve': false, 'house.tankRating': '60 psi' });
  const number = solution.findings.findIndex(({ part }) => part === 'tank') + 1;
  const scene = house(solution);
  const tank = hit(scene, 'tank');
  const mark = scene.marks.find((each) => each.number === number)!;
  expect(mark.x).toBeLessThan(tank.x);
  expect(mark.view).toBe('D');
  expect(shapeAt(scene, 'tank/sign')).toBeDefined();
});

test('a fault of the line that has a depth in the well is marked where the line comes in', () => {
  const solution = well('tamarack-ridge', {});
  const fault = { ...solution.findings[0]!, part: 'buriedLine', partKind: 'buriedLine' as const, depth: 1.8 };
  expect(house({ ...solution, findings: [fault] }).marks).toHaveLength(1);
});

describe('any house', () => {
  /** What is meant to meet: the tee and what is screwed into it, the float in its tank, the line and its rise. */
  const MEET = (a: string, b: string): boolean =>
    [
      ['tank', 'float'],
      ['riser', 'tankTee'],
      ['riser', 'buriedLine'],
      ['riser', 'shutOff'],
      ['reliefValve', 'reliefPipe'],
    ].some((pair) => pair.includes(a) && pair.includes(b));
  const volumes = fc.double({ min: 2, max: 400, noNaN: true }).map((each) => `${each.toFixed(1)} gal`);
  const plans = fc.record({
    'house.tank': fc.oneof(volumes, fc.constant('unknown')),
    'house.kind': fc.constantFrom('pressure tank', 'open tank'),
    'house.control': fc.constantFrom('switch', 'variable speed'),
    'house.reliefValve': fc.constantFrom(true, false),
    'house.rise': fc.constantFrom('-4 ft', '0 ft', '30 ft', 'unknown'),
    'pump.wires': fc.constantFrom(2, 3),
    top: fc.constantFrom({ kind: 'seal' }, { kind: 'pitless', depth: '6 ft' }),
  });
  const sizes = fc.record({ width: fc.integer({ min: 320, max: 700 }), height: fc.integer({ min: 300, max: 800 }) });

  test('stands apart, inside its frame, left of its labels, which do not touch', () => {
    fc.assert(
      fc.property(plans, sizes, (changes, size) => {
        const at = frame('D', size);
        const scene = house(well('tamarack-ridge', changes), at);
        const faults: string[] = [];
        const parts = scene.hits.filter(({ kind }) => isInHouse(kind) || kind === 'buriedLine');
        parts.forEach((a, i) => {
          if (a.x < at.x || a.y < at.y || a.x + a.width > at.x + at.width || a.y + a.height > at.y + at.height)
            faults.push(`${a.part} leaves the frame`);
          for (const b of parts.slice(i + 1)) {
            const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
            const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
            if (across > 0.01 && down > 0.01 && !MEET(a.part, b.part)) faults.push(`${a.part} over ${b.part}`);
          }
        });
        const boxes = flat(scene.shapes)
          .filter(({ path }) => path.includes('boxes > '))
          .flatMap(({ shape }) => (shape.d === undefined ? [] : shape.d.split(/(?=M)/)))
          .map((d) => pathPoints(d).map(([, y]) => y))
          .map((ys) => ({ top: Math.min(...ys), bottom: Math.max(...ys) }))
          .filter(({ top, bottom }) => bottom - top > 15 && bottom - top < 40)
          .sort((a, b) => a.top - b.top);
        boxes.forEach(({ top, bottom }, i) => {
          if (top < at.y || bottom > at.y + at.height) faults.push('a label leaves the frame');
          const below = boxes[i + 1];
          if (below !== undefined && below.top < bottom) faults.push('labels overlap');
        });
        expect(boxes.length).toBeGreaterThan(3);
        expect(faults).toEqual([]);
      }),
      { numRuns: 60, seed: 7 },
    );
  });
});

describe('as a sheet', () => {
  const view = { width: 600, height: 700, units: 'us', theme: 'light' } as const;
  const frames = (scene: Scene): string[] => scene.frames.map((each) => each.view);

  test('it stands alone where it is asked for', () => {
    const scene = draw(well('tamarack-ridge'), { ...view, sheet: 'house' });
    expect(frames(scene)).toEqual(['D']);
    expect(scene.chips).toEqual([]);
  });

  test('on paper it stands under a section that leaves room for it, and in no bracket of the well', () => {
    const wells = (['tamarack-ridge', 'heron-flats', 'willow-dale', 'palo-amargo', 'slate-hollow'] as const).flatMap(
      (name) =>
        [LETTER, TABLOID, A3].map((paper) => draw(well(name), { ...view, sheet: 'all', theme: 'print', paper })),
    );
    const withHouse = wells.filter((scene) => frames(scene).includes('D'));
    for (const scene of withHouse) {
      const section = scene.frames.find((each) => each.view === 'O')!;
      const detail = scene.frames.find((each) => each.view === 'D')!;
      expect(detail.y).toBeGreaterThan(section.y + section.height);
      // The mat round the other details covers no part of the section.
      const mat = flat(scene.shapes).find(({ path }) => path === 'mat')!.shape.d!;
      expect(Math.min(...pathPoints(mat).map(([x]) => x))).toBeGreaterThan(section.x + section.width);
      for (const chip of scene.chips) expect(chip.y + chip.height).toBeLessThan(detail.y - 30);
      expect(flat(scene.shapes).some(({ path }) => path.includes('bracket/D') || path.includes('link/D'))).toBe(false);
    }
    expect(withHouse.length).toBeGreaterThan(0);
    expect(withHouse.length).toBeLessThan(wells.length);
  });
});
