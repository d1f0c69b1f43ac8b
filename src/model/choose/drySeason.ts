/** A pump that is hung where nobody said how far the water falls in a dry season: in the deep half of the room it has. */
import { valueAt } from '../plan/editPlan.ts';
import { pumpRoom } from '../place/pumpRoom.ts';
import { usualIn } from '../place/usual.ts';
import { writtenInside } from '../rules/fix.ts';
import type { Change, Solution } from '../solution.ts';

const SETTING = 'pump.setting';
/** Of the room from where ten feet stay over it down to the deepest place: inside, not at an end. Common practice, no source. */
const OF_THE_ROOM = 0.75;

/**
 * @param aimed  solved with the pump where it is aimed at: the usual water over its intake, or as much as a shallow well has
 * @returns  null where the dry season is told, or no deeper place is
 */
export function forDrySeason(aimed: Solution): Change | null {
  const { facts, plan } = aimed;
  if (facts.water.staticLowest !== null || aimed.lowest === null) return null;
  const { setting } = facts.pump;
  const { deepest, roomy, overInflow } = pumpRoom(aimed);
  const { underWater, mostUnderWater } = usualIn(facts.units);
  const end = Math.min(roomy.depth, overInflow !== null && overInflow.depth >= setting ? overInflow.depth : Infinity);
  const to =
    end > setting
      ? Math.min(end, setting + mostUnderWater - underWater)
      : setting + OF_THE_ROOM * (deepest.depth - setting);
  if (!(to > setting)) return null;
  const ends = { from: setting, to };
  const text = writtenInside({ solved: aimed, facts }, SETTING, 'to', ends);
  return text === valueAt(plan, SETTING) ? null : { path: SETTING, to: text };
}
