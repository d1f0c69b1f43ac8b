/** A yield that no pump brought up is told from the part that is sure to all that came, in the reader's units. */
import { describe, expect, test } from 'vitest';
import { sayReport } from '../../src/cli/checkCommand.ts';
import { readPlan, solve, withValue, type Solution } from '../../src/model/index.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { span } from '../../src/words/en/phrases.ts';
import { sayFinding, sayHolding } from '../../src/words/sayJudgement.ts';
import { sample } from '../model/plan/sample.ts';

/** Blown with air: 1-1/2 gpm, and a bore that carries 4.5 gpm for an hour. */
function slateHollow(changes: Readonly<Record<string, unknown>> = {}): Solution {
  const read = readPlan(sample('slate-hollow'));
  if (!read.ok) throw new Error('the sample does not read');
  return solve(Object.entries(changes).reduce((plan, [path, value]) => withValue(plan, path, value), read.plan));
}

function said(solution: Solution, rule: string, units: 'us' | 'metric' = 'us'): string {
  const found = solution.findings.find((each) => each.rule === rule);
  const held = solution.holding.find((each) => each.rule === rule);
  const { title, amount, message } =
    found !== undefined ? sayFinding(found, en, show(units)) : sayHolding(held!, en, show(units));
  return `${title} (${amount}). ${message}`;
}

describe('what a well blown with air gives in a day', () => {
  test('is a range: half of 1.5 gpm, by 172 ft drawn of two thirds of 713, is 391 gallons a day, all of it 2160', () => {
    expect(said(slateHollow(), 'PR-55')).toBe(
      'The well may be carried by its store (391 to 2160 gal a day). It gives 0.27 to 1.5 gpm of 4.5 gpm; only with the most do 227 gal in well and tank carry 60 min.',
    );
  });
  test('in litres for a metric reader', () => {
    expect(said(slateHollow(), 'PR-55', 'metric')).toContain('(1479 to 8176 L a day). It gives 1 to 5.7 L/min');
  });
  test('and so it stands in the report', () => {
    const report = sayReport(slateHollow());
    expect(report).toContain('391 to 2160 gal a day');
    expect(report).not.toMatch(/(?<!to )2160 gal a day/);
  });
  test('of a pumped one it is one figure', () => {
    expect(said(slateHollow({ 'well.yieldFrom': 'pump' }), 'PR-55')).toContain('(2160 gal a day). It gives 1.5 gpm of');
  });
  test('too little of either for a day', () => {
    const poor = said(slateHollow({ 'well.yield': '0.3 gpm' }), 'PR-55');
    expect(poor).toContain('0.05 to 0.3 gpm, 78 to 432 gal a day; 540 gal are needed');
  });
});

test('what only all of the yield carries is not told as carried', () => {
  // 227 gal are 3.8 gpm for an hour: with 1.5 gpm more than 5.1, with 0.27 gpm less.
  expect(said(slateHollow({ 'house.demand': '5.1 gpm' }), 'PR-55')).toMatch(
    /^The well may be carried by its store .* only with the most do \d+ gal in well and tank carry 60 min\.$/,
  );
});

test('a house that gets along with the sure part is told both ends', () => {
  expect(said(slateHollow({ 'house.demand': '0.25 gpm' }), 'PR-55')).toContain(
    '(0.27 to 1.5 gpm flow in). By the record the well gives 0.27 to 1.5 gpm; 0.25 gpm is wanted.',
  );
});

test('what the pump takes stands beside what the well gives, each by its name', () => {
  expect(said(slateHollow(), 'PR-07')).toContain(
    'The pump takes up to 6.6 gpm, the well gives 0.27 to 1.5 gpm; dry-run protection stops it in time.',
  );
});

test('a range names its unit once, and one figure where both read the same', () => {
  const us = show('us');
  expect(span(1, 1, us.time)).toBe('1 s');
  expect(span(60, 7800, us.time)).toBe('60 s to 2 h 10 min');
  expect(span(1200, 2100, us.time)).toBe('20 to 35 min');
});
