import { scaleLinear } from 'd3-scale';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roundSteps } from '../../src/draw/scale.ts';

test('ticks stand at round steps, from end to end', () => {
  expect(roundSteps(-3, 212, 8)).toEqual([0, 20, 40, 60, 80, 100, 120, 140, 160, 180, 200]);
  expect(roundSteps(0.05, 1.24, 12)).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2]);
});

// Another program's ticks, to the last bit.
test('they are those of the scales that plots are drawn with', () => {
  const end = fc.double({ min: -40, max: 2500, noNaN: true });
  fc.assert(
    fc.property(
      end,
      fc.double({ min: 1.2, max: 2500, noNaN: true }),
      fc.double({ min: 2, max: 40, noNaN: true }),
      (from, length, count) => {
        const theirs = scaleLinear()
          .domain([from, from + length])
          .ticks(count);
        // Nought is nought, from whichever side.
        const plain = (steps: readonly number[]): number[] => steps.map((each) => each + 0);
        expect(plain(roundSteps(from, from + length, count))).toEqual(plain(theirs));
      },
    ),
    { seed: 5, numRuns: 2000 },
  );
});
