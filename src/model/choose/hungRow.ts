/** A pump in the plan, hung where it does best there, with the pipe and the wire for that depth. */
import { levelAtNoFlow, pumpAtLevel } from '../figures/curves.ts';
import { lowestLevel, lowestStatic } from '../figures/lowestLevel.ts';
import { wantedOfPump } from '../figures/wantedOfPump.ts';
import { changed } from '../fixes/fixesOf.ts';
import { worsened } from '../fixes/standing.ts';
import { NO_TEAM_LOAD } from '../formulas/lifting.ts';
import { late } from '../late.ts';
import { draftOf } from '../place/draft.ts';
import { aimedAt, hangPump } from '../place/hangPump.ts';
import { pumpRoom } from '../place/pumpRoom.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { Plan } from '../plan/schema.ts';
import { probeAbove } from '../rules/addCutOff.ts';
import { CUT_OFF_ABOVE_INTAKE, hasCutOff } from '../rules/cutOff.ts';
import { mayMove, writtenInside } from '../rules/fix.ts';
import { meets } from '../rules/grace.ts';
import { verdictBy } from '../rules/index.ts';
import { reachAt } from '../rules/tank.ts';
import { largerTank, leastRun, ratedFlow } from '../rules/tankCycle.ts';
import type { CubicMetres, CubicMetresPerSecond } from '../si.ts';
import type { Change, Solution } from '../solution.ts';
import type { Solver } from '../solve.ts';
import { asksOf } from './asks.ts';
import { toldOf } from './toldOf.ts';
import { alsoTold, followsDepth } from './byRules.ts';
import type { Candidate } from './candidates.ts';
import {
  CUT_OUT_SPARE,
  fitOf,
  givesLess,
  LEFT_OVER_INTAKE,
  MOST_FROM_STORE,
  turnOf,
  WANTED_SHARE,
  type Fit,
} from './fit.ts';
import { forDrySeason, isLevelKnown } from './drySeason.ts';
import { outfit, partOf, type Outfitted, type Part } from './outfit.ts';
import { isFit, type PumpRow, type Supply } from './pumpRow.ts';

type Solve = (plan: Plan) => Solution;

/**
 * Where it lacks nothing but dry-run protection, with that: also of a pump whose depth stands.
 *
 * @param solver  one that remembers: every pump is hung at some depths
 */
export function hungRow(plan: Plan, candidate: Candidate, solver: Solver): PumpRow {
  const row = hungWithoutMore(plan, candidate, solver);
  const probe = row.why.variant === 'unguarded' ? protectionFor(row.solution) : null;
  if (probe === null) return row;
  const guarded = hungWithoutMore(changed(plan, [probe]), candidate, solver);
  return { ...guarded, parts: { ...guarded.parts, depth: lastOf([probe, ...guarded.parts.depth]) } };
}

/** Null where it stands as it is. */
function protectionFor({ facts, plan }: Solution): Change | null {
  if (!mayMove(facts, 'pump.lowLevelCutOff')) return null;
  return probeAbove({ facts, plan }, facts.pump.setting) ?? { path: 'pump.lowLevelCutOff', to: true };
}

