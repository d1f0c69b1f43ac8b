/** Where nobody measured how far the water falls, and nothing stops the pump: one level that a reader can act on. */
import { expect, test } from 'vitest';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { sayTurns } from '../../src/words/sayJudgement.ts';
import { findingOf } from '../model/rules/fixture.ts';

const unknown = { 'water.pumping': undefined, 'pump.lowLevelCutOff': undefined };

test('the level down to which the pump needs no guard is told, and no second one beside it', () => {
  const said = sayTurns(findingOf('PR-53', unknown), en, show('us'));
  const levels = said.filter((each) => /intake|dry-run/.test(each));
  // 20 ft over an intake at 140 ft.
  expect(levels).toEqual([
    'Have dry-run protection, unless the water is known to stand above 120 ft as the pump runs.',
  ]);
});

test('both rules still turn where they do', () => {
  const { together } = findingOf('PR-53', unknown);
  expect(together.map(({ rule }) => rule)).toEqual(expect.arrayContaining(['PR-02', 'PR-08']));
});
