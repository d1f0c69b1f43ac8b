/** The motor against the supply that it hangs on. */

import { horsepower } from '../units.ts';
import type { Volts, Watts } from '../si.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';

/** Metric names of the same motors are rounded: 1.1 kW is 1.48 hp, 0.75 kW is 1.006 hp. */
const ROUNDING = 1.02;
/** Largest motor on 115 V, and largest single-phase motor on two wires. Common practice, no source. */
export const LARGEST_ON_115: Watts = horsepower(0.5);
export const LARGEST_TWO_WIRE: Watts = horsepower(1.5);
/** 110 to 127 V are names of one supply. */
export const LOW_VOLTAGE: Volts = 130;

export const motorFitsSupply = defineRule({
  number: 'PR-59',
  part: 'motor',
  restsOn: ['pump.phase', 'pump.voltage', 'pump.wires'],
  asks: { on115: LARGEST_ON_115, onTwoWires: LARGEST_TWO_WIRE },
  judge({ facts }) {
    const { power, phase, wires, voltage, setting, intakeToMotorBottom } = facts.pump;
    const depth = setting + intakeToMotorBottom / 2;
    if (phase === 3 && wires < 3)
      return breaks(
        'threePhaseOnTwo',
        'danger',
        { wires },
        { measured: wires, limit: 3, margin: wires - 3, quantity: 'count', depth },
      );
    if (phase === 3) return holds('threePhase', { voltage });
    if (power === null) return missing('power');
    if (wires === 2 && power > LARGEST_TWO_WIRE * ROUNDING)
      return breaks('tooLargeForTwo', 'danger', { power, most: LARGEST_TWO_WIRE }, { depth });
    if (voltage < LOW_VOLTAGE && power > LARGEST_ON_115 * ROUNDING)
      return breaks('tooLargeFor115', 'warning', { power, voltage, most: LARGEST_ON_115 }, { depth });
    return holds('fits', { power, voltage, wires });
  },
});

export const supplyRules = [motorFitsSupply] as const;
