import { describe, expect, test } from 'vitest';
import { THEMES } from '../../src/draw/index.ts';
import type { Shape } from '../../src/draw/scene.ts';
import { planOf, sample } from '../plans/build.ts';
import { find, flat, picture } from './pictures.ts';

/** What is left of a shape when every colour is ink: kind of element, line and dashes, and whether it is filled. */
function withoutColour(shape: Shape, paper: string): string {
  return flat([shape])
    .map(({ shape: { tag, attrs } }) => {
      const fill =
        attrs['fill'] === undefined || attrs['fill'] === 'none' ? 'none' : attrs['fill'] === paper ? 'open' : 'full';
      return [
        tag,
        attrs['stroke-width'] ?? '',
        attrs['stroke-dasharray'] ?? 'solid',
        tag === 'path' || tag === 'rect' ? fill : '',
      ].join(' ');
    })
    .join('; ');
}

describe.each(['print', 'contrast', 'contrast-dark'] as const)('in the %s theme, all colours set to ink', (theme) => {
  const { scene } = picture(planOf(sample('tamarack-ridge')), { theme });
  const shapes = scene.shapes;
  const { paper } = THEMES[theme];

  const SETS: Readonly<Record<string, readonly string[]>> = {
    levels: ['levels > staticLevel', 'levels > pumpingLevel', 'frost > frost/line', 'cone > cone/line'],
    'signs of the levels': ['staticLevel/sign > triangle', 'pumpingLevel/sign > triangle'],
    string: ['string > dropPipe', 'string > cable', 'string > rope', 'casing > walls'],
    ground: ['ground > layer/0/hatch', 'ground > layer/1/hatch', 'ground > layer/3/hatch'],
  };

  test.each(Object.entries(SETS))('%s differ by line, dash or fill', (name, paths) => {
    const looks = paths.map((path) => {
      const shape = find(shapes, path);
      // Patterns of the ground are told apart by what is drawn, not by how.
      const drawn = name === 'ground' ? (shape.d ?? '').replace(/[\d.\s-]+/g, '').slice(0, 24) : '';
      return `${withoutColour(shape, paper)} ${drawn}`;
    });
    expect(new Set(looks).size, looks.join('\n')).toBe(paths.length);
  });

  test('signs of findings differ by their outline', () => {
    const danger = picture(
      planOf({
        ...sample('slate-hollow'),
        site: { frostDepth: '96 in', frostFrom: 'local code' },
        rope: { material: 'polypropylene', tied: 'cap' },
      }),
      {
        theme,
      },
    );
    const outlines = new Map<string, string>();
    for (const [i, { severity }] of danger.solution.findings.entries()) {
      const mark = flat(danger.scene.shapes).find(({ shape }) => shape.key === `mark/${i + 1}`);
      const sign = mark?.shape.children?.[0];
      if (sign !== undefined) outlines.set(severity, `${sign.tag} ${(sign.d ?? '').replace(/[^A-Za-z]/g, '')}`);
    }
    expect(outlines.size).toBe(3);
    expect(new Set(outlines.values()).size).toBe(3);
  });
});

test.each(['contrast', 'contrast-dark'] as const)(
  'the theme %s draws with ink on paper and nothing between',
  (theme) => {
    for (const name of ['tamarack-ridge', 'palo-amargo']) {
      const { scene } = picture(planOf(sample(name)), { theme });
      const inks = flat(scene.shapes).flatMap(({ shape: { attrs } }) => [attrs['fill'], attrs['stroke']]);
      const tones = new Set(
        inks.filter((ink) => ink !== undefined && ink !== 'none').map((ink) => String(ink).toLowerCase()),
      );
      for (const tone of tones) expect(['#000', '#000000', '#fff', '#ffffff']).toContain(tone);
    }
  },
);

test('the contrast theme has heavier lines than print', () => {
  const widths = (theme: 'print' | 'contrast'): number[] =>
    flat(picture(planOf(sample('tamarack-ridge')), { theme }).scene.shapes)
      // Only on a screen is there something to take hold of.
      .filter(({ shape }) => shape.key !== 'grip' && shape.key !== 'lock')
      // A pipe is strokes of its own width: of these only the edges grow.
      .filter(({ shape }) => !/^(riser\/)?(body|shine)$/.test(shape.key) || shape.attrs['fill'] !== 'none')
      .map(({ shape }) => shape.attrs['stroke-width'])
      .filter((width) => typeof width === 'number');
  const print = widths('print');
  const contrast = widths('contrast');
  expect(contrast.length).toBe(print.length);
  contrast.forEach((width, i) => expect(width).toBeGreaterThan(print[i] ?? Infinity));
  expect(Math.min(...contrast)).toBeGreaterThanOrEqual(1);
});

test('white on black is black on white with the two exchanged', () => {
  const inks = (theme: 'contrast' | 'contrast-dark'): string[] =>
    flat(picture(planOf(sample('heron-flats')), { theme }).scene.shapes).flatMap(({ shape: { attrs } }) =>
      [attrs['fill'], attrs['stroke']].map((ink) => String(ink).toLowerCase().slice(0, 4)),
    );
  const other: Readonly<Record<string, string>> = { '#000': '#fff', '#fff': '#000' };
  expect(inks('contrast-dark')).toEqual(inks('contrast').map((ink) => other[ink] ?? ink));
});

test('a level on paper has no sign of a hand', () => {
  const signs = (theme: 'print' | 'light'): number =>
    flat(picture(planOf(sample('slate-hollow')), { theme }).scene.shapes).filter(
      ({ shape }) => shape.key === 'grip' || shape.key === 'lock',
    ).length;
  expect(signs('light')).toBeGreaterThan(4);
  expect(signs('print')).toBe(0);
});
