/** A value that is refused is told in whole sentences: what, where, how to mend. */
import { describe, expect, test } from 'vitest';
import { readPlan, withValue } from '../../src/model/index.ts';
import { sayRefusal } from '../../src/words/en/plan/refusal.ts';
import { sample } from '../model/plan/sample.ts';

function refused(path: string, value: unknown, units: 'us' | 'metric' = 'us'): string[] {
  const read = readPlan({ ...withValue(sample(), path, value), units });
  return read.ok ? [] : read.problems.map(sayRefusal);
}

describe('a refusal', () => {
  test.each([
    ['pump.setting', '180', 'Pump setting cannot be "180": it is without a unit. Write it as "180 ft" or "54.9 m".'],
    [
      'site.frostDepth',
      '90 ft',
      'Frost depth cannot be "90 ft": it must be at most 30 ft. Write a value from "0 ft" to "30 ft".',
    ],
    ['house.cutIn', 'forty', 'Cut-in cannot be "forty": it is not a number with a unit. Write'],
    ['top.kind', undefined, ''],
  ] as const)('of %s %s', (path, value, words) => {
    const [said = ''] = refused(path, value);
    expect(said.startsWith(words), said).toBe(true);
  });

  test('is of whole sentences without a path, a bracket or a field of the file', () => {
    const wrong = [
      ...refused('pump.setting', '9000 ft'),
      ...refused('house.cutOut', '20 psi'),
      ...refused('well.casing', 'steel'),
      ...refused('pump.curve.kind', 'strong'),
      ...refused('water.pumping', {}),
      ...refused('dropPipe.size', '17 in'),
    ];
    expect(wrong.length).toBeGreaterThanOrEqual(6);
    for (const said of wrong) {
      expect(said).toMatch(/^[A-Z][^.].*[.?]$/);
      expect(said).not.toMatch(/[{}[\]]|[a-z]\.[a-z]|: which|\.\.|[?]\./);
    }
  });

  test('names the limit in the units of the plan', () => {
    expect(refused('site.frostDepth', '90 m', 'metric')[0]).toBe(
      'Frost depth cannot be "90 m": it must be at most 9.14 m. Write a value from "0 m" to "9.14 m".',
    );
  });
});
