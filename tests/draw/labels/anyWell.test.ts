/** Labels of thousands of wells on sheets of any size, judged by nothing but where they came to stand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  A3,
  A4,
  draw,
  landscape,
  LEGAL,
  LETTER,
  SPARE_ELSEWHERE,
  TABLOID,
  type View,
} from '../../../src/draw/index.ts';
import { solve } from '../../../src/model/index.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { labelFaults } from './faults.ts';

/** Section and details stand side by side from here on [px]. */
const SIDE_BY_SIDE = 600;

const spare = fc.constantFrom(1, 1.25, SPARE_ELSEWHERE);

const view: fc.Arbitrary<View & { spare: number }> = fc
  .record({
    sheet: fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom('section' as const, 'all' as const) },
      { weight: 1, arbitrary: fc.constantFrom('top' as const, 'pump' as const) },
      { weight: 1, arbitrary: fc.integer({ min: 0, max: 250 }).map((at) => ({ at })) },
    ),
    width: fc.integer({ min: 320, max: 1600 }),
    height: fc.integer({ min: 420, max: 1400 }),
    units: fc.constantFrom('us' as const, 'metric' as const),
    caption: fc.boolean(),
    moment: fc.constantFrom({}, { pumping: true, flow: 0.4 }, { pumping: false }),
    spare,
  })
  .map((each) => ({
    ...each,
    theme: 'light',
    width: each.sheet === 'all' ? Math.max(SIDE_BY_SIDE, each.width) : each.width,
  }));

/** A window on part of a well, by shares of its depth. */
const part = fc.record({
  from: fc.double({ min: -0.02, max: 0.9, noNaN: true }),
  length: fc.double({ min: 0.02, max: 0.9, noNaN: true }),
});

// 2,300 wells: under half a minute of one processor, of which drawing is the larger part.
describe('of any well on any sheet', () => {
  test('no words overlap, are cut or leave their box, no leader crosses another, a sign or words, and the order of depth is kept', () => {
    fc.assert(
      fc.property(anyPlan, view, (plan, asked) => {
        const solution = solve(plan);
        // A close-up stands somewhere in the well.
        const sheet =
          typeof asked.sheet === 'object' ? { at: asked.sheet.at % solution.facts.well.bottom } : asked.sheet;
        expect(labelFaults(draw(solution, { ...asked, sheet }), asked.spare)).toEqual([]);
      }),
      { seed: 2_026, numRuns: 1500 },
    );
  }, 300_000);

  test('nor are they where the section shows a part of the well', () => {
    fc.assert(
      fc.property(anyPlan, view, part, (plan, asked, { from, length }) => {
        const solution = solve(plan);
        const { bottom } = solution.facts.well;
        const window = { topDepth: from * bottom, bottomDepth: (from + length) * bottom };
        const sheet = asked.sheet === 'all' ? asked.sheet : 'section';
        const scene = draw(solution, { ...asked, sheet, height: Math.max(640, asked.height), window });
        expect(labelFaults(scene, asked.spare)).toEqual([]);
      }),
      { seed: 14, numRuns: 400 },
    );
  }, 300_000);

  test('nor are they on paper', () => {
    fc.assert(
      fc.property(
        anyPlan,
        fc.constantFrom(LETTER, A4, LEGAL, TABLOID, A3, landscape(LETTER), landscape(A4)),
        fc.constantFrom('all' as const, 'section' as const),
        spare,
        (plan, paper, sheet, wider) => {
          const asked: View = {
            sheet,
            width: 0,
            height: 0,
            units: plan.units ?? 'us',
            theme: 'print',
            caption: true,
            paper,
            spare: wider,
          };
          expect(labelFaults(draw(solve(plan), asked), wider)).toEqual([]);
        },
      ),
      { seed: 11, numRuns: 400 },
    );
  }, 300_000);
});

describe('while a level is dragged', () => {
  const held: fc.Arbitrary<View> = fc.record({
    sheet: fc.constant('section' as const),
    width: fc.integer({ min: 320, max: 900 }),
    height: fc.integer({ min: 560, max: 1200 }),
    units: fc.constantFrom('us' as const, 'metric' as const),
    theme: fc.constant('light' as const),
  });

  test('no chip moves farther than the level that moved farthest', () => {
    fc.assert(
      fc.property(anyPlan, held, fc.double({ min: -0.02, max: 0.02, noNaN: true }), (plan, asked, share) => {
        const before = solve(plan);
        const settled = draw(before, asked);
        const start = before.facts.pump.setting;
        const moved = {
          ...plan,
          pump: { ...plan.pump, setting: `${start + share * before.facts.well.bottom} m` },
        };
        const scene = draw(solve(moved), {
          ...asked,
          frozen: settled.scales,
          held: { handle: 'pumpSetting', start },
        });
        fc.pre(String(scene.chips.map(({ handle }) => handle)) === String(settled.chips.map(({ handle }) => handle)));
        const far = Math.max(...scene.chips.map(({ lineY }, i) => Math.abs(lineY - (settled.chips[i]?.lineY ?? 0))));
        for (const [i, chip] of scene.chips.entries())
          expect(Math.abs(chip.y - (settled.chips[i]?.y ?? 0)), chip.handle).toBeLessThanOrEqual(far + 1e-6);
      }),
      { seed: 5, numRuns: 400 },
    );
  }, 300_000);
});
