/** The pitless adapter: below the frost, above the water, clear of the bore. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { boreRadiusAt } from '../bore.ts';
import { sleeveOutside } from '../string/sleeveOutside.ts';
import { atBothEnds } from './bothEnds.ts';
import { TIGHT_FIT, TOO_TIGHT } from './clearance.ts';
import { exceeds, meets, past } from './grace.ts';
import { highestStaticLevel } from './highestStatic.ts';
import { openFrost, openProtrusion, REACHES } from './openFacts.ts';
import { usualIn } from './usual.ts';
import type { Solved } from '../solution.ts';
import { breaks, defineRule, doesNotApply, holds, limit, missing } from './rule.ts';

/** How far below the frost the adapter must stand: nowhere where it does not freeze. */
function marginBelow(frost: Metres, { site }: Facts): Metres {
  return exceeds(frost, 'length') ? site.frostMargin : 0;
}

export const pitlessBelowFrost = defineRule({
  number: 'PR-19',
  part: 'pitlessAdapter',
  restsOn: ['site.frostMargin', 'top.depth', 'top.kind'],
  compares: [['top.kind']],
  asks: { margin: usualIn('frostMargin') },
  judge({ solved, facts }) {
    const { top, site } = facts;
    if (top.kind !== 'pitless') return doesNotApply;
    const outlet = top.depth;
    const judgeAt = (frost: Metres) => {
      const measured = outlet - frost;
      const asked = marginBelow(frost, facts);
      const margin = measured - asked;
      if (meets(margin, 'length')) {
        if (!exceeds(frost, 'length')) return holds('noFrost', { outlet });
        return site.frostDepth === null
          ? holds('belowEstimate', { outlet, measured, frost })
          : holds('belowFrost', { outlet, measured, frost, from: site.frostFrom });
      }
      const at = { measured, limit: asked, margin, quantity: 'length', depth: outlet } as const;
      return meets(measured, 'length')
        ? breaks('closeToFrost', 'warning', { measured, asked, margin }, at)
        : breaks('inFrost', 'danger', { outlet, frost, measured, asked }, at);
    };
    if (site.frostDepth !== null) return judgeAt(site.frostDepth);
    const open = openFrost(solved);
    if (open === null) return missing('frostDepth');
    const asked = site.frostMargin;
    return atBothEnds(
      open,
      judgeAt,
      (turn) => ({ variant: 'dependsOnFrost' as const, numbers: { outlet, turn, asked, deepest: open.bad } }),
      () => Math.max(outlet - asked, 0),
    );
  },
  limits(solved) {
    const { facts } = solved;
    const frost = facts.site.frostDepth ?? openFrost(solved)?.bad ?? null;
    if (frost === null || !exceeds(frost, 'length')) return [];
    const asked = facts.site.frostMargin;
    return [limit('top.depth', { from: frost + asked }, 'belowFrost', { asked })];
  },
});

export const pitlessAboveWater = defineRule({
  number: 'PR-20',
  part: 'pitlessAdapter',
  restsOn: ['top.depth', 'top.kind'],
  compares: [['top.kind']],
  judge({ solved, facts }) {
    if (facts.top.kind !== 'pitless') return doesNotApply;
    const water = highestStaticLevel(solved);
    if (water === null) return missing('staticLevel');
    const outlet = facts.top.depth;
    const margin = water - outlet;
    const numbers = { outlet, water, margin, highest: solved.levels.staticHighest !== null };
    if (meets(margin - past('length'), 'length')) return holds('aboveWater', numbers);
    const at = { measured: outlet, limit: water, margin, quantity: 'length', depth: outlet } as const;
    return facts.top.submergedUse === true
      ? breaks('madeForWater', 'note', { margin }, at)
      : breaks('underWater', 'danger', numbers, at);
  },
  limits(solved) {
    const { top } = solved.facts;
    const level = highestStaticLevel(solved);
    if (top.kind !== 'pitless' || level === null || top.submergedUse === true) return [];
    return [limit('top.depth', { to: level - 2 * past('length') }, 'aboveStaticLevel', {})];
  },
});

/** The widest pump that passes the adapter, or the least one where nobody said its reach; null where nothing says it. */
export function mostPastAdapter({ facts, bore }: Pick<Solved, 'facts' | 'bore'>): Metres | null {
  const { top, well } = facts;
  if (top.kind !== 'pitless' || well.casings[0]?.insideKnown !== true) return null;
  return 2 * boreRadiusAt(bore, top.depth) - (top.protrusion ?? REACHES[0]) - TIGHT_FIT;
}

export const pitlessLetsPumpPass = defineRule({
  number: 'PR-21',
  part: 'pitlessAdapter',
  restsOn: ['pump.diameter', 'pump.shroudWall', 'top.depth', 'top.kind', 'well.casing.schedule'],
  compares: [['top.kind']],
  asks: { least: TIGHT_FIT },
  judge({ solved, facts }) {
    const { top, pump } = facts;
    if (top.kind !== 'pitless') return doesNotApply;
    if (facts.well.casings[0]?.insideKnown !== true) return missing('casingBore');
    const bore = 2 * boreRadiusAt(solved.bore, top.depth);
    const widest = Math.max(pump.diameter, sleeveOutside(pump));
    const sleeve = widest > pump.diameter;
    const judgeAt = (reach: Metres) => {
      const free = bore - reach;
      const measured = free - widest;
      const margin = measured - TIGHT_FIT;
      const numbers = {
        free,
        widest,
        sleeve,
        reach,
        measured,
        margin,
        said: top.protrusion !== null,
        shortest: reach <= REACHES[0],
      };
      if (meets(margin, 'length')) return holds('passes', numbers, margin);
      const at = { measured, limit: TIGHT_FIT, margin, quantity: 'length', depth: top.depth } as const;
      return meets(measured - TOO_TIGHT, 'length')
        ? breaks('hardlyPasses', 'warning', numbers, at)
        : breaks('doesNotPass', 'danger', numbers, at);
    };
    if (top.protrusion !== null) return judgeAt(top.protrusion);
    const open = openProtrusion(solved);
    if (open === null) return missing('protrusion');
    return atBothEnds(open, judgeAt, (turn) => ({
      variant: 'dependsOnReach' as const,
      numbers: { turn, bore, widest, least: open.good, most: open.bad },
    }));
  },
});

export const pitlessRules = [pitlessBelowFrost, pitlessAboveWater, pitlessLetsPumpPass] as const;
