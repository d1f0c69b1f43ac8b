/** Sets the pitless adapter where the trade would. */
import { valueAt } from '../plan/editPlan.ts';
import { depthWritten, writtenInside } from '../rules/fix.ts';
import { solve } from '../solve.ts';
import { adapterPlaces } from './adapterPlaces.ts';
import { withChange } from './draft.ts';
import type { Draft } from './draft.ts';
import type { Placed } from './hangPump.ts';
import { standsStill } from './stands.ts';
import type { WhyLeft } from './told.ts';
import { tryPlace } from './tryPlace.ts';

const DEPTH = 'top.depth';

export function setAdapter(draft: Draft): Placed {
  const solved = solve(draft.plan);
  const found = adapterPlaces(solved);
  if (found === null) return { draft, left: null };
  const stays = standsStill(solved.facts, DEPTH);
  if (stays !== null) return { draft, left: stays };
  if (found.kind === 'left') return { draft, left: found.why };
  let left: WhyLeft | null = null;
  for (const ends of found.places) {
    const text = writtenInside({ solved, facts: solved.facts }, DEPTH, 'from', ends);
    if (text === valueAt(draft.plan, DEPTH)) continue;
    const depth = depthWritten({ solved }, DEPTH, text);
    const tried = tryPlace(withChange(draft, DEPTH, text, found.rule, found.why(depth)), solved);
    if (tried.kind === 'taken') return { draft: tried.draft, left: null };
    if (tried.wrong !== null) left ??= { variant: 'worseThere', numbers: { to: depth, wrong: tried.wrong } };
  }
  return { draft, left };
}
