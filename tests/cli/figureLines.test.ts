/** The figures that `check` tells: none names a level below the pump. */
import { expect, test } from 'vitest';
import { figureLines } from '../../src/cli/figureLines.ts';
import { SOUND } from '../wells/sound.ts';
import { solutionOf } from '../wells/judged.ts';

const told = SOUND.map(({ plan }) => solutionOf(plan)!).map((solution) => ({
  below: (solution.levels.pumping ?? 0) > solution.facts.pump.setting,
  lines: figureLines(solution).filter((line) => /^(?:Pumping level|Head the pump works against)/.test(line)),
}));

test('where the demand would take the water below the pump, no level and no head is told', () => {
  const below = told.filter((each) => each.below);
  expect(below.length).toBeGreaterThan(0);
  for (const { lines } of below) for (const line of lines) expect(line).toMatch(/none: the water falls to the pump$/);
});

test('everywhere else both are', () => {
  for (const { lines } of told.filter((each) => !each.below))
    for (const line of lines) expect(line).not.toMatch(/none/);
});
