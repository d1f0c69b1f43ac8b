/** What a handle's field shows and takes: the value as it stands in the plan, in the unit it was typed in. */
import { handlesOf, type Handle } from '../../model/handles.ts';
import { valueAt, withValue } from '../../model/plan/editPlan.ts';
import { readPlan } from '../../model/plan/readPlan.ts';
import type { Solution } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import { solve } from '../../model/solve.ts';
import { parseQuantity, type Show } from '../../model/units.ts';
import { nameLevel, sayBlock, sayReading } from '../../words/sayLevel.ts';
import { sayRefusal } from '../../words/en/plan/refusal.ts';
import { en } from '../firstLanguage.ts';
import type { Workspace } from '../state/workspace.svelte.ts';
import { nameOfMove, placeNow } from './moving.ts';

export interface Typed {
  /** "Depth from the ground" */
  readonly label: string;
  readonly text: string;
  /** Taken for a bare number. */
  readonly unit: string;
}

export interface Refusal {
  readonly problem: string;
  /** The nearest value that can be. */
  readonly nearest: { readonly depth: Metres; readonly text: string } | null;
}

export function typedOf(handle: Handle, solution: Solution, show: Show): Typed {
  const text = asTyped(handle, solution) ?? sayPlain(handle, show);
  const unit = parseQuantity(text, 'length');
  return { label: labelOf(handle, solution), text, unit: unit.ok ? unit.unit : '' };
}

/** Null where the plan holds another quantity than the handle shows, or none. */
function asTyped(handle: Handle, { plan }: Solution): string | null {
  if (handle.id === 'pumpingLevel') return null;
  const value = valueAt(plan, handle.path);
  return typeof value === 'string' ? value : null;
}

function sayPlain(handle: Handle, show: Show): string {
  return handle.id === 'casingHeight' ? show.small(-handle.depth) : show.length(handle.depth);
}

function labelOf(handle: Handle, { facts }: Solution): string {
  if (handle.id === 'casingHeight') return 'Height above the ground';
  if (handle.path.startsWith('string.')) return 'Height above the pump';
  const fromGround = ['frostDepth', 'pitlessDepth', 'pumpingLevel'].includes(handle.id);
  return `${nameLevel(handle.label, en.short)}, from the ${fromGround || facts.depthsFrom === 'ground' ? 'ground' : 'casing top'}`;
}

const BARE_NUMBER = /^[-+]?[\d.,]+(\s*-?\s*\d+\/\d+)?$/;

/** Writes the typed value; or says why not, and what is nearest. */
export function readTyped(
  workspace: Workspace,
  solution: Solution,
  handle: Handle,
  text: string,
  unit: string,
): Refusal | null {
  const full = BARE_NUMBER.test(text.trim()) ? `${text.trim()} ${unit}` : text.trim();
  const read = parseQuantity(full, 'length');
  if (!read.ok) return { problem: refused(handle.path, full, read.fault, read.write), nearest: null };
  if (handle.id === 'pumpingLevel') return place(workspace, solution, handle, read.si);
  const wanted = readPlan(withValue(solution.plan, handle.path, full));
  if (!wanted.ok) {
    const [problem] = wanted.problems;
    return { problem: problem === undefined ? 'This cannot be read.' : sayRefusal(problem), nearest: null };
  }
  const there = handlesOf(solve(wanted.plan)).find(({ id }) => id === handle.id);
  if (there !== undefined) {
    const refusal = impossible(workspace, solution, handle, there.depth);
    if (refusal !== null) return refusal;
  }
  workspace.edit((before) => nameOfMove(workspace, handle, before, wanted.plan), wanted.plan);
  return null;
}

function refused(path: string, text: string, problem: string, write: string): string {
  return sayRefusal({ path, read: JSON.stringify(text), problem, write, kind: 'value' });
}

function place(workspace: Workspace, solution: Solution, handle: Handle, depth: Metres): Refusal | null {
  const refusal = impossible(workspace, solution, handle, depth);
  if (refusal === null) placeNow(workspace, handle, depth);
  return refusal;
}

/** A tenth of a millimetre is no overshoot. */
const GRACE = 1e-4;

function impossible(workspace: Workspace, solution: Solution, handle: Handle, depth: Metres): Refusal | null {
  const nearest = Math.min(Math.max(depth, handle.min), handle.max);
  if (Math.abs(nearest - depth) <= GRACE) return null;
  const why = sayBlock(depth < handle.min ? handle.minWhy : handle.maxWhy, en);
  return {
    problem: `${why.charAt(0).toUpperCase()}${why.slice(1)}.`,
    nearest: { depth: nearest, text: sayReading(handle, nearest, solution, en, workspace.show) },
  };
}
