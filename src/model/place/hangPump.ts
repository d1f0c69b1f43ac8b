/** Hangs the pump where the trade would, with its dry-run protection. */
import { valueAt, withValue } from '../plan/editPlan.ts';
import { probeAbove } from '../rules/addCutOff.ts';
import { CUT_OFF_ABOVE_INTAKE, hasCutOff, probeAboveIntake } from '../rules/cutOff.ts';
import { depthWritten, mayMove, writtenInside } from '../rules/fix.ts';
import { meets } from '../rules/grace.ts';
import type { Metres } from '../si.ts';
import type { Solution } from '../solution.ts';
import { solvingAnew, type Solver } from '../solve.ts';
import { byOwnFix } from './byOwnFix.ts';
import { withChange } from './draft.ts';
import type { Draft } from './draft.ts';
import { late } from '../late.ts';
import { hungIn } from './hung.ts';
import { liftsFrom, pumpPlaces, standsWell, type PumpPlace, type PumpPlaces } from './pumpPlaces.ts';
import { missingForPump } from './refusal.ts';
import { standsStill } from './stands.ts';
import type { Fall, HungFrom, WhyLeft, Wrong } from './told.ts';
import { liftsBadly, tryPlace, type Tried } from './tryPlace.ts';
import { usualIn } from './usual.ts';

export interface Placed {
  readonly draft: Draft;
  /** Why it stays; null where it moved, or where what excludes each other is told by itself. */
  readonly left: WhyLeft | null;
}

const SETTING = 'pump.setting';
const PROBE = 'pump.lowLevelCutOff';

/** @param solver  what tries the places: one that remembers, where many pumps are hung */
export function hangPump(draft: Draft, solver: Solver = solvingAnew): Placed {
  const solution = solver.solve(draft.plan);
  const stays = standsStill(solution.facts, SETTING) ?? missingForPump(solution);
  if (stays !== null) return { draft, left: stays };
  const found = pumpPlaces(solution, draft.changes.has(SETTING));
  switch (found.kind) {
    case 'left':
      return orByOwnFix(
        { draft: found.guarded ? protectedHere(draft, solution, solver) : draft, left: found.why },
        draft,
        solution,
        solver,
      );
    case 'hang':
      return orByOwnFix(firstOf(found.places, { draft, solution, fall: 'known', solver }), draft, solution, solver);
    case 'deep':
      return orByOwnFix(
        asDeepAsNothingForbids(found, { draft, solution, fall: found.fall, solver }),
        draft,
        solution,
        solver,
      );
  }
}

/** What a finding's own button does with the pump is done here too, where placing found no better. */
function orByOwnFix(placed: Placed, draft: Draft, solution: Solution, solver: Solver): Placed {
  const { left } = placed;
  if (left === null || !FOUND_NO_PLACE.has(left.variant) || placed.draft !== draft) return placed;
  const fixed = byOwnFix(draft, solution, solver);
  if (fixed !== null) return { draft: fixed, left: null };
  const drawnDown = solution.curves.atCutInMost?.outpumped === true && hasCutOff(solution) && standsWell(solution);
  return drawnDown && left.variant === 'worseThere'
    ? { draft, left: { variant: 'hangsWell', numbers: { fall: 'pumpTakesMore', hung: hungIn(solution) } } }
    : placed;
}

const FOUND_NO_PLACE: ReadonlySet<WhyLeft['variant']> = new Set(['worseThere', 'noRoomForPump', 'cannotLift']);

/**
 * The place that is aimed at, not tried yet: for a pump that is only thought of. Where the pump stays, the draft as it is.
 *
 * @param solution  of the draft's plan, whose level at rest is known
 */
