/** Frost along the buried line, in other soils, and in milder winters. */
import type { Context } from '../../explain/context.ts';
import { frostDepthEstimate, siteFrostEstimate, stationClimate } from '../../formulas/frost.ts';
import type { FrostEstimate, SiteFreezing, Winter } from '../../formulas/frost.ts';
import { findStation } from '../../tables/freezingStations.ts';
import { SOILS, USUAL_SOIL, findSoil } from '../../tables/soils.ts';
import { SURFACES, findSurface, USUAL_SURFACE_FACTOR } from '../../tables/surfaces.ts';
import type { SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import type { Cell } from '../table.ts';
import { either } from '../../units.ts';

const SOURCE = 'UFC 3-130-06 (TM 5-852-6), section 3; surfaces: TM 5-852-4, Table 4-1; soils: Kersten (1949)';
const NOWHERE: SiteFreezing = { station: null, index: null, soil: null, surface: null };

/** Depth and both ends of its band. */
function cells({ show }: Context, estimate: FrostEstimate): Cell[] {
  const of = (read: (known: { depth: number; low: number; high: number }) => number) =>
    cell('reason' in estimate ? null : read(estimate), show.small);
  return [of(({ depth }) => depth), of(({ low }) => low), of(({ high }) => high)];
}

const HEADS = [
  ['depth', 'Estimate'],
  ['low', 'Band from'],
  ['high', 'Band to'],
] as const;

/** The line runs under yard, drive and wall: each surface lets a different share of the cold in. */
export function surfaceTable(context: Context): SheetTable {
  const { facts, suspension } = context;
  const freezing = facts.site.freezing ?? NOWHERE;
  const named = freezing.surface === null ? 'bare soil' : (findSurface(freezing.surface)?.id ?? null);
  return {
    key: 'surfaces',
    title: 'Along the line, by what lies on the ground',
    columns: columns(['surface', 'Surface'], ['share', 'Share of the cold that enters'], ...HEADS),
    rows: SURFACES.filter(({ id }) => id !== 'snow').map(({ id, label, factor }) => {
      const estimate = siteFrostEstimate({ ...freezing, surface: id });
      const deep = facts.top.kind === 'pitless' && !('reason' in estimate) && estimate.depth > suspension;
      return row(
        id === named ? 'this plan' : deep ? 'does not do' : null,
        label,
        { value: factor, text: context.show.percent(factor) },
        ...cells(context, estimate),
      );
    }),
    source: SOURCE,
    note: 'The worst stretch of the line counts: a ploughed driveway, a cleared strip, the wall of the house. A stretch that the frost reaches is marked.',
  };
}

export function soilTable(context: Context): SheetTable {
  const freezing = context.facts.site.freezing ?? NOWHERE;
  const named = findSoil(freezing.soil ?? USUAL_SOIL)?.id ?? null;
  return {
    key: 'soils',
    title: 'In other soils',
    columns: columns(['soil', 'Soil'], ...HEADS),
    rows: SOILS.map(({ id, label, confidence }) =>
      row(
        id === named ? 'this plan' : null,
        confidence === 'low' ? `${label} (rough)` : label,
        ...cells(context, siteFrostEstimate({ ...freezing, soil: id })),
      ),
    ),
    source: SOURCE,
    note: 'Dry gravel freezes deepest, wet clay least: water gives off heat as it freezes.',
  };
}

const WINTERS: readonly (readonly [Winter, string])[] = [
  ['normal', 'a usual winter'],
  ['cold 10', 'coldest of about 10'],
  ['cold 100', 'coldest of about 100'],
];

/** Null where no station of the table is named. */
export function winterTable(context: Context): SheetTable | null {
  const { freezing } = context.facts.site;
  const station = freezing?.station ? findStation(freezing.station) : null;
  if (freezing === null || station === null) return null;
  const surfaceFactor = freezing.surface === null ? USUAL_SURFACE_FACTOR : findSurface(freezing.surface)?.factor;
  if (surfaceFactor === undefined) return null;
  return {
    key: 'winters',
    title: `Winters at ${station.name}`,
    columns: columns(['winter', 'Winter'], ['index', 'Freezing index'], ...HEADS),
    rows: WINTERS.map(([winter, label]) => {
      const climate = stationClimate(station, winter);
      const estimate = frostDepthEstimate({ ...climate, soil: freezing.soil ?? USUAL_SOIL, surfaceFactor });
      const index = {
        value: climate.index,
        text: either(context.units, `${Math.round(climate.index * 1.8)} °F·d`, `${Math.round(climate.index)} K·d`),
      };
      return row(winter === 'cold 100' ? 'this plan' : null, label, index, ...cells(context, estimate));
    }),
    source: `climate normals of the weather services; cold winters: the normal year lowered by ${either(context.units, '5 and 8 °F', '2.8 and 4.4 K')}, a rule of ours, within 20 %`,
    note: 'These are no return periods of a weather service.',
  };
}
