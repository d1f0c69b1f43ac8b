/** Water that people and animals use in a day. */
import type { Plan } from '../plan/schema.ts';
import type { CubicMetres } from '../si.ts';
import { gallons } from '../units.ts';

type HousePlan = NonNullable<Plan['house']>;

/** 50 to 100 gallons a person. Missouri Extension G1801, Table 1. */
export const PERSON_A_DAY = { least: gallons(50), usual: gallons(75), most: gallons(100) } as const;

const IMPERIAL_GALLON: CubicMetres = 4.54609e-3;

/** The upper end of each printed range, US gallons a day. Extension sheets on water for livestock; names as people write them. */
const STOCK_GALLONS: readonly (readonly [word: RegExp, gallonsADay: number])[] = [
  [/milk/, 30],
  [/dairy/, 30],
  // Ontario prints 15 imperial gallons for a cow with her calf.
  [/calf|calv/, (15 * IMPERIAL_GALLON) / gallons(1)],
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

export function stockUseOf(house: HousePlan | undefined): readonly StockUse[] {
  return Object.entries(house?.stock ?? {}).map(([name, count]) => {
    const found = STOCK_GALLONS.find(([word]) => word.test(name.toLowerCase()));
    return { name, count, use: found === undefined ? null : gallons(found[1]) * count };
  });
}

/** People at 75 gal (284 L) and stock at its printed most; null while nobody said how many live there. */
export function dailyUseOf(house: HousePlan | undefined): CubicMetres | null {
  const people = house?.people;
  const stock = stockUseOf(house);
  if (people === undefined && stock.length === 0) return null;
  const animals = stock.reduce((sum, { use }) => sum + (use ?? 0), 0);
  const sum = (people ?? 0) * PERSON_A_DAY.usual + animals;
  return sum > 0 ? sum : null;
}