export function aimedAt(draft: Draft, solution: Solution, solver: Solver = solvingAnew): Placed {
  const stays = standsStill(solution.facts, SETTING) ?? missingForPump(solution);
  if (stays !== null) return { draft, left: stays };
  const found = pumpPlaces(solution, draft.changes.has(SETTING));
  if (found.kind === 'left')
    return { draft: found.guarded && !isProtected(solution) ? withProbe(draft, solver) : draft, left: found.why };
  const place = found.kind === 'deep' ? found.best : found.places[0];
  const hanging = { draft, solution, fall: found.kind === 'deep' ? found.fall : ('known' as const), solver };
  return place === undefined ? { draft, left: null } : { draft: draftAt(place, hanging).draft, left: null };
}

interface Hanging {
  readonly draft: Draft;
  readonly solution: Solution;
  readonly fall: Fall;
  readonly solver: Solver;
}

function firstOf(places: readonly PumpPlace[], hanging: Hanging): Placed {
  let left: WhyLeft | null = null;
  for (const place of places) {
    const { tried, depth } = tryAt(place, hanging);
    if (tried.kind === 'taken') return { draft: tried.draft, left: null };
    left ??= worseThere(depth, tried.wrong, hanging.solution);
  }
  return { draft: hanging.draft, left };
}

/**
 * The best place; where the pump does not lift well from there, or something else stands worse, the deepest at which
 * neither is so; else the deepest at which nothing stands worse.
 */
function asDeepAsNothingForbids(
  { best, least, fall }: Extract<PumpPlaces, { kind: 'deep' }>,
  hanging: Hanging,
): Placed {
  const { draft, solution, solver } = hanging;
  const { smallMove, hangStep } = usualIn(solution.facts.units);
  const { tried: atBest, depth } = tryAt(best, hanging);
  const tryTo = (to: Metres, wrong: Wrong | null = null) =>
    tryAt({ ends: { from: least, to }, near: 'to', from: endedBy(wrong, solution) }, hanging).tried;
  // Both searches halve the same stretch.
  const known = new Map<Metres, Tried>();
  const triedTo = (to: Metres): Tried => {
    const tried = known.get(to) ?? tryTo(to);
    known.set(to, tried);
    return tried;
  };
  for (const isGood of [liftsWell, isTaken]) {
    if (isGood(atBest)) return { draft: atBest.draft, left: null };
    if (!isGood(triedTo(least))) continue;
    let [good, bad, forbidden] = [least, best.ends.to, wrongWith(atBest)];
    while (bad - good > hangStep) {
      const middle = (good + bad) / 2;
      const tried = triedTo(middle);
      if (isGood(tried)) good = middle;
      else [bad, forbidden] = [middle, wrongWith(tried)];
    }
    if (forbidden !== null && !LIMITS_DEPTH.has(forbidden.finding.rule))
      return { draft, left: worseThere(depth, forbidden, solution) };
    const more = good - solution.facts.pump.setting;
    // Where it holds already a few feet more are not worth a move.
    if (least === solution.facts.pump.setting && more < smallMove)
      return {
        draft: protectedHere(draft, solution, solver),
        left: { variant: 'hangsWell', numbers: { fall, hung: hungIn(solution) } },
      };
    const found = tryTo(good, forbidden);
    if (isTaken(found)) return { draft: found.draft, left: null };
  }
  return { draft, left: worseThere(depth, wrongWith(atBest), solution) };
}

/** Water, bottom, inflows and lifting limit a depth. Wire, pipe and hands follow it, and where they stand it is told. */
const LIMITS_DEPTH: ReadonlySet<string> = new Set([
  'PR-01',
  'PR-02',
  'PR-03',
  'PR-04',
  'PR-05',
  'PR-07',
  'PR-08',
  'PR-17',
  'PR-46',
  'PR-53',
  'PR-54',
  'PR-55',
  'PR-60',
]);

/** Null where nothing is but that the pump does not lift from there. */
function wrongWith(tried: Tried): Wrong | null {
  if (!isTaken(tried)) return tried.wrong;
  const finding = liftsBadly(tried.solution);
  return finding === null ? null : { finding, hidden: false };
}

