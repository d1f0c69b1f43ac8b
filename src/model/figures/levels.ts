import type { Facts } from '../facts.ts';
import { drawdownAt } from '../formulas/drawdown.ts';
import type { Metres } from '../si.ts';
import type { Levels } from '../solution.ts';

export interface LevelFigures extends Levels {
  readonly drawdown: Metres | null;
}

/** The three levels, each also as it falls in the dry season: a lower static level carries the pumping level with it. */
export function levelsOf({ water, house }: Facts): LevelFigures {
  const { staticLevel, staticHighest, staticLowest, pumping } = water;
  const known = staticLevel !== null && house.demand !== null && pumping !== null;
  const drawdown = known ? drawdownAt(pumping, house.demand, staticLevel) : null;
  const below = (level: Metres | null) => (level === null || drawdown === null ? null : level + drawdown);
  return {
    static: staticLevel,
    staticHighest,
    staticLowest,
    drawdown,
    pumping: below(staticLevel),
    pumpingDry: below(staticLowest),
  };
}
