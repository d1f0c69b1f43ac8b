/** Water that a household, its animals and its land use in a day. */
import type { Context } from '../../explain/context.ts';
import type { CubicMetres, CubicMetresPerSecond } from '../../si.ts';
import { gallons } from '../../units.ts';
import { parseQuantity } from '../../units.ts';
import type { Missing } from '../sheet.ts';

/** 50 to 100 gallons a person. Missouri Extension G1801, Table 1. */
export const PERSON_A_DAY = { least: gallons(50), usual: gallons(75), most: gallons(100) } as const;

export const PEOPLE_MISSING: Missing = { path: 'house.people', words: 'how many people live there' };

/** The upper end of each printed range, gallons a day. Extension sheets on water for livestock; names as people write them. */
const STOCK_GALLONS: readonly (readonly [word: RegExp, gallonsADay: number])[] = [
  [/milk/, 30],
  [/dairy/, 30],
  [/calf|calv/, 15],
  [/cow|cattle|beef|steer|heifer|bull/, 18],
  [/horse|mule|pony|ponies/, 15],
  [/sheep|ewe|lamb|goat/, 4],
  [/chicken|hen|poultry|duck|turkey/, 0.12],
  [/pig|hog|swine|sow/, 5],
];

export interface StockUse {
  readonly name: string;
  readonly count: number;
  /** m³ a day; null for an animal that no table here has. */
  readonly use: CubicMetres | null;
}

export function stockUse({ solution }: Context): readonly StockUse[] {
  return Object.entries(solution.plan.house.stock ?? {}).map(([name, count]) => {
    const found = STOCK_GALLONS.find(([word]) => word.test(name.toLowerCase()));
    return { name, count, use: found === undefined ? null : gallons(found[1]) * count };
  });
}

/** Flow for watering, while it lasts. */
export function irrigation({ solution }: Context): CubicMetresPerSecond | null {
  const typed = solution.plan.house.irrigation;
  if (typed === undefined) return null;
  const parsed = parseQuantity(typed, 'flow');
  return parsed.ok ? parsed.si : null;
}

/** People at 75 gal (284 L) and stock at its printed most; null while nobody said how many live there. */
export function dailyUse(context: Context): CubicMetres | null {
  const { people } = context.solution.plan.house;
  const stock = stockUse(context);
  if (people === undefined && stock.length === 0) return null;
  const animals = stock.reduce((sum, { use }) => sum + (use ?? 0), 0);
  const sum = (people ?? 0) * PERSON_A_DAY.usual + animals;
  return sum > 0 ? sum : null;
}