function hungWithoutMore(plan: Plan, candidate: Candidate, solver: Solver): PumpRow {
  const solve = solver.later;
  const bare = solve(changed(plan, candidate.changes));
  const row = (done: Outfitted): PumpRow => {
    const parts = byPart(lastOf([...candidate.changes, ...done.changes]));
    const fit = withTank(done.solution, fitOf(done.solution, candidate.rated));
    return {
      ...candidate,
      ...fit,
      // What does not do by its figures is not judged at all.
      also: fit.does === 'no' ? [] : alsoTold(done.solution),
      asks: fit.does === 'no' ? [] : asksOf(done.solution, fit.figures.flow),
      told: fit.does === 'no' ? [] : toldOf(done.solution),
      supplyFrom: supplyFrom(plan, bare, parts.pump),
      needsRig: meets((done.solution.values.hangLoadAtRest ?? 0) - NO_TEAM_LOAD, 'force'),
      movedFrom: isMoved(plan, parts.depth) ? bare.facts.pump.setting : null,
      tank: tankFor(done.solution),
      parts,
      plan: done.plan,
      solution: done.solution,
    };
  };
  // Each is worked out where it is needed: most pumps hang in one place only.
  const first = late(() =>
    lifts(bare) ? outfit(bare, solve) : { plan: bare.plan, solution: bare, changes: [] as const },
  );
  const stays = late(() => row(first()));
  const hung = (moves: readonly Change[]) => row(movedTo(bare, moves, solve));
  const isTyped = valueAt(plan, 'pump.setting') !== undefined;
  // Between where it still reaches cut-out and a probe far under that it would run on against a shut house, and nothing
  // would stop it: it hangs with its probe where it does.
  const whileItShutsOff = (deep: PumpRow): PumpRow => {
    if (deep.why.variant !== 'dependsOnLevel') return deep;
    const moves = higherFor(deep.solution, solver);
    const higher = moves === null ? null : hung(moves);
    return higher !== null && isFit(higher) ? higher : deep;
  };
  // A pump that would not do even with the water at rest hangs nowhere well: what it lacks is told high in the well.
  if (!reaches(bare)) {
    const moves = isLevelKnown(bare) || (isTyped && hangsWell(stays())) ? null : higherFor(bare, solver);
    const told = moves === null ? stays() : hung(moves);
    if (told.does !== 'works') {
      const lower = lowerFor(told);
      const deeper = lower === null ? told : hung(lower);
      return deeper.does === 'works' ? deeper : told;
    }
  }
  // In a well that gives less than is asked a stronger pump hangs deeper, wherever the one before it hung.
  const isDrawn = leavesStore(bare, candidate.rated) && isFit(stays()) && isBorne(stays().solution);
  if (isTyped && !isDrawn && hangsWell(stays()) && (isFit(stays()) || !turnsOnDepth(stays()))) return stays();
  const here = isTyped ? first().solution : bare;
  const aimed = ownChanges([...aimedAt(draftOf(here.plan), here, solver).draft.changes.values()]);
  const aimedThere = aimed.length === 0 ? stays() : hung(forDrySeason(aimed, bare));
  const there = whileItShutsOff(aimedThere);
  if (!isFit(there)) {
    // A depth that nobody typed is no place, nor one under all that the pump lifts from: it is hung, or does not do.
    if (isTyped && turnsOnDepth(there) && isFit(stays()) && !stallsWhereItHangs(stays().solution)) return stays();
    const lacks = LACKS_WATER.has(there.why.variant) && hasCutOff(there.solution);
    const moves = lacks ? higherFor(there.solution, solver) : lowerFor(there);
    const instead = moves === null ? there : hung(moves);
    if (isFit(instead)) return instead;
    // What works where it hangs well is not hung elsewhere for no more; what does nowhere is told where it does best.
    const inTurn = isTyped && hangsWell(stays()) ? [stays(), there, instead] : [there, instead];
    return inTurn.find(({ does }) => does === 'works') ?? (isTyped && stays().does === 'works' ? stays() : instead);
  }
  if (aimed.length === 0 || isNoWorse(here, there.solution)) return there;
  // Something else is worse there: as near to it as nothing forbids.
  const nearTo = ownChanges([...hangPump(draftOf(first().plan), solver).draft.changes.values()]);
  if (nearTo.length === 0 && !isTyped) return there;
  const nearer = hung(nearTo);
  return isFit(nearer) ? nearer : there;
}

function isNoWorse(before: Solution, after: Solution): boolean {
  return worsened(before, after).every((rule) => followsDepth(rule, after));
}

/** Rules on how deep the pump hangs. */
const OF_DEPTH: ReadonlySet<string> = new Set(['PR-01', 'PR-02', 'PR-03', 'PR-04', 'PR-05', 'PR-08', 'PR-17', 'PR-53']);

function isMoved(plan: Plan, depth: readonly Change[]): boolean {
  const typed = valueAt(plan, 'pump.setting');
  return typed !== undefined && depth.some(({ path, to }) => path === 'pump.setting' && to !== typed);
}

/** What the motor was said to run on, where this one cannot. */
function supplyFrom(plan: Plan, bare: Solution, pump: readonly Change[]): Supply | null {
  const { voltage, wires } = bare.facts.pump;
  const isOther = (path: string) =>
    valueAt(plan, path) !== undefined && pump.some((change) => change.path === path && change.to !== undefined);
  const from = { voltage: isOther('pump.voltage') ? voltage : null, wires: isOther('pump.wires') ? wires : null };
  return from.voltage === null && from.wires === null ? null : from;
}

/** At a depth that somebody said, with nothing against it. */
function hangsWell({ plan, solution }: PumpRow): boolean {
  if (valueAt(plan, 'pump.setting') === undefined || stallsWhereItHangs(solution)) return false;
  return !solution.findings.some(
    ({ severity, rule, together }) =>
      severity !== 'note' && (OF_DEPTH.has(rule) || together.some((each) => OF_DEPTH.has(each.rule))),
  );
}

/** A pipe that bears the pump nowhere does so no better deeper. */
function isBorne(solution: Solution): boolean {
  const verdict = verdictBy('PR-18', solution);
  return verdict !== 'danger' && verdict !== 'warning';
}

/**
 * In a well that gives less than is asked: in the upper half of the water that the pump could draw. One that is named for
 * far more than is asked is none there, wherever it hangs.
 */
