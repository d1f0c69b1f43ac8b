/**
 * "Set the depths for me": hangs the pump and sets the adapter where the trade would, brings wire, pipe and valves after
 * them, says what it changed and why, and where nothing can meet all rules names what excludes each other.
 *
 * It aims inside of what the rules allow and not at an end of it, leaves what holds with room, and takes no place that
 * makes anything worse.
 */
import type { Plan } from '../plan/schema.ts';
import type { BandSetting, Solution } from '../solution.ts';
import { solve } from '../solve.ts';
import { caveatsOf } from './caveats.ts';
import type { Caveat } from './caveats.ts';
import { clashesOf } from './clashes.ts';
import { draftOf } from './draft.ts';
import type { Draft, PlacedChange } from './draft.ts';
import { follow } from './follow.ts';
import { hangPump } from './hangPump.ts';
import { hungIn } from './hung.ts';
import { leftAsIs } from './leftAsIs.ts';
import type { Left, Remaining } from './leftAsIs.ts';
import { nobodySaid, refusal } from './refusal.ts';
import { setAdapter } from './setAdapter.ts';
import type { Clash, WhyLeft } from './told.ts';

export type { Caveat, Clash, Left, PlacedChange, Remaining };

export interface Placement {
  readonly plan: Plan;
  readonly changes: readonly PlacedChange[];
  /** What stands, holds already, waits for a fact that nobody said, or would be worse elsewhere. */
  readonly left: readonly Left[];
  readonly clashes: readonly Clash[];
  /** What the depths rest on and nobody can vouch for. */
  readonly caveats: readonly Caveat[];
  /** Findings that no placing helps. */
  readonly remaining: readonly Remaining[];
}

export function setDepths(plan: Plan): Placement {
  const typed = solve(plan);
  const refused = refusal(typed);
  if (refused !== null) return placement(draftOf(plan), typed, whereRefused(typed, refused), false);
  let draft = draftOf(plan);
  let reasons: Reasons = {};
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = draft.plan;
    const pump = hangPump(draft);
    const adapter = setAdapter(pump.draft);
    ({ draft } = follow(adapter.draft));
    reasons = { 'pump.setting': pump.left, 'top.depth': adapter.left };
    if (draft.plan === before) break;
  }
  const solution = solve(draft.plan);
  return placement(toldAsHung(draft, solution), solution, reasons, true);
}

/** Again until nothing moves, since one may make room for the other. */
const MOST_ROUNDS = 5;

type Reasons = Readonly<Partial<Record<BandSetting, WhyLeft | null>>>;

/** The adapter waits for the frost where nobody said that, whatever the pump waits for. */
function whereRefused({ facts, values }: Solution, why: WhyLeft): Reasons {
  if (facts.top.kind !== 'pitless') return { 'pump.setting': why };
  const waits = why.variant === 'nobodySaid' && values.frostDepth === null;
  return { 'pump.setting': why, 'top.depth': waits ? nobodySaid('frostDepth') : why };
}

function placement(draft: Draft, solution: Solution, reasons: Reasons, placed: boolean): Placement {
  const clashes = placed ? clashesOf(solution) : [];
  // What excludes each other is told once.
  const alone = Object.entries(reasons).filter(([path]) => !clashes.some(({ setting }) => setting === path));
  const { left, remaining } = leftAsIs(draft, solution, Object.fromEntries(alone));
  const caveats = placed ? caveatsOf(solution) : [];
  return { plan: draft.plan, changes: inOrder(draft), left, clashes, caveats, remaining };
}

/** Depths first, then what followed them. */
function inOrder({ changes }: Draft): PlacedChange[] {
  const depths = ['pump.setting', 'pump.lowLevelCutOff', 'top.depth'].map((path) => changes.get(path));
  const rest = [...changes.values()].filter((change) => !depths.includes(change));
  return [...depths.filter((change) => change !== undefined), ...rest];
}

/** Pipe that followed the pump may have moved its water a little: what is said is how it hangs in the end. */
function toldAsHung({ typed, plan, changes }: Draft, solution: Solution): Draft {
  const told = new Map(changes);
  const change = told.get('pump.setting');
  if (change?.why.variant === 'hung') {
    const why = { ...change.why, numbers: { ...change.why.numbers, hung: hungIn(solution) } };
    told.set('pump.setting', { ...change, why });
  }
  return { typed, plan, changes: told };
}
