import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  drawdownFactor,
  mostStartsPerSecond,
  smallestTank,
  startsPerSecond,
  tankDrawdown,
} from '../../../src/model/formulas/tank.ts';
import { atmosphericPressure } from '../../../src/model/formulas/water.ts';
import { feet, gallons, gpm, psi } from '../../../src/model/units.ts';
import { between, SEED } from '../laws.ts';

const seaLevel = atmosphericPressure(0);

// Boyle's law for the usual switches, precharge 2 psi under cut-in; four digits.
test.each([
  [20, 40, 0.3446, 0.3592],
  [30, 50, 0.2953, 0.3062],
  [40, 60, 0.258, 0.2663],
  [50, 70, 0.2288, 0.2354],
])('a %d/%d switch takes a share of %d from the tank at sea level and %d at 5,000 ft', (cutIn, cutOut, low, high) => {
  const tank = { cutIn: psi(cutIn), cutOut: psi(cutOut), precharge: psi(cutIn - 2) };
  expect(Math.abs(drawdownFactor({ ...tank, atmosphere: seaLevel }) - low)).toBeLessThanOrEqual(0.00006);
  expect(Math.abs(drawdownFactor({ ...tank, atmosphere: atmosphericPressure(feet(5000)) }) - high)).toBeLessThanOrEqual(
    0.00006,
  );
});

test('the air keeps pressure times volume between cut-in and cut-out', () => {
  fc.assert(
    fc.property(between(10, 50), between(5, 40), between(0, 1), (cutIn, rise, share) => {
      const [low, high, precharge] = [psi(cutIn), psi(cutIn + rise), psi(cutIn * share)];
      const volume = 0.2;
      const airAtCutIn = (volume * (precharge + seaLevel)) / (low + seaLevel);
      const airAtCutOut =
        airAtCutIn - tankDrawdown({ volume, cutIn: low, cutOut: high, precharge, atmosphere: seaLevel });
      expect(((high + seaLevel) * airAtCutOut) / ((low + seaLevel) * airAtCutIn)).toBeCloseTo(1, 9);
    }),
    SEED,
  );
});

test('a precharge above cut-in gives less water than one below it, and one above cut-out none', () => {
  const factor = (precharge: number) =>
    drawdownFactor({ cutIn: psi(40), cutOut: psi(60), precharge: psi(precharge), atmosphere: seaLevel });
  expect(factor(50)).toBeLessThan(factor(38));
  expect(factor(65)).toBe(0);
});

test('the smallest tank gives just the water of one run', () => {
  const tank = { cutIn: psi(40), cutOut: psi(60), precharge: psi(38), atmosphere: seaLevel };
  const volume = smallestTank({ ...tank, flow: gpm(10), runTime: 60 });
  expect(tankDrawdown({ ...tank, volume })).toBeCloseTo(gallons(10), 12);
});

test('no steady demand starts the pump more often than half its flow', () => {
  const [flow, drawdown] = [gpm(10), gallons(10)];
  for (let share = 0; share <= 1; share += 0.05) {
    expect(startsPerSecond({ demand: share * flow, flow, tankDrawdown: drawdown })).toBeLessThanOrEqual(
      mostStartsPerSecond(flow, drawdown),
    );
  }
});

test('a cut-out at or below cut-in is refused', () => {
  expect(() => drawdownFactor({ cutIn: psi(40), cutOut: psi(40), precharge: psi(38), atmosphere: seaLevel })).toThrow(
    'cut-out must be the higher',
  );
});
