/** What hangs from the top: loads, stress, stretch, twist, and who lifts it. */
import { contextOf } from '../explain/context.ts';
import type { UnitSystem } from '../explain/measure.ts';
import type { Solution, Solved } from '../solution.ts';
import { solvedAll } from './figure.ts';
import type { Sheet } from './sheet.ts';
import { pullFigures, pullTable } from './weight/pull.ts';
import { stressFigures } from './weight/stress.ts';
import { stretchFigures } from './weight/stretch.ts';

export function weightSheet(solution: Solution | Solved, units: UnitSystem): Sheet {
  const context = contextOf(solution, units);
  return {
    key: 'weight',
    title: 'Weight',
    figures: [
      ...solvedAll(context, 'hangLoadLowering', 'hangLoadAtRest', 'hangLoadPumping', 'hangLoadDry'),
      ...stressFigures(context),
      ...stretchFigures(context),
      ...pullFigures(context),
    ],
    tables: [pullTable(context)],
    notes: [
      'Water inside the pipe below the water outside weighs nothing; only the column above it counts, and only while the check valve holds.',
      'Pump and motor are taken from a table by power where nobody said their weight: real ones differ by 30 %.',
    ],
    cautions: [
      'A string that slips takes hands with it: hold it with a pipe clamp before any grip is released.',
      'Keep pipe and hoist away from power lines. Never lift or lower by cable or rope.',
    ],
  };
}
