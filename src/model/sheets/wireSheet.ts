/** Wire from the panel to the motor: length, drop while running and at start, gauges, currents. */
import { contextOf } from '../explain/context.ts';
import type { UnitSystem } from '../explain/measure.ts';
import type { Solution, Solved } from '../solution.ts';
import { solved } from './figure.ts';
import type { Sheet } from './sheet.ts';
import { capacityFigures } from './wire/capacity.ts';
import { circuitOf } from './wire/circuit.ts';
import { currentTable, gaugeTable } from './wire/gauges.ts';
import { lengthFigures } from './wire/lengths.ts';
import { startFigures } from './wire/starting.ts';

export function wireSheet(solution: Solution | Solved, units: UnitSystem): Sheet {
  const context = contextOf(solution, units);
  const circuit = circuitOf(context);
  const { phase, wires } = context.facts.pump;
  return {
    key: 'wire',
    title: 'Wire',
    figures: [
      ...lengthFigures(context, circuit),
      solved(context, 'voltageDropRunning'),
      ...startFigures(context, circuit),
      ...capacityFigures(context, circuit),
    ],
    tables: [gaugeTable(context, circuit), currentTable(context)],
    notes: [
      phase === 3
        ? 'Three phases: any two wires swapped turn the motor backwards. Try both ways and keep the one that gives more water.'
        : wires === 2
          ? 'Two wires and ground: the motor holds its own start parts.'
          : 'Three wires and ground: the start parts sit in a box above ground. The common wire carries the most, so all are sized alike. Tell the wires apart by their resistance, not by their colour.',
      'Drop is figured with copper at 75 °C; wire in cold water loses about a fifth less. The current printed on the motor overrules the table.',
      '3 % and 5 % are advice, not limits of the code. Pump cable is for the well; what is buried needs conduit or cable made for it.',
    ],
    cautions: [
      'Switch the breaker off, lock it and test before touching a wire.',
      'A licensed electrician and the local code decide on wiring, breaker and ground. This sheet ends at the motor, the wire and its length.',
    ],
  };
}
