/**
 * Multipliers of the NIOSH lifting equation for work of up to an hour.
 *
 * Source  NIOSH, Applications Manual for the Revised NIOSH Lifting Equation, DHHS 94-110; from memory but for 3 lifts a minute
 */
export const LIFT_FREQUENCY: readonly { readonly liftsPerMinute: number; readonly multiplier: number }[] = [
  { liftsPerMinute: 0.2, multiplier: 1.0 },
  { liftsPerMinute: 1, multiplier: 0.94 },
  { liftsPerMinute: 2, multiplier: 0.91 },
  { liftsPerMinute: 3, multiplier: 0.88 },
  { liftsPerMinute: 4, multiplier: 0.84 },
  { liftsPerMinute: 5, multiplier: 0.8 },
  { liftsPerMinute: 6, multiplier: 0.75 },
  { liftsPerMinute: 7, multiplier: 0.7 },
  { liftsPerMinute: 8, multiplier: 0.6 },
  { liftsPerMinute: 9, multiplier: 0.52 },
  { liftsPerMinute: 10, multiplier: 0.45 },
];

/** How well the hands hold; a fair grip is 1.00 from 30 in (75 cm) above the floor on. Source as above, from memory. */
export const LIFT_GRIP = { good: 1, fair: 0.95, poor: 0.9 } as const;

/**
 * Share of what each could lift alone that a team can: people hinder each other.
 *
 * Source  team rule of the British health and safety guidance on manual handling, from memory
 */
export const TEAM_SHARE: Readonly<Record<1 | 2 | 3, number>> = { 1: 1, 2: 2 / 3, 3: 1 / 2 };
