import { expect, test } from 'vitest';
import { solve } from '../../src/model/index.ts';
import { candidatesFor, givenBy } from '../../src/model/rules/index.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { sayFinding, sayFix } from '../../src/words/sayJudgement.ts';
import { rockWell } from '../plans/build.ts';

test('one finding is said in the units of whoever reads it; what a button writes stays as the plan has it', () => {
  const solution = solve(rockWell({ top: { kind: 'pitless', depth: '2 ft' } }));
  const frost = solution.findings.find(({ rule }) => rule === 'PR-19')!;
  const [us, metric] = [show('us'), show('metric')];
  expect(sayFinding(frost, en, us).amount).toMatch(/ in /);
  expect(sayFinding(frost, en, metric).amount).toMatch(/ cm /);
  const fix = candidatesFor(frost, givenBy(solution))[0]!;
  expect(fix.changes).toEqual([{ path: 'top.depth', to: '3.5 ft' }]);
  expect(sayFix('PR-19', fix, en, metric)).toBe(sayFix('PR-19', fix, en, us));
});
