/**
 * "Which pump": every usual rating and every pump kept by its points, tried in this well with the depth, pipe and wire
 * that it would need, the best first.
 *
 * The judge is the solver itself: each row is the plan with that pump in it, solved. A row does the job when it reaches
 * cut-out with 10 psi to spare, gives 1.1 times what the house wants, works between half and 1.3 times its rated flow and
 * leaves 10 ft over its intake; and when no rule warns of anything that another choice of pump, pipe or wire avoids. Of
 * those the smallest power comes first, then the rated flow nearest to what is asked. What lacks only what no rule asks of
 * a pump that hangs works all the same, and stands after them.
 */
import { nobodySaid, refusal } from '../place/refusal.ts';
import type { WhyLeft } from '../place/told.ts';
import type { Plan } from '../plan/schema.ts';
import { WARMEST } from '../rules/warmWater.ts';
import { lackingOnWay } from '../rules/wayToTank.ts';
import type { Celsius, CubicMetresPerSecond } from '../si.ts';
import type { Solution } from '../solution.ts';
import { createSolver, type Solver } from '../solve.ts';
import { parseQuantity } from '../units.ts';
import { asking } from './asking.ts';
import { judged, passing } from './byRules.ts';
import { candidatesOf, type OwnPump } from './candidates.ts';
import { hungRow } from './hungRow.ts';
import { inTheWay, type InTheWay } from './inTheWay.ts';
import { inOrder } from './inOrder.ts';
import type { PumpRow } from './pumpRow.ts';

export type { Ask } from './asks.ts';
export type { Candidate, OwnPump, PumpName } from './candidates.ts';
export type { InTheWay } from './inTheWay.ts';
export type { Does, PumpFigures } from './fit.ts';
export type { Part } from './outfit.ts';
export type { Told } from './toldOf.ts';
export type { PumpRow, Supply, WhyRow } from './pumpRow.ts';

export type PumpTable =
  | { readonly kind: 'refused'; readonly why: WhyLeft }
  | {
      readonly kind: 'rows';
      /** The best first. */
      readonly rows: readonly PumpRow[];
      /** Where no row does: each thing of the plan that alone keeps them all from it. */
      readonly inTheWay: readonly InTheWay[];
      /** It comes with the water, and asks for another make of pump. */
      readonly sand: boolean;
      /** Watering that was said, where nobody said what the house draws with it. */
      readonly watering: CubicMetresPerSecond | null;
      /** Water that is warmer than motors are made for; else null. */
      readonly warm: { readonly water: Celsius; readonly most: Celsius } | null;
      /** Choices that all of it rests on and nobody made. */
      readonly assumed: readonly string[];
    };

/**
 * @param plan  as typed
 * @param own   pumps kept elsewhere than in the plan
 */
export function choosePump(plan: Plan, own: readonly OwnPump[] = []): PumpTable {
  const solver = createSolver();
  const solution = solver.later(plan);
  const refused = refusal(solution) ?? missingForAll(solution);
  if (refused !== null) return { kind: 'refused', why: refused };
  const trying = (each: Plan, only?: ReadonlySet<string>) => rowsFor(each, own, solver, only);
  const rows = trying(plan);
  return {
    kind: 'rows',
    rows,
    inTheWay: inTheWay(plan, rows, trying),
    sand: solution.facts.water.sand === true,
    watering: wateringOf(solution),
    warm:
      solution.verdicts['PR-63'] === 'warning' ? { water: solution.facts.site.waterTemperature, most: WARMEST } : null,
    assumed: restsOn(solution),
  };
}

function rowsFor(plan: Plan, own: readonly OwnPump[], solver: Solver, only?: ReadonlySet<string>): PumpRow[] {
  const all = candidatesOf(plan, solver.read(plan), [...(plan.ownPumps ?? []), ...own]);
  const candidates = only === undefined ? all : all.filter(({ key }) => only.has(key));
  return asking(passing(inOrder(judged(candidates.map((candidate) => hungRow(plan, candidate, solver))))));
}

/** Without the way to the tank no pump has a working point. */
function missingForAll({ facts }: Solution): WhyLeft | null {
  const lacks = lackingOnWay(facts);
  return lacks.length > 0 ? nobodySaid('wayToTank', { lacks }) : null;
}

function wateringOf({ plan, assumed }: Solution): CubicMetresPerSecond | null {
  const typed = plan.house?.irrigation;
  if (typed === undefined || !assumed.some(({ path }) => path === 'house.demand')) return null;
  const read = parseQuantity(typed, 'flow');
  return read.ok && read.si > 0 ? read.si : null;
}

const OF_THE_HOUSE = ['house.demand', 'house.cutIn', 'house.cutOut'];

function restsOn({ assumed }: Solution): string[] {
  return OF_THE_HOUSE.filter((wanted) => assumed.some(({ path }) => path === wanted));
}
