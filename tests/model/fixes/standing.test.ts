/** When a change makes a finding worse that was there before: by its severity, or by what it is short of. */
import { describe, expect, test } from 'vitest';
import { isBetter, worsened } from '../../../src/model/fixes/standing.ts';
import type { Finding, Quantity, Severity } from '../../../src/model/solution.ts';
import { solve } from '../../../src/model/solve.ts';
import { rockWell } from '../../plans/build.ts';

const [any] = solve(rockWell({ pump: { setting: '199 ft' } })).findings;

function standing(severity: Severity, margin: number | null, quantity: Quantity | null = 'length') {
  const finding: Finding = { ...any!, rule: 'PR-01', severity, margin, quantity, together: [], turn: null };
  return { verdicts: { 'PR-01': severity }, findings: [finding] };
}

describe('a warning that stays a warning', () => {
  test('is not worse by a hair', () => {
    expect(worsened(standing('warning', -10), standing('warning', -12))).toEqual([]);
  });
  test('is worse where it is short of a third more', () => {
    expect(worsened(standing('warning', -9), standing('warning', -12))).toEqual(['PR-01']);
  });
  test('is not worse where it is short of less, or of something else', () => {
    expect(worsened(standing('warning', -12), standing('warning', -9))).toEqual([]);
    expect(worsened(standing('warning', -9), standing('warning', -12, 'pressure'))).toEqual([]);
    expect(worsened(standing('warning', null), standing('warning', -12))).toEqual([]);
  });
});

describe('what was barely short', () => {
  // 5.3 % of the volts lost where 5 % are usual.
  const wire = (by: number) => {
    const { verdicts, findings } = standing('warning', by, 'ratio');
    return { verdicts, findings: findings.map((each) => ({ ...each, limit: 0.05 })) };
  };
  test('is not worse by a trifle of what is asked, however much that is of the shortfall', () => {
    expect(worsened(wire(-0.003), wire(-0.005))).toEqual([]);
  });
  test('is worse by more than that', () => {
    expect(worsened(wire(-0.003), wire(-0.006))).toEqual(['PR-01']);
  });
});

test('a danger of water or depth grows by nothing, one of weight or volts by a hair', () => {
  expect(worsened(standing('danger', -5.04), standing('danger', -6.07))).toEqual(['PR-01']);
  expect(worsened(standing('danger', -5.04), standing('danger', -5.05))).toEqual([]);
  const wire = (margin: number) => {
    const { findings } = standing('danger', margin, 'ratio');
    return { verdicts: { 'PR-49': 'danger' } as const, findings: findings.map((each) => ({ ...each, rule: 'PR-49' })) };
  };
  expect(worsened(wire(-0.1), wire(-0.12))).toEqual([]);
});

test('a danger is as much worse by a third more, a note is not', () => {
  expect(worsened(standing('danger', -9), standing('danger', -12))).toEqual(['PR-01']);
  expect(worsened(standing('note', -9), standing('note', -12))).toEqual([]);
});

test('a severity more is worse whatever the margin, and one less is better', () => {
  expect(worsened(standing('warning', -9), standing('danger', -9))).toEqual(['PR-01']);
  expect(isBetter('PR-01', standing('danger', -9), standing('warning', -9))).toBe(true);
});

test('what goes out of sight is worse', () => {
  expect(worsened(standing('note', -9), { verdicts: { 'PR-01': 'not judged' }, findings: [] })).toEqual(['PR-01']);
});
