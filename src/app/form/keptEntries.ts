/** New entries that are open and half typed: they stay while the page does, also where the panel shows something else. */
import type { Workspace } from '../state/workspace.svelte.ts';
import type { Answers } from './addEntry.ts';

const kept = new WeakMap<Workspace, Map<string, Answers>>();

/** Null where no entry is open there. */
export function keptEntry(workspace: Workspace, path: string): Answers | null {
  return kept.get(workspace)?.get(nameOf(workspace, path)) ?? null;
}

export function keepEntry(workspace: Workspace, path: string, answers: Answers): void {
  const entries = kept.get(workspace) ?? new Map<string, Answers>();
  kept.set(workspace, entries.set(nameOf(workspace, path), answers));
}

export function forgetEntry(workspace: Workspace, path: string): void {
  kept.get(workspace)?.delete(nameOf(workspace, path));
}

/** Each well has its own. */
function nameOf({ desk }: Workspace, path: string): string {
  return `${desk.id ?? ''} ${path}`;
}
