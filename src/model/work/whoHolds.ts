/** Who or what holds a load on the hook: by the same limits as the rule of the hanging load. */
import { HOIST_LOAD, LIFT_TWO_PEOPLE, NO_TEAM_LOAD } from '../formulas/lifting.ts';
import { meets } from '../rules/grace.ts';
import type { Holder, OnTheHook } from './step.ts';

export function whoHolds({ gear, threaded }: Pick<OnTheHook, 'gear' | 'threaded'>): Holder {
  if (gear !== null && !meets(NO_TEAM_LOAD - gear, 'force')) return 'machine';
  if (threaded) return 'threaded';
  if (gear === null) return 'unknown';
  if (!meets(HOIST_LOAD - gear, 'force')) return 'hoist';
  return meets(LIFT_TWO_PEOPLE - gear, 'force') ? 'twoPeople' : 'wheel';
}
