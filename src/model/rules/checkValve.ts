/** Check valves: the first near the pump, none too high above the water, none beyond the well, arrow up. */
import { columnHeldByAir } from '../formulas/suction.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import type { Metres } from '../si.ts';
import type { PlacedPart, Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { atLowestLevel, type SetBy } from './atLowestLevel.ts';
import { exceeds, meets } from './grace.ts';
import { placed } from './placed.ts';
import { AS_TESTED, PUMP } from './restsOn.ts';
import { breaks, defineRule, doesNotApply, holds, limit } from './rule.ts';
import { dischargeDepth, heightOverIntake, settingForDischarge } from '../string/pumpDepths.ts';
import { lineDepth } from '../string/topDepths.ts';

export const FIRST_VALVE_WITHIN = feet(25);
/** How much pipe a single valve may hold full before it is said. Common practice, no source. */
export const MOST_ON_ONE_VALVE = feet(300);
/** How often a valve stands where a string has several. */
export const VALVE_SPACING = feet(200);
/** Highest place of a valve above the pumping level at sea level, where the air would hold some 33 ft. */
export const VALVE_ABOVE_WATER = feet(25);
const HELD_AT_SEA_LEVEL: Metres = columnHeldByAir({ altitude: 0, temperature: 15 });

/** 25 ft at sea level leaves about 8 ft for cold and weather; the same is kept where thin air holds up less. */
export function valveAboveWaterLimit({ facts }: Pick<Solved, 'facts'>): Metres {
  const { altitude, waterTemperature } = facts.site;
  const lost = HELD_AT_SEA_LEVEL - columnHeldByAir({ altitude, temperature: waterTemperature });
  return Math.min(VALVE_ABOVE_WATER, VALVE_ABOVE_WATER - lost);
}

/** Heights of all valves above the discharge, rising; the one in the pump is at its discharge. */
function valveHeights({ facts }: Pick<Solved, 'facts'>): readonly Metres[] {
  const { checkValves } = facts.string;
  return facts.pump.checkValveInside ? [0, ...checkValves] : checkValves;
}

/** Depth of a valve at a height above the discharge. */
export function depthAt({ facts }: Pick<Solved, 'facts'>, height: Metres): Metres {
  return dischargeDepth(facts.pump) - height;
}

/** The longest stretch of drop pipe above a valve, up to the next one or the top. */
function longestStretch({ values }: Solved, heights: readonly Metres[]): Metres {
  let longest = 0;
  heights.forEach((height, index) => {
    longest = Math.max(longest, (heights[index + 1] ?? Math.max(values.dropPipeCutLength ?? height, height)) - height);
  });
  return longest;
}

export const firstCheckValve = defineRule({
  number: 'PR-09',
  part: 'checkValve',
  restsOn: [
    'house.cutIn',
    'house.demand',
    'pump.checkValveInside',
    ...PUMP,
    'pump.setting',
    'string.checkValves',
    ...AS_TESTED,
    'site.altitude',
  ],
  asks: { within: FIRST_VALVE_WITHIN, aboveWater: VALVE_ABOVE_WATER, stretch: MOST_ON_ONE_VALVE },
  judge(given) {
    const { solved } = given;
    const heights = valveHeights(solved);
    const lowest = heights[0];
    const highest = heights[heights.length - 1];
    if (lowest === undefined || highest === undefined) {
      const at = { measured: 0, limit: 1, margin: -1, quantity: 'count', depth: depthAt(solved, 0) } as const;
      return breaks('none', 'danger', {}, { ...at, part: 'nipple', partKind: 'nipple' });
    }
    const within = FIRST_VALVE_WITHIN;
    if (!meets(within - lowest, 'length')) {
      const margin = within - lowest;
      const depth = depthAt(solved, lowest);
      const at = { measured: lowest, limit: within, margin, quantity: 'length', depth } as const;
      return breaks('lowestTooHigh', 'warning', { height: lowest, margin, within }, at);
    }
    const most = valveAboveWaterLimit(solved);
    // Water falls to the intake at most, so valves near the pump stand low enough whatever the level is.
    const mostAbove = heightOverIntake(highest, solved.facts.pump);
    if (heights.length < 2 || meets(most - mostAbove, 'length')) return pipeOnValves(solved, heights);
    return atLowestLevel(
      given,
      (level, by) => upperTooHigh(solved, highest, level, by) ?? pipeOnValves(solved, heights),
      (turn) => ({ variant: 'dependsOnLevel' as const, numbers: { turn, most } }),
      () => depthAt(solved, highest) + most,
    );
  },
  limits(solved) {
    const heights = valveHeights(solved);
    const { lowest } = solved;
    const highest = heights[heights.length - 1];
    // Water that is drawn down to the intake goes wherever the pump goes, and the valve with it.
    if (lowest === null || lowest.by === 'intake' || highest === undefined || heights.length < 2) return [];
    const from = settingForDischarge(lowest.depth - valveAboveWaterLimit(solved) + highest, solved.facts.pump);
    const to = { from, givesWay: true, answeredBy: 'string.checkValves' };
    return [limit('pump.setting', to, 'upperNearWater', {})];
  },
});

/** Null where the valve is near enough to the water. */
function upperTooHigh(solved: Solved, highest: Metres, level: Metres, by: SetBy) {
  const most = valveAboveWaterLimit(solved);
  const depth = depthAt(solved, highest);
  const above = level - depth;
  const margin = most - above;
  if (meets(margin, 'length')) return null;
  const thin = exceeds(VALVE_ABOVE_WATER - most, 'length');
  const at = { limit: most, quantity: 'length', depth, part: highestValve(solved) } as const;
  if (by !== 'open')
    return breaks('upperTooHigh', 'warning', { above, margin, most, thin }, { ...at, measured: above, margin });
  // At both ends too high: then already above the water at rest.
  const aboveRest = (lowestStatic(solved.facts) ?? level) - depth;
  const numbers = { above: aboveRest, margin: most - aboveRest, most, thin };
  return breaks('upperTooHighAtRest', 'warning', numbers, { ...at, measured: aboveRest, margin: most - aboveRest });
}

/** What the valves hold full between them. */
function pipeOnValves(solved: Solved, heights: readonly Metres[]) {
  const [lowest = 0] = heights;
  const stretch = longestStretch(solved, heights);
  const most = MOST_ON_ONE_VALVE;
  const margin = most - stretch;
  if (!meets(margin, 'length')) {
    const at = { measured: stretch, limit: most, margin, quantity: 'length', depth: depthAt(solved, lowest) } as const;
    return breaks('longStretch', 'note', { stretch, margin, most, usual: VALVE_SPACING }, at);
  }
  return exceeds(lowest, 'length') ? holds('nearPump', { height: lowest }) : holds('atPump', {});
}

/** Key of the valve that hangs highest. */
function highestValve({ parts }: Solved): string {
  let highest: PlacedPart | null = null;
  for (const part of parts) {
    if (part.kind === 'checkValve' && (highest === null || part.top < highest.top)) highest = part;
  }
  return highest?.key ?? 'nipple';
}

export const noValveBeyondTop = defineRule({
  number: 'PR-10',
  part: 'buriedLine',
  restsOn: ['string.valveBetweenTopAndTank'],
  judge({ facts }) {
    if (!facts.string.valveBetweenTopAndTank) return holds('none', {});
    const depth = lineDepth(facts);
    return breaks('oneInLine', 'warning', {}, { measured: 1, limit: 0, margin: -1, quantity: 'count', depth });
  },
});

export const arrowUp = defineRule({
  number: 'PR-11',
  part: 'checkValve',
  restsOn: ['string.arrow', 'string.checkValves'],
  judge({ solved, facts }) {
    // A valve that is built into the pump cannot be turned.
    if (facts.string.checkValves.length === 0) return doesNotApply;
    if (facts.string.arrow === 'up') return holds('up', {});
    const depth = placed(solved, 'checkValve')?.bottom ?? dischargeDepth(facts.pump);
    return breaks('down', 'danger', {}, { depth });
  },
});

export const checkValveRules = [firstCheckValve, arrowUp, noValveBeyondTop] as const;
