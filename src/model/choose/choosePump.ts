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
import { levelAtNoFlow, pumpAtLevel } from '../figures/curves.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { provenYield } from '../figures/provenYield.ts';
import { changed } from '../fixes/fixesOf.ts';
import { worsened } from '../fixes/standing.ts';
import { draftOf } from '../place/draft.ts';
import { aimedAt, hangPump } from '../place/hangPump.ts';
import { nobodySaid, refusal } from '../place/refusal.ts';
import type { ToldFinding, WhyLeft } from '../place/told.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { Plan } from '../plan/schema.ts';
import { CUT_OFF_ABOVE_INTAKE, hasCutOff, probeAbove } from '../rules/cutOff.ts';
import { mayMove, statusAt, writtenInside } from '../rules/fix.ts';
import type { Sentence } from '../rules/rule.ts';
import { meets } from '../rules/grace.ts';
import { reachAt } from '../rules/tank.ts';
import { largerTank, leastRun, ratedFlow } from '../rules/tankCycle.ts';
import type { CubicMetres, Metres } from '../si.ts';
import type { Change, Finding, Solution } from '../solution.ts';
import { createSolver, type Solver } from '../solve.ts';
import { candidatesOf, type Candidate, type OwnPump } from './candidates.ts';
import {
  CUT_OUT_SPARE,
  fitOf,
  LEFT_OVER_INTAKE,
  MOST_FROM_STORE,
  turnOf,
  WANTED_SHARE,
  type Does,
  type Fit,
  type PumpFigures,
  type Why,
} from './fit.ts';
import { inTheWay, type InTheWay } from './inTheWay.ts';
import { inOrder } from './inOrder.ts';
import { outfit, partOf, type Outfitted, type Part } from './outfit.ts';

export type { Candidate, OwnPump, PumpName } from './candidates.ts';
export type { InTheWay } from './inTheWay.ts';
export type { Does, PumpFigures } from './fit.ts';
export type { Part } from './outfit.ts';

/** Why a row does the job or does not: its own figures, or what a rule finds. */
export type WhyRow = Why | Sentence<'finding', { readonly finding: ToldFinding }>;

export interface PumpRow extends Candidate {
  readonly does: Does;
  readonly why: WhyRow;
  readonly figures: PumpFigures;
  /** Where the plan hangs the pump, if the row is judged with it hung elsewhere; else null. */
  readonly movedFrom: Metres | null;
  /** The smallest usual tank for it; null where none is large enough, or none is needed. */
  readonly tank: CubicMetres | null;
  /** What choosing it would write, each choice by itself. */
  readonly parts: Readonly<Record<Part, readonly Change[]>>;
  /** The plan with all of that in it, and what it comes to: pipe, wire, depth and weight are read there. */
  readonly plan: Plan;
  readonly solution: Solution;
}

export type PumpTable =
  | { readonly kind: 'refused'; readonly why: WhyLeft }
  | {
      readonly kind: 'rows';
      /** The best first. */
      readonly rows: readonly PumpRow[];
      /** Where no row does: each thing of the plan that alone keeps them all from it. */
      readonly inTheWay: readonly InTheWay[];
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
  const trying = (each: Plan) => rowsFor(each, own, solver);
  const rows = trying(plan);
  const hindered = rows.every(({ does }) => does === 'no' || does === 'works') ? inTheWay(plan, rows, trying) : [];
  return { kind: 'rows', rows, inTheWay: hindered, assumed: restsOn(solution) };
}

function rowsFor(plan: Plan, own: readonly OwnPump[], solver: Solver): PumpRow[] {
  const candidates = candidatesOf(plan, solver.read(plan), [...(plan.ownPumps ?? []), ...own]);
  return inOrder(judged(candidates.map((candidate) => rowOf(plan, candidate, solver))));
}

