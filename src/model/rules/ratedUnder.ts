import type { Facts } from '../facts.ts';
import type { Ratio, Watts } from '../si.ts';

/** Metric names of the same motors are rounded: one of 2.2 kW is a motor of 3 hp (2.24 kW). */
const NAME_ROUNDING: Ratio = 0.02;

/** Whether the motor is smaller than one of a rating; null while nobody knows its power. */
export function ratedUnder({ pump }: Pick<Facts, 'pump'>, rating: Watts): boolean | null {
  return pump.power === null ? null : pump.power < rating * (1 - NAME_ROUNDING);
}
