/** What is offered against a broken rule of `rules/tankCycle.ts`. */
import { gallons, psi, writeQuantity } from '../../units.ts';
import { change, unitAt, words } from '../../rules/fix.ts';
import { exceeds } from '../../rules/grace.ts';
import { floorTo } from '../../rules/rounding.ts';
import { ratedFlow, largerTank, leastRun, usualPrecharge } from '../../rules/tankCycle.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const tankCycleFixes = {
  'PR-56'(given) {
    const { facts, solved } = given;
    // Air set too high leaves little water in any tank: that is set right first.
    if (exceeds(facts.house.precharge - facts.house.cutIn, 'pressure')) return [words('airFirst', {})];
    const otherwise = words('tanksInParallel', {});
    const flow = ratedFlow(given);
    const volume = flow === null ? undefined : largerTank(given, flow * leastRun(facts));
    if (volume === undefined) return [otherwise];
    const unit = unitAt(solved.plan, 'house.tank', facts.units === 'us' ? 'gal' : 'L', 'volume');
    const to = writeQuantity(volume, 'volume', unit, unit === 'gal' ? gallons(1) : 1e-3);
    return [change(facts, [{ path: 'house.tank', to }], 'largerTank', { volume }), otherwise];
  },

  'PR-57'({ solved, facts }) {
    const wanted = usualPrecharge(facts);
    const unit = unitAt(solved.plan, 'house.precharge', facts.units === 'us' ? 'psi' : 'bar', 'pressure');
    const step = unit === 'psi' ? psi(1) : unit === 'bar' ? 5000 : 1000;
    const set = floorTo(wanted, step, 1);
    const to = writeQuantity(set, 'pressure', unit, step);
    return [change(facts, [{ path: 'house.precharge', to }], 'setPrecharge', { precharge: set })];
  },
} satisfies RuleFixes;
