/** Metals that touch under water, and pipe that does not fit its barbs. */
import { fittingGap, fittingMatch } from '../formulas/fittingMatch.ts';
import type { BarbInPipe } from '../formulas/fittingMatch.ts';
import type { Solved } from '../solution.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import { findPipe } from '../tables/pipes.ts';
import { isAssumed } from './assumed.ts';
import { waterUnknown, worstPair } from './metalPairs.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { threadsMatch } from './threads.ts';

/** The pipe that insert fittings are made for. */
export const BARB_STANDARD = 'ASTM D2239';

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
});

/** The insert fitting of that size in this pipe; null for pipe without barbs. */
function barbOf({ facts }: Solved): BarbInPipe | null {
  const { dropPipe } = facts;
  if (!isBarbed(dropPipe)) return null;
  const made = findPipe({ material: 'PE', standard: BARB_STANDARD, size: dropPipe.nominalSize });
  return made === null ? null : { pipeBore: dropPipe.insideDiameter, madeFor: made.insideDiameter };
}

export const materialRules = [materialsMatch, threadsMatch] as const;
