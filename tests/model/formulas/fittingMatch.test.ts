import { expect, test } from 'vitest';
import { fittingGap, fittingMatch } from '../../../src/model/formulas/fittingMatch.ts';
import { sizeSystem } from '../../../src/model/tables/pipes.ts';
import { inches } from '../../../src/model/units.ts';

const barb = (gapInches: number) => ({ madeFor: inches(1.049), pipeBore: inches(1.049 + gapInches) });

test.each([
  [0.011, 'loose'],
  [0.009, 'match'],
  [0, 'match'],
  [-0.009, 'match'],
  [-0.011, 'forced'],
  [-0.049, 'forced'],
  [-0.051, 'does not enter'],
])('a gap of %d in is: %s', (gap, verdict) => {
  expect(fittingMatch(barb(gap))).toBe(verdict);
});

test('a barb fits the pipe it was made for in every size', () => {
  for (const bore of [0.824, 1.049, 1.38, 1.61, 2.067]) {
    expect(fittingMatch({ madeFor: inches(bore), pipeBore: inches(bore) })).toBe('match');
  }
});

test('pipes made to the inside, to iron pipe and to copper tube sizes do not share fittings', () => {
  expect(new Set(['ASTM D2239', 'ASTM D3035', 'ASTM D2737'].map(sizeSystem)).size).toBe(3);
  expect(sizeSystem('ASTM D1785')).toBe(sizeSystem('ASME B36.10M'));
  expect(sizeSystem('hearsay')).toBeNull();
});

test('a pipe without a bore is refused', () => {
  expect(() => fittingGap({ pipeBore: 0, madeFor: 1 })).toThrow(RangeError);
});

test('at each limit it still sits as inside it, a hair beyond no more', () => {
  // A choice, no source: 0.010 in to either side, and 0.050 in too thick.
  const sits = (play: number) => fittingMatch({ pipeBore: inches(1 + play), madeFor: inches(1) });
  expect([sits(0.00999), sits(0.01001)]).toEqual(['match', 'loose']);
  expect([sits(-0.00999), sits(-0.01001)]).toEqual(['match', 'forced']);
  expect([sits(-0.04999), sits(-0.05001)]).toEqual(['forced', 'does not enter']);
});
