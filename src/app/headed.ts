/** Where the work goes on once something came on the desk: the head of what the page shows now. */
import { untrack } from 'svelte';
import type { Attachment } from 'svelte/attachments';
import type { Workspace } from './state/workspace.svelte.ts';

/** Takes the focus of the page that just came up, and of each that takes its place; a page loaded anew takes none. */
export function headed(workspace: Workspace | null): Attachment<HTMLElement> {
  return (head) => {
    if (workspace?.greets() === true) untrack(() => head.focus({ preventScroll: true }));
  };
}

/** After what was closed has taken the focus with it. */
export function toHead(): void {
  if (document.activeElement !== document.body) return;
  document.querySelector<HTMLElement>('main h1')?.focus({ preventScroll: true });
}
