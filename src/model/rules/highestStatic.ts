import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { exceeds } from './grace.ts';

/** Highest level the water is known to stand at while the pump rests. */
export function highestStaticLevel({ levels }: Pick<Solved, 'levels'>): Metres | null {
  if (levels.static === null) return levels.staticHighest;
  return levels.staticHighest === null ? levels.static : Math.min(levels.static, levels.staticHighest);
}

/** Whether the water stands at the ground or over it: such a well has no vent, and nothing is placed in it yet. */
export function isFlowing(solved: Pick<Solved, 'levels'>): boolean {
  const level = highestStaticLevel(solved);
  return level !== null && !exceeds(level, 'length');
}