/** Without the way to the tank no pump has a working point. */
function missingForAll({ facts }: Solution): WhyLeft | null {
  const { line, distance, rise } = facts.house;
  return line === null || distance === null || rise === null ? nobodySaid('wayToTank') : null;
}

const OF_THE_HOUSE = ['house.demand', 'house.cutIn', 'house.cutOut'];

function restsOn({ assumed }: Solution): string[] {
  return OF_THE_HOUSE.filter((wanted) => assumed.some(({ path }) => path === wanted));
}

type Solve = (plan: Plan) => Solution;

function rowOf(plan: Plan, candidate: Candidate, solver: Solver): PumpRow {
  const solve = solver.later;
  const bare = solve(changed(plan, candidate.changes));
  const first = lifts(bare) ? outfit(bare, solve) : { plan: bare.plan, solution: bare, changes: [] };
  const row = (done: Outfitted): PumpRow => {
    const parts = byPart(lastOf([...candidate.changes, ...done.changes]));
    return {
      ...candidate,
      ...withTank(done.solution, fitOf(done.solution, candidate.rated)),
      movedFrom: isMoved(plan, parts.depth) ? bare.facts.pump.setting : null,
      tank: tankFor(done.solution),
      parts,
      plan: done.plan,
      solution: done.solution,
    };
  };
  const stays = row(first);
  // A pump that would not do even with the water at rest hangs nowhere well, and one that does where it hangs stays.
  if (!reaches(bare) || (hangsWell(stays) && (isFit(stays) || !turnsOnDepth(stays)))) return stays;
  const draft = draftOf(first.plan);
  const aimed = ownChanges([...aimedAt(draft, first.solution, solver).draft.changes.values()]);
  const there = aimed.length === 0 ? stays : row(movedBy(first, aimed, solve));
  if (!isFit(there)) {
    if (isFit(stays)) return stays;
    const higher = higherFor(there, solve);
    const instead = higher === null ? there : row(movedBy(first, higher, solve));
    if (isFit(instead)) return instead;
    // What works where it hangs well is not hung elsewhere for no more; what does nowhere is told where it was aimed at.
    const inTurn = hangsWell(stays) ? [stays, there, instead] : [there, instead, stays];
    return inTurn.find(({ does }) => does === 'works') ?? there;
  }
  if (there === stays) return stays;
  if (worsened(first.solution, there.solution).length === 0) return there;
  // Something else is worse there: as near to it as nothing forbids.
  return row(movedBy(first, ownChanges([...hangPump(draft, solver).draft.changes.values()]), solve));
}

/** Rules on how deep the pump hangs. */
const OF_DEPTH: ReadonlySet<string> = new Set(['PR-01', 'PR-02', 'PR-03', 'PR-04', 'PR-05', 'PR-08', 'PR-17', 'PR-53']);

function isMoved(plan: Plan, depth: readonly Change[]): boolean {
  const typed = valueAt(plan, 'pump.setting');
  return typed !== undefined && depth.some(({ path, to }) => path === 'pump.setting' && to !== typed);
}

/** Nothing that is asked of it is lacking. */
function isFit({ does }: PumpRow): boolean {
  return does === 'yes' || does === 'depends';
}

/** At a depth that somebody said, with nothing against it. */
function hangsWell({ plan, solution }: PumpRow): boolean {
  if (valueAt(plan, 'pump.setting') === undefined) return false;
  return !solution.findings.some(
    ({ severity, rule, together }) =>
      severity !== 'note' && (OF_DEPTH.has(rule) || together.some((each) => OF_DEPTH.has(each.rule))),
  );
}

/**
 * Whether another depth may give it what it lacks. None is chosen for a pump's place in its range: depth comes from the
 * water. Where it is known how far that falls, it falls so wherever the pump hangs.
 */
function turnsOnDepth({ why, solution }: PumpRow): boolean {
  if (why.variant === 'overRange' || why.variant === 'underRange') return false;
  const { lowest, curves } = solution;
  const isKnown = (lowest?.by === 'level' || lowest?.by === 'dryLevel') && curves.atCutInMost?.outpumped !== true;
  return !(isKnown && (why.variant === 'lacksPressure' || why.variant === 'givesLittle'));
}

