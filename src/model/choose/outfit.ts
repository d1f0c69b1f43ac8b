/** Pipe, wire and supply after a pump: what the rules ask for is taken, and nothing else of the plan is touched. */
import { changed } from '../fixes/fixesOf.ts';
import { pumpFromLevel } from '../figures/curves.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { candidatesFor } from '../fixes/candidatesFor.ts';
import { findingsBy, givenBy } from '../rules/index.ts';
import type { Plan } from '../plan/schema.ts';
import { mayMove } from '../rules/fix.ts';
import { ratingText, strongerPipe, widerDropPipe } from '../rules/otherPipe.ts';
import { dropPipeNeed } from '../rules/pipeNeeds.ts';
import { isPlastic } from '../rules/pipeRating.ts';
import type { Change, Finding, Solution, Solved } from '../solution.ts';
import { psi } from '../units.ts';

/** What the choice of one thing writes. */
export type Part = 'pump' | 'depth' | 'pipe' | 'wire';

/** Whose a field of the plan is; null for what no pump, pipe or wire decides. */
export function partOf(path: string): Part | null {
  if (path === 'pump.setting' || path === 'pump.lowLevelCutOff') return 'depth';
  if (path === 'pump.flowLimiter') return null;
  if (path.startsWith('pump.')) return 'pump';
  if (path.startsWith('dropPipe.') || JOINTS.has(path)) return 'pipe';
  return path.startsWith('wire.') ? 'wire' : null;
}

/** Pipe of more pressure is joined as such pipe is. */
const JOINTS: ReadonlySet<string> = new Set(['string.fittings', 'string.clampsPerJoint', 'string.clampScrew']);

/** Wire, supply, pipe: what each is judged by. */
const SUPPLY = 'PR-59';
const OUTFIT: ReadonlySet<string> = new Set([SUPPLY, 'PR-18', 'PR-47', 'PR-48', 'PR-49', 'PR-50']);

export interface Outfitted {
  readonly plan: Plan;
  readonly solution: Solution;
  readonly changes: readonly Change[];
}

/** A stronger pipe may ask for other joints, and a wire of another supply for another size: then it settles. */
const MOST_STEPS = 6;

/**
 * @param solution  of the plan with the pump that is tried
 * @param solved    solves another
 */
export function outfit(solution: Solution, solved: (plan: Plan) => Solution): Outfitted {
  let now: Outfitted = { plan: solution.plan, solution, changes: [] };
  for (let step = 0; step < MOST_STEPS; step++) {
    const changes = neededIn(now.solution);
    if (changes.length === 0) return now;
    const next = changed(now.plan, changes);
    now = { plan: next, solution: solved(next), changes: [...now.changes, ...changes] };
  }
  return now;
}

/** What every rule of the outfit asks for at once: one solution serves them all. */
function neededIn(solution: Solution): readonly Change[] {
  const unrated = ratedPipe(solution);
  if (unrated.length > 0) return unrated;
  const wrong = findingsBy(OUTFIT, solution).filter(({ severity }) => severity !== 'note');
  // Wire follows from what the motor runs on.
  const supply = wrong.filter(({ rule }) => rule === SUPPLY);
  const broken = supply.length > 0 ? supply : wrong;
  if (broken.length === 0) return wideEnough(solution);
  const given = givenBy(solution);
  const taken = new Map<string, Change>();
  for (const finding of broken) {
    for (const change of firstButton(finding, given))
      if (!taken.has(change.path)) taken.set(change.path, namedByDrive(change, solution));
  }
  return [...taken.values()];
}

/** A plastic pipe of which nobody said what it bears: the weakest usual one that bears this pump, where it may be chosen. */
function ratedPipe(solution: Solution): readonly Change[] {
  const { dropPipe } = solution.facts;
  if (dropPipe.rating !== null || !isPlastic(dropPipe) || !mayMove(solution.facts, 'dropPipe.rating')) return [];
  return strongerPipe(solution, 'dropPipe', dropPipeNeed(solution), [])?.changes ?? strongestPipe(solution);
}

/** The house wants so much; what the pump gives at cut-in may be more, and the drop pipe takes all of it. */
function wideEnough(solution: Solution): Change[] {
  const { facts } = solution;
  const given = pumpFromLevel(facts, { end: 'least', tank: 'cutIn' }, lowestStatic(facts) ?? 0);
  if (given === null || !(given.flow > (facts.house.demand ?? 0))) return [];
  const wider = widerDropPipe(solution, given.flow);
  return wider.every(({ path }) => mayMove(facts, path)) ? [...wider] : [];
}

/** How many wires a motor on a drive has its maker says: what was said of another motor is taken out, and nothing put in. */
function namedByDrive(change: Change, { facts }: Solution): Change {
  return change.path === 'pump.wires' && facts.house.control === 'variable speed'
    ? { ...change, to: undefined }
    : change;
}

function firstButton(finding: Finding, given: ReturnType<typeof givenBy>): readonly Change[] {
  for (const { changes } of candidatesFor(finding, given)) {
    if (changes?.every(({ path }) => isOutfit(path))) return changes;
    // The line to the house may be too narrow as well: that is another pipe.
    const own = finding.rule === 'PR-47' ? (changes ?? []).filter(({ path }) => partOf(path) === 'pipe') : [];
    if (own.length > 0) return own;
  }
  return STRENGTH.has(finding.rule) ? strongestPipe(given.solved) : [];
}

/** What the drop pipe bears. */
const STRENGTH: ReadonlySet<string> = new Set(['PR-18', 'PR-48']);

/** The strongest class of PE for insert fittings: dearer than the usual ones, and made for deep wells. Common practice, no source. */
export const STRONGEST = psi(315);

/** Where no usual class bears a strong pump; whether this one does, the next solution says. */
function strongestPipe({ plan, facts }: Solved): Change[] {
  const { material, standard, rating } = facts.dropPipe;
  const paths = ['dropPipe.rating', 'dropPipe.ratio'];
  if (material !== 'PE' || standard !== 'ASTM D2239' || !paths.every((path) => mayMove(facts, path))) return [];
  if (rating !== null && rating >= STRONGEST * 0.98) return [];
  const ratio = plan.dropPipe?.ratio === undefined ? [] : [{ path: 'dropPipe.ratio', to: undefined }];
  return [{ path: 'dropPipe.rating', to: ratingText(plan, facts, STRONGEST) }, ...ratio];
}

function isOutfit(path: string): boolean {
  const part = partOf(path);
  return part === 'pipe' || part === 'wire' || path === 'pump.wires' || path === 'pump.voltage';
}
