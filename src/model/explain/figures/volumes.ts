/** Water that stands in the well, and what follows from it. */
import { atmosphericPressure } from '../../formulas/water.ts';
import type { Context } from '../context.ts';
import { within } from '../draft.ts';
import type { Explainer } from '../draft.ts';
import {
  noPumpCurve,
  noStaticLevel,
  noTank,
  noYield,
  noDrawdown,
  noDistance,
  noLine,
  noRise,
  reason,
} from '../missing.ts';
import { step, term } from '../sum.ts';
import type { Term } from '../sum.ts';

export const wellVolume: Explainer = (context) => {
  const { facts, values } = context;
  const stood = standing(context, facts.well.bottom);
  return {
    title: 'Water standing in the well',
    symbol: 'V_w',
    terms: stood.terms,
    steps: [
      step(
        'V_w',
        stood.sum((i) => `π / 4 × D${i}² × l${i}`),
        values.wellVolume,
        'volume',
      ),
    ],
    as: 'volume',
    formula: 'V_w = sum of π / 4 × D² × l over the stretches of the bore below the water at rest',
    range: within('as far as the diameters hold; what hangs in the well is not taken off', null),
    source: GEOMETRY_OF_BORE,
    missing: [noStaticLevel(context)],
  };
};

const GEOMETRY_OF_BORE = 'volume of a cylinder, stretch by stretch';

export const usableStorage: Explainer = (context) => {
  const { facts, values } = context;
  const stood = standing(context, facts.pump.setting);
  const none = values.usableStorage === 0 && stood.sum(() => '') !== NO_WATER;
  return {
    title: 'Water that the pump can take from the bore',
    symbol: 'V',
    terms: [
      ...stood.terms,
      term('d', 'outside of the drop pipe', facts.dropPipe.outsideDiameter, 'bore'),
      ...(none ? [term('V_0', 'a hole narrower than the pipe holds nothing', 0, 'volume')] : []),
    ],
    steps: [
      step('V', none ? 'V_0' : stood.sum((i) => `π / 4 × (D${i}² − d²) × l${i}`), values.usableStorage, 'volume'),
    ],
    as: 'volume',
    formula: 'V = sum of π / 4 × (D² − d²) × l over the stretches from the water at rest down to the intake',
    range: within('as far as the diameters hold', null),
    source: GEOMETRY_OF_BORE,
    missing: [noStaticLevel(context)],
  };
};

const NO_WATER = 'V_0';

/** Stretches of the bore that stand in water, down to a depth. */
function standing({ solution, facts }: Context, to: number) {
  const from = facts.water.staticLevel;
  const wet =
    from === null
      ? []
      : solution.bore
          .map((each) => ({ ...each, length: Math.min(each.bottom, to) - Math.max(each.top, from) }))
          .filter(({ length }) => length > 0);
  const words = { casing: 'casing', screen: 'screen', openHole: 'open hole' } as const;
  const terms: Term[] = wet.flatMap(({ kind, insideRadius, length }, i) => [
    term(`D${i + 1}`, `bore of the ${words[kind]}`, 2 * insideRadius, 'bore'),
    term(`l${i + 1}`, 'its length in water', length, 'length'),
  ]);
  if (terms.length === 0) terms.push(term('V_0', 'water above that depth', from === null ? null : 0, 'volume'));
  return {
    terms,
    sum: (of: (i: number) => string) => (wet.length === 0 ? NO_WATER : wet.map((_, i) => of(i + 1)).join(' + ')),
  };
}

export const chlorineDose: Explainer = (context) => {
  const { facts, values } = context;
  const { strength, target } = facts.disinfection;
  return {
    title: 'Liquid bleach for disinfection',
    symbol: 'V_b',
    terms: [
      term('V_w', 'water standing in the well', values.wellVolume, 'readVolume'),
      term('C', 'chlorine wanted', target, 'milligramsPerLitre'),
      term('P', 'available chlorine on the label', strength, 'number'),
      term('ρ', 'mass of bleach by volume, 1 kg a litre as labels take it', 1000, 'milligramsPerLitre'),
    ],
    steps: [step('V_b', 'V_w × C / (ρ × P)', values.chlorineDose, 'readVolume')],
    as: 'readVolume',
    range: within('fresh, unscented bleach; good to 15 %', null),
    source:
      'proportion; agrees with Illinois Administrative Code 77, 925.50 (3 cups of 5.25 % to 100 gal for 100 mg/L)',
    notes: [
      'Never mix bleach with another cleaner. Chlorine from water or air can hurt eyes and lungs: follow the label and the health department.',
    ],
    missing: [noStaticLevel(context)],
  };
};

export const tankDrawdown: Explainer = (context) => {
  const { facts, values } = context;
  const { cutIn, cutOut, kind, precharge, tank } = facts.house;
  const inside = precharge <= cutIn;
  const low = precharge < cutIn ? '(p_c + p_a) / (p_i + p_a)' : '1';
  const high = precharge < cutOut ? '(p_c + p_a) / (p_o + p_a)' : '1';
  return {
    title: 'Water that the tank gives between cut-out and cut-in',
    symbol: 'V_d',
    terms: [
      term('V_t', 'total volume of the tank', tank, 'readVolume'),
      term('p_c', 'pre-charge', precharge, 'readPressure'),
      term('p_i', 'cut-in', cutIn, 'readPressure'),
      term('p_o', 'cut-out', cutOut, 'readPressure'),
      term('p_a', 'pressure of the air at this altitude', atmosphericPressure(facts.site.altitude), 'readPressure'),
    ],
    steps: [step('V_d', `V_t × (${low} − ${high})`, values.tankDrawdown, 'readVolume')],
    as: 'readVolume',
    range: within('slow filling, and a pre-charge below cut-in', inside),
    source: 'Boyle’s law; air: US Standard Atmosphere (1976), from memory',
    missing: [
      noTank(context),
      reason(kind === 'open tank', 'a tank under pressure: an open tank has no cushion of air'),
    ],
  };
};

export const timeToBreakSuction: Explainer = (context) => {
  const { facts, values } = context;
  const { pumping } = facts.water;
  const wellYield = facts.well.yield ?? (pumping?.kind === 'test' ? pumping.flow : null);
  const flow = values.operatingFlowAtCutIn;
  const keepsUp = flow !== null && wellYield !== null && flow <= wellYield;
  return {
    title: 'Time until the pump draws air',
    symbol: 't',
    terms: [
      term('V', 'water that the pump can take from the bore', values.usableStorage, 'readVolume'),
      term('Q', 'flow of the pump at cut-in', flow, 'readFlow'),
      term(
        'Y',
        facts.well.yield === null ? 'tested flow, taken as the yield' : 'yield of the well',
        wellYield,
        'readFlow',
      ),
    ],
    steps: [step('t', 'V / (Q − Y)', values.timeToBreakSuction, 'minutes')],
    as: 'minutes',
    range: within('steady flow and yield; the yield falls as the water rises and grows as it sinks', null),
    source: 'conservation of volume',
    missing: [
      noStaticLevel(context),
      noYield(context),
      noPumpCurve(context),
      ...(flow === null ? [noDrawdown(context), noLine(context), noDistance(context), noRise(context)] : []),
      reason(keepsUp, 'a pump stronger than the well: this well keeps up, so nothing runs out'),
    ],
  };
};
