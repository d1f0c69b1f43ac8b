/** What is offered against a broken rule of `rules/materials.ts`. */
import { valueAt } from '../../plan/editPlan.ts';
import type { Pascals } from '../../si.ts';
import type { Change, Solved } from '../../solution.ts';
import { findPipe } from '../../tables/pipes.ts';
import { isAssumed } from '../../rules/assumed.ts';
import { change, words } from '../../rules/fix.ts';
import { meets } from '../../rules/grace.ts';
import { worstPair } from '../../rules/metalPairs.ts';
import { ratingText, USUAL_RATINGS } from '../../rules/otherPipe.ts';
import { BARB_STANDARD } from '../../rules/materials.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const materialsFixes = {
  'PR-52'({ solved, facts }, { variant }) {
    if (variant === 'barbsDoNotFit') {
      const otherwise = words('pipeOrFittings', {});
      const made = sizedForBarbs(solved);
      return made === null ? [otherwise] : [made, otherwise];
    }
    const worst = worstPair(facts, !isAssumed(solved, 'string.fittings'));
    return worst === null ? [] : [worst.pair.fix(facts)];
  },

  'PR-65': () => [words('pieceBetween', {})],
} satisfies RuleFixes;

/** The pipe that insert fittings are made for, of the same rating: null where none is as strong, or nobody knows the rating. */
function sizedForBarbs({ facts, plan }: Solved) {
  const { nominalSize, rating, resin } = facts.dropPipe;
  if (rating === null) return null;
  const made = (asked: Pascals) =>
    findPipe({ material: 'PE', standard: BARB_STANDARD, size: nominalSize, rating: asked, resin });
  // A rating that this pipe does not come in goes up to the next that it does.
  const kept = [rating, ...USUAL_RATINGS.filter((usual) => meets(usual - rating, 'pressure'))].find(
    (each) => made(each)?.wallKnown === true,
  );
  if (kept === undefined) return null;
  const fits = made(kept);
  const ratioTyped = valueAt(plan, 'dropPipe.ratio') !== undefined;
  const ratingTyped = valueAt(plan, 'dropPipe.rating') !== undefined;
  const changes: Change[] = [{ path: 'dropPipe.standard', to: BARB_STANDARD }];
  // A ratio belongs to its standard: DR 11 there is SIDR 9 here.
  if (ratioTyped) changes.push({ path: 'dropPipe.ratio', to: fits?.wallClass });
  // Without its rating written beside it, a pipe of this standard has a wall that nobody knows.
  if (ratingTyped ? kept !== rating : !ratioTyped)
    changes.push({ path: 'dropPipe.rating', to: ratingText(plan, facts, kept) });
  // Galvanized fittings would break the rule again.
  if (facts.string.fittings === 'galvanized steel') changes.push({ path: 'string.fittings', to: 'stainless steel' });
  return change(facts, changes, 'pipeForBarbs', { rating: kept });
}
