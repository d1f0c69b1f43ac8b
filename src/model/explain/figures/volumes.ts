/** Water that stands in the well, and what follows from it. */
import { lowestLevel } from '../../figures/lowestLevel.ts';
import { pumpBandOf } from '../../figures/pumpBand.ts';
import { deepestTaken, standingOf, type BoreAtWork } from '../../figures/waterFall.ts';
import type { LevelFall } from '../../formulas/levelFall.ts';
import { atmosphericPressure } from '../../formulas/water.ts';
import { openYield } from '../../rules/openFacts.ts';
import type { Context } from '../context.ts';
import { within } from '../draft.ts';
import type { Explainer } from '../draft.ts';
import {
  noPumpCurve,
  noBore,
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
import { either } from '../../units.ts';

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
    missing: [noStaticLevel(context), noBore(context, facts.well.bottom)],
  };
};

const GEOMETRY_OF_BORE = 'volume of a cylinder, stretch by stretch';

export const usableStorage: Explainer = (context) => {
  const { facts, values } = context;
  const { depth, by } = deepestTaken(workOf(context));
  const stood = standing(context, depth);
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
    formula: `V = sum of π / 4 × (D² − d²) × l over the stretches from the water at rest down to ${DEEPEST_WORDS[by]}`,
    range: within('as far as the diameters hold', null),
    source: GEOMETRY_OF_BORE,
    notes: [
      by === 'lift'
        ? 'From deeper down this pump does not reach cut-in, taken at the weaker end of a generic pump’s band: what stands there is not counted.'
        : liftUnknown(context)
          ? 'How deep this pump can lift from is not known, so all water down to there is counted.'
          : 'The pump reaches cut-in from there, taken at the weaker end of a generic pump’s band.',
    ],
    missing: [noStaticLevel(context), noBore(context, depth)],
  };
};

const DEEPEST_WORDS = {
  intake: 'the intake',
  'low-level cut-off': 'the probe of the dry-run protection',
  lift: 'the deepest level from which the pump reaches cut-in',
} as const;

const liftUnknown = ({ facts, system }: Context) =>
  facts.house.rise === null || pumpBandOf(facts, system.water.density) === null;

function workOf({ facts, solution, system }: Context): BoreAtWork {
  return { facts, system, bore: solution.bore, band: pumpBandOf(facts, system.water.density) };
}

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
      term(
        'ρ',
        `mass of bleach by volume, ${either(context.units, '8.3 lb a gallon', '1 kg a litre')} as labels take it`,
        1000,
        'milligramsPerLitre',
      ),
    ],
    steps: [step('V_b', 'V_w × C / (ρ × P)', values.chlorineDose, 'readVolume')],
    as: 'readVolume',
    range: within('fresh, unscented bleach; good to 15 %', null),
    source: `proportion; agrees with Illinois Administrative Code 77, 925.50 (${either(context.units, '3 cups of 5.25 % to 100 gal', '0.71 L of 5.25 % to 379 L')} for 100 mg/L)`,
    notes: [
      'Never mix bleach with another cleaner. Chlorine from water or air can hurt eyes and lungs: follow the label and the health department.',
    ],
    missing: [noStaticLevel(context), noBore(context, facts.well.bottom)],
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
  const { staticLevel } = facts.water;
  const { atCutInMost } = context.solution.curves;
  const standing = staticLevel === null ? null : standingOf(workOf(context), staticLevel, { point: atCutInMost });
  const fall = standing?.kind === 'falls' ? standing.fall : null;
  const unknown = standing?.kind === 'unknown' ? standing.why : null;
  const [first, last] = [fall?.moments[0] ?? null, fall?.moments[fall.moments.length - 1] ?? null];
  const lowest = lowestLevel(facts);
  return {
    title:
      lowest.by === 'intake' ? 'Time until the pump draws air' : 'Time until the dry-run protection stops the pump',
    symbol: 't',
    terms: [
      term('V', `water in the bore from rest down to ${DEEPEST_WORDS[lowest.by]}`, fall?.volume ?? null, 'readVolume'),
      term('Q_0', 'flow of the pump at cut-in with the water at rest', first?.pumpFlow ?? null, 'readFlow'),
      term('Q_1', `its flow with the water at ${DEEPEST_WORDS[lowest.by]}`, last?.pumpFlow ?? null, 'readFlow'),
      term('Q', 'its flow on average over that time', fall?.meanPumpFlow ?? null, 'readFlow'),
      term('Y', 'what flows in on average over that time', fall === null ? null : meanInflow(fall), 'readFlow'),
    ],
    steps: [step('t', 'V / (Q − Y)', values.timeToBreakSuction, 'minutes')],
    as: 'minutes',
    formula:
      't = sum of A × Δz / (Q(z) − Y(z)) from the water at rest down, which is V / (Q − Y) with the means of both',
    range: within(
      'the pump running on at cut-in; what flows in is that of the drawdown after the tested time, or a yield that is said to be less than the test',
      null,
    ),
    source: 'conservation of volume',
    notes: [
      'The level is followed down step by step: the pump gives less and less as the water falls. A generic pump is taken at the stronger end of its band: a weaker one takes longer, or never draws it so far.',
      ...(openYield(context.solution) === null ? [] : [ALL_OF_THE_YIELD]),
      ...(standing?.kind === 'keepsUp' ? [NO_LONGER_THAN_TESTED] : []),
    ],
    missing: [
      noStaticLevel(context),
      ...(unknown === 'bore' ? [noBore(context, lowest.depth)] : []),
      ...(unknown === 'pumpFlow' || staticLevel === null
        ? [noPumpCurve(context), noLine(context), noDistance(context), noRise(context)]
        : []),
      ...(unknown === 'inflow' ? [noDrawdown(context), noYield(context)] : []),
      reason(unknown === 'noWater', `water above ${DEEPEST_WORDS[lowest.by]}: none stands there even at rest`),
      reason(unknown === 'liftsNothing', 'a pump that lifts water into the tank: from this depth it lifts none'),
      reason(standing?.kind === 'keepsUp', 'a pump stronger than the well: this well keeps up, so nothing runs out'),
    ],
  };
};

/** The range stands in the water over time. */
const ALL_OF_THE_YIELD =
  'No pump tested the yield, and all of it is counted on: with the part that is sure the time is shorter.';

/** In the words of the water over time, which stands beside it. */
const NO_LONGER_THAN_TESTED =
  'The hours of the test prove no more than that: the water over time shows how it falls on while a pump never stops.';

/** What flows in on average: what is pumped, less what was stored. */
function meanInflow({ meanPumpFlow, time, volume, moments }: LevelFall): number | null {
  return time > 0 ? meanPumpFlow - volume / time : (moments[0]?.inflow ?? null);
}
