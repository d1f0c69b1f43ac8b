/** What the motor sees while it starts: the wire takes several times the running drop. No code limits it for a house. */
import type { Amperes, Metres, Ratio, Volts } from '../si.ts';
import type { WireSize } from '../tables/wireSizes.ts';
import { conductorResistance, returnFactor } from './wire.ts';

/** Power factor of a motor that does not turn yet; 0.5 to 0.8 is met. Assumed, no source. */
export const LOCKED_ROTOR_POWER_FACTOR: Ratio = 0.7;

/**
 * Resistance of the wire over that of the stalled motor: the drop at start as a share of the supply, at worst.
 *
 *     r = I_LR m R L/V
 *
 * @returns  [-]
 * Throws    RangeError unless voltage is positive and current and length are not negative
 * Source    Ohm's law
 */
export function startingDropBound({
  phase,
  lockedRotorCurrent,
  length,
  gauge,
  voltage,
}: {
  readonly phase: 1 | 3;
  readonly lockedRotorCurrent: Amperes;
  readonly length: Metres;
  readonly gauge: WireSize;
  readonly voltage: Volts;
}): Ratio {
  if (!(voltage > 0 && lockedRotorCurrent >= 0 && length >= 0)) {
    throw new RangeError(
      `startingDropBound: ${voltage} V, ${lockedRotorCurrent} A, ${length} m; the voltage must be positive, ` +
        'the others must not be negative',
    );
  }
  return (lockedRotorCurrent * returnFactor(phase) * conductorResistance(gauge) * length) / voltage;
}

/**
 * Voltage at the motor while it starts, as a share of the supply.
 *
 *     V_m/V = 1/√(1 + 2 r cos φ + r²)
 *
 * @param bound        r of `startingDropBound` [-]
 * @param powerFactor  cos φ with the rotor locked [-]
 * @returns            [-]
 * Range               stiff supply, wire without reactance
 * Throws              RangeError for a negative r or a power factor outside 0 to 1
 * Source              voltage divider of the wire's resistance and the stalled motor's impedance
 */
export function startingVoltageShare({
  bound,
  powerFactor = LOCKED_ROTOR_POWER_FACTOR,
}: {
  readonly bound: Ratio;
  readonly powerFactor?: Ratio;
}): Ratio {
  if (!(bound >= 0 && bound < Infinity && powerFactor >= 0 && powerFactor <= 1)) {
    throw new RangeError(
      `startingVoltageShare: bound ${bound}, power factor ${powerFactor}; the first must not be negative, ` +
        'the second lies between 0 and 1',
    );
  }
  return 1 / Math.sqrt(1 + 2 * bound * powerFactor + bound * bound);
}

/** Starting torque left at a share of the voltage, of that at full voltage: it falls with the square [-]. */
export function startingTorqueShare(voltageShare: Ratio): Ratio {
  if (!(voltageShare >= 0)) throw new RangeError(`startingTorqueShare: share is ${voltageShare}, must not be negative`);
  return voltageShare * voltageShare;
}
