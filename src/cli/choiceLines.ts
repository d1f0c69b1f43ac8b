/** The tables "Which pump" and "Which tank" as text. */
import { choosePump } from '../model/choose/choosePump.ts';
import { chooseTank } from '../model/choose/chooseTank.ts';
import type { Plan } from '../model/plan/schema.ts';
import { readFacts } from '../model/plan/readFacts.ts';
import { show } from '../model/units.ts';
import { choose } from '../words/en/choose.ts';
import { en } from '../words/en/index.ts';
import { nameOfPath } from '../words/en/plan/paths.ts';
import { PUMP_FIGURES } from '../words/pumpFigures.ts';
import { sayOverTable, sayPumpRow, sayTankRow } from '../words/sayChoice.ts';
import { sayWhyLeft } from '../words/sayPlacement.ts';

const TANK_COLUMNS = ['water', 'run', 'hour', 'day'] as const;

/** @param inAll  how the plan stands as it is, since none of its findings is told here */
export function choiceLines(plan: Plan, inAll: string): string[] {
  const units = show(readFacts(plan).facts.units);
  const { pumps, tanks } = choose;
  const asItIs = choose.asItIs(inAll);
  const lines = [pumps.title, ''];
  const table = choosePump(plan);
  if (table.kind === 'refused') lines.push(`   ${sayWhyLeft(table.why, en, units)}`, '');
  else {
    const said = table.rows.map((row) => ({ row, cells: sayPumpRow(row, { ...en, choose }, units) }));
    const open = table.rows[0]?.solution.facts.house.kind === 'open tank';
    const over = sayOverTable(table, { ...en, choose }, units);
    if (over !== null) lines.push(...over.map((sentence) => `   ${sentence}`), '');
    lines.push(
      ...columns(
        ['', ...PUMP_FIGURES.map((key) => (open && key === 'flow' ? pumps.intoTank.flow : pumps.columns[key]))],
        said.map(({ row, cells }) => ({
          cells: [
            `${cells.does}: ${cells.name}${row.isPlans ? ` (${pumps.plans})` : ''}`,
            ...PUMP_FIGURES.map((key) => cells[key]),
          ],
          under: cells.why,
        })),
      ),
      '',
    );
    if (table.assumed.length > 0)
      lines.push(pumps.restsOn(table.assumed.map((path) => `${nameOfPath(path)} (${path})`).join(', ')));
    lines.push(pumps.caution, '');
  }
  lines.push(tanks.title, '');
  const sizes = chooseTank(plan);
  if (sizes.kind === 'refused') return [...lines, `   ${tanks.refused[sizes.why]}`, '', asItIs, ''];
  lines.push(
    ...columns(
      ['', ...TANK_COLUMNS.map((key) => tanks.columns[key])],
      sizes.rows.map((row) => {
        const cells = sayTankRow(row, { ...en, choose }, units);
        const name = `${cells.does}: ${cells.name}${row.isPlans ? ` (${pumps.plans})` : ''}`;
        return { cells: [name, ...TANK_COLUMNS.map((key) => cells[key])], under: cells.why };
      }),
    ),
    '',
    tanks.precharge(units.pressure(sizes.precharge)),
  );
  if (sizes.reach !== null) lines.push(tanks.reach(sizes, units.pressure(sizes.reach), units.pressure(sizes.rating)));
  return [...lines, '', asItIs, ''];
}

interface Line {
  readonly cells: readonly string[];
  readonly under: string;
}

/** Cells under their heads, each as wide as its widest. */
function columns(heads: readonly string[], lines: readonly Line[]): string[] {
  const wide = heads.map((head, i) => Math.max(head.length, ...lines.map(({ cells }) => (cells[i] ?? '').length)));
  const inLine = (cells: readonly string[]) =>
    cells
      .map((cell, i) => cell.padEnd(wide[i] ?? 0))
      .join('  ')
      .trimEnd();
  return [inLine(heads), ...lines.flatMap(({ cells, under }) => [inLine(cells), `   ${under}`])];
}
