/** Public face of the model: from a plan to what is known about the well. */
export type { Facts } from './facts.ts';
export type * from './solution.ts';
export type { Plan } from './plan/schema.ts';
export { readPlan, readPlanText, sayProblem } from './plan/readPlan.ts';
export { readFacts } from './plan/readFacts.ts';
export { valueAt, withDepth, withLength, withValue } from './plan/editPlan.ts';
export { fields } from './plan/fields.ts';
export { solve } from './solve.ts';
export { handlesOf } from './handles.ts';
export type { Block, Handle, HandleName } from './handles.ts';
export { moveHandle } from './move.ts';
export type { Moved } from './move.ts';
export { show } from './units.ts';
