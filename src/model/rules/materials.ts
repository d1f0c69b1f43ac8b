/** Metals that touch under water, and pipe that does not fit its barbs. */
import { fittingGap, fittingMatch } from '../formulas/fittingMatch.ts';
import type { BarbInPipe } from '../formulas/fittingMatch.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { Facts } from '../facts.ts';
import type { Change, PartKind, Solved } from '../solution.ts';
import { findPipe } from '../tables/pipes.ts';
import { change, words } from './mend.ts';
import { waterOf, waterUnknown, worstPair } from './metalPairs.ts';
import type { MetalPair } from './metalPairs.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import type { Mend } from './rule.ts';
import { capital } from './say.ts';

export const materialsMatch = defineRule({
  number: 'PR-52',
  part: 'insertFitting',
  broken: 'Unlike metals touch under water',
  holds: 'Metals and pipe sizes go together',
  source: 'ASTM G82 galvanic series; MIL-STD-1250A, 5.6 (areas); barbs: ASTM D2239 and D2609, limits of fit: no source',
  why: 'Of two unlike metals under water one eats the other; a barb of another system slips.',
  judge({ solved, facts, show }) {
    const barb = barbOf(solved);
    const depth = facts.pump.setting - facts.pump.intakeToDischarge;
    const match = barb === null ? 'match' : fittingMatch(barb);
    if (barb !== null && match !== 'match') {
      const gap = fittingGap(barb);
      return breaks({
        severity: 'warning',
        measured: gap,
        quantity: 'length',
        depth,
        title: 'The fittings do not match the pipe',
        amount: `${show.bore(Math.abs(gap))} ${gap > 0 ? 'loose' : 'tight'}`,
        message: `Insert fittings are made for ASTM D2239 pipe; in ${facts.dropPipe.standard} they ${SITS[match]}.`,
        mend: sizedForBarbs(solved),
      });
    }
    const worst = worstPair(facts);
    if (worst !== null && worst.severity !== 'ok') {
      const { pair, severity } = worst;
      const amount = waterOf(facts) === 'aggressive' ? 'in this water' : 'unlike metals';
      const at = standsAt(worst.pair, facts);
      return breaks({
        severity,
        ...at,
        depth,
        title: pair.title,
        amount,
        message: pair.message,
        mend: pair.mend(facts),
      });
    }
    if (worst !== null && waterUnknown(facts)) return missing('the water’s pH and conductivity');
    return holds(
      'they match',
      `${capital(facts.string.fittings)} fittings and ${facts.dropPipe.material} pipe go together in this water.`,
    );
  },
});

/** Rigid pipe has no barb: its thread on the pump's nipple stands for the joint. */
function standsAt({ at }: MetalPair, { dropPipe }: Facts): { part?: string; partKind?: PartKind } {
  if (at === 'motor') return { part: 'motor', partKind: 'motor' };
  return dropPipe.material === 'PE' ? {} : { part: 'nipple', partKind: 'nipple' };
}

const SITS = { loose: 'sit loose', forced: 'must be forced', 'does not enter': 'do not go in' } as const;

/** The insert fitting of that size in this pipe; null for pipe without barbs. */
function barbOf({ facts }: Solved): BarbInPipe | null {
  const { dropPipe } = facts;
  if (dropPipe.material !== 'PE') return null;
  const made = findPipe({ material: 'PE', standard: 'ASTM D2239', size: dropPipe.nominalSize });
  return made === null ? null : { pipeBore: dropPipe.insideDiameter, madeFor: made.insideDiameter };
}

function sizedForBarbs({ facts, plan }: Solved): Mend {
  const { nominalSize, rating, resin } = facts.dropPipe;
  const fits = findPipe({ material: 'PE', standard: 'ASTM D2239', size: nominalSize, rating, resin });
  const otherwise = 'Take ASTM D2239 pipe, or fittings made for this pipe.';
  const ratioTyped = valueAt(plan, 'dropPipe.ratio') !== undefined;
  if (fits === null || (ratioTyped && fits.wallClass === null)) return words(otherwise);
  const changes: Change[] = [{ path: 'dropPipe.standard', to: 'ASTM D2239' }];
  // A ratio belongs to its standard: DR 11 there is SIDR 9 here.
  if (ratioTyped) changes.push({ path: 'dropPipe.ratio', to: fits.wallClass });
  // Galvanized fittings would break the rule again.
  const also = facts.string.fittings === 'galvanized steel' ? [{ path: 'string.fittings', to: 'stainless steel' }] : [];
  return change(facts, [...changes, ...also], 'Use ASTM D2239 pipe', otherwise);
}

export const materialRules = [materialsMatch];
