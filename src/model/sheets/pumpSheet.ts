/** What the pump does in this well: duty, power, pressures, cooling, suction, starts. */
import { contextOf } from '../explain/context.ts';
import type { UnitSystem } from '../explain/measure.ts';
import type { Solution, Solved } from '../solution.ts';
import { solvedAll } from './figure.ts';
import { coolingFigures, coolingTable } from './pump/cooling.ts';
import { powerFigures } from './pump/power.ts';
import { pressureFigures } from './pump/pressures.ts';
import { speedTable } from './pump/speed.ts';
import { startFigures } from './pump/starts.ts';
import { suctionFigures } from './pump/suction.ts';
import { rangeFigures } from './pump/usefulRange.ts';
import type { Sheet } from './sheet.ts';

export function pumpSheet(solution: Solution | Solved, units: UnitSystem): Sheet {
  const context = contextOf(solution, units);
  const open = context.facts.house.kind === 'open tank';
  const generic = context.facts.pump.curve.kind === 'generic';
  return {
    key: 'pump',
    title: 'Pump',
    figures: [
      ...solvedAll(
        context,
        'totalDynamicHead',
        'operatingFlowAtCutIn',
        'operatingHeadAtCutIn',
        'operatingFlowAtCutInMost',
        // Into an open tank they are those at cut-in.
        ...(open ? [] : (['operatingFlowAtCutOut', 'operatingHeadAtCutOut'] as const)),
      ),
      ...powerFigures(context),
      ...rangeFigures(context),
      ...pressureFigures(context),
      ...coolingFigures(context),
      ...suctionFigures(context),
      ...startFigures(context),
    ],
    tables: [coolingTable(context), speedTable(context)],
    notes: generic
      ? ['The curve is generic: made from power and rated flow. The maker’s points, once known, replace it.']
      : ['The curve runs through the points of the plan; nothing between them swings past them.'],
    cautions: [
      'Never run the pump dry or against a shut valve for long: it overheats.',
      'Switch the breaker off and lock it before opening the well. A licensed electrician and the local code decide on wiring.',
    ],
  };
}
