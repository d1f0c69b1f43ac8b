/** What a page lists by its name or place has each of them once, or it could not tell one line from another. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draw } from '../../src/draw/index.ts';
import { handlesOf } from '../../src/model/handles.ts';
import { lackingIn } from '../../src/model/rules/lacking.ts';
import { sheetsOf } from '../../src/model/sheets/index.ts';
import { solve } from '../../src/model/solve.ts';
import { fromTop } from '../../src/model/string/fromTop.ts';
import { anyPlan } from '../plans/anyPlan.ts';

const repeated = (names: readonly string[]): string[] => names.filter((name, i) => names.indexOf(name) !== i);

test('no part, level, assumed fact, lacking fact or line from the top is listed twice', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const solution = solve(plan);
      expect(repeated(solution.parts.map(({ key }) => key))).toEqual([]);
      expect(repeated(handlesOf(solution).map(({ id }) => id))).toEqual([]);
      expect(repeated(solution.assumed.map(({ path }) => path))).toEqual([]);
      expect(repeated(solution.advice.map(({ rule }) => rule))).toEqual([]);
      expect(repeated(lackingIn(solution).map(({ field }) => field))).toEqual([]);
      expect(repeated(fromTop(solution).map(({ key }) => key))).toEqual([]);
      const { chips } = draw(solution, { sheet: 'all', width: 1000, height: 900, units: 'us', theme: 'light' });
      expect(repeated(chips.map(({ handle }) => handle))).toEqual([]);
    }),
    { numRuns: 400 },
  );
});

test('no sheet, and on a sheet no figure, table or column, is there twice', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const sheets = sheetsOf(solve(plan), 'us');
      expect(repeated(sheets.map(({ key }) => key))).toEqual([]);
      for (const { figures, tables } of sheets) {
        expect(repeated(figures.map(({ key }) => key))).toEqual([]);
        expect(repeated(tables.map(({ key }) => key))).toEqual([]);
        for (const { columns } of tables) expect(repeated(columns.map(({ key }) => key))).toEqual([]);
      }
    }),
    { numRuns: 100 },
  );
});
