/** What is offered against a broken rule of `rules/cooling.ts`. */
import { meets } from '../../rules/grace.ts';
import { change, changeOr, depthWritten, words, writtenInside } from '../../rules/fix.ts';
import { withItsProbe } from '../../rules/movePump.ts';
import type { Given } from '../../rules/rule.ts';
import { settingAboveInflow } from '../../rules/cooling.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const coolingFixes = {
  'PR-05': (given) => [raiseAboveInflow(given), words('fitShroud', {})],

  'PR-06': () => [words('shroudSpeedsUp', {})],
} satisfies RuleFixes;

/** Up past the lowest inflow, and not just to the deepest place that the other rules allow. */
function raiseAboveInflow(given: Given) {
  const { solved, facts, ranges } = given;
  const { firm } = ranges['pump.setting'];
  const most = settingAboveInflow(solved);
  const otherwise = words('fitShroud', {});
  if (firm === null || most === null) return otherwise;
  const ends = { from: firm.from, to: Math.min(firm.to, most) };
  if (!meets(ends.to - ends.from, 'length')) return otherwise;
  const written = writtenInside(given, 'pump.setting', 'to', ends);
  const to = depthWritten(given, 'pump.setting', written);
  const move = change(facts, [{ path: 'pump.setting', to: written }], 'raiseTo', { to, setting: 'pump.setting' });
  return changeOr(withItsProbe(given, move), otherwise);
}
