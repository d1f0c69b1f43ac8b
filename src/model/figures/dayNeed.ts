/** What a house needs in a day, and how long its peak lasts. */
import { dailyUseOf } from './dailyUse.ts';
import type { CubicMetres, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';

const HOUR: Seconds = 3600;

/**
 * @returns  `need`: people and stock where they are said, else two hours of the flow wanted [m³];
 *           `peak`: an hour for a home, two for a farmstead [s]
 *
 * Source  Missouri Extension G1801: length of the peak; a system is sized to deliver the day's use in two hours
 */
export function dayNeed({ plan, facts }: Pick<Solved, 'plan' | 'facts'>): {
  readonly need: CubicMetres;
  readonly peak: Seconds;
} {
  const stock = Object.keys(plan.house?.stock ?? {}).length > 0;
  const need = dailyUseOf(plan.house) ?? 2 * HOUR * (facts.house.demand ?? 0);
  return { need, peak: stock ? 2 * HOUR : HOUR };
}
