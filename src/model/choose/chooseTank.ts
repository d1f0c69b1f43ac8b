/** "Which tank": every usual size with the plan's pump, the smallest that does first. */
import { changed } from '../fixes/fixesOf.ts';
import { dailyUseOf } from '../figures/dailyUse.ts';
import { mostStartsPerSecond } from '../formulas/tank.ts';
import type { ToldFinding } from '../place/told.ts';
import type { Plan } from '../plan/schema.ts';
import { isAssumed } from '../rules/assumed.ts';
import { meets } from '../rules/grace.ts';
import { isFlowing } from '../rules/highestStatic.ts';
import { unitAt } from '../rules/fix.ts';
import type { Sentence } from '../rules/rule.ts';
import { leastRun, ratedFlow, usualPrecharge, usualTanks } from '../rules/tankCycle.ts';
import type { CubicMetres, Pascals, Seconds } from '../si.ts';
import type { Change, Solution } from '../solution.ts';
import { createSolver } from '../solve.ts';
import { gallons, writeQuantity } from '../units.ts';

export type WhyTank =
  | Sentence<'runsLong', { run: Seconds; least: Seconds }>
  /** The plan’s own, short by no more than anybody changes a tank for. */
  | Sentence<'runsNearly', { run: Seconds; least: Seconds }>
  | Sentence<'runsShort', { run: Seconds; least: Seconds }>
  | Sentence<'givesNone', object>
  | Sentence<'finding', { readonly finding: ToldFinding }>;

export interface TankRow {
  /** "44 gal", as it would be typed. */
  readonly key: string;
  /** Total, shell and air. */
  readonly volume: CubicMetres;
  readonly isPlans: boolean;
  readonly does: 'yes' | 'depends' | 'no';
  readonly why: WhyTank;
  /** Between cut-out and cut-in. */
  readonly water: CubicMetres;
  /** At each start, no tap open. */
  readonly run: Seconds;
  /** At the worst steady draw, half of the pump's flow [1/h]. */
  readonly startsAnHour: number;
  /** All water drawn a little at a time; null while nobody said how many live there. */
  readonly startsADay: number | null;
  readonly changes: readonly Change[];
}

export type TankRefusal = 'flowing' | 'openTank' | 'variableSpeed' | 'pumpFirst' | 'powerFirst';

/** What stands between the pump's highest pressure and the tank. */
export type TankReach = Pick<Extract<TankTable, { kind: 'rows' }>, 'relief' | 'ratingAssumed' | 'isOver'>;

export type TankTable =
  | { readonly kind: 'refused'; readonly why: TankRefusal }
  | {
      readonly kind: 'rows';
      readonly rows: readonly TankRow[];
      /** Air to set in any of them, tank empty. */
      readonly precharge: Pascals;
      /** The highest that the pump can put on a tank, and what the plan's tank bears. */
      readonly reach: Pascals | null;
      readonly rating: Pascals;
      /** Nobody said it. */
      readonly ratingAssumed: boolean;
      /** The pump can put more on it than it bears. */
      readonly isOver: boolean;
      readonly relief: boolean | null;
    };

const HOUR: Seconds = 3600;

export function chooseTank(plan: Plan): TankTable {
  const solver = createSolver();
  const solution = solver.later(plan);
  const { facts, values } = solution;
  const { kind, control, tankRating, reliefValve } = facts.house;
  if (isFlowing(solution)) return { kind: 'refused', why: 'flowing' };
  if (kind === 'open tank') return { kind: 'refused', why: 'openTank' };
  if (control === 'variable speed') return { kind: 'refused', why: 'variableSpeed' };
  const flow = ratedFlow(solution);
  if (isAssumed(solution, 'pump.curve.flow') || flow === null || !(flow > 0))
    return { kind: 'refused', why: 'pumpFirst' };
  if (facts.pump.power === null) return { kind: 'refused', why: 'powerFirst' };
  const rows = sizesFor(solution).map((key) => rowOf(plan, key, flow, solver.later, carriesPeak(solution)));
  return {
    kind: 'rows',
    rows: rows.toSorted((one, other) => RANK[one.does] - RANK[other.does] || one.volume - other.volume),
    precharge: usualPrecharge(facts),
    reach: values.shutOffPressureAtTank,
    rating: tankRating,
    ratingAssumed: isAssumed(solution, 'house.tankRating'),
    isOver: (values.shutOffPressureAtTank ?? 0) > tankRating,
    relief: reliefValve,
  };
}

