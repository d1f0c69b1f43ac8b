/** The probe of a dry-run protection stands where it was said to hang, named, and nowhere where nobody said it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreRadiusAt } from '../../src/model/bore.ts';
import { solve } from '../../src/model/index.ts';
import { feet } from '../../src/model/units.ts';
import { probePlace } from '../../src/draw/parts/probeBeside.ts';
import { stringAxisOf } from '../../src/draw/parts/stringAxis.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, sample } from '../plans/build.ts';
import { flat, number, picture, textBoxes } from './pictures.ts';

const well = (cutOff: unknown) => {
  const plan = sample('tamarack-ridge') as unknown as { pump: object };
  return planOf({ ...plan, pump: { ...plan.pump, setting: '180 ft', lowLevelCutOff: cutOff } });
};
const wordsOf = (plan: ReturnType<typeof well>, view = {}): string[] =>
  textBoxes(picture(plan, view).scene.shapes).map(({ words }) => words.replaceAll('\u00A0', ' '));

describe('a probe whose depth was said', () => {
  test.each([120, 150, 178, 179.5, 181])('at %f ft has its bare end there, in the section and close by', (depth) => {
    const { scene } = picture(well(`${depth} ft`));
    const feetDrawn = flat(scene.shapes)
      .filter(({ path }) => path.endsWith('probe > tip'))
      .map(({ shape }) => number(shape, 'y') + number(shape, 'height'));
    const views = scene.frames.filter((view) => view.topDepth < feet(depth) && view.bottomDepth > feet(depth));
    const wanted = views.map(
      ({ y, height, topDepth, bottomDepth }) => y + ((feet(depth) - topDepth) / (bottomDepth - topDepth)) * height,
    );
    // The well's top is far above it; close by it shows where the view reaches so high.
    expect(views.map(({ view }) => view)).toEqual(depth > 170 ? ['O', 'B'] : ['O']);
    expect(feetDrawn).toHaveLength(wanted.length);
    feetDrawn.forEach((foot, i) => expect(Math.abs(foot - (wanted[i] ?? NaN))).toBeLessThan(0.6));
  });

  test('is named with its depth, beside the hole and close by', () => {
    expect(wordsOf(well('178 ft'), { sheet: 'section' })).toContain('probe 178 ft');
    const close = wordsOf(well('178 ft'), { sheet: 'pump', width: 520, height: 800 });
    expect(close).toEqual(expect.arrayContaining(['Probe, 178 ft', '2 ft over the intake']));
    expect(wordsOf(well('181 ft'), { sheet: 'pump', width: 520, height: 800 })).toContain('1 ft under the intake');
  });
});

test.each([[true], [undefined]])('no place is drawn of a protection of which nobody said the depth: %s', (cutOff) => {
  const { scene, solution } = picture(well(cutOff));
  expect(solution.parts.some(({ kind }) => kind === 'probe')).toBe(false);
  expect(flat(scene.shapes).some(({ path }) => /probe/.test(path))).toBe(false);
});

test('in any well it stays inside the bore, and beside the pump where there is room for both', () => {
  fc.assert(
    fc.property(anyPlan, fc.double({ min: -1, max: 30, noNaN: true }), (plan, above) => {
      const setting = solve(plan).facts.pump.setting;
      const depth = setting - above;
      const solution = solve({ ...plan, pump: { ...plan.pump, lowLevelCutOff: `${depth.toFixed(3)} m` } });
      const probe = solution.parts.find(({ kind }) => kind === 'probe');
      if (probe === undefined) return;
      expect(probe.bottom).toBeCloseTo(depth, 2);
      const bore = boreRadiusAt(solution.bore, probe.bottom);
      const { offset } = probePlace(probe, solution.parts, stringAxisOf(solution), {
        boreRadius: bore,
        top: -solution.facts.well.casingHeight,
      });
      const pump = solution.parts.find(({ kind }) => kind === 'pump')!;
      const reach = solution.facts.pump.diameter / 2 + 2 * probe.radius + 0.01;
      if (bore >= 2 * probe.radius && Math.abs(stringAxisOf(solution).pipe(depth)) + probe.radius < bore)
        expect(offset + probe.radius).toBeLessThanOrEqual(bore + 1e-9);
      if (probe.bottom > pump.top && probe.top < pump.bottom && reach < bore)
        expect(offset - probe.radius).toBeGreaterThanOrEqual(pump.radius - 1e-9);
    }),
    { seed: 12, numRuns: 300 },
  );
});
