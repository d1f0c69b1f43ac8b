/** Undo and redo by keyboard, except where a text field has its own. */
import { tick } from 'svelte';
import { toHead } from '../headed.ts';
import type { Workspace } from './workspace.svelte.ts';

export function onShortcut(event: KeyboardEvent, workspace: Workspace): void {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || workspace.held !== null) return;
  const key = event.key.toLowerCase();
  const undo = key === 'z' && !event.shiftKey;
  const redo = (key === 'z' && event.shiftKey) || (key === 'y' && event.ctrlKey);
  if ((!undo && !redo) || isTyping(event.target)) return;
  event.preventDefault();
  if (undo) workspace.undo();
  else workspace.redo();
  // Of another well the field that had the focus may be gone.
  if (event.target !== document.body) void tick().then(toHead);
}

/** A text field that was changed and not yet applied undoes its own letters. */
function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  return target instanceof HTMLInputElement && target.type === 'text' && target.value !== target.defaultValue;
}
