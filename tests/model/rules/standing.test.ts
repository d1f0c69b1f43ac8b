/** What stands reported or installed is told apart from what is still to choose, by the nearest word that was said of it. */
import { describe, expect, test } from 'vitest';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import { mayMove, statusAt } from '../../../src/model/rules/fix.ts';
import { rockWell } from '../../plans/build.ts';

const facts = (status: Readonly<Record<string, string>>) => readFacts(rockWell({ status })).facts;

describe('the word that counts', () => {
  test('is the path’s own, before its group’s', () => {
    const said = facts({ pump: 'installed', 'pump.setting': 'to choose' });
    expect(statusAt(said, 'pump.setting')).toBe('to choose');
    expect(statusAt(said, 'pump.power')).toBe('installed');
    expect(mayMove(said, 'pump.setting')).toBe(true);
    expect(mayMove(said, 'pump.power')).toBe(false);
  });

  test('of a group is that of anything in it that stands: a curve whose flow is a standing pump’s is not chosen anew', () => {
    const said = facts({ 'pump.curve.flow': 'installed' });
    expect(statusAt(said, 'pump.curve')).toBe('installed');
    expect(mayMove(said, 'pump.curve')).toBe(false);
    expect(mayMove(said, 'pump.setting')).toBe(true);
  });

  test('is to choose where nobody said any', () => {
    expect(statusAt(facts({}), 'wire.size')).toBe('to choose');
  });
});
