import { describe, expect, test } from 'vitest';
import { drawLens } from '../../../src/draw/details/lens.ts';
import { drawPumpEnd } from '../../../src/draw/details/pumpEnd.ts';
import { drawWellTop } from '../../../src/draw/details/wellTop.ts';
import type { Shape } from '../../../src/draw/scene.ts';
import { toSvg } from '../../../src/draw/svg.ts';
import { THEMES } from '../../../src/draw/theme.ts';
import { frame, well, WELLS } from './wells.ts';

const markup = (shapes: readonly Shape[]): string =>
  toSvg({
    width: 1000,
    height: 500,
    title: '',
    describe: () => '',
    background: '#fff',
    shapes,
    scales: { windows: {}, chips: [], looks: {} },
    chips: [],
    marks: [],
    frames: [],
    hits: [],
    details: [],
    paper: null,
  });

function repeatedKeys(shapes: readonly Shape[], where = ''): string[] {
  const keys = shapes.map(({ key }) => key);
  const repeated = keys.filter((key, i) => keys.indexOf(key) !== i).map((key) => `${where}/${key}`);
  return [...repeated, ...shapes.flatMap(({ key, children }) => repeatedKeys(children ?? [], `${where}/${key}`))];
}

describe.each(WELLS)('%s', (name) => {
  const solution = well(name);
  const depths = [0, 0.5, 1, 3, 10, 30].concat(
    solution.parts.filter(({ kind }) => kind !== 'tie').map(({ top }) => top),
  );
  const drawings = [
    drawWellTop(solution, frame('A')),
    drawPumpEnd(solution, frame('B')),
    ...depths.map((at) => drawLens(solution, at, frame('C'))),
  ];

  test('keys are unique among siblings', () => {
    for (const { shapes } of drawings) expect(repeatedKeys(shapes)).toEqual([]);
  });

  test('coordinates are finite, and there is no id, style, gradient, pattern, filter or clip path', () => {
    for (const { shapes } of drawings) {
      const svg = markup(shapes);
      expect(svg).not.toMatch(
        /NaN|Infinity|undefined| id=| style=| class=|<style|Gradient|<pattern|<filter|clip-?[pP]ath|<mask|url\(/,
      );
    }
  });

  test('is the same again from the same solution', () => {
    expect(markup(drawWellTop(solution, frame('A')).shapes)).toBe(markup(drawings[0]!.shapes));
  });
});

test('the two details of the rock well together stay under 32 kB in every theme', () => {
  for (const theme of ['light', 'dark', 'print', 'contrast'] as const) {
    const look = { theme, ink: THEMES[theme] };
    const solution = well('tamarack-ridge');
    const size = markup([
      ...drawWellTop(solution, frame('A', look)).shapes,
      ...drawPumpEnd(solution, frame('B', look)).shapes,
    ]).length;
    expect(size).toBeLessThan(32_000);
  }
});

test('what was reported by nobody is drawn dashed: grout without a depth', () => {
  const scene = drawWellTop(well('slate-hollow'), frame('A'));
  const svg = markup(scene.shapes.filter(({ key }) => key === 'well'));
  expect(svg).toMatch(/fill="none"[^>]*stroke-dasharray/);
});
