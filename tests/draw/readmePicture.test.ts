import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { draw, SPARE_ELSEWHERE, toSvg } from '../../src/draw/index.ts';
import { solve } from '../../src/model/index.ts';
import { planOf, sample } from '../plans/build.ts';

test('the picture in the README is what the program draws today (npm run picture)', () => {
  const scene = draw(solve(planOf(sample('tamarack-ridge'))), {
    sheet: 'all',
    width: 1040,
    height: 1000,
    units: 'us',
    theme: 'light',
    caption: true,
    spare: SPARE_ELSEWHERE,
  });
  const shown = readFileSync(new URL('../../static/pictures/tamarack-ridge.svg', import.meta.url), 'utf8');
  expect(shown).toBe(`${toSvg(scene)}\n`);
});

test.each(['light', 'dark'] as const)(
  'the first picture of the page, %s, is what the program draws today (npm run picture)',
  (theme) => {
    const scene = draw(solve(planOf(sample('tamarack-ridge'))), {
      sheet: 'section',
      width: 640,
      height: 1000,
      units: 'us',
      theme,
      caption: true,
      spare: SPARE_ELSEWHERE,
    });
    const shown = readFileSync(new URL(`../../static/pictures/first-${theme}.svg`, import.meta.url), 'utf8');
    expect(shown).toBe(`${toSvg(scene)}\n`);
  },
);
