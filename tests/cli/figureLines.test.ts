/** The figures that `check` tells: none names a level below the pump, and none looks said that rests on a depth nobody said. */
import { describe, expect, test } from 'vitest';
import { solve } from '../../src/model/solve.ts';
import { rockWell } from '../plans/build.ts';
import { figureLines } from '../../src/cli/figureLines.ts';
import { drawdownAt } from '../../src/model/formulas/drawdown.ts';
import type { Solution } from '../../src/model/solution.ts';
import { SOUND } from '../wells/sound.ts';
import { solutionOf } from '../wells/judged.ts';

/** Where the drawdown at the demand ends, reckoned anew. */
function fallsTo({ facts: { water, house } }: Solution): number {
  const { staticLevel, pumping } = water;
  if (staticLevel === null || pumping === null || house.demand === null) return -Infinity;
  return staticLevel + (drawdownAt(pumping, house.demand, staticLevel) ?? -Infinity);
}

const told = SOUND.map(({ plan }) => solutionOf(plan)!).map((solution) => ({
  below: fallsTo(solution) > solution.facts.pump.setting,
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

describe('a length that rests on a depth nobody said', () => {
  const lines = (change: Record<string, unknown> = {}) => figureLines(solve(rockWell(change)));
  const marked = (change?: Record<string, unknown>) =>
    lines(change)
      .filter((line) => line.endsWith(', assumed'))
      .map((line) => line.replace(/ {2}.*$/, ''));
  const pump = { power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } };
  const casing = { material: 'steel', size: '6 in', bottom: '200 ft' };

  test('is marked, and none where all depths are said', () => {
    expect(marked()).toEqual([]);
    expect(marked({ pump })).toEqual([
      'Pump intake',
      'Drop pipe to cut',
      'Drop pipe, hanging length',
      'Wire in the well',
      'Weight on the hook at rest',
    ]);
    expect(marked({ top: { kind: 'pitless' } })).toEqual([
      'Drop pipe to cut',
      'Drop pipe, hanging length',
      'Lift-out pipe',
      'Weight on the hook at rest',
    ]);
    expect(marked({ well: { ...rockWell().well, casing } })).toEqual(['Lift-out pipe', 'Wire in the well']);
  });

  test('is every one that moves with that depth', () => {
    const told = (change: Record<string, unknown>) =>
      lines(change).filter((line) => /^(?:Pump intake|Drop pipe|Lift-out|Wire|Weight)/.test(line));
    const [one, other] = ['150 ft', '130 ft'].map((setting) => told({ pump: { ...pump, setting } }));
    const moved = one!.filter((line, i) => line !== other![i]).map((line) => line.replace(/ {2}.*$/, ''));
    expect(marked({ pump })).toEqual(moved);
  });
});
