/** The top of the well: height, flood, pit, distances, frost on a seal. */
import type { Metres } from '../si.ts';
import { feet, inches } from '../units.ts';
import { atBothEnds } from './bothEnds.ts';
import { exceeds, meets } from './grace.ts';
import { openFrost } from './openFacts.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { usualIn } from './usual.ts';

export const ABOVE_FLOOD = feet(2);
export const SEPTIC_TANK_AWAY = feet(50);
export const DRAIN_FIELD_AWAY = feet(100);
export const BUILDING_AWAY = feet(5);
/** Frost down to here: a seal on top with insulation and heat may do. */
export const LIGHT_FROST = inches(6);

export const casingHighEnough = defineRule({
  number: 'PR-23',
  part: 'casing',
  restsOn: ['site.casingHeightRequired', 'well.casing.height'],
  compares: [['well.casing.height', 'site.casingHeightRequired']],
  asks: { usual: usualIn('casingHeightRequired') },
  judge({ facts }) {
    const measured = facts.well.casingHeight;
    const asked = facts.site.casingHeightRequired;
    const margin = measured - asked;
    const numbers = { measured, asked, margin };
    if (meets(margin, 'length')) return holds('highEnough', numbers);
    const at = { measured, limit: asked, margin, quantity: 'length', depth: -measured } as const;
    return breaks('tooLow', 'danger', numbers, at);
  },
});

export const casingAboveFlood = defineRule({
  number: 'PR-24',
  part: 'casing',
  restsOn: ['well.casing.height'],
  asks: { above: ABOVE_FLOOD },
  judge({ facts }) {
    const flood = facts.site.floodHeight;
    if (flood === null) return missing('flood');
    const asked = ABOVE_FLOOD;
    const measured = facts.well.casingHeight - flood;
    const margin = measured - asked;
    const numbers = { measured, asked, margin };
    if (meets(margin, 'length')) return holds('aboveFlood', numbers);
    const depth = -facts.well.casingHeight;
    const at = { measured, limit: asked, margin, quantity: 'length', depth } as const;
    return exceeds(measured, 'length')
      ? breaks('closeToFlood', 'danger', numbers, at)
      : breaks('underFlood', 'danger', numbers, at);
  },
});

export const noPit = defineRule({
  number: 'PR-26',
  part: 'well',
  restsOn: [],
  judge({ facts }) {
    if (facts.well.inPit === null) return missing('wellTop');
    if (!facts.well.inPit) return holds('inTheOpen', {});
    return breaks('inPit', 'danger', {}, { measured: 1, limit: 0, margin: -1, quantity: 'count', depth: 0 });
  },
});

export type SourceOfDirt = 'septicTank' | 'drainField' | 'building';

export const farFromSources = defineRule({
  number: 'PR-40',
  part: 'well',
  restsOn: [],
  asks: { septicTank: SEPTIC_TANK_AWAY, drainField: DRAIN_FIELD_AWAY, building: BUILDING_AWAY },
  judge({ facts }) {
    const { septicTank, drainField, building } = facts.site;
    const all = [
      { source: 'septicTank', setback: septicTank, usual: SEPTIC_TANK_AWAY },
      { source: 'drainField', setback: drainField, usual: DRAIN_FIELD_AWAY },
      { source: 'building', setback: building, usual: BUILDING_AWAY },
    ] as const;
    let worst: { source: SourceOfDirt; distance: Metres; asked: Metres; margin: Metres } | null = null;
    const said: SourceOfDirt[] = [];
    const unsaid: SourceOfDirt[] = [];
    for (const { source, setback, usual } of all) {
      if (setback.distance === null) {
        unsaid.push(source);
        continue;
      }
      said.push(source);
      const asked = setback.required ?? usual;
      const margin = setback.distance - asked;
      if (worst === null || margin < worst.margin) worst = { source, distance: setback.distance, asked, margin };
    }
    if (worst === null) return missing('distances');
    const { distance, asked, margin } = worst;
    if (meets(margin, 'length'))
      return unsaid.length === 0 ? holds('farEnough', worst) : holds('farEnoughAsTold', { ...worst, said, unsaid });
    const at = { measured: distance, limit: asked, margin, quantity: 'length', depth: 0 } as const;
    return breaks('tooNear', 'warning', worst, at);
  },
});

export const sealInFrost = defineRule({
  number: 'PR-43',
  part: 'seal',
  restsOn: ['top.heated', 'top.housed', 'top.kind'],
  compares: [['top.kind']],
  judge({ solved, facts }) {
    const { top, site } = facts;
    if (top.kind !== 'seal') return doesNotApply;
    const judgeAt = (frost: Metres) => {
      if (!exceeds(frost, 'length'))
        return site.frostDepth === null ? holds('noneEstimated', {}) : holds('noFrost', {});
      const depth = -facts.well.casingHeight;
      const at = { measured: frost, limit: 0, margin: -frost, quantity: 'length', depth } as const;
      if (top.heated) return breaks('heated', 'note', { frost }, at);
      if (top.housed) return breaks('housed', 'note', { frost }, at);
      return breaks('bare', meets(LIGHT_FROST - frost, 'length') ? 'warning' : 'danger', { frost }, at);
    };
    if (site.frostDepth !== null) return judgeAt(site.frostDepth);
    const open = openFrost(solved);
    if (open === null) return missing('frostDepth');
    const shelter = top.heated || top.housed;
    return atBothEnds(
      open,
      judgeAt,
      () => ({ variant: 'dependsOnFrost' as const, numbers: { deepest: open.bad, shelter } }),
      () => 0,
    );
  },
});

export const wellheadRules = [sealInFrost, casingHighEnough, casingAboveFlood, noPit, farFromSources] as const;
