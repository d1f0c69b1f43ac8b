/** What is offered against a broken rule of `rules/yield.ts`. */
import { wantedOfPump } from '../../figures/wantedOfPump.ts';
import type { CubicMetresPerSecond } from '../../si.ts';
import type { Solved } from '../../solution.ts';
import { gpm, writeQuantity } from '../../units.ts';
import { addCutOff, probeAbove, probeWritten } from '../../rules/addCutOff.ts';
import { CUT_OFF_ABOVE_INTAKE, hasCutOff } from '../../rules/cutOff.ts';
import { change, changeOr, unitAt, words } from '../../rules/fix.ts';
import { meets } from '../../rules/grace.ts';
import { openYield } from '../../rules/openFacts.ts';
import { floorTo } from '../../rules/rounding.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const yieldFixes = {
  'PR-07': ({ solved }, { severity, limit }) =>
    severity === 'note' || limit === null
      ? [words('checkTheGuard', {})]
      : [...limitFlow(solved, openYield(solved)?.bad ?? limit), addCutOff(solved), words('lessFlow', {})],

  'PR-08'({ solved, facts }, { variant }) {
    if (variant !== 'probeTooLow') return [addCutOff(solved)];
    const probe = probeAbove(solved, facts.pump.setting);
    const otherwise = words('hangProbeHigher', {});
    if (probe === null) return [otherwise];
    const depth = probeWritten(probe, facts.pump.setting - CUT_OFF_ABOVE_INTAKE);
    return [changeOr(change(facts, [probe], 'setProbe', { depth }), otherwise)];
  },

  'PR-53': ({ solved }) =>
    hasCutOff(solved) ? [words('runTest', {})] : [addCutOff(solved), words('runTestAndGuard', {})],
} satisfies RuleFixes;

/** A valve for the yield where the house gets along with it: else the bore's storage has to be used. */
function limitFlow(solved: Solved, gives: CubicMetresPerSecond) {
  const { facts, plan } = solved;
  const wanted = wantedOfPump(solved)?.flow ?? null;
  const unit = unitAt(plan, 'house.demand', facts.units === 'us' ? 'gpm' : 'L/min', 'flow');
  const step = unit === 'gpm' || unit === 'gph' ? gpm(0.5) : unit === 'L/s' ? 1e-5 : 1 / 60000;
  const held = floorTo(gives, step, step * 1e-6);
  if (held <= 0 || (wanted !== null && !meets(held - wanted, 'flow'))) return [];
  const to = writeQuantity(held, 'flow', unit, step);
  return [change(facts, [{ path: 'pump.flowLimiter', to }], 'addFlowLimiter', { flow: held })];
}
