import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changed, fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import type { Solution } from '../../../src/model/solution.ts';
import { solve } from '../../../src/model/solve.ts';
import { BAD } from '../../wells/bad.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf } from '../../plans/build.ts';

/** How bad a rule stands, told anew here: what turns on an unknown fact stands as the finding that tells it. */
function badness({ verdicts, findings }: Solution, rule: string): number {
  const verdict = verdicts[rule];
  if (verdict === 'depends')
    return findings.find(({ together }) => together.some((each) => each.rule === rule))?.severity === 'warning' ? 2 : 1;
  return verdict === 'danger' ? 3 : verdict === 'warning' ? 2 : verdict === 'note' ? 1 : 0;
}

const WATER_AND_DEPTH = ['PR-01', 'PR-02', 'PR-03', 'PR-04', 'PR-07', 'PR-08', 'PR-46', 'PR-54'];

/** A danger that stays is short of no more than before, but for a hundredth of rounding and of friction. */
function expectNoDeeper(before: Solution, after: Solution, rule: string, told: string) {
  const [was, is] = [before, after].map(({ findings }) => findings.find((each) => each.rule === rule));
  if (was?.margin == null || is?.margin == null || was.quantity !== is.quantity) return;
  expect(-is.margin, `${told} grows ${rule}`).toBeLessThanOrEqual(Math.max(-was.margin, 0) * 1.01 + 1e-9);
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
      if (is === 3 && WATER_AND_DEPTH.includes(other)) expectNoDeeper(before, solved, other, told);
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

test('a pump that hangs above the dry season’s water is not raised to suit an inflow', () => {
  const plan = planOf({
    format: 'wellcut-plan/1',
    units: 'metric',
    well: {
      depth: '32 m',
      casing: { material: 'steel', size: '6 in', bottom: '4 m' },
      intake: { kind: 'open hole' },
      inflows: [{ depth: '19.2 m' }],
    },
    water: {
      staticLevel: '15.7 m',
      dryFall: '5.8 m',
      pumping: { kind: 'aquifer', transmissivity: '2.1 m2/d', storativity: '0.0004' },
    },
    top: { kind: 'pitless', depth: '1.8 m' },
    pump: { setting: '19.5 m', power: '2.2 kW', frequency: '50 Hz', curve: { kind: 'generic', flow: '55 L/min' } },
    dropPipe: { material: 'PE', size: '1-1/4 in' },
  });
  const solution = solve(plan);
  const at = (rule: string) => solution.findings.findIndex((each) => each.rule === rule);
  expect(solution.findings[at('PR-02')]).toMatchObject({ severity: 'danger', variant: 'aboveWater' });
  expect(at('PR-05')).toBeGreaterThan(-1);
  for (const { button } of fixesOf(plan, solution))
    for (const { path, to } of button?.changes ?? [])
      if (path === 'pump.setting') expect(parseFloat(String(to))).toBeGreaterThanOrEqual(19.5);
});
