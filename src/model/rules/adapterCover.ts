/** The ground over the adapter, where frost asks for none, and a depth that nobody digs. */
import { inches } from '../units.ts';
import { DEEPEST_DIG } from './adapterRoom.ts';
import { exceeds, meets } from './grace.ts';
import { breaks, defineRule, doesNotApply, holds, limit } from './rule.ts';
import type { Facts } from '../facts.ts';

/** As each country names it. IPC 305.4, from memory; common practice. */
export const LEAST_COVER = { us: inches(12), metric: 0.3 } as const;

/** Whether frost asks for more than cover does: then the rule on frost says so. */
function frostAsksForMore({ site, units }: Facts): boolean {
  const { frostDepth, frostMargin } = site;
  return frostDepth !== null && exceeds(frostDepth, 'length') && frostDepth + frostMargin >= LEAST_COVER[units];
}

export const adapterCovered = defineRule({
  number: 'PR-64',
  part: 'pitlessAdapter',
  restsOn: ['top.depth', 'top.kind'],
  compares: [['top.kind']],
  asks: { least: LEAST_COVER, most: DEEPEST_DIG },
  judge({ facts }) {
    if (facts.top.kind !== 'pitless') return doesNotApply;
    const measured = facts.top.depth;
    const at = { measured, quantity: 'length', depth: measured } as const;
    // So deep that feet were meant to be inches, or metres centimetres.
    if (!meets(DEEPEST_DIG - measured, 'length'))
      return breaks(
        'veryDeep',
        'warning',
        { measured, most: DEEPEST_DIG },
        { ...at, limit: DEEPEST_DIG, margin: DEEPEST_DIG - measured },
      );
    const least = LEAST_COVER[facts.units];
    const margin = measured - least;
    if (meets(margin, 'length')) return holds('covered', { measured, least, margin });
    if (frostAsksForMore(facts)) return doesNotApply;
    return breaks('shallow', 'warning', { measured, least, margin }, { ...at, limit: least, margin });
  },
  limits({ facts }) {
    if (facts.top.kind !== 'pitless') return [];
    const least = LEAST_COVER[facts.units];
    return [
      limit('top.depth', { from: least }, 'cover', { least }),
      limit('top.depth', { to: DEEPEST_DIG }, 'dig', { most: DEEPEST_DIG }),
    ];
  },
});

export const adapterCoverRules = [adapterCovered] as const;
