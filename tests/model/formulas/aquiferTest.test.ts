import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  fitStraightLine,
  fitTheis,
  transmissivityFromSpecificCapacity,
} from '../../../src/model/formulas/aquiferTest.ts';
import { theisArgument, theisDrawdown } from '../../../src/model/formulas/theis.ts';
import { between, SEED } from '../laws.ts';

test('a fit of readings that follow Theis gives the aquifer back', () => {
  fc.assert(
    fc.property(between(-5, -2.5), between(-5, -2), between(5, 60), (logT, logS, radius) => {
      const aquifer = { flow: 2e-3, transmissivity: 10 ** logT, storativity: 10 ** logS, radius };
      fc.pre(theisArgument({ ...aquifer, time: 600 }) < 1);
      const readings = [60, 120, 300, 600, 1200, 3600, 7200, 20000, 60000].map((time) => ({
        time,
        drawdown: theisDrawdown({ ...aquifer, time }),
      }));
      const fit = fitTheis({ flow: aquifer.flow, radius, readings });
      expect(Math.abs(fit.transmissivity / aquifer.transmissivity - 1)).toBeLessThan(1e-6);
      expect(Math.abs(fit.storativity / aquifer.storativity - 1)).toBeLessThan(1e-6);
    }),
    SEED,
  );
});

test('transmissivity from specific capacity gives the measured drawdown back by Theis', () => {
  fc.assert(
    fc.property(
      between(-5, -2),
      between(0.1, 100),
      between(600, 2e5),
      between(0.04, 0.3),
      (logFlow, drawdown, time, radius) => {
        const well = { flow: 10 ** logFlow, drawdown, time, radius, storativity: 1e-4 };
        const transmissivity = transmissivityFromSpecificCapacity(well);
        fc.pre(transmissivity !== null);
        expect(Math.abs(theisDrawdown({ ...well, transmissivity: transmissivity! }) / drawdown - 1)).toBeLessThan(1e-9);
      },
    ),
    SEED,
  );
});

test('no transmissivity fits a wide dug well that hardly drew down in its first minutes: its own water was pumped', () => {
  expect(
    transmissivityFromSpecificCapacity({ flow: 5e-5, drawdown: 5, time: 10, radius: 1, storativity: 0.2 }),
  ).toBeNull();
});

test('a straight line on a logarithmic time axis gives its own slope and start back', () => {
  // s = 0.5 log10(t/30) at 30 s, 300 s and an hour: 0.5 m for each tenfold of time, and none at 30 s.
  const readings = [30, 300, 3600].map((time) => ({ time, drawdown: 0.5 * Math.log10(time / 30) }));
  const line = fitStraightLine({ flow: 1e-3, radius: 10, readings });
  expect([line.slopePerCycle, line.zeroTime]).toEqual([expect.closeTo(0.5, 9), expect.closeTo(30, 6)]);
  // Cooper & Jacob (1946): T = 2.3026 Q/(4 pi ds), S = 2.25 T t0/r2.
  expect(line.transmissivity).toBeCloseTo((2.302585 * 1e-3) / (4 * Math.PI * 0.5), 9);
  expect(line.storativity).toBeCloseTo((2.25 * line.transmissivity * 30) / 100, 9);
});
