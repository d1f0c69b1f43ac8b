import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import type { PlacedPart } from '../../../src/model/solution.ts';
import { solve } from '../../../src/model/solve.ts';
import { inches, show, toFeet } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayFix, sayHolding } from '../../../src/words/sayJudgement.ts';
import type { Changes } from './fixture.ts';
import { changed, findingOf, fixesFor, fixOf, judged, saidOf, solvedPlan, verdictOf } from './fixture.ts';

/** Parts of a kind once the change that a rule offers first has been made. */
function afterFix(rule: string, changes: Changes): readonly PlacedPart[] {
  const offered = fixOf(rule, changes).changes ?? [];
  const made = Object.fromEntries(offered.map(({ path, to }) => [path, to]));
  return solvedPlan(changed({ ...changes, ...made })).parts;
}

const overlap = (one: PlacedPart, other: PlacedPart) =>
  Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 1e-4;

/** What may not lie in one another: an arrestor or a splice in a valve, its fittings, or each other. */
function clashes(parts: readonly PlacedPart[], moved: 'torqueArrestor' | 'splice'): string[] {
  const fixed = ['checkValve', 'insertFitting', 'clamp', 'coupling', moved === 'splice' ? 'torqueArrestor' : 'splice'];
  const own = parts.filter(({ kind }) => kind === moved);
  return parts
    .filter((part) => fixed.includes(part.kind) && own.some((each) => overlap(each, part)))
    .map(({ key }) => key);
}

describe('the torque arrestor', () => {
  test('is not put into the splice', () => {
    const plan = { 'string.torqueArrestor': '8 ft', 'string.splices': ['2 ft'] };
    expect(fixOf('PR-12', plan).changes).not.toEqual([{ path: 'string.torqueArrestor', to: '2 ft' }]);
    expect(clashes(afterFix('PR-12', plan), 'torqueArrestor')).toEqual([]);
  });

  test('is not put on a valve in the pipe', () => {
    const plan = { 'string.torqueArrestor': 'none', 'string.splices': [], 'string.checkValves': ['2 ft'] };
    expect(clashes(afterFix('PR-12', plan), 'torqueArrestor')).toEqual([]);
  });

  test('is told at its height in the reader’s units, whatever the plan is written in', () => {
    const solved = solvedPlan(changed({ 'string.torqueArrestor': '8 ft' }));
    const [fix] = fixesFor(findingOf('PR-12', { 'string.torqueArrestor': '8 ft' }), solved);
    expect(sayFix('PR-12', fix!, en, show('us'))).toBe('Put it 2 ft above the pump');
    expect(sayFix('PR-12', fix!, en, show('metric'))).toBe('Put it 0.61 m above the pump');
    expect(fix!.changes).toEqual([{ path: 'string.torqueArrestor', to: '2 ft' }]);
  });

  test('that is missing on a small pump is told as such, and claims no arrestor', () => {
    const { holding } = judged({ 'string.torqueArrestor': 'none', 'pump.power': '1/2 hp' });
    const held = holding.find(({ rule }) => rule === 'PR-12')!;
    const { title, message } = sayHolding(held, en, show('metric'));
    expect(title).toBe('A small pump goes without a torque arrestor');
    expect(message).toBe('None is planned; pumps under 0.75 kW usually go without, though some codes ask for one.');
  });

  test('at half a foot or under is too low by what is missing to it', () => {
    const finding = findingOf('PR-12', { 'string.torqueArrestor': '4 in' });
    expect(finding.margin).toBeCloseTo(-inches(2), 9);
    expect(saidOf('PR-12', { 'string.torqueArrestor': '4 in' }).amount).toBe('2 in too low');
  });
});

test('wherever splice, valve and ties sit, what is offered for arrestor and splice hits none of them', () => {
  const height = fc.double({ min: 0, max: 9, noNaN: true }).map((feet) => `${feet.toFixed(2)} ft`);
  fc.assert(
    fc.property(height, height, height, fc.constantFrom('us', 'metric'), (arrestor, splice, valve, units) => {
      const plan = changed({
        units,
        'string.torqueArrestor': arrestor,
        'string.splices': [splice],
        'string.checkValves': ['0 ft', valve],
      });
      const solution = solve(plan);
      for (const [index, { button }] of fixesOf(plan, solution).entries()) {
        const rule = solution.findings[index]!.rule;
        if (button?.changes == null || (rule !== 'PR-12' && rule !== 'PR-15')) continue;
        const moved = rule === 'PR-12' ? 'torqueArrestor' : 'splice';
        const made = Object.fromEntries(button.changes.map(({ path, to }) => [path, to]));
        const { parts } = solvedPlan(changed(made, plan));
        expect(clashes(parts, moved), `${arrestor} ${splice} ${valve} ${JSON.stringify(made)}`).toEqual([]);
      }
    }),
    { seed: 31, numRuns: 150 },
  );
});

describe('ties', () => {
  test('are not spaced onto a valve', () => {
    const plan = { 'string.ties': '30 ft', 'string.checkValves': ['0 ft', '60 ft'], 'pump.flowLimiter': '10 gpm' };
    expect(fixOf('PR-13', plan).changes).toEqual([{ path: 'string.ties', to: '9 ft' }]);
    const valves = afterFix('PR-13', plan).filter(({ kind }) => kind === 'checkValve');
    const ties = afterFix('PR-13', plan).filter(({ kind }) => kind === 'tie');
    expect(ties.filter((tie) => valves.some((valve) => overlap(tie, valve)))).toEqual([]);
  });

  test('stand every 10 ft where nothing is in their way', () => {
    expect(fixOf('PR-13', { 'string.ties': '30 ft' })).toEqual({
      changes: [{ path: 'string.ties', to: '10 ft' }],
      words: 'Tie every 10 ft',
    });
  });
});

test('missing guards say nothing of an arrestor that is not planned either', () => {
  const neither = { 'string.guards': undefined, 'string.torqueArrestor': 'none' };
  expect(judged(neither).holding.map(({ rule }) => rule)).not.toContain('PR-14');
  expect(verdictOf('PR-12', neither)).toBe('warning');
});

describe('a splice', () => {
  test('at the discharge is measured to it, and not told that it is right within 5 ft', () => {
    const finding = findingOf('PR-15', { 'string.splices': ['0 ft'] });
    expect([finding.variant, finding.limit]).toEqual(['tooLow', 0]);
    expect(finding.margin).toBeLessThanOrEqual(0);
    expect(saidOf('PR-15', { 'string.splices': ['0 ft'] }).message).toBe(
      'The splice is at the pump’s discharge; right is above it, within 5 ft.',
    );
  });

  test('that is too high is measured to the highest right place', () => {
    const finding = findingOf('PR-15', { 'string.splices': ['7 ft'] });
    expect([toFeet(finding.limit!), toFeet(finding.margin!)]).toEqual([expect.closeTo(5, 9), expect.closeTo(-2, 9)]);
  });

  test('is put beside a tie and not under it', () => {
    const plan = { 'string.splices': ['7 ft'], 'string.ties': '4 ft' };
    expect(fixOf('PR-15', plan).changes).toEqual([{ path: 'string.splices', to: ['4.5 ft'] }]);
  });
});
