/** Metals that touch under water, and pipe that does not fit its barbs. */
import { fittingGap, fittingMatch } from '../formulas/fittingMatch.ts';
import type { BarbInPipe } from '../formulas/fittingMatch.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { Pascals } from '../si.ts';
import type { Change, Solved } from '../solution.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import { findPipe } from '../tables/pipes.ts';
import { isAssumed } from './assumed.ts';
import { change, words } from './fix.ts';
import { meets } from './grace.ts';
import { waterUnknown, worstPair } from './metalPairs.ts';
import { ratingText, USUAL_RATINGS } from './otherPipe.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { threadsMatch } from './threads.ts';

/** The pipe that insert fittings are made for. */
const BARB_STANDARD = 'ASTM D2239';

export const materialsMatch = defineRule({
  number: 'PR-52',
  part: 'insertFitting',
  restsOn: ['dropPipe.standard', 'string.fittings'],
  judge({ solved, facts }) {
    const { dropPipe, pump, string } = facts;
    const barb = barbOf(solved);
    const sits = barb === null ? 'match' : fittingMatch(barb);
    if (barb !== null && sits !== 'match') {
      const play = fittingGap(barb);
      return breaks(
        'barbsDoNotFit',
        'warning',
        { play, sits, standard: dropPipe.standard },
        { measured: play, quantity: 'length', depth: dischargeDepth(pump) },
      );
    }
    const fittingsSaid = !isAssumed(solved, 'string.fittings');
    const worst = worstPair(facts, fittingsSaid);
    if (worst !== null && worst.severity !== 'ok') return worst.pair.found(worst.severity, facts);
    if (worst !== null && waterUnknown(facts)) return missing('waterTest');
    const { fittings } = string;
    if (fittingsSaid) {
      const numbers = { fittings, material: dropPipe.material };
      return worst === null ? holds('noneTouch', numbers) : holds('goTogether', numbers);
    }
    // Of fittings that nobody chose only their size can be told, beside a pipe that somebody chose.
    const standardSaid = !isAssumed(solved, 'dropPipe.standard');
    return barb !== null && standardSaid ? holds('barbsFit', { standard: dropPipe.standard }) : doesNotApply;
  },
  fixes({ solved, facts }, { variant }) {
    if (variant === 'barbsDoNotFit') {
      const otherwise = words('pipeOrFittings', {});
      const made = sizedForBarbs(solved);
      return made === null ? [otherwise] : [made, otherwise];
    }
    const worst = worstPair(facts, !isAssumed(solved, 'string.fittings'));
    return worst === null ? [] : [worst.pair.fix(facts)];
  },
});

/** The insert fitting of that size in this pipe; null for pipe without barbs. */
function barbOf({ facts }: Solved): BarbInPipe | null {
  const { dropPipe } = facts;
  if (!isBarbed(dropPipe)) return null;
  const made = findPipe({ material: 'PE', standard: BARB_STANDARD, size: dropPipe.nominalSize });
  return made === null ? null : { pipeBore: dropPipe.insideDiameter, madeFor: made.insideDiameter };
}

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

export const materialRules = [materialsMatch, threadsMatch] as const;
