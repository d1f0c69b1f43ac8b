/** Where the trade would set the pitless adapter, the best place first; or that it stands well already. */
import type { Facts } from '../facts.ts';
import { valueAt } from '../plan/editPlan.ts';
import { LEAST_COVER } from '../rules/adapterCover.ts';
import { adapterRoom } from '../rules/adapterRoom.ts';
import { exceeds, meets, past } from '../rules/grace.ts';
import { highestStaticLevel } from '../rules/highestStatic.ts';
import { openFrost } from '../rules/openFacts.ts';
import { ceilTo } from '../rules/rounding.ts';
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { nobodySaid } from './refusal.ts';
import type { AdapterEnd, WhyLeft, WhyPlaced } from './told.ts';
import { usualIn } from './usual.ts';

export type AdapterPlaces =
  | { readonly kind: 'left'; readonly why: WhyLeft }
  | {
      readonly kind: 'set';
      readonly places: readonly { readonly from: Metres; readonly to: Metres }[];
      readonly rule: string;
      readonly why: (depth: Metres) => WhyPlaced;
    };

/** Null where the pipe leaves the well otherwise. */
export function adapterPlaces(solved: Solved): AdapterPlaces | null {
  const { facts, values, plan } = solved;
  const { top, site, units } = facts;
  if (top.kind !== 'pitless') return null;
  const said = values.frostDepth;
  if (said === null) return { kind: 'left', why: nobodySaid('frostDepth') };
  const { deepest, by } = roomOf(solved);
  // An estimate is dug by at its worst, where the well leaves the room.
  const worst = openFrost(solved)?.bad ?? said;
  const frost = meets(deepest - leastFor(worst, facts), 'length') ? worst : said;
  const least = leastFor(frost, facts);
  const { depth } = top;
  // Of an adapter that nobody planned only is assumed that there is one.
  const typed = plan.top === undefined || valueAt(plan, 'top.depth') !== undefined;
  if (typed && meets(depth - least, 'length') && meets(deepest - depth, 'length'))
    return { kind: 'left', why: { variant: 'deepEnough', numbers: { below: depth - frost, frost } } };
  if (!meets(deepest - least, 'length'))
    return { kind: 'left', why: { variant: 'noRoomForAdapter', numbers: { least, by } } };
  const inSteps = ceilTo(least, usualIn(units).digStep);
  const byFrost = exceeds(frost, 'length') && meets(frost + site.frostMargin - LEAST_COVER[units], 'length');
  const beyond = meets(deepest - depth, 'length') ? null : by;
  return {
    kind: 'set',
    places: [
      ...(meets(deepest - inSteps, 'length') ? [{ from: inSteps, to: deepest }] : []),
      { from: least, to: deepest },
    ],
    rule: byFrost ? 'PR-19' : 'PR-64',
    why: (at) =>
      byFrost
        ? { variant: 'belowFrost', numbers: { below: at - frost, frost, estimated: site.frostDepth === null, beyond } }
        : { variant: 'covered', numbers: { cover: at, beyond } },
  };
}

/** Below the frost by its margin, and under the least cover where it does not freeze so deep. */
function leastFor(frost: Metres, { site, units }: Facts): Metres {
  const cover = LEAST_COVER[units];
  return exceeds(frost, 'length') ? Math.max(frost + site.frostMargin, cover) : cover;
}

/** In the outer casing, above the pump and above the water, unless it is made to stand in it. */
function roomOf(solved: Solved): { readonly deepest: Metres; readonly by: AdapterEnd } {
  const { facts } = solved;
  const room = adapterRoom(facts);
  const water = highestStaticLevel(solved);
  if (water === null || (facts.top.kind === 'pitless' && facts.top.submergedUse === true)) return room;
  const above = water - 2 * past('length');
  return above < room.deepest ? { deepest: above, by: 'water' } : room;
}
