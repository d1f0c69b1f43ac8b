/** The house: demand by several methods, peak against what the well gives, tank, branches. */
import { contextOf } from '../explain/context.ts';
import type { UnitSystem } from '../explain/measure.ts';
import type { Solution, Solved } from '../solution.ts';
import { solved } from './figure.ts';
import { branchTable } from './house/branches.ts';
import { demandTable } from './house/demandMethods.ts';
import { fixturesOf } from './house/fixtures.ts';
import { openTankFigures, speedFigures } from './house/openTank.ts';
import { supplyFigures } from './house/supply.ts';
import { tankFigures } from './house/tankFigures.ts';
import { stockUse } from './house/use.ts';
import { startFigures } from './pump/starts.ts';
import type { Sheet } from './sheet.ts';
import { either } from '../units.ts';

export function houseSheet(solution: Solution | Solved, units: UnitSystem): Sheet {
  const context = contextOf(solution, units);
  const open = context.facts.house.kind === 'open tank';
  const branches = branchTable(context);
  return {
    key: 'house',
    title: 'House',
    figures: [
      solved(context, 'demandFlow'),
      ...supplyFigures(context),
      ...(open ? [] : [...tankFigures(context), ...startFigures(context)]),
      ...openTankFigures(context),
      ...speedFigures(context),
    ],
    tables: [demandTable(context), ...(branches === null ? [] : [branches])],
    notes: [
      `The peak lasts minutes; the well must carry the day. Lenders often ask for ${either(units, '5 gpm', '19 L/min')} over four hours, which is ${either(units, '1,200 gal', '4,500 L')} with storage.`,
      ...strangeNames(fixturesOf(context)?.strange ?? [], 'fixtures'),
      ...strangeNames(
        stockUse(context)
          .filter(({ use }) => use === null)
          .map(({ name }) => name),
        'stock',
      ),
    ],
    cautions: open
      ? [
          'Stop the pump by a float switch, never by a valve alone: against a closed pipe it bursts the pipe or burns. Give the tank an overflow.',
          'Keep an open tank covered, screened and locked: people and animals drown in tanks, and dirt gets in.',
        ]
      : ['A burst tank or pipe throws parts: shut the pump off and let the pressure out first. Fit a relief valve.'],
  };
}

function strangeNames(names: readonly string[], what: string): string[] {
  return names.length === 0 ? [] : [`Not counted, since no table has these ${what}: ${names.join(', ')}.`];
}