/**
 * A pump that was hung so deep that it does not do from there: just under the deepest water from which it does, with its
 * dry-run protection there; null where that is no place.
 */
function higherFor({ why, solution }: PumpRow, solve: Solve): Change[] | null {
  if (why.variant !== 'lacksPressure' && why.variant !== 'givesLittle') return null;
  const { facts, plan } = solution;
  if (!hasCutOff(solution) || !mayMove(facts, 'pump.setting')) return null;
  const rest = lowestStatic(facts) ?? 0;
  const turn = turnOf(solution, rest);
  // Protection by current lets the water fall to the intake.
  const depth = turn + (facts.pump.lowLevelCutOff === true ? 0 : CUT_OFF_ABOVE_INTAKE);
  if (!(depth > rest + LEFT_OVER_INTAKE) || !(depth < facts.pump.setting)) return null;
  const ends = { from: rest, to: depth };
  const setting = { path: 'pump.setting', to: writtenInside({ solved: solution, facts }, 'pump.setting', 'to', ends) };
  if (facts.pump.lowLevelCutOff === true || !mayMove(facts, 'pump.lowLevelCutOff')) return [setting];
  const hung = solve(changed(plan, [setting]));
  const probe = probeAbove(hung, hung.facts.pump.setting);
  return probe === null ? [setting] : [setting, probe];
}

/** Whether water arrives at all with the well at rest. */
function lifts({ facts }: Solution): boolean {
  const deepest = levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' });
  return deepest === null || deepest > (lowestStatic(facts) ?? 0);
}

/** Whether it does with the well at rest: reaches cut-out with what is to spare, and gives what is asked. */
function reaches(solution: Solution): boolean {
  const { facts } = solution;
  const { kind, cutOut, demand } = facts.house;
  const rest = lowestStatic(facts) ?? 0;
  if (!lifts(solution)) return false;
  const reach = reachAt(solution, rest);
  if (kind !== 'open tank' && reach !== null && reach < cutOut + CUT_OUT_SPARE) return false;
  const most = pumpAtLevel(facts, { end: 'least', tank: 'cutIn' }, rest);
  return demand === null || most === null || most.flow >= WANTED_SHARE * demand;
}

function movedBy(first: Outfitted, moves: readonly Change[], solve: Solve): Outfitted {
  if (moves.length === 0) return first;
  const after = outfit(solve(changed(first.plan, moves)), solve);
  return { ...after, changes: [...first.changes, ...moves, ...after.changes] };
}

/** What followed the depth and is no part of this choice stays as it is. */
function ownChanges(changes: readonly { readonly path: string; readonly to: unknown }[]): Change[] {
  return changes.filter(({ path }) => partOf(path) !== null).map(({ path, to }) => ({ path, to }));
}

/** One change a field: the last. */
function lastOf(changes: readonly Change[]): Change[] {
  return [...new Map(changes.map((change) => [change.path, change])).values()];
}

function byPart(changes: readonly Change[]): PumpRow['parts'] {
  const parts: Record<Part, Change[]> = { pump: [], depth: [], pipe: [], wire: [] };
  for (const change of changes) parts[partOf(change.path) ?? 'pump'].push(change);
  return parts;
}

/** @returns  null for an open tank, for variable speed, and where no usual tank is large enough */
function tankFor(solution: Solution): CubicMetres | null {
  const { facts } = solution;
  const { kind, control } = facts.house;
  const flow = ratedFlow(solution);
  if (kind === 'open tank' || control === 'variable speed' || flow === null) return null;
  return largerTank(solution, flow * leastRun(facts)) ?? null;
}

