/** Water that a household, its animals and its land use, for the sheets. */
import type { Context } from '../../explain/context.ts';
import { dailyUseOf, stockUseOf } from '../../figures/dailyUse.ts';
import type { StockUse } from '../../figures/dailyUse.ts';
import type { CubicMetres, CubicMetresPerSecond } from '../../si.ts';
import { parseQuantity } from '../../units.ts';
import type { Missing } from '../sheet.ts';

export const PEOPLE_MISSING: Missing = { path: 'house.people', words: 'how many people live there' };

export function stockUse({ solution }: Context): readonly StockUse[] {
  return stockUseOf(solution.plan.house);
}

/** Null while nobody said how many live there. */
export function dailyUse({ solution }: Context): CubicMetres | null {
  return dailyUseOf(solution.plan.house);
}

/** Flow for watering, while it lasts. */
export function irrigation({ solution }: Context): CubicMetresPerSecond | null {
  const typed = solution.plan.house?.irrigation;
  if (typed === undefined) return null;
  const parsed = parseQuantity(typed, 'flow');
  return parsed.ok ? parsed.si : null;
}
