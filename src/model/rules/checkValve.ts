/** Check valves: the first near the pump, none too high above the water, none beyond the well, arrow up. */
import { columnHeldByAir } from '../formulas/suction.ts';
import type { Metres } from '../si.ts';
import type { PlacedPart, Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { exceeds, meets } from './grace.ts';
import { change, heightText, words } from './mend.ts';
import { lowestPumpingLevel } from './pumpDepth.ts';
import { breaks, defineRule, holds } from './rule.ts';
import type { Mend } from './rule.ts';
import { ELECTRIC_CAUTION, gap, placed } from './say.ts';

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
  broken: 'No check valve near the pump',
  holds: 'A check valve holds the water up',
  source:
    'N.H. Admin. Rules We 702.05(a) and W. Va. Code of State Rules 64-46-7.3 ask for two; distances: common practice, no source',
  why: 'Without a check valve the pipe drains, the pump spins backwards and the next start strikes it.',
  judge(given) {
    const { solved, facts, show } = given;
    const heights = valveHeights(solved);
    const discharge = facts.pump.setting - facts.pump.intakeToDischarge;
    const lowest = heights[0];
    if (lowest === undefined) {
      return breaks({
        severity: 'danger',
        measured: 0,
        limit: 1,
        margin: -1,
        quantity: 'count',
        depth: discharge,
        part: 'nipple',
        partKind: 'nipple',
        title: 'No check valve holds the water up',
        amount: 'none fitted',
        message: 'No check valve is planned, in the pump or in the drop pipe.',
        mend: valves(solved, [heightText(facts, 0, 0)], 'Add a check valve at the pump'),
      });
    }
    if (!meets(FIRST_VALVE_WITHIN - lowest, 'length')) {
      return breaks({
        severity: 'warning',
        measured: lowest,
        limit: FIRST_VALVE_WITHIN,
        margin: FIRST_VALVE_WITHIN - lowest,
        quantity: 'length',
        depth: discharge - lowest,
        amount: `${gap(FIRST_VALVE_WITHIN - lowest, show)} too high`,
        message: `The lowest check valve is ${gap(lowest, show)} above the pump; ${show.depth(FIRST_VALVE_WITHIN)} is the usual most.`,
        mend: valves(solved, [heightText(facts, 0, 0)], 'Put the check valve at the pump'),
      });
    }
    const above = highestAboveWater(solved, heights);
    const limit = valveAboveWaterLimit(solved);
    if (heights.length > 1 && above !== null && !meets(limit - above, 'length')) {
      return breaks({
        severity: 'warning',
        measured: above,
        limit,
        margin: limit - above,
        quantity: 'length',
        depth: discharge - (heights[heights.length - 1] ?? 0),
        part: highestValve(solved),
        title: 'The upper check valve is too high',
        amount: `${gap(limit - above, show)} too high`,
        message: `The upper valve is ${gap(above, show)} above the pumping level; air holds a column of ${gap(limit, show)}.`,
        mend: valves(solved, lowerOnes(solved, limit), 'Leave the upper valve out'),
      });
    }
    const stretch = longestStretch(solved, heights);
    if (!meets(VALVE_SPACING - stretch, 'length')) {
      return breaks({
        severity: 'note',
        measured: stretch,
        limit: VALVE_SPACING,
        margin: VALVE_SPACING - stretch,
        quantity: 'length',
        depth: discharge - lowest,
        title: 'A long pipe hangs on one check valve',
        amount: `${gap(VALVE_SPACING - stretch, show)} over`,
        message: `${show.depth(stretch)} of pipe stands on one valve; every ${show.depth(VALVE_SPACING)} is usual.`,
        mend: words('Ask whether the state wants a second valve; each is two more joints.'),
      });
    }
    const higherUp = exceeds(lowest, 'length');
    return holds(
      higherUp ? `${gap(lowest, show)} above the pump` : 'at the pump',
      `A check valve ${higherUp ? 'near' : 'at'} the pump keeps the drop pipe full; spring type, not swing.`,
    );
  },
  limits(solved) {
    const heights = valveHeights(solved);
    const level = lowestPumpingLevel(solved);
    const highest = heights[heights.length - 1];
    if (level === null || highest === undefined || heights.length < 2) return [];
    const from = level.depth - valveAboveWaterLimit(solved) + highest + solved.facts.pump.intakeToDischarge;
    return [
      {
        setting: 'pump.setting',
        from,
        label: () => 'upper check valve near the water',
        givesWay: true,
        answeredBy: 'string.checkValves',
      },
    ];
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

function valves({ facts }: Solved, to: readonly string[], label: string): Mend {
  return change(facts, [{ path: 'string.checkValves', to }], label);
}

export const noValveBeyondTop = defineRule({
  number: 'PR-10',
  part: 'buriedLine',
  broken: 'A check valve stands between well and tank',
  holds: 'The line stays under tank pressure',
  source: 'Wis. Adm. Code NR 812.42(6)(f); 77 Ill. Adm. Code 920.40(f) and 925.40(c)',
  why: 'Beyond that valve the buried line loses its pressure and can draw in ground water.',
  judge({ facts }) {
    if (!facts.string.valveBetweenTopAndTank)
      return holds('none in the line', 'No check valve between the well and the tank: the line is under pressure.');
    return breaks({
      severity: 'warning',
      measured: 1,
      limit: 0,
      margin: -1,
      quantity: 'count',
      depth: facts.top.kind === 'pitless' ? facts.top.depth : 0,
      amount: 'one too many',
      message: 'A valve between well and tank cuts the line off from the tank’s pressure.',
      mend: change(facts, [{ path: 'string.valveBetweenTopAndTank', to: false }], 'Leave that valve out'),
    });
  },
});

export const arrowUp = defineRule({
  number: 'PR-11',
  part: 'checkValve',
  broken: 'The check valve is upside down',
  holds: 'The check valve’s arrow points up',
  source: 'common practice, no source',
  why: 'A reversed valve lets no water up, and the pump works against a closed end.',
  caution: ELECTRIC_CAUTION,
  judge({ solved, facts }) {
    if (facts.string.arrow === 'up')
      return holds('arrow up', 'The arrow points up the drop pipe, the way the water goes.');
    return breaks({
      severity: 'danger',
      depth: placed(solved, 'checkValve')?.bottom ?? facts.pump.setting - facts.pump.intakeToDischarge,
      amount: 'wrong way round',
      message: 'The arrow points down, towards the pump; it must point up the drop pipe.',
      mend: change(facts, [{ path: 'string.arrow', to: 'up' }], 'Turn it: arrow up'),
    });
  },
});

export const checkValveRules = [firstCheckValve, arrowUp, noValveBeyondTop];
