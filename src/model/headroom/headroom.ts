/**
 * How far the level at rest, the yield, the demand, the switch, the pump's depth and the frost may move, each alone,
 * before the first warning and the first danger.
 *
 * Found by solving the plan with that one value moved: margins do not all fall evenly, and what is told must be what the
 * person would see who moves it. Values are tried on a grid as coarse as what is read of them.
 */
import { standing } from '../fixes/standing.ts';
import { late } from '../late.ts';
import { refusal } from '../place/refusal.ts';
import type { Plan } from '../plan/schema.ts';
import { isAssumed, restsOn } from '../rules/assumed.ts';
import { ruleOf } from '../rules/list.ts';
import type { Finding, Solution } from '../solution.ts';
import { createSolver } from '../solve.ts';
import { coarse, gridOf, type Grid } from './grid.ts';
import { heldStill, movablesOf, standingStill, type Movable } from './movable.ts';
import {
  DANGER,
  WARNING,
  dangersOf,
  findingOf,
  firstWrong,
  newlyWrong,
  outOfWater,
  type Level,
  type Wrong,
} from './newlyWrong.ts';
import type { Headroom, HeadroomReport, NoHeadroom, Step, Units } from './told.ts';

type Solve = (plan: Plan) => Solution;

/** What is to be found, one line at a time: the whole takes longer than a page should stand still. */
export interface ToFind {
  readonly refused: NoHeadroom | null;
  readonly finds: readonly (() => Headroom)[];
}

/**
 * @param plan      as typed
 * @param solution  what `solve` says of it
 * @param units     the reader's, whose round values are tried
 */
export function headroomOf(plan: Plan, solution: Solution, units: Units = solution.facts.units): HeadroomReport {
  const { refused, finds } = headroomToFind(plan, solution, units);
  return { refused, lines: finds.map((find) => find()) };
}

export function headroomToFind(plan: Plan, solution: Solution, units: Units): ToFind {
  const why = refusal(solution);
  if (why?.variant === 'flowing' || why?.variant === 'dry') return { refused: why.variant, finds: [] };
  const solve = createSolver().later;
  const still = heldStill(plan, solution);
  return {
    refused: null,
    finds: movablesOf(still.plan, solution, units).map((movable) => () => lineOf(movable, solution, still, solve)),
  };
}

function lineOf(movable: Movable, solution: Solution, held: ReturnType<typeof heldStill>, solve: Solve): Headroom {
  const { of, direction, now, fields, write, orElse } = movable;
  if (now === null) {
    const missing = fields[0] ?? null;
    return { of, direction, now, missing, end: null, warning: null, danger: null, standing: [], assumed: [] };
  }
  const still = solve(standingStill(movable, held.plan, solution));
  const trials = [write, ...(orElse === undefined ? [] : [orElse])].map((way) =>
    tryOut(movable, now, still, (to) => solve(way(to))),
  );
  const others = late(() => theOtherWay(movable, now, solve));
  const nearest = (level: Level) =>
    nearestOf(
      trials.map((trial) => stepTo(level, trial, { movable, solution, others })),
      now,
    );
  const [danger, warning] = [nearest(DANGER), nearest(WARNING)];
  const own = fields.filter((path) => isAssumed(solution, path));
  const rests = [warning, danger].flatMap((step) => (step === null ? [] : restsOnIn(step, held.held)));
  return {
    of,
    direction,
    now,
    missing: null,
    end: movable.end,
    warning,
    danger,
    standing: [...new Set([...dangersOf(solution), ...dangersOf(still)])],
    assumed: [...new Set([...own, ...rests])],
  };
}

/** What was held counts as assumed all the same. */
function restsOnIn({ finding: { rule, together, assumed } }: Step, held: ReadonlySet<string>): readonly string[] {
  return [...assumed, ...[rule, ...together.map((each) => each.rule)].flatMap((each) => restsOn(ruleOf(each), held))];
}

/** The first that is met on the way from the value now; what is so already lies on it. */
function nearestOf(steps: readonly (Step | null)[], now: number): Step | null {
  const way = ({ at }: Step) => Math.abs(at - now);
  return steps.filter((step) => step !== null).toSorted((one, other) => way(one) - way(other))[0] ?? null;
}

/** The plan with one value moved along its grid, each solved once. */
interface Trial {
  readonly grid: Grid;
  readonly tried: readonly number[];
  readonly at: (index: number) => Solution;
}

function tryOut(
  { end, step, fromNow, places }: Movable,
  now: number,
  still: Solution,
  solveAt: (to: number) => Solution,
): Trial {
  const grid = gridOf({ now, end, step, fromNow });
  const solved = new Map<number, Solution>([[0, still]]);
  return {
    grid,
    tried: coarse(grid, STRETCHES, places),
    at: (index) => {
      const known = solved.get(index);
      if (known !== undefined) return known;
      const made = solveAt(grid.at(index));
      solved.set(index, made);
      return made;
    },
  };
}

/** A stretch of trouble shorter than this share of the whole way may be stepped over, where it is not one of the places. */
const STRETCHES = 16;

interface Line {
  readonly movable: Movable;
  readonly solution: Solution;
  /** The plan with the value moved the other way. */
  readonly others: () => readonly Solution[];
}

function stepTo(level: Level, trial: Trial, line: Line): Step | null {
  const { movable, solution } = line;
  const before = trial.at(0);
  const now = trial.grid.at(0);
  const stands = alreadyWrong(level, before, line);
  if (stands !== null) return stepOf(stands, now, now, stands.finding);
  // Where it hangs over the water already, going on is nothing new.
  const isIn = outOfWater(movable, before) === null;
  const wrongAt = (index: number) =>
    newlyWrong(before, trial.at(index), level) ?? (isIn ? outOfWater(movable, trial.at(index)) : null);
  const isWrong = (index: number) => wrongAt(index) !== null;
  let clear = 0;
  for (const index of trial.tried) {
    if (!isWrong(index)) {
      clear = index;
      continue;
    }
    const [last, first] = halve(clear, index, isWrong);
    const wrong = wrongAt(first);
    if (wrong === null) return null;
    return stepOf(wrong, trial.grid.at(last), trial.grid.at(first), findingOf(wrong.rule, solution));
  }
  return null;
}

function halve(clear: number, wrong: number, isWrong: (index: number) => boolean): readonly [number, number] {
  let [low, high] = [clear, wrong];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isWrong(middle)) high = middle;
    else low = middle;
  }
  return [low, high];
}

function stepOf({ rule, finding, overWater }: Wrong, last: number, at: number, before: Finding | null): Step {
  const severity = overWater ? 'danger' : finding.severity;
  return { last, at, rule, severity, finding, before, already: before === finding, overWater };
}

/** How many values are tried the other way, to tell whether what is wrong now has to do with this one. */
const TRIED_BACK = 8;

function theOtherWay({ back, write }: Movable, now: number, solve: Solve): readonly Solution[] {
  return Array.from({ length: TRIED_BACK }, (_, i) => solve(write(now + ((back - now) * (i + 1)) / TRIED_BACK)));
}

/** What is wrong as it stands and would not be with this value moved the other way. */
function alreadyWrong(level: Level, before: Solution, { movable, solution, others }: Line): Wrong | null {
  const { now, back } = movable;
  const there = firstWrong(before, level, (rule) => standing(solution, rule) >= level);
  if (there === null || now === null || back === now) return null;
  return firstWrong(
    solution,
    level,
    (rule) =>
      standing(before, rule) >= level &&
      others().some((other) => standing(other, rule) < level && other.verdicts[rule] !== 'not judged'),
  );
}
