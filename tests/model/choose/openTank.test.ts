/** Which pump fills an open tank in a poor well. */
import { expect, test } from 'vitest';
import { sayReport } from '../../../src/cli/checkCommand.ts';
import { choiceLines } from '../../../src/cli/choiceLines.ts';
import { choosePump } from '../../../src/model/choose/choosePump.ts';
import { solve, withValue } from '../../../src/model/index.ts';
import { gpm, show, toFeet } from '../../../src/model/units.ts';
import { choose } from '../../../src/words/en/choose.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayPumpRow } from '../../../src/words/sayChoice.ts';
import { lowYield } from './jobs.ts';

const cistern = Object.entries({ 'house.kind': 'open tank', 'house.tank': '1500 gal', 'house.people': 4 }).reduce(
  (plan, [path, value]) => withValue(plan, path, value),
  lowYield,
);
const table = (plan = cistern) => {
  const made = choosePump(plan);
  if (made.kind === 'refused') throw new Error(`refused: ${made.why.variant}`);
  return made;
};
const us = show('us');

test('the smallest pump that brings the day is enough, and none is refused for the peak', () => {
  const { rows, inTheWay } = table();
  expect(inTheWay).toEqual([]);
  const [best] = rows;
  expect(best?.does).not.toBe('no');
  expect(best?.rated).toBeCloseTo(gpm(5), 9);
  for (const row of rows) {
    expect(row.why.variant).not.toBe('storeTooSmall');
    expect(sayPumpRow(row, { ...en, choose }, us).why).not.toMatch(/wanted|house wants/);
  }
});

test('it hangs where it still lifts well from its probe, so that the probe acts', () => {
  for (const { does, figures, solution } of table().rows.filter(({ does }) => does === 'yes' || does === 'depends')) {
    const probe = solution.facts.pump.lowLevelCutOff;
    if (typeof probe !== 'number') continue;
    expect(does).not.toBe('no');
    expect(toFeet((figures.lifts ?? Infinity) - probe)).toBeGreaterThan(20);
  }
});

test('what a day lacks no pump is blamed for', () => {
  const { rows } = table(withValue(cistern, 'well.yield', '0.1 gpm'));
  const whys = new Set(rows.map(({ why }) => why.variant));
  expect(whys).toContain('dayTooLittle');
  expect(whys).not.toContain('storeTooSmall');
});

test('nothing of it rests on a switch, and a valve alone is warned of', () => {
  const bare = withValue(withValue(cistern, 'house.cutIn', undefined), 'house.cutOut', undefined);
  expect(table(bare).assumed).toEqual([]);
  const lines = choiceLines(bare, 'Nothing.').join('\n');
  expect(lines).not.toMatch(/at cut-in|Cut-in|Cut-out/);
  expect(lines).toContain('Stop it by a float switch, never by a valve alone');
  expect(lines).toContain('overflow');
  expect(sayReport(solve(bare))).not.toMatch(/[Cc]ut-(?:in|out)/);
});
