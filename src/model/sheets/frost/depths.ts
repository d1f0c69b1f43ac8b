/** The frost depth that was entered, the estimate beside it, and the margins that plumbing codes ask for. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { explain } from '../../explain/explain.ts';
import { step, term } from '../../explain/sum.ts';
import {
  empiricalFrostDepth,
  ESTIMATE_BAND,
  siteFrostEstimate,
  stationClimate,
  USUAL_FROST_MARGIN,
  WIDE_FROST_MARGIN,
} from '../../formulas/frost.ts';
import type { FrostEstimate, NoEstimate } from '../../formulas/frost.ts';
import type { Metres } from '../../si.ts';
import type { Solved } from '../../solution.ts';
import { findStation } from '../../tables/freezingStations.ts';
import { inches, either } from '../../units.ts';
import { figure, solved } from '../figure.ts';
import { known } from '../known.ts';
import type { Missing, SheetFigure } from '../sheet.ts';

const LEAST_COVER: Metres = inches(12);

const REASONS: Readonly<Record<NoEstimate, Missing>> = {
  'permafrost possible': {
    path: null,
    words: 'a mean temperature above freezing: below it the ground may stay frozen, and this method ends',
  },
  'no water in the soil': { path: 'site.freezing.soil', words: 'a soil with water in it' },
  'soil not known': { path: 'site.freezing.soil', words: 'a soil of the table' },
  'surface not known': { path: 'site.freezing.surface', words: 'a surface of the table' },
  'station not known': { path: 'site.freezing.station', words: 'a weather station of the table' },
  'climate not known': { path: 'site.freezing.station', words: 'a weather station near by, for its mean temperature' },
};

export function estimateOf({ facts }: Context): FrostEstimate {
  const { freezing } = facts.site;
  return freezing === null ? { reason: 'climate not known' } : siteFrostEstimate(freezing);
}

export function frostFigures(context: Context): SheetFigure[] {
  const { facts, values, suspension } = context;
  const entered = facts.site.frostDepth;
  const estimate = estimateOf(context);
  const missing = 'reason' in estimate ? [REASONS[estimate.reason]] : [];
  const depth = 'reason' in estimate ? null : estimate.depth;
  const low = 'reason' in estimate ? null : estimate.low;
  const high = 'reason' in estimate ? null : estimate.high;
  const index = indexOf(context);
  const quick = known([index], empiricalFrostDepth);
  const over = known([entered, depth], (code, guess) => guess - code);
  const noEntered: Missing | null =
    entered === null
      ? { path: 'site.frostDepth', words: 'the frost depth that the local building or plumbing department requires' }
      : null;
  const band = (key: string, title: string, symbol: string, value: number | null, share: number) =>
    figure(context, { key, title, symbol, value, as: 'small', missing }, () => ({
      terms: [term('z_e', 'estimate', depth, 'small'), term('k', 'end of the band', share, 'number')],
      steps: [step(symbol, 'k × z_e', value, 'small')],
      range: within('what was measured and adopted elsewhere lies within this band, mostly', null),
      source: 'spread of the method against adopted depths and measured frost',
    }));
  return [
    solved(context, 'frostDepth'),
    estimateFigure(context, depth, missing),
    band('estimateLow', 'Its band from', 'z_1', low, ESTIMATE_BAND.low),
    band('estimateHigh', 'Its band to', 'z_2', high, ESTIMATE_BAND.high),
    figure(
      context,
      {
        key: 'estimateOverCode',
        title: 'Estimate deeper than what was entered by',
        symbol: 'Δz',
        value: over,
        as: 'small',
        missing: [noEntered, ...missing],
      },
      () => ({
        terms: [term('z_e', 'estimate', depth, 'small'), term('z_f', 'as entered', entered, 'small')],
        steps: [step('Δz', 'z_e − z_f', over, 'small')],
        range: within(
          'above zero: ask again whether the depth entered is one for pipes or one for footings',
          over === null ? null : over <= 0,
        ),
        source: 'arithmetic',
      }),
    ),
    figure(
      context,
      {
        key: 'quickDepth',
        title: 'A second look by a rule of thumb',
        symbol: 'z',
        value: quick,
        as: 'small',
        text: context.show.small,
        missing: [{ path: 'site.freezing.station', words: 'a weather station or a freezing index' }],
      },
      () => ({
        terms: [term('F', 'freezing index of the air, in kelvin-days', index, 'number')],
        steps: [step('z', '0.05518 × F^0.468', quick, 'number')],
        formula: 'z = 0.05518 × F^0.468, metres and kelvin-days',
        range: within('knows neither soil nor surface: plausibility only', null),
        source: 'Fair, Geyer & Okun, Water and Wastewater Engineering, eq. 5.41b',
      }),
    ),
    ...(facts.top.kind === 'pitless' ? marginFigures(context, values.frostDepth, suspension) : []),
  ];
}

/** The estimate, explained as the figure it would be had nobody entered a depth. */
function estimateFigure(context: Context, depth: number | null, missing: readonly Missing[]): SheetFigure {
  const { solution, facts, values } = context;
  const bare: Solved = {
    ...solution,
    facts: { ...facts, site: { ...facts.site, frostDepth: null } },
    values: { ...values, frostDepth: depth },
  };
  const opened = explain(bare, 'frostDepth', context.units);
  const title = 'Estimate, coldest of about a hundred winters';
  const notes = ['An estimate only, good to about 25 %. What the local department requires overrules it.'];
  return {
    key: 'estimate',
    title,
    value: depth,
    text: opened.result ?? 'not known',
    unknown: missing.map(({ words }) => words),
    explanation: () => ({ ...opened, name: 'estimate', title, notes, unknown: missing }),
  };
}

/** Freezing index that the estimate rests on: the plan's own, else the station's coldest winter. */
function indexOf({ facts }: Context): number | null {
  const { freezing } = facts.site;
  if (freezing === null) return null;
  if (freezing.index !== null) return freezing.index;
  const station = freezing.station === null ? null : findStation(freezing.station);
  return station === null ? null : stationClimate(station, 'cold 100').index;
}

function marginFigures(context: Context, frost: Metres | null, pipeTop: Metres): SheetFigure[] {
  const missing = [{ path: 'site.frostDepth', words: 'the frost depth' }];
  const codes = [
    {
      key: 'marginUsual',
      title: `Cover over ${either(context.units, '6 in', '15 cm')} below frost (International codes)`,
      margin: USUAL_FROST_MARGIN,
      source: 'International Plumbing Code 305.4, International Residential Code P2603.5, from memory',
    },
    {
      key: 'marginWide',
      title: `Cover over ${either(context.units, '12 in', '30 cm')} below frost (Uniform Plumbing Code)`,
      margin: WIDE_FROST_MARGIN,
      source: 'Uniform Plumbing Code 609.1, from memory',
    },
  ];
  return codes.map(({ key, title, margin, source }) => {
    const wanted = known([frost], (depth) => Math.max(depth + margin, LEAST_COVER));
    const left = known([wanted], (least) => pipeTop - least);
    return figure(context, { key, title, symbol: 'Δz', value: left, as: 'small', missing }, () => ({
      terms: [
        term('z_p', 'top of the outlet pipe', pipeTop, 'small'),
        term(
          'z_w',
          `frost depth and margin, ${either(context.units, '12 in', '30 cm')} below the ground at the least`,
          wanted,
          'small',
        ),
      ],
      steps: [step('Δz', 'z_p − z_w', left, 'small')],
      range: within('below zero it does not meet this code', left === null ? null : left >= 0),
      source,
      notes: ['The code in force where the well stands decides.'],
    }));
  });
}
