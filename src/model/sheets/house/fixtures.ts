/** Fixtures of the plan under the names of the codes, and their load by each code. */
import type { Context } from '../../explain/context.ts';
import { fixtureUnits } from '../../formulas/demand.ts';
import type { Fixture } from '../../tables/fixtureUnits.ts';

/** Names as people write them. The first that fits counts. */
const WORDS: readonly (readonly [RegExp, Fixture])[] = [
  [/bath(room)? ?group|full bath/, 'bathroom group'],
  [/shower/, 'shower'],
  [/tub|^baths?$/, 'bathtub'],
  [/dish/, 'dishwasher'],
  [/tray|laundry (sink|tub)/, 'laundry tray'],
  [/wash(er|ing)|laundry/, 'clothes washer'],
  [/kitchen|^sinks?$/, 'kitchen sink'],
  [/lavator|wash ?basin|basin|bath(room)? sink/, 'lavatory'],
  [/toilet|closet|^wc$/, 'toilet'],
  [/hose|bibb|outside|garden|yard|sill ?cock|outdoor/, 'hose bibb'],
  [/faucet|tap/, 'lavatory'],
];

/**
 * Private water supply fixture units of the other code.
 *
 * Source: Uniform Plumbing Code (2018), Table 610.3, private; a bathroom group is counted as tub, lavatory and closet.
 */
export const UNIFORM_UNITS: Readonly<Record<Fixture, number>> = {
  'bathroom group': 7.5,
  bathtub: 4,
  dishwasher: 1.5,
  'kitchen sink': 1.5,
  'laundry tray': 1.5,
  lavatory: 1,
  shower: 2,
  'clothes washer': 4,
  toilet: 2.5,
  'hose bibb': 2.5,
};
/** Each hose bibb after the first. Same table. */
const UNIFORM_NEXT_BIBB = 1;

/** Outlets that a bathroom group has: tub or shower, lavatory, closet. */
const OUTLETS_OF_GROUP = 3;

export interface Fixtures {
  readonly counts: Readonly<Partial<Record<Fixture, number>>>;
  readonly bedrooms: number | null;
  /** Names that no code here has. */
  readonly strange: readonly string[];
}

/** Null where the plan names none. */
export function fixturesOf({ solution }: Context): Fixtures | null {
  const typed = Object.entries(solution.plan.house?.fixtures ?? {});
  if (typed.length === 0) return null;
  const counts: Partial<Record<Fixture, number>> = {};
  const strange: string[] = [];
  let bedrooms: number | null = null;
  for (const [name, count] of typed) {
    const plain = name.trim().toLowerCase();
    if (/bed ?room/.test(plain)) {
      bedrooms = (bedrooms ?? 0) + count;
      continue;
    }
    const found = WORDS.find(([word]) => word.test(plain));
    if (found === undefined) strange.push(name);
    else counts[found[1]] = (counts[found[1]] ?? 0) + count;
  }
  return { counts, bedrooms, strange };
}

export const internationalUnits = ({ counts }: Fixtures): number => fixtureUnits(counts);

export function uniformUnits({ counts }: Fixtures): number {
  let sum = 0;
  for (const [fixture, count] of Object.entries(counts) as [Fixture, number][]) {
    if (count <= 0) continue;
    sum +=
      fixture === 'hose bibb'
        ? UNIFORM_UNITS[fixture] + (count - 1) * UNIFORM_NEXT_BIBB
        : UNIFORM_UNITS[fixture] * count;
  }
  return sum;
}

/** Outlets, for the count of one gallon a minute each. */
export function outlets({ counts }: Fixtures): number {
  let sum = 0;
  for (const [fixture, count] of Object.entries(counts) as [Fixture, number][]) {
    sum += fixture === 'bathroom group' ? count * OUTLETS_OF_GROUP : count;
  }
  return sum;
}
