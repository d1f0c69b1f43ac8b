import type { Estimate } from './pumpingTest.ts';
import { studentT95 } from './studentT.ts';

/** An estimate whose logarithm was fitted, or is as uncertain as its own share: the interval never falls below zero. */
export function logEstimate(value: number, relativeError: number, degrees: number): Estimate {
  const reach = Math.exp(studentT95(degrees) * relativeError);
  return { value, standardError: value * relativeError, low: value / reach, high: value * reach };
}
