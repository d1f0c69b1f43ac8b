import { expect, test } from 'vitest';
import { judged } from './fixture.ts';

const asked = (pumping: unknown) =>
  judged({ 'water.pumping': pumping })
    .notJudged.filter(({ rule }) => rule === 'PR-42')
    .map(({ fact }) => fact);

test('a pumping level is not asked for hours, for which a plan has no place beside it', () => {
  expect(asked({ kind: 'level', level: '82 ft', flow: '10 gpm' })).toEqual([]);
});

test('a test without its hours is asked for them, and a well that was blown for a test', () => {
  expect(asked({ kind: 'test', flow: '10 gpm', drawdown: '42 ft' })).toEqual(['testDuration']);
  expect(asked({ kind: 'yield only' })).toEqual(['pumpingTest']);
});

test('a test in steps is asked for the hours of the first step that has none, at that step’s own field', () => {
  const steps = [
    { flow: '5 gpm', drawdown: '11 ft', after: '2 h' },
    { flow: '10 gpm', drawdown: '26 ft' },
    { flow: '15 gpm', drawdown: '45 ft' },
  ];
  const { notJudged } = judged({ 'water.pumping': { kind: 'steps', steps } });
  expect(notJudged.find(({ rule }) => rule === 'PR-42')?.fields).toEqual(['water.pumping.steps.1.after']);
});
