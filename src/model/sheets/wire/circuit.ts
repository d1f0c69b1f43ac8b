/** The circuit of the plan: current, length, supply. */
import type { Context } from '../../explain/context.ts';
import type { Amperes, Metres } from '../../si.ts';
import { lockedRotorCurrent, motorCurrent, runningCurrent } from '../../tables/motors.ts';
import { known } from '../known.ts';
import type { Missing } from '../sheet.ts';
import { leadLength, runToWell, wireToMotor } from '../../string/wireLengths.ts';

export interface Circuit {
  /** Of the nameplate, else what such a motor draws at its service factor. */
  readonly current: Amperes | null;
  /** Of the code's table: what sizes conductors. */
  readonly tabled: Amperes | null;
  /** With the rotor locked, by the code's table. */
  readonly starting: Amperes | null;
  /** Panel to motor, one way along the wire. */
  readonly length: Metres | null;
  readonly run: Metres | null;
  readonly lead: Metres;
  readonly noCurrent: Missing | null;
  readonly noRun: Missing | null;
}

export function circuitOf({ facts }: Context): Circuit {
  const { pump } = facts;
  const { phase, voltage, frequency } = pump;
  const tabled = known([pump.power], (power) => motorCurrent({ power, phase, voltage }));
  const starting = known([pump.power], (power) => lockedRotorCurrent({ power, phase, voltage }));
  const current = pump.current ?? known([pump.power], (power) => runningCurrent({ power, phase, voltage, frequency }));
  const run = runToWell(facts);
  return {
    current,
    tabled,
    starting,
    run,
    lead: leadLength(facts),
    length: wireToMotor(facts),
    noCurrent:
      current !== null
        ? null
        : {
            path: pump.power === null ? 'pump.power' : 'pump.current',
            words: 'the motor’s current, or a power and voltage that the code’s table has',
          },
    noRun: run === null ? { path: 'wire.run', words: 'the run of the wire from panel to well' } : null,
  };
}
