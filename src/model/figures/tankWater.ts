/** How much of a pressure tank is water at the two pressures of its switch: the rest is air. */
import type { Facts } from '../facts.ts';
import { airShare } from '../formulas/tank.ts';
import { atmosphericPressure } from '../formulas/water.ts';
import type { Ratio } from '../si.ts';

export interface TankWater {
  readonly atCutOut: Ratio;
  readonly atCutIn: Ratio;
}

/** Null for a tank that is open to the air. */
export function tankWater({ house, site }: Pick<Facts, 'house' | 'site'>): TankWater | null {
  const { kind, precharge, cutIn, cutOut } = house;
  if (kind === 'open tank') return null;
  const air = { precharge, atmosphere: atmosphericPressure(site.altitude) };
  return { atCutOut: 1 - airShare(cutOut, air), atCutIn: 1 - airShare(cutIn, air) };
}
