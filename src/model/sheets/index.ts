/** Every sheet of a plan. The page loads this when somebody opens one; nothing of it is worked out while solving. */
import type { UnitSystem } from '../explain/measure.ts';
import type { Solution, Solved } from '../solution.ts';
import { disinfectionSheet } from './disinfectionSheet.ts';
import { frostSheet } from './frostSheet.ts';
import { houseSheet } from './houseSheet.ts';
import { materialsSheet } from './materialsSheet.ts';
import { pipeSheet } from './pipeSheet.ts';
import { pumpSheet } from './pumpSheet.ts';
import { ropeSheet } from './ropeSheet.ts';
import type { Sheet, SheetKey } from './sheet.ts';
import { weightSheet } from './weightSheet.ts';
import { wireSheet } from './wireSheet.ts';

export type { Sheet, SheetColumn, SheetExplanation, SheetFigure, SheetKey, SheetRow, SheetTable } from './sheet.ts';

export interface SheetMaker {
  readonly key: SheetKey;
  readonly title: string;
  readonly make: (solution: Solution | Solved, units: UnitSystem) => Sheet;
}

/** In the order an adviser asks. */
export const allSheets: readonly SheetMaker[] = [
  { key: 'pump', title: 'Pump', make: pumpSheet },
  { key: 'pipe', title: 'Pipe', make: pipeSheet },
  { key: 'wire', title: 'Wire', make: wireSheet },
  { key: 'weight', title: 'Weight', make: weightSheet },
  { key: 'rope', title: 'Rope', make: ropeSheet },
  { key: 'frost', title: 'Frost', make: frostSheet },
  { key: 'materials', title: 'Materials', make: materialsSheet },
  { key: 'house', title: 'House', make: houseSheet },
  { key: 'disinfection', title: 'Disinfection', make: disinfectionSheet },
];

/** @param units  those of the plan where none are asked for */
export function sheetsOf(solution: Solution | Solved, units?: UnitSystem): Sheet[] {
  return allSheets.map(({ make }) => make(solution, units ?? solution.facts.units));
}
