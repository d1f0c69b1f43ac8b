import type { Metres, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { levelAgainstTime, type TimeOptions } from './levelAgainstTime.ts';
import type { GroundLevel } from './levelCurve.ts';
import type { Unknown } from './unknown.ts';

export interface Cone {
  readonly points: readonly GroundLevel[];
  /** r0 [m]: where the straight-line form puts no drawdown; it grows with the root of time whatever the flow. */
  readonly radiusOfInfluence: Metres;
}

/**
 * Cone of depression at a time since the pump started: depth of the water in the ground at each distance.
 *
 * @param distances  from the well's axis [m]; inside the hole it is as at its wall
 * @returns  the cone, or why there is none
 *
 * Source   Theis (1935) and Papadopulos & Cooper (1967), added up over the steps of flow; r0 by Cooper & Jacob (1946)
 */
export function coneAt(
  solved: Solved,
  time: Seconds,
  distances: readonly Metres[],
  options: TimeOptions = { pumpFor: null },
): Cone | Unknown {
  const curve = levelAgainstTime(solved, options);
  if ('reason' in curve) return curve;
  const points = curve.coneAt(time, distances);
  const radiusOfInfluence = curve.radiusOfInfluenceAt(time);
  if (points === null || radiusOfInfluence === null)
    return { reason: 'Nothing is known of the ground round the well.' };
  return { points, radiusOfInfluence };
}
