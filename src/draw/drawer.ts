/** A drawing that is drawn again and again, with a little changed: what did not change is not made again. */
import type { Solution } from '../model/solution.ts';
import { drawWith } from './draw.ts';
import { createMemory, type Memory } from './memory.ts';
import type { DetailDrawing, Scene, View } from './view.ts';

/** As `draw`, and the same scene; shapes that did not change are the objects of the scene before. */
export type Drawer = (solution: Solution, view: View, kept?: readonly DetailDrawing[]) => Scene;

/** Each drawing on a page has a drawer of its own. */
export function createDrawer(): Drawer {
  const memory = createMemory();
  return (solution, view, kept) => drawWith(memory, recognise(solution, memory), view, kept);
}

/** Solving makes every object anew; what is equal to last time is taken from there. */
function recognise(solution: Solution, { same }: Memory): Solution {
  const { facts, levels, values, bore, parts, cone, bands, findings, assumed } = solution;
  return { ...solution, ...same('solution', { facts, levels, values, bore, parts, cone, bands, findings, assumed }) };
}
