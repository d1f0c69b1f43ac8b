/** The pitless adapter: below the frost, above the water, clear of the bore. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { boreRadiusAt } from '../bore.ts';
import { meets, past } from './grace.ts';
import { moveIntoBand, words } from './mend.ts';
import { TIGHT_FIT, TOO_TIGHT } from './clearance.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { DIGGING_CAUTION, gap, toSpare } from './say.ts';

/** Highest level the water is known to stand at while the pump rests. */
export function highestStaticLevel({ levels }: Solved): Metres | null {
  if (levels.static === null) return levels.staticHighest;
  return levels.staticHighest === null ? levels.static : Math.min(levels.static, levels.staticHighest);
}

export const pitlessBelowFrost = defineRule({
  number: 'PR-19',
  part: 'pitlessAdapter',
  broken: 'The pitless adapter is in the frost zone',
  holds: 'The pitless adapter is below the frost',
  source: '77 Ill. Adm. Code 920.40(f); N.H. Admin. Rules We 702.05(k); margin: International Plumbing Code 305.4.1',
  why: 'Ice closes the line, cracks fittings and the adapter, and the pump runs against ice.',
  caution: DIGGING_CAUTION,
  judge(given) {
    const { facts, values, show } = given;
    if (facts.top.kind !== 'pitless') return doesNotApply;
    const frost = values.frostDepth;
    if (frost === null) return missing('the frost depth');
    const measured = facts.top.depth - frost;
    const limit = facts.site.frostMargin;
    const margin = measured - limit;
    const from = facts.site.frostDepth === null ? 'the estimate' : 'the depth you entered';
    if (meets(margin, 'length')) {
      return holds(
        toSpare(measured, show),
        `The outlet’s top is at ${gap(facts.top.depth, show)}: meets ${from}, with ${gap(measured, show)} to spare.`,
      );
    }
    const inFrost = !meets(measured, 'length');
    return breaks({
      severity: inFrost ? 'danger' : 'warning',
      measured,
      limit,
      margin,
      quantity: 'length',
      depth: facts.top.depth,
      ...(inFrost ? {} : { title: 'The pitless adapter is close to the frost' }),
      amount: inFrost ? `${gap(measured, show)} too high` : `${gap(margin, show)} short`,
      message: inFrost
        ? `The outlet’s top is at ${gap(facts.top.depth, show)}; frost reaches ${gap(frost, show)}, and ${gap(limit, show)} more is asked.`
        : `The outlet’s top is ${gap(measured, show)} below the frost; ${gap(limit, show)} is asked.`,
      mend: moveIntoBand(given, 'PR-19', 'top.depth', 'Lower the adapter and the line, or insulate and heat the line.'),
    });
  },
  limits({ facts, values }) {
    if (values.frostDepth === null) return [];
    const margin = facts.site.frostMargin;
    return [
      { setting: 'top.depth', from: values.frostDepth + margin, label: (show) => `${gap(margin, show)} below frost` },
    ];
  },
});

export const pitlessAboveWater = defineRule({
  number: 'PR-20',
  part: 'pitlessAdapter',
  broken: 'The pitless adapter is under water',
  holds: 'The pitless adapter is above the water',
  source: 'Wash. Admin. Code 173-160-291(5); Minn. Rules 4725.4850',
  why: 'A hole under water cannot be sealed dry, and nobody sees it leak.',
  caution: DIGGING_CAUTION,
  judge(given) {
    const { solved, facts, show } = given;
    if (facts.top.kind !== 'pitless') return doesNotApply;
    const level = highestStaticLevel(solved);
    if (level === null) return missing('the static water level');
    const margin = level - facts.top.depth;
    const message = `The outlet’s top is at ${gap(facts.top.depth, show)}; water stands at ${level < 0 ? `${gap(level, show)} above ground` : show.depth(level)} at its highest.`;
    if (meets(margin - past('length'), 'length')) return holds(toSpare(margin, show), message);
    const made = facts.top.submergedUse === true;
    return breaks({
      severity: made ? 'note' : 'danger',
      measured: facts.top.depth,
      limit: level,
      margin,
      quantity: 'length',
      depth: facts.top.depth,
      amount: `${gap(margin, show)} too deep`,
      message: made ? 'This adapter is made for use under water; the local code still decides.' : message,
      mend: made
        ? words('Ask the local code whether this adapter may stand under water.')
        : moveIntoBand(
            given,
            'PR-20',
            'top.depth',
            'Use an adapter made for submerged use, or ask the driller for another top.',
          ),
    });
  },
  limits(solved) {
    const { top } = solved.facts;
    const level = highestStaticLevel(solved);
    if (top.kind !== 'pitless' || level === null || top.submergedUse === true) return [];
    return [{ setting: 'top.depth', to: level - 2 * past('length'), label: () => 'above the static level' }];
  },
});

export const pitlessLetsPumpPass = defineRule({
  number: 'PR-21',
  part: 'pitlessAdapter',
  broken: 'The pump does not pass the pitless adapter',
  holds: 'The pump passes the pitless adapter',
  source: 'Wis. Adm. Code NR 812.31(2)(b); clearances: common practice, no source',
  why: 'The pump must come up past the adapter every time it is pulled.',
  judge({ solved, facts, show }) {
    if (facts.top.kind !== 'pitless') return doesNotApply;
    const { protrusion, depth } = facts.top;
    if (protrusion === null) return missing('how far the adapter stands into the casing');
    const free = 2 * boreRadiusAt(solved.bore, depth) - protrusion;
    const widest = Math.max(facts.pump.diameter, facts.pump.shroudDiameter ?? 0);
    const measured = free - widest;
    const margin = measured - TIGHT_FIT;
    const message = `Beside the adapter ${show.bore(free)} is free; the pump is ${show.bore(widest)} wide over its guard.`;
    if (meets(margin, 'length')) return holds(`${show.bore(measured)} free`, message);
    const passes = meets(measured - TOO_TIGHT, 'length');
    return breaks({
      severity: passes ? 'warning' : 'danger',
      ...(passes ? { title: 'The pump hardly passes the pitless adapter' } : {}),
      measured,
      limit: TIGHT_FIT,
      margin,
      quantity: 'length',
      depth,
      amount: `${show.bore(-margin)} too tight`,
      message,
      mend: words('Choose an adapter that stands less far into the casing, or a slimmer pump.'),
    });
  },
});

export const pitlessRules = [pitlessBelowFrost, pitlessAboveWater, pitlessLetsPumpPass];
