/** A well that was pumped, of which nobody wrote down how far its water fell: the flow is a yield all the same. */
import { describe, expect, test } from 'vitest';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { poorWell } from '../../../src/model/time/poorWell.ts';
import { levelAgainstTime } from '../../../src/model/time/levelAgainstTime.ts';
import { gpm, show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayHolding } from '../../../src/words/sayJudgement.ts';
import { changed, findingOf, judged, saidOf, solvedPlan, verdictOf } from './fixture.ts';

const pumpedAt = (flow: string, more: Record<string, unknown> = {}) => ({
  'well.yield': undefined,
  'well.yieldFrom': undefined,
  'water.pumping': { kind: 'test', flow, drawdown: 'unknown' },
  ...more,
});

const yieldOf = (plan: Plan) => {
  const { facts, unknown } = readFacts(plan);
  return { gives: facts.well.yield, from: facts.well.yieldFrom, isAskedFor: unknown.includes('well.yield') };
};

describe('the flow of a test without its drawdown', () => {
  test('is the yield, as pumped, and the yield is not asked for', () => {
    expect(yieldOf(changed(pumpedAt('2 gpm')))).toEqual({ gives: gpm(2), from: 'pump', isAskedFor: false });
  });

  test('stands back behind a yield that was said', () => {
    expect(yieldOf(changed(pumpedAt('2 gpm', { 'well.yield': '3 gpm' }))).gives).toBe(gpm(3));
  });

  test('is no yield of its own where the drawdown is known: the test says more', () => {
    const plan = changed(pumpedAt('2 gpm', { 'water.pumping': { kind: 'test', flow: '2 gpm', drawdown: '30 ft' } }));
    expect(yieldOf(plan)).toEqual({ gives: null, from: null, isAskedFor: true });
  });

  test.each([
    ['a level that nobody read', { kind: 'level', level: 'unknown', flow: '4 gpm' }, 4],
    [
      'steps without their falls',
      {
        kind: 'steps',
        steps: [
          { flow: '3 gpm', drawdown: 'unknown' },
          { flow: '5 gpm', drawdown: 'unknown' },
        ],
      },
      5,
    ],
  ])('so is that of %s', (_, pumping, flow) => {
    expect(yieldOf(changed(pumpedAt('2 gpm', { 'water.pumping': pumping }))).gives).toBe(gpm(flow));
  });

  test('that is not known says nothing', () => {
    expect(yieldOf(changed(pumpedAt('unknown'))).isAskedFor).toBe(true);
  });
});

test('a weak well is told, with its flow against what the house wants', () => {
  const said = saidOf('PR-55', pumpedAt('2 gpm'));
  expect(`${said.amount} ${said.message}`).toMatch(/2 gpm.*10 gpm/);
  expect(findingOf('PR-55', pumpedAt('2 gpm'))).toMatchObject({ numbers: { gives: gpm(2), wanted: gpm(10) } });
});

test('a well pumped at what the house wants is not warned about', () => {
  expect(verdictOf('PR-55', pumpedAt('10 gpm'))).toBe('ok');
  expect(judged(pumpedAt('10 gpm')).findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
});

test('the same well is judged the same whether its flow is written as the test’s or as the yield', () => {
  for (const flow of ['2 gpm', '7 gpm', '12 gpm']) {
    const asYield = { 'well.yield': flow, 'well.yieldFrom': 'pump', 'water.pumping': undefined };
    expect(judged(pumpedAt(flow)).verdicts).toEqual(judged(asYield).verdicts);
  }
});

test('the level against time says of the drawdown alone that it is not known', () => {
  const solved = solvedPlan(changed(pumpedAt('12 gpm')));
  const curve = levelAgainstTime(solved, { pumpFor: null, flow: gpm(2) });
  expect('reason' in curve && curve.reason).toMatch(/yield is known and no drawdown/);
  expect('reason' in curve && curve.reason).not.toMatch(/nor of the yield/);
  const poor = poorWell(solvedPlan(changed(pumpedAt('2 gpm'))));
  expect(poor).toMatchObject({ wellYield: gpm(2) });
});

test('a well that gives enough for the hours of a test is not promised to do so all day', () => {
  const held = judged(pumpedAt('12 gpm')).holding.find(({ rule }) => rule === 'PR-55')!;
  const { amount, message } = sayHolding(held, en, show('us'));
  expect(`${amount} ${message}`).not.toContain('a day');
  expect(message).toBe('By the record the well gives 12 gpm; 10 gpm is wanted.');
});
