/** Peak flow of a house by several methods side by side: they disagree, and the reader should see it. */
import type { Context } from '../../explain/context.ts';
import { peakDemand } from '../../formulas/demand.ts';
import type { CubicMetresPerSecond } from '../../si.ts';
import { gallons, gpm, either } from '../../units.ts';
import { known } from '../known.ts';
import type { SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import { fixturesOf, internationalUnits, outlets, uniformUnits } from './fixtures.ts';
import { dailyUse } from './use.ts';

/**
 * Units and gallons a minute of the other demand curve.
 *
 * Source: National Standard Plumbing Code, Table B.5.4
 */
// prettier-ignore
const NATIONAL_CURVE: readonly (readonly [units: number, gpm: number])[] = [
  [3, 3], [4, 4], [5, 4.5], [6, 5], [7, 6], [8, 7], [9, 7.5], [10, 8], [11, 8.5], [12, 9], [13, 10], [14, 10.5],
  [120, 49],
];

/**
 * Peak flow by the curve of the National Standard Plumbing Code, by straight lines.
 *
 * @param units  of fixtures [-]
 * @returns  m³/s; one gallon a minute a unit below 3 units; null above 120 units, the table's end
 *
 * Range    3 to 14 units closely, 14 to 120 by one long straight line, which reads low: the rows between are not at hand
 * Source   National Standard Plumbing Code, Table B.5.4
 */
export function nationalPeak(units: number): CubicMetresPerSecond | null {
  let [below, low] = [0, 0];
  for (const [above, high] of NATIONAL_CURVE) {
    if (units <= above) return gpm(low + ((units - below) / (above - below)) * (high - low));
    [below, low] = [above, high];
  }
  return null;
}

const DELIVERED_IN = 2 * 3600;
const BEDROOM_PEAK = gpm(5);
const BEDROOM_A_DAY = gallons(110);

export interface DemandMethod {
  readonly name: string;
  readonly peak: CubicMetresPerSecond | null;
  readonly from: string;
  readonly source: string;
}

export function demandMethods(context: Context): readonly DemandMethod[] {
  const fixtures = fixturesOf(context);
  const { facts } = context;
  const use = dailyUse(context);
  const units = fixtures === null ? null : internationalUnits(fixtures);
  const wide = fixtures === null ? null : uniformUnits(fixtures);
  const count = fixtures === null ? null : outlets(fixtures);
  const counted = (sum: number | null, word: string) =>
    sum === null ? 'no fixtures in the plan' : `${Math.round(sum * 10) / 10} ${word}`;
  return [
    { name: 'The plan', peak: facts.house.demand, from: 'as entered', source: 'the plan' },
    {
      name: 'Fixture units, International Plumbing Code',
      peak: known([units], peakDemand),
      from: counted(units, 'units'),
      source: 'International Plumbing Code (2018), Tables E103.3(2) and E103.3(3)',
    },
    {
      name: 'The same units, National Standard Plumbing Code curve',
      peak: known([units], nationalPeak),
      from: counted(units, units !== null && units > 14 ? 'units, beyond the rows at hand: reads low' : 'units'),
      source: 'National Standard Plumbing Code, Table B.5.4',
    },
    {
      name: 'Fixture units of the Uniform Plumbing Code, read on the International curve',
      peak: known([wide], peakDemand),
      from: counted(wide, 'units'),
      source: 'Uniform Plumbing Code (2018), Table 610.3; its own chart is not used here',
    },
    {
      name: `${either(context.units, 'One gallon', '3.8 litres')} a minute for each outlet`,
      peak: known([count], (sum) => gpm(sum)),
      from: counted(count, 'outlets'),
      source: 'common practice, no source',
    },
    {
      name: 'The day’s water in two hours',
      peak: known([use], (volume) => volume / DELIVERED_IN),
      from: use === null ? 'people not known' : `${context.show.volume(use)} a day`,
      source: `extension bulletins on private water systems; ${either(context.units, '50 to 100 gal', '190 to 380 L')} a person: Missouri Extension G1801`,
    },
    {
      name: `By bedrooms: ${either(context.units, '110 gal a day each, 5 gpm', '416 L a day each, 19 L/min')} at the peak`,
      peak: fixtures?.bedrooms ? BEDROOM_PEAK : null,
      from: fixtures?.bedrooms
        ? `${fixtures.bedrooms} bedrooms, ${context.show.volume(fixtures.bedrooms * BEDROOM_A_DAY)} a day`
        : 'bedrooms not known',
      source: `a state sheet on individual water supplies: ${either(context.units, '110 gal a day for each bedroom and a peak of 5 gpm', '416 L a day for each bedroom and a peak of 19 L/min')}`,
    },
  ];
}

export function demandTable(context: Context): SheetTable {
  const { show } = context;
  return {
    key: 'demand',
    title: 'Peak flow by several methods',
    columns: columns(['method', 'Method'], ['from', 'From'], ['peak', 'Peak flow'], ['source', 'Source']),
    rows: demandMethods(context).map(({ name, peak, from, source }, i) =>
      row(i === 0 ? 'this plan' : null, name, from, cell(peak, show.flow), source),
    ),
    source: 'as each row says',
    note: 'The methods disagree by a factor of two. Codes size pipes for flow that is rarely reached; pumps are usually chosen lower.',
  };
}
