import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changed, fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import type { Solution } from '../../../src/model/solution.ts';
import { solve } from '../../../src/model/solve.ts';
import { BAD } from '../../wells/bad.ts';
import { anyPlan } from '../../plans/anyPlan.ts';

/** How bad a rule stands, told anew here: what turns on an unknown fact stands as the finding that tells it. */
function badness({ verdicts, findings }: Solution, rule: string): number {
  const verdict = verdicts[rule];
  if (verdict === 'depends')
    return findings.find(({ together }) => together.some((each) => each.rule === rule))?.severity === 'warning' ? 2 : 1;
  return verdict === 'danger' ? 3 : verdict === 'warning' ? 2 : verdict === 'note' ? 1 : 0;
}

const problemsOf = (plan: Plan) => {
  const read = readPlan(JSON.parse(JSON.stringify(plan)));
  return read.ok ? [] : read.problems.map(({ path, problem }) => `${path}: ${problem}`);
};

function expectTrueFixes(plan: Plan): number {
  const before = solve(plan);
  const offers = fixesOf(plan, before);
  expect(offers).toHaveLength(before.findings.length);
  let buttons = 0;
  offers.forEach(({ button, words }, i) => {
    const { rule, severity } = before.findings[i]!;
    // Something is said in every case: a button or what to do.
    expect(button === null ? words : button, rule).not.toBeNull();
    if (button?.changes == null) return;
    buttons++;
    const after = changed(plan, button.changes);
    const told = `${rule} ${severity}: ${JSON.stringify(button.changes)}`;
    expect(problemsOf(plan), told).toEqual(expect.arrayContaining(problemsOf(after)));
    for (const { path } of button.changes) expect(path, told).not.toMatch(/^(?:well|water|site)\./);
    const solved = solve(after);
    expect(badness(solved, rule), told).toBeLessThan(badness(before, rule));
    for (const other of Object.keys(solved.verdicts)) {
      const is = badness(solved, other);
      const was = badness(before, other);
      if (is >= 2) expect(is, `${told} makes ${other} worse`).toBeLessThanOrEqual(was);
      // Nothing that was wrong goes out of sight.
      if (was > 0) expect(solved.verdicts[other], `${told} hides ${other}`).not.toBe('not judged');
    }
  });
  return buttons;
}

describe('no offered change makes any verdict worse, hides one, or leaves its own rule as bad', () => {
  test('in every bad well', () => {
    let buttons = 0;
    for (const { plan } of BAD) {
      const read = readPlan(plan);
      if (read.ok) buttons += expectTrueFixes(read.plan);
    }
    expect(buttons).toBeGreaterThan(30);
  });

  test('in 3,000 plans made at random', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        expectTrueFixes(plan);
      }),
      { seed: 31, numRuns: 3000 },
    );
  });
});

test('what stands reported or installed is moved by no button', () => {
  fc.assert(
    fc.property(anyPlan, fc.constantFrom('reported', 'installed', 'measured'), (plan, word) => {
      const standing = {
        ...plan,
        status: { pump: word, top: word, dropPipe: word, house: word, string: word, wire: word, rope: word },
      };
      const read = readPlan(JSON.parse(JSON.stringify(standing)));
      if (!read.ok) return;
      for (const { button } of fixesOf(read.plan, solve(read.plan))) expect(button).toBeNull();
    }),
    { seed: 32, numRuns: 300 },
  );
});
