/** New entries that are open and half typed: they are there again with the well, whatever became of the page. */
import type { Workspace } from '../state/workspace.svelte.ts';
import { NO_ANSWER, type Answers } from './addEntry.ts';

/** Null where no entry is open there. */
export function keptEntry({ drafts, desk }: Workspace, path: string): Answers | null {
  return desk.id === null ? null : readAnswers(drafts.load(desk.id, nameOf(path)));
}

export function keepEntry({ drafts, desk }: Workspace, path: string, answers: Answers): void {
  if (desk.id !== null) drafts.keep(desk.id, nameOf(path), JSON.stringify(answers));
}

export function forgetEntry({ drafts, desk }: Workspace, path: string): void {
  if (desk.id !== null) drafts.forget(desk.id, nameOf(path));
}

function nameOf(path: string): string {
  return `entry ${path}`;
}

/** @returns  what `JSON.stringify` wrote of answers, without what is none; null for anything else */
export function readAnswers(text: string | null): Answers | null {
  if (text === null) return null;
  try {
    const kept: unknown = JSON.parse(text);
    if (typeof kept !== 'object' || kept === null) return null;
    const answers = Object.entries(kept).map(([key, answer]: [string, unknown]) => {
      const { text: typed, notKnown } = (answer ?? {}) as Record<string, unknown>;
      return [key, typeof typed === 'string' ? { text: typed, notKnown: notKnown === true } : NO_ANSWER] as const;
    });
    return Object.fromEntries(answers);
  } catch (fault) {
    console.info('wellcut: a half typed entry cannot be read', fault);
    return null;
  }
}
