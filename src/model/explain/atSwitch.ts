/** At which end of its switch a pump works; an open tank has none. */
import type { Context } from './context.ts';

/** "at cut-in", "into the open tank". */
export function atSwitch({ facts }: Pick<Context, 'facts'>, end: 'cut-in' | 'cut-out'): string {
  return facts.house.kind === 'open tank' ? 'into the open tank' : `at ${end}`;
}
