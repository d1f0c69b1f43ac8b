/** What the motor sees while it starts. */
import { wireName } from '../../units.ts';
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { step, term } from '../../explain/sum.ts';
import {
  LOCKED_ROTOR_POWER_FACTOR,
  startingDropBound,
  startingTorqueShare,
  startingVoltageShare,
} from '../../formulas/startingDip.ts';
import { conductorResistance, returnFactor } from '../../formulas/wire.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { Missing, SheetFigure } from '../sheet.ts';
import { familyOf } from '../../tables/wireSizes.ts';
import type { Circuit } from './circuit.ts';

const NO_LIMIT =
  'no code limits the dip at start for a house; 15 % is the figure for fire pumps (NEC 695.7, from memory)';

export function startFigures(context: Context, { starting, length, noRun }: Circuit): SheetFigure[] {
  const { phase, voltage } = context.facts.pump;
  const { gauge } = context.facts.wire;
  const bound = known([starting, length], (lockedRotorCurrent, way) =>
    startingDropBound({ phase, lockedRotorCurrent, length: way, gauge, voltage }),
  );
  const share = known([bound], (ratio) => startingVoltageShare({ bound: ratio }));
  const torque = known([share], startingTorqueShare);
  const noStart: Missing | null =
    starting === null
      ? { path: 'pump.power', words: 'the current at start: a power and voltage that the code’s table has' }
      : null;
  // Past this the table's current could not flow: more than the whole voltage cannot be lost.
  const stalls = bound !== null && bound > 1;
  const missing = [noStart, noRun];
  return [
    figure(
      context,
      {
        key: 'startingCurrent',
        title: 'Current with the rotor locked',
        symbol: 'I_s',
        value: starting,
        as: 'amperes',
        missing: [noStart],
      },
      () => ({
        terms: [term('I_s', 'locked-rotor current by the code’s table', starting, 'amperes')],
        steps: [step('I_s', 'I_s', starting, 'amperes')],
        formula: 'I_s = the code’s table',
        range: within('the code letter on the nameplate overrules it', null),
        source: 'NFPA 70 (NEC), 2008, Table 430.251(A) and (B)',
      }),
    ),
    figure(
      context,
      {
        key: 'startingBound',
        title: 'Dip at start, at the very worst',
        symbol: 'd',
        value: known([bound], (ratio) => Math.min(ratio, 1)),
        as: 'percent',
        missing,
      },
      () => ({
        terms: [
          term('m', phase === 1 ? 'there and back' : '√3 of three phases', returnFactor(phase), 'number'),
          term('I_s', 'locked-rotor current', starting, 'amperes'),
          term(
            'R',
            `resistance of ${wireName(gauge, context.units)} stranded copper at 75 °C`,
            conductorResistance(gauge),
            'ohmsPerLength',
          ),
          term('L', 'panel to motor, one way', length, 'length'),
          term('V', 'supply voltage', voltage, 'volts'),
          ...(stalls ? [term('d_0', 'the whole voltage: m × I_s × R × L would take more', 1, 'percent')] : []),
        ],
        steps: [
          step(
            'd',
            stalls ? 'd_0' : 'm × I_s × R × L / V',
            known([bound], (ratio) => Math.min(ratio, 1)),
            'percent',
          ),
        ],
        formula: 'd = m × I_s × R × L / V, at most 100 %',
        range: within(
          stalls
            ? 'count on it that the motor does not start: the wire alone would take more than the whole voltage'
            : 'the table’s current held although the voltage sags: more than can happen',
          stalls ? false : null,
        ),
        source: `Ohm’s law; NFPA 70 (NEC), 2008, Table 430.251; ${familyOf(gauge) === 'AWG' ? 'Chapter 9, Table 8' : 'IEC 60228 (2004), Table 3, class 5'}`,
      }),
    ),
    figure(
      context,
      {
        key: 'startingVoltage',
        title: 'Voltage at the motor as it starts',
        symbol: 'x',
        value: share,
        as: 'percent',
        missing,
      },
      () => ({
        terms: [
          term('r', 'resistance of the wire over that of the stalled motor', bound, 'number'),
          term('c', 'power factor with the rotor locked, assumed', LOCKED_ROTOR_POWER_FACTOR, 'number'),
        ],
        steps: [step('x', '1 / √(1 + 2 × r × c + r²)', share, 'percent')],
        range: within('a stiff supply; a long line to the house takes more', null),
        source: `voltage divider; ${NO_LIMIT}`,
      }),
    ),
    figure(
      context,
      {
        key: 'startingTorque',
        title: 'Starting torque that is left',
        symbol: 'k',
        value: torque,
        as: 'percent',
        missing,
      },
      () => ({
        terms: [term('x', 'voltage at the motor as it starts', share, 'percent')],
        steps: [step('k', 'x²', torque, 'percent')],
        range: within('of the torque at full voltage; a motor that starts badly runs hot', null),
        source: 'torque of an induction motor goes with the square of its voltage',
      }),
    ),
  ];
}
