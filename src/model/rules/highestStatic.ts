import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';

/** Highest level the water is known to stand at while the pump rests. */
export function highestStaticLevel({ levels }: Pick<Solved, 'levels'>): Metres | null {
  if (levels.static === null) return levels.staticHighest;
  return levels.staticHighest === null ? levels.static : Math.min(levels.static, levels.staticHighest);
}
