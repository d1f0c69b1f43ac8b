/** What nobody said is drawn as such and told in words, not in the names that a plan has for it. */
import { describe, expect, test } from 'vitest';
import type { View } from '../../src/draw/index.ts';
import type { Plan } from '../../src/model/index.ts';
import { solve } from '../../src/model/index.ts';
import { contextOf } from '../../src/model/explain/context.ts';
import { coolingTable } from '../../src/model/sheets/pump/cooling.ts';
import { THEMES } from '../../src/draw/theme.ts';
import { planOf, sample } from '../plans/build.ts';
import { flat, picture, textBoxes } from './pictures.ts';

const said = (plan: Plan, view: Partial<View> = {}): string[] =>
  textBoxes(picture(plan, view).scene.shapes).map(({ words }) => words.replaceAll('\u00A0', ' '));

const bare = (casing: object, intake: object = {}): Plan =>
  planOf({
    format: 'wellcut-plan/1',
    well: { depth: '240 ft', casing: { bottom: '60 ft', ...casing }, intake },
    water: { staticLevel: '40 ft' },
  });

describe('a casing', () => {
  const top = { sheet: 'top', width: 520, height: 700 } as const;
  test('of which nobody said the material', () => {
    expect(said(bare({ size: '6 in' }), top)).toEqual(
      expect.arrayContaining(['Casing, 6 in', 'material not known, to 60 ft']),
    );
    expect(said(bare({}), top)).toEqual(expect.arrayContaining(['Casing', 'material not known, to 60 ft']));
  });
  test('of another material than the usual', () => {
    expect(said(bare({ size: '6 in', material: 'other' }), top)).toContain('Casing, 6 in other material');
    expect(said(bare({ size: '6 in', material: 'steel' }), top)).toContain('Casing, 6 in steel');
  });
});

test('a hole of which nobody said whether it is open is dashed and asks', () => {
  const view: Partial<View> = { sheet: { at: 30 }, width: 520, height: 700 };
  expect(said(bare({}), { sheet: 'section' }).join(' ')).not.toMatch(/[Oo]pen hole/);
  expect(said(bare({}), view).join(' ')).not.toMatch(/Open hole/);
});

test('the ends of a stretch of which nobody knows whether it is right are not in the colour of what is', () => {
  for (const theme of ['light', 'dark', 'print'] as const) {
    const values = (plan: Plan) =>
      flat(picture(plan, { sheet: 'section', theme }).scene.shapes)
        .filter(({ path }) => /bands > pump\.setting\/(from|to) > line\/value$/.test(path))
        .map(({ shape }) => shape.attrs['fill']);
    const { allowed, ink2 } = THEMES[theme];
    expect(values(bare({}))).toEqual([ink2, ink2]);
    expect(values(planOf(sample('tamarack-ridge')))).toEqual([allowed, allowed]);
  }
});

describe('the legend', () => {
  const keys = (plan: Plan): string[] =>
    flat(picture(plan, { caption: true, height: 1200, width: 1200 }).scene.shapes).flatMap(
      ({ path }) => /(?:^|> )legend > ([a-zA-Z]+)$/.exec(path)?.slice(1) ?? [],
    );
  test('explains what is dashed since nobody knows it, and the dots under what was assumed', () => {
    expect(keys(bare({}))).toEqual(expect.arrayContaining(['unknown', 'assumed']));
  });
  test('explains the strokes across water of which nobody knows how far it falls, and only those', () => {
    const tested = bare({}) as unknown as { water: object };
    const water = (pumping: unknown) =>
      ({ ...tested, water: { staticLevel: '40 ft', ...(pumping === null ? {} : { pumping }) } }) as unknown as Plan;
    expect(keys(water(null))).toContain('anyFall');
    expect(keys(water({ kind: 'test', flow: '8 gpm', drawdown: '20 ft' }))).not.toContain('anyFall');
  });
  test('explains neither where there is none', () => {
    expect(keys(planOf(sample('tamarack-ridge')))).not.toContain('unknown');
  });
});

test('no width that was only drawn is reckoned with in the table of the water past the motor', () => {
  const rows = (plan: Plan) => coolingTable(contextOf(solve(plan), 'us')).rows;
  const [casing, hole] = rows(bare({ material: 'steel', size: '6 in' }, { kind: 'open hole' }));
  expect(casing?.cells[1]).toMatch(/^6\.\d+ in$/);
  expect(hole?.cells.slice(1)).toEqual(['–', '–', '–']);
});
