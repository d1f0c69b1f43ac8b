/** The heavy half of the page: reading, solving and keeping a well's history. Fetched once, while the start page is read. */
export { readPlan, readPlanText } from '../../model/plan/readPlan.ts';
export { fileOf, notThere, readFile } from '../keeping/allWells.ts';
export { sayProblem } from '../keeping/problemWords.ts';
export { MOST_BYTES, textOfPlan } from '../../files/textOfPlan.ts';
export { planFromReport } from '../start/reportPlan.ts';
export { Workspace } from './workspace.svelte.ts';
export { OwnPumps } from './ownPumps.ts';
