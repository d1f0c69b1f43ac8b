/** A bottom that is stopped by the pump: the one step that raises the pump and lets the bottom go where it was wanted. */
import { handlesOf } from '../../model/handles.ts';
import { moveHandle } from '../../model/move.ts';
import type { Plan } from '../../model/plan/schema.ts';
import type { Solution } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import { solve } from '../../model/solve.ts';
import type { Show } from '../../model/units.ts';
import { settingForMotorBottom } from '../../model/string/pumpDepths.ts';
import { CLEAR_OF_BOTTOM } from '../../model/rules/pumpDepth.ts';

export interface Offer {
  readonly label: string;
  readonly plan: Plan;
}

/** Null where even a raised pump leaves no room for that bottom. */
export function offerToRaisePump(solution: Solution, bottom: Metres, show: Show): Offer | null {
  const pump = handlesOf(solution).find(({ id }) => id === 'pumpSetting');
  if (pump === undefined) return null;
  const setting = Math.max(settingForMotorBottom(bottom - CLEAR_OF_BOTTOM, solution.facts.pump), pump.min);
  const raised = moveHandle(solution.plan, solution, 'pumpSetting', setting).plan;
  const moved = moveHandle(raised, solve(raised), 'wellBottom', bottom);
  return moved.blocked === null ? { label: `Raise pump to ${show.length(setting)}`, plan: moved.plan } : null;
}