function endedBy(wrong: Wrong | null, solution: Solution): HungFrom {
  return wrong === null ? { by: 'lift', lifts: liftsFrom(solution) } : { by: 'worse', wrong };
}

function worseThere(to: Metres, wrong: Wrong | null, solution: Solution): WhyLeft {
  return wrong === null
    ? { variant: 'cannotLift', numbers: { from: to, lifts: liftsFrom(solution) } }
    : { variant: 'worseThere', numbers: { to, wrong } };
}

type Taken = Extract<Tried, { kind: 'taken' }>;
const isTaken = (tried: Tried): tried is Taken => tried.kind === 'taken';
const liftsWell = (tried: Tried): tried is Taken => isTaken(tried) && liftsBadly(tried.solution) === null;

/** The pump in a place, with its probe, solved against the plan as it is. */
function tryAt(place: PumpPlace, hanging: Hanging): { readonly tried: Tried; readonly depth: Metres } {
  const { draft, depth, isThere } = draftAt(place, hanging);
  return { tried: tryPlace(draft, hanging.solution, { lifting: !isThere, solver: hanging.solver }), depth };
}

/** The same, not solved. */
function draftAt(place: PumpPlace, { draft, solution, fall, solver }: Hanging) {
  const { facts } = solution;
  const text = writtenInside({ solved: solution, facts }, SETTING, place.near, place.ends);
  const depth = depthWritten({ solved: solution }, SETTING, text);
  const guarded = fall !== 'known';
  const isThere = text === valueAt(draft.plan, SETTING);
  const hung = isThere ? draft : hungAt(draft, text, place.from, fall, solver);
  const hasProbe = typeof facts.pump.lowLevelCutOff === 'number';
  return { draft: guarded || (hasProbe && !isThere) ? withProbe(hung, solver) : hung, depth, isThere };
}

function hungAt(draft: Draft, text: string, from: HungFrom, fall: Fall, { place }: Solver): Draft {
  // Told of the place that is taken in the end, and not of every one that is tried.
  const hung = late(() => hungIn(place(withValue(draft.plan, SETTING, text))));
  const numbers = {
    from,
    fall,
    get hung() {
      return hung();
    },
  };
  return withChange(draft, SETTING, text, ruleOf(from), { variant: 'hung', numbers });
}

function ruleOf(from: HungFrom): string | null {
  switch (from.by) {
    case 'water':
    case 'probe':
      return 'PR-02';
    case 'screen':
      return 'PR-03';
    case 'bottom':
      return 'PR-01';
    case 'deepest':
      return 'PR-02';
    case 'lift':
      return 'PR-46';
    case 'worse':
      return from.wrong.finding.rule;
    case 'end':
      return from.end.rule;
  }
}

/** The depth may stay, but something has to stop the pump before it runs dry, and not just at its intake. */
function protectedHere(draft: Draft, solution: Solution, solver: Solver): Draft {
  if (isProtected(solution)) return draft;
  const tried = tryPlace(withProbe(draft, solver), solution, { solver });
  return isTaken(tried) ? tried.draft : draft;
}

function isProtected(solution: Solution): boolean {
  const above = probeAboveIntake(solution.facts);
  return hasCutOff(solution) && (above === null || meets(above - CUT_OFF_ABOVE_INTAKE, 'length'));
}

/** A probe just over the intake; protection by current stays as it is, and what stands is not moved. */
function withProbe(draft: Draft, solver: Solver): Draft {
  const facts = solver.read(draft.plan);
  const { setting, lowLevelCutOff } = facts.pump;
  if (lowLevelCutOff === true || !mayMove(facts, PROBE)) return draft;
  const probe = probeAbove({ facts, plan: draft.plan }, setting);
  return probe === null
    ? withChange(draft, PROBE, true, 'PR-08', { variant: 'protectedByCurrent', numbers: {} })
    : withChange(draft, PROBE, probe.to, 'PR-08', {
        variant: 'probeOverIntake',
        numbers: { above: CUT_OFF_ABOVE_INTAKE },
      });
}
