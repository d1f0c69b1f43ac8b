/** What is offered against a broken rule of `rules/shortage.ts`. */
import { lowestLevel } from '../../figures/lowestLevel.ts';
import { tankForPeak } from '../../figures/wantedOfPump.ts';
import type { Solved } from '../../solution.ts';
import { gallons, writeQuantity } from '../../units.ts';
import { addCutOff } from '../../rules/addCutOff.ts';
import { drawsTo, isGuarded } from '../../rules/cutOff.ts';
import { change, unitAt, words } from '../../rules/fix.ts';
import { ceilTo } from '../../rules/rounding.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const shortageFixes = {
  'PR-55'({ solved }, { variant }) {
    if (variant === 'carriedUnguarded') return [addCutOff(solved)];
    if (variant === 'carried' || variant === 'tankCarries') return [words('fillsAgain', {})];
    if (solved.facts.house.kind === 'open tank') return withOpenTank(solved, variant === 'dayNotMet');
    return isGuarded(solved) || !drawsTo(solved, lowestLevel(solved.facts).depth)
      ? [words('storage', {})]
      : [words('storageAndCutOff', {})];
  },
} satisfies RuleFixes;

/** More is stored in the tank that is there; what a day lacks no tank makes up for. */
function withOpenTank(solved: Solved, dayNotMet: boolean) {
  const { facts, plan } = solved;
  if (dayNotMet) return [words('lessADay', {})];
  const least = tankForPeak(solved);
  if (least === null || facts.house.tank === null) return [words('sayTank', {})];
  const unit = unitAt(plan, 'house.tank', facts.units === 'us' ? 'gal' : 'L', 'volume');
  const step = unit === 'gal' ? gallons(10) : 0.05;
  const volume = ceilTo(least, step, step * 1e-6);
  const to = writeQuantity(volume, 'volume', unit, step);
  return [change(facts, [{ path: 'house.tank', to }], 'largerOpenTank', { volume })];
}