const RANK = { yes: 0, depends: 1, no: 2 } as const;

/** The usual sizes, and the plan's own where it is none of them. */
function sizesFor({ plan, facts }: Solution): string[] {
  const unit = unitAt(plan, 'house.tank', facts.units === 'us' ? 'gal' : 'L', 'volume');
  const step = unit === 'gal' ? gallons(1) : 1e-3;
  const usual = usualTanks(facts);
  const texts = usual.map((volume) => writeQuantity(volume, 'volume', unit, step));
  const { tank } = facts.house;
  const typed = plan.house?.tank;
  if (tank === null || typed === undefined) return texts;
  const same = usual.findIndex((volume) => Math.abs(volume - tank) <= 0.01 * volume);
  return same < 0 ? [...texts, typed] : texts.map((text, i) => (i === same ? typed : text));
}

function rowOf(plan: Plan, key: string, flow: number, solve: (plan: Plan) => Solution, carries: boolean): TankRow {
  const changes = [{ path: 'house.tank', to: key }];
  const isPlans = plan.house?.tank === key;
  const solution = isPlans ? solve(plan) : solve(changed(plan, changes));
  const { facts, values } = solution;
  const water = values.tankDrawdown ?? 0;
  const least = leastRun(facts);
  const run = water / flow;
  const use = dailyUseOf(plan.house);
  return {
    key,
    volume: facts.house.tank ?? 0,
    isPlans,
    ...judged(solution, run, least, carries, isPlans),
    water,
    run,
    startsAnHour: water > 0 ? mostStartsPerSecond(flow, water) * HOUR : Infinity,
    startsADay: use === null || !(water > 0) ? null : Math.ceil(use / water),
    changes: isPlans ? [] : changes,
  };
}

const PEAK = 'PR-55';

/** Whether well and tank together carry what the house draws at its peak. */
function carriesPeak({ verdicts }: Solution): boolean {
  return verdicts[PEAK] !== 'warning' && verdicts[PEAK] !== 'danger';
}

/**
 * The tank's own rules: how long it lets the pump run, what the pump can put on it, and its share of a peak.
 *
 * @param carries  the plan's own tank has its share
 */
function judged(
  solution: Solution,
  run: Seconds,
  least: Seconds,
  carries: boolean,
  isPlans: boolean,
): Pick<TankRow, 'does' | 'why'> {
  const { verdicts, findings } = solution;
  if (!(run > 0)) return { does: 'no', why: { variant: 'givesNone', numbers: {} } };
  const isShort = !meets(run - least, 'time');
  // A new tank is bought for the whole of it; the rule lets a tank be that is there.
  if (verdicts['PR-56'] === 'warning' || (isShort && !isPlans))
    return { does: 'no', why: { variant: 'runsShort', numbers: { run, least } } };
  const uncarried = carries && !carriesPeak(solution);
  const decides = uncarried ? PEAK : 'PR-44';
  const held = findings.find(({ rule, severity }) => rule === decides && severity !== 'note');
  if (held !== undefined) {
    const { rule, variant, numbers, severity } = held;
    const why = { variant: 'finding', numbers: { finding: { rule, variant, numbers } } } as const;
    return { does: severity === 'danger' || uncarried ? 'no' : 'depends', why };
  }
  return { does: 'yes', why: { variant: isShort ? 'runsNearly' : 'runsLong', numbers: { run, least } } };
}
