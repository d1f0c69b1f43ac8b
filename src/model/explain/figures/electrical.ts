/** Voltage that the wire takes. */
import { wireName } from '../../units.ts';
import { conductorResistance, returnFactor } from '../../formulas/wire.ts';
import { runningCurrent } from '../../tables/motors.ts';
import { familyOf } from '../../tables/wireSizes.ts';
import { within } from '../draft.ts';
import type { Explainer } from '../draft.ts';
import { step, term } from '../sum.ts';
import { leadLength, runToWell, wireToMotor } from '../../string/wireLengths.ts';

export const voltageDropRunning: Explainer = ({ facts, units, values }) => {
  const { pump, wire } = facts;
  const tabled = pump.power === null ? null : runningCurrent({ ...pump, power: pump.power });
  const current = pump.current ?? tabled;
  const run = runToWell(facts);
  const length = wireToMotor(facts);
  const drop = values.voltageDropRunning;
  const tooMuch = drop === null && length !== null && current !== null;
  const lost = drop === null ? null : drop * pump.voltage;
  return {
    title: 'Voltage drop while running',
    symbol: 'u',
    terms: [
      term(
        'l_r',
        wire.run === null ? 'run from panel to well, taken as the line’s length' : 'run from panel to well',
        run,
        'length',
      ),
      term('l_w', 'wire in the well', values.wireLength, 'length'),
      term('y', 'factory lead up to the splice', leadLength(facts), 'length'),
      term('m', pump.phase === 1 ? 'there and back' : '√3 of three phases', returnFactor(pump.phase), 'number'),
      term(
        'I',
        pump.current === null
          ? 'usual current at the service factor, or that of the code table where it is larger'
          : 'current of the nameplate',
        current,
        'amperes',
      ),
      term(
        'R',
        `resistance of ${wireName(wire.gauge, units)} stranded copper at 75 °C`,
        conductorResistance(wire.gauge),
        'ohmsPerLength',
      ),
      term('V', 'supply voltage', pump.voltage, 'volts'),
      term('L', 'length one way', length, 'length'),
      term('ΔV', 'voltage lost', lost, 'volts'),
    ],
    steps: [
      step('L', 'l_r + l_w + y', length, 'length'),
      step('ΔV', 'm × I × R × L', lost, 'volts'),
      step('u', 'ΔV / V', drop, 'percent'),
    ],
    as: 'percent',
    range: within('running steadily; good below about 10 % of the supply', drop === null ? null : drop < 0.1),
    source: `${familyOf(wire.gauge) === 'AWG' ? 'NFPA 70 (NEC), Chapter 9, Table 8 (resistance)' : 'IEC 60228 (2004), Table 3, class 5, warmed to 75 °C (resistance)'}; NFPA 70 (NEC), Tables 430.248 and 430.250 (current); currents at the service factor: common practice, from memory`,
    notes: [
      'Wire in cold water has about a fifth less resistance: the drop lies on the cautious side.',
      'The nameplate’s highest current overrules it. Local code and a licensed electrician decide.',
    ],
    missing: [
      run === null ? { path: 'wire.run', words: 'the run of the wire from panel to well' } : null,
      current === null
        ? pump.power === null
          ? { path: 'pump.power', words: 'the power of the pump, or its current' }
          : { path: 'pump.current', words: 'the current of the nameplate: the code table does not cover this motor' }
        : null,
      tooMuch
        ? { path: 'wire.size', words: 'a wire that carries this current at all: the motor does not start' }
        : null,
    ],
  };
};
