/** The account of one of the solution's figures in the reader's units; the words are fetched when the first one is opened. */
import type { SheetExplanation } from '../../model/sheets/sheet.ts';
import type { Solution, ValueName } from '../../model/solution.ts';
import type { Units } from '../state/settings.svelte.ts';

export async function accountOf(solution: Solution, name: ValueName, units: Units): Promise<SheetExplanation> {
  const { explain } = await import('../../model/explain/explain.ts');
  return explain(solution, name, units);
}
