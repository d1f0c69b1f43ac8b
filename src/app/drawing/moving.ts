/** Moves a handle in the plan on the desk: by keys and steppers at once, by a drag as a preview until it is let go. */
import type { Block } from '../../model/handleNames.ts';
import { handlesOf, type Handle } from '../../model/handles.ts';
import { moveTo, type Moved } from '../../model/move.ts';
import type { Plan } from '../../model/plan/schema.ts';
import type { Solution } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import { solve } from '../../model/solve.ts';
import { nameLevelWithin, sayBlock, sayReading } from '../../words/sayLevel.ts';
import { en } from '../firstLanguage.ts';
import type { Notice, Workspace } from '../state/workspace.svelte.ts';
import { offerToRaisePump } from './raisePump.ts';

/**
 * The plan with the handle at that depth, or as near as nothing solid is in the way.
 *
 * @param step  what the written value is rounded to [m]; undefined where it must be exact, as at a limit
 */
export function planWith(
  workspace: Workspace,
  plan: Plan,
  solution: Solution,
  handle: Handle,
  depth: Metres,
  step?: Metres,
): Moved {
  const lockDrawdown = workspace.drawdownLocked;
  return moveTo(plan, solution, handle, depth, step === undefined ? { lockDrawdown } : { lockDrawdown, step });
}

/** Where the grid of steps counts from: the datum in which the handle's value is written. */
export function originOf(handle: Handle, solution: Solution): Metres {
  if (handle.path.startsWith('string.')) return solution.values.pumpDischargeDepth ?? 0;
  const fromGround =
    ['frostDepth', 'pitlessDepth', 'casingHeight'].includes(handle.id) || handle.path === 'water.pumping.drawdown';
  return fromGround || solution.facts.depthsFrom === 'ground' ? 0 : -solution.facts.well.casingHeight;
}

/** "Move pump intake 180 ft to 190 ft" */
export function nameOfMove(workspace: Workspace, handle: Handle, before: Plan | null, after: Plan): string {
  const from = before === null ? null : readingIn(workspace, handle, before);
  const to = readingIn(workspace, handle, after);
  const label = nameLevelWithin(handle.label, en.short);
  return from === null || to === null ? `Set ${label}` : `Move ${label} ${from} to ${to}`;
}

function readingIn(workspace: Workspace, handle: Handle, plan: Plan): string | null {
  const solution = solve(plan);
  const found = handlesOf(solution).find(({ id }) => id === handle.id);
  return found === undefined ? null : sayReading(found, found.depth, solution, en, workspace.show);
}

/** One step of a key, a stepper or a tap. A fact is asked for first. Says why where it cannot go there. */
export function moveNow(
  workspace: Workspace,
  handle: Handle,
  depth: Metres,
  step?: Metres,
  burst?: 'deeper' | 'shallower',
): void {
  // Of a level that waits for an answer nothing is known yet.
  workspace.answer(false);
  const moved = movedTo(workspace, handle, depth, step);
  if (moved === null) return;
  const fact = moved.depth === handle.depth ? null : workspace.factMovedBy(handle);
  if (fact === null) {
    take(workspace, handle, moved, depth, burst);
    return;
  }
  workspace.notice = null;
  workspace.preview = moved.plan;
  const { depth: reached, blocked } = moved;
  workspace.held = { handle, start: handle.depth, depth: reached, wanted: depth, blocked, caught: null };
  workspace.ask({ handle, fact, change: () => take(workspace, handle, moved, depth) });
}

/** A typed depth: whoever writes it down means it. */
export function placeNow(workspace: Workspace, handle: Handle, depth: Metres): void {
  const moved = movedTo(workspace, handle, depth);
  if (moved !== null) take(workspace, handle, moved, depth);
}

function movedTo(workspace: Workspace, handle: Handle, depth: Metres, step?: Metres): Moved | null {
  const { solution } = workspace;
  const { plan } = workspace.desk;
  return solution === null || plan === null ? null : planWith(workspace, plan, solution, handle, depth, step);
}

function take(workspace: Workspace, handle: Handle, moved: Moved, wanted: Metres, burst?: string): void {
  workspace.edit(
    (before) => nameOfMove(workspace, handle, before, moved.plan),
    moved.plan,
    burst === undefined ? {} : { burst: `${handle.id} ${burst}` },
  );
  workspace.notice = moved.blocked === null ? null : noticeOf(workspace, handle, moved.blocked, wanted);
  if (moved.blocked !== null) workspace.announcer.say(sayBlock(moved.blocked, en));
}

/** Why a handle went no further, and what would let it. */
export function noticeOf(workspace: Workspace, handle: Handle, blocked: Block, wanted: Metres): Notice {
  const { solution } = workspace;
  const offer =
    handle.id === 'wellBottom' && solution !== null ? offerToRaisePump(solution, wanted, workspace.show) : null;
  return { handle: handle.id, words: sayBlock(blocked, en), offer };
}
