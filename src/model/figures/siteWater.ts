/** The water of a site, as its temperature makes it. */
import type { Facts } from '../facts.ts';
import { kinematicViscosity, waterDensity } from '../formulas/water.ts';
import type { System } from './pumpInWell.ts';

/** Asked for by every figure and many rules: found once for each site, whose facts never change. */
const KNOWN = new WeakMap<Facts['site'], System['water']>();

export function siteWater(site: Facts['site']): System['water'] {
  const known = KNOWN.get(site);
  if (known !== undefined) return known;
  const { waterTemperature } = site;
  const water = { density: waterDensity(waterTemperature), kinematicViscosity: kinematicViscosity(waterTemperature) };
  KNOWN.set(site, water);
  return water;
}
