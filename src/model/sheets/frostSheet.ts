/** Frost: the depth entered, the estimate beside it, the line's other stretches, the margins of the codes. */
import { contextOf } from '../explain/context.ts';
import type { UnitSystem } from '../explain/measure.ts';
import type { Solution, Solved } from '../solution.ts';
import { solved } from './figure.ts';
import { estimateOf, frostFigures } from './frost/depths.ts';
import { soilTable, surfaceTable, winterTable } from './frost/tables.ts';
import type { Sheet } from './sheet.ts';

export function frostSheet(solution: Solution | Solved, units: UnitSystem): Sheet {
  const context = contextOf(solution, units);
  const winters = winterTable(context);
  const guess = estimateOf(context);
  const noClimate = 'reason' in guess && (guess.reason === 'climate not known' || guess.reason === 'station not known');
  const pitless = context.facts.top.kind === 'pitless';
  return {
    key: 'frost',
    title: 'Frost',
    figures: [...frostFigures(context), ...(pitless ? [solved(context, 'pitlessBelowFrost')] : [])],
    tables: noClimate ? [] : [surfaceTable(context), soilTable(context), ...(winters === null ? [] : [winters])],
    notes: [
      'The depth that the local building or plumbing department requires wins over every estimate.',
      'A depth printed for footings is not one for pipes: houses warm the ground, and cities bury water lines deeper than footings.',
      ...(noClimate
        ? ['Name a weather station near by to have an estimate beside it, and the frost along the line.']
        : []),
      'Snow is not counted on: it can be missing or ploughed away.',
      ...(pitless ? [] : ['A seal on top stands in the open air: it wants a heated house, or a place without frost.']),
    ],
    cautions: [
      'Ice closes the line and cracks fittings and adapter; the pump then runs against ice.',
      'A deep trench can bury a person: have buried lines marked, and shore the trench as the local code asks.',
    ],
  };
}
