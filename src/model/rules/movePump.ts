import { withValue } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import { CUT_OFF_ABOVE_INTAKE, probeAbove, probeOf } from './cutOff.ts';
import { mayMove, moveIntoBand } from './fix.ts';
import type { SharedFix } from './fix.ts';
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
  return moved === null || !mayMove(facts, moved.path) ? move : { ...move, changes: [...move.changes, moved] };
}
