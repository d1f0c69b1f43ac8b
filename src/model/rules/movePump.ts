import { withValue } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import { feet } from '../units.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { probeAbove, probeWritten } from './addCutOff.ts';
import { CUT_OFF_ABOVE_INTAKE, probeOf } from './cutOff.ts';
import { change, depthWritten, mayMove, moveIntoBand, writtenInside } from './fix.ts';
import type { SharedFix } from './fix.ts';
import { meets } from './grace.ts';
import type { Fix, Given } from './rule.ts';

/** The pump into its band, and its probe with it. */
export function movePump<Instead extends Fix>(given: Given, rule: string, instead: Instead): SharedFix | Instead {
  return withItsProbe(given, moveIntoBand(given, rule, 'pump.setting', instead));
}

/** A probe moves with its pump: left where it was it would guard nothing, or keep the pump from its water. */
export function withItsProbe<Move extends Fix>(given: Given, move: Move): Move {
  const probe = probeOf(given.solved);
  const to = move.changes?.[0]?.to;
  if (move.changes === null || probe === null || typeof to !== 'string') return move;
  const { solved, facts } = given;
  const intake = readFacts(withValue(solved.plan, 'pump.setting', to)).facts.pump.setting;
  const moved = probeAbove(solved, intake, Math.max(facts.pump.setting - probe, CUT_OFF_ABOVE_INTAKE));
  if (moved === null || !mayMove(facts, moved.path)) return move;
  const numbers = { ...move.numbers, probe: probeWritten(moved, intake - CUT_OFF_ABOVE_INTAKE) };
  return { ...move, numbers, changes: [...move.changes, moved] };
}

/** With less water than this over the probe at rest the pump would stop again as soon as it starts. */
const LEAST_STORE = feet(10);

/** What the pump must come up from. One too weak for its depth does not: the store below it would be lost. */
const OF_THE_WELL: ReadonlySet<string | null> = new Set(['PR-01', 'PR-03']);

/**
 * Where no depth is both under the falling water and off what ends the pump's way down, the two go together all the same:
 * up to that end, with a probe over the intake that holds the water there.
 *
 * @returns  both changes as one; null where the pump need not come up, where a depth meets both, or where nobody knows
 *           that enough water stands over it at rest
 */
export function raiseWithProbe(given: Given) {
  const { solved, facts } = given;
  const range = given.ranges['pump.setting'];
  const rest = lowestStatic(facts);
  if (range.firm !== null || rest === null) return null;
  if (range.from.name.rule !== 'PR-02' || !OF_THE_WELL.has(range.to.name.rule)) return null;
  const ends = { from: Math.max(rest, 0) + LEAST_STORE, to: range.to.depth };
  if (!meets(ends.to - ends.from, 'length') || meets(ends.to - facts.pump.setting, 'length')) return null;
  const written = writtenInside(given, 'pump.setting', 'to', ends);
  const to = depthWritten(given, 'pump.setting', written);
  const probe = probeAbove(solved, to);
  if (probe === null) return null;
  return change(facts, [{ path: 'pump.setting', to: written }, probe], 'raiseWithProbe', {
    to,
    probe: probeWritten(probe, to - CUT_OFF_ABOVE_INTAKE),
  });
}
