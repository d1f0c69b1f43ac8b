/** The account of one of the solution's figures; the words are fetched when the first one is opened. */
import type { SheetExplanation } from '../../model/sheets/sheet.ts';
import type { Solution, ValueName } from '../../model/solution.ts';

export async function accountOf(solution: Solution, name: ValueName): Promise<SheetExplanation> {
  const { explain } = await import('../../model/explain/explain.ts');
  return explain(solution, name);
}
