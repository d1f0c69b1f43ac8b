/** The rope to the pump: what comes on it in each way the string can fail, and what it holds. */
import { contextOf } from '../explain/context.ts';
import type { UnitSystem } from '../explain/measure.ts';
import type { Solution, Solved } from '../solution.ts';
import { solved } from './figure.ts';
import { failureTable, ropeFigures } from './rope/failures.ts';
import type { Sheet } from './sheet.ts';

export function ropeSheet(solution: Solution | Solved, units: UnitSystem): Sheet {
  const context = contextOf(solution, units);
  const { rope } = context.facts;
  return {
    key: 'rope',
    title: 'Rope',
    figures: [...(rope === null ? [] : [solved(context, 'ropeLength')]), ...ropeFigures(context)],
    tables: [failureTable(context)],
    notes: [
      ...(rope === null
        ? [
            'No rope hangs in this plan, and no code that was read asks for one. The figures say what one would have to hold.',
          ]
        : []),
      'Leave it slack and tie it to a hook on the casing, never to the cap or through it. Do not tie it into every cable tie.',
      'Sun, wear and knots take strength. A rope of unknown age counts for nothing.',
    ],
    cautions: ['A rope may catch a slipping string once. Never lift or lower by it: a rope that parts whips back.'],
  };
}