/** What does, but gives more in one run than any usual tank takes and than the plan's own does, rests on another tank. */
function withTank(solution: Solution, fit: Fit): Fit {
  const { facts, values } = solution;
  const { kind, control } = facts.house;
  const flow = ratedFlow(solution);
  if (fit.does === 'no' || fit.does === 'depends') return fit;
  if (kind === 'open tank' || control === 'variable speed' || flow === null) return fit;
  const water = flow * leastRun(facts);
  if (tankFor(solution) !== null || meets((values.tankDrawdown ?? 0) / water - 1, 'ratio')) return fit;
  return fit.does === 'works'
    ? { ...fit, does: 'no' }
    : { ...fit, does: 'depends', why: { variant: 'tanksTogether', numbers: { water } } };
}

/** What pump, pipe and wire decide whatever else the plan says. */
const DECIDED_HERE: ReadonlySet<string> = new Set([
  'PR-02',
  'PR-07',
  'PR-18',
  'PR-46',
  'PR-48',
  'PR-49',
  'PR-50',
  'PR-54',
  'PR-59',
]);
const TOO_NARROW = 'PR-47';
/** The tank is chosen after the pump, unless it stands. */
const TANK = 'PR-56';

/** The rows with what the rules find in them, which no figure of their own says, and what a smaller pump does as well. */
function judged(rows: readonly PumpRow[]): PumpRow[] {
  const fit = rows.filter(isFit);
  const able = fit.length > 0 ? fit : rows.filter(({ does }) => does === 'works');
  // What every able pump breaks no choice of a pump avoids.
  const common = new Set(brokenIn(able[0]).filter((rule) => able.every((row) => brokenIn(row).includes(rule))));
  return withoutFarOver(rows.map((row) => byRules(row, common)));
}

function byRules(row: PumpRow, common: ReadonlySet<string>): PumpRow {
  if (row.does === 'no') return row;
  const broken = avoidable(row, common);
  // What it lacks is told before what else is wrong.
  if (row.does === 'works') return broken.length > 0 ? { ...row, does: 'no' } : row;
  const sure = broken.find(({ turn }) => turn === null);
  if (sure !== undefined) return { ...row, does: 'no', why: told(sure) };
  const [open] = broken;
  return open === undefined || row.does === 'depends' ? row : { ...row, does: 'depends', why: told(open) };
}

/** In a well that gives less than the house wants, a pump named for far more than that where a smaller one serves. */
function withoutFarOver(rows: readonly PumpRow[]): PumpRow[] {
  const [smallest] = rows.filter(({ does }) => does !== 'no').toSorted((one, other) => one.rated - other.rated);
  if (smallest === undefined) return [...rows];
  return rows.map((row) => {
    if (row.does === 'no' || row.isPlans || !(row.rated > smallest.rated)) return row;
    const { facts } = row.solution;
    const { demand } = facts.house;
    const gives = provenYield(facts);
    if (demand === null || gives === null || meets(gives - demand, 'flow')) return row;
    if (meets(MOST_FROM_STORE * demand - row.rated, 'flow')) return row;
    return { ...row, does: 'no', why: { variant: 'farOver', numbers: { rated: row.rated, gives, house: demand } } };
  });
}

function brokenIn(row: PumpRow | undefined): string[] {
  return (row?.solution.findings ?? []).filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);
}

function avoidable({ solution }: PumpRow, common: ReadonlySet<string>): Finding[] {
  return solution.findings.filter((finding) => {
    const { rule, severity, partKind } = finding;
    if (severity === 'note') return false;
    if (rule === TANK) return statusAt(solution.facts, 'house.tank') !== 'to choose' && !common.has(rule);
    if (rule === TOO_NARROW) return partKind === 'dropPipe';
    return DECIDED_HERE.has(rule) || finding.together.some((one) => DECIDED_HERE.has(one.rule)) || !common.has(rule);
  });
}

function told({ rule, variant, numbers }: Finding): WhyRow {
  return { variant: 'finding', numbers: { finding: { rule, variant, numbers } } };
}
