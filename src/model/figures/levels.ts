import type { Facts } from '../facts.ts';
import { drawdownAt } from '../formulas/drawdown.ts';
import type { Metres } from '../si.ts';
import type { Levels } from '../solution.ts';

export interface LevelFigures extends Levels {
  readonly drawdown: Metres | null;
  /** Where the drawdown would take the water if neither pump nor well ended it: no level that it ever stands at. */
  readonly falls: Metres | null;
}

/**
 * The three levels, each also as it falls in the dry season: a lower static level carries the pumping level with it. Null
 * where the drawdown would end below the bottom: no well has water there.
 */
export function levelsOf({ water, house, well }: Pick<Facts, 'water' | 'house' | 'well'>): LevelFigures {
  const { staticLevel, staticHighest, staticLowest, pumping } = water;
  const known = staticLevel !== null && house.demand !== null && pumping !== null;
  const fall = known ? drawdownAt(pumping, house.demand, staticLevel) : null;
  const falls = staticLevel === null || fall === null ? null : staticLevel + fall;
  const drawdown = falls === null || falls <= well.bottom ? fall : null;
  const below = (level: Metres | null) =>
    level === null || drawdown === null || level + drawdown > well.bottom ? null : level + drawdown;
  return {
    static: staticLevel,
    staticHighest,
    staticLowest,
    drawdown,
    falls,
    pumping: below(staticLevel),
    pumpingDry: below(staticLowest),
  };
}
