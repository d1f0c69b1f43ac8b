/** What hangs on a point of the string: the formula of the hanging load for what is below it. */
import { hangingString, hangLoads, type HangLoads } from '../../figures/hanging.ts';
import { levelsOf } from '../../figures/levels.ts';
import type { Metres } from '../../si.ts';
import type { Solved } from '../../solution.ts';
import { dischargeDepth } from '../pumpDepths.ts';
import { suspensionDepth } from '../topDepths.ts';

/**
 * Cable is tied to the pipe and hangs with it. The water outside stays where it is, so that less of it is over what hangs
 * lower; the column inside, above that level, hangs on every point down to it.
 *
 * @returns  by depth; from the suspension up all of it hangs. Each load is null while pump or level is unknown
 */
export function loadsOf({ facts }: Pick<Solved, 'facts'>): (depth: Metres) => HangLoads {
  const suspension = suspensionDepth(facts);
  const discharge = dischargeDepth(facts.pump);
  const { static: rest, falls } = levelsOf(facts);
  const drawnTo = falls === null ? null : Math.min(falls, facts.pump.setting);
  return (depth) => {
    const point = Math.min(Math.max(depth, suspension), Math.max(discharge, suspension));
    return hangLoads(hangingString(facts, Math.max(discharge - point, 0)), point, rest, drawnTo);
  };
}
