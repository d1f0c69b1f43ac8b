/** `wellcut`: from a plan to what is known about a well, what was found in it, and its drawing. */

// Read a plan as typed, and edit it as the page does.
export { readPlan, readPlanText, sayProblem } from '../model/plan/readPlan.ts';
export type { PlanReading, Problem } from '../model/plan/readPlan.ts';
export type { Plan } from '../model/plan/schema.ts';
export { valueAt, withDepth, withLength, withValue } from '../model/plan/editPlan.ts';
export { handlesOf } from '../model/handles.ts';
export type { Block, Handle, HandleName } from '../model/handles.ts';
export { moveHandle } from '../model/move.ts';
export type { Moved } from '../model/move.ts';

// Solve it, and open its figures.
export { solve } from '../model/solve.ts';
export type { Facts } from '../model/facts.ts';
export type * from '../model/solution.ts';
export { explain, explainAll } from '../model/explain/explain.ts';
export type { Explanation } from '../model/explain/explain.ts';
export { fixesOf } from '../model/fixes/fixesOf.ts';
export type { Offered } from '../model/fixes/fixesOf.ts';
export { lackingIn } from '../model/rules/lacking.ts';
export type { Lacking } from '../model/rules/lacking.ts';

// Say what was found: data in, sentences out.
export { en } from '../words/en/index.ts';
export type { Words } from '../words/words.ts';
export { show } from '../model/units.ts';
export type { Show } from '../model/units.ts';
export { countFindings, sayInAll } from '../words/sayFindings.ts';
export { sayAdvice, sayFinding, sayFix, sayHolding, sayLacking, sayMeasure, sayTurns } from '../words/sayJudgement.ts';
export { sayAssumed } from '../words/en/plan/assumed.ts';
export { nameOfPath } from '../words/en/plan/paths.ts';
export { nameLevel } from '../words/sayLevel.ts';

// Draw it.
export { A3, A4, draw, landscape, LEGAL, LETTER, TABLOID, THEMES, toSvg } from '../draw/index.ts';
export type { AskedView, Attributes, Ink, Paper, Scene, Shape, SvgOptions, View } from '../draw/index.ts';
