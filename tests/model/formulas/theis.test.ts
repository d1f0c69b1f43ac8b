import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  confinedEquivalent,
  cooperJacobDrawdown,
  radiusOfZeroDrawdown,
  theisDrawdown,
  unconfinedDrawdown,
  wellFunction,
} from '../../../src/model/formulas/theis.ts';
import { residualDrawdown, steppedDrawdown } from '../../../src/model/formulas/recovery.ts';
import { between, SEED } from '../laws.ts';

const logBetween = (low: number, high: number) => between(low, high).map((power) => 10 ** power);
const aquifers = fc.record({
  flow: logBetween(-5, -2),
  transmissivity: logBetween(-6, -2),
  storativity: logBetween(-6, -0.5),
  radius: logBetween(-1.5, 2.5),
  time: logBetween(2, 7),
});

// Abramowitz & Stegun (1964), Table 5.1, column E1(x): nine decimals, so half a unit of the ninth.
test.each([
  [0.5, 0.559773595],
  [1, 0.219383934],
  [2, 0.048900511],
])('W(%d) is %d, as tabled by Abramowitz & Stegun', (u, tabled) => {
  expect(Math.abs(wellFunction(u) - tabled)).toBeLessThanOrEqual(0.5e-9);
});

test('W(u) tends to the Cooper-Jacob form -0.5772 - ln u as u shrinks', () => {
  for (const u of [1e-2, 1e-4, 1e-6, 1e-8]) {
    const cooperJacob = -0.5772156649 - Math.log(u); // the next term of the series is u
    expect(Math.abs(wellFunction(u) - cooperJacob)).toBeLessThan(u + 1e-10);
  }
});

test('W(u) falls at every step of a sweep across the join at u = 1', () => {
  const sweep = Array.from({ length: 91 }, (_, i) => wellFunction(10 ** (i / 10 - 8)));
  for (let i = 1; i < sweep.length; i++) expect(sweep[i]).toBeLessThan(sweep[i - 1]!);
});

test('the slope of W(u) is -exp(-u)/u, the integrand it is made of', () => {
  fc.assert(
    fc.property(logBetween(-6, 1), (u) => {
      const step = 1e-4 * u;
      const slope = (wellFunction(u + step) - wellFunction(u - step)) / (2 * step);
      expect(Math.abs(slope / (-Math.exp(-u) / u) - 1)).toBeLessThan(1e-6);
    }),
    SEED,
  );
});

test('drawdown grows with flow and time and shrinks with distance', () => {
  fc.assert(
    fc.property(aquifers, between(1.01, 3), (well, more) => {
      const s = theisDrawdown(well);
      fc.pre(s > 1e-12);
      expect(theisDrawdown({ ...well, flow: well.flow * more })).toBeGreaterThan(s);
      expect(theisDrawdown({ ...well, time: well.time * more })).toBeGreaterThan(s);
      expect(theisDrawdown({ ...well, radius: well.radius * more })).toBeLessThan(s);
    }),
    SEED,
  );
});

test('the straight line puts no drawdown at the radius of zero drawdown, within the digits of 2.25', () => {
  const well = { flow: 1e-3, transmissivity: 5e-5, storativity: 1e-4, time: 86400 };
  const radius = radiusOfZeroDrawdown(well);
  expect(Math.abs(cooperJacobDrawdown({ ...well, radius }))).toBeLessThan(
    0.002 * cooperJacobDrawdown({ ...well, radius: 1 }),
  );
});

test('a step to another flow changes nothing before it, and a stop leaves the residual of the recovery formula', () => {
  fc.assert(
    fc.property(aquifers, between(0.1, 5), (well, wait) => {
      const steps = [
        { from: 0, flow: well.flow },
        { from: well.time, flow: 0 },
      ];
      expect(steppedDrawdown(well, steps, well.time / 2)).toBeCloseTo(
        theisDrawdown({ ...well, time: well.time / 2 }),
        12,
      );
      const sinceStop = wait * well.time;
      const residual = residualDrawdown({ ...well, pumped: well.time, sinceStop });
      expect(steppedDrawdown(well, steps, well.time + sinceStop)).toBeCloseTo(residual, 9);
      expect(residual).toBeGreaterThanOrEqual(0);
    }),
    SEED,
  );
});

test('the correction for a thinning aquifer goes there and back', () => {
  fc.assert(
    fc.property(between(1, 100), between(0, 1), (thickness, share) => {
      const drawdown = share * thickness;
      expect(
        unconfinedDrawdown(Math.min(confinedEquivalent(drawdown, thickness), thickness / 2), thickness),
      ).toBeCloseTo(drawdown, 5);
    }),
    SEED,
  );
});

test('values without meaning are refused, with what to check', () => {
  expect(() => wellFunction(0)).toThrow('check radius, storativity, transmissivity, time');
  expect(() => theisDrawdown({ flow: -1, transmissivity: 1, storativity: 1, radius: 1, time: 1 })).toThrow(
    'flow is -1',
  );
  expect(() => confinedEquivalent(11, 10)).toThrow(RangeError);
  expect(() => unconfinedDrawdown(6, 10)).toThrow(RangeError);
  expect(() =>
    steppedDrawdown(
      { transmissivity: 1, storativity: 1, radius: 1 },
      [
        { from: 5, flow: 1 },
        { from: 5, flow: 2 },
      ],
      9,
    ),
  ).toThrow(RangeError);
});

test('far from the start the straight line of Cooper and Jacob is Theis', () => {
  const late = { flow: 1e-3, transmissivity: 3e-4, storativity: 1e-4, radius: 5, time: 86400 };
  expect(cooperJacobDrawdown(late) / theisDrawdown(late)).toBeCloseTo(1, 4);
});
