import { describe, expect, test } from 'vitest';
import { A4, draw, LETTER, toSvg, type AskedView } from '../../src/draw/index.ts';
import { solve } from '../../src/model/index.ts';
import { rockWell } from '../plans/build.ts';

const solution = solve(rockWell()); // 200 ft deep
const refused = (view: object): string => {
  try {
    draw(solution, view as AskedView);
  } catch (fault) {
    if (fault instanceof RangeError) return fault.message;
    throw fault;
  }
  return 'drawn';
};

describe('what a view leaves out', () => {
  test('is the whole sheet in the light theme, in feet, with English words', () => {
    const usual = { sheet: 'all', units: 'us', theme: 'light', width: 1040, height: 1000 } as const;
    const svg = toSvg(draw(solution));
    expect(svg).toBe(toSvg(draw(solution, usual)));
    expect(svg).toContain('Depths from the ground, in feet.');
  });

  test('is the same where a field is there without a value', () => {
    expect(toSvg(draw(solution, { width: undefined, paper: undefined }))).toBe(toSvg(draw(solution)));
  });

  test.each([
    ['section', 640, 1000],
    ['top', 560, 640],
    ['pump', 560, 640],
    [{ at: 2 }, 560, 640],
  ] as const)('is a size that suits %j', (sheet, width, height) => {
    expect(draw(solution, { sheet })).toMatchObject({ width, height });
  });

  test('is the size of the paper, whatever else is said of width and height', () => {
    expect(toSvg(draw(solution, { paper: A4, width: 0, height: NaN }))).toBe(toSvg(draw(solution, { paper: A4 })));
  });
});

const NO_LENGTH = [NaN, Infinity, -Infinity, 0, -1, 1e9, null, '600'];
const NO_DEPTH = [NaN, Infinity, -Infinity, null, '2 ft'];

describe('what cannot be drawn is refused by its name, its value and what would do', () => {
  test.each(NO_LENGTH)('width or height of %s', (value) => {
    for (const name of ['width', 'height']) {
      const met = typeof value === 'string' ? `"${value}"` : String(value);
      expect(refused({ [name]: value })).toMatch(
        `draw: view.${name} is ${met}; it must be from 1 to 100000, a number of px`,
      );
    }
  });

  test.each([NaN, Infinity, 0, -1, 100, null])('spare of %s', (spare) => {
    expect(refused({ spare })).toMatch(`draw: view.spare is ${spare}; it must be from 0.1 to 10, a factor`);
  });

  test.each(NO_DEPTH)('a window or a lens from or to %s, and one that lacks an end', (value) => {
    for (const name of ['window', 'lens'])
      for (const end of ['topDepth', 'bottomDepth'])
        for (const ends of [{ topDepth: 3, bottomDepth: 9, [end]: value }, { [end]: 5 }])
          expect(refused({ [name]: ends })).toMatch(
            new RegExp(`^draw: view\\.${name}\\.(top|bottom)Depth is .*; it must be a depth in metres$`),
          );
  });

  test('a window upside down', () => {
    const window = { topDepth: 9, bottomDepth: 3 };
    expect(refused({ window })).toBe('draw: view.window.bottomDepth is 3; it may not be above window.topDepth, 9');
  });

  test.each(NO_DEPTH)('a close-up at %s', (at) => {
    expect(refused({ sheet: { at } })).toMatch(/^draw: view\.sheet\.at is .*; it must be a depth in metres/);
  });

  test('a close-up below the well, with how deep the well is', () => {
    const sheet = { at: 274.32 };
    expect(refused({ sheet })).toBe(
      'draw: view.sheet.at is 274.32 m (900 ft), below the well, which ends at 60.96 m (200 ft); use a depth from -0.61 m to 60.96 m',
    );
    expect(refused({ sheet, units: 'metric' })).toContain('ends at 60.96 m');
    expect(refused({ sheet: { at: -3 } })).toContain('above all of the well');
    expect(refused({ sheet: { at: 60.9 } })).toBe('drawn');
  });

  test.each([
    ['sheet', 'pumpend', '"pumpend"; use "all", "section", "top", "pump", "house", or { at: a depth in metres }'],
    ['sheet', {}, '{  }; use "all"'],
    ['sheet', 7, '7; use "all"'],
    ['theme', 'sepia', '"sepia"; use "light", "dark", "print", "contrast", "contrast-dark"'],
    ['theme', 'toString', '"toString"; use "light"'],
    ['units', 'imperial', '"imperial"; use "us", "metric"'],
  ])('%s %j', (name, value, said) => {
    expect(refused({ [name]: value })).toContain(`draw: view.${name} is ${said}`);
  });

  test.each([
    [{ width: NaN, height: 297 }, 'paper.width is NaN'],
    [{ width: 210 }, 'paper.height is undefined'],
    [{ ...LETTER, margin: -1 }, 'paper.margin is -1'],
    [{ ...LETTER, margin: 200 }, 'paper.margin is 200; which leaves no room'],
  ])('paper %j', (paper, said) => {
    expect(refused({ paper })).toContain(said);
  });

  test('a moment or a dragged depth that is no number', () => {
    expect(refused({ moment: { pumping: true, water: NaN } })).toContain('view.moment.water is NaN');
    expect(refused({ held: { handle: 'pumpSetting', start: Infinity } })).toContain('view.held.start is Infinity');
  });
});
