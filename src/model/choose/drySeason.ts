/** A pump that is hung where nobody said how far the water falls in a dry season: in the deep half of the room it has. */
import { pumpRoom } from '../place/pumpRoom.ts';
import { usualIn } from '../place/usual.ts';
import { depthWritten, writtenInside } from '../rules/fix.ts';
import type { Change, Solution } from '../solution.ts';

const SETTING = 'pump.setting';
/** Of the room from where ten feet stay over it down to the deepest place: inside, not at an end. Common practice, no source. */
const OF_THE_ROOM = 0.75;

/**
 * @param aimed   where it is aimed at: the usual water over its intake, or as much as a shallow well has
 * @param solved  of the plan with this pump in it, wherever it hangs
 * @returns  the same where the dry season is told, nobody knows how far the water falls, or no deeper place is
 */
export function forDrySeason(aimed: readonly Change[], solved: Solution): readonly Change[] {
  const { facts } = solved;
  const text = aimed.find(({ path }) => path === SETTING)?.to;
  if (typeof text !== 'string' || facts.water.staticLowest !== null || !isLevelKnown(solved)) return aimed;
  const setting = depthWritten({ solved }, SETTING, text);
  const { deepest, roomy, overInflow } = pumpRoom(solved);
  const { underWater, mostUnderWater } = usualIn(facts.units);
  const end = Math.min(roomy.depth, overInflow !== null && overInflow.depth >= setting ? overInflow.depth : Infinity);
  const to =
    end > setting
      ? Math.min(end, setting + mostUnderWater - underWater)
      : setting + OF_THE_ROOM * (deepest.depth - setting);
  if (!(to > setting)) return aimed;
  const deeper = writtenInside({ solved, facts }, SETTING, 'to', { from: setting, to });
  return [...aimed, { path: SETTING, to: deeper }];
}

/** The water falls to where it falls wherever the pump hangs. */
export function isLevelKnown({ lowest, curves }: Pick<Solution, 'lowest' | 'curves'>): boolean {
  return (lowest?.by === 'level' || lowest?.by === 'dryLevel') && curves.atCutInMost?.outpumped !== true;
}
