/** Water supply fixture units of private fixtures, and the flow that a sum of them asks for at the peak. */

/**
 * Load of a fixture, hot and cold together [wsfu].
 *
 * Source: International Plumbing Code (2018), Table E103.3(2), private; shower, washer and tank closet from memory.
 * Hose bibb: International Residential Code, Table P2903.6, from memory.
 */
export const FIXTURE_UNITS = {
  'bathroom group': 3.6,
  bathtub: 1.4,
  dishwasher: 1.4,
  'kitchen sink': 1.4,
  'laundry tray': 1.4,
  lavatory: 0.7,
  shower: 1.4,
  'clothes washer': 1.4,
  toilet: 2.2,
  'hose bibb': 2.5,
} as const;

export type Fixture = keyof typeof FIXTURE_UNITS;

/** wsfu and gpm. Source: International Plumbing Code (2018), Table E103.3(3), supply systems mainly of flush tanks. */
// prettier-ignore
export const FLUSH_TANK_DEMAND: readonly (readonly [units: number, gpm: number])[] = [
  [1, 3], [2, 5], [3, 6.5], [4, 8], [5, 9.4], [6, 10.7], [7, 11.8], [8, 12.8], [9, 13.7], [10, 14.6], [11, 15.4],
  [12, 16], [13, 16.5], [14, 17], [15, 17.5], [16, 18], [17, 18.4], [18, 18.8], [19, 19.2], [20, 19.6], [25, 21.5],
  [30, 23.3], [35, 24.9], [40, 26.3], [45, 27.7], [50, 29.1], [60, 32],
];
