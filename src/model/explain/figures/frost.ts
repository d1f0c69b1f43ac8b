/** How deep the ground freezes. */
import { berggrenLambda, berggrenNumbers, meanConductivity } from '../../formulas/berggren.ts';
import { sineAmplitude, sineSeason } from '../../formulas/freezingIndex.ts';
import { stationClimate } from '../../formulas/frost.ts';
import { findStation } from '../../tables/freezingStations.ts';
import { findSoil, USUAL_SOIL } from '../../tables/soils.ts';
import { findSurface, USUAL_SURFACE_FACTOR } from '../../tables/surfaces.ts';
import type { Context } from '../context.ts';
import { everywhere, within } from '../draft.ts';
import type { Draft, Explainer } from '../draft.ts';
import { step, term } from '../sum.ts';

const missing = [
  { path: 'site.frostDepth', words: 'the frost depth that the local building or plumbing department requires' },
];

export const frostDepth: Explainer = (context) => {
  const { facts, values } = context;
  const entered = facts.site.frostDepth;
  const estimate = entered === null && values.frostDepth !== null ? estimated(context, values.frostDepth) : null;
  if (estimate !== null) return estimate;
  return {
    title: 'Frost depth',
    symbol: 'z_f',
    terms: [term('z_f', 'frost depth', values.frostDepth, 'small')],
    steps: [step('z_f', 'z_f', values.frostDepth, 'small')],
    as: 'small',
    formula: 'z_f = the frost depth of the plan',
    range: everywhere,
    source: facts.site.frostFrom === null ? 'the plan' : `the plan: ${facts.site.frostFrom}`,
    notes: ['The depth that the local building or plumbing department requires overrules every other.'],
    missing,
  };
};

/** The modified Berggren equation for the coldest of about a hundred winters. */
function estimated({ facts }: Context, depth: number): Draft | null {
  const freezing = facts.site.freezing;
  const station = freezing?.station ? findStation(freezing.station) : null;
  const soil = findSoil(freezing?.soil ?? USUAL_SOIL);
  if (freezing === null || station === null || soil === null) return null;
  const factor =
    freezing.surface === null ? USUAL_SURFACE_FACTOR : (findSurface(freezing.surface)?.factor ?? USUAL_SURFACE_FACTOR);
  const climate = stationClimate(station, 'cold 100');
  const index = freezing.index ?? climate.index;
  const surfaceIndex = factor * index;
  if (!(surfaceIndex > 0) || !(climate.meanAnnual > 0)) return null;
  const { meanAnnual } = climate;
  const season =
    (freezing.index === null ? climate.season : null) ??
    sineSeason({ meanAnnual, amplitude: sineAmplitude({ index, meanAnnual }) });
  const lambda = berggrenLambda(berggrenNumbers({ surfaceIndex, meanAnnual, season }, soil));
  return {
    title: 'Frost depth, estimated',
    symbol: 'z_f',
    terms: [
      term('n', 'share of the cold of the air that reaches the ground', factor, 'number'),
      term(
        'F',
        `freezing index of the air, ${freezing.index === null ? `coldest of about 100 winters at ${station.name}` : 'as entered'}`,
        index,
        'kelvinDays',
      ),
      term('k', `conductivity of ${soil.label}, mean of frozen and not`, meanConductivity(soil), 'conductivity'),
      term('l', 'heat that its water gives off as it freezes', soil.latentHeat, 'latentHeat'),
      term('λ', 'coefficient for the heat of the ground below', lambda, 'number'),
      term('τ', 'seconds of a day', 86_400, 'secondsPerDay'),
    ],
    steps: [step('z_f', 'λ × √(2 × τ × k × n × F / l)', depth, 'metres')],
    as: 'small',
    range: within('one even soil without snow and with a mean of the year above freezing; good to about 25 %', null),
    source: 'modified Berggren equation: UFC 3-130-06 (TM 5-852-6), section 3; λ by Neumann’s solution',
    notes: ['An estimate only. The depth that the local building or plumbing department requires overrules it.'],
    missing,
  };
}
