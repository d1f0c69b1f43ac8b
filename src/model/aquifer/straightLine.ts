/** The straight-line readings of a test: drawdown on log time, and what is left of it on log t/t'. */
import { transmissivityFromSlope } from '../formulas/aquiferTest.ts';
import type { CubicMetresPerSecond, Metres, Ratio, Seconds } from '../si.ts';
import { logEstimate } from './estimate.ts';
import { fitLine } from './line.ts';
import type { RecoveryLine, RecoveryReading, StraightLine, TestReading } from './pumpingTest.ts';

/** The line holds to 1 % below this u; Kruseman & de Ridder (1994), ch. 3, with the error recomputed. */
export const LINE_ARGUMENT: Ratio = 0.03;

/**
 * Drawdown on log time.
 *
 *     T = ln 10 Q/(4 pi b),   S = 2.25 T t0/r²
 *
 * @param readings  those that the line is to go through
 * @returns  null with fewer than three readings, or when the drawdown does not grow
 *
 * Error    of T from the scatter round the line
 * Source   Cooper & Jacob (1946), Trans. Am. Geophys. Union 27, 526
 */
export function straightLine(
  flow: CubicMetresPerSecond,
  radius: Metres,
  readings: readonly TestReading[],
): StraightLine | null {
  const line = fitLine(readings.map(({ time, drawdown }) => ({ x: Math.log10(time), y: drawdown })));
  if (line === null || line.slopeError === null || !(line.slope > 0)) return null;
  const value = transmissivityFromSlope(flow, line.slope);
  const zeroTime = 10 ** (-line.intercept / line.slope);
  const times = readings.map(({ time }) => time);
  return {
    transmissivity: logEstimate(value, line.slopeError / line.slope, line.degrees),
    storativity: (2.25 * value * zeroTime) / radius ** 2,
    slopePerCycle: line.slope,
    zeroTime,
    from: Math.min(...times),
    to: Math.max(...times),
    used: readings.length,
  };
}

/**
 * Residual drawdown on log t/t', t since the start and t' since the stop.
 *
 *     T = ln 10 Q/(4 pi b)
 *
 * @returns  null with fewer than three readings, or when the residual does not grow with t/t'
 *
 * Source   Theis (1935); Todd (1980), Groundwater Hydrology, ch. 4
 */
export function recoveryLine(
  flow: CubicMetresPerSecond,
  pumpedFor: Seconds,
  readings: readonly RecoveryReading[],
): RecoveryLine | null {
  const line = fitLine(
    readings.map(({ sinceStop, drawdown }) => ({ x: Math.log10((pumpedFor + sinceStop) / sinceStop), y: drawdown })),
  );
  if (line === null || line.slopeError === null || !(line.slope > 0)) return null;
  return {
    transmissivity: logEstimate(transmissivityFromSlope(flow, line.slope), line.slopeError / line.slope, line.degrees),
    slopePerCycle: line.slope,
    meetsZeroAt: 10 ** (-line.intercept / line.slope),
    used: readings.length,
  };
}
