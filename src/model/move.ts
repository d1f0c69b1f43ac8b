/** Dragging is the model inverted: which plan puts this level under the pointer? */
import type { Block } from './handleNames.ts';
import { handlesOf, type Handle } from './handles.ts';
import { withDepth, withLength } from './plan/editPlan.ts';
import type { Plan } from './plan/schema.ts';
import type { Metres } from './si.ts';
import type { Solution } from './solution.ts';
import { dischargeDepth } from './string/pumpDepths.ts';

export interface Moved {
  readonly plan: Plan;
  /** Where the handle stands now. */
  readonly depth: Metres;
  /** Why it went no further; null when it went where it was asked to. */
  readonly blocked: Block | null;
}

export interface MoveOptions {
  /** Least step of what is written, so that a drag never fakes precision [m]. */
  readonly step?: Metres;
  /** Static and pumping level move together, whatever the plan's kind. */
  readonly lockDrawdown?: boolean;
}

/** Written to a hundredth of a millimetre, so that no text carries the last bits of a division. */
const FINEST: Metres = 1e-5;

/**
 * Moves one handle to a depth, as far as is physically possible.
 *
 * @param plan      the plan as typed
 * @param solution  what `solve` says of it
 * @param id        the handle
 * @param depth     where it is wanted, from the ground [m]
 * @returns         a plan whose field is written in the unit it had, and the same plan when nothing can move
 */
export function moveHandle(
  plan: Plan,
  solution: Solution,
  id: string,
  depth: Metres,
  options: MoveOptions = {},
): Moved {
  const handle = handlesOf(solution).find((each) => each.id === id);
  return handle ? moveTo(plan, solution, handle, depth, options) : { plan, depth, blocked: 'nothingHere' };
}

/** The same with the handle at hand: one of `handlesOf(solution)`. */
export function moveTo(
  plan: Plan,
  solution: Solution,
  handle: Handle,
  depth: Metres,
  options: MoveOptions = {},
): Moved {
  if (handle.locked !== null) return { plan, depth: handle.depth, blocked: handle.locked };
  const to = Math.min(Math.max(depth, handle.min), Math.max(handle.max, handle.min));
  const blocked = depth < handle.min ? handle.minWhy : depth > Math.max(handle.max, handle.min) ? handle.maxWhy : null;
  // At a block the limit itself is written, since a coarse step could lead over it.
  const step = blocked === null ? Math.max(options.step ?? 0, FINEST) : FINEST;
  return { plan: write(plan, solution, handle, to, step, options.lockDrawdown === true), depth: to, blocked };
}

function write(plan: Plan, solution: Solution, { id, path }: Handle, to: Metres, step: Metres, lock: boolean): Plan {
  const { facts, levels } = solution;
  const discharge = dischargeDepth(facts.pump);
  if (id === 'casingHeight') return withLength(plan, path, -to, step);
  if (id.startsWith('checkValve/') || id.startsWith('splice/')) return withLength(plan, path, discharge - to, step);
  if (id === 'pumpingLevel') return writePumpingLevel(plan, solution, to, step);
  const moved = withDepth(plan, path, to, step);
  if (id === 'staticLevel' && lock && facts.water.pumping?.kind === 'level' && levels.static !== null) {
    return withDepth(moved, 'water.pumping.level', facts.water.pumping.level + to - levels.static, step);
  }
  return moved;
}

/**
 * A test keeps its flow: the drawdown that is read on the drawing is scaled back from the demand to the test's flow.
 *
 * The step is that of the level as it is drawn. What is written in its place, scaled, is a hundred times finer, so that
 * the level stays on its step.
 */
function writePumpingLevel(plan: Plan, { facts, levels }: Solution, to: Metres, step: Metres): Plan {
  const { pumping } = facts.water;
  const scaledStep = Math.max(step / 100, FINEST);
  const still = levels.static ?? 0;
  const demand = facts.house.demand ?? 0;
  const drawdown = Math.max(Math.round(to / step) * step - still, 0);
  if (pumping?.kind === 'level') {
    const scale = pumping.flow !== null && demand > 0 ? pumping.flow / demand : 1;
    if (scale === 1) return withDepth(plan, 'water.pumping.level', to, step);
    return withDepth(plan, 'water.pumping.level', still + drawdown * scale, scaledStep);
  }
  if (pumping?.kind !== 'test' || !(demand > 0)) return plan;
  return withLength(plan, 'water.pumping.drawdown', (drawdown * pumping.flow) / demand, scaledStep);
}
