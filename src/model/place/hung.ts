import { screenTop } from '../rules/pumpDepth.ts';
import type { Solved } from '../solution.ts';
import type { Hung } from './told.ts';
import { restOf } from './waterInWell.ts';
import { motorBottomDepth } from '../string/pumpDepths.ts';

/** How the pump hangs in a plan whose level at rest is known. */
export function hungIn(solved: Solved): Hung {
  const { facts, lowest } = solved;
  const { setting } = facts.pump;
  const screen = screenTop(solved);
  const motorBottom = motorBottomDepth(facts.pump);
  const isLevel = lowest !== null && (lowest.by === 'level' || lowest.by === 'dryLevel');
  return {
    under: isLevel ? setting - lowest.depth : null,
    underRest: setting - restOf(solved),
    offBottom: facts.well.bottom - motorBottom,
    overScreen: screen === null ? null : screen - motorBottom,
  };
}