function leavesStore(bare: Solution, rated: CubicMetresPerSecond): boolean {
  const { facts } = bare;
  if (!givesLess(bare) || !mayMove(facts, 'pump.setting')) return false;
  if (!meets(MOST_FROM_STORE * (wantedOfPump(bare)?.flow ?? 0) - rated, 'flow')) return false;
  const lifts = levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' }) ?? Infinity;
  return facts.pump.setting < ((lowestStatic(facts) ?? 0) + Math.min(lifts, facts.well.bottom)) / 2;
}

/** Nobody knows how far the water falls, and the pump lifts none before its intake or probe ends that. */
function stallsWhereItHangs({ facts, lowest }: Solution): boolean {
  const deepest = levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' });
  return lowest === null && deepest !== null && !meets(deepest - lowestLevel(facts).depth, 'length');
}

/**
 * Whether another depth may give it what it lacks. None is chosen for a pump's place in its range: depth comes from the
 * water. Where it is known how far that falls, it falls so wherever the pump hangs.
 */
function turnsOnDepth({ why, solution }: PumpRow): boolean {
  if (why.variant === 'overRange' || why.variant === 'underRange') return false;
  return !(isLevelKnown(solution) && (why.variant === 'lacksPressure' || why.variant === 'givesLittle'));
}

/**
 * A pump that was hung so deep that it does not do from there: just under the deepest water from which it does, with its
 * dry-run protection there, and where it does from none, no higher than that leaves water over it. Null where that is no
 * place.
 */
function higherFor(deep: Solution, solver: Solver): Change[] | null {
  const { facts, plan } = deep;
  if (!mayMove(facts, 'pump.setting')) return null;
  const rest = lowestStatic(facts) ?? 0;
  const deepest = levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' });
  if (deepest === null || !(deepest > rest)) return null;
  // Protection by current lets the water fall to the intake.
  const under = facts.pump.lowLevelCutOff === true ? 0 : CUT_OFF_ABOVE_INTAKE;
  const depth = Math.max(turnOf(deep, rest), rest + LEFT_OVER_INTAKE) + under;
  if (!(depth < facts.pump.setting)) return null;
  const ends = { from: rest, to: depth };
  const setting = { path: 'pump.setting', to: writtenInside({ solved: deep, facts }, 'pump.setting', 'to', ends) };
  if (facts.pump.lowLevelCutOff === true || !mayMove(facts, 'pump.lowLevelCutOff')) return [setting];
  const hung = changed(plan, [setting]);
  const read = solver.read(hung);
  const probe = probeAbove({ facts: read, plan: hung }, read.pump.setting);
  return probe === null ? [setting] : [setting, probe];
}

/**
 * A pump that leaves too little water over itself where it hangs with room: as deep as that asks, if the rules let it.
 * Null where they do not, or where it lacks something else.
 */
function lowerFor({ why, solution }: PumpRow): Change[] | null {
  const { facts } = solution;
  if (why.variant !== 'takesTooMuch' || !mayMove(facts, 'pump.setting')) return null;
  const ends = {
    from: facts.pump.setting + why.numbers.asked - why.numbers.left,
    to: pumpRoom(solution).deepest.depth,
  };
  if (!meets(ends.to - ends.from, 'length')) return null;
  return [{ path: 'pump.setting', to: writtenInside({ solved: solution, facts }, 'pump.setting', 'from', ends) }];
}

const LACKS_WATER: ReadonlySet<string> = new Set(['lacksPressure', 'givesLittle', 'liftsNone']);

/** Whether water arrives at all with the well at rest. */
function lifts({ facts }: Solution): boolean {
  const deepest = levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' });
  return deepest === null || deepest > (lowestStatic(facts) ?? 0);
}

/** Whether it does with the well at rest: reaches cut-out with what is to spare, and gives what is asked. */
function reaches(solution: Solution): boolean {
  const { facts } = solution;
  const { kind, cutOut } = facts.house;
  const wanted = wantedOfPump(solution)?.flow ?? null;
  const rest = lowestStatic(facts) ?? 0;
  if (!lifts(solution)) return false;
  const reach = reachAt(solution, rest);
  if (kind !== 'open tank' && reach !== null && reach < cutOut + CUT_OUT_SPARE) return false;
  const most = pumpAtLevel(facts, { end: 'least', tank: 'cutIn' }, rest);
  return wanted === null || most === null || most.flow >= WANTED_SHARE * wanted;
}

/** Pipe and wire anew for where it then hangs: what another depth asked for is not kept. */
function movedTo(bare: Solution, moves: readonly Change[], solve: Solve): Outfitted {
  const after = outfit(solve(changed(bare.plan, moves)), solve);
  return { ...after, changes: [...moves, ...after.changes] };
}

/** What followed the depth and is no part of this choice stays as it is; pipe and wire are sized by themselves. */
function ownChanges(changes: readonly { readonly path: string; readonly to: unknown }[]): Change[] {
  return changes.filter(({ path }) => partOf(path) === 'depth').map(({ path, to }) => ({ path, to }));
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
