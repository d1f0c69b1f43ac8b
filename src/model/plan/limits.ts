/** How much a plan may hold: far more than any well needs, and little enough that all that is wrong is told at once. */
import { shortJson, type Problem } from './problem.ts';

/** Characters of a plan's text. */
export const MOST_CHARACTERS = 1_000_000;
/** Of anything: names in a group, entries in a list. */
export const MOST_OF_ANYTHING = 1000;
/** Problems that are told one by one; the rest are counted. */
export const MOST_PROBLEMS = 50;
/** Groups within groups; a plan goes five deep. */
const DEEPEST = 20;

/** A text too long to be a plan; null for one that may be. */
export function tooLong(length: number): Problem | null {
  if (length <= MOST_CHARACTERS) return null;
  return text(
    `the text is longer than ${counted(MOST_CHARACTERS)} characters, and a plan is not`,
    'check that it is the right file',
  );
}

/** The first group or list that holds too much, or lies too deep; null where there is none. */
export function tooMuch(json: unknown): Problem | null {
  const open: { readonly value: unknown; readonly path: readonly string[] }[] = [{ value: json, path: [] }];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { value, path } = next;
    if (typeof value !== 'object' || value === null) continue;
    const keys = Object.keys(value);
    const place = path.length === 0 ? 'the plan' : path.map(named).join('.');
    if (keys.length > MOST_OF_ANYTHING)
      return text(
        `${place} holds ${counted(keys.length)} ${Array.isArray(value) ? 'entries' : 'names'}, more than ${counted(MOST_OF_ANYTHING)}`,
        'check that it is the right file',
      );
    if (path.length >= DEEPEST) {
      const field = path.slice(0, 2).map(named).join('.');
      const told = text(`${field} holds groups within groups, ${DEEPEST} deep`, 'a plan goes five deep');
      return { ...told, path: field };
    }
    for (const key of keys) open.push({ value: (value as Record<string, unknown>)[key], path: [...path, key] });
  }
  return null;
}

/** The names in a path are whatever somebody wrote. */
function named(key: string): string {
  return /^\w{1,40}$/.test(key) ? key : shortJson(key.slice(0, 40));
}

function counted(count: number): string {
  return count.toLocaleString('en-US');
}

function text(problem: string, write: string): Problem {
  return { path: '', read: '', problem, write, kind: 'text' };
}
