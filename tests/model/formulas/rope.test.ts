import fc from 'fast-check';
import { expect, test } from 'vitest';
import { peakOnSlackRope, requiredRopeStrength, ropeFactor, ropeLoadLimit } from '../../../src/model/formulas/rope.ts';

const positive = fc.double({ min: 1, max: 1e5, noNaN: true });

test('the load limit of a design factor has that factor, and needs that strength', () => {
  fc.assert(
    fc.property(positive, fc.double({ min: 1, max: 12, noNaN: true }), (breakingStrength, designFactor) => {
      const load = ropeLoadLimit({ breakingStrength, designFactor });
      expect(ropeFactor({ breakingStrength, load })).toBeCloseTo(designFactor, 9);
      expect(requiredRopeStrength({ load, designFactor }) / breakingStrength).toBeCloseTo(1, 9);
    }),
    { seed: 20260303 },
  );
});

test('a knot takes half of the factor', () => {
  const rope = { breakingStrength: 5000, load: 1000 };
  expect(ropeFactor(rope)).toBe(ropeFactor({ ...rope, knotEfficiency: 1 }) / 2);
});

test('a load let go onto a rope without slack pulls twice its weight, and more with slack', () => {
  const rope = { load: 700, ropeLength: 90, breakingStrength: 5000 };
  expect(peakOnSlackRope({ ...rope, slack: 0 })).toBe(1400);
  expect(peakOnSlackRope({ ...rope, slack: 1 })).toBeGreaterThan(peakOnSlackRope({ ...rope, slack: 0.5 }));
});

test('the peak stretches the rope by as much work as the load does on its way', () => {
  const [load, slack, ropeLength, breakingStrength] = [700, 0.6, 90, 5000];
  const stiffness = breakingStrength / (0.2 * ropeLength);
  const stretch = peakOnSlackRope({ load, slack, ropeLength, breakingStrength }) / stiffness;
  expect((stiffness * stretch ** 2) / 2).toBeCloseTo(load * (slack + stretch), 6);
});

test('figures without a meaning are refused', () => {
  expect(() => ropeFactor({ breakingStrength: 5000, load: 0 })).toThrow(RangeError);
  expect(() => ropeLoadLimit({ breakingStrength: -1, designFactor: 5 })).toThrow(RangeError);
  expect(() => peakOnSlackRope({ load: 1, slack: -1, ropeLength: 1, breakingStrength: 1 })).toThrow(RangeError);
});
