/** The pitless adapter: below the frost, above the water, clear of the bore. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { boreRadiusAt } from '../bore.ts';
import { TIGHT_FIT, TOO_TIGHT } from './clearance.ts';
import { moveIntoBand, words } from './fix.ts';
import { meets, past } from './grace.ts';
import { breaks, defineRule, doesNotApply, holds, limit, missing } from './rule.ts';

/** Highest level the water is known to stand at while the pump rests. */
export function highestStaticLevel({ levels }: Solved): Metres | null {
  if (levels.static === null) return levels.staticHighest;
  return levels.staticHighest === null ? levels.static : Math.min(levels.static, levels.staticHighest);
}

export const pitlessBelowFrost = defineRule({
  number: 'PR-19',
  part: 'pitlessAdapter',
  judge({ facts, values }) {
    if (facts.top.kind !== 'pitless') return doesNotApply;
    const frost = values.frostDepth;
    if (frost === null) return missing('frostDepth');
    const outlet = facts.top.depth;
    const measured = outlet - frost;
    const asked = facts.site.frostMargin;
    const margin = measured - asked;
    if (meets(margin, 'length'))
      return holds('belowFrost', { outlet, measured, estimated: facts.site.frostDepth === null });
    const at = { measured, limit: asked, margin, quantity: 'length', depth: outlet } as const;
    return meets(measured, 'length')
      ? breaks('closeToFrost', 'warning', { measured, asked, margin }, at)
      : breaks('inFrost', 'danger', { outlet, frost, measured, asked }, at);
  },
  limits({ facts, values }) {
    if (values.frostDepth === null) return [];
    const asked = facts.site.frostMargin;
    return [limit('top.depth', { from: values.frostDepth + asked }, 'belowFrost', { asked })];
  },
  fixes: (given) => [moveIntoBand(given, 'PR-19', 'top.depth', words('lowerOrHeat', {}))],
});

export const pitlessAboveWater = defineRule({
  number: 'PR-20',
  part: 'pitlessAdapter',
  judge({ solved, facts }) {
    if (facts.top.kind !== 'pitless') return doesNotApply;
    const water = highestStaticLevel(solved);
    if (water === null) return missing('staticLevel');
    const outlet = facts.top.depth;
    const margin = water - outlet;
    if (meets(margin - past('length'), 'length')) return holds('aboveWater', { outlet, water, margin });
    const at = { measured: outlet, limit: water, margin, quantity: 'length', depth: outlet } as const;
    return facts.top.submergedUse === true
      ? breaks('madeForWater', 'note', { margin }, at)
      : breaks('underWater', 'danger', { outlet, water, margin }, at);
  },
  limits(solved) {
    const { top } = solved.facts;
    const level = highestStaticLevel(solved);
    if (top.kind !== 'pitless' || level === null || top.submergedUse === true) return [];
    return [limit('top.depth', { to: level - 2 * past('length') }, 'aboveStaticLevel', {})];
  },
  fixes(given, { variant }) {
    return [
      variant === 'madeForWater'
        ? words('askCode', {})
        : moveIntoBand(given, 'PR-20', 'top.depth', words('otherAdapterOrTop', {})),
    ];
  },
});

export const pitlessLetsPumpPass = defineRule({
  number: 'PR-21',
  part: 'pitlessAdapter',
  judge({ solved, facts }) {
    if (facts.top.kind !== 'pitless') return doesNotApply;
    const { protrusion, depth } = facts.top;
    if (protrusion === null) return missing('protrusion');
    const free = 2 * boreRadiusAt(solved.bore, depth) - protrusion;
    const widest = Math.max(facts.pump.diameter, facts.pump.shroudDiameter ?? 0);
    const measured = free - widest;
    const margin = measured - TIGHT_FIT;
    if (meets(margin, 'length')) return holds('passes', { free, widest, measured });
    const at = { measured, limit: TIGHT_FIT, margin, quantity: 'length', depth } as const;
    return meets(measured - TOO_TIGHT, 'length')
      ? breaks('hardlyPasses', 'warning', { free, widest, margin }, at)
      : breaks('doesNotPass', 'danger', { free, widest, margin }, at);
  },
  fixes: () => [words('otherAdapterOrPump', {})],
});

export const pitlessRules = [pitlessBelowFrost, pitlessAboveWater, pitlessLetsPumpPass] as const;
