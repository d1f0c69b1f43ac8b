/** What is offered against a broken rule of `rules/clearance.ts`. */
import { meets } from '../../rules/grace.ts';
import { words } from '../../rules/fix.ts';
import { movePump } from '../../rules/movePump.ts';
import { widestPart, firstTighter, deepestAbove } from '../../rules/clearance.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const clearanceFixes = {
  'PR-17'(given) {
    const { solved, facts } = given;
    const otherwise = words(widestPart(solved) > facts.pump.diameter ? 'slimmerSleeve' : 'slimmerPump', {});
    const tighter = firstTighter(solved);
    if (tighter === undefined || meets(deepestAbove(tighter, solved) - facts.pump.setting, 'length'))
      return [otherwise];
    const move = movePump(given, 'PR-17', otherwise);
    return move.changes === null ? [otherwise] : [move, otherwise];
  },
} satisfies RuleFixes;
