/** A well is told to have been blown with air only where somebody said so. */
import { describe, expect, test } from 'vitest';
import { solve } from '../../src/model/solve.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { sayFinding, sayTurning } from '../../src/words/sayJudgement.ts';
import { rockWell } from '../plans/build.ts';

const US = show('us');

function wellTested(yieldFrom: 'air lift' | 'bailer' | 'pump' | undefined) {
  return solve(
    rockWell({
      well: {
        depth: '300 ft',
        casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '12 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
        yield: '10 gpm',
        ...(yieldFrom === undefined ? {} : { yieldFrom }),
      },
      water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } },
    }),
  );
}

const told = (yieldFrom: Parameters<typeof wellTested>[0]): string =>
  wellTested(yieldFrom)
    .findings.flatMap((each) => [
      sayFinding(each, en, US).message,
      ...each.together.map((one) => sayTurning(one, en, US)),
    ])
    .join(' ');

describe('a yield is told by how it was found', () => {
  test.each([
    ['air lift', /lown with air the well gave 10 gpm, [\d.]+ gpm sure/],
    ['bailer', /ailed the well gave 10 gpm, [\d.]+ gpm sure/],
    [undefined, /ested, nobody said how, the well gave 10 gpm, [\d.]+ gpm sure/],
  ] as const)('%s', (yieldFrom, words) => {
    expect(told(yieldFrom)).toMatch(words);
    if (yieldFrom !== 'air lift') expect(told(yieldFrom)).not.toMatch(/blown/i);
  });

  test('what a pump brought up is not halved', () => {
    expect(told('pump')).not.toMatch(/gpm sure|blown/i);
    // 10 gpm pumped carry a house of 7; of 10 gpm blown only 5 are sure.
    expect(wellTested('pump').verdicts['PR-55']).toBe('ok');
    expect(wellTested('air lift').verdicts['PR-55']).not.toBe('ok');
  });

  test('and how far the water falls stays unknown all the same', () => {
    expect(wellTested('pump').verdicts['PR-53']).toBe(wellTested('air lift').verdicts['PR-53']);
  });
});
