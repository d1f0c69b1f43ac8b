/**
 * How much lower the water would have to rest for the well to do what it does: found by solving the plan with its levels
 * moved down, a step at a time, and never by a rule of thumb.
 */
import { levelAtNoFlow } from '../figures/curves.ts';
import { lowestLevel } from '../figures/lowestLevel.ts';
import { standing } from '../fixes/standing.ts';
import { coarse, gridOf } from '../headroom/grid.ts';
import { heldStill, movablesOf } from '../headroom/movable.ts';
import { WARNING } from '../headroom/newlyWrong.ts';
import { hasCutOff } from '../rules/cutOff.ts';
import { createSolver } from '../solve.ts';
import type { Metres } from '../si.ts';
import type { Solution } from '../solution.ts';
import { feet } from '../units.ts';
import type { Asked } from './cause.ts';
import { own, type Own, type Shows } from './own.ts';

/** As a tape in a well is read. */
const STEP = { us: feet(1), metric: 0.5 } as const;
/** Even stretches that are tried before what lies between two of them is halved. */
const STRETCHES = 16;
/** The last bits of a depth that was written in another unit [m]. */
const HAIR = 1e-6;

export type End = 'least' | 'most';

/**
 * Whether this solution shows it, by the weaker or the stronger pump of a rating: none of it does where the water at rest
 * stands no higher than the pump can draw it to.
 */
export function isShown(shows: Shows, solution: Solution, end: End): boolean {
  const { facts, values, curves, levels } = solution;
  if (levels.static === null) return false;
  // Protection against running dry stops the pump there: it neither runs on nor brings air.
  if (isOut(solution)) return !(isStopped(shows) && hasCutOff(solution));
  switch (shows) {
    case 'nothing': {
      const from = levelAtNoFlow(facts, { end, tank: 'cutIn' });
      return from !== null && levels.static >= from;
    }
    case 'little':
      return standing(solution, 'PR-54') >= WARNING || curves.atCutIn?.outpumped === true;
    case 'noStop': {
      const reach = end === 'least' ? values.shutOffPressureAtTankLeast : values.shutOffPressureAtTank;
      return reach !== null && reach < facts.house.cutOut;
    }
    case 'air':
      if (hasCutOff(solution)) return false;
      return (
        curves.atCutInMost?.outpumped === true ||
        (levels.pumping !== null && levels.pumping >= lowestLevel(facts).depth - HAIR)
      );
  }
}

function isStopped(shows: Shows): boolean {
  return shows === 'noStop' || shows === 'air';
}

/** The water at rest stands no higher than the intake, or a probe over it that then never lets the pump start. */
export function isOut({ facts, levels }: Pick<Solution, 'facts' | 'levels'>): boolean {
  return levels.static !== null && levels.static >= lowestLevel(facts).depth - HAIR;
}

/** It shows as planned, and the water at rest is not to blame. */
function isDrawnDown(shows: Shows, solution: Solution): boolean {
  if (isOut(solution)) return false;
  return shows === 'air' || (shows === 'little' && standing(solution, 'PR-54') < WARNING);
}

interface Fall {
  readonly by: Metres;
  readonly there: Solution;
}

/** Null where nobody said where the water rests, or where no fall down to the bottom shows it. */
function fallUntil({ solution, units }: Asked, shows: (solution: Solution) => boolean): Fall | null {
  const { plan } = heldStill(solution.plan, solution);
  const level = movablesOf(plan, solution, units).find(({ of }) => of === 'staticLevel');
  const now = level?.now ?? null;
  if (level === undefined || now === null) return null;
  if (shows(solution)) return { by: 0, there: solution };
  const grid = gridOf({ now, end: Math.max(level.end, now), step: STEP[units], fromNow: true });
  const { later } = createSolver();
  const solved = (index: number): Solution => later(level.write(grid.at(index)));
  const at = (index: number): boolean => shows(solved(index));
  let clear = 0;
  for (const index of coarse(grid, STRETCHES, level.places)) {
    if (!at(index)) {
      clear = index;
      continue;
    }
    let [low, high] = [clear, index];
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (at(middle)) high = middle;
      else low = middle;
    }
    return { by: grid.at(high) - now, there: solved(high) };
  }
  return null;
}

/** What its choices rest on, wherever nobody made them. */
export const LOWER_RESTS = [
  'pump.setting',
  'pump.curve.flow',
  'pump.frequency',
  'house.cutIn',
  'house.cutOut',
  'house.demand',
] as const;

export interface Lower {
  readonly says: readonly Own[];
  /** As the plan has it, or in the dry season that it tells of, the well does just this. */
  readonly shown: boolean;
}

export function lowerWater(asked: Asked, shows: Shows): Lower {
  const { solution } = asked;
  const { facts, curves } = solution;
  const { house, water } = facts;
  const open = house.kind === 'open tank';
  // A tank that is open to the air has no cut-out: the float stops its pump.
  if (shows === 'noStop' && open) return NOTHING;
  const fallen = fallUntil(asked, (each) => isShown(shows, each, 'least'));
  if (fallen === null) return NOTHING;
  const { by, there } = fallen;
  // Where the pump draws the water down that the plan has, the water has not fallen: that is told of the pump.
  if (by === 0 && isDrawnDown(shows, solution)) return NOTHING;
  const differs = curves.generic && (shows === 'nothing' || shows === 'noStop');
  const most = differs ? (fallUntil(asked, (each) => isShown(shows, each, 'most'))?.by ?? null) : null;
  const fall =
    water.staticLowest === null || water.staticLevel === null ? null : water.staticLowest - water.staticLevel;
  const drier = fall !== null && fall > 0 && by > 0;
  return {
    says: [
      own('lower', {
        shows,
        by,
        most: most === null || most <= by ? null : most,
        dryAt: isOut(there) ? (lowestLevel(there.facts).by === 'intake' ? 'intake' : 'cutOff') : null,
        cutIn: open ? null : house.cutIn,
        cutOut: open ? null : house.cutOut,
      }),
      ...(drier ? [own('dryFall', { fall })] : []),
    ],
    shown: by === 0 || (drier && fall >= by),
  };
}

const NOTHING: Lower = { says: [], shown: false };
