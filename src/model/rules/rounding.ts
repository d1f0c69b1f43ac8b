/** Rounding towards the inside of a limit, in one place, with a sliver for what binary fractions leave. */
import type { Metres } from '../si.ts';

/** 0.05 mm: under the grace of lengths, above what conversions leave. */
const SLIVER: Metres = 5e-5;

/** The least multiple of the step that is not below the value. */
export function ceilTo(value: number, step: number, sliver: number = SLIVER): number {
  return Math.ceil((value - sliver) / step) * step;
}

/** The greatest multiple of the step that is not above the value. */
export function floorTo(value: number, step: number, sliver: number = SLIVER): number {
  return Math.floor((value + sliver) / step) * step;
}
