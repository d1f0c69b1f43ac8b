/**
 * From a plan to everything that is known about it. Pure and total: any valid plan gives finite figures and findings,
 * never a throw; the impossible (water above ground, pump below the bottom, pump stronger than the well) is a finding.
 */
import { boreOf, boreRadiusAt } from './bore.ts';
import type { Facts, FactsReading } from './facts.ts';
import { curvesOf, systemOf } from './figures/curves.ts';
import { levelsOf } from './figures/levels.ts';
import { lowestPumping } from './figures/lowestPumping.ts';
import { frostDepthOf } from './figures/frostDepth.ts';
import { valuesOf } from './figures/values.ts';
import { coneDepths } from './formulas/drawdown.ts';
import { readFacts } from './plan/readFacts.ts';
import type { Plan } from './plan/schema.ts';
import { createRecall, makeAnew } from './recall.ts';
import type { Recall } from './recall.ts';
import { JudgedLater } from './judgedLater.ts';
import { judge } from './rules/index.ts';
import type { BoreStretch, ConePoint, Solution, Solved } from './solution.ts';
import { placeString } from './string/placeString.ts';
import { suspensionDepth } from './string/topDepths.ts';

export function solve(plan: Plan): Solution {
  return solveWith(makeAnew, plan);
}

export interface Solver {
  readonly solve: typeof solve;
  /** The same, judged when the judgement is first asked for: for one of many that may be passed over by its figures. */
  readonly later: typeof solve;
  /** Everything but the judgement, which is `judge` of this: what moves at once under a pointer. */
  readonly place: (plan: Plan) => Solved;
  /** Its facts alone. */
  readonly read: (plan: Plan) => Facts;
}

/** Remembers nothing from one plan to the next. */
export const solvingAnew: Solver = {
  solve,
  later: (plan) => new JudgedLater(placeWith(makeAnew, plan)),
  place: (plan) => placeWith(makeAnew, plan),
  read: (plan) => readFacts(plan).facts,
};

/** For a plan that is solved again and again with a little changed: the same solution, sooner. */
export function createSolver(): Solver {
  const recall = createRecall();
  return {
    solve: (plan) => solveWith(recall, plan),
    later: (plan) => new JudgedLater(placeWith(recall, plan)),
    place: (plan) => placeWith(recall, plan),
    read: (plan) => readFacts(plan, recall).facts,
  };
}

function solveWith(recall: Recall, plan: Plan): Solution {
  const solved = placeWith(recall, plan);
  return { ...solved, ...judge(solved) };
}

function placeWith(recall: Recall, plan: Plan): Solved {
  return solveFacts(plan, readFacts(plan, recall), recall);
}

/** Everything but the judgement. */
export function solveFacts(plan: Plan, reading: FactsReading, recall: Recall = makeAnew): Solved {
  const { facts } = reading;
  const { site, well, water, house, units } = facts;
  const levels = recall('levels', [water, house, well], () => levelsOf(facts));
  const bore = recall('bore', [well], () => boreOf(facts));
  const suspension = suspensionDepth(facts);
  const system = systemOf(facts, suspension);
  const { band, ...curves } = curvesOf(facts, system);
  const frost = recall('frost', [site, units], () => frostDepthOf(facts));
  const lowest = lowestPumping(facts, curves);
  const { run, parts } = placeString(facts, (depth) => boreRadiusAt(bore, depth));
  return {
    plan,
    facts,
    assumed: frost.assumed ? [...reading.assumed, frost.assumed] : reading.assumed,
    unknown: reading.unknown,
    notUsed: reading.notUsed,
    values: valuesOf({ facts, levels, bore, suspension, run, system, curves, band, lowest, frostDepth: frost.depth }),
    levels,
    bore,
    get parts() {
      return parts();
    },
    cone: recall('cone', [water, house, levels, bore], () => coneOf(facts, levels.drawdown, bore)),
    curves,
    lowest,
  };
}

/** Distances at which the cone of depression is told, as multiples of the hole's radius: 1 to 10,000, evenly by logarithm. */
const CONE_STEPS = 24;
const CONE_REACH = 4;

function coneOf(facts: Facts, drawdown: number | null, bore: readonly BoreStretch[]): readonly ConePoint[] | null {
  const { staticLevel, pumping } = facts.water;
  const { demand } = facts.house;
  if (staticLevel === null || pumping === null || demand === null || drawdown === null || !(drawdown > 0)) return null;
  const wellRadius = boreRadiusAt(bore, staticLevel + drawdown);
  const distances = Array.from(
    { length: CONE_STEPS + 1 },
    (_, i) => wellRadius * 10 ** ((CONE_REACH * i) / CONE_STEPS),
  );
  return coneDepths({ staticLevel, drawdown, flow: demand, pumping, wellRadius, distances });
}
