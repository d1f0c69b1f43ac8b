/** The top of the well: height, flood, pit, distances, frost on a seal. */
import type { Metres } from '../si.ts';
import { feet, inches } from '../units.ts';
import { exceeds, meets } from './grace.ts';
import { change, words } from './mend.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { gap, PIT_CAUTION, toSpare } from './say.ts';

export const ABOVE_FLOOD = feet(2);
export const SEPTIC_TANK_AWAY = feet(50);
export const DRAIN_FIELD_AWAY = feet(100);
export const BUILDING_AWAY = feet(5);
/** Frost down to here: a seal on top with insulation and heat may do. */
export const LIGHT_FROST = inches(6);

export const casingHighEnough = defineRule({
  number: 'PR-23',
  part: 'casing',
  broken: 'The casing stands too low',
  holds: 'The casing stands high enough',
  source:
    '12 in in most state codes (N.Y. App. 5-B, Wis. NR 812, 12 Va. Admin. Code 5-630), 6 to 18 in in others; the plan names the local figure',
  why: 'Rain and melt water must not run into the well.',
  judge({ facts, show }) {
    const measured = facts.well.casingHeight;
    const limit = facts.site.casingHeightRequired;
    const margin = measured - limit;
    const message = `The casing stands ${gap(measured, show)} ${measured < 0 ? 'below' : 'above'} the ground; ${gap(limit, show)} is asked.`;
    if (meets(margin, 'length')) return holds(toSpare(margin, show), message);
    return breaks({
      severity: 'danger',
      measured,
      limit,
      margin,
      quantity: 'length',
      depth: -measured,
      amount: `${gap(margin, show)} too low`,
      message,
      mend: words('Have the casing lengthened by a licensed contractor.'),
    });
  },
});

export const casingAboveFlood = defineRule({
  number: 'PR-24',
  part: 'casing',
  broken: 'A flood reaches the casing top',
  holds: 'The casing top is above the flood',
  source: 'Wash. Admin. Code 173-160-291; Wis. Adm. Code NR 812.28; 77 Ill. Adm. Code 920: 2 ft above the flood',
  why: 'Flood water that enters through the cap carries sewage and mud into the well.',
  judge({ facts, show }) {
    const flood = facts.site.floodHeight;
    if (flood === null) return missing('how high a flood reaches at the well');
    const measured = facts.well.casingHeight - flood;
    const margin = measured - ABOVE_FLOOD;
    const message = `The casing top is ${gap(measured, show)} ${measured < 0 ? 'below' : 'above'} the flood; ${show.depth(ABOVE_FLOOD)} above it is asked.`;
    if (meets(margin, 'length')) return holds(toSpare(margin, show), message);
    return breaks({
      severity: 'danger',
      measured,
      limit: ABOVE_FLOOD,
      margin,
      quantity: 'length',
      depth: -facts.well.casingHeight,
      ...(measured > 0 ? { title: 'The casing top is close to the flood' } : {}),
      amount: `${gap(margin, show)} too low`,
      message,
      mend: words('Have the casing lengthened, or the ground raised, by a licensed contractor.'),
    });
  },
});

export const noPit = defineRule({
  number: 'PR-26',
  part: 'well',
  broken: 'The well top is in a pit',
  holds: 'The well top is not in a pit',
  source: '77 Ill. Adm. Code 925.40(b); Wis. Adm. Code NR 812.29; Wash. Admin. Code 173-160-171',
  why: 'A pit floods, holds bad air, and lets surface water into the well.',
  caution: PIT_CAUTION,
  judge({ facts }) {
    if (facts.well.inPit === null) return missing('how the top of the well was built');
    if (!facts.well.inPit) return holds('no pit', 'The well top stands in the open, not in a pit.');
    return breaks({
      severity: 'danger',
      measured: 1,
      limit: 0,
      margin: -1,
      quantity: 'count',
      depth: 0,
      amount: 'in a pit',
      message: 'The well top is in a pit; most codes ask for it above the ground.',
      mend: words('Have the casing brought above the ground by a licensed contractor.'),
    });
  },
});

export const farFromSources = defineRule({
  number: 'PR-40',
  part: 'well',
  broken: 'The well is too near a source of dirt',
  holds: 'The well keeps its distances',
  source:
    '50, 100 and 5 ft as in Wash. Admin. Code 173-160-171; other states differ, and the plan may name the local figure',
  why: 'Soil needs distance to clean waste water before it reaches the well.',
  judge({ facts, show }) {
    const { septicTank, drainField, building } = facts.site;
    const all = [
      { name: 'septic tank', setback: septicTank, usual: SEPTIC_TANK_AWAY },
      { name: 'drain field', setback: drainField, usual: DRAIN_FIELD_AWAY },
      { name: 'building', setback: building, usual: BUILDING_AWAY },
    ];
    let worst: { name: string; distance: Metres; required: Metres; margin: Metres } | null = null;
    for (const { name, setback, usual } of all) {
      if (setback.distance === null) continue;
      const required = setback.required ?? usual;
      const margin = setback.distance - required;
      if (worst === null || margin < worst.margin) worst = { name, distance: setback.distance, required, margin };
    }
    if (worst === null) return missing('the distances to septic tank, drain field and building');
    const { name, distance, required, margin } = worst;
    const message = `The ${name} is ${show.depth(distance)} away; ${show.depth(required)} is asked.`;
    if (meets(margin, 'length')) return holds(toSpare(margin, show), message);
    return breaks({
      severity: 'warning',
      measured: distance,
      limit: required,
      margin,
      quantity: 'length',
      depth: 0,
      title: `The ${name} is too near the well`,
      amount: `${gap(margin, show)} too near`,
      message,
      mend: words('Ask the health department, and have the water tested.'),
    });
  },
});

export const sealInFrost = defineRule({
  number: 'PR-43',
  part: 'seal',
  broken: 'The well top freezes',
  holds: 'The well top stands clear of frost',
  source: 'common practice, no source',
  why: 'With a seal on top the pipe leaves the well in the cold, and ice bursts it.',
  judge({ facts, values, show }) {
    if (facts.top.kind !== 'seal') return doesNotApply;
    const frost = values.frostDepth;
    if (frost === null) return missing('the frost depth');
    if (!exceeds(frost, 'length')) return holds('no frost', 'No frost is reported at this place.');
    const kept = facts.top.heated || facts.top.housed;
    const light = meets(LIGHT_FROST - frost, 'length');
    return breaks({
      severity: kept ? 'note' : light ? 'warning' : 'danger',
      measured: frost,
      limit: 0,
      margin: -frost,
      quantity: 'length',
      depth: -facts.well.casingHeight,
      ...(kept ? { title: 'The well top depends on shelter' } : {}),
      amount: `${gap(frost, show)} of frost`,
      message: kept
        ? `Frost reaches ${gap(frost, show)}; the ${facts.top.heated ? 'heated' : 'housed'} top depends on it through every power cut.`
        : `Frost reaches ${gap(frost, show)}, and the pipe leaves the well above the ground.`,
      mend: kept
        ? words('Look after heat and insulation, and mind power cuts.')
        : light
          ? change(
              facts,
              [{ path: 'top.heated', to: true }],
              'Insulate and heat the top',
              'Insulate and heat the top, and mind power cuts.',
            )
          : words('Use a pitless adapter below the frost, or a heated well house.'),
    });
  },
});

export const wellheadRules = [sealInFrost, casingHighEnough, casingAboveFlood, noPit, farFromSources];
