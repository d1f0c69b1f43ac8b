/** Metals that touch under water, and pipe that does not fit its barbs. */
import { fittingGap, fittingMatch } from '../formulas/fittingMatch.ts';
import type { BarbInPipe } from '../formulas/fittingMatch.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { Change, Solved } from '../solution.ts';
import { findPipe } from '../tables/pipes.ts';
import { change, changeOr, words } from './fix.ts';
import { waterUnknown, worstPair } from './metalPairs.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';

export const materialsMatch = defineRule({
  number: 'PR-52',
  part: 'insertFitting',
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
        { measured: play, quantity: 'length', depth: pump.setting - pump.intakeToDischarge },
      );
    }
    const worst = worstPair(facts);
    if (worst !== null && worst.severity !== 'ok') return worst.pair.found(worst.severity, facts);
    if (worst !== null && waterUnknown(facts)) return missing('waterTest');
    return holds('goTogether', { fittings: string.fittings, material: dropPipe.material });
  },
  fixes({ solved, facts }, { variant }) {
    if (variant === 'barbsDoNotFit') return [sizedForBarbs(solved)];
    const worst = worstPair(facts);
    return worst === null ? [] : [worst.pair.fix(facts)];
  },
});

/** The insert fitting of that size in this pipe; null for pipe without barbs. */
function barbOf({ facts }: Solved): BarbInPipe | null {
  const { dropPipe } = facts;
  if (dropPipe.material !== 'PE') return null;
  const made = findPipe({ material: 'PE', standard: 'ASTM D2239', size: dropPipe.nominalSize });
  return made === null ? null : { pipeBore: dropPipe.insideDiameter, madeFor: made.insideDiameter };
}

function sizedForBarbs({ facts, plan }: Solved) {
  const { nominalSize, rating, resin } = facts.dropPipe;
  const fits = findPipe({ material: 'PE', standard: 'ASTM D2239', size: nominalSize, rating, resin });
  const otherwise = words('pipeOrFittings', {});
  const ratioTyped = valueAt(plan, 'dropPipe.ratio') !== undefined;
  if (fits === null || (ratioTyped && fits.wallClass === null)) return otherwise;
  const changes: Change[] = [{ path: 'dropPipe.standard', to: 'ASTM D2239' }];
  // A ratio belongs to its standard: DR 11 there is SIDR 9 here.
  if (ratioTyped) changes.push({ path: 'dropPipe.ratio', to: fits.wallClass });
  // Galvanized fittings would break the rule again.
  const also = facts.string.fittings === 'galvanized steel' ? [{ path: 'string.fittings', to: 'stainless steel' }] : [];
  return changeOr(change(facts, [...changes, ...also], 'pipeForBarbs', {}), otherwise);
}

export const materialRules = [materialsMatch] as const;
