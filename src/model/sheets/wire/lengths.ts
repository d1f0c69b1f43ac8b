/** The wire's real path, and the voltage that reaches the motor. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { step, term } from '../../explain/sum.ts';
import { figure, solved } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure } from '../sheet.ts';
import type { Circuit } from './circuit.ts';
import { either } from '../../units.ts';

export function lengthFigures(context: Context, { run, lead, length, noCurrent, noRun }: Circuit): SheetFigure[] {
  const { facts, values } = context;
  const drop = values.voltageDropRunning;
  const atMotor = known([drop], (share) => facts.pump.voltage * (1 - share));
  return [
    solved(context, 'wireLength'),
    figure(
      context,
      {
        key: 'electricalPath',
        title: 'Panel to motor along the wire, one way',
        symbol: 'L',
        value: length,
        as: 'length',
        missing: [noRun],
      },
      () => ({
        terms: [
          term(
            'l_r',
            facts.wire.run === null ? 'panel to well, taken as the line’s length' : 'panel to well',
            run,
            'length',
          ),
          term('l_w', 'wire in the well with its slack', values.wireLength, 'length'),
          term('y', 'factory lead of the motor up to the splice', lead, 'length'),
        ],
        steps: [step('L', 'l_r + l_w + y', length, 'length')],
        range: within('along the real path, not as the crow flies; drop formulas double it for the way back', null),
        source: `geometry; 2 % slack and ${either(context.units, '5 ft', '1.5 m')} at the top: common practice, no source`,
      }),
    ),
    figure(
      context,
      {
        key: 'voltageAtMotor',
        title: 'Voltage at the running motor',
        symbol: 'V_m',
        value: atMotor,
        as: 'volts',
        missing: [noRun, noCurrent],
      },
      () => ({
        terms: [
          term('V', 'supply voltage', facts.pump.voltage, 'volts'),
          term('u', 'drop while running', drop, 'percent'),
        ],
        steps: [step('V_m', 'V × (1 − u)', atMotor, 'volts')],
        range: within('motors take about 10 % either way (NEMA MG 1, from memory)', drop === null ? null : drop <= 0.1),
        source: 'Ohm’s law; NFPA 70 (NEC), Chapter 9, Table 8',
      }),
    ),
  ];
}
