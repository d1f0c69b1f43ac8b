/** Check valves: the first near the pump, none too high above the water, none beyond the well, arrow up. */
import { columnHeldByAir } from '../formulas/suction.ts';
import type { Metres } from '../si.ts';
import type { PlacedPart, Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { exceeds, meets } from './grace.ts';
import { change, heightText, words } from './fix.ts';
import { placed } from './placed.ts';
import { lowestPumpingLevel } from './pumpDepth.ts';
import { breaks, defineRule, holds, limit } from './rule.ts';

export const FIRST_VALVE_WITHIN = feet(25);
export const VALVE_SPACING = feet(200);
/** Highest place of a valve above the pumping level at sea level. */
export const VALVE_ABOVE_WATER = feet(25);
const HELD_AT_SEA_LEVEL: Metres = columnHeldByAir({ altitude: 0, temperature: 15 });

/** 25 ft at sea level leaves about 8 ft for cold and weather; the same is kept where thin air holds up less. */
export function valveAboveWaterLimit({ facts }: Solved): Metres {
  const { altitude, waterTemperature } = facts.site;
  const lost = HELD_AT_SEA_LEVEL - columnHeldByAir({ altitude, temperature: waterTemperature });
  return Math.min(VALVE_ABOVE_WATER, VALVE_ABOVE_WATER - lost);
}

/** Heights of all valves above the discharge, rising; the one in the pump is at its discharge. */
function valveHeights({ facts }: Solved): readonly Metres[] {
  const { checkValves } = facts.string;
  return facts.pump.checkValveInside ? [0, ...checkValves] : checkValves;
}

/** Height of the highest valve above the lowest pumping level; null without valve or level. */
function highestAboveWater(solved: Solved, heights: readonly Metres[]): Metres | null {
  const level = lowestPumpingLevel(solved);
  const highest = heights[heights.length - 1];
  if (level === null || highest === undefined) return null;
  const { pump } = solved.facts;
  return level.depth - (pump.setting - pump.intakeToDischarge - highest);
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
  judge({ solved, facts }) {
    const heights = valveHeights(solved);
    const discharge = facts.pump.setting - facts.pump.intakeToDischarge;
    const lowest = heights[0];
    if (lowest === undefined) {
      const at = { measured: 0, limit: 1, margin: -1, quantity: 'count', depth: discharge } as const;
      return breaks('none', 'danger', {}, { ...at, part: 'nipple', partKind: 'nipple' });
    }
    const within = FIRST_VALVE_WITHIN;
    if (!meets(within - lowest, 'length')) {
      const margin = within - lowest;
      const at = { measured: lowest, limit: within, margin, quantity: 'length', depth: discharge - lowest } as const;
      return breaks('lowestTooHigh', 'warning', { height: lowest, margin, within }, at);
    }
    const above = highestAboveWater(solved, heights);
    const most = valveAboveWaterLimit(solved);
    if (heights.length > 1 && above !== null && !meets(most - above, 'length')) {
      const margin = most - above;
      const depth = discharge - (heights[heights.length - 1] ?? 0);
      const at = { measured: above, limit: most, margin, quantity: 'length', depth } as const;
      return breaks('upperTooHigh', 'warning', { above, margin, most }, { ...at, part: highestValve(solved) });
    }
    const stretch = longestStretch(solved, heights);
    const usual = VALVE_SPACING;
    if (!meets(usual - stretch, 'length')) {
      const margin = usual - stretch;
      const at = { measured: stretch, limit: usual, margin, quantity: 'length', depth: discharge - lowest } as const;
      return breaks('longStretch', 'note', { stretch, margin, usual }, at);
    }
    return exceeds(lowest, 'length') ? holds('nearPump', { height: lowest }) : holds('atPump', {});
  },
  limits(solved) {
    const heights = valveHeights(solved);
    const level = lowestPumpingLevel(solved);
    const highest = heights[heights.length - 1];
    if (level === null || highest === undefined || heights.length < 2) return [];
    const from = level.depth - valveAboveWaterLimit(solved) + highest + solved.facts.pump.intakeToDischarge;
    const to = { from, givesWay: true, answeredBy: 'string.checkValves' };
    return [limit('pump.setting', to, 'upperNearWater', {})];
  },
  fixes({ solved, facts }, { variant }) {
    if (variant === 'longStretch') return [words('askForSecond', {})];
    const path = 'string.checkValves';
    if (variant === 'upperTooHigh')
      return [change(facts, [{ path, to: lowerOnes(solved, valveAboveWaterLimit(solved)) }], 'leaveUpperOut', {})];
    const changes = [{ path, to: [heightText(facts, 0, 0)] }];
    return [variant === 'none' ? change(facts, changes, 'add', {}) : change(facts, changes, 'putAtPump', {})];
  },
});

/** Key of the valve that hangs highest. */
function highestValve({ parts }: Solved): string {
  let highest: PlacedPart | null = null;
  for (const part of parts) {
    if (part.kind === 'checkValve' && (highest === null || part.top < highest.top)) highest = part;
  }
  return highest?.key ?? 'nipple';
}

/** The valves as typed that stay within the air's reach, with one at the pump. */
function lowerOnes(solved: Solved, limit: Metres): string[] {
  const { facts } = solved;
  const kept = facts.string.checkValves.filter((height) =>
    meets(limit - (highestAboveWater(solved, [height]) ?? 0), 'length'),
  );
  if (kept.length === 0 && !facts.pump.checkValveInside) return [heightText(facts, 0, 0)];
  return kept.map((height) => (facts.units === 'us' ? `${round(height / feet(1))} ft` : `${round(height)} m`));
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

export const noValveBeyondTop = defineRule({
  number: 'PR-10',
  part: 'buriedLine',
  judge({ facts }) {
    if (!facts.string.valveBetweenTopAndTank) return holds('none', {});
    const depth = facts.top.kind === 'pitless' ? facts.top.depth : 0;
    return breaks('oneInLine', 'warning', {}, { measured: 1, limit: 0, margin: -1, quantity: 'count', depth });
  },
  fixes: ({ facts }) => [change(facts, [{ path: 'string.valveBetweenTopAndTank', to: false }], 'leaveOut', {})],
});

export const arrowUp = defineRule({
  number: 'PR-11',
  part: 'checkValve',
  judge({ solved, facts }) {
    if (facts.string.arrow === 'up') return holds('up', {});
    const depth = placed(solved, 'checkValve')?.bottom ?? facts.pump.setting - facts.pump.intakeToDischarge;
    return breaks('down', 'danger', {}, { depth });
  },
  fixes: ({ facts }) => [change(facts, [{ path: 'string.arrow', to: 'up' }], 'turn', {})],
});

export const checkValveRules = [firstCheckValve, arrowUp, noValveBeyondTop] as const;
