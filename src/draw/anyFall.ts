import type { Solution } from '../model/solution.ts';

/** A yield alone tells no drawdown: the water may fall to anywhere between the level at rest and the pump. */
export function mayFallAnywhere({ levels, facts }: Pick<Solution, 'levels' | 'facts'>): boolean {
  return levels.static !== null && levels.pumping === null && facts.pump.setting > levels.static;
}
