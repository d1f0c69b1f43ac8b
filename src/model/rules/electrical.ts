/** The wire from the panel to the motor: drop and ampacity. */
import { startingDropBound, startingVoltageShare } from '../formulas/startingDip.ts';
import { ampacity, CONTINUOUS_MOTOR_FACTOR, requiredAmpacity } from '../formulas/wire.ts';
import type { Amperes, Metres, Ratio } from '../si.ts';
import type { Solved } from '../solution.ts';
import { lockedRotorCurrent, motorCurrent, runningCurrent } from '../tables/motors.ts';
import { meets } from './grace.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import { wireToMotor } from '../string/wireLengths.ts';

/** The code's informational figure for a branch circuit, told and not judged by. */
export const DROP_NOTE: Ratio = 0.03;
/** The most for submersible pumps. */
export const DROP_WARNING: Ratio = 0.05;

/**
 * With less of the voltage while it stands still a motor has less than a quarter of its torque, for that falls with the
 * square: it hums, heats and does not turn. Makers build for nine tenths (NEMA MG 1, 12.44, from memory); where between
 * the two a motor stays behind is its own affair. Common practice, no source.
 */
export const LEAST_AT_START: Ratio = 0.5;
/** Where the code's table has no such motor. Common practice, no source. */
const START_CURRENTS = 6;

/** What the drop is judged at: the nameplate's, else what such motors draw at their service factor. */
export function drawnCurrent({ facts }: Solved): Amperes | null {
  const { current, power, phase, voltage, frequency } = facts.pump;
  return current ?? (power === null ? null : runningCurrent({ power, phase, voltage, frequency }));
}

/** What the wire is to carry: the code's table current, or the nameplate's where that is more. */
export function currentToCarry({ facts }: Solved): Amperes | null {
  const { current, power, phase, voltage } = facts.pump;
  const table = power === null ? null : motorCurrent({ power, phase, voltage });
  return table === null || current === null ? (table ?? current) : Math.max(table, current);
}

export const voltageDropRule = defineRule({
  number: 'PR-49',
  part: 'cable',
  restsOn: ['pump.current', 'pump.phase', 'pump.setting', 'pump.voltage', 'wire.run', 'wire.size'],
  asks: { most: DROP_WARNING, informational: DROP_NOTE, start: LEAST_AT_START },
  judge({ solved, facts, values }) {
    const length = wireToMotor(facts);
    if (length === null) return missing('wireRun');
    const share = shareAtStart(solved, length);
    if (share !== null && !meets(share - LEAST_AT_START, 'ratio')) {
      const at = { measured: share, limit: LEAST_AT_START, margin: share - LEAST_AT_START, quantity: 'ratio' } as const;
      const { gauge } = facts.wire;
      const numbers = { length, share, voltage: facts.pump.voltage, gauge };
      return breaks('doesNotStart', 'danger', numbers, { ...at, depth: panelEnd(solved) });
    }
    const measured = values.voltageDropRunning;
    if (measured === null) return missing('currentOrPower');
    const current = drawnCurrent(solved);
    if (current === null) return missing('currentOrPower');
    const most = DROP_WARNING;
    const margin = most - measured;
    const { voltage } = facts.pump;
    const numbers = { current, length, measured, most, margin, voltage, gauge: facts.wire.gauge };
    if (meets(DROP_NOTE - measured, 'ratio')) return holds('thickEnough', numbers);
    if (meets(margin, 'ratio')) return holds('withinFive', { ...numbers, informational: DROP_NOTE });
    const at = { measured, limit: most, margin, quantity: 'ratio', depth: panelEnd(solved) } as const;
    return breaks('tooThin', 'warning', numbers, at);
  },
});

export const wireCarriesCurrent = defineRule({
  number: 'PR-50',
  part: 'cable',
  restsOn: ['pump.current', 'pump.phase', 'pump.voltage', 'wire.size'],
  asks: { share: CONTINUOUS_MOTOR_FACTOR },
  judge({ solved, facts }) {
    const { gauge } = facts.wire;
    const current = currentToCarry(solved);
    if (current === null) return missing(facts.pump.power === null ? 'powerOrCurrent' : 'currentOrPower');
    const asked = requiredAmpacity(current);
    const byNameplate = facts.pump.current === current;
    const cold = ampacity(gauge, 60);
    const warm = ampacity(gauge, 75);
    if (meets(cold - asked, 'current'))
      return holds('carries', { gauge, carries: cold, asked, current, byNameplate, margin: cold - asked });
    const depth = panelEnd(solved);
    if (meets(warm - asked, 'current')) {
      const margin = cold - asked;
      const at = { measured: cold, limit: asked, margin, quantity: 'current', depth } as const;
      return breaks('hotTerminalsOnly', 'warning', { gauge, asked, margin }, at);
    }
    const margin = warm - asked;
    const at = { measured: warm, limit: asked, margin, quantity: 'current', depth } as const;
    return breaks('tooThin', 'danger', { gauge, carries: warm, asked, current, byNameplate, margin }, at);
  },
});

/** Voltage at the motor that does not turn yet, as a share of the supply; null while its current is unknown. */
export function shareAtStart(solved: Solved, length: Metres): Ratio | null {
  const { pump, wire } = solved.facts;
  const { phase, power, voltage } = pump;
  const drawn = drawnCurrent(solved);
  if (drawn === null) return null;
  const tabled = power === null ? null : lockedRotorCurrent({ power, phase, voltage });
  // A current that somebody read tells more of this motor than its power does.
  const starting = pump.current === null && tabled !== null ? tabled : START_CURRENTS * drawn;
  const bound = startingDropBound({
    phase,
    lockedRotorCurrent: starting,
    length: Math.max(length, 0),
    gauge: wire.gauge,
    voltage,
  });
  return startingVoltageShare({ bound });
}

/** Where the cable leaves the well towards the panel. */
function panelEnd({ facts }: Solved): Metres {
  return -facts.well.casingHeight;
}

export const electricalRules = [wireCarriesCurrent, voltageDropRule] as const;
