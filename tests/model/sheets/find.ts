/** Looks things up in sheets by their keys. */
import type { Plan } from '../../../src/model/plan/schema.ts';
import { allSheets } from '../../../src/model/sheets/index.ts';
import type { Sheet, SheetFigure, SheetKey, SheetRow, SheetTable } from '../../../src/model/sheets/index.ts';
import { solve } from '../../../src/model/solve.ts';
import { rockWell } from '../../plans/build.ts';

export function sheetOf(plan: Plan, key: SheetKey, units: 'us' | 'metric' = 'us'): Sheet {
  return allSheets.find((each) => each.key === key)!.make(solve(plan), units);
}

export function figureOf(sheet: Sheet, key: string): SheetFigure {
  const found = sheet.figures.find((each) => each.key === key);
  if (found === undefined) throw new Error(`${sheet.key} has no figure ${key}`);
  return found;
}

export const valueOf = (sheet: Sheet, key: string): number => figureOf(sheet, key).value!;

export function tableOf(sheet: Sheet, key: string): SheetTable {
  const found = sheet.tables.find((each) => each.key === key);
  if (found === undefined) throw new Error(`${sheet.key} has no table ${key}`);
  return found;
}

export function rowOf(table: SheetTable, first: string): SheetRow {
  const found = table.rows.find(({ cells }) => cells[0] === first);
  if (found === undefined) throw new Error(`${table.key} has no row ${first}`);
  return found;
}

/** A number of a table by the key of its column. */
export function numberAt(table: SheetTable, row: SheetRow, column: string): number | null {
  return row.numbers[table.columns.findIndex(({ key }) => key === column)]!;
}

/**
 * A string of 300 ft: PE 1-1/4 in SIDR 7 of PE4710, pump and motor 40 lb, flat 12/3 cable with ground, water 100 ft below
 * the suspension at the casing's rim, which stands a foot above ground.
 */
export function longString(change: Record<string, unknown> = {}): Plan {
  return rockWell({
    site: { frostDepth: '0 in' },
    well: {
      depth: '400 ft',
      casing: { material: 'steel', size: '6 in', bottom: '400 ft', height: '12 in' },
      intake: { kind: 'open hole', diameter: '6 in' },
    },
    water: { staticLevel: '99 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '40 ft', after: '4 h' } },
    top: { kind: 'seal' },
    pump: { setting: '300.5 ft', power: '1 hp', mass: '40 lb', curve: { kind: 'generic', flow: '7 gpm' } },
    dropPipe: { material: 'PE', size: '1-1/4 in', ratio: 'SIDR 7', resin: 'PE4710' },
    wire: { size: '12 AWG', run: '120 ft' },
    ...change,
  });
}
