/** The signs of findings: their key under a picture, and a picture without them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draw, LETTER, toSvg, type Scene, type View } from '../../../src/draw/index.ts';
import { THEMES } from '../../../src/draw/theme.ts';
import { solve } from '../../../src/model/index.ts';
import type { Severity, Solution } from '../../../src/model/solution.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample } from '../../plans/build.ts';
import { flat, SHEET } from '../pictures.ts';

/** An adapter in the frost, a pump near its water, and notes besides. */
const well = sample('tamarack-ridge');
const judged = solve(
  planOf({
    ...well,
    top: { kind: 'pitless', depth: '3 ft' },
    pump: { ...(well['pump'] as object), setting: '98 ft' },
  }),
);
const SEVERITIES = ['danger', 'warning', 'note'] as const;

/** Kinds of sign that the key under a picture explains, with their words. */
function keyOf(scene: Scene): [severity: string, words: string][] {
  return flat(scene.shapes).flatMap(({ path, shape }) => {
    const [, severity] = /legend > sign\/(\w+)$/.exec(path) ?? [];
    return severity === undefined
      ? []
      : [
          [
            severity,
            flat([shape])
              .map((each) => each.shape.text ?? '')
              .at(-1) ?? '',
          ],
        ];
  });
}

function kindsOn({ marks }: Scene, { findings }: Solution): Severity[] {
  return SEVERITIES.filter((kind) => marks.some(({ number }) => findings[number - 1]?.severity === kind));
}

describe('the key under a picture', () => {
  test('names every shape of sign that stands on it, and what its number is, and no other', () => {
    const shown = new Set<string>();
    fc.assert(
      fc.property(
        anyPlan,
        fc.constantFrom('all' as const, 'section' as const, 'top' as const, 'pump' as const),
        fc.constantFrom(undefined, LETTER),
        (plan, sheet, paper) => {
          const solution = solve(plan);
          const scene = draw(solution, { ...SHEET, height: 1300, width: 1100, sheet, caption: true, paper });
          const key = keyOf(scene);
          expect(key.map(([severity]) => severity)).toEqual(kindsOn(scene, solution));
          for (const [severity, words] of key) expect(words).toMatch(new RegExp(`^${severity},.* list$`));
          shown.add(key.map(([severity]) => severity).join());
        },
      ),
      { seed: 8, numRuns: 120 },
    );
    // All kinds together and none at all are among them.
    expect(shown.has(SEVERITIES.join())).toBe(true);
    expect(shown.has('')).toBe(true);
  });

  test('draws a sign as the picture does, with the first number that stands there', () => {
    const scene = draw(judged, { caption: true });
    for (const severity of kindsOn(scene, judged)) {
      const entry = flat(scene.shapes).find(({ path }) => path.endsWith(`legend > sign/${severity}`))?.shape;
      const number = flat(entry === undefined ? [] : [entry]).find(({ shape }) => shape.key === 'number')?.shape.text;
      const first = scene.marks.filter((each) => judged.findings[each.number - 1]?.severity === severity);
      expect(number).toBe(String(Math.min(...first.map((each) => each.number))));
    }
  });

  test('stands on no picture that the page shows beside its list', () => {
    expect(keyOf(draw(judged, SHEET))).toEqual([]);
  });
});

describe('a picture without signs', () => {
  const VIEWS: readonly Partial<View>[] = [
    { sheet: 'all' },
    { sheet: 'section' },
    { sheet: 'top' },
    { sheet: 'pump' },
    { sheet: { at: 1 } },
    { sheet: 'all', theme: 'print', paper: LETTER },
  ];

  test.each(VIEWS)('has no sign, no number, no box round a danger and no key: %j', (view) => {
    const scene = draw(judged, { ...view, caption: true, marks: false });
    const paths = flat(scene.shapes).map(({ path }) => path);
    expect(draw(judged, { ...view, caption: true }).marks.length).toBeGreaterThan(0);
    expect(scene.marks).toEqual([]);
    expect(keyOf(scene)).toEqual([]);
    expect(paths.filter((path) => /(^|> )(marks?\b|faults$)/.test(path))).toEqual([]);
    if (view.theme === undefined) expect(toSvg(scene)).not.toContain(THEMES.light.danger);
  });

  test('says under it that they are left out, and still counts them', () => {
    const lines = (marks: boolean) =>
      flat(draw(judged, { caption: true, marks }).shapes)
        .filter(({ path }) => path.includes('titleBlock'))
        .map(({ shape }) => shape.text ?? '')
        .join(' ');
    const counted = /Checks: (\d+ dangers?, \d+ warnings?, \d+ notes?)/.exec(lines(true))?.[1] ?? 'none';
    expect(lines(false)).toContain(`Checks (signs left out): ${counted}`);
  });

  test('is the same picture where nothing was found', () => {
    const sound = { ...solve(rockWell()), findings: [] };
    expect(toSvg(draw(sound, { marks: false }))).toBe(toSvg(draw(sound)));
  });
});

test('the section is named in words where the widths are told: no letter that could be read as a nought', () => {
  const words = flat(draw(judged, { caption: true }).shapes)
    .filter(({ path }) => path.includes('titleBlock'))
    .map(({ shape }) => shape.text ?? '')
    .join(' ');
  expect(words).toMatch(/widths enlarged: section\u00a0×[\d.]+, A\u00a0×[\d.]+, B\u00a0×[\d.]+/);
});
